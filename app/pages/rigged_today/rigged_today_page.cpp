#include "app/pages/rigged_today/rigged_today_page.h"

#include "app/pages/prompts.h"
#include "app/pages/rigged_today/close_panel.h"
#include "app/pages/rigged_today/control_check_panel.h"
#include "app/pages/rigged_today/coupling_panel.h"
#include "app/pages/rigged_today/season_panel.h"
#include "app/pages/rigged_today/start_panel.h"
#include "app/pages/rigged_today/summary_panel.h"
#include "app/widgets/flow_scroll.h"
#include "app/wording/control_words.h"
#include "app/wording/formats.h"
#include "app/wording/problem_words.h"
#include "app/wording/rigged_words.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QScrollArea>
#include <QScrollBar>
#include <QShortcut>
#include <QStackedWidget>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <functional>
#include <utility>

namespace rig {

namespace {

// A break longer than this sends the coupling back to the look (docs/terms.md, interrupted).
constexpr int kIdleMinutes = 20;

// What stands at each place of the stack.
enum Panel { kStart, kCoupling, kClose, kControl, kSeason };

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

} // namespace

RiggedTodayPage::RiggedTodayPage(Records& records, const Clock& clock, Prompts& prompts, QWidget* parent)
    : Page{parent}, m_presenter{records, clock}, m_clock{clock}, m_prompts{prompts}
{
    setObjectName("riggedToday");
    setFocusPolicy(Qt::StrongFocus);
    auto* layout = new QHBoxLayout{this};
    layout->setContentsMargins(14, 14, 14, 14);
    layout->setSpacing(14);
    m_list = new RecordList;
    layout->addWidget(m_list);
    auto* card = new QFrame;
    card->setProperty("card", true);
    auto* inner = new QVBoxLayout{card};
    inner->setContentsMargins(1, 1, 1, 1);
    m_stack = new QStackedWidget;
    m_start = new StartPanel;
    m_coupling = new CouplingPanel;
    m_close = new ClosePanel;
    m_control = new ControlCheckPanel{records, clock};
    m_season = new SeasonPanel;
    m_stack->addWidget(new FlowScroll{m_start});
    m_stack->addWidget(m_coupling); // scrolls by itself, above a row of buttons that stays
    m_stack->addWidget(new FlowScroll{m_close});
    m_stack->addWidget(m_control);
    m_stack->addWidget(new FlowScroll{m_season});
    m_summary = new SummaryPanel{records, clock, prompts};
    m_stack->addWidget(m_summary);
    inner->addWidget(m_stack);
    layout->addWidget(card, 1);
    m_idle = new QTimer{this};
    m_idle->setSingleShot(true);
    m_idle->setInterval(kIdleMinutes * 60 * 1000);
    connectPanels();
}

void RiggedTodayPage::connectPanels()
{
    // Whatever is pressed waits for the reading that was pressed before it.
    const auto settled = [this](auto action) {
        return [this, action](const auto&... pressed) {
            if (settle())
                std::invoke(action, this, pressed...);
        };
    };
    const auto onKey = [this, settled](Qt::Key key, auto action) {
        auto* shortcut = new QShortcut{QKeySequence{key}, this};
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, settled(action));
    };
    using Self = RiggedTodayPage*;
    onKey(Qt::Key_Escape, [](Self self) { self->interrupt(InterruptionReason::Asked); });
    onKey(Qt::Key_PageDown, [](Self self) { self->step(1); });
    onKey(Qt::Key_PageUp, [](Self self) { self->step(-1); });
    connect(m_idle, &QTimer::timeout, this,
            settled([](Self self) { self->interrupt(InterruptionReason::Idle); }));
    connect(m_list, &RecordList::chosen, this, settled(&RiggedTodayPage::showPlace));
    connect(m_start, &StartPanel::lastRecordAsked, this, &RiggedTodayPage::showSummary);
    connect(m_summary, &SummaryPanel::backAsked, this, &RiggedTodayPage::leaveSummary);
    connect(m_summary, &SummaryPanel::problemArose, this, &Page::problemArose);
    connect(m_start, &StartPanel::beginAsked, this, &RiggedTodayPage::begin);
    connect(m_start, &StartPanel::takenApart, this, &RiggedTodayPage::takenApart);
    connect(m_season, &SeasonPanel::ticked, this, &RiggedTodayPage::tick);
    connect(m_season, &SeasonPanel::nextAsked, this, &RiggedTodayPage::next);
    connect(m_close, &ClosePanel::closeAsked, this, &RiggedTodayPage::close);
    connect(m_coupling, &CouplingPanel::answered, this, settled(&RiggedTodayPage::answer));
    connect(m_coupling, &CouplingPanel::readingChosen, this, settled(&RiggedTodayPage::chooseReading));
    connect(m_coupling, &CouplingPanel::personChosen, this, settled(&RiggedTodayPage::choosePerson));
    connect(m_coupling, &CouplingPanel::gaugeChosen, this, settled([](Self self, GaugeId gauge) {
                self->m_gauge = gauge;
                self->showCurrent();
                self->setFocus();
            }));
    connect(m_coupling, &CouplingPanel::measureAgainAsked, this, settled([](Self self) {
                self->m_wanted = ReadingWanted::Again;
                self->showCurrent();
            }));
    connect(m_coupling, &CouplingPanel::correctionAsked, this, settled(&RiggedTodayPage::askCorrection));
    connect(m_coupling, &CouplingPanel::nextAsked, this, settled(&RiggedTodayPage::next));
    connect(m_coupling, &CouplingPanel::turnAsked, this, settled(&RiggedTodayPage::changeTurn));
    connect(m_control, &ControlCheckPanel::changed, this, [this] {
        refresh();
        setFocus();
    });
    connect(m_control, &ControlCheckPanel::onwardAsked, this, &RiggedTodayPage::afterControlCheck);
    connect(m_control, &ControlCheckPanel::problemArose, this,
            [this](const Problem& problem) { report(problem); });
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
        m_place = {};
        m_turn = Turn::First;
        m_persons.clear();
    }
    if (airframe && m_resumed.insert(*airframe).second)
        report(m_presenter.resume(*airframe));
    refresh();
}

