#include "app/pages/rigged_today/surface_chips.h"

#include "app/pictures/marks.h"
#include "app/widgets/parts.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/control_words.h"

#include <QIcon>
#include <QPainter>

#include <algorithm>

namespace rig {

namespace {

struct ChipWords
{
    MarkShape shape = MarkShape::Waiting;
    Role role = Role::InkSoft;
    QString text;
};

ChipWords wordsOf(const SurfaceProgress& one, bool isStopped)
{
    const QString name = QString::fromStdString(one.name);
    if (isStopped)
        return {MarkShape::Diamond, Role::Outside, ControlWords::stopped(name)};
    if (one.doubt)
        return {MarkShape::HalfDisc, Role::NearEdge, ControlWords::open(name)};
    if (!one.next)
        return {MarkShape::Done, Role::InkSoft, ControlWords::done(name)};
    if (one.isToBeTriedAgain())
        return {MarkShape::Triangle, Role::NearEdge, ControlWords::setBack(name)};
    if (one.answers.empty())
        return {MarkShape::Waiting, Role::InkSoft, ControlWords::waiting(name)};
    return {MarkShape::Waiting, Role::Accent, ControlWords::begun(name)};
}

QIcon iconOf(const ChipWords& words, const Look& look)
{
    const int side = qRound(14 * look.fonts.scale);
    QPixmap pixmap{side, side};
    pixmap.fill(Qt::transparent);
    QPainter painter{&pixmap};
    painter.setRenderHint(QPainter::Antialiasing);
    paintMark(painter, words.shape, words.role, pixmap.rect(), look.theme);
    return QIcon{pixmap};
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

void SurfaceChips::display(const std::vector<SurfaceProgress>& surfaces, SurfaceId current,
                           const std::function<bool(const SurfaceProgress&)>& isStopped)
{
    m_surfaces.clear();
    for (const SurfaceProgress& one : surfaces) {
        QPushButton* button = chip(m_surfaces.size());
        const ChipWords words = wordsOf(one, isStopped(one));
        button->setText(words.text);
        button->setIcon(iconOf(words, m_look));
        const int side = qRound(14 * m_look.fonts.scale);
        button->setIconSize({side, side});
        button->setChecked(one.id == current);
        m_surfaces.push_back(one.id);
    }
    for (std::size_t i = 0; i < m_chips.size(); ++i)
        m_chips[i]->setVisible(i < m_surfaces.size());
    updateGeometry();
}

} // namespace rig
