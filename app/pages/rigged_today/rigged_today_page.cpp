#include "app/pages/rigged_today/rigged_today_page.h"

#include "app/pages/prompts.h"
#include "app/pages/rigged_today/close_panel.h"
#include "app/pages/rigged_today/connected_panel.h"
#include "app/pages/rigged_today/control_check_panel.h"
#include "app/pages/rigged_today/coupling_panel.h"
#include "app/pages/rigged_today/paper_start.h"
#include "app/pages/rigged_today/record_list.h"
#include "app/pages/rigged_today/rigging_notices.h"
#include "app/pages/rigged_today/season_panel.h"
#include "app/pages/rigged_today/start_panel.h"
#include "app/pages/rigged_today/summary_panel.h"
#include "app/widgets/flow_scroll.h"
#include "app/widgets/parts.h"
#include "app/wording/formats.h"
#include "app/wording/paper_words.h"
#include "app/wording/problem_words.h"
#include "app/wording/prompt_words.h"
#include "app/wording/rigged_words.h"
#include "core/airframe/name_in.h"
#include "core/review/not_seen.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QScrollArea>
#include <QScrollBar>
#include <QShortcut>
#include <QStackedWidget>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace rig {

namespace {

// A break longer than this sends the coupling back to the look (docs/terms.md, interrupted).
constexpr int kIdleMinutes = 20;
constexpr quint64 kHeld = 150;      // milliseconds: no screen repeats a held key sooner
constexpr quint64 kRepeats = 60;    // milliseconds between its repeats, at most
constexpr int kLookBackAfter = 300; // milliseconds without a key, before the whole history is gone through

// A long panel moves by a page where the page keys have nothing else to do.
void moveByAPage(QWidget* panel, int by)
{
    auto* area = qobject_cast<QScrollArea*>(panel);
    if (!area)
        area = panel->findChild<QScrollArea*>();
    if (area)
        area->verticalScrollBar()->triggerAction(by > 0 ? QAbstractSlider::SliderPageStepAdd
                                                        : QAbstractSlider::SliderPageStepSub);
}

// A reading that took the place of one from before a break: nothing else on the page would show it.
const Reading* correctionBeforeTheBreak(const SessionStep& step, const RecordNow& before)
{
    for (const SessionFact& fact : step.facts) {
        const Reading* reading = std::get_if<Reading>(&fact);
        const CouplingNow* coupling = reading && reading->corrects ? before.find(reading->coupling) : nullptr;
        if (coupling && !coupling->flow(reading->turn).begun)
            return reading;
    }
    return nullptr;
}

bool isInterrupted(const SessionStep& step)
{
    return std::ranges::any_of(
        step.facts, [](const SessionFact& fact) { return std::holds_alternative<Interruption>(fact); });
}

} // namespace

RiggedTodayPage::RiggedTodayPage(Records& records, const Clock& clock, Prompts& prompts, QWidget* parent)
    : Page{parent}, m_presenter{records, clock}, m_writer{records, clock}, m_clock{clock}, m_prompts{prompts}
{
    setObjectName("riggedToday");
    setFocusPolicy(Qt::StrongFocus);
    buildPanels(records);
    // Runs when nothing else waits, so that the verdict is painted first and the save follows, or before
    // whatever is pressed earlier than that. A queued call would come before the painting.
    m_saving = new QTimer{this};
    m_saving->setSingleShot(true);
    connect(m_saving, &QTimer::timeout, this, &RiggedTodayPage::settle);
    m_lookingBack = new QTimer{this};
    m_lookingBack->setSingleShot(true);
    m_lookingBack->setInterval(kLookBackAfter);
    connect(m_lookingBack, &QTimer::timeout, this, &RiggedTodayPage::lookBack);
    m_idle = new QTimer{this};
    m_idle->setSingleShot(true);
    m_idle->setInterval(kIdleMinutes * 60 * 1000);
    connectPanels();
    connectCoupling();
}