void RiggedTodayPage::refresh()
{
    if (!m_airframe) {
        m_list->hide();
        m_stack->setCurrentIndex(kStart);
        m_start->displayNothing();
        return;
    }
    auto view = m_presenter.view(*m_airframe);
    if (!view)
        return report(view.problem());
    m_view = std::move(view).value();
    if (m_place.kind == RecordPlace::Kind::Coupling &&
        std::ranges::find(m_view.couplings, m_place.coupling, &Coupling::id) == m_view.couplings.end())
        m_place = {RecordPlace::Kind::Coupling, nextWaiting().value_or(CouplingId{})};
    showCurrent();
    emit factsChanged();
}

void RiggedTodayPage::showPlace(const RecordPlace& place)
{
    if (place.kind == RecordPlace::Kind::SecondInspection)
        return beginSecondInspection();
    if (!(place == m_place) && isHalfDone())
        interrupt(InterruptionReason::Asked);
    m_place = place;
    m_wanted = ReadingWanted::None;
    m_notice.clear();
    refresh();
    setFocus();
}

void RiggedTodayPage::showCurrent()
{
    const bool running = m_view.record && !m_view.record->fromAnotherDay && !m_view.couplings.empty();
    m_list->setVisible(running);
    m_sheet.reset();
    if (!running) {
        m_start->display(m_view);
        m_stack->setCurrentIndex(kStart);
        return;
    }
    if (m_place.kind == RecordPlace::Kind::Close) {
        m_close->display(m_view);
        m_stack->setCurrentIndex(kClose);
    } else if (m_place.kind == RecordPlace::Kind::Season) {
        m_season->display(m_view);
        m_stack->setCurrentIndex(kSeason);
    } else if (m_place.kind == RecordPlace::Kind::ControlCheck) {
        m_control->display(m_view, m_view.review.bothDone() < std::ssize(m_view.couplings)
                                       ? RiggedWords::goToSecond()
                                       : RiggedWords::goToClose());
        m_stack->setCurrentIndex(kControl);
    } else {
        showCoupling();
        m_stack->setCurrentIndex(kCoupling);
    }
    m_list->display(m_view, m_place, m_turn);
}

void RiggedTodayPage::showCoupling()
{
    auto sheet = m_presenter.sheet(m_view, m_place.coupling, m_turn);
    if (!sheet)
        return report(sheet.problem());
    m_sheet = std::move(sheet).value();
    if (const auto person = m_persons.find(m_turn); person != m_persons.end())
        m_sheet->person = person->second;
    // Whoever did this coupling first is no second person for it, whatever was chosen at another one.
    if (m_turn == Turn::Second && m_sheet->person && m_sheet->firstPersons.contains(*m_sheet->person))
        m_sheet->person.reset();
    m_presenter.useGauge(*m_sheet, m_view, m_gauge);
    m_sheet->wanted = m_wanted;
    m_coupling->display(m_view, *m_sheet, nextText());
    if (!m_notice.isEmpty())
        m_coupling->showNotice(m_notice);
    else if (const QString hint = otherHandsHint(); !hint.isEmpty())
        m_coupling->showNotice(hint);
}

