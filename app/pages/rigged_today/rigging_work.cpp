#include "app/pages/rigged_today/rigging_work.h"

#include "app/pages/rigged_today/rigging_notices.h"
#include "app/wording/formats.h"
#include "app/wording/rigged_words.h"
#include "core/airframe/name_in.h"
#include "core/review/not_seen.h"

#include <algorithm>
#include <utility>

namespace rig {

namespace {

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

RiggingWork::RiggingWork(Records& records, const Clock& clock)
    : m_presenter{records, clock}, m_writer{records, clock}, m_clock{clock}
{
}

Moment RiggingWork::momentNow() const
{
    return m_view.record ? m_view.record->momentOf(m_clock.now()) : m_clock.now();
}

void RiggingWork::turnTo(std::optional<AirframeId> airframe)
{
    m_airframe = airframe;
    m_session = {};
    m_news.clear();
    m_others.clear();
}

Outcome RiggingWork::resume()
{
    return m_airframe && m_resumed.insert(*m_airframe).second ? m_writer.resume(*m_airframe)
                                                              : Outcome{Done{}};
}

WorkInHand RiggingWork::handOn()
{
    return {m_airframe, std::exchange(m_session, {}), m_lastPress};
}

void RiggingWork::goOnWith(const WorkInHand& work)
{
    turnTo(work.airframe);
    m_session = work.session;
    m_lastPress = work.lastPress;
    if (m_airframe)
        m_resumed.insert(*m_airframe); // it did not go down
}

Outcome RiggingWork::read()
{
    m_view = {};
    if (m_airframe) {
        auto view = m_presenter.view(*m_airframe);
        if (!view)
            return view.problem();
        m_view = std::move(view).value();
        m_view.people = m_people;
    }
    settleSession();
    return Done{};
}

Outcome RiggingWork::readPeople()
{
    m_people.clear();
    if (!m_airframe)
        return Done{};
    auto people = m_presenter.people(*m_airframe);
    if (!people)
        return people.problem();
    m_people = std::move(people).value();
    return Done{};
}

Outcome RiggingWork::catchUp()
{
    const std::optional<RecordNow> before = m_view.now;
    const RecordPlace place = m_session.place;
    const Outcome people = readPeople();
    if (const Outcome isRead = read(); !isRead)
        return isRead;
    const bool isSame =
        before && m_view.now && before->record == m_view.now->record && place == m_session.place;
    if (isSame && onwardFrom(m_session, *before) != onwardFrom(m_session, *m_view.now))
        m_others << workedAtSince(*before);
    return people;
}

QStringList RiggingWork::workedAtSince(const RecordNow& before) const
{
    QStringList names;
    for (const CouplingNow& one : m_view.now->couplings) {
        const CouplingNow* was = before.find(one.id);
        if (was && was->isWaiting(m_session.turn) != one.isWaiting(m_session.turn))
            names << QString::fromStdString(nameIn(m_view.couplings, one.id));
    }
    return names;
}

QStringList RiggingWork::takeOthers()
{
    return std::exchange(m_others, {});
}

void RiggingWork::settleSession()
{
    m_session = settledOn(std::move(m_session), m_view.now ? &*m_view.now : nullptr);
}

void RiggingWork::standAt(RecordPlace::Kind place)
{
    m_session.place = {place, {}};
    settleSession();
}

Outcome RiggingWork::take(SessionStep step)
{
    const auto written = step.facts.empty()
                             ? Result<ReadingNews>{ReadingNews{}}
                             : m_writer.write(m_view.airframe.id, step.facts, std::exchange(m_painted, {}));
    if (!written)
        return written.problem();
    m_news = newsText(written.value());
    if (isInterrupted(step) && step.session.place == m_session.place)
        m_news = breakNews(step.session);
    if (const Reading* corrected = correctionBeforeTheBreak(step, *m_view.now))
        m_news = RiggedWords::correctedBeforeTheBreak(Formats{}.interval(corrected->interval));
    if (isTurnedToSecond(step.session))
        m_news = RiggedWords::keptBack(
            QString::fromStdString(nameIn(m_view.couplings, step.session.place.coupling)));
    if (const QStringList passed = passedOver(step.session); m_news.isEmpty() && !passed.isEmpty())
        m_news = RiggedWords::passedOver(passed);
    if (step.session.place != m_session.place)
        m_others.clear();
    m_session = std::move(step.session);
    return Done{};
}

// At the same place as before.
QString RiggingWork::breakNews(const RiggingSession& next) const
{
    if (m_view.record && m_view.record->enteredBy)
        return RiggedWords::askedAfresh(
            QString::fromStdString(nameIn(m_view.persons, next.chosen(next.turn))));
    return isBegunElsewhere() ? RiggedWords::begunElsewhere()
                              : RiggedWords::interruptedAt(Formats{}.time(m_clock.now()));
}

// Joints that are stopped, between the one at hand and a later one that going on leads to.
QStringList RiggingWork::passedOver(const RiggingSession& next) const
{
    QStringList names;
    if (!m_view.now || next.place.kind != RecordPlace::Kind::Coupling)
        return names;
    const auto& all = m_view.now->couplings;
    const auto from = std::ranges::find(all, m_session.place.coupling, &CouplingNow::id);
    const auto to = std::ranges::find(all, next.place.coupling, &CouplingNow::id);
    for (auto one = from; one < to && to != all.end(); ++one)
        if (one != from && one->stop)
            names << QString::fromStdString(nameIn(m_view.couplings, one->id));
    return names;
}

// Whoever went on as the first person came to a joint where the first result is kept back.
bool RiggingWork::isTurnedToSecond(const RiggingSession& next) const
{
    const bool isAtAJoint = m_session.place.kind == RecordPlace::Kind::Coupling &&
                            next.place.kind == RecordPlace::Kind::Coupling && next.place != m_session.place;
    return isAtAJoint && m_session.turn == Turn::First && next.turn == Turn::Second &&
           !m_view.now->isDone(Turn::First) && isKeptBack(next, *m_view.now, next.place.coupling);
}

SessionStep RiggingWork::interrupted(InterruptionReason reason) const
{
    return interrupt(m_session, *m_view.now, reason, momentNow());
}

bool RiggingWork::isBegunElsewhere() const
{
    return m_view.now && rig::isBegunElsewhere(m_session, *m_view.now);
}

SessionStep RiggingWork::begunAnew() const
{
    return beginAnew(m_session, *m_view.now, momentNow());
}

bool RiggingWork::isBackFromABreak()
{
    const Moment now = m_clock.now();
    const auto before = std::exchange(m_lastPress, now);
    const bool wasLong = before && now.utcSeconds - before->utcSeconds > kIdleMinutes * 60;
    return wasLong && m_view.now && isHalfDone(m_session, *m_view.now);
}

bool RiggingWork::press(const GaugeReading& taken, const CouplingSheet& sheet)
{
    if (!m_view.now || !sheet.gauge)
        return false;
    auto reading = readingAt(m_session, *m_view.now, taken, *sheet.gauge, sheet.fitting, momentNow());
    if (!reading)
        return false;
    m_painted.reset();
    if (reading->state == SeatState::Locked)
        m_painted = withoutSight(judgeIn(sheet.history, *reading), sheet.notSeen);
    m_session = rig::press(std::move(m_session), std::move(*reading));
    return true;
}

void RiggingWork::dropPressed()
{
    m_session = rig::dropPressed(std::move(m_session));
}

Result<bool> RiggingWork::begin(PersonId leader, RecordOrigin origin, std::optional<int> celsius,
                                const std::optional<FromPaper>& paper)
{
    const auto begun = m_view.now ? Result{RecordBegun{m_view.record->id, true}}
                                  : m_writer.begin(m_view, leader, origin, celsius, paper);
    if (!begun)
        return begun.problem();
    const bool isAnothers = begun.value().byAnotherWindow;
    m_session = sessionOf(begun.value().record, leader, m_session.gauge);
    if (const Outcome areRead = readPeople(); !areRead) // on the day of the paper
        return areRead.problem();
    if (const Outcome isRead = read(); !isRead)
        return isRead.problem();
    if (isAnothers && m_view.record)
        m_news = RiggedWords::begunInAnotherWindow(Formats{}.time(m_view.record->begins));
    if (!isAnothers && m_view.now)
        standAt(m_view.isFirstOfSeason ? RecordPlace::Kind::Season : RecordPlace::Kind::Connected);
    return !isAnothers;
}

void RiggingWork::chooseSecond(PersonId second)
{
    m_session.second = second;
}

Outcome RiggingWork::noteTakenApart(PersonId statedBy)
{
    return m_writer.noteTakenApart(m_view.airframe.id, statedBy);
}

Outcome RiggingWork::noteRead(PersonId person)
{
    return m_writer.noteRead(m_view, person);
}

Outcome RiggingWork::tick(TickKind kind)
{
    return m_writer.tick(m_view.record->id, kind, m_session.first.value_or(m_view.record->leader));
}

Outcome RiggingWork::close(const RecordCloseWanted& wanted)
{
    const Outcome closed = m_writer.close(m_view, wanted);
    return closed ? readPeople() : closed;
}

} // namespace rig
