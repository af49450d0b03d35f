#include "core/rigging/rigging_session.h"

#include <algorithm>
#include <gtest/gtest.h>

using namespace rig;

namespace {

constexpr PersonId kOren{{1}};
constexpr PersonId kVale{{2}};
constexpr Moment kNoon{43'200};
constexpr RecordPlace kControlCheck{RecordPlace::Kind::ControlCheck, {}};
constexpr RecordPlace kSecondInspection{RecordPlace::Kind::SecondInspection, {}};
constexpr RecordPlace kConnected{RecordPlace::Kind::Connected, {}};
constexpr RecordPlace kClosePlace{RecordPlace::Kind::Close, {}};

CouplingId coupling(std::uint8_t number)
{
    return {{number}};
}

RecordPlace at(std::uint8_t number)
{
    return {RecordPlace::Kind::Coupling, coupling(number)};
}

CouplingFlow untouched()
{
    CouplingFlow flow;
    flow.asks = asksOf({});
    return flow;
}

CouplingFlow looked()
{
    CouplingFlow flow = untouched();
    for (const CheckKind kind : flow.asks.look)
        flow.answers[kind] = Answer::Yes;
    flow.begun = true;
    flow.next = Step::Measure;
    return flow;
}

CouplingFlow finished()
{
    CouplingFlow flow = looked();
    flow.next = Step::Done;
    return flow;
}

// Three couplings and two surfaces, nothing done.
RecordNow aRecord()
{
    RecordNow now;
    now.record = RecordId{{9}};
    for (const std::uint8_t number : {std::uint8_t{1}, std::uint8_t{2}, std::uint8_t{3}})
        now.couplings.push_back({coupling(number), untouched(), untouched(), {}});
    now.surfaces = {{SurfaceId{{1}}, true}, {SurfaceId{{2}}, true}};
    return now;
}

CouplingNow& couplingIn(RecordNow& now, std::uint8_t number)
{
    return now.couplings.at(number - std::size_t{1});
}

RiggingSession workingAt(std::uint8_t number, const RecordNow& now)
{
    RiggingSession session = sessionOf(now.record, kOren, GaugeId{{1}});
    session.place = at(number);
    return session;
}

GaugeReading aGaugeReading()
{
    return {{Gap::micrometres(450), Gap::micrometres(500)}, Technique::Leaf};
}

Gauge aGauge()
{
    Gauge gauge;
    gauge.id = GaugeId{{1}};
    return gauge;
}

template <typename Fact> const Fact* only(const SessionStep& step)
{
    return step.facts.size() == 1 ? std::get_if<Fact>(&step.facts.front()) : nullptr;
}

} // namespace

TEST(RiggingSession, BeginsAtTheFirstCoupling)
{
    const RecordNow now = aRecord();
    EXPECT_EQ(settledOn(sessionOf(now.record, kOren, {}), &now).place, at(1));
}

TEST(RiggingSession, OfAnotherRecordStartsAnewAndKeepsOnlyTheGauge)
{
    RecordNow now = aRecord();
    RiggingSession session = workingAt(2, now);
    session.turn = Turn::Second;
    session.second = kVale;
    now.record = RecordId{{10}};
    const RiggingSession anew = settledOn(session, &now);
    EXPECT_EQ(anew.place, at(1));
    EXPECT_EQ(anew.turn, Turn::First);
    EXPECT_FALSE(anew.first);
    EXPECT_FALSE(anew.second);
    EXPECT_EQ(anew.gauge, session.gauge);
}

TEST(RiggingSession, StaysWhereAClosedRecordIsReadWhateverTheFactsSay)
{
    const RecordNow now = aRecord();
    RiggingSession session;
    session.place.kind = RecordPlace::Kind::Summary;
    EXPECT_EQ(settledOn(session, nullptr).place.kind, RecordPlace::Kind::Summary);
    EXPECT_EQ(settledOn(session, &now).place.kind, RecordPlace::Kind::Summary);
}

TEST(RiggingSession, LeavesACouplingThatIsNoLongerInUse)
{
    RecordNow now = aRecord();
    const RiggingSession session = workingAt(3, now);
    now.couplings.pop_back();
    EXPECT_EQ(settledOn(session, &now).place, at(1));
}

// Where Enter leads, by what is done.
struct Onward
{
    const char* when;
    Turn turn;
    RecordPlace from;
    bool othersDone;
    bool controlsDone;
    RecordPlace to;