// Left and right by different hands, where two are there: said before the look, and never more than said.
QString RiggedTodayPage::otherHandsHint() const
{
    const CouplingSheet& sheet = *m_sheet;
    if (!sheet.person || sheet.flow.begun || sheet.turn == Turn::Second ||
        !sheet.otherSidePersons.contains(*sheet.person))
        return {};
    const auto who = std::ranges::find(m_view.persons, *sheet.person, &Person::id);
    return RiggedWords::otherHandsSuggested(QString::fromStdString(who->name),
                                            QString::fromStdString(sheet.otherSide->name));
}

void RiggedTodayPage::begin(PersonId leader, RecordOrigin origin)
{
    const auto record = m_presenter.begin(m_view, leader, origin);
    if (!record)
        return report(record.problem());
    m_persons = {{Turn::First, leader}};
    m_turn = Turn::First;
    m_place = {};
    refresh();
    if (m_view.isFirstOfSeason)
        return showPlace({RecordPlace::Kind::Season, {}});
    setFocus();
}

void RiggedTodayPage::takenApart()
{
    if (report(m_presenter.noteTakenApart(m_view)))
        refresh();
}

void RiggedTodayPage::tick(TickKind kind)
{
    if (!m_view.record)
        return;
    const auto who = m_persons.find(Turn::First);
    report(m_presenter.tick(m_view.record->id, kind,
                            who != m_persons.end() ? who->second : m_view.record->leader));
    refresh();
}

void RiggedTodayPage::answer(CheckKind kind, Answer answer)
{
    if (!m_sheet || !m_sheet->person)
        return;
    m_notice.clear();
    if (report(m_presenter.answer(m_view.record->id, *m_sheet, kind, answer)))
        refresh();
    m_idle->start();
    setFocus();
}

void RiggedTodayPage::chooseReading(const GaugeReading& reading)
{
    if (!m_sheet || !m_sheet->person || !m_sheet->gauge)
        return;
    const Judgement judgement = m_presenter.preview(*m_sheet, reading);
    m_pressed = PressedReading{m_view.record->id, *m_sheet, reading, judgement, {}};
    if (m_wanted == ReadingWanted::Corrected)
        m_pressed->reason = m_correctionReason;
    m_coupling->showReading(reading, judgement);
    m_idle->start();
    setFocus();
    // The verdict is painted first; the save follows in the next turn of the event loop, or before whatever
    // is pressed earlier than that.
    QTimer::singleShot(0, this, &RiggedTodayPage::settle);
}

bool RiggedTodayPage::settle()
{
    if (!m_pressed)
        return true;
    const PressedReading pressed = *std::exchange(m_pressed, std::nullopt);
    const auto kept =
        m_presenter.keep(pressed.record, pressed.sheet, pressed.taken, pressed.judgement, pressed.reason);
    if (!kept) {
        m_coupling->showNotSaved();
        report(kept.problem());
        return false;
    }
    m_wanted = ReadingWanted::None;
    m_correctionReason.clear();
    m_notice = newsOf(kept.value(), pressed.sheet);
    refresh();
    return true;
}

QString RiggedTodayPage::newsOf(const ReadingNews& news, const CouplingSheet& sheet) const
{
    if (news.looksSwapped)
        return RiggedWords::looksSwapped(QString::fromStdString(sheet.otherSide->name));
    if (!news.pair)
        return {};
    const Formats formats;
    const QString apart = formats.millimetres(news.pair->smallestDifference);
    const QString limit = formats.millimetres(news.spread.limit());
    switch (news.pair->verdict) {
    case numbers::PairVerdict::Agree:
        return RiggedWords::readingsAgree(apart, limit);
    case numbers::PairVerdict::Disagree:
        return RiggedWords::readingsDisagree(apart, limit, news.spread.pairs);
    case numbers::PairVerdict::Unresolved:
        break;
    }
    return RiggedWords::readingsUnresolved(limit);
}

void RiggedTodayPage::choosePerson(PersonId person)
{
    const auto before = m_persons.find(m_turn);
    const bool changed = before != m_persons.end() && before->second != person;
    if (changed && isHalfDone())
        interrupt(InterruptionReason::PersonChanged);
    m_persons[m_turn] = person;
    showCurrent();
    setFocus();
}

void RiggedTodayPage::askCorrection()
{
    const auto reason = m_prompts.askText(this, RiggedWords::correctTitle(), RiggedWords::correctQuestion());
    if (!reason || reason->trimmed().isEmpty())
        return;
    m_correctionReason = reason->trimmed().toStdString();
    m_wanted = ReadingWanted::Corrected;
    showCurrent();
    setFocus();
}

std::optional<CouplingId> RiggedTodayPage::nextWaiting() const
{
    const CouplingStage wanted = m_turn == Turn::First ? CouplingStage::FirstDone : CouplingStage::BothDone;
    const auto& all = m_view.review.couplings;
    const auto here = std::ranges::find(all, m_place.coupling, &CouplingProgress::id);
    const auto isWaiting = [wanted](const CouplingProgress& one) { return one.stage < wanted; };
    const auto start = here == all.end() ? all.begin() : std::next(here);
    if (const auto after = std::find_if(start, all.end(), isWaiting); after != all.end())
        return after->id;
    if (const auto before = std::find_if(all.begin(), start, isWaiting); before != start)
        return before->id;
    return std::nullopt;
}

