#include "app/pages/trends/trends_page.h"

#include "app/pages/trends/aircraft_panel.h"
#include "app/pages/trends/chart_panel.h"
#include "app/pages/trends/coupling_list.h"
#include "app/pages/trends/readings_table.h"
#include "app/widgets/parts.h"
#include "app/wording/problem_words.h"
#include "app/wording/review_words.h"
#include "app/wording/trends_page_words.h"
#include "core/clock.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace rig {

namespace {

// Of the height, when the table is shown.
constexpr double kTableShare = 0.3;

// A page lower than this leaves the chart its room and shows the table when asked.
constexpr int kHeightForBoth = 860;

} // namespace

TrendsPage::TrendsPage(const Records& records, const Clock& clock, QWidget* parent)
    : Page{parent}, m_presenter{records, clock}, m_clock{clock}
{
    setObjectName("trends");
    setFocusPolicy(Qt::StrongFocus);
    auto* layout = new QHBoxLayout{this};
    layout->setContentsMargins(14, 14, 14, 14);
    layout->setSpacing(14);
    m_list = new CouplingList;
    m_list->setObjectName("couplingList");
    layout->addWidget(m_list);
    auto* card = new QFrame;
    card->setProperty("card", true);
    auto* inner = new QVBoxLayout{card};
    inner->setContentsMargins(1, 1, 1, 1);
    m_stack = new QStackedWidget;
    m_stack->addWidget(makeCentre());
    m_aircraft = new AircraftPanel;
    m_stack->addWidget(m_aircraft);
    m_message = new QLabel;
    m_message->setWordWrap(true);
    m_message->setAlignment(Qt::AlignCenter);
    m_message->setMargin(24);
    m_message->setObjectName("trendsMessage");
    m_stack->addWidget(m_message);
    inner->addWidget(makeBack());
    m_closed = labelOf({}, "caution", "closedToSecond");
    m_closed->setContentsMargins(18, 10, 18, 0);
    m_closed->hide();
    inner->addWidget(m_closed);
    inner->addWidget(m_stack, 1);
    layout->addWidget(card, 1);
    connectParts();
    setLook({});
    showTable(false);
    showMessage(TrendsPageWords::noAirframe());
}

QWidget* TrendsPage::makeBack()
{
    m_back = new QWidget;
    auto* row = new QHBoxLayout{m_back};
    row->setContentsMargins(18, 10, 18, 0);
    m_backSaid = new QLabel;
    m_backSaid->setProperty("kind", "label");
    m_backSaid->setWordWrap(true);
    m_backSaid->setObjectName("lookingBack");
    row->addWidget(m_backSaid, 1);
    auto* today = new QPushButton{TrendsPageWords::backToToday()};
    today->setObjectName("backToToday");
    row->addWidget(today);
    connect(today, &QPushButton::clicked, this, [this] { lookBack({}, m_chosen); });
    m_back->hide();
    return m_back;
}

QWidget* TrendsPage::makeCentre()
{
    m_panel = new ChartPanel;
    m_table = new ReadingsTable;
    m_tableRoom = new QWidget;
    auto* room = new QVBoxLayout{m_tableRoom};
    room->setContentsMargins(18, 0, 18, 14);
    room->addWidget(m_table);
    m_splitter = new QSplitter{Qt::Vertical};
    m_splitter->setChildrenCollapsible(false);
    m_splitter->setHandleWidth(8);
    m_splitter->addWidget(m_panel);
    m_splitter->addWidget(m_tableRoom);
    m_splitter->setStretchFactor(0, 3);
    m_splitter->setStretchFactor(1, 1);
    m_scroll = new QScrollArea; // large text in a small window
    m_scroll->setWidgetResizable(true);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->setWidget(m_splitter);
    return m_scroll;
}

void TrendsPage::connectParts()
{
    connect(m_list, &CouplingList::couplingChosen, this, &TrendsPage::chooseCoupling);
    connect(m_list, &CouplingList::aircraftAsked, this, [this] { showAircraft(!m_isAircraft); });
    connect(m_aircraft, &AircraftPanel::axisChosen, this, &TrendsPage::chooseAxis);
    connect(m_aircraft, &AircraftPanel::couplingChosen, this, [this](int index) {
        m_chosen = m_view.couplings[static_cast<std::size_t>(index)].coupling.id;
        m_list->display(m_view, m_chosen);
    });
    connect(m_panel, &ChartPanel::axisChosen, this, &TrendsPage::chooseAxis);
    connect(m_panel, &ChartPanel::tableAsked, this, &TrendsPage::showTable);
    connect(m_panel, &ChartPanel::readingChosen, m_table, &ReadingsTable::chooseReading);
    connect(m_table, &ReadingsTable::readingChosen, m_panel, &ChartPanel::chooseReading);
}

void TrendsPage::setLook(const Look& look)
{
    m_look = look;
    m_list->setLook(look);
    m_panel->setLook(look);
    m_aircraft->setLook(look);
    m_table->setLook(look);
}