void RiggedTodayPage::buildPanels(Records& records)
{
    auto* layout = new QHBoxLayout{this};
    layout->setContentsMargins(14, 14, 14, 14);
    layout->setSpacing(14);
    m_list = new RecordList;
    layout->addWidget(m_list);
    auto* card = new QFrame;
    card->setProperty("card", true);
    auto* inner = new QVBoxLayout{card};
    inner->setContentsMargins(1, 1, 1, 1);
    inner->addWidget(makeBanner());
    m_stack = new QStackedWidget;
    m_start = new StartPanel;
    m_paper = new PaperStart;
    m_coupling = new CouplingPanel;
    m_close = new ClosePanel;
    m_control = new ControlCheckPanel{records, m_clock};
    m_season = new SeasonPanel;
    m_connected = new ConnectedPanel;
    m_summary = new SummaryPanel{records, m_clock, m_prompts};
    for (QWidget* panel : std::initializer_list<QWidget*>{m_start, m_paper, m_close, m_season, m_connected})
        m_stack->addWidget(new FlowScroll{panel});
    for (QWidget* panel : std::initializer_list<QWidget*>{m_coupling, m_control, m_summary})
        m_stack->addWidget(panel); // scrolls by itself, above a row of buttons that stays
    inner->addWidget(m_stack);
    layout->addWidget(card, 1);
}

QWidget* RiggedTodayPage::makeBanner()
{
    m_banner = new QWidget;
    m_banner->setObjectName("paperBanner");
    auto* layout = new QVBoxLayout{m_banner};
    layout->setContentsMargins(28, 10, 28, 4);
    layout->setSpacing(4);
    m_bannerText = labelOf({}, "caution", "paperBannerText");
    m_secondTypes = new QCheckBox{PaperWords::secondTypes()};
    m_secondTypes->setObjectName("secondTypes");
    m_secondTypes->setFocusPolicy(Qt::TabFocus);
    layout->addWidget(m_bannerText);
    layout->addWidget(m_secondTypes);
    m_banner->hide();
    return m_banner;
}

void RiggedTodayPage::showBanner(bool isShown)
{
    isShown = isShown && m_view.record && m_view.record->enteredBy;
    m_banner->setVisible(isShown);
    if (!isShown)
        return;
    const QString typist = QString::fromStdString(nameIn(m_view.persons, m_view.record->enteredBy));
    const bool isSecond = m_session.turn == Turn::Second;
    const QString day = Formats{}.day(m_view.record->begins.localDay());
    const bool isOwn = m_session.secondTypes || m_session.second == m_view.record->enteredBy;
    m_bannerText->setText(!isSecond ? PaperWords::banner(day)
                          : isOwn   ? PaperWords::bannerOwn(day)
                                    : PaperWords::bannerCopied(day, typist));
    m_secondTypes->setVisible(isSecond && m_session.second != m_view.record->enteredBy);
    m_secondTypes->setChecked(m_session.secondTypes);
}

Moment RiggedTodayPage::momentNow() const
{
    return m_view.record ? m_view.record->momentOf(m_clock.now()) : m_clock.now();
}

template <typename Move, typename... Pressed>
void RiggedTodayPage::perform(const Move& move, const Pressed&... pressed)
{
    if (!mayPress() || !m_view.now)
        return;
    m_idle->start();
    if (take(move(m_session, *m_view.now, pressed..., momentNow())))
        setFocus();
}

template <typename Move> auto RiggedTodayPage::performs(const Move& move)
{
    return [this, move](const auto&... pressed) { perform(move, pressed...); };
}

bool RiggedTodayPage::take(SessionStep step)
{
    const auto written = step.facts.empty()
                             ? Result<ReadingNews>{ReadingNews{}}
                             : m_writer.write(m_view.airframe.id, step.facts, std::exchange(m_painted, {}));
    if (!written) {
        report(written.problem());
        return false;
    }
    m_notice = newsText(written.value());
    if (isInterrupted(step) && step.session.place == m_session.place)
        m_notice = RiggedWords::interruptedAt(Formats{}.time(m_clock.now()));
    if (const Reading* corrected = correctionBeforeTheBreak(step, *m_view.now))
        m_notice = RiggedWords::correctedBeforeTheBreak(Formats{}.interval(corrected->interval));
    m_session = std::move(step.session);
    refresh();
    return true;
}

bool RiggedTodayPage::settle()
{
    if (!m_session.pressed)
        return true;
    if (take(keep(m_session)))
        return true;
    m_session = dropPressed(std::move(m_session));
    m_coupling->showNotSaved();
    return false;
}

// What was pressed belongs to what was on the screen: where another window has written since, that is shown
// first.
bool RiggedTodayPage::mayPress()
{
    if (!settle())
        return false;
    if (m_presenter.hasMovedOn(m_view)) {
        m_notice = RiggedWords::changedInAnotherWindow();
        refresh();
        return false;
    }
    return !isBackFromABreak();
}

