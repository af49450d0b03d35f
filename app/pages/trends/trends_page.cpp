#include "app/pages/trends/trends_page.h"

#include "app/pages/period_box.h"
#include "app/pages/statement_bench.h"
#include "app/pages/trends/aircraft_panel.h"
#include "app/pages/trends/chart_panel.h"
#include "app/pages/trends/coupling_list.h"
#include "app/pages/trends/readings_table.h"
#include "app/widgets/parts.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/formats.h"
#include "app/wording/period_words.h"
#include "app/wording/problem_words.h"
#include "app/wording/review_words.h"
#include "app/wording/statement_words.h"
#include "app/wording/trends_page_words.h"
#include "app/wording/window_words.h"
#include "core/clock.h"
#include "core/day_entry.h"

#include <QCoreApplication>
#include <QEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QShortcut>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <map>

namespace rig {

namespace {

// Of the height, when the table is shown.
constexpr double kTableShare = 0.3;

// A page lower than this leaves the chart its room and shows the table when asked.
constexpr int kHeightForBoth = 860;

} // namespace

TrendsPage::TrendsPage(Records& records, const Clock& clock, QWidget* parent)
    : Page{parent}, m_presenter{records, clock}, m_clock{clock}
{
    setObjectName("trends");
    setAccessibleName(WindowWords::trends());
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
    m_message->setTextFormat(Qt::PlainText);
    m_message->setWordWrap(true);
    m_message->setAlignment(Qt::AlignCenter);
    m_message->setMargin(24);
    m_message->setObjectName("trendsMessage");
    m_stack->addWidget(m_message);
    m_stack->addWidget(makeStatements(records));
    inner->addWidget(makeHead());
    m_backSaid = labelOf({}, "label", "lookingBack");
    m_backSaid->setContentsMargins(18, 6, 18, 0);
    inner->addWidget(m_backSaid);
    showBack();
    m_closed = labelOf({}, "caution", "closedToSecond");
    m_closed->setContentsMargins(18, 10, 18, 0);
    m_closed->hide();
    inner->addWidget(m_closed);
    m_said = labelOf({}, "strong", "statementKept");
    m_said->setContentsMargins(18, 8, 18, 0);
    m_said->hide();
    inner->addWidget(m_said);
    inner->addWidget(m_stack, 1);
    layout->addWidget(card, 1);
    connectParts();
    setLook({});
    showTable(false);
    showMessage(TrendsPageWords::noAirframe());
}

QWidget* TrendsPage::makeHead()
{
    auto* head = new QWidget;
    auto* row = new WrapLayout{8, false, head};
    row->setContentsMargins(18, 10, 18, 0);
    m_backToAnnual = buttonOf(TrendsPageWords::backToTheAnnual(), "backToAnnual");
    m_periods = new PeriodBox{"trendsPeriod"};
    m_finding = buttonOf(StatementWords::noteAFinding(), "noteFinding");
    m_ask = buttonOf(StatementWords::ask(), "askQuestion");
    m_finding->setAutoDefault(true);
    m_ask->setAutoDefault(true);
    m_backToToday = buttonOf(TrendsPageWords::backToTodayOnEscape(), "backToToday");
    for (QWidget* one :
         std::initializer_list<QWidget*>{m_backToAnnual, m_periods, m_backToToday, m_finding, m_ask})
        row->addWidget(one);
    connect(m_backToToday, &QPushButton::clicked, this, [this] { lookBack({}, m_chosen); });
    connect(m_finding, &QPushButton::clicked, this, [this] { state(StatementKind::Finding); });
    connect(m_ask, &QPushButton::clicked, this, [this] { state(StatementKind::Question); });
    m_backByKey = new QShortcut{QKeySequence{Qt::ALT | Qt::Key_Left}, this};
    connect(m_backToAnnual, &QPushButton::clicked, this, &TrendsPage::annualWanted);
    connect(m_backByKey, &QShortcut::activated, this, &TrendsPage::annualWanted);
    connect(m_periods, &PeriodBox::periodChosen, this,
            [this](const PeriodOffer& offer) { lookBack(offer, m_chosen); });
    connect(m_periods, &PeriodBox::left, this, [this] { setFocus(); });
    return head;
}

QWidget* TrendsPage::makeStatements(Records& records)
{
    m_statements = new StatementBench{records, m_clock};
    connect(m_statements, &StatementBench::opened, this, [this] { m_stack->setCurrentWidget(m_statements); });
    connect(m_statements, &StatementBench::putAside, this, [this] { endStating({}); });
    connect(m_statements, &StatementBench::kept, this, &TrendsPage::endStating);
    connect(m_statements, &StatementBench::problemArose, this, &TrendsPage::problemArose);
    return m_statements;
}

// About the coupling in view, and its chosen reading.
void TrendsPage::state(StatementKind kind)
{
    const CouplingTrend* trend = m_view.find(m_chosen);
    if (!trend)
        return;
    StatementEntry entry;
    entry.kind = kind;
    entry.airframe = *m_airframe;
    entry.coupling = trend->coupling.id;
    Day day = m_view.chosen.period.to;
    QString about;
    const int chosen = m_isAircraft ? -1 : m_panel->chosenReading();
    if (chosen >= 0) {
        const Reading& reading = trend->readings[static_cast<std::size_t>(chosen)].reading;
        const Formats formats;
        entry.reading = reading.id;
        day = reading.when.localDay();
        about = StatementWords::aboutReading(formats.interval(reading.interval), formats.day(day));
    }
    entry.day = QString::fromStdString(dayText(day));
    m_statements->open(entry, about);
}

void TrendsPage::endStating(const QString& sentence)
{
    m_stack->setCurrentIndex(0);
    if (!sentence.isEmpty()) {
        showAirframe(m_airframe);
        emit factsChanged();
    }
    sayIn(m_said, sentence);
    showAircraft(m_isAircraft);
    if (!m_isAircraft)
        m_panel->focusChart();
}

QString TrendsPage::leftUndone() const
{
    return m_statements->hasTyped() ? StatementWords::leftUndone() : QString{};
}

void TrendsPage::catchUp()
{
    m_statements->catchUp();
    showAirframe(m_airframe);
}

void TrendsPage::showBack()
{
    m_backSaid->setVisible(m_view.looksBack());
    m_backToToday->setVisible(m_view.looksBack());
    m_backToAnnual->setVisible(m_isVisit);
    m_backByKey->setEnabled(m_isVisit);
    m_backToToday->setText(m_isVisit ? TrendsPageWords::backToToday()
                                     : TrendsPageWords::backToTodayOnEscape());
    m_backSaid->setText(TrendsPageWords::lookingBack(ReviewWords::period(m_view.chosen.period)));
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
    connect(m_panel, &ChartPanel::tableAsked, this, &TrendsPage::askTable);
    connect(m_panel, &ChartPanel::readingChosen, m_table, &ReadingsTable::chooseReading);
    connect(m_table, &ReadingsTable::readingChosen, m_panel, &ChartPanel::chooseReading);
}

void TrendsPage::setLook(const Look& look)
{
    m_look = look;
    m_statements->setLook(look);
    m_list->setLook(look);
    m_panel->setLook(look);
    m_aircraft->setLook(look);
    m_table->setLook(look);
}

void TrendsPage::showAirframe(std::optional<AirframeId> airframe)
{
    if (m_airframe != airframe) {
        m_chosen.reset();
        m_lookedAt.reset();
        m_isAircraft = false;
    }
    const bool wasStating = m_airframe == airframe && m_stack->currentWidget() == m_statements;
    m_airframe = airframe;
    m_view = {};
    sayIn(m_closed, {});
    sayIn(m_said, {});
    if (!airframe) {
        m_list->hide();
        showMessage(TrendsPageWords::noAirframe());
        return;
    }
    auto view = m_presenter.view(*airframe, m_period->of(*airframe));
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
    if (wasStating && !m_view.couplings.empty())
        m_stack->setCurrentWidget(m_statements);
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
    showBack();
    std::map<CouplingId, QString> names;
    for (const CouplingTrend& trend : m_view.couplings)
        names.emplace(trend.coupling.id, QString::fromStdString(trend.coupling.name));
    for (QWidget* one : std::initializer_list<QWidget*>{m_periods, m_finding, m_ask})
        one->show();
    m_periods->display(m_view.offers, m_view.chosen, names);
    m_list->display(m_view, m_chosen);
    showAircraft(m_isAircraft);
}

void TrendsPage::lookBack(const std::optional<PeriodOffer>& period, std::optional<CouplingId> coupling)
{
    if (m_airframe && !m_view.offers.empty())
        m_period->choose(*m_airframe, period.value_or(m_view.offers.front()));
    if (coupling) {
        m_chosen = coupling;
        m_isAircraft = false;
    }
    showAirframe(m_airframe);
}

void TrendsPage::visit(CouplingId coupling, const std::optional<ReadingId>& reading)
{
    m_isVisit = true;
    showBack();
    m_list->display(m_view, coupling);
    m_list->bringIntoView(coupling);
    chooseCoupling(coupling);
    if (reading)
        chooseReading(*reading);
    m_panel->focusChart();
}

void TrendsPage::chooseReading(ReadingId reading)
{
    const CouplingTrend* trend = m_view.find(m_chosen);
    if (!trend)
        return;
    const auto found =
        std::ranges::find(trend->readings, reading, [](const TrendsReading& one) { return one.reading.id; });
    if (found != trend->readings.end())
        m_panel->chooseReading(static_cast<int>(found - trend->readings.begin()));
    m_scroll->ensureVisible(0, 0);
}

void TrendsPage::leave()
{
    m_isVisit = false;
    showBack();
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
    m_periods->showCoupling(coupling);
    lookAtPeriod();
}

// Once for a coupling and a period: after that the reader looks around.
void TrendsPage::lookAtPeriod()
{
    const bool isThere =
        m_lookedAt && m_lookedAt->first == m_chosen && m_lookedAt->second.isSameChoiceAs(m_view.chosen);
    if (isThere)
        return;
    const auto isPart = [](const ReviewPeriod& period) {
        return period.kind != PeriodKind::ByAnnual || !period.isCurrent;
    };
    const bool wasPart = m_lookedAt && isPart(m_lookedAt->second.period);
    m_lookedAt = {*m_chosen, m_view.chosen};
    const ReviewPeriod& period = m_view.chosen.period;
    if (isPart(period))
        m_panel->lookAtDays(period.from, period.to);
    else if (wasPart)
        m_panel->lookAtAll();
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

// Whoever asks for it sees it: in a low window it stands below the chart's room.
void TrendsPage::askTable(bool shown)
{
    showTable(shown);
    if (!shown)
        return m_scroll->verticalScrollBar()->setValue(0);
    QCoreApplication::sendPostedEvents(m_tableRoom, QEvent::LayoutRequest);
    for (QWidget* around = m_splitter; around != this; around = around->parentWidget())
        QCoreApplication::sendPostedEvents(around, QEvent::LayoutRequest);
    m_splitter->resize(m_splitter->width(),
                       std::max(m_splitter->height(), m_splitter->minimumSizeHint().height()));
    QCoreApplication::sendPostedEvents(m_scroll->viewport(), QEvent::LayoutRequest);
    m_scroll->ensureWidgetVisible(m_tableRoom, 0, 0);
}

void TrendsPage::showMessage(const QString& sentence)
{
    m_message->setText(sentence);
    for (QWidget* one : std::initializer_list<QWidget*>{m_periods, m_finding, m_ask})
        one->hide();
    showBack();
    m_stack->setCurrentWidget(m_message);
}

void TrendsPage::keyPressEvent(QKeyEvent* event)
{
    if (isKey(*event, TrendsPageWords::keyByDate()))
        chooseAxis(TrendAxis::ByDate);
    else if (isKey(*event, TrendsPageWords::keyByRigging()))
        chooseAxis(TrendAxis::ByRigging);
    else if (isKey(*event, StatementWords::keyFinding()))
        state(StatementKind::Finding);
    else if (isKey(*event, StatementWords::keyAsk()))
        state(StatementKind::Question);
    else if (isKey(*event, PeriodWords::key()) && !m_view.couplings.empty())
        m_periods->open();
    else if (isKey(*event, TrendsPageWords::keyTable()))
        askTable(!m_tableRoom->isVisibleTo(m_splitter));
    else if (isKey(*event, TrendsPageWords::keyAircraft()) && !m_view.couplings.empty())
        showAircraft(!m_isAircraft);
    else if (event->key() == Qt::Key_Escape && m_isVisit)
        emit annualWanted();
    else if (event->key() == Qt::Key_Escape && m_view.looksBack())
        lookBack({}, m_chosen);
    else if (event->key() == Qt::Key_Return && m_isAircraft)
        showAircraft(false);
    else if (event->matches(QKeySequence::Copy))
        m_table->copyChosen();
    else if (event->key() == Qt::Key_PageDown)
        m_scroll->verticalScrollBar()->triggerAction(QScrollBar::SliderPageStepAdd);
    else if (event->key() == Qt::Key_PageUp)
        m_scroll->verticalScrollBar()->triggerAction(QScrollBar::SliderPageStepSub);
    else if (!m_isAircraft && ChartPanel::isForChart(*event))
        m_panel->takeKey(event); // whoever comes to the page by its key has the chart in hand
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