void TrendsPage::showAirframe(std::optional<AirframeId> airframe)
{
    if (m_airframe != airframe) {
        m_chosen.reset();
        m_period.reset();
        m_isAircraft = false;
    }
    m_airframe = airframe;
    m_view = {};
    sayIn(m_closed, {});
    if (!airframe) {
        m_list->hide();
        showMessage(TrendsPageWords::noAirframe());
        return;
    }
    auto view = m_presenter.view(*airframe, m_period);
    if (!view) {
        // Nothing of an earlier reading of the file stays on show.
        const QString sentence = ProblemWords::sentence(view.problem(), {});
        m_list->hide();
        showMessage(sentence);
        emit problemArose(sentence);
        return;
    }
    m_view = std::move(view).value();
    display();
}

void TrendsPage::display()
{
    m_list->setVisible(!m_view.couplings.empty());
    if (m_view.couplings.empty()) {
        m_chosen.reset();
        showMessage(TrendsPageWords::noCouplings());
        return;
    }
    if (!m_view.find(m_chosen))
        m_chosen = m_view.couplings.front().coupling.id;
    sayIn(m_closed, m_view.closed);
    m_back->setVisible(m_period.has_value());
    if (m_period)
        m_backSaid->setText(TrendsPageWords::lookingBack(ReviewWords::period(*m_period)));
    m_list->display(m_view, m_chosen);
    showAircraft(m_isAircraft);
}

void TrendsPage::lookBack(const std::optional<ReviewPeriod>& period, std::optional<CouplingId> coupling)
{
    m_period = period && period->isCurrent && period->sinceAnnual ? std::nullopt : period;
    if (coupling) {
        m_chosen = coupling;
        m_isAircraft = false;
    }
    showAirframe(m_airframe);
}

std::optional<std::size_t> TrendsPage::chosenIndex() const
{
    const CouplingTrend* trend = m_view.find(m_chosen);
    if (!trend)
        return std::nullopt;
    return static_cast<std::size_t>(trend - m_view.couplings.data());
}

void TrendsPage::showAircraft(bool shown)
{
    m_isAircraft = shown;
    m_list->setAircraftShown(shown);
    if (!shown)
        return chooseCoupling(*m_chosen);
    m_aircraft->display(m_view, m_axis, chosenIndex());
    m_stack->setCurrentWidget(m_aircraft);
    if (isVisible())
        m_aircraft->focusChart();
}

void TrendsPage::chooseCoupling(CouplingId coupling)
{
    m_chosen = coupling;
    const CouplingTrend* trend = m_view.find(m_chosen);
    if (!trend)
        return;
    m_isAircraft = false;
    m_list->setAircraftShown(false);
    m_panel->display(*trend, m_view.review, m_axis, m_clock.now().localDay());
    m_table->display(*trend);
    m_table->chooseReading(m_panel->chosenReading());
    m_stack->setCurrentIndex(0);
}

void TrendsPage::chooseAxis(TrendAxis axis)
{
    m_axis = axis;
    m_panel->setAxis(axis);
    m_aircraft->setAxis(axis);
}

void TrendsPage::showTable(bool shown)
{
    m_tableRoom->setVisible(shown);
    if (shown) {
        const int table = static_cast<int>(height() * kTableShare);
        m_splitter->setSizes({height() - table, table});
    }
    m_panel->setTableShown(shown);
}

void TrendsPage::showMessage(const QString& sentence)
{
    m_message->setText(sentence);
    m_stack->setCurrentWidget(m_message);
}

void TrendsPage::keyPressEvent(QKeyEvent* event)
{
    if (isKey(*event, TrendsPageWords::keyByDate()))
        chooseAxis(TrendAxis::ByDate);
    else if (isKey(*event, TrendsPageWords::keyByRigging()))
        chooseAxis(TrendAxis::ByRigging);
    else if (isKey(*event, TrendsPageWords::keyTable()))
        showTable(!m_tableRoom->isVisibleTo(m_splitter));
    else if (isKey(*event, TrendsPageWords::keyAircraft()) && !m_view.couplings.empty())
        showAircraft(!m_isAircraft);
    else if (event->key() == Qt::Key_Escape && m_period)
        lookBack({}, m_chosen);
    else if (event->key() == Qt::Key_Return && m_isAircraft)
        showAircraft(false);
    else if (event->matches(QKeySequence::Copy))
        m_table->copyChosen();
    else if (event->key() == Qt::Key_PageDown)
        m_scroll->verticalScrollBar()->triggerAction(QScrollBar::SliderPageStepAdd);
    else if (event->key() == Qt::Key_PageUp)
        m_scroll->verticalScrollBar()->triggerAction(QScrollBar::SliderPageStepSub);
    else
        Page::keyPressEvent(event);
}

void TrendsPage::showEvent(QShowEvent* event)
{
    Page::showEvent(event);
    if (!m_wasShown)
        showTable(height() >= kHeightForBoth * m_look.fonts.scale);
    m_wasShown = true;
}

} // namespace rig