// A timer stands still while the computer sleeps with its lid shut, the clock does not. What is pressed first
// after such a break was meant for what was on the screen before it.
bool RiggedTodayPage::isBackFromABreak()
{
    const Moment now = m_clock.now();
    const auto before = std::exchange(m_lastPress, now);
    const bool wasLong = before && now.utcSeconds - before->utcSeconds > kIdleMinutes * 60;
    if (!wasLong || !m_view.now || !isHalfDone(m_session, *m_view.now))
        return false;
    take(interrupt(m_session, *m_view.now, InterruptionReason::Idle, now));
    return true;
}

void RiggedTodayPage::catchUp()
{
    if (!m_session.pressed && m_airframe && m_presenter.hasMovedOn(m_view))
        refresh();
}

void RiggedTodayPage::connectPanels()
{
    const auto onKey = [this](Qt::Key key, auto action) {
        auto* shortcut = new QShortcut{QKeySequence{key}, this};
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, action);
    };
    onKey(Qt::Key_Escape, [this] { escape(); });
    onKey(Qt::Key_F8, [this] {
        if (m_secondTypes->isVisible())
            m_secondTypes->click();
    });
    onKey(Qt::Key_PageDown, [this] { step(1); });
    onKey(Qt::Key_PageUp, [this] { step(-1); });
    connect(m_idle, &QTimer::timeout, this, [this] {
        if (settle() && m_view.now)
            take(interrupt(m_session, *m_view.now, InterruptionReason::Idle, momentNow()));
    });
    connect(m_list, &RecordList::chosen, this, performs(goTo));
    connect(m_start, &StartPanel::lastRecordAsked, this, &RiggedTodayPage::showLastRecord);
    connect(m_start, &StartPanel::beginAsked, this,
            [this](PersonId leader, RecordOrigin origin, std::optional<int> celsius) {
                begin(leader, origin, celsius, {});
            });
    connect(m_secondTypes, &QCheckBox::clicked, this, performs(chooseWhoTypes));
    connect(m_start, &StartPanel::paperAsked, this, &RiggedTodayPage::enterFromPaper);
    connect(m_paper, &PaperStart::beginAsked, this, &RiggedTodayPage::beginFromPaper);
    connect(m_paper, &PaperStart::backAsked, this, &RiggedTodayPage::leavePaper);
    connect(m_start, &StartPanel::takenApart, this, &RiggedTodayPage::takenApart);
    connect(m_start, &StartPanel::noteReadAsked, this, &RiggedTodayPage::noteRead);
    connect(m_season, &SeasonPanel::ticked, this, &RiggedTodayPage::tick);
    connect(m_season, &SeasonPanel::nextAsked, this, performs(goOn));
    connect(m_connected, &ConnectedPanel::stated, this, performs(stateConnected));
    connect(m_connected, &ConnectedPanel::nextAsked, this, performs(goOn));
    connect(m_close, &ClosePanel::closeAsked, this, &RiggedTodayPage::close);
    connect(m_control, &ControlCheckPanel::answered, this, performs(answerSurface));
    connect(m_control, &ControlCheckPanel::called, this, performs(callSurface));
    connect(m_control, &ControlCheckPanel::peopleChosen, this, [this](const CheckPeople& people) {
        QWidget* box = focusWidget();
        perform(chooseCheckPeople, people);
        if (box && !people.areTwo())
            box->setFocus(); // the other one is chosen next, by the key beside it
    });
    connect(m_control, &ControlCheckPanel::surfaceChosen, this, performs(chooseSurface));
    connect(m_control, &ControlCheckPanel::onwardAsked, this, performs(goOn));
    connect(m_control, &ControlCheckPanel::changed, this, [this] {
        refresh();
        setFocus();
    });
    connect(m_control, &ControlCheckPanel::problemArose, this,
            [this](const Problem& problem) { report(problem); });
    connect(m_summary, &SummaryPanel::backAsked, this, &RiggedTodayPage::leaveSummary);
    connect(m_summary, &SummaryPanel::changed, this, &Page::factsChanged);
    connect(m_summary, &SummaryPanel::problemArose, this, &Page::problemArose);
}

