#pragma once

#include "core/airframe/gauge.h"
#include "core/rigging/joint_stop.h"
#include "core/rigging/rigging_flow.h"

#include <optional>
#include <span>
#include <string>
#include <variant>
#include <vector>

namespace rig {

// What one person works at while an airframe is rigged, as one value: changed by the functions below, which
// return the new state and the facts to write. What the screen shows follows from it and from the facts.

// Where in the record somebody is.
struct RecordPlace
{
    enum class Kind { Coupling, SecondInspection, ControlCheck, Season, Connected, Close, Summary, Paper };

    Kind kind = Kind::Coupling;
    CouplingId coupling; // for Kind::Coupling

    bool operator==(const RecordPlace&) const = default;
};

// How a further reading came to be asked for.
enum class ReadingWanted { None, Again, Corrected };

// The two of a control check; nobody is ever filled in.
struct CheckPeople
{
    std::optional<PersonId> atSurface;
    std::optional<PersonId> inCockpit;

    bool areTwo() const { return atSurface && inCockpit && *atSurface != *inCockpit; }
    bool operator==(const CheckPeople&) const = default;
};

// Why somebody is no second person for a joint.
enum class NotSecond { DidItFirst, ConnectedIt };

// One coupling as the facts of the record stand.
struct CouplingNow
{
    CouplingId id;
    CouplingFlow first;
    CouplingFlow second;
    std::vector<PersonId> firstPersons;     // who answered or measured here first
    std::optional<JointStop> stop = {};     // nothing else is asked here, of nobody
    std::vector<PersonId> connectedBy = {}; // as far as it was stated
    // Everybody in the file connected it or did it first: then whoever only connected it may be second, and
    // the paper says that nobody independent was there.
    bool isNobodyApart = false;

    bool isConnectedBy(PersonId person) const;
    // Empty: this person may be second here.
    std::optional<NotSecond> whyNotSecond(PersonId person) const;
    const CouplingFlow& flow(Turn turn) const { return turn == Turn::First ? first : second; }
    // Something is left to do here in this turn, and may be done.
    bool isWaiting(Turn turn) const { return !stop && !isDone(turn); }
    // Nothing is left to do here for whoever works in this turn; the second person waits for nobody.
    bool isDone(Turn turn) const { return first.isDone() && (turn == Turn::First || second.isDone()); }
    // The second person has neither finished here nor kept a reading of their own.
    // A surface that stops its joints tells nothing of what the first has found at them.
    bool isHiddenFromSecond() const { return (!stop || stop->surface) && !second.isDone() && !second.last; }
    // Somebody has been at it as the second person, and is not done.
    bool isSecondUnderWay() const;
};

struct SurfaceNow
{
    SurfaceId id;
    bool isWaiting = false; // something is still to be tried, and no “no” stops it
    bool isBegun = false;   // something was tried
    ExpectedCalls expected = {};
    // A joint of its circuit is to be left as it is: the control is not moved for this surface.
    std::optional<CouplingId> stoppedJoint = {};

    bool isHalfTried() const { return isWaiting && isBegun; }
};

// One side of the airframe, and who connected its joints.
struct SideNow
{
    Side side = Side::None;
    std::optional<std::vector<PersonId>> connectedBy; // empty: nobody said; nobody in it: not known

    bool isSaid() const { return connectedBy.has_value(); }
    bool isNotKnown() const { return connectedBy && connectedBy->empty(); }
};

// What can be said of one person and who connected these sides.
Independence independenceOf(PersonId person, std::span<const SideNow> sides);

// Everybody who has looked, pulled or read as the second person at any joint.
std::vector<PersonId> secondPersonsIn(const RecordContent& content);

// The record as its facts stand: what a session is worked against, and never kept in one.
struct RecordNow
{
    RecordId record;
    PersonId leader;
    std::vector<SideNow> sides;         // that joints in use stand on
    std::vector<PersonId> seconds;      // who has been second person at any joint
    std::vector<CouplingNow> couplings; // in use, in rigging order
    std::vector<SurfaceNow> surfaces;   // in use, in the order of the control check
    bool isControlCheckDone = false;
    std::optional<PersonId> enteredBy = {}; // from paper: who types it in
    // Whose answer or reading was saved last in each turn.
    std::optional<PersonId> lastFirst = {};
    std::optional<PersonId> lastSecond = {};

