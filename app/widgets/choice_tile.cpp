#include "app/widgets/choice_tile.h"

#include "app/widgets/parts.h"
#include "app/widgets/wrap_layout.h"

#include <QStyle>
#include <QVBoxLayout>

namespace rig {

ChoiceTile::ChoiceTile(const QString& name, QWidget* parent) : AskedFrame{parent}, m_name{name}
{
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(12, 8, 12, 10);
    layout->setSpacing(4);
    m_title = labelOf({}, "label");
    m_hint = labelOf({}, "soft");
    m_hint->setObjectName(name + QStringLiteral("Hint"));
    layout->addWidget(m_title);
    layout->addWidget(m_hint);
    m_layout = new WrapLayout{6, false};
    layout->addLayout(m_layout);
}

QPushButton* ChoiceTile::button(std::size_t index)
{
    while (m_buttons.size() <= index) {
        const int at = static_cast<int>(m_buttons.size());
        auto* one = new QPushButton;
        one->setObjectName(m_name + QString::number(at));
        one->setProperty("kind", "answer");
        one->setProperty("wide", true);
        one->setCheckable(true);
        one->setAutoDefault(false);
        connect(one, &QPushButton::clicked, this, [this, at] { emit pressed(at); });
        m_layout->addWidget(one);
        m_buttons.push_back(one);
    }
    return m_buttons[index];
}

void ChoiceTile::display(const QString& title, const QString& hint, const std::vector<Option>& options)
{
    m_title->setText(title);
    sayIn(m_hint, hint);
    for (std::size_t i = 0; i < options.size(); ++i) {
        QPushButton* one = button(i);
        one->setText(options[i].text);
        one->setAccessibleName(options[i].spoken);
        if (one->property("doubt").toBool() != options[i].isDoubt) {
            one->setProperty("doubt", options[i].isDoubt);
            one->style()->polish(one);
        }
        one->setChecked(options[i].isChosen);
        one->setEnabled(m_isOpen);
    }
    for (std::size_t i = 0; i < m_buttons.size(); ++i)
        m_buttons[i]->setVisible(i < options.size());
}

void ChoiceTile::setOpen(bool open)
{
    m_isOpen = open;
    for (QPushButton* one : m_buttons)
        one->setEnabled(open);
}

} // namespace rig