void RiggedTodayPage::connectCoupling()
{
    connect(m_coupling, &CouplingPanel::answered, this, performs(answer));
    connect(m_coupling, &CouplingPanel::personChosen, this, performs(choosePerson));
    connect(m_coupling, &CouplingPanel::gaugeChosen, this, performs(chooseGauge));
    connect(m_coupling, &CouplingPanel::measureAgainAsked, this, performs(wantAgain));
    connect(m_coupling, &CouplingPanel::nextAsked, this, performs(goOn));
    connect(m_coupling, &CouplingPanel::playFelt, this,
            [this](const PlayFound& along, const PlayFound& across, const QString& note) {
                perform(feelPlay, along, across, note.toStdString());
            });
    connect(m_coupling, &CouplingPanel::turnAsked, this, performs(changeTurn));
    connect(m_coupling, &CouplingPanel::readingChosen, this, &RiggedTodayPage::pressReading);
    connect(m_coupling, &CouplingPanel::correctionAsked, this, &RiggedTodayPage::askCorrection);
    connect(m_coupling, &CouplingPanel::strikeAsked, this, &RiggedTodayPage::askStrike);
}

void RiggedTodayPage::setLook(const Look& look)
{
    m_list->setLook(look);
    m_coupling->setLook(look);
    m_control->setLook(look);
    m_summary->setLook(look);
}

void RiggedTodayPage::showAirframe(std::optional<AirframeId> airframe)
{
    settle();
    if (m_airframe != airframe) {
        leave();
        m_airframe = airframe;
        m_session = {};
        m_notice.clear();
    }
    if (airframe && m_resumed.insert(*airframe).second)
        report(m_writer.resume(*airframe));
    refresh();
}

void RiggedTodayPage::refresh()
{
    m_view = {};
    if (m_airframe) {
        auto view = m_presenter.view(*m_airframe);
        if (!view)
            return report(view.problem());
        m_view = std::move(view).value();
    }
    display();
    if (m_airframe)
        emit factsChanged();
}

void RiggedTodayPage::display()
{
    m_session = settledOn(std::move(m_session), m_view.now ? &*m_view.now : nullptr);
    QWidget* panel = panelNow();
    m_sheet.reset();
    if (panel == m_coupling)
        showCoupling();
    else if (panel == m_control)
        m_control->display(m_view, m_session, onwardText(onwardFrom(m_session, *m_view.now)));
    else if (panel == m_close)
        m_close->display(m_view);
    else if (panel == m_season)
        m_season->display(m_view);
    else if (panel == m_connected)
        m_connected->display(m_view, m_session, onwardText(onwardFrom(m_session, *m_view.now)));
    else if (panel == m_paper)
        m_paper->display(m_view);
    else if (panel == m_start && m_airframe)
        m_start->display(m_view, m_notice);
    else if (panel == m_start)
        m_start->displayNothing();
    m_list->setVisible(m_view.now && panel != m_summary);
    showBanner(m_view.now && panel != m_summary);
    if (m_view.now)
        m_list->display(m_view, m_session.place, m_session.turn);
    for (int i = 0; i < m_stack->count(); ++i)
        if (m_stack->widget(i) == panel || m_stack->widget(i)->isAncestorOf(panel))
            m_stack->setCurrentIndex(i);
}

QWidget* RiggedTodayPage::panelNow() const
{
    if (m_airframe && m_session.place.kind == RecordPlace::Kind::Summary)
        return m_summary;
    if (!m_view.now)
        return m_airframe && m_session.place.kind == RecordPlace::Kind::Paper ? static_cast<QWidget*>(m_paper)
                                                                              : m_start;
    switch (m_session.place.kind) {
    case RecordPlace::Kind::Season:
        return m_season;
    case RecordPlace::Kind::Connected:
        return m_connected;
    case RecordPlace::Kind::ControlCheck:
        return m_control;
    case RecordPlace::Kind::Close:
        return m_close;
    case RecordPlace::Kind::Coupling:
    case RecordPlace::Kind::SecondInspection:
    case RecordPlace::Kind::Summary:
    case RecordPlace::Kind::Paper:
        break;
    }
    return m_coupling;
}

void RiggedTodayPage::showCoupling()
{
    auto sheet = m_presenter.sheet(m_view, m_session);
    if (!sheet)
        return report(sheet.problem());
    m_sheet = std::move(sheet).value();
    tellMovement();
    m_coupling->display(m_view, *m_sheet, onwardText(onwardFrom(m_session, *m_view.now)));
    const QString notice = m_notice.isEmpty() ? otherHandsHint(*m_sheet, m_view.persons) : m_notice;
    if (!notice.isEmpty())
        m_coupling->showNotice(notice);
}