QString RiggedTodayPage::nextText() const
{
    if (nextWaiting())
        return RiggedWords::nextCoupling();
    if (m_turn == Turn::First)
        return hasControlCheckToDo() ? ControlWords::goHere() : RiggedWords::goToSecond();
    return RiggedWords::goToClose();
}

bool RiggedTodayPage::hasControlCheckToDo() const
{
    return m_view.review.surfacesDone() < std::ssize(m_view.review.surfaces);
}

void RiggedTodayPage::afterControlCheck()
{
    if (m_view.review.bothDone() < std::ssize(m_view.couplings))
        beginSecondInspection();
    else
        showPlace({RecordPlace::Kind::Close, {}});
}

void RiggedTodayPage::next()
{
    if (const auto waiting = nextWaiting())
        showPlace({RecordPlace::Kind::Coupling, *waiting});
    else if (m_turn == Turn::First && hasControlCheckToDo())
        showPlace({RecordPlace::Kind::ControlCheck, {}});
    else if (m_turn == Turn::First)
        beginSecondInspection();
    else
        showPlace({RecordPlace::Kind::Close, {}});
}

void RiggedTodayPage::step(int by)
{
    if (m_stack->currentIndex() == kControl)
        return m_control->step(by);
    if (m_stack->currentIndex() != kCoupling)
        return moveByAPage(m_stack->currentWidget(), by);
    const auto& all = m_view.couplings;
    const auto here = std::ranges::find(all, m_place.coupling, &Coupling::id);
    const auto at = std::distance(all.begin(), here) + by;
    if (here == all.end() || at < 0 || at >= std::ssize(all))
        return;
    showPlace({RecordPlace::Kind::Coupling, all[static_cast<std::size_t>(at)].id});
}

void RiggedTodayPage::changeTurn(Turn turn)
{
    if (isHalfDone())
        interrupt(InterruptionReason::PersonChanged);
    m_turn = turn;
    m_wanted = ReadingWanted::None;
    m_notice.clear();
    refresh();
    setFocus();
}

void RiggedTodayPage::beginSecondInspection()
{
    if (isHalfDone())
        interrupt(InterruptionReason::PersonChanged);
    m_turn = Turn::Second;
    m_place = {};
    showPlace({RecordPlace::Kind::Coupling, nextWaiting().value_or(m_view.couplings.front().id)});
}

bool RiggedTodayPage::isHalfDone() const
{
    return m_sheet && m_sheet->flow.begun && !m_sheet->flow.isDone();
}

void RiggedTodayPage::interrupt(InterruptionReason reason)
{
    if (!isHalfDone() || !m_view.record)
        return;
    const Outcome noted = m_presenter.interrupt(m_view.record->id, m_sheet->coupling.id, m_turn, reason);
    if (!report(noted))
        return;
    m_wanted = ReadingWanted::None;
    m_notice = RiggedWords::interruptedAt(Formats{}.time(m_clock.now()));
    refresh();
}

bool RiggedTodayPage::isBlind() const
{
    return m_sheet && m_turn == Turn::Second;
}

void RiggedTodayPage::leave()
{
    settle();
    if (isHalfDone())
        interrupt(InterruptionReason::ProgramClosed);
    m_idle->stop();
}

void RiggedTodayPage::close(PersonId first, PersonId second, const QString& note,
                            const std::vector<TickKind>& counted)
{
    if (!report(m_presenter.close(m_view, first, second, note.toStdString(), counted)))
        return;
    m_turn = Turn::First;
    m_place = {};
    m_persons.clear();
    refresh();
    showSummary();
}

void RiggedTodayPage::showSummary()
{
    if (!m_airframe || !report(m_summary->showLast(*m_airframe)))
        return;
    m_list->hide();
    m_stack->setCurrentWidget(m_summary);
    setFocus();
}

void RiggedTodayPage::leaveSummary()
{
    showCurrent();
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

void RiggedTodayPage::keyPressEvent(QKeyEvent* event)
{
    if (!settle())
        return;
    if (m_stack->currentIndex() == kCoupling && m_sheet && m_coupling->takeKey(event))
        return;
    if (m_stack->currentIndex() == kControl && m_control->takeKey(event))
        return;
    if (m_stack->currentIndex() == kStart && m_start->takeKey(event))
        return;
    if (m_stack->currentWidget() == m_summary && m_summary->takeKey(event))
        return;
    Page::keyPressEvent(event);
}

} // namespace rig