    friend std::ostream& operator<<(std::ostream& out, const Onward& row) { return out << row.when; }
};

class WhereEnterLeads : public testing::TestWithParam<Onward>
{
};

INSTANTIATE_TEST_SUITE_P(
    Rows, WhereEnterLeads,
    testing::Values(
        Onward{"couplings wait", Turn::First, at(1), false, false, at(2)},
        Onward{"the last one goes back to the first", Turn::First, at(3), false, false, at(1)},
        Onward{"all are done by both", Turn::First, at(3), true, false, kControlCheck},
        Onward{"controls too", Turn::First, at(3), true, true, kClosePlace},
        Onward{"second person, some wait", Turn::Second, at(1), false, true, at(2)},
        Onward{"second person, all done", Turn::Second, at(3), true, false, kControlCheck},
        Onward{"second person, controls too", Turn::Second, at(3), true, true, kClosePlace},
        Onward{"from the control check", Turn::First, kControlCheck, false, true, kSecondInspection},
        Onward{"from the control check, all done", Turn::First, kControlCheck, true, true, kClosePlace}));

TEST_P(WhereEnterLeads, FollowsFromWhatIsDone)
{
    const Onward& row = GetParam();
    RecordNow now = aRecord();
    for (CouplingNow& one : now.couplings)
        if (row.othersDone || at(one.id.bytes[0]) == row.from)
            one.first = one.second = finished();
    now.isControlCheckDone = row.controlsDone;
    RiggingSession session = workingAt(1, now);
    session.turn = row.turn;
    session.place = row.from;
    EXPECT_EQ(onwardFrom(session, now), row.to) << row.when;
}

TEST(RiggingSession, TheControlCheckComesAfterTheSecondPersonWhoseHandsWouldSetItBack)
{
    RecordNow now = aRecord();
    for (CouplingNow& one : now.couplings)
        one.first = finished();
    EXPECT_EQ(onwardFrom(workingAt(3, now), now), kSecondInspection);
}

TEST(RiggingSession, GoingToTheSecondInspectionChangesTheTurnAndChoosesNobody)
{
    RecordNow now = aRecord();
    couplingIn(now, 1).first = couplingIn(now, 1).second = finished();
    const SessionStep step = goTo(workingAt(1, now), now, kSecondInspection, kNoon);
    EXPECT_EQ(step.session.turn, Turn::Second);
    EXPECT_EQ(step.session.place, at(2)) << "the first that waits for a second person";
    EXPECT_FALSE(personAt(step.session, now));
    EXPECT_TRUE(step.facts.empty());
}

TEST(RiggingSession, AnAnswerBelongsToTheCouplingTurnPersonAndRecordAtHand)
{
    const RecordNow now = aRecord();
    RiggingSession session = workingAt(2, now);
    session.turn = Turn::Second;
    session.second = kVale;
    const SessionStep step = answer(session, now, CheckKind::PlungerHome, Answer::No, kNoon);
    const Check* check = only<Check>(step);
    ASSERT_TRUE(check);
    EXPECT_EQ(check->record, now.record);
    EXPECT_EQ(check->coupling, coupling(2));
    EXPECT_EQ(check->kind, CheckKind::PlungerHome);
    EXPECT_EQ(check->answer, Answer::No);
    EXPECT_EQ(check->turn, Turn::Second);
    EXPECT_EQ(check->person, kVale);
    EXPECT_EQ(check->when, kNoon);
}

TEST(RiggingSession, NobodyAnswersWhileNobodyIsChosen)
{
    const RecordNow now = aRecord();
    RiggingSession session = workingAt(1, now);
    session.first.reset();
    EXPECT_TRUE(answer(session, now, CheckKind::BallInSocket, Answer::Yes, kNoon).facts.empty());
}

TEST(RiggingSession, WhoeverDidACouplingFirstIsNoSecondPersonForItButIsForAnother)
{
    RecordNow now = aRecord();
    couplingIn(now, 1).firstPersons = {kOren};
    RiggingSession session = workingAt(1, now);
    session.turn = Turn::Second;
    session.second = kOren;
    EXPECT_FALSE(personAt(session, now));
    EXPECT_TRUE(answer(session, now, CheckKind::BallInSocket, Answer::Yes, kNoon).facts.empty());
    session.place = at(2);
    EXPECT_EQ(personAt(session, now), kOren);
}

TEST(RiggingSession, WhoeverConnectedTheJointIsNoSecondPersonForIt)
{
    RecordNow now = aRecord();
    couplingIn(now, 1).connectedBy = {kVale};
    RiggingSession session = workingAt(1, now);
    session.turn = Turn::Second;
    session.second = kVale;
    EXPECT_FALSE(personAt(session, now));
    EXPECT_EQ(couplingIn(now, 1).whyNotSecond(kVale), NotSecond::ConnectedIt);
    EXPECT_TRUE(answer(session, now, CheckKind::BallInSocket, Answer::Yes, kNoon).facts.empty());
    session.place = at(2);
    EXPECT_EQ(personAt(session, now), kVale);
}

TEST(RiggingSession, WhoeverOnlyConnectedTheJointMayBeSecondWhereNobodyElseIsThere)
{
    RecordNow now = aRecord();
    CouplingNow& joint = couplingIn(now, 1);
    joint.firstPersons = {kOren};
    joint.connectedBy = {kOren, kVale};
    joint.isNobodyApart = true;
    EXPECT_EQ(joint.whyNotSecond(kOren), NotSecond::DidItFirst) << "nobody looks twice";
    EXPECT_FALSE(joint.whyNotSecond(kVale));
}

TEST(RiggingSession, WhoConnectedIsAskedOfOneSideAfterTheOtherAndThenTheJointsFollow)
{
    RecordNow now = aRecord();
    now.sides = {{Side::Left, {}}, {Side::Right, {}}, {Side::None, {}}};
    RiggingSession session = goTo(workingAt(1, now), now, kConnected, kNoon).session;
    EXPECT_EQ(session.side, Side::Left);
    session = goOn(session, now, kNoon).session;
    EXPECT_EQ(session.side, Side::Right);
    session = goOn(session, now, kNoon).session;
    EXPECT_EQ(session.side, Side::None);
    EXPECT_EQ(stepBy(session, now, -1, kNoon).session.side, Side::Right);
    EXPECT_EQ(goOn(session, now, kNoon).session.place, at(1));
    now.sides[0].connectedBy = std::vector{kOren};
    EXPECT_EQ(goTo(workingAt(1, now), now, kConnected, kNoon).session.side, Side::Right)
        << "the first of which nobody said it";
}

TEST(RiggingSession, AfterTheSeasonsListItIsAskedWhoConnectedUnlessItWasSaid)
{
    RecordNow now = aRecord();
    now.sides = {{Side::Left, {}}};
    RiggingSession session = sessionOf(now.record, kOren, {});
    session.place.kind = RecordPlace::Kind::Season;
    EXPECT_EQ(onwardFrom(session, now), kConnected);
    now.sides.front().connectedBy.emplace();
    EXPECT_EQ(onwardFrom(session, now), at(1));
}

// What one press says of a side, by what was said before.
TEST(RiggingSession, EachPressOfWhoConnectedIsAWholeStatementOfItsSide)
{
    using Persons = std::vector<PersonId>;
    struct Row
    {
        const char* when;
        std::optional<Persons> before;
        std::optional<PersonId> pressed;
        std::optional<Persons> stated;
    };
    for (const Row& row : {
             Row{"nobody said yet", {}, kVale, Persons{kVale}},
             Row{"another had a hand on it too", Persons{kVale}, kOren, Persons{kVale, kOren}},
             Row{"one was named by a slip", Persons{kVale, kOren}, kVale, Persons{kOren}},
             Row{"the only one stays named", Persons{kVale}, kVale, {}},
             Row{"it is not known", Persons{kVale}, {}, Persons{}},
             Row{"nobody said, and it is not known", {}, {}, Persons{}},
             Row{"it was not known, and is now", Persons{}, kOren, Persons{kOren}},
             Row{"it is said again that it is not known", Persons{}, {}, {}},
         }) {
        RecordNow now = aRecord();
        now.leader = kOren;
        now.sides = {{Side::Left, {}}, {Side::Right, row.before}};
        RiggingSession session;
        session.place = kConnected;
        const SessionStep step = stateConnected(session, now, {Side::Right, row.pressed}, kNoon);
        EXPECT_EQ(step.session.side, Side::Right) << row.when;
        const SideConnected* fact = only<SideConnected>(step);
        ASSERT_EQ(fact != nullptr, row.stated.has_value()) << row.when;
        if (!fact)
            continue;
        EXPECT_EQ(fact->persons, *row.stated) << row.when;
        EXPECT_EQ(fact->side, Side::Right) << row.when;
        EXPECT_EQ(fact->record, now.record) << row.when;
        EXPECT_EQ(fact->stamp.by, kOren) << row.when;
    }
}

TEST(RiggingSession, WhoConnectedASideHoldsForItsJointsOnlyAndSaysWhetherAnybodyIsApart)
{
    RecordContent content;
    content.record.id = RecordId{{9}};
    SideConnected left;
    left.side = Side::Left;
    left.persons = {kVale};
    content.connected = {left};
    Coupling onTheLeft;
    onTheLeft.id = coupling(1);
    onTheLeft.side = Side::Left;
    Coupling atTheTail;
    atTheTail.id = coupling(2);
    Check look;
    look.coupling = coupling(1);
    look.person = kOren;
    content.checks = {look};
    const RecordNow now = recordNowOf(content, std::vector{onTheLeft, atTheTail}, {kOren, kVale});
    EXPECT_EQ(now.couplings[0].connectedBy, std::vector{kVale});
    EXPECT_TRUE(now.couplings[0].isNobodyApart);
    EXPECT_TRUE(now.couplings[1].connectedBy.empty());
    EXPECT_FALSE(now.couplings[1].isNobodyApart);
    EXPECT_FALSE(recordNowOf(content, std::vector{onTheLeft}, {kOren, kVale, PersonId{{3}}})
                     .couplings[0]
                     .isNobodyApart);
    ASSERT_EQ(now.sides.size(), 2U);
    EXPECT_TRUE(now.sides[0].isSaid());
    EXPECT_FALSE(now.sides[1].isSaid());
}

TEST(RiggingSession, LeavingACouplingHalfDoneSendsItBackToTheLook)
{
    RecordNow now = aRecord();
    RiggingSession session =
        answer(workingAt(1, now), now, CheckKind::BallInSocket, Answer::Yes, kNoon).session;
    couplingIn(now, 1).first = looked();
    const auto expectInterrupted = [&](const SessionStep& step, InterruptionReason reason) {
        const Interruption* interruption = only<Interruption>(step);
        ASSERT_TRUE(interruption);
        EXPECT_EQ(interruption->coupling, coupling(1));
        EXPECT_EQ(interruption->turn, Turn::First);
        EXPECT_EQ(interruption->record, now.record);
        EXPECT_EQ(interruption->reason, reason);
        EXPECT_FALSE(step.session.begun);
    };
    expectInterrupted(goTo(session, now, at(2), kNoon), InterruptionReason::Asked);
    expectInterrupted(stepBy(session, now, 1, kNoon), InterruptionReason::Asked);
    expectInterrupted(changeTurn(session, now, Turn::Second, kNoon), InterruptionReason::PersonChanged);
    expectInterrupted(choosePerson(session, now, kVale, kNoon), InterruptionReason::PersonChanged);
    expectInterrupted(goTo(session, now, kSecondInspection, kNoon), InterruptionReason::PersonChanged);
    expectInterrupted(interrupt(session, now, InterruptionReason::Idle, kNoon), InterruptionReason::Idle);
}

TEST(RiggingSession, WhileTheSecondInspectionGoesOnNoTurnShowsWhatTheSecondHasYetToFind)
{
    RecordNow now = aRecord();
    couplingIn(now, 1).first = couplingIn(now, 2).first = finished();
    RiggingSession session = workingAt(1, now);
    session.turn = Turn::Second;
    EXPECT_EQ(changeTurn(session, now, Turn::First, kNoon).session.turn, Turn::First) << "nobody is chosen";
    couplingIn(now, 1).second = looked();
    session.begun = Work{coupling(1), Turn::Second};
    const SessionStep asked = changeTurn(session, now, Turn::First, kNoon);
    EXPECT_EQ(asked.session.turn, Turn::Second);
    EXPECT_TRUE(asked.facts.empty()) << "a key alone breaks nothing off";
    const SessionStep broken = interrupt(session, now, InterruptionReason::Asked, kNoon);
    couplingIn(now, 1).second = untouched();
    couplingIn(now, 1).second.interrupted = true;
    EXPECT_EQ(changeTurn(broken.session, now, Turn::First, kNoon).session.turn, Turn::Second);
    RiggingSession first = workingAt(3, now);
    EXPECT_EQ(changeTurn(first, now, Turn::First, kNoon).session.turn, Turn::First) << "still to be done";
    EXPECT_EQ(goTo(first, now, at(2), kNoon).session.turn, Turn::Second) << "done first, hidden from second";
    couplingIn(now, 2).second = finished();
    EXPECT_EQ(goTo(first, now, at(2), kNoon).session.turn, Turn::First);
    EXPECT_TRUE(isHiddenNow(first, now, coupling(1)));
    EXPECT_FALSE(isHiddenNow(first, now, coupling(2)));
    EXPECT_FALSE(isHiddenNow(first, now, coupling(3)));
}

TEST(RiggingSession, TheFirstPersonGoesOnWhereTheSecondBrokeOffBeforeTheFirstWasDone)
{
    RecordNow now = aRecord();
    couplingIn(now, 1).first = couplingIn(now, 1).second = looked();
    RiggingSession session = workingAt(1, now);
    session.turn = Turn::Second;
    EXPECT_EQ(changeTurn(session, now, Turn::First, kNoon).session.turn, Turn::Second);
    couplingIn(now, 1).second = untouched();
    couplingIn(now, 1).second.interrupted = true;
    EXPECT_EQ(changeTurn(session, now, Turn::First, kNoon).session.turn, Turn::First);
}

TEST(RiggingSession, WhoeverCopiesBothColumnsOfAPaperGoesBetweenThem)
{
    RecordNow now = aRecord();
    now.enteredBy = kOren;
    couplingIn(now, 1).first = finished();
    couplingIn(now, 1).second = looked();
    RiggingSession session = workingAt(1, now);
    session.turn = Turn::Second;
    session.second = kVale;
    EXPECT_EQ(changeTurn(session, now, Turn::First, kNoon).session.turn, Turn::First);
    session.secondTypes = true;
    EXPECT_EQ(changeTurn(session, now, Turn::First, kNoon).session.turn, Turn::Second);
}

TEST(RiggingSession, NothingIsInterruptedThatIsFinishedOrUntouched)
{
    RecordNow now = aRecord();
    RiggingSession session = workingAt(1, now);
    EXPECT_TRUE(goTo(session, now, at(2), kNoon).facts.empty());
    session.begun = Work{coupling(1), Turn::First};
    couplingIn(now, 1).first = finished();
    EXPECT_TRUE(goTo(session, now, at(2), kNoon).facts.empty());
    EXPECT_TRUE(choosePerson(session, now, kOren, kNoon).facts.empty()) << "the same person goes on";
}

TEST(RiggingSession, WhatAnotherWindowLeftHalfDoneIsBegunAnewAndTheBreakIsKept)
{
    RecordNow now = aRecord();
    couplingIn(now, 1).first = looked();
    const RiggingSession session = workingAt(1, now);
    EXPECT_TRUE(isBegunElsewhere(session, now));
    const SessionStep step = beginAnew(session, now, kNoon);
    const Interruption* kept = only<Interruption>(step);
    ASSERT_TRUE(kept);
    EXPECT_EQ(kept->coupling, coupling(1));
    EXPECT_EQ(kept->reason, InterruptionReason::PersonChanged);
    couplingIn(now, 1).first = finished();
    EXPECT_FALSE(isBegunElsewhere(session, now)) << "nothing is left to be seen there";
    couplingIn(now, 1).first = looked();
    couplingIn(now, 1).stop = JointStop{CheckKind::PlungerHome};
    EXPECT_FALSE(isBegunElsewhere(session, now)) << "it is left as it is";
}

TEST(RiggingSession, WorkThatAnotherWindowHasBegunAnewIsNotThisOnesAnyMore)
{
    RecordNow now = aRecord();
    RiggingSession session = workingAt(1, now);
    session = answer(session, now, CheckKind::BallInSocket, Answer::Yes, kNoon).session;
    couplingIn(now, 1).first = looked();
    EXPECT_FALSE(isBegunElsewhere(session, now)) << "it was answered here";
    EXPECT_TRUE(isHalfDone(session, now));
    couplingIn(now, 1).first.since = FactId{{5}}; // and answered again since, over there
    EXPECT_TRUE(isBegunElsewhere(session, now));
    EXPECT_FALSE(isHalfDone(session, now)) << "it is not this window's to interrupt";
}

TEST(RiggingSession, AReadingSaidToBeWrongIsStruckWhenItIsNotReadAgain)
{
    RecordNow now = aRecord();
    Reading wrong;
    wrong.id = ReadingId{{7}};
    wrong.coupling = coupling(1);
    const RiggingSession asked = wantCorrected(workingAt(1, now), now, wrong, "leaf tilted", kNoon).session;
    for (const SessionStep& step :
         {interrupt(asked, now, InterruptionReason::Asked, kNoon), goTo(asked, now, at(2), kNoon)}) {
        const Exclusion* strike = only<Exclusion>(step);
        ASSERT_TRUE(strike);
        EXPECT_EQ(strike->reading, wrong.id);
        EXPECT_EQ(strike->reason, "leaf tilted");
        EXPECT_EQ(strike->stamp.by, kOren);
        EXPECT_EQ(step.session.wanted, ReadingWanted::None);
    }
}

TEST(RiggingSession, AJointThatIsLeftWithItsOnlyReadingStruckStandsAsInterrupted)
{
    RecordNow now = aRecord();
    CouplingFlow& flow = couplingIn(now, 1).first;
    flow = finished();
    Reading slip;
    slip.id = ReadingId{{6}};
    slip.coupling = coupling(1);
    Reading wrong = slip;
    wrong.id = ReadingId{{7}};
    wrong.corrects = slip.id;
    flow.readings = {slip, wrong};
    const RiggingSession asked = wantCorrected(workingAt(1, now), now, wrong, "leaf tilted", kNoon).session;
    const SessionStep left = goTo(asked, now, at(2), kNoon);
    ASSERT_EQ(left.facts.size(), 2U);
    EXPECT_EQ(std::get<Exclusion>(left.facts[0]).reading, wrong.id);
    EXPECT_EQ(std::get<Interruption>(left.facts[1]).coupling, coupling(1));
    EXPECT_EQ(std::get<Interruption>(left.facts[1]).turn, Turn::First);
    Reading beside = slip;
    beside.id = ReadingId{{8}};
    flow.readings = {slip, wrong, beside};
    EXPECT_TRUE(only<Exclusion>(goTo(asked, now, at(2), kNoon))) << "another one stands: nothing waits";
    flow.readings = {slip, wrong};
    now.enteredBy = kOren;
    EXPECT_TRUE(only<Exclusion>(goTo(asked, now, at(2), kNoon))) << "on paper nobody leaves a joint";
}

TEST(RiggingSession, WhoeverIsChosenWhereAnotherWindowHasBegunStartsFromTheLook)
{
    RecordNow now = aRecord();
    couplingIn(now, 1).first = looked();
    couplingIn(now, 1).firstPersons = {kOren};
    RiggingSession session = workingAt(1, now);
    session.first.reset();
    const SessionStep step = choosePerson(session, now, kVale, kNoon);
    ASSERT_TRUE(only<Interruption>(step));
    EXPECT_EQ(only<Interruption>(step)->reason, InterruptionReason::PersonChanged);
    EXPECT_TRUE(choosePerson(session, now, kOren, kNoon).facts.empty()) << "who began it goes on";
}

TEST(RiggingSession, WhatAnotherWindowIsDoingIsNotInterruptedFromThisOne)
{
    RecordNow now = aRecord();
    couplingIn(now, 1).first = looked(); // half done, and not here
    const RiggingSession session = workingAt(1, now);
    EXPECT_FALSE(isHalfDone(session, now));
    EXPECT_TRUE(goTo(session, now, at(2), kNoon).facts.empty());
    EXPECT_TRUE(interrupt(session, now, InterruptionReason::ProgramClosed, kNoon).facts.empty());
}

TEST(RiggingSession, StepsStopAtEitherEnd)
{
    const RecordNow now = aRecord();
    EXPECT_EQ(stepBy(workingAt(1, now), now, -1, kNoon).session.place, at(1));
    EXPECT_EQ(stepBy(workingAt(1, now), now, 1, kNoon).session.place, at(2));
    EXPECT_EQ(stepBy(workingAt(3, now), now, 1, kNoon).session.place, at(3));
    RiggingSession atControls = workingAt(1, now);
    atControls.place = kControlCheck;
    atControls.surface = SurfaceId{{1}};
    EXPECT_EQ(stepBy(atControls, now, 1, kNoon).session.surface, SurfaceId{{2}});
    EXPECT_EQ(stepBy(atControls, now, -1, kNoon).session.surface, SurfaceId{{1}});
}

TEST(RiggingSession, ThePressedReadingCarriesAllThatWasOnTheScreen)
{
    RecordNow now = aRecord();
    couplingIn(now, 2).first = looked();
    const RiggingSession session = workingAt(2, now);
    const auto reading = readingAt(session, now, aGaugeReading(), aGauge(), FittingId{{7}}, kNoon);
    ASSERT_TRUE(reading);
    RiggingSession pressed = press(session, *reading);
    pressed.place = at(3); // wherever the screen goes next
    pressed.turn = Turn::Second;
    pressed.first = kVale;
    pressed.gauge = GaugeId{{5}};
    const SessionStep step = keep(pressed);
    const Reading* kept = only<Reading>(step);
    ASSERT_TRUE(kept);
    EXPECT_EQ(kept->record, now.record);
    EXPECT_EQ(kept->coupling, coupling(2));
    EXPECT_EQ(kept->fitting, FittingId{{7}});
    EXPECT_EQ(kept->turn, Turn::First);
    EXPECT_EQ(kept->person, kOren);
    EXPECT_EQ(kept->gauge, GaugeId{{1}});
    EXPECT_EQ(kept->interval, aGaugeReading().interval);
    EXPECT_EQ(kept->when, kNoon);
    EXPECT_FALSE(step.session.pressed);
    EXPECT_TRUE(keep(step.session).facts.empty()) << "it is kept once";
}

TEST(RiggingSession, OfAStoppedJointNothingElseIsAskedAndNobodyIsSentBackToTheLook)
{
    RecordNow now = aRecord();
    couplingIn(now, 1).first = looked();
    couplingIn(now, 1).stop = JointStop{CheckKind::PlungerHome};
    RiggingSession session = workingAt(1, now);
    session.begun = Work{coupling(1), Turn::First};
    for (const Turn turn : {Turn::First, Turn::Second}) {
        session.turn = turn;
        session.second = kVale;
        EXPECT_TRUE(answer(session, now, CheckKind::Pull, Answer::Yes, kNoon).facts.empty());
        EXPECT_FALSE(readingAt(session, now, aGaugeReading(), aGauge(), FittingId{{7}}, kNoon));
    }
    session.turn = Turn::First;
    EXPECT_TRUE(goTo(session, now, at(2), kNoon).facts.empty());
    session.place = at(3);
    couplingIn(now, 2).first = couplingIn(now, 3).first = finished();
    EXPECT_FALSE(nextWaiting(session, now)) << "it is no work that waits";
}

TEST(RiggingSession, OfAStoppedJointOnlyAReadingAsFoundIsKeptAndOnlyWhenAsked)
{
    RecordNow now = aRecord();
    const auto readAfterNo = [&](CheckKind kind) {
        couplingIn(now, 1).stop = JointStop{kind};
        const RiggingSession session = wantAgain(workingAt(1, now), now, kNoon).session;
        return readingAt(session, now, aGaugeReading(), aGauge(), FittingId{{7}}, kNoon);
    };
    for (const CheckKind kind : {CheckKind::PlungerHome, CheckKind::SleeveAtStop, CheckKind::Pull}) {
        const auto reading = readAfterNo(kind);
        ASSERT_TRUE(reading);
        EXPECT_EQ(reading->state,
                  kind == CheckKind::SleeveAtStop ? SeatState::NotSecured : SeatState::PartSeated);
    }
    EXPECT_FALSE(readAfterNo(CheckKind::BallInSocket)) << "an empty socket can show a normal gap";
}

TEST(RiggingSession, AfterAnOutsideReadingAFurtherOneIsALockedOneAndNothingElseIsAsked)
{
    RecordNow now = aRecord();
    couplingIn(now, 1).first = looked();
    couplingIn(now, 1).stop = JointStop{};
    const RiggingSession session = workingAt(1, now);
    EXPECT_TRUE(answer(session, now, CheckKind::Pull, Answer::Yes, kNoon).facts.empty());
    EXPECT_FALSE(readingAt(session, now, aGaugeReading(), aGauge(), FittingId{{7}}, kNoon));
    const auto reading = readingAt(wantAgain(session, now, kNoon).session, now, aGaugeReading(), aGauge(),
                                   FittingId{{7}}, kNoon);
    ASSERT_TRUE(reading);
    EXPECT_EQ(reading->state, SeatState::Locked);
}

TEST(RiggingSession, MeasuringOpensOnlyWithSomebodyWhoLookedAndOnlyOnceUnlessAsked)
{
    RecordNow now = aRecord();
    RiggingSession session = workingAt(1, now);
    const auto opens = [&] {
        return readingAt(session, now, aGaugeReading(), aGauge(), FittingId{{7}}, kNoon).has_value();
    };
    EXPECT_FALSE(opens()) << "nobody looked";
    couplingIn(now, 1).first = looked();
    EXPECT_TRUE(opens());
    session.first.reset();
    EXPECT_FALSE(opens()) << "nobody is chosen";
    session.first = kOren;
    couplingIn(now, 1).first.readings.emplace_back();
    EXPECT_FALSE(opens()) << "it is read already";
    session = wantAgain(session, now, kNoon).session;
    EXPECT_TRUE(opens());
    session.place = kControlCheck;
    EXPECT_FALSE(opens()) << "no coupling is at hand";
}

TEST(RiggingSession, MeasuringNeverOpensWhereThereIsNoGap)
{
    RecordNow now = aRecord();
    Coupling byItself;
    byItself.kind = CouplingKind::ByItself;
    CouplingFlow& flow = couplingIn(now, 1).first;
    flow.asks = asksOf(byItself);
    for (const CheckKind kind : flow.asks.look)
        flow.answers[kind] = Answer::Yes;
    RiggingSession session = workingAt(1, now);
    const auto opens = [&] {
        return readingAt(session, now, aGaugeReading(), aGauge(), FittingId{{7}}, kNoon).has_value();
    };
    EXPECT_FALSE(opens());
    session = wantAgain(session, now, kNoon).session;
    EXPECT_FALSE(opens()) << "asked for or not";
    couplingIn(now, 1).stop = JointStop{CheckKind::Engaged};
    EXPECT_FALSE(opens()) << "nor as it was found";
}

TEST(RiggingSession, JointPlayBelongsToTheCouplingPersonAndRecordAtHandAndOpensNoStep)
{
    const PlayFound felt{PlayFelt::Felt, Gap::micrometres(150)};
    RecordNow now = aRecord();
    RiggingSession session = workingAt(2, now);
    const SessionStep step = feelPlay(session, now, felt, {}, "dial gauge", kNoon);
    const JointPlay* play = only<JointPlay>(step);
    ASSERT_TRUE(play);
    EXPECT_EQ(play->coupling, coupling(2));
    EXPECT_EQ(play->record, now.record);
    EXPECT_EQ(play->person, kOren);
    EXPECT_EQ(play->day, kNoon.localDay());
    EXPECT_EQ(play->along, felt);
    EXPECT_EQ(play->across.felt, PlayFelt::NotTried);
    EXPECT_EQ(play->note, "dial gauge");
    EXPECT_FALSE(step.session.begun) << "it is no step of the look";

    EXPECT_TRUE(feelPlay(session, now, {}, {}, "", kNoon).facts.empty()) << "neither way was tried";
    couplingIn(now, 2).stop = JointStop{};
    EXPECT_TRUE(feelPlay(session, now, felt, {}, "", kNoon).facts.empty()) << "no hand on a stopped joint";
    couplingIn(now, 2).stop.reset();
    session.first.reset();
    EXPECT_TRUE(feelPlay(session, now, felt, {}, "", kNoon).facts.empty()) << "nobody is chosen";
}

TEST(RiggingSession, ACorrectionNamesTheReadingThatItWasAskedFor)
{
    RecordNow now = aRecord();
    couplingIn(now, 1).first = looked();
    Reading wrong;
    wrong.id = ReadingId{{4}};
    couplingIn(now, 1).first.readings = {wrong};
    RiggingSession session = wantCorrected(workingAt(1, now), now, wrong, "the neighbour", kNoon).session;
    EXPECT_TRUE(answer(session, now, CheckKind::Pull, Answer::Yes, kNoon).facts.empty())
        << "nothing stands that the pull could follow";
    const auto reading = readingAt(session, now, aGaugeReading(), aGauge(), FittingId{{7}}, kNoon);
    ASSERT_TRUE(reading);
    EXPECT_EQ(reading->corrects, wrong.id);
    EXPECT_EQ(reading->note, "the neighbour");
    const SessionStep kept = keep(press(session, *reading));
    EXPECT_EQ(kept.session.wanted, ReadingWanted::None);
    EXPECT_FALSE(kept.session.corrected);
    session = goTo(session, now, at(2), kNoon).session;
    EXPECT_EQ(session.wanted, ReadingWanted::None) << "what was wanted at one coupling is not at another";
}

TEST(RiggingSession, AReadingThatCouldNotBeSavedCanBePressedAgain)
{
    RecordNow now = aRecord();
    couplingIn(now, 1).first = looked();
    const RiggingSession session = workingAt(1, now);
    const auto reading = readingAt(session, now, aGaugeReading(), aGauge(), FittingId{{7}}, kNoon);
    const RiggingSession dropped = dropPressed(press(session, *reading));
    EXPECT_FALSE(dropped.pressed);
    EXPECT_TRUE(readingAt(dropped, now, aGaugeReading(), aGauge(), FittingId{{7}}, kNoon));
}

TEST(RiggingSession, ComingBackToTheControlCheckGoesOnWithTheSurfaceThatIsHalfTried)
{
    RecordNow now = aRecord();
    now.surfaces = {{SurfaceId{{1}}, true}, {SurfaceId{{2}}, true, true}, {SurfaceId{{3}}, true, true}};
    RiggingSession session = workingAt(1, now);
    EXPECT_EQ(goTo(session, now, kControlCheck, kNoon).session.surface, SurfaceId{{2}}) << "not the first";
    session.surface = SurfaceId{{3}};
    EXPECT_EQ(goTo(session, now, kControlCheck, kNoon).session.surface, SurfaceId{{3}}) << "the one left";
    now.surfaces[1].isWaiting = now.surfaces[2].isWaiting = false;
    EXPECT_EQ(goTo(session, now, kControlCheck, kNoon).session.surface, SurfaceId{{1}}) << "one that waits";
    now.surfaces[0].isWaiting = false;
    EXPECT_EQ(goTo(session, now, kControlCheck, kNoon).session.surface, SurfaceId{{1}}) << "all are tried";
}

// What is called, by what was expected of it.
TEST(RiggingSession, WhatASurfaceDidIsKeptAsItWasCalledAndIsANoWhereItWasAnother)
{
    struct Row
    {
        const char* when;
        ExpectedCalls expected;
        SurfaceCheckKind way;
        std::optional<Movement> seen;
        Answer answer;
    };
    using enum SurfaceCheckKind;
    const ExpectedCalls leftAileron{Movement::Up, Movement::Down};
    for (const Row& row : {
             Row{"as expected", leftAileron, CalledOneWay, Movement::Up, Answer::Yes},
             Row{"reversed", leftAileron, CalledOneWay, Movement::Down, Answer::No},
             Row{"the other way as expected", leftAileron, CalledOtherWay, Movement::Down, Answer::Yes},
             Row{"the other way reversed", leftAileron, CalledOtherWay, Movement::Up, Answer::No},
             Row{"nothing", leftAileron, CalledOneWay, Movement::Nothing, Answer::No},
             Row{"not seen", leftAileron, CalledOneWay, {}, Answer::CannotSee},
             Row{"nobody knows what is expected", {}, CalledOneWay, Movement::Down, Answer::Yes},
             Row{"nothing, whatever is expected", {}, CalledOneWay, Movement::Nothing, Answer::No},
         }) {
        RecordNow now = aRecord();
        now.surfaces.front().expected = row.expected;
        RiggingSession session = goTo(workingAt(1, now), now, kControlCheck, kNoon).session;
        EXPECT_TRUE(callSurface(session, now, {row.way, row.seen}, kNoon).facts.empty())
            << "nobody is chosen";
        session = chooseCheckPeople(session, now, {kOren, kVale}, kNoon).session;
        const SessionStep step = callSurface(session, now, {row.way, row.seen}, kNoon);
        const SurfaceCheck* check = only<SurfaceCheck>(step);
        ASSERT_TRUE(check) << row.when;
        EXPECT_EQ(check->kind, row.way) << row.when;
        EXPECT_EQ(check->seen, row.seen) << row.when;
        EXPECT_EQ(check->answer, row.answer) << row.when;
        EXPECT_EQ(check->person, kOren) << row.when;
        EXPECT_EQ(check->cockpit, kVale) << row.when;
    }
}

TEST(RiggingSession, TheControlCheckGoesThroughTheSurfacesWithTwoDifferentPeople)
{
    RecordNow now = aRecord();
    RiggingSession session = goTo(workingAt(1, now), now, kControlCheck, kNoon).session;
    EXPECT_EQ(session.surface, SurfaceId{{1}});
    const auto tried = [&] {
        return answerSurface(session, now, SurfaceCheckKind::Sense, Answer::Yes, kNoon);
    };
    EXPECT_TRUE(tried().facts.empty()) << "nobody is chosen";
    session = chooseCheckPeople(session, now, {kOren, kOren}, kNoon).session;
    EXPECT_TRUE(tried().facts.empty()) << "one person cannot do it";
    session = chooseCheckPeople(session, now, {kOren, kVale}, kNoon).session;
    const SessionStep step = tried();
    const SurfaceCheck* check = only<SurfaceCheck>(step);
    ASSERT_TRUE(check);
    EXPECT_EQ(check->surface, SurfaceId{{1}});
    EXPECT_EQ(check->person, kOren);
    EXPECT_EQ(check->cockpit, kVale);
    EXPECT_EQ(goOn(session, now, kNoon).session.surface, SurfaceId{{2}});
    for (SurfaceNow& one : now.surfaces)
        one.isWaiting = false;
    for (CouplingNow& one : now.couplings)
        one.first = finished();
    EXPECT_EQ(goOn(session, now, kNoon).session.turn, Turn::Second) << "the second inspection follows";
}

namespace {

// Typed in by Oren from paper, with Vale chosen as second person.
RiggingSession typingSecond(RecordNow& now)
{
    now.enteredBy = kOren;
    RiggingSession session = workingAt(1, now);
    session.second = kVale;
    session.turn = Turn::Second;
    return session;
}

std::optional<PersonId> copiedByIn(const SessionStep& step)
{
    return std::get<Check>(step.facts.at(0)).copiedBy;
}

} // namespace

TEST(FromPaper, TheSecondPersonsColumnIsCopiedByWhoeverTypes)
{
    RecordNow now = aRecord();
    const RiggingSession session = typingSecond(now);
    const SessionStep step = answer(session, now, CheckKind::BallInSocket, Answer::Yes, kNoon);
    EXPECT_EQ(std::get<Check>(step.facts.at(0)).person, kVale);
    EXPECT_EQ(copiedByIn(step), kOren);
}

TEST(FromPaper, WhatTheSecondPersonTypesThemselfIsNotCopied)
{
    RecordNow now = aRecord();
    const RiggingSession session = chooseWhoTypes(typingSecond(now), now, true, kNoon).session;
    EXPECT_FALSE(copiedByIn(answer(session, now, CheckKind::BallInSocket, Answer::Yes, kNoon)));
    RiggingSession own = typingSecond(now);
    now.enteredBy = kVale;
    EXPECT_FALSE(copiedByIn(answer(own, now, CheckKind::BallInSocket, Answer::Yes, kNoon)))
        << "Vale types everything";
}

TEST(FromPaper, ThatOnePersonTypesIsSaidOfNoOther)
{
    RecordNow now = aRecord();
    const RiggingSession session = chooseWhoTypes(typingSecond(now), now, true, kNoon).session;
    EXPECT_TRUE(choosePerson(session, now, kVale, kNoon).session.secondTypes) << "the same person";
    EXPECT_FALSE(choosePerson(session, now, kOren, kNoon).session.secondTypes);
}

TEST(FromPaper, IsNotHalfDoneSoThatABreakSentItBack)
{
    RecordNow now = aRecord();
    couplingIn(now, 1).first = looked();
    RiggingSession session = workingAt(1, now);
    session.begun = Work{coupling(1), Turn::First};
    EXPECT_TRUE(isHalfDone(session, now));
    now.enteredBy = kOren;
    EXPECT_FALSE(isHalfDone(session, now));
}

TEST(FromPaper, TheFirstPersonsColumnIsNobodysCopy)
{
    RecordNow now = aRecord();
    RiggingSession session = typingSecond(now);
    session.turn = Turn::First;
    now.enteredBy = kVale;
    EXPECT_FALSE(copiedByIn(answer(session, now, CheckKind::BallInSocket, Answer::Yes, kNoon)));
}

TEST(FromPaper, NothingIsCopiedWhereNothingIsFromPaper)
{
    RecordNow now = aRecord();
    const RiggingSession session = typingSecond(now);
    now.enteredBy.reset();
    EXPECT_FALSE(copiedByIn(answer(session, now, CheckKind::BallInSocket, Answer::Yes, kNoon)));
}

TEST(FromPaper, LeavingACouplingHalfTypedIsNoInterruptionOfTheRigging)
{
    RecordNow now = aRecord();
    now.enteredBy = kOren;
    couplingIn(now, 1).first = looked();
    RiggingSession session = workingAt(1, now);
    session.begun = Work{coupling(1), Turn::First};
    EXPECT_TRUE(goTo(session, now, at(2), kNoon).facts.empty());
    now.enteredBy.reset();
    EXPECT_EQ(goTo(session, now, at(2), kNoon).facts.size(), 1U);
}

TEST(RiggingSession, OpenedAgainInTheMiddleOfTheSecondInspectionItIsStillTheSecondPersonsAndNobodyIsChosen)
{
    RecordNow now = aRecord();
    EXPECT_EQ(settledOn({}, &now).turn, Turn::First);
    couplingIn(now, 1).first = finished();
    EXPECT_EQ(settledOn({}, &now).turn, Turn::First) << "the first person has more to do";
    couplingIn(now, 1).second.interrupted = true;
    couplingIn(now, 2).first = couplingIn(now, 3).first = finished();
    const RiggingSession again = settledOn({}, &now);
    EXPECT_EQ(again.turn, Turn::Second);
    EXPECT_EQ(again.place, at(1));
    EXPECT_FALSE(again.second);
}

TEST(RiggingSession, OpenedAgainItGoesOnWithWhatTheFirstPersonHasLeftUndoneWhoeverWorkedLast)
{
    RecordNow now = aRecord();
    couplingIn(now, 1).first = couplingIn(now, 2).first = finished();
    couplingIn(now, 1).second.interrupted = true;
    const RiggingSession again = settledOn({}, &now);
    EXPECT_EQ(again.turn, Turn::First);
    EXPECT_EQ(again.place, at(3));
    EXPECT_TRUE(isHiddenNow(again, now, coupling(1))) << "the second has yet to find it";
    couplingIn(now, 3).second.begun = true;
    EXPECT_EQ(settledOn({}, &now).turn, Turn::Second) << "who is half way through that very joint";
    couplingIn(now, 3).second = untouched();
    couplingIn(now, 3).stop = JointStop{};
    EXPECT_EQ(settledOn({}, &now).turn, Turn::Second) << "a joint that is stopped is left as it is";
}

TEST(RiggingSession, AJointWhoseSurfaceWasWrongIsLeftAsItIsAndTellsTheSecondNothing)
{
    for (const bool movedWrong : {true, false}) {
        RecordNow now = aRecord();
        couplingIn(now, 1).first = looked();
        couplingIn(now, 1).stop =
            JointStop{{},
                      SurfaceStop{SurfaceId{{2}},
                                  movedWrong ? SurfaceCheckKind::CalledOneWay : SurfaceCheckKind::Freedom}};
        const RiggingSession session = workingAt(1, now);
        EXPECT_TRUE(answer(session, now, CheckKind::Pull, Answer::Yes, kNoon).facts.empty());
        EXPECT_TRUE(
            feelPlay(session, now, {PlayFelt::Felt, {}}, {PlayFelt::Felt, {}}, {}, kNoon).facts.empty());
        for (const RiggingSession& one : {session, wantAgain(session, now, kNoon).session})
            EXPECT_FALSE(readingAt(one, now, aGaugeReading(), aGauge(), FittingId{{1}}, kNoon));
        EXPECT_EQ(nextWaiting(session, now), coupling(2));
        EXPECT_TRUE(couplingIn(now, 1).isHiddenFromSecond());
    }
}

TEST(RiggingSession, TheControlIsNotMovedForASurfaceWithAStoppedJointInItsCircuitAndOthersGoOn)
{
    std::vector<Coupling> couplings(3);
    couplings[0].id = coupling(1);
    couplings[0].circuit = Circuit::Aileron;
    couplings[1].id = coupling(2);
    couplings[1].circuit = Circuit::Elevator;
    couplings[2].id = coupling(3);
    couplings[2].circuit = Circuit::Rudder;
    RecordNow now = aRecord();
    EXPECT_FALSE(stoppedJointFor(SurfaceKind::Aileron, couplings, now));
    for (const JointStop& stop : {JointStop{}, JointStop{CheckKind::PlungerHome},
                                  JointStop{{}, SurfaceStop{SurfaceId{{9}}, SurfaceCheckKind::Sense}}}) {
        couplingIn(now, 1).stop = stop;
        EXPECT_EQ(stoppedJointFor(SurfaceKind::Aileron, couplings, now), coupling(1));
        EXPECT_FALSE(stoppedJointFor(SurfaceKind::Elevator, couplings, now));
        EXPECT_EQ(stoppedJointFor(SurfaceKind::Other, couplings, now), coupling(1)) << "it may move it too";
    }
    couplingIn(now, 1).stop = JointStop{{}, SurfaceStop{SurfaceId{{9}}, SurfaceCheckKind::Freedom}};
    EXPECT_FALSE(stoppedJointFor(SurfaceKind::Aileron, couplings, now)) << "the other side is still tried";

    now.surfaces[0].stoppedJoint = coupling(1);
    now.surfaces[0].isWaiting = false;
    RiggingSession session = workingAt(1, now);
    session.checkPeople = {kOren, kVale};
    session = goTo(session, now, kControlCheck, kNoon).session;
    EXPECT_EQ(session.surface, SurfaceId{{2}});
    session = chooseSurface(session, now, SurfaceId{{1}}, kNoon).session;
    EXPECT_TRUE(answerSurface(session, now, SurfaceCheckKind::HeldOneWay, Answer::Yes, kNoon).facts.empty());
    EXPECT_TRUE(
        callSurface(session, now, {SurfaceCheckKind::CalledOneWay, Movement::Up}, kNoon).facts.empty());
    session = chooseSurface(session, now, SurfaceId{{2}}, kNoon).session;
    EXPECT_EQ(answerSurface(session, now, SurfaceCheckKind::HeldOneWay, Answer::Yes, kNoon).facts.size(), 1U);
}

TEST(RiggingSession, OpenedAgainWhereTheFirstPersonIsDoneItIsTheSecondPersonsUntilBothAre)
{
    RecordNow now = aRecord();
    for (CouplingNow& one : now.couplings)
        one.first = finished();
    EXPECT_EQ(settledOn({}, &now).turn, Turn::Second);
    for (CouplingNow& one : now.couplings)
        one.second = finished();
    EXPECT_EQ(settledOn({}, &now).turn, Turn::First);
}

TEST(RiggingSession, TheFirstResultIsHiddenUntilTheSecondPersonHasReadOrFinished)
{
    RecordNow now = aRecord();
    now.couplings.resize(1);
    CouplingNow& one = couplingIn(now, 1);
    one.first = finished();
    one.second = looked();
    EXPECT_TRUE(now.isHiddenFromSecond());
    one.second.last = Reading{};
    EXPECT_FALSE(now.isHiddenFromSecond());
    one.second.last.reset();
    one.second = finished();
    EXPECT_FALSE(now.isHiddenFromSecond());
    one.second = looked();
    one.stop = JointStop{};
    EXPECT_FALSE(now.isHiddenFromSecond()) << "everybody is told what stopped a joint";
}

TEST(RiggingSession, SaysOfAPersonWhichSidesTheyConnectedAndOfWhichNobodyKnows)
{
    const std::vector<SideNow> sides{
        {Side::Left, std::vector{kOren}}, {Side::Right, std::vector<PersonId>{}}, {Side::None, {}}};
    const Independence oren = independenceOf(kOren, sides);
    EXPECT_EQ(oren.connected, std::vector{Side::Left});
    EXPECT_EQ(oren.unknown, (std::vector{Side::Right, Side::None})) << "not known, and never said";
    EXPECT_TRUE(independenceOf(kVale, sides).connected.empty());
}

TEST(RiggingSession, ASecondInspectionLeftWithNobodyChosenIsNotBegunAndTheNameBeginsItWithAllOfItHidden)
{
    RecordNow now = aRecord();
    for (const std::uint8_t number : {std::uint8_t{1}, std::uint8_t{2}, std::uint8_t{3}})
        couplingIn(now, number).first = finished();
    const RiggingSession opened = goOn(workingAt(3, now), now, kNoon).session;
    EXPECT_EQ(opened.turn, Turn::Second);
    EXPECT_TRUE(isHiddenNow(opened, now, coupling(1))) << "while its page is open";
    const SessionStep left = changeTurn(opened, now, Turn::First, kNoon);
    EXPECT_EQ(left.session.turn, Turn::First);
    EXPECT_FALSE(left.session.second);
    EXPECT_TRUE(left.facts.empty());
    EXPECT_FALSE(now.isSecondBegun());
    EXPECT_FALSE(isHiddenNow(left.session, now, coupling(1)));

    const RiggingSession again = goTo(left.session, now, kSecondInspection, kNoon).session;
    const RiggingSession begun = choosePerson(again, now, kVale, kNoon).session;
    for (const std::uint8_t number : {std::uint8_t{1}, std::uint8_t{2}, std::uint8_t{3}})
        EXPECT_TRUE(isKeptBack(begun, now, coupling(number)));
    EXPECT_EQ(changeTurn(begun, now, Turn::First, kNoon).session.turn, Turn::Second);
}

namespace {

// Half of what is asked of the second person was answered for Vale.
void halfForVale(RecordNow& now)
{
    couplingIn(now, 1).first = finished();
    CouplingFlow& second = couplingIn(now, 1).second;
    second.answers[CheckKind::BallInSocket] = Answer::Yes;
    second.givenBy[CheckKind::BallInSocket] = kVale;
    second.begun = true;
}

constexpr PersonId kThird{{3}};

} // namespace

TEST(FromPaper, AJointThatIsHalfAnsweredForOnePersonIsAskedAfreshOfAnother)
{
    RecordNow now = aRecord();
    const RiggingSession session = typingSecond(now);
    halfForVale(now);
    EXPECT_TRUE(choosePerson(session, now, kVale, kNoon).facts.empty()) << "the same person goes on";
    const SessionStep step = choosePerson(session, now, kThird, kNoon);
    const Interruption* change = only<Interruption>(step);
    ASSERT_TRUE(change);
    EXPECT_EQ(change->coupling, coupling(1));
    EXPECT_EQ(change->turn, Turn::Second);
    EXPECT_EQ(change->reason, InterruptionReason::PersonChanged);
    EXPECT_EQ(step.session.second, kThird);
}

TEST(FromPaper, WhoeverComesToAJointThatIsHalfAnsweredForAnotherBeginsItAnew)
{
    RecordNow now = aRecord();
    RiggingSession session = typingSecond(now);
    halfForVale(now);
    EXPECT_FALSE(isBegunElsewhere(session, now));
    session.place = at(2);
    session = choosePerson(session, now, kThird, kNoon).session;
    const SessionStep back = goTo(session, now, at(1), kNoon);
    EXPECT_TRUE(back.facts.empty()) << "looking takes nothing away";
    EXPECT_TRUE(isBegunElsewhere(back.session, now));
    EXPECT_TRUE(only<Interruption>(beginAnew(back.session, now, kNoon)));
    couplingIn(now, 1).second.next = Step::Done;
    EXPECT_FALSE(isBegunElsewhere(back.session, now)) << "done by another, and left so";
}

TEST(FromPaper, OpenedAgainItGoesOnWithThePersonsOfWhomSomethingWasTyped)
{
    RecordNow now = aRecord();
    for (CouplingNow& one : now.couplings)
        one.first = finished();
    halfForVale(now);
    now.lastFirst = kOren;
    now.lastSecond = kVale;
    EXPECT_FALSE(settledOn({}, &now).second) << "nobody is filled in at a rigging";
    now.enteredBy = kOren;
    const RiggingSession again = settledOn({}, &now);
    EXPECT_EQ(again.first, kOren);
    EXPECT_EQ(again.second, kVale);
    EXPECT_EQ(again.turn, Turn::Second);
}

TEST(RecordNow, TellsWhoseAnswerWasSavedLastInEachTurn)
{
    RecordContent content;
    Coupling joint;
    joint.id = coupling(1);
    const auto say = [&](PersonId person, Turn turn, std::uint8_t order) {
        Check check;
        check.id.bytes[15] = order;
        check.coupling = joint.id;
        check.person = person;
        check.turn = turn;
        check.answer = Answer::Yes;
        content.checks.push_back(check);
    };
    say(kOren, Turn::First, 1);
    say(kVale, Turn::Second, 3);
    say(kThird, Turn::Second, 2);
    const RecordNow now = recordNowOf(content, std::vector{joint}, {kOren, kVale, kThird});
    EXPECT_EQ(now.lastFirst, kOren);
    EXPECT_EQ(now.lastSecond, kVale);
    EXPECT_TRUE(now.couplings.front().second.isPartlyOfAnother(kVale)) << "of the third, who came before";
}
