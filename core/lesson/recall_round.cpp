#include "core/lesson/recall_round.h"

#include "core/lesson/round_dice.h"

#include <algorithm>
#include <array>
#include <map>

namespace rig {

namespace {

constexpr std::array kStopCases{StopCase::PlungerNotHome,        StopCase::PlungerNotSeen,
                                StopCase::OutsideTheBand,        StopCase::PullLetsGo,
                                StopCase::HandAfterControlCheck, StopCase::CalledAway};
constexpr std::array kStopActs{StopAct::StopAndCall, StopAct::MirrorOrLight, StopAct::TrySurfaceAgain,
                               StopAct::LookAgain, StopAct::GoOn};
constexpr std::size_t kChoices = 4; // of couplings or names

void addCalls(const RecallGround& ground, std::vector<RecallTask>& tasks)
{
    for (const Surface& surface : ground.surfaces) {
        const ExpectedCalls expected = expectedOf(surface);
        if (!expected.areKnown())
            continue;
        for (const SurfaceCheckKind call :
             {SurfaceCheckKind::CalledOneWay, SurfaceCheckKind::CalledOtherWay}) {
            RecallTask task;
            task.surface = surface.id;
            task.call = call;
            for (const Movement movement : movementsOf(surface.kind)) {
                if (movement == *expected.of(call))
                    task.right = task.choices.size();
                task.choices.emplace_back(movement);
            }
            tasks.push_back(std::move(task));
        }
    }
}

void addOrder(const RecallGround& ground, std::vector<RecallTask>& tasks)
{
    const std::span<const Coupling> all = ground.couplings;
    for (std::size_t i = 0; i + 1 < all.size() && all.size() > 2; ++i) {
        RecallTask task;
        task.of = RecallOf::Order;
        task.coupling = all[i].id;
        task.choices.emplace_back(all[i + 1].id);
        for (std::size_t step = 2; step < all.size() && task.choices.size() < kChoices; ++step)
            if (const Coupling& other = all[(i + step) % all.size()]; other.id != all[i].id)
                task.choices.emplace_back(other.id);
        tasks.push_back(std::move(task));
    }
}

void addWhomToCall(const RecallGround& ground, std::vector<RecallTask>& tasks)
{
    if (ground.airframe.callName.empty())
        return;
    RecallTask task;
    task.of = RecallOf::WhomToCall;
    task.choices.emplace_back(ground.airframe.callName);
    for (const Person& person : ground.persons)
        if (person.name != ground.airframe.callName && task.choices.size() < kChoices)
            task.choices.emplace_back(person.name);
    if (task.choices.size() > 1)
        tasks.push_back(std::move(task));
}

void addStops(std::vector<RecallTask>& tasks)
{
    for (const StopCase what : kStopCases) {
        RecallTask task;
        task.of = RecallOf::WhenToStop;
        task.stopCase = what;
        for (const StopAct act : kStopActs) {
            if (act == actOf(what))
                task.right = task.choices.size();
            task.choices.emplace_back(act);
        }
        tasks.push_back(std::move(task));
    }
}

bool hasOwnOrder(const RecallTask& task)
{
    return task.of == RecallOf::Call || task.of == RecallOf::WhenToStop;
}

void shuffleChoices(RecallTask& task, numbers::Dice& dice)
{
    const RecallChoice right = task.choices[task.right];
    dice.shuffle(task.choices);
    task.right = static_cast<std::size_t>(std::ranges::find(task.choices, right) - task.choices.begin());
}

enum class AskedBefore { Wrongly, Never, Rightly };

} // namespace

StopAct actOf(StopCase what)
{
    switch (what) {
    case StopCase::PlungerNotSeen:
        return StopAct::MirrorOrLight;
    case StopCase::HandAfterControlCheck:
        return StopAct::TrySurfaceAgain;
    case StopCase::CalledAway:
        return StopAct::LookAgain;
    case StopCase::PlungerNotHome:
    case StopCase::OutsideTheBand:
    case StopCase::PullLetsGo:
        break;
    }
    return StopAct::StopAndCall;
}

std::vector<RecallTask> recallTasksOf(const RecallGround& ground)
{
    std::vector<RecallTask> tasks;
    addCalls(ground, tasks);
    addOrder(ground, tasks);
    addWhomToCall(ground, tasks);
    addStops(tasks);
    return tasks;
}

std::vector<RecallTask> recallRoundOf(std::vector<RecallTask> tasks, std::span<const RecallAnswer> answers,
                                      const LessonRound& round,
                                      const std::function<std::string(const RecallTask&)>& asked)
{
    std::map<std::string, AskedBefore> last;
    for (const RecallAnswer& answer : answers)
        if (answer.round != round.id)
            last[answer.asked] = isRight(answer) ? AskedBefore::Rightly : AskedBefore::Wrongly;
    numbers::Dice dice = roundDice(round, 0);
    dice.shuffle(tasks);
    const auto turn = [&](const RecallTask& task) {
        const auto found = last.find(asked(task));
        return found == last.end() ? AskedBefore::Never : found->second;
    };
    std::ranges::stable_sort(tasks, {}, turn);
    tasks.resize(std::min(tasks.size(), static_cast<std::size_t>(round.asks)));
    for (RecallTask& task : tasks)
        if (!hasOwnOrder(task))
            shuffleChoices(task, dice);
    return tasks;
}

} // namespace rig