// Worked out once for each record, when no key waits: it needs the whole history.
void RiggedTodayPage::tellMovement()
{
    if (m_movementsOf != m_view.record->id) {
        m_movements.clear();
        m_movementsOf.reset();
        m_lookingBack->start();
        return;
    }
    const auto told = m_movements.find(m_sheet->coupling.id);
    if (told != m_movements.end() && m_session.turn == Turn::First)
        m_sheet->movement = told->second; // the second person works without what the first has read
}

void RiggedTodayPage::lookBack()
{
    if (!m_airframe || !m_view.record || m_session.pressed)
        return;
    auto told = m_presenter.movements(*m_airframe);
    if (!told)
        return report(told.problem());
    m_movements = std::move(told).value();
    m_movementsOf = m_view.record->id;
    if (!m_sheet)
        return;
    tellMovement();
    m_coupling->showMovement(m_sheet->movement);
}

bool RiggedTodayPage::begin(PersonId leader, RecordOrigin origin, std::optional<int> celsius,
                            const std::optional<FromPaper>& paper)
{
    const auto begun = m_writer.begin(m_view, leader, origin, celsius, paper);
    if (!begun) {
        report(begun.problem());
        return false;
    }
    m_session = sessionOf(begun.value().record, leader, m_session.gauge);
    m_notice.clear();
    refresh();
    if (begun.value().byAnotherWindow && m_view.record)
        m_notice = RiggedWords::begunInAnotherWindow(Formats{}.time(m_view.record->begins));
    if (m_view.now && !begun.value().byAnotherWindow)
        m_session.place = {m_view.isFirstOfSeason ? RecordPlace::Kind::Season : RecordPlace::Kind::Connected,
                           {}};
    display();
    setFocus();
    return !begun.value().byAnotherWindow;
}

void RiggedTodayPage::enterFromPaper()
{
    if (!m_airframe || !settle())
        return;
    if (m_view.now) {
        m_notice = m_view.record->enteredBy ? QString{} : PaperWords::riggingIsOpen();
        display();
        setFocus();
        return;
    }
    m_session.place = {RecordPlace::Kind::Paper, {}};
    display();
    m_paper->focusFirst();
}

void RiggedTodayPage::leavePaper()
{
    m_paper->clear();
    m_session.place = {};
    display();
    setFocus();
}

void RiggedTodayPage::beginFromPaper(const PaperHead& head)
{
    const auto found = m_presenter.paperFinding(m_view.airframe.id, head.begins);
    if (!found)
        return report(found.problem());
    const Formats formats;
    switch (found.value().finding) {
    case PaperMoment::Finding::ToCome:
        return m_paper->refuse(PaperWords::dayToCome(), false);
    case PaperMoment::Finding::BeforeFirstFitting:
        return m_paper->refuse(PaperWords::beforeFirstFitting(formats.day(found.value().first)), false);
    case PaperMoment::Finding::RiggedThatDay:
        if (!head.isAnother)
            return m_paper->refuse(
                PaperWords::riggedThatDay(formats.moment(found.value().otherBegins),
                                          QString::fromStdString(found.value().otherLeader)),
                true);
        break;
    case PaperMoment::Finding::Possible:
        break;
    }
    if (begin(head.first, head.origin, {}, FromPaper{head.begins, head.enteredBy})) {
        m_paper->clear();
        m_session.second = head.second;
    }
}

void RiggedTodayPage::takenApart(PersonId statedBy)
{
    if (report(m_writer.noteTakenApart(m_view.airframe.id, statedBy)))
        refresh();
    setFocus();
}

// One that another window has left meanwhile is shown before it is read.
void RiggedTodayPage::noteRead(PersonId person)
{
    if (mayPress() && !m_view.notes.empty() && report(m_writer.noteRead(m_view, person))) {
        m_notice = RiggedWords::noteIsRead();
        refresh();
    }
    setFocus();
}

void RiggedTodayPage::tick(TickKind kind)
{
    if (m_view.record)
        report(m_writer.tick(m_view.record->id, kind, m_session.first.value_or(m_view.record->leader)));
    refresh();
}

void RiggedTodayPage::pressReading(const GaugeReading& taken)
{
    if (!mayPress() || !m_sheet || !m_sheet->gauge)
        return;
    auto reading = readingAt(m_session, *m_view.now, taken, *m_sheet->gauge, m_sheet->fitting, momentNow());
    if (!reading)
        return;
    m_painted.reset();
    if (reading->state == SeatState::Locked)
        m_painted = withoutSight(judgeIn(m_sheet->history, *reading), m_sheet->notSeen);
    m_session = press(std::move(m_session), std::move(*reading));
    m_coupling->showReading(taken, m_painted);
    m_idle->start();
    setFocus();
    m_saving->start();
}