    const CouplingNow* find(CouplingId coupling) const;
    // Nothing is left to do in this turn, or nothing that may be done.
    bool isDone(Turn turn) const;
    // Somebody has been at a joint as the second person.
    bool isSecondBegun() const;
    // At some joint the second person has yet to find for themselves what the first has found.
    bool isHiddenFromSecond() const;
};

// The first joint that is stopped and may have to do with how such a surface moves: its control is left
// alone. Not one that is stopped only by what was answered at a surface, unless that moved wrongly.
std::optional<CouplingId> stoppedJointFor(SurfaceKind surface, std::span<const Coupling> couplings,
                                          const RecordNow& now);

// Flows, first persons and who connected these couplings, which are in use; surfaces are the caller's.
// `persons`: everybody in the file.
RecordNow recordNowOf(const RecordContent& content, std::span<const Coupling> couplings,
                      const std::vector<PersonId>& persons);

// Work on a coupling that was begun here, in this window: what another window does is not ours to interrupt.
struct Work
{
    CouplingId coupling;
    Turn turn = Turn::First;
    // The interruption that it was begun after: with a later one, what stands there now is another's.
    std::optional<FactId> since = {};

    bool operator==(const Work&) const = default;
};

struct RiggingSession
{
    std::optional<RecordId> record; // empty: nothing is being rigged
    RecordPlace place;
    Turn turn = Turn::First;
    std::optional<PersonId> first;
    std::optional<PersonId> second;
    std::optional<GaugeId> gauge;
    ReadingWanted wanted = ReadingWanted::None;
    std::optional<Reading> corrected; // the reading that the wanted one takes the place of
    std::string correctionReason;
    std::optional<Work> begun;
    std::optional<Reading>
        pressed;              // shown and not yet saved, with all that was on the screen when it was pressed
    std::optional<Side> side; // of those where it is asked who connected
    std::optional<SurfaceId> surface; // of the control check
    CheckPeople checkPeople;
    bool secondTypes = false; // from paper: the second person is at the keyboard for their own column

