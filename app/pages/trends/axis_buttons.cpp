#include "app/pages/trends/axis_buttons.h"

#include "app/wording/trends_page_words.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QPushButton>

namespace rig {

namespace {

QPushButton* choice(const QString& text, const char* name)
{
    auto* button = new QPushButton{text};
    button->setProperty("kind", "choice");
    button->setCheckable(true);
    button->setObjectName(QLatin1String(name));
    return button;
}

} // namespace

AxisButtons::AxisButtons(const char* byDateName, const char* byRiggingName, QWidget* parent) : QWidget{parent}
{
    auto* layout = new QHBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(8);
    m_byDate = choice(TrendsPageWords::byDate(), byDateName);
    m_byRigging = choice(TrendsPageWords::byRigging(), byRiggingName);
    auto* group = new QButtonGroup{this};
    group->addButton(m_byDate);
    group->addButton(m_byRigging);
    layout->addWidget(m_byDate);
    layout->addWidget(m_byRigging);
    connect(m_byDate, &QPushButton::clicked, this, [this] { emit axisChosen(TrendAxis::ByDate); });
    connect(m_byRigging, &QPushButton::clicked, this, [this] { emit axisChosen(TrendAxis::ByRigging); });
}

void AxisButtons::setAxis(TrendAxis axis)
{
    m_byDate->setChecked(axis == TrendAxis::ByDate);
    m_byRigging->setChecked(axis == TrendAxis::ByRigging);
}

} // namespace rig
