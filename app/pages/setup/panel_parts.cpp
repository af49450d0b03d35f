#include "app/pages/setup/panel_parts.h"

#include "app/widgets/wrap_layout.h"

#include <QLabel>
#include <QPushButton>
#include <QStyle>

namespace rig {

QLabel* softLabel(const QString& text)
{
    auto* label = new QLabel{text};
    label->setProperty("kind", "soft");
    label->setWordWrap(true);
    return label;
}

QPushButton* panelButton(const char* name, const QString& text)
{
    auto* button = new QPushButton{text};
    button->setObjectName(QLatin1String(name));
    button->setAutoDefault(true);
    return button;
}

void setPrimary(QPushButton* button, bool primary)
{
    button->setProperty("kind", primary ? "primary" : "plain");
    button->style()->unpolish(button);
    button->style()->polish(button);
}

ButtonFlow::ButtonFlow(const std::vector<QPushButton*>& buttons, QWidget* parent) : QWidget{parent}
{
    constexpr int kGap = 8;
    auto* layout = new WrapLayout{kGap, false, this};
    layout->setContentsMargins(0, 0, 0, 0);
    for (QPushButton* button : buttons)
        add(button);
    QSizePolicy policy{QSizePolicy::Preferred, QSizePolicy::Fixed};
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void ButtonFlow::add(QPushButton* button)
{
    layout()->addWidget(button);
}

} // namespace rig
