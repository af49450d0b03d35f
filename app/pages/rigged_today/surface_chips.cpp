#include "app/pages/rigged_today/surface_chips.h"

#include "app/widgets/parts.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/control_words.h"

#include <algorithm>

namespace rig {

namespace {

QString textOf(const SurfaceProgress& one)
{
    const QString name = QString::fromStdString(one.name);
    const bool saidNo =
        std::ranges::any_of(one.answers, [](const auto& given) { return given.second == Answer::No; });
    if (one.doubted)
        return saidNo ? ControlWords::stopped(name) : ControlWords::open(name);
    if (!one.next)
        return ControlWords::done(name);
    return one.answers.empty() ? ControlWords::waiting(name) : ControlWords::begun(name);
}

} // namespace

SurfaceChips::SurfaceChips(QWidget* parent) : QWidget{parent}
{
    setAccessibleName(ControlWords::surfaces());
    m_layout = new WrapLayout{6, false, this};
    m_layout->setContentsMargins(0, 0, 0, 0);
    QSizePolicy policy{QSizePolicy::Preferred, QSizePolicy::Fixed};
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

QPushButton* SurfaceChips::chip(std::size_t index)
{
    while (m_chips.size() <= index) {
        const std::size_t at = m_chips.size();
        auto* one = new QPushButton;
        one->setObjectName(QStringLiteral("surfaceChip%1").arg(at));
        one->setProperty("kind", "chip");
        one->setAutoDefault(false);
        one->setCheckable(true);
        connect(one, &QPushButton::clicked, this, [this, at] { emit chosen(m_surfaces[at]); });
        m_layout->addWidget(one);
        m_chips.push_back(one);
    }
    return m_chips[index];
}

void SurfaceChips::display(const std::vector<SurfaceProgress>& surfaces, SurfaceId current)
{
    m_surfaces.clear();
    for (const SurfaceProgress& one : surfaces) {
        QPushButton* button = chip(m_surfaces.size());
        button->setText(textOf(one));
        button->setChecked(one.id == current);
        m_surfaces.push_back(one.id);
    }
    for (std::size_t i = 0; i < m_chips.size(); ++i)
        m_chips[i]->setVisible(i < m_surfaces.size());
    updateGeometry();
}

} // namespace rig
