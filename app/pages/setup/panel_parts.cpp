#include "app/pages/setup/panel_parts.h"

#include "app/widgets/choice_box.h"
#include "app/widgets/parts.h"
#include "app/widgets/wrap_layout.h"

#include <QLabel>
#include <QPushButton>
#include <QStyle>

namespace rig {

QLabel* softLabel(const QString& text)
{
    return labelOf(text, "soft");
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

ChoiceGrid::ChoiceGrid()
{
    setContentsMargins(0, 0, 0, 0);
    setHorizontalSpacing(12);
    setVerticalSpacing(2);
}

ChoiceBox* ChoiceGrid::add(const QString& text, const QString& name)
{
    auto* box = new ChoiceBox{text};
    box->setObjectName(name);
    box->setNarrows();
    QLabel* label = labelOf(text, "label");
    label->setBuddy(box);
    const int line = m_count / 2 * 2;
    const int column = m_count++ % 2;
    addWidget(label, line, column, Qt::AlignBottom);
    addWidget(box, line + 1, column);
    setColumnStretch(column, 1);
    return box;
}

void fillPeople(ChoiceBox* box, const QString& prompt, const std::vector<Person>& persons,
                std::optional<PersonId> chosen, std::optional<PersonId> without)
{
    box->begin(prompt);
    for (const Person& person : persons)
        if (person.id != without)
            box->add(QString::fromStdString(person.name), person.id);
    box->choose(chosen);
}

} // namespace rig
