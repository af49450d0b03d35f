#include "core/rigging/rigging_session.h"

#include "core/airframe/saved_before.h"
#include "core/rigging/circuit_hand.h"
#include "core/rigging/found_as.h"

#include <algorithm>
#include <cassert>
#include <iterator>
#include <ranges>
#include <set>
#include <utility>

namespace rig {

namespace {

bool isAmong(PersonId person, const std::vector<PersonId>& persons)
{
    return std::ranges::find(persons, person) != persons.end();
}

// Everybody who has answered or read what is wanted, each once.
template <typename IsWanted>
std::vector<PersonId> personsOf(const RecordContent& content, const IsWanted& isWanted)
{
    std::vector<PersonId> persons;
    const auto note = [&](const auto& fact) {
        if (isWanted(fact) && !isAmong(fact.person, persons))
            persons.push_back(fact.person);
    };
    std::ranges::for_each(content.checks, note);
    std::ranges::for_each(content.readings, note);
    return persons;
}

// Everybody who has had a hand on this coupling as the first person.
std::vector<PersonId> firstPersonsOf(const RecordContent& content, CouplingId coupling)
{
    return personsOf(content, [coupling](const auto& fact) {
        return fact.coupling == coupling && fact.turn == Turn::First;
    });
}

std::optional<PersonId> lastPersonOf(const RecordContent& content, Turn turn)
{
    std::optional<SaveOrder> last;
    std::optional<PersonId> person;
    const auto note = [&](const auto& fact) {
        if (fact.turn != turn || (last && saveOrderOf(fact) < *last))
            return;
        last = saveOrderOf(fact);
        person = fact.person;
    };
    std::ranges::for_each(content.checks, note);
    std::ranges::for_each(content.readings, note);
    return person;
}

// The first that still waits behind `here`, then from the start; all of them when `here` is not among them.
template <typename Row, typename IsHere, typename IsWaiting>
const Row* firstWaiting(const std::vector<Row>& rows, const IsHere& isHere, const IsWaiting& isWaiting)
{
    const auto here = std::ranges::find_if(rows, isHere);
    const auto behind = here == rows.end() ? rows.begin() : std::next(here);
    if (const auto after = std::find_if(behind, rows.end(), isWaiting); after != rows.end())
        return &*after;
    const auto before = std::find_if(rows.begin(), here == rows.end() ? rows.begin() : here, isWaiting);
    return before == rows.end() || before == here ? nullptr : &*before;
}

// The row `by` places on from the one that has this key; null beyond either end.
template <typename Row, typename Key, typename Here>
const Row* neighbour(const std::vector<Row>& rows, Key Row::*key, const Here& here, int by)
{
    const auto at = std::ranges::find_if(rows, [&](const Row& row) { return here == row.*key; });
    const auto wanted = std::distance(rows.begin(), at) + by;
    if (at == rows.end() || wanted < 0 || wanted >= std::ssize(rows))
        return nullptr;
    return &rows[static_cast<std::size_t>(wanted)];
}

const CouplingNow* here(const RiggingSession& session, const RecordNow& now)
{
    return session.place.kind == RecordPlace::Kind::Coupling ? now.find(session.place.coupling) : nullptr;
}

void wantNothing(RiggingSession& session)
{
    session.wanted = ReadingWanted::None;
    session.corrected.reset();
    session.correctionReason.clear();
}

RecordPlace placeAt(CouplingId coupling)
{
    return {RecordPlace::Kind::Coupling, coupling};
}

// Whoever comes to the control check goes on with a surface that is half tried, where there is one.
void leaveTriedSurface(RiggingSession& session, const RecordNow& now)
{
    const auto here = std::ranges::find_if(
        now.surfaces, [&session](const SurfaceNow& one) { return session.surface == one.id; });
    if (here == now.surfaces.end() || !here->isHalfTried())
        session.surface.reset();
}

void beginControlCheck(RiggingSession& session, const RecordNow& now)
{
    const auto isThere = [&session](const SurfaceNow& one) { return session.surface == one.id; };
    if (std::ranges::any_of(now.surfaces, isThere))
        return;
    auto waiting = std::ranges::find_if(now.surfaces, &SurfaceNow::isHalfTried);
    if (waiting == now.surfaces.end())
        waiting = std::ranges::find_if(now.surfaces, &SurfaceNow::isWaiting);
    if (waiting != now.surfaces.end())
        session.surface = waiting->id;
    else if (!now.surfaces.empty())
        session.surface = now.surfaces.front().id;
    else
        session.surface.reset();
}

void beginConnected(RiggingSession& session, const RecordNow& now)
{
    if (std::ranges::find(now.sides, session.side, &SideNow::side) != now.sides.end())
        return;
    const auto unsaid = std::ranges::find_if_not(now.sides, &SideNow::isSaid);
    session.side.reset();
    if (!now.sides.empty())
        session.side = unsaid == now.sides.end() ? now.sides.front().side : unsaid->side;
}

// The first person has more to do there, and nobody is half way through it as the second.
bool isUndoneByFirst(const CouplingNow& one)
{
    return one.isWaiting(Turn::First) && !one.isSecondUnderWay();
}

// Whoever opens the program again is led to what the first person has left undone; else, while the second
// person is at work, or next, to theirs, and is not shown what the first has found.
void goOnAfterOpening(RiggingSession& session, const RecordNow& now)
{
    const auto undone = std::ranges::find_if(now.couplings, isUndoneByFirst);
    if (undone != now.couplings.end()) {
        if (session.place == RecordPlace{})
            session.place = placeAt(undone->id);
        return;
    }
    const bool isSecondNext = now.isDone(Turn::First) && !now.isDone(Turn::Second);
    if (isSecondNext || std::ranges::any_of(now.couplings, &CouplingNow::isSecondUnderWay))
        session.turn = Turn::Second;
}

} // namespace

std::vector<PersonId> secondPersonsIn(const RecordContent& content)
{
    return personsOf(content, [](const auto& fact) { return fact.turn == Turn::Second; });
}

bool CouplingNow::isConnectedBy(PersonId person) const
{
    return isAmong(person, connectedBy);
}

std::optional<NotSecond> CouplingNow::whyNotSecond(PersonId person) const
{
    if (isAmong(person, firstPersons))
        return NotSecond::DidItFirst;
    return isConnectedBy(person) && !isNobodyApart ? std::optional{NotSecond::ConnectedIt} : std::nullopt;
}

bool CouplingNow::isSecondUnderWay() const
{
    return isWaiting(Turn::Second) && (second.begun || second.interrupted || second.last);
}

Independence independenceOf(PersonId person, std::span<const SideNow> sides)
{
    std::vector<Side> asked;
    std::vector<SideConnected> stated;
    for (const SideNow& one : sides) {
        asked.push_back(one.side);
        if (one.isSaid())
            stated.push_back({{}, {}, one.side, *one.connectedBy, {}});
    }
    return independenceOf(person, asked, stated);
}

const CouplingNow* RecordNow::find(CouplingId coupling) const
{
    const auto found = std::ranges::find(couplings, coupling, &CouplingNow::id);
    return found == couplings.end() ? nullptr : &*found;
}

bool RecordNow::isDone(Turn turn) const
{
    return std::ranges::none_of(couplings, [turn](const CouplingNow& one) { return one.isWaiting(turn); });
}

bool RecordNow::isSecondBegun() const
{
    return std::ranges::any_of(couplings, [](const CouplingNow& one) {
        return one.second.begun || one.second.interrupted || one.second.last;
    });
}

bool RecordNow::isHiddenFromSecond() const
{
    return std::ranges::any_of(couplings, &CouplingNow::isHiddenFromSecond);
}

std::optional<CouplingId> stoppedJointFor(SurfaceKind surface, std::span<const Coupling> couplings,
                                          const RecordNow& now)
{
    for (const Coupling& coupling : couplings) {
        const CouplingNow* one = now.find(coupling.id);
        if (one && one->stop && mayMove(coupling.circuit, surface) &&
            (!one->stop->surface || one->stop->surface->isWrongMovement()))
            return coupling.id;
    }
    return std::nullopt;
}

RecordNow recordNowOf(const RecordContent& content, std::span<const Coupling> couplings,
                      const std::vector<PersonId>& persons)
{
    RecordNow now;
    now.record = content.record.id;
    now.leader = content.record.leader;
    now.enteredBy = content.record.enteredBy;
    now.seconds = secondPersonsIn(content);
    now.lastFirst = lastPersonOf(content, Turn::First);
    now.lastSecond = lastPersonOf(content, Turn::Second);
    for (const Side side : sidesOf(couplings)) {
        const SideConnected* stated = statedFor(side, content.connected);
        now.sides.push_back({side, stated ? std::optional{stated->persons} : std::nullopt});
    }
    for (const Coupling& coupling : couplings) {
        CouplingNow one{coupling.id, flowOf(content, coupling, Turn::First),
                        flowOf(content, coupling, Turn::Second), firstPersonsOf(content, coupling.id),
                        stopAmong(content.questions, coupling.id)};
        one.connectedBy = whoConnected(coupling.side, content.connected);
        one.isNobodyApart = std::ranges::all_of(persons, [&one](PersonId person) {
            return isAmong(person, one.firstPersons) || one.isConnectedBy(person);
        });
        now.couplings.push_back(std::move(one));
    }
    return now;
}

std::optional<PersonId> personAt(const RiggingSession& session, const RecordNow& now)
{
    const std::optional<PersonId>& chosen = session.chosen(session.turn);
    const CouplingNow* coupling = here(session, now);
    if (session.turn == Turn::Second && coupling && chosen && coupling->whyNotSecond(*chosen))
        return std::nullopt;
    return chosen;
}

std::optional<PersonId> copiedBy(const RiggingSession& session, const RecordNow& now,
                                 std::optional<PersonId> person)
{
    const bool isOwn = session.turn == Turn::First || session.secondTypes || now.enteredBy == person;
    return isOwn ? std::nullopt : now.enteredBy;
}

bool isKeptBack(const RiggingSession& session, const RecordNow& now, CouplingId coupling)
{
    const CouplingNow* one = now.find(coupling);
    const bool isCopied = now.enteredBy && !session.secondTypes;
    if (!one || isCopied || !one->isHiddenFromSecond())
        return false;
    return one->second.begun || (one->first.isDone() && (session.second || now.isSecondBegun()));
}

bool isHiddenNow(const RiggingSession& session, const RecordNow& now, CouplingId coupling)
{
    const CouplingNow* one = now.find(coupling);
    return one && one->isHiddenFromSecond() &&
           (session.turn == Turn::Second || isKeptBack(session, now, coupling));
}

bool isHalfDone(const RiggingSession& session, const RecordNow& now)
{
    if (!session.begun || now.enteredBy)
        return false;
    const CouplingNow* coupling = now.find(session.begun->coupling);
    if (!coupling)
        return false;
    const CouplingFlow& flow = coupling->flow(session.begun->turn);
    return flow.begun && flow.since == session.begun->since && coupling->isWaiting(session.begun->turn);
}

bool isBegunElsewhere(const RiggingSession& session, const RecordNow& now)
{
    const CouplingNow* coupling = here(session, now);
    if (!coupling || coupling->stop)
        return false;
    const CouplingFlow& flow = coupling->flow(session.turn);
    if (now.enteredBy) {
        const auto person = personAt(session, now);
        return flow.begun && !flow.isDone() && person && flow.isPartlyOfAnother(*person);
    }
    return flow.begun && !flow.isDone() && session.begun != Work{coupling->id, session.turn, flow.since};
}

std::optional<CouplingId> nextWaiting(const RiggingSession& session, const RecordNow& now)
{
    const CouplingNow* found = firstWaiting(
        now.couplings, [&session](const CouplingNow& one) { return session.place == placeAt(one.id); },
        [&session](const CouplingNow& one) { return one.isWaiting(session.turn); });
    return found ? std::optional{found->id} : std::nullopt;
}

std::optional<SurfaceId> nextSurface(const RiggingSession& session, const RecordNow& now)
{
    const SurfaceNow* found = firstWaiting(
        now.surfaces, [&session](const SurfaceNow& one) { return session.surface == one.id; },
        [](const SurfaceNow& one) { return one.isWaiting; });
    return found ? std::optional{found->id} : std::nullopt;
}

std::optional<Side> nextSide(const RiggingSession& session, const RecordNow& now)
{
    const SideNow* next = neighbour(now.sides, &SideNow::side, session.side, 1);
    return next ? std::optional{next->side} : std::nullopt;
}

RecordPlace onwardFrom(const RiggingSession& session, const RecordNow& now)
{
    if (session.place.kind == RecordPlace::Kind::ControlCheck)
        return {now.isDone(Turn::Second) ? RecordPlace::Kind::Close : RecordPlace::Kind::SecondInspection,
                {}};
    if (session.place.kind == RecordPlace::Kind::Season && !std::ranges::all_of(now.sides, &SideNow::isSaid))
        return {RecordPlace::Kind::Connected, {}};
    if (const auto waiting = nextWaiting(session, now))
        return placeAt(*waiting);
    if (session.turn == Turn::First && !now.isDone(Turn::Second))
        return {RecordPlace::Kind::SecondInspection, {}};
    // The last of all: a hand on a joint afterwards, the second person's too, sets it back.
    return {now.isControlCheckDone ? RecordPlace::Kind::Close : RecordPlace::Kind::ControlCheck, {}};
}

RiggingSession sessionOf(RecordId record, PersonId leader, std::optional<GaugeId> gauge)
{
    RiggingSession session;
    session.record = record;
    session.first = leader;
    session.gauge = gauge;
    return session;
}

RiggingSession settledOn(RiggingSession session, const RecordNow* now)
{
    if (!now || session.record != now->record) {
        RiggingSession anew;
        anew.gauge = session.gauge;
        if (session.place.kind == RecordPlace::Kind::Summary)
            anew.place = session.place; // it shows a record that was closed, whatever is open now
        if (session.place.kind == RecordPlace::Kind::Paper && !now)
            anew.place = session.place; // nothing is begun yet
        if (now) {
            anew.record = now->record;
            if (now->enteredBy) {
                anew.first = now->lastFirst;
                anew.second = now->lastSecond;
            }
            goOnAfterOpening(anew, *now);
        }
        session = std::move(anew);
    }
    if (!now)
        return session;
    if (session.place.kind == RecordPlace::Kind::Coupling && !here(session, *now)) {
        const CouplingId first = now->couplings.empty() ? CouplingId{} : now->couplings.front().id;
        session.place = placeAt(nextWaiting(session, *now).value_or(first));
    }
    if (session.place.kind == RecordPlace::Kind::ControlCheck)
        beginControlCheck(session, *now);
    if (session.place.kind == RecordPlace::Kind::Connected)
        beginConnected(session, *now);
    return session;
}

SessionStep goTo(RiggingSession session, const RecordNow& now, const RecordPlace& place, Moment when)
{
    if (place == session.place)
        return {std::move(session), {}};
    const bool changesPerson =
        place.kind == RecordPlace::Kind::SecondInspection && session.turn == Turn::First;
    SessionStep step =
        interrupt(std::move(session), now,
                  changesPerson ? InterruptionReason::PersonChanged : InterruptionReason::Asked, when);
    wantNothing(step.session);
    step.session.place = place;
    if (place.kind == RecordPlace::Kind::ControlCheck)
        leaveTriedSurface(step.session, now);
    if (place.kind == RecordPlace::Kind::Connected)
        step.session.side.reset(); // to the first of which nobody said it yet
    if (place.kind == RecordPlace::Kind::SecondInspection) {
        step.session.turn = Turn::Second;
        step.session.place = placeAt({});
    }
    step.session = settledOn(std::move(step.session), &now);
    if (here(step.session, now) && isKeptBack(step.session, now, step.session.place.coupling))
        step.session.turn = Turn::Second;
    return step;
}

SessionStep goOn(RiggingSession session, const RecordNow& now, Moment when)
{
    if (session.place.kind == RecordPlace::Kind::Connected)
        if (const auto next = nextSide(session, now)) {
            session.side = next;
            return {std::move(session), {}};
        }
    if (session.place.kind == RecordPlace::Kind::ControlCheck)
        if (const auto waiting = nextSurface(session, now)) {
            session.surface = *waiting;
            return {std::move(session), {}};
        }
    const RecordPlace onward = onwardFrom(session, now);
    return goTo(std::move(session), now, onward, when);
}

SessionStep stepBy(RiggingSession session, const RecordNow& now, int by, Moment when)
{
    if (session.place.kind == RecordPlace::Kind::ControlCheck) {
        if (const SurfaceNow* surface = neighbour(now.surfaces, &SurfaceNow::id, session.surface, by))
            session.surface = surface->id;
        return {std::move(session), {}};
    }
    if (session.place.kind == RecordPlace::Kind::Connected) {
        if (const SideNow* side = neighbour(now.sides, &SideNow::side, session.side, by))
            session.side = side->side;
        return {std::move(session), {}};
    }
    if (session.place.kind != RecordPlace::Kind::Coupling)
        return {std::move(session), {}};
    const CouplingNow* wanted = neighbour(now.couplings, &CouplingNow::id, session.place.coupling, by);
    return wanted ? goTo(std::move(session), now, placeAt(wanted->id), when)
                  : SessionStep{std::move(session), {}};
}

SessionStep changeTurn(RiggingSession session, const RecordNow& now, Turn turn, Moment when)
{
    if (turn == Turn::First && here(session, now) && isKeptBack(session, now, session.place.coupling))
        return {std::move(session), {}};
    SessionStep step = interrupt(std::move(session), now, InterruptionReason::PersonChanged, when);
    step.session.turn = turn;
    wantNothing(step.session);
    return step;
}

namespace {

// Without the reading, and without what it had taken the place of, nothing else was read locked.
bool isOnlyLocked(const CouplingFlow& flow, const Reading& reading)
{
    std::set<ReadingId> gone{reading.id};
    for (const Reading& one : flow.readings | std::views::reverse) {
        if (gone.contains(one.id)) {
            if (one.corrects)
                gone.insert(*one.corrects);
            continue;
        }
        if (one.state == SeatState::Locked)
            return false;
    }
    return true;
}

// Whether the joint waits once more when that reading is gone.
bool waitsWithout(const Reading& reading, const RecordNow& now)
{
    const CouplingNow* coupling = now.find(reading.coupling);
    if (!coupling || coupling->stop || !coupling->flow(reading.turn).begun)
        return false;
    return coupling->isWaiting(reading.turn) ||
           (reading.turn == Turn::First && isOnlyLocked(coupling->first, reading));
}

// Somebody said that a reading was wrong, and why, and does not get to read it again: it does not stay as
// though it were right. What then waits to be done was left in the middle of the work.
std::optional<Work> strikeWhatWasWrong(SessionStep& step, const RecordNow& now, Moment when)
{
    RiggingSession& session = step.session;
    const auto person = personAt(session, now);
    if (session.wanted != ReadingWanted::Corrected || !session.corrected || !person)
        return std::nullopt;
    const Reading wrong = *session.corrected;
    step.facts.emplace_back(Exclusion{{}, wrong.id, session.correctionReason, {person, when}});
    wantNothing(session);
    return waitsWithout(wrong, now) ? std::optional{Work{wrong.coupling, wrong.turn}} : std::nullopt;
}

} // namespace

SessionStep choosePerson(RiggingSession session, const RecordNow& now, PersonId person, Moment when)
{
    const std::optional<PersonId> before = session.chosen(session.turn);
    const CouplingNow* here = now.find(session.place.coupling);
    // Work that another window has begun here is somebody else's too.
    const bool isBegunByAnother = !before && here && session.turn == Turn::First &&
                                  here->isWaiting(Turn::First) && here->first.begun &&
                                  !isAmong(person, here->firstPersons);
    if (isBegunByAnother)
        session.begun = Work{here->id, Turn::First, here->first.since};
    SessionStep step{std::move(session), {}};
    if (isBegunByAnother || (before && *before != person))
        step = interrupt(std::move(step.session), now, InterruptionReason::PersonChanged, when);
    if (step.session.turn == Turn::Second && step.session.second != person)
        step.session.secondTypes = false;
    (step.session.turn == Turn::First ? step.session.first : step.session.second) = person;
    if (!now.enteredBy)
        return step;
    SessionStep afresh = beginAnew(std::move(step.session), now, when);
    std::ranges::move(afresh.facts, std::back_inserter(step.facts));
    return {std::move(afresh.session), std::move(step.facts)};
}

SessionStep interrupt(RiggingSession session, const RecordNow& now, InterruptionReason reason, Moment when)
{
    assert(!session.pressed);
    SessionStep step{std::move(session), {}};
    std::optional<Work> left = strikeWhatWasWrong(step, now, when);
    if (!left && isHalfDone(step.session, now))
        left = step.session.begun;
    if (left && !now.enteredBy) {
        Interruption interruption;
        interruption.record = now.record;
        interruption.coupling = left->coupling;
        interruption.turn = left->turn;
        interruption.reason = reason;
        interruption.stamp.when = when;
        step.facts.emplace_back(interruption);
        wantNothing(step.session);
    }
    step.session.begun.reset();
    return step;
}

SessionStep beginAnew(RiggingSession session, const RecordNow& now, Moment when)
{
    assert(!session.pressed);
    SessionStep step{std::move(session), {}};
    if (!isBegunElsewhere(step.session, now))
        return step;
    wantNothing(step.session);
    step.session.begun.reset();
    Interruption interruption;
    interruption.record = now.record;
    interruption.coupling = step.session.place.coupling;
    interruption.turn = step.session.turn;
    interruption.reason = InterruptionReason::PersonChanged;
    interruption.stamp.when = when;
    step.facts.emplace_back(interruption);
    return step;
}

bool isMeasuringOpen(const RiggingSession& session, const CouplingFlow& flow,
                     const std::optional<JointStop>& stop)
{
    switch (session.wanted) {
    case ReadingWanted::Corrected:
        return session.corrected.has_value(); // what was looked at then holds for what was read then
    case ReadingWanted::Again:
        if (!mayReadAgain(stop))
            return flow.asks.parts.gap && mayMeasureAsFound(*stop);
        return flow.mayMeasure();
    case ReadingWanted::None:
        break;
    }
    return !stop && flow.mayMeasure() && flow.readings.empty();
}

SessionStep chooseWhoTypes(RiggingSession session, const RecordNow& /*now*/, bool secondTypes,
                           Moment /*when*/)
{
    session.secondTypes = secondTypes;
    return {std::move(session), {}};
}

SessionStep chooseGauge(RiggingSession session, const RecordNow& /*now*/, GaugeId gauge, Moment /*when*/)
{
    session.gauge = gauge;
    return {std::move(session), {}};
}

SessionStep chooseSurface(RiggingSession session, const RecordNow& now, SurfaceId surface, Moment /*when*/)
{
    session.surface = surface;
    return {settledOn(std::move(session), &now), {}};
}

SessionStep chooseCheckPeople(RiggingSession session, const RecordNow& /*now*/, const CheckPeople& people,
                              Moment /*when*/)
{
    session.checkPeople = people;
    return {std::move(session), {}};
}

SessionStep stateConnected(RiggingSession session, const RecordNow& now, const ConnectedPress& press,
                           Moment when)
{
    const auto side = std::ranges::find(now.sides, press.side, &SideNow::side);
    if (side == now.sides.end())
        return {std::move(session), {}};
    session.side = press.side;
    if (!press.person && side->isNotKnown())
        return {std::move(session), {}};
    SideConnected stated;
    stated.record = now.record;
    stated.side = press.side;
    if (press.person) {
        stated.persons = side->connectedBy.value_or(std::vector<PersonId>{});
        if (stated.persons == std::vector{*press.person}) // taking away the only name would say “not known”
            return {std::move(session), {}};
        if (std::erase(stated.persons, *press.person) == 0)
            stated.persons.push_back(*press.person);
    }
    stated.stamp = {session.first.value_or(now.leader), when};
    return {std::move(session), {stated}};
}

SessionStep wantAgain(RiggingSession session, const RecordNow& /*now*/, Moment /*when*/)
{
    wantNothing(session);
    session.wanted = ReadingWanted::Again;
    return {std::move(session), {}};
}

SessionStep wantCorrected(RiggingSession session, const RecordNow& /*now*/, const Reading& wrong,
                          const std::string& reason, Moment /*when*/)
{
    session.wanted = ReadingWanted::Corrected;
    session.corrected = wrong;
    session.correctionReason = reason;
    return {std::move(session), {}};
}

SessionStep strike(RiggingSession session, const RecordNow& now, const Reading& slip,
                   const std::string& reason, Moment when)
{
    assert(!session.pressed);
    const auto person = personAt(session, now);
    if (!person)
        return {std::move(session), {}};
    wantNothing(session);
    // Left like this, it starts again from the look.
    if (const CouplingNow* coupling = now.find(slip.coupling); coupling && !isBegunElsewhere(session, now))
        session.begun = Work{slip.coupling, slip.turn, coupling->flow(slip.turn).since};
    return {std::move(session), {Exclusion{{}, slip.id, reason, {person, when}}}};
}

SessionStep answer(RiggingSession session, const RecordNow& now, CheckKind kind, Answer given, Moment when)
{
    assert(!session.pressed);
    const auto person = personAt(session, now);
    const CouplingNow* coupling = here(session, now);
    const bool isReadAnewFirst = session.wanted == ReadingWanted::Corrected;
    if (!person || !coupling || coupling->stop || isReadAnewFirst)
        return {std::move(session), {}};
    Check check;
    check.record = now.record;
    check.coupling = session.place.coupling;
    check.kind = kind;
    check.answer = given;
    check.turn = session.turn;
    check.person = *person;
    check.when = when;
    check.stamp = {person, when};
    check.copiedBy = copiedBy(session, now, *person);
    session.begun = Work{check.coupling, check.turn, coupling->flow(check.turn).since};
    return {std::move(session), {check}};
}

SessionStep feelPlay(RiggingSession session, const RecordNow& now, const PlayFound& along,
                     const PlayFound& across, const std::string& note, Moment when)
{
    assert(!session.pressed);
    const auto person = personAt(session, now);
    const CouplingNow* coupling = here(session, now);
    const bool isTried = along.felt != PlayFelt::NotTried || across.felt != PlayFelt::NotTried;
    if (!person || !coupling || coupling->stop || !isTried)
        return {std::move(session), {}};
    JointPlay play;
    play.coupling = coupling->id;
    play.record = now.record;
    play.day = when.localDay();
    play.along = along;
    play.across = across;
    play.person = *person;
    play.note = note;
    play.stamp = {person, when};
    return {std::move(session), {play}};
}

SessionStep answerSurface(RiggingSession session, const RecordNow& now, SurfaceCheckKind kind, Answer given,
                          Moment when)
{
    const auto surface = std::ranges::find_if(
        now.surfaces, [&session](const SurfaceNow& one) { return session.surface == one.id; });
    if (!session.checkPeople.areTwo() || surface == now.surfaces.end() || surface->stoppedJoint)
        return {std::move(session), {}};
    SurfaceCheck check;
    check.record = now.record;
    check.surface = *session.surface;
    check.kind = kind;
    check.answer = given;
    check.person = *session.checkPeople.atSurface;
    check.cockpit = *session.checkPeople.inCockpit;
    check.stamp = {check.person, when};
    return {std::move(session), {check}};
}

SessionStep callSurface(RiggingSession session, const RecordNow& now, const SurfaceCall& call, Moment when)
{
    const auto surface = std::ranges::find_if(
        now.surfaces, [&session](const SurfaceNow& one) { return session.surface == one.id; });
    if (surface == now.surfaces.end())
        return {std::move(session), {}};
    SessionStep step = answerSurface(std::move(session), now, call.way,
                                     answerToCall(surface->expected, call.way, call.seen), when);
    for (SessionFact& fact : step.facts)
        std::get<SurfaceCheck>(fact).seen = call.seen;
    return step;
}

std::optional<Reading> readingAt(const RiggingSession& session, const RecordNow& now,
                                 const GaugeReading& taken, const Gauge& gauge, FittingId fitting,
                                 Moment when)
{
    const CouplingNow* coupling = here(session, now);
    const auto person = personAt(session, now);
    if (!coupling || !person)
        return std::nullopt;
    if (!isMeasuringOpen(session, coupling->flow(session.turn), coupling->stop))
        return std::nullopt;
    Reading reading;
    reading.coupling = coupling->id;
    reading.fitting = fitting;
    reading.record = now.record;
    reading.interval = taken.interval;
    reading.technique = taken.technique;
    reading.gauge = gauge.id;
    reading.purpose = Purpose::Rigging;
    reading.turn = session.turn;
    reading.person = *person;
    reading.when = when;
    reading.stamp = {person, when};
    reading.copiedBy = copiedBy(session, now, *person);
    if (coupling->stop && coupling->stop->saidNo && session.wanted == ReadingWanted::Again)
        reading.state = foundAfterNo(*coupling->stop->saidNo);
    if (session.wanted == ReadingWanted::Corrected && session.corrected) {
        reading.state = session.corrected->state;
        reading.corrects = session.corrected->id;
        reading.when = session.corrected->when; // it was measured then; only now is it stated
        reading.note = session.correctionReason;
    }
    return reading;
}

RiggingSession press(RiggingSession session, Reading reading)
{
    assert(!session.pressed);
    const Work here{reading.coupling, reading.turn};
    const bool isBegunHere =
        session.begun && session.begun->coupling == here.coupling && session.begun->turn == here.turn;
    if (!isBegunHere && !reading.corrects) // what is put right belongs to whoever did the work
        session.begun = here;
    session.pressed = std::move(reading);
    return session;
}

SessionStep keep(RiggingSession session)
{
    if (!session.pressed)
        return {std::move(session), {}};
    SessionStep step{std::move(session), {}};
    step.facts.emplace_back(*std::exchange(step.session.pressed, std::nullopt));
    wantNothing(step.session);
    return step;
}

RiggingSession dropPressed(RiggingSession session)
{
    session.pressed.reset();
    return session;
}

} // namespace rig