    const std::optional<PersonId>& chosen(Turn at) const { return at == Turn::First ? first : second; }
};

using SessionFact =
    std::variant<Check, Reading, Exclusion, Interruption, SurfaceCheck, SideConnected, JointPlay>;

// What is pressed where it is asked who connected a side: one person, or that it is not known.
struct ConnectedPress
{
    Side side = Side::None;
    std::optional<PersonId> person; // empty: not known
};

struct SessionStep
{
    RiggingSession session;
    std::vector<SessionFact> facts; // to be written before the session is taken over
};

// Who works at the place now. Whoever did this coupling first is no second person for it, whatever was chosen
// at another one.
std::optional<PersonId> personAt(const RiggingSession& session, const RecordNow& now);
// Who copies what `person` wrote on paper as second person; empty: it is that person's own doing or typing.
std::optional<PersonId> copiedBy(const RiggingSession& session, const RecordNow& now,
                                 std::optional<PersonId> person);
// What the first person found there is shown to nobody: somebody is half way through it as the second person,
// or the second inspection goes on and is still to be done there. Not where one person copies both columns of
// a paper.
bool isKeptBack(const RiggingSession& session, const RecordNow& now, CouplingId coupling);
// Likewise while the second person is at the page: nothing around it may tell it either.
bool isHiddenNow(const RiggingSession& session, const RecordNow& now, CouplingId coupling);
// Something was begun here on the coupling at hand and is not finished, so that a break sends it back to the
// look. Never of a record from paper: there only the typing is broken off.
bool isHalfDone(const RiggingSession& session, const RecordNow& now);
// The joint at hand is half done in this turn, and not by this window: whoever is at it here has not seen it
// done, and begins at the look. From paper nobody was at it, and the typing goes on in any window; but what
// was answered for another person than the one who is chosen is no part of what this one did.
bool isBegunElsewhere(const RiggingSession& session, const RecordNow& now);
// The next coupling that still waits for whoever works in this turn, after the one at hand, then from the
// start.
std::optional<CouplingId> nextWaiting(const RiggingSession& session, const RecordNow& now);
// The same among the surfaces of the control check.
std::optional<SurfaceId> nextSurface(const RiggingSession& session, const RecordNow& now);
// The side below the one at hand, where it is asked who connected.
std::optional<Side> nextSide(const RiggingSession& session, const RecordNow& now);
// Where going on leads from here.
RecordPlace onwardFrom(const RiggingSession& session, const RecordNow& now);

// A session at the first thing to do in a record that `leader` has begun.
RiggingSession sessionOf(RecordId record, PersonId leader, std::optional<GaugeId> gauge);
// The session held against the facts: another record starts it anew, a place that is no longer there is left.
// One from paper goes on with the persons of whom something was typed in already.
RiggingSession settledOn(RiggingSession session, const RecordNow* now);

// None of these may be asked while a reading is pressed and not yet saved: see keep().
// A joint where the first result is kept back is come to as the second person.
SessionStep goTo(RiggingSession session, const RecordNow& now, const RecordPlace& place, Moment when);
SessionStep goOn(RiggingSession session, const RecordNow& now, Moment when);
SessionStep stepBy(RiggingSession session, const RecordNow& now, int by, Moment when);
// Nothing changes where the turn asked for would show what is kept back.
SessionStep changeTurn(RiggingSession session, const RecordNow& now, Turn turn, Moment when);
SessionStep choosePerson(RiggingSession session, const RecordNow& now, PersonId person, Moment when);
// Sends the coupling at hand back to the look when it is half done; nothing otherwise.
SessionStep interrupt(RiggingSession session, const RecordNow& now, InterruptionReason reason, Moment when);
// Sends a joint that is begun elsewhere back to the look, and the work there is this window's.
SessionStep beginAnew(RiggingSession session, const RecordNow& now, Moment when);
// From paper: whether the second person types, or whoever types the rest copies what that person wrote. Said
// of one person: it ends with the next one chosen.
SessionStep chooseWhoTypes(RiggingSession session, const RecordNow& now, bool secondTypes, Moment when);
SessionStep chooseGauge(RiggingSession session, const RecordNow& now, GaugeId gauge, Moment when);
SessionStep chooseSurface(RiggingSession session, const RecordNow& now, SurfaceId surface, Moment when);
SessionStep chooseCheckPeople(RiggingSession session, const RecordNow& now, const CheckPeople& people,
                              Moment when);
// Adds a person to those who connected the side, or takes one away again who was named there, but not the
// only one. Each press is a statement of its own, and the last one counts.
SessionStep stateConnected(RiggingSession session, const RecordNow& now, const ConnectedPress& press,
                           Moment when);
// A further reading is wanted: beside the last one, or in the place of one that was a slip.
SessionStep wantAgain(RiggingSession session, const RecordNow& now, Moment when);
SessionStep wantCorrected(RiggingSession session, const RecordNow& now, const Reading& wrong,
                          const std::string& reason, Moment when);
// The reading was a slip and nothing takes its place: the coupling waits to be measured. No facts when nobody
// is chosen.
SessionStep strike(RiggingSession session, const RecordNow& now, const Reading& slip,
                   const std::string& reason, Moment when);
// No facts when nobody is chosen or the place is no coupling.
SessionStep answer(RiggingSession session, const RecordNow& now, CheckKind kind, Answer given, Moment when);
// Free play felt at the coupling at hand. It belongs to no step of the look and opens none; where a joint is
// stopped nobody is to have a hand on it. No facts then, when nobody is chosen or neither way was tried.
SessionStep feelPlay(RiggingSession session, const RecordNow& now, const PlayFound& along,
                     const PlayFound& across, const std::string& note, Moment when);
SessionStep answerSurface(RiggingSession session, const RecordNow& now, SurfaceCheckKind kind, Answer given,
                          Moment when);

// What was called at the surface, while the control was moved one way or the other.
struct SurfaceCall
{
    SurfaceCheckKind way = SurfaceCheckKind::CalledOneWay;
    std::optional<Movement> seen; // empty: it could not be seen
};
SessionStep callSurface(RiggingSession session, const RecordNow& now, const SurfaceCall& call, Moment when);

// By the look and by what was read and asked for; whether somebody and a gauge are chosen is another
// question. `stop` is the coupling's: then it opens only where somebody asked for it.
bool isMeasuringOpen(const RiggingSession& session, const CouplingFlow& flow,
                     const std::optional<JointStop>& stop);
// Binds a reading to the coupling, turn, person, gauge and record that it is pressed at. Empty when measuring
// is not open there: nobody or no gauge chosen, no look, or a reading already that nobody asked to add to.
// Of a joint that a “no” has stopped it is one as found: part-seated, and never a locked one.
std::optional<Reading> readingAt(const RiggingSession& session, const RecordNow& now,
                                 const GaugeReading& taken, const Gauge& gauge, FittingId fitting,
                                 Moment when);
RiggingSession press(RiggingSession session, Reading reading);
// The pressed reading as a fact, if there is one.
SessionStep keep(RiggingSession session);
// It could not be saved: it can be pressed again.
RiggingSession dropPressed(RiggingSession session);

} // namespace rig
