#include "app/pages/trends/chart_panel.h"

#include "app/pages/trends/axis_buttons.h"
#include "app/pages/trends/movement_card.h"
#include "app/pages/trends/now_card.h"
#include "app/widgets/parts.h"
#include "app/widgets/plain_tip.h"
#include "app/widgets/trend_widget.h"
#include "app/wording/coupling_words.h"
#include "app/wording/doubt_words.h"
#include "app/wording/trends_page_words.h"
#include "core/baseline/baseline.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QResizeEvent>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

namespace {

QString originText(const BandOrigin& origin)
{
    if (origin.fittingNumber == 0)
        return TrendsPageWords::noFitting();
    QString band;
    if (origin.band)
        band = TrendsPageWords::band(
            *origin.band, {origin.confirmedReadings, origin.firstDay, origin.lastDay, origin.isFrozen});
    else if (origin.confirmedReadings < kReadingsForBand)
        band = TrendsPageWords::noBandYet(origin.confirmedReadings, kReadingsForBand);
    else
        band = TrendsPageWords::noBandFromOpenReadings();
    const QString fitting = TrendsPageWords::fitting(origin.fittingNumber, origin.fittingBegins,
                                                     QString::fromStdString(origin.fittingReason));
    QStringList says{band};
    if (origin.doubted)
        says << DoubtWords::otherVersion(*origin.doubted, origin.band.has_value());
    return (says << fitting).join(QLatin1Char(' '));
}

} // namespace

ChartPanel::ChartPanel(QWidget* parent) : QWidget{parent}
{
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(18, 12, 18, 12);
    layout->setSpacing(4);
    layout->addLayout(makeTop());
    m_band = labelOf({}, "soft", "bandSentence");
    layout->addWidget(m_band);
    m_play = labelOf({}, "soft", "jointPlay");
    layout->addWidget(m_play);

    m_chart = new TrendWidget;
    m_chart->setObjectName("chart");
    m_empty = labelOf({}, "body", "noReadings");
    m_empty->setAlignment(Qt::AlignCenter);
    m_stack = new QStackedWidget;
    m_stack->addWidget(m_chart);
    m_stack->addWidget(m_empty);
    layout->addWidget(m_stack, 1);

    m_hover = labelOf({}, "soft", "hoverSentence");
    m_hover->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    layout->addWidget(m_hover);
    layout->addSpacing(4);
    m_movement = new MovementCard;
    layout->addWidget(m_movement);
    layout->addSpacing(4);
    m_now = new NowCard;
    layout->addWidget(m_now);
    connect(m_chart, &TrendWidget::hoverSentence, this, &ChartPanel::showHover);
    connect(m_chart, &TrendWidget::readingChosen, this, &ChartPanel::readingChosen);
    showHover({});
}

QHBoxLayout* ChartPanel::makeTop()
{
    auto* top = new QHBoxLayout;
    top->setSpacing(8);
    m_title = labelOf({}, "title", "couplingTitle");
    top->addWidget(m_title, 1);
    m_axis = new AxisButtons{"byDate", "byRigging"};
    m_table = new QPushButton{TrendsPageWords::table()};
    m_table->setProperty("kind", "choice");
    m_table->setCheckable(true);
    m_table->setObjectName("tableButton");
    top->addWidget(m_axis, 0, Qt::AlignTop);
    top->addSpacing(8);
    top->addWidget(m_table, 0, Qt::AlignTop);
    connect(m_axis, &AxisButtons::axisChosen, this, &ChartPanel::axisChosen);
    connect(m_table, &QPushButton::clicked, this, &ChartPanel::tableAsked);
    return top;
}

void ChartPanel::display(const CouplingTrend& trend, const AirframeReview& review, TrendAxis axis, Day today)
{
    const QString name = QString::fromStdString(trend.coupling.name);
    m_title->setText(name);
    const bool isMeasured = hasGap(trend.coupling);
    m_band->setText(isMeasured
                        ? originText(trend.origin)
                        : TrendsPageWords::kindWithoutGap(CouplingWords::kindName(trend.coupling.kind)));
    m_empty->setText(isMeasured ? TrendsPageWords::noReadingsOf(name) : TrendsPageWords::noGapOf(name));
    sayIn(m_play, trend.plays.join(QLatin1Char(' ')));
    m_chart->setSeries(trend.series, axis);
    m_stack->setCurrentWidget(trend.readings.empty() ? static_cast<QWidget*>(m_empty) : m_chart);
    const CouplingReview* moved = review.find(trend.coupling.id);
    m_movement->setVisible(moved && isMeasured && !trend.readings.empty());
    if (moved)
        m_movement->display(*moved, review);
    m_now->display(trend, review.airframe.annualDue, today);
    setAxis(axis);
}

void ChartPanel::setAxis(TrendAxis axis)
{
    m_axis->setAxis(axis);
    m_chart->setAxis(axis);
}

void ChartPanel::setTableShown(bool shown)
{
    m_table->setChecked(shown);
}

void ChartPanel::setLook(const Look& look)
{
    m_chart->setLook(look);
    m_now->setLook(look);
    // Two lines are kept free, so that nothing moves when a sentence comes.
    m_hover->setFixedHeight(2 * QFontMetrics{fontOf(look.fonts.label())}.lineSpacing() + 4);
    updateGeometry();
}

int ChartPanel::chosenReading() const
{
    return m_chart->chosenReading();
}

void ChartPanel::chooseReading(int index)
{
    if (m_chart->chosenReading() != index)
        m_chart->chooseReading(index);
}

void ChartPanel::focusChart()
{
    m_chart->setFocus();
}

bool ChartPanel::isForChart(const QKeyEvent& event)
{
    switch (event.key()) {
    case Qt::Key_Up:
    case Qt::Key_Down:
    case Qt::Key_Left:
    case Qt::Key_Right:
    case Qt::Key_Plus:
    case Qt::Key_Minus:
    case Qt::Key_0:
        return true;
    default:
        return false;
    }
}

void ChartPanel::takeKey(QKeyEvent* event)
{
    if (m_chart->hasFocus())
        return event->ignore(); // it had the key and did nothing with it
    focusChart();
    QApplication::sendEvent(m_chart, event);
}

void ChartPanel::lookAtDays(Day from, Day to)
{
    m_chart->lookAtDays(from, to);
}

void ChartPanel::lookAtAll()
{
    m_chart->lookAtAll();
}

void ChartPanel::showHover(const QString& sentence)
{
    m_hover->setText(sentence.isEmpty() ? TrendsPageWords::hoverHint() : sentence);
    m_hover->setToolTip(plainTip(sentence));
}

QSize ChartPanel::minimumSizeHint() const
{
    const int least = layout()->minimumSize().width();
    return {least, layout()->minimumHeightForWidth(std::max(width(), least))};
}

void ChartPanel::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    if (event->size().width() != event->oldSize().width())
        updateGeometry(); // sentences wrap anew
}

} // namespace rig
