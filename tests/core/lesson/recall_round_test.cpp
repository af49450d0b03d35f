#include "core/lesson/recall_round.h"
#include "tests/support/made_id.h"

#include <algorithm>
#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

class RecallRound : public testing::Test
{
protected:
    RecallRound()
    {
        airframe.callName = "A. Quill";
        for (const char* name : {"Left aileron", "Right aileron", "Left airbrake", "Elevator"}) {
            Coupling coupling;
            coupling.id = madeId<CouplingId>(static_cast<int>(couplings.size()) + 1);
            coupling.name = name;
            couplings.push_back(coupling);
        }
        for (const auto& [kind, side] :
             {std::pair{SurfaceKind::Aileron, Side::Left}, std::pair{SurfaceKind::Elevator, Side::None},
              std::pair{SurfaceKind::Trim, Side::None}}) {
            Surface surface;
            surface.id = madeId<SurfaceId>(static_cast<int>(surfaces.size()) + 1);
            surface.kind = kind;
            surface.side = side;
            surfaces.push_back(surface);
        }
        for (const char* name : {"M. Oren", "T. Vale", "A. Quill"}) {
            Person person;
            person.id = madeId<PersonId>(static_cast<int>(persons.size()) + 1);
            person.name = name;
            persons.push_back(person);
        }
        round.id = madeId<LessonRoundId>(1);
        round.asks = kRecallAsked;
    }

    std::vector<RecallTask> tasks() const { return recallTasksOf({airframe, couplings, surfaces, persons}); }
    static std::string asked(const RecallTask& task)
    {
        return std::to_string(static_cast<int>(task.of)) + ' ' +
               std::to_string(task.surface ? task.surface->bytes[0] : 0) + ' ' +
               std::to_string(static_cast<int>(task.call)) + ' ' +
               std::to_string(task.coupling ? task.coupling->bytes[0] : 0) + ' ' +
               std::to_string(static_cast<int>(task.stopCase));
    }
    std::vector<RecallTask> drawn(const std::vector<RecallAnswer>& answers = {}) const
    {
        return recallRoundOf(tasks(), answers, round, asked);
    }
    long count(RecallOf of) const { return std::ranges::count(tasks(), of, &RecallTask::of); }

    Airframe airframe;
    std::vector<Coupling> couplings;
    std::vector<Surface> surfaces;
    std::vector<Person> persons;
    LessonRound round;
};

} // namespace

TEST_F(RecallRound, AsksTheCallsBothWaysWhereTheyAreKnown)
{
    EXPECT_EQ(count(RecallOf::Call), 4) << "of a trim the manual decides";
    for (const RecallTask& task : tasks()) {
        if (task.of != RecallOf::Call)
            continue;
        const auto surface = std::ranges::find(surfaces, *task.surface, &Surface::id);
        EXPECT_EQ(std::get<Movement>(task.choices.at(task.right)), *expectedOf(*surface).of(task.call));
    }
    const std::vector<RecallTask> all = tasks();
    EXPECT_EQ(std::get<Movement>(all[0].choices[all[0].right]), Movement::Up) << "stick left, left aileron";
    EXPECT_EQ(std::get<Movement>(all[1].choices[all[1].right]), Movement::Down);
}

TEST_F(RecallRound, AsksWhatFollowsEachCouplingAmongOthers)
{
    EXPECT_EQ(count(RecallOf::Order), 3);
    for (const RecallTask& task : tasks()) {
        if (task.of != RecallOf::Order)
            continue;
        EXPECT_EQ(std::get<CouplingId>(task.choices[task.right]).bytes[0], task.coupling->bytes[0] + 1);
        EXPECT_EQ(std::ranges::count(task.choices, RecallChoice{*task.coupling}), 0);
        EXPECT_EQ(task.choices.size(), 3U);
    }
}

TEST_F(RecallRound, AsksWhomToCallOnlyWhereSomebodyIsNamed)
{
    EXPECT_EQ(count(RecallOf::WhomToCall), 1);
    airframe.callName.clear();
    EXPECT_EQ(count(RecallOf::WhomToCall), 0);
}

TEST_F(RecallRound, NeverGoesOnWhereSomethingIsWrong)
{
    EXPECT_EQ(count(RecallOf::WhenToStop), 6);
    for (const RecallTask& task : tasks())
        if (task.of == RecallOf::WhenToStop) {
            EXPECT_NE(std::get<StopAct>(task.choices[task.right]), StopAct::GoOn);
        }
    EXPECT_EQ(actOf(StopCase::PullLetsGo), StopAct::StopAndCall);
    EXPECT_EQ(actOf(StopCase::PlungerNotSeen), StopAct::MirrorOrLight);
}

TEST_F(RecallRound, IsTheSameEachTimeAndHasAsManyAsItAsks)
{
    const std::vector<RecallTask> one = drawn();
    const std::vector<RecallTask> other = drawn();
    ASSERT_EQ(one.size(), static_cast<std::size_t>(kRecallAsked));
    for (std::size_t i = 0; i < one.size(); ++i) {
        EXPECT_EQ(asked(one[i]), asked(other[i]));
        EXPECT_EQ(one[i].right, other[i].right);
        EXPECT_LT(one[i].right, one[i].choices.size());
    }
    round.id = madeId<LessonRoundId>(2);
    const std::vector<RecallTask> next = drawn();
    EXPECT_FALSE(std::ranges::equal(one, next, {}, asked, asked));
}

TEST_F(RecallRound, BeginsWithWhatWasWrongAndThenWithWhatWasNeverAsked)
{
    std::vector<RecallAnswer> answers;
    for (const RecallTask& task : tasks()) {
        RecallAnswer answer;
        answer.round = madeId<LessonRoundId>(9);
        answer.asked = asked(task);
        answer.expected = "a";
        answer.said = answers.size() == 3 ? "b" : "a";
        answers.push_back(answer);
    }
    const std::string wrong = answers[3].asked;
    const std::string never = answers.back().asked;
    answers.pop_back();
    const std::vector<RecallTask> next = drawn(answers);
    EXPECT_EQ(asked(next[0]), wrong);
    EXPECT_EQ(asked(next[1]), never);
}
