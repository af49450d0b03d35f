#include "core/lesson/seating_round.h"
#include "tests/support/made_id.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <map>

using namespace rig;
using namespace rig::test;

namespace {

constexpr Day kToday{std::chrono::days{20'600}};

Gap mm(double value)
{
    return Gap::micrometres(static_cast<int>(value * 1000));
}

PracticeJoint joint(int number, std::vector<Gap> partSeated = {mm(1.72), mm(2.1)})
{
    return {madeId<CouplingId>(number), {mm(0.6), mm(0.63), mm(0.66)}, std::move(partSeated)};
}

bool alwaysTold(CouplingId, JointState, const LookedWith&)
{
    return true;
}

// Somebody who practises: answers as told to, each on the day given.
class Practice
{
public:
    explicit Practice(std::vector<PracticeJoint> joints) : m_joints{std::move(joints)} {}

    LessonRound begin(int asks, int person = 1)
    {
        rounds.push_back({madeId<LessonRoundId>(++m_rounds),
                          {},
                          madeId<PersonId>(person),
                          RoundKind::Seating,
                          {},
                          asks,
                          {}});
        return rounds.back();
    }
    SeatingTask ask(bool refresh = false) const
    {
        return nextTask(m_joints, answers, rounds.back(), refresh, today, tells);
    }
    SeatingAnswer answer(const SeatingTask& task, SeatingCall said, bool sure)
    {
        const Moment now = noonOf(today);
        answers.push_back({{},
                           rounds.back().id,
                           task.coupling,
                           task.state,
                           task.gap,
                           task.view.mirror,
                           task.view.torch,
                           task.expected,
                           said,
                           sure,
                           {{}, now}});
        return answers.back();
    }
    // A whole round, all of it right.
    std::vector<SeatingTask> know(int asks)
    {
        begin(asks);
        std::vector<SeatingTask> tasks;
        for (int i = 0; i < asks; ++i) {
            tasks.push_back(ask());
            answer(tasks.back(), tasks.back().expected, true);
        }
        return tasks;
    }

    Day today = kToday;
    TellsState tells = alwaysTold;
    std::vector<LessonRound> rounds;
    std::vector<SeatingAnswer> answers;

private:
    std::vector<PracticeJoint> m_joints;
    int m_rounds = 0;
};

} // namespace

TEST(SeatingRound, AsksTheSameAgainUntilItIsAnswered)
{
    Practice practice{{joint(1)}};
    practice.begin(kAskedOfOneCoupling);
    const SeatingTask task = practice.ask();
    const SeatingTask again = practice.ask();
    EXPECT_EQ(task.state, again.state);
    EXPECT_EQ(task.gap, again.gap);
    EXPECT_EQ(task.view.mirror, again.view.mirror);
}

TEST(SeatingRound, AsksFaultsMoreOftenThanLockedJointsAndEveryStateInTime)
{
    Practice practice{{joint(1)}};
    std::map<JointState, int> asked;
    for (int i = 0; i < 100; ++i)
        for (const SeatingTask& task : practice.know(kAskedOfOneCoupling))
            ++asked[task.state];
    EXPECT_EQ(asked.size(), 4U);
    EXPECT_LT(asked[JointState::Locked], 300);
    EXPECT_GT(asked[JointState::Locked], 120) << "locked is no rare answer either";
    EXPECT_GT(asked[JointState::PartSeated], 150);
}

TEST(SeatingRound, AlwaysAsksForOnePartSeatedAndOneEmptyJoint)
{
    Practice practice{{joint(1)}};
    for (int i = 0; i < 60; ++i) {
        const std::vector<SeatingTask> tasks = practice.know(kAskedOfOneCoupling);
        for (const JointState state : {JointState::PartSeated, JointState::NotConnected})
            EXPECT_NE(std::ranges::find(tasks, state, &SeatingTask::state), tasks.end()) << i;
    }
}

TEST(SeatingRound, DrawsGapsFromTheCouplingsOwnReadings)
{
    Practice practice{{joint(1)}};
    for (int i = 0; i < 30; ++i)
        for (const SeatingTask& task : practice.know(kAskedOfOneCoupling)) {
            switch (task.state) {
            case JointState::Locked:
            case JointState::NotConnected:
                EXPECT_TRUE(task.gap == mm(0.6) || task.gap == mm(0.63) || task.gap == mm(0.66));
                break;
            case JointState::PartSeated:
                EXPECT_TRUE(task.gap == mm(1.72) || task.gap == mm(2.1));
                break;
            case JointState::NotSecured:
                EXPECT_FALSE(task.gap) << "a sleeve that is back leaves no gap to be read";
                break;
            }
        }
}

TEST(SeatingRound, InventsNoGapWhereNobodyShowedThePartSeatedJoint)
{
    numbers::Dice dice{1};
    const PracticeJoint never = joint(1, {});
    EXPECT_FALSE(drawnGap(never, JointState::PartSeated, dice));
    EXPECT_FALSE(drawnGap({madeId<CouplingId>(1), {}, {}}, JointState::Locked, dice));
}

TEST(SeatingRound, ExpectsCannotTellWhereWhatCanBeSeenTellsNothing)
{
    Practice practice{{joint(1)}};
    practice.tells = [](CouplingId, JointState, const LookedWith& view) { return view.mirror; };
    int hidden = 0;
    for (int i = 0; i < 40; ++i)
        for (const SeatingTask& task : practice.know(kAskedOfOneCoupling)) {
            hidden += !task.view.mirror;
            if (!task.view.mirror) {
                EXPECT_EQ(task.expected, SeatingCall::CannotTell);
                continue;
            }
            EXPECT_EQ(task.expected,
                      task.state == JointState::Locked ? SeatingCall::Locked : SeatingCall::NotLocked);
        }
    EXPECT_GT(hidden, 10);
}

TEST(SeatingRound, AsksNextWhatSomebodyWasWronglySureOf)
{
    Practice practice{{joint(1), joint(2), joint(3)}};
    practice.begin(kAskedOfAll);
    SeatingTask task = practice.ask();
    while (task.state != JointState::PartSeated) {
        practice.answer(task, task.expected, true);
        task = practice.ask();
    }
    const SeatingAnswer missed = practice.answer(task, SeatingCall::Locked, true);
    EXPECT_TRUE(isMissed(missed, JointState::PartSeated));
    const SeatingTask next = practice.ask();
    EXPECT_EQ(next.coupling, task.coupling);
    EXPECT_EQ(next.state, JointState::PartSeated);
    practice.answer(next, next.expected, true);
    bool comesAgain = true;
    for (int i = 0; i < 3; ++i) {
        const SeatingTask later = practice.ask();
        comesAgain = comesAgain && later.coupling == task.coupling && later.state == task.state;
        practice.answer(later, later.expected, true);
    }
    EXPECT_FALSE(comesAgain) << "once it is known it is asked like the others";
}

TEST(SeatingRound, BeginsTheNextRoundWithWhatSomebodyWasWronglySureOfLast)
{
    Practice practice{{joint(1), joint(2)}};
    practice.know(kAskedOfAll);
    SeatingAnswer& last = practice.answers.back();
    last.said = last.expected == SeatingCall::Locked ? SeatingCall::NotLocked : SeatingCall::Locked;
    const SeatingAnswer wrong = last;
    practice.today += std::chrono::days{2};
    practice.begin(kAskedOfAll);
    const SeatingTask first = practice.ask();
    EXPECT_EQ(first.coupling, wrong.coupling);
    EXPECT_EQ(first.state, wrong.shown);
}

TEST(SeatingRound, AsksOfTheCouplingsThatAreDueBeforeTheOthers)
{
    Practice practice{{joint(1), joint(2)}};
    practice.begin(4);
    for (const JointState state :
         {JointState::Locked, JointState::PartSeated, JointState::NotSecured, JointState::NotConnected})
        practice.answer({madeId<CouplingId>(1), state, {}, {}, SeatingCall::NotLocked},
                        SeatingCall::NotLocked, true);
    practice.begin(kAskedOfAll);
    EXPECT_EQ(practice.ask().coupling, madeId<CouplingId>(2)) << "the first one was known today";
}

TEST(SeatingRound, OfSomebodyElseChangesNothing)
{
    Practice practice{{joint(1)}};
    practice.know(kAskedOfOneCoupling);
    EXPECT_EQ(answersOf(madeId<PersonId>(1), practice.rounds, practice.answers).size(), 6U);
    EXPECT_TRUE(answersOf(madeId<PersonId>(2), practice.rounds, practice.answers).empty());
}

TEST(SeatingRound, LastOfACouplingCountsEachStateThatWasCalledLockedApart)
{
    Practice practice{{joint(1)}};
    practice.know(kAskedOfOneCoupling);
    practice.begin(3);
    practice.answer({madeId<CouplingId>(1), JointState::PartSeated, mm(1.7), {}, SeatingCall::NotLocked},
                    SeatingCall::Locked, true);
    practice.answer({madeId<CouplingId>(1), JointState::NotConnected, mm(0.6), {}, SeatingCall::NotLocked},
                    SeatingCall::Locked, false);
    const auto before = lastRoundsOf(madeId<PersonId>(1), practice.rounds, practice.answers);
    EXPECT_TRUE(before.at(madeId<CouplingId>(1)).missedNothing()) << "a round in the middle is no last round";
    practice.answer(
        {madeId<CouplingId>(1), JointState::PartSeated, mm(1.7), {false, true}, SeatingCall::CannotTell},
        SeatingCall::Locked, true);
    const LastRound last =
        lastRoundsOf(madeId<PersonId>(1), practice.rounds, practice.answers).at(madeId<CouplingId>(1));
    EXPECT_EQ(last.asked, 3);
    EXPECT_EQ(last.right, 0);
    EXPECT_EQ(last.partSeatedAsked, 2);
    EXPECT_EQ(last.missedPartSeated, 2) << "that it could not be told is no excuse for calling it locked";
    EXPECT_EQ(last.missedEmpty, 1);
    EXPECT_EQ(last.sureButWrong, 2);
}

TEST(SeatingRound, ThatSomebodyBeganLastIsTheirOwnAndOfItsKind)
{
    Practice practice{{joint(1)}};
    practice.begin(2);
    const LessonRound round = practice.begin(2);
    practice.begin(2, 2);
    EXPECT_EQ(lastRoundOf(madeId<PersonId>(1), RoundKind::Seating, practice.rounds)->id, round.id);
    EXPECT_FALSE(lastRoundOf(madeId<PersonId>(1), RoundKind::Recall, practice.rounds));
    EXPECT_FALSE(lastRoundOf(madeId<PersonId>(3), RoundKind::Seating, practice.rounds));
}