void RiggedTodayPage::askCorrection()
{
    if (!mayPress() || !m_sheet || !m_sheet->flow.last)
        return;
    const Reading wrong = *m_sheet->flow.last;
    m_prompts.askText(
        this, RiggedWords::correctTitle(), RiggedWords::correctQuestion(), PromptWords::spoiledBy(),
        [this, wrong](const QString& reason) { perform(wantCorrected, wrong, reason.toStdString()); });
}

void RiggedTodayPage::askStrike()
{
    if (!mayPress() || !m_sheet || !m_sheet->flow.last)
        return;
    const Reading slip = *m_sheet->flow.last;
    const Formats formats;
    m_prompts.askText(
        this, RiggedWords::strikeTitle(),
        RiggedWords::strikeQuestion(formats.interval(slip.interval), formats.time(slip.stamp.when)),
        PromptWords::spoiledBy(),
        [this, slip](const QString& reason) { perform(strike, slip, reason.toStdString()); });
}

void RiggedTodayPage::escape()
{
    if (panelNow() == m_paper)
        return leavePaper();
    if (panelNow() == m_coupling && (m_coupling->closePlay() || m_coupling->clearFigure()))
        return;
    perform(interrupt, InterruptionReason::Asked);
}

void RiggedTodayPage::step(int by)
{
    if (panelNow() == m_coupling || panelNow() == m_control || panelNow() == m_connected)
        perform(stepBy, by);
    else
        moveByAPage(m_stack->currentWidget(), by);
}

bool RiggedTodayPage::isBlind() const
{
    return m_sheet && m_session.turn == Turn::Second;
}

void RiggedTodayPage::leave()
{
    if (settle() && m_view.now)
        take(interrupt(m_session, *m_view.now, InterruptionReason::ProgramClosed, momentNow()));
    m_idle->stop();
}

void RiggedTodayPage::close(PersonId first, PersonId second, const QString& note,
                            const std::vector<TickKind>& counted)
{
    const RecordId closed = m_view.record->id;
    if (!report(m_writer.close(m_view, {first, second, note.toStdString(), counted})))
        return;
    refresh();
    // The one that was closed, which is not the last one where it was typed in from paper.
    showSummary(m_summary->showRecord(*m_airframe, closed));
}

void RiggedTodayPage::showLastRecord()
{
    if (m_airframe)
        showSummary(m_summary->showLast(*m_airframe));
}

void RiggedTodayPage::showSummary(const Outcome& shown)
{
    if (!report(shown))
        return;
    m_session.place = {RecordPlace::Kind::Summary, {}};
    display();
    setFocus();
}

void RiggedTodayPage::leaveSummary()
{
    m_session.place = {};
    display();
    setFocus();
}

bool RiggedTodayPage::report(const Outcome& outcome)
{
    if (!outcome)
        report(outcome.problem());
    return static_cast<bool>(outcome);
}

void RiggedTodayPage::report(const Problem& problem)
{
    emit problemArose(ProblemWords::sentence(problem, {}));
}

// A finger that stays on a key answers one question. Qt's own flag is not enough: keys that a machine types
// have it too, and some repeats of a held key have not.
bool RiggedTodayPage::isHeld(const QKeyEvent& event)
{
    const quint64 at = event.timestamp();
    const bool isSame = event.key() == std::exchange(m_lastKey, event.key());
    const quint64 since = at - std::exchange(m_lastAt, at);
    const bool isRepeat = event.isAutoRepeat() && at > m_pressedAt + kHeld;
    m_isHeld = isSame && (isRepeat || (m_isHeld && since <= kRepeats));
    if (!m_isHeld)
        m_pressedAt = at;
    return m_isHeld;
}

void RiggedTodayPage::keyPressEvent(QKeyEvent* event)
{
    if (isHeld(*event))
        return;
    if (!settle())
        return;
    const QWidget* panel = panelNow();
    const bool taken = (panel == m_coupling && m_sheet && m_coupling->takeKey(event)) ||
                       (panel == m_control && m_control->takeKey(event)) ||
                       (panel == m_season && m_season->takeKey(event)) ||
                       (panel == m_connected && m_connected->takeKey(event)) ||
                       (panel == m_start && m_start->takeKey(event)) ||
                       (panel == m_paper && m_paper->takeKey(event)) ||
                       (panel == m_summary && m_summary->takeKey(event));
    if (!taken)
        Page::keyPressEvent(event);
}

} // namespace rig
