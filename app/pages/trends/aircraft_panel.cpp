#include "app/pages/trends/aircraft_panel.h"

#include "app/pages/trends/axis_buttons.h"
#include "app/widgets/aircraft_widget.h"
#include "app/widgets/parts.h"
#include "app/wording/trends_page_words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

AircraftPanel::AircraftPanel(QWidget* parent) : QWidget{parent}
{
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(18, 12, 18, 12);
    layout->setSpacing(4);
    auto* top = new QHBoxLayout;
    m_title = labelOf({}, "title", "aircraftTitle");
    top->addWidget(m_title, 1);
    m_axis = new AxisButtons{"aircraftByDate", "aircraftByRigging"};
    top->addWidget(m_axis, 0, Qt::AlignTop);
    layout->addLayout(top);
    layout->addWidget(labelOf(TrendsPageWords::aircraftAbout(), "soft", "aircraftAbout"));
    m_chart = new AircraftWidget;
    m_chart->setObjectName("aircraftChart");
    m_empty = labelOf(TrendsPageWords::aircraftEmpty(), "body", "aircraftEmpty");
    m_empty->setAlignment(Qt::AlignCenter);
    m_stack = new QStackedWidget;
    m_stack->addWidget(m_chart);
    m_stack->addWidget(m_empty);
    layout->addWidget(m_stack, 1);
    m_hover = labelOf({}, "soft", "aircraftHover");
    m_hover->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    layout->addWidget(m_hover);
    m_shifts = labelOf({}, "body", "aircraftShifts");
    layout->addWidget(m_shifts);
    connect(m_axis, &AxisButtons::axisChosen, this, &AircraftPanel::axisChosen);
    connect(m_chart, &AircraftWidget::couplingChosen, this, &AircraftPanel::couplingChosen);
    connect(m_chart, &AircraftWidget::hoverSentence, this, [this](const QString& sentence) {
        m_hover->setText(sentence.isEmpty() ? TrendsPageWords::aircraftHint() : sentence);
    });
}

void AircraftPanel::display(const TrendsView& view, TrendAxis axis, std::optional<std::size_t> chosen)
{
    m_title->setText(TrendsPageWords::aircraftTitle(QString::fromStdString(view.airframe.registration)));
    const bool any = std::ranges::any_of(view.aircraft.couplings,
                                         [](const AircraftCoupling& one) { return !one.points.empty(); });
    m_stack->setCurrentWidget(any ? static_cast<QWidget*>(m_chart) : m_empty);
    m_chart->setSeries(view.aircraft, axis, chosen);
    m_hover->setText(TrendsPageWords::aircraftHint());
    m_shifts->setText(view.sharedShifts.join(QLatin1Char('\n')));
    m_shifts->setVisible(any);
    m_axis->setAxis(axis);
}

void AircraftPanel::setAxis(TrendAxis axis)
{
    m_axis->setAxis(axis);
    m_chart->setAxis(axis);
}

void AircraftPanel::setLook(const Look& look)
{
    m_chart->setLook(look);
    // Two lines are kept free, so that nothing moves when a sentence comes.
    m_hover->setFixedHeight(2 * QFontMetrics{fontOf(look.fonts.label())}.lineSpacing() + 4);
}

void AircraftPanel::focusChart()
{
    m_chart->setFocus();
}

} // namespace rig
