// What is pressed on Rigged today, and what becomes of it.

#include "app/pages/prompts.h"
#include "app/pages/rigged_today/close_panel.h"
#include "app/pages/rigged_today/connected_panel.h"
#include "app/pages/rigged_today/control_check_panel.h"
#include "app/pages/rigged_today/coupling_panel.h"
#include "app/pages/rigged_today/paper_banner.h"
#include "app/pages/rigged_today/paper_start.h"
#include "app/pages/rigged_today/record_list.h"
#include "app/pages/rigged_today/rigged_panels.h"
#include "app/pages/rigged_today/rigged_today_page.h"
#include "app/pages/rigged_today/rigging_notices.h"
#include "app/pages/rigged_today/season_panel.h"
#include "app/pages/rigged_today/start_panel.h"
#include "app/pages/rigged_today/summary_panel.h"
#include "app/wording/formats.h"
#include "app/wording/prompt_words.h"
#include "app/wording/rigged_words.h"

#include <QApplication>
#include <QShortcut>
#include <QTimer>

#include <utility>

namespace rig {

template <typename Move, typename... Pressed>
void RiggedTodayPage::perform(const Move& move, const Pressed&... pressed)
{
    if (!mayPress() || !m_work.isOpen())
        return;
    m_idle->start();
    if (take(move(m_work.session(), *m_work.view().now, pressed..., m_work.momentNow())))
        setFocus();
}

template <typename Move> auto RiggedTodayPage::performs(const Move& move)
{
    return [this, move](const auto&... pressed) { perform(move, pressed...); };
}

bool RiggedTodayPage::take(SessionStep step)
{
    if (!report(m_work.take(std::move(step))))
        return false;
    refresh();
    return true;
}

bool RiggedTodayPage::settle()
{
    if (!m_work.session().pressed)
        return true;
    if (take(keep(m_work.session())))
        return true;
    m_work.dropPressed();
    m_panels->coupling()->showNotSaved();
    return false;
}

// What was pressed belongs to what was on the screen: where another window has written since, or where it is
// long ago, that is shown first.
bool RiggedTodayPage::mayPress()
{
    m_work.say({});
    if (!settle())
        return false;
    if (m_work.hasMovedOn()) {
        showOthersWork();
        return false;
    }
    if (!m_work.isBackFromABreak())
        return true;
    take(m_work.interrupted(InterruptionReason::Idle));
    return false;
}

// Nor is what was typed behind it meant for what stands there now.
void RiggedTodayPage::showOthersWork()
{
    const bool isAtAJoint = m_panels->isNow(m_panels->coupling());
    report(m_work.catchUp());
    QString said = RiggedWords::changedInAnotherWindow();
    if (const QStringList others = m_work.takeOthers(); !others.isEmpty())
        said += QLatin1Char(' ') + RiggedWords::othersWorked(others);
    m_work.say(said);
    display();
    emit factsChanged();
    if (isAtAJoint)
        m_quiet->start();
}

// What is typed ahead is meant for the joint that the screen said comes next. Where another window has done
// that one meanwhile, it ends here.
void RiggedTodayPage::goOnward()
{
    const RecordPlace before = m_work.session().place;
    const QStringList others = m_work.takeOthers();
    perform(goOn);
    if (others.isEmpty() || m_work.session().place == before)
        return;
    QStringList said{RiggedWords::othersWorked(others), RiggedWords::typedAheadIsLost()};
    if (!m_work.news().isEmpty())
        said.prepend(m_work.news());
    m_work.say(said.join(QLatin1Char(' ')));
    display();
    m_quiet->start();
}

// What was answered in another window stands there as though it had been seen here: it is begun anew, and
// what was pressed was meant for what stood there.
bool RiggedTodayPage::mayWorkHere()
{
    if (!mayPress())
        return false;
    if (!m_work.isBegunElsewhere())
        return true;
    if (take(m_work.begunAnew()))
        setFocus();
    return false;
}

void RiggedTodayPage::answerHere(CheckKind kind, Answer given)
{
    if (m_work.isOpen() && mayWorkHere())
        perform(answer, kind, given);
}

void RiggedTodayPage::breakOff(InterruptionReason reason)
{
    if (settle() && m_work.isOpen())
        take(m_work.interrupted(reason));
}

QShortcut* RiggedTodayPage::onKey(Qt::Key key, const std::function<void()>& action)
{
    auto* shortcut = new QShortcut{QKeySequence{key}, this};
    shortcut->setContext(Qt::WidgetWithChildrenShortcut);
    connect(shortcut, &QShortcut::activated, this, action);
    return shortcut;
}

void RiggedTodayPage::connectKeys()
{
    onKey(Qt::Key_Escape, [this] { escape(); })->setAutoRepeat(false);
    onKey(Qt::Key_F8, [this] { m_banner->press(); })->setAutoRepeat(false);
    onKey(Qt::Key_PageDown, [this] { step(1); });
    onKey(Qt::Key_PageUp, [this] { step(-1); });
}

void RiggedTodayPage::connectStart()
{
    const StartPanel* start = m_panels->start();
    connect(start, &StartPanel::lastRecordAsked, this, &RiggedTodayPage::showLastRecord);
    connect(start, &StartPanel::beginAsked, this,
            [this](PersonId leader, RecordOrigin origin, std::optional<int> celsius) {
                begin(leader, origin, celsius, {});
            });
    connect(start, &StartPanel::takenApart, this, [this](PersonId statedBy) {
        if (mayPress() && report(m_work.noteTakenApart(statedBy)))
            refresh();
        setFocus();
    });
    connect(start, &StartPanel::noteReadAsked, this, [this](PersonId person) {
        // One that another window has left meanwhile is shown before it is read.
        if (mayPress() && !m_work.view().notes.empty() && report(m_work.noteRead(person))) {
            m_work.say(RiggedWords::noteIsRead());
            refresh();
        }
        setFocus();
    });
    connect(start, &StartPanel::paperAsked, this, &RiggedTodayPage::enterFromPaper);
    connect(m_panels->paper(), &PaperStart::beginAsked, this, &RiggedTodayPage::beginFromPaper);
    connect(m_panels->paper(), &PaperStart::standingsAsked, this, [this](Day day) {
        const auto people = m_work.presenter().peopleOn(m_work.view().airframe.id, day);
        if (!people)
            return report(people.problem());
        m_panels->paper()->setStandings(people.value());
    });
    connect(m_panels->paper(), &PaperStart::backAsked, this, &RiggedTodayPage::leavePaper);
}

void RiggedTodayPage::connectPanels()
{
    connect(m_list, &RecordList::chosen, this, performs(goTo));
    connect(m_banner, &PaperBanner::secondTypesChosen, this, performs(chooseWhoTypes));
    connect(m_panels->season(), &SeasonPanel::ticked, this, &RiggedTodayPage::tick);
    connect(m_panels->season(), &SeasonPanel::nextAsked, this, performs(goOn));
    connect(m_panels->connected(), &ConnectedPanel::stated, this, performs(stateConnected));
    connect(m_panels->connected(), &ConnectedPanel::nextAsked, this, performs(goOn));
    connect(
        m_panels->close(), &ClosePanel::closeAsked, this,
        [this](PersonId first, PersonId second, const QString& note, const std::vector<TickKind>& counted) {
            close({first, second, note.toStdString(), counted});
        });
    ControlCheckPanel* control = m_panels->control();
    control->askBeforeWriting([this] { return mayPress(); });
    connect(control, &ControlCheckPanel::answered, this, performs(answerSurface));
    connect(control, &ControlCheckPanel::called, this, performs(callSurface));
    connect(control, &ControlCheckPanel::peopleChosen, this, [this](const CheckPeople& people) {
        QWidget* box = focusWidget();
        perform(chooseCheckPeople, people);
        if (box && !people.areTwo())
            box->setFocus(); // the other one is chosen next, by the key beside it
    });
    connect(control, &ControlCheckPanel::surfaceChosen, this, performs(chooseSurface));
    connect(control, &ControlCheckPanel::onwardAsked, this, performs(goOn));
    connect(control, &ControlCheckPanel::changed, this, [this] {
        refresh();
        setFocus();
    });
    connect(control, &ControlCheckPanel::problemArose, this,
            [this](const Problem& problem) { report(problem); });
    connect(m_panels->summary(), &SummaryPanel::backAsked, this,
            [this] { standAt(RecordPlace::Kind::Coupling); });
    connect(m_panels->summary(), &SummaryPanel::changed, this, &Page::factsChanged);
    connect(m_panels->summary(), &SummaryPanel::problemArose, this, &Page::problemArose);
}

void RiggedTodayPage::connectCoupling()
{
    const CouplingPanel* coupling = m_panels->coupling();
    connect(coupling, &CouplingPanel::answered, this, &RiggedTodayPage::answerHere);
    connect(coupling, &CouplingPanel::personChosen, this, performs(choosePerson));
    connect(coupling, &CouplingPanel::gaugeChosen, this, performs(chooseGauge));
    connect(coupling, &CouplingPanel::measureAgainAsked, this, performs(wantAgain));
    connect(coupling, &CouplingPanel::nextAsked, this, &RiggedTodayPage::goOnward);
    connect(coupling, &CouplingPanel::playFelt, this,
            [this](const PlayFound& along, const PlayFound& across, const QString& note) {
                perform(feelPlay, along, across, note.toStdString());
            });
    connect(coupling, &CouplingPanel::turnAsked, this, &RiggedTodayPage::askTurn);
    connect(coupling, &CouplingPanel::readingChosen, this, &RiggedTodayPage::pressReading);
    connect(coupling, &CouplingPanel::correctionAsked, this, &RiggedTodayPage::askCorrection);
    connect(coupling, &CouplingPanel::restIsLost, m_quiet, qOverload<>(&QTimer::start));
    connect(coupling, &CouplingPanel::strikeAsked, this, &RiggedTodayPage::askStrike);
}

bool RiggedTodayPage::begin(PersonId leader, RecordOrigin origin, std::optional<int> celsius,
                            const std::optional<FromPaper>& paper)
{
    if (!mayPress() && !m_work.isOpen())
        return false;
    const auto isBegunHere = m_work.begin(leader, origin, celsius, paper);
    if (!isBegunHere) {
        report(isBegunHere.problem());
        return false;
    }
    display();
    emit factsChanged();
    setFocus();
    return isBegunHere.value();
}

void RiggedTodayPage::beginFromPaper(const PaperHead& head)
{
    const auto found = m_work.presenter().paperFinding(m_work.view().airframe.id, head.begins);
    if (!found)
        return report(found.problem());
    if (const QString refusal = refusalOf(found.value(), head.isAnother); !refusal.isEmpty())
        return m_panels->paper()->refuse(refusal,
                                         found.value().finding == PaperMoment::Finding::RiggedThatDay);
    if (!begin(head.first, head.origin, {}, FromPaper{head.begins, head.enteredBy}))
        return;
    m_panels->paper()->clear();
    m_work.chooseSecond(head.second);
}

void RiggedTodayPage::tick(TickKind kind)
{
    if (!mayPress() || !m_work.isOpen())
        return display(); // its box is ticked on the screen alone
    report(m_work.tick(kind));
    refresh();
}

void RiggedTodayPage::pressReading(const GaugeReading& taken)
{
    if (!mayWorkHere() || !m_sheet || !m_work.press(taken, *m_sheet))
        return;
    m_panels->coupling()->showReading(taken, m_work.painted());
    m_idle->start();
    setFocus();
    m_saving->start();
}

void RiggedTodayPage::askTurn(Turn turn)
{
    if (!mayPress() || !m_sheet)
        return;
    const CouplingId coupling = m_sheet->coupling.id;
    if (turn == Turn::Second || !isKeptBack(m_work.session(), *m_work.view().now, coupling))
        return perform(changeTurn, turn);
    const QString name = QString::fromStdString(m_sheet->coupling.name);
    m_work.say(m_work.view().now->find(coupling)->first.isDone() ? RiggedWords::keptBack(name)
                                                                 : RiggedWords::secondIsHalfWay(name));
    display();
    setFocus();
}

void RiggedTodayPage::askCorrection()
{
    if (!mayPress() || !m_sheet || !m_sheet->flow.last)
        return;
    const Reading wrong = *m_sheet->flow.last;
    m_prompts.askText(this, RiggedWords::correctTitle(), correctQuestionOf(wrong, m_work.view().persons),
                      PromptWords::spoiledBy(), [this, wrong](const QString& reason) {
                          perform(wantCorrected, wrong, reason.toStdString());
                      });
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
        PromptWords::noReadingHere(),
        [this, slip](const QString& reason) { perform(strike, slip, reason.toStdString()); });
}

void RiggedTodayPage::escape()
{
    if (QWidget* list = QApplication::activePopupWidget()) {
        list->close();
        return;
    }
    if (m_panels->isNow(m_panels->paper()))
        return leavePaper();
    CouplingPanel* coupling = m_panels->coupling();
    if (m_panels->isNow(coupling) && (coupling->closePlay() || coupling->clearFigure()))
        return;
    perform(interrupt, InterruptionReason::Asked);
}

void RiggedTodayPage::step(int by)
{
    if (m_panels->isSteppedThrough())
        perform(stepBy, by);
    else
        m_panels->moveByAPage(by);
}

void RiggedTodayPage::close(const RecordCloseWanted& wanted)
{
    if (!mayPress() || !m_work.isOpen())
        return;
    const RecordId closed = m_work.view().record->id;
    if (!report(m_work.close(wanted)) || !report(m_work.read()))
        return;
    // The one that was closed, which is not the last one where it was typed in from paper.
    showSummary(m_panels->summary()->showRecord(*m_work.airframe(), closed));
    emit factsChanged();
}

} // namespace rig
