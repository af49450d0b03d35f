#include "core/lesson/seating_round.h"

#include "core/lesson/round_dice.h"

#include <algorithm>
#include <array>
#include <ranges>
#include <set>

namespace rig {

namespace {

// How often each comes in six questions.
struct Share
{
    JointState state;
    int of6;
};
constexpr std::array kShares{Share{JointState::Locked, 2}, Share{JointState::PartSeated, 2},
                             Share{JointState::NotSecured, 1}, Share{JointState::NotConnected, 1}};
constexpr int kPoorViewOf = 4; // one in so many is seen without mirror or torch

// What a round asks at least.
constexpr std::array kAlwaysAsked{JointState::PartSeated, JointState::NotConnected};

struct Item
{
    CouplingId coupling;
    JointState state;

    auto operator<=>(const Item&) const = default;
};

enum class Urgency { SureButWrong, NeverAsked, Due, NotDue };

std::map<Item, Spacing> spacings(std::span<const SeatingAnswer> answers)
{
    std::map<Item, std::vector<Recalled>> times;
    for (const SeatingAnswer& answer : answers)
        times[{answer.coupling, answer.shown}].push_back(
            {answer.stamp.when.localDay(), isRight(answer), answer.sure});
    std::map<Item, Spacing> all;
    for (const auto& [item, recalled] : times)
        all.emplace(item, spacingOf(recalled));
    return all;
}

Urgency urgencyOf(const Spacing* spacing, bool refreshIsDue, Day today)
{
    if (!spacing)
        return Urgency::NeverAsked;
    if (spacing->wasSureButWrong)
        return Urgency::SureButWrong;
    return refreshIsDue || spacing->isDue(today) ? Urgency::Due : Urgency::NotDue;
}

JointState drawnState(numbers::Dice& dice)
{
    int thrown = dice.below(6);
    for (const Share& share : kShares)
        if ((thrown -= share.of6) < 0)
            return share.state;
    return JointState::Locked;
}

// So that no round ends without what it always asks.
std::optional<JointState> stillToAsk(std::span<const SeatingAnswer> ofRound, int asks)
{
    std::vector<JointState> missing;
    for (const JointState state : kAlwaysAsked)
        if (std::ranges::find(ofRound, state, &SeatingAnswer::shown) == ofRound.end())
            missing.push_back(state);
    const int left = asks - static_cast<int>(ofRound.size());
    if (missing.empty() || left > static_cast<int>(missing.size()))
        return std::nullopt;
    return missing.front();
}

LookedWith drawnView(numbers::Dice& dice)
{
    LookedWith view;
    if (dice.below(kPoorViewOf) == 0)
        (dice.below(2) == 0 ? view.mirror : view.torch) = false;
    return view;
}

SeatingCall expectedOf(JointState state, bool canBeTold)
{
    if (!canBeTold)
        return SeatingCall::CannotTell;
    return state == JointState::Locked ? SeatingCall::Locked : SeatingCall::NotLocked;
}

std::set<LessonRoundId> roundsOf(PersonId person, RoundKind kind, std::span<const LessonRound> rounds)
{
    std::set<LessonRoundId> own;
    for (const LessonRound& round : rounds)
        if (round.person == person && round.kind == kind)
            own.insert(round.id);
    return own;
}

} // namespace

std::optional<Gap> drawnGap(const PracticeJoint& joint, JointState state, numbers::Dice& dice)
{
    if (state == JointState::NotSecured)
        return std::nullopt;
    const std::vector<Gap>& own = state == JointState::PartSeated ? joint.partSeated : joint.locked;
    if (own.empty())
        return std::nullopt;
    return own[static_cast<std::size_t>(dice.below(static_cast<int>(own.size())))];
}

SeatingTask nextTask(std::span<const PracticeJoint> joints, std::span<const SeatingAnswer> answers,
                     const LessonRound& round, bool refreshIsDue, Day today, const TellsState& tells)
{
    const std::span<const SeatingAnswer> ofRound{std::ranges::find(answers, round.id, &SeatingAnswer::round),
                                                 answers.end()};
    numbers::Dice dice = roundDice(round, ofRound.size());
    const std::map<Item, Spacing> known = spacings(answers);
    const auto urgency = [&](CouplingId coupling, JointState state) {
        const auto found = known.find({coupling, state});
        return urgencyOf(found == known.end() ? nullptr : &found->second, refreshIsDue, today);
    };

    std::optional<JointState> state = stillToAsk(ofRound, round.asks);
    std::vector<const PracticeJoint*> wanted;
    if (!state) // the last thing of which somebody was wrongly sure
        for (const SeatingAnswer& answer : answers | std::views::reverse) {
            const auto joint = std::ranges::find(joints, answer.coupling, &PracticeJoint::coupling);
            if (joint == joints.end() || urgency(answer.coupling, answer.shown) != Urgency::SureButWrong)
                continue;
            wanted = {&*joint};
            state = answer.shown;
            break;
        }
    if (!state)
        state = drawnState(dice);
    if (wanted.empty()) {
        const auto most = std::ranges::min(
            joints, {}, [&](const PracticeJoint& joint) { return urgency(joint.coupling, *state); });
        const Urgency first = urgency(most.coupling, *state);
        for (const PracticeJoint& joint : joints)
            if (urgency(joint.coupling, *state) == first)
                wanted.push_back(&joint);
    }
    const PracticeJoint& joint =
        *wanted[static_cast<std::size_t>(dice.below(static_cast<int>(wanted.size())))];
    SeatingTask task{joint.coupling, *state, drawnGap(joint, *state, dice), drawnView(dice), {}};
    task.expected = expectedOf(*state, tells(task.coupling, task.state, task.view));
    return task;
}

std::vector<SeatingAnswer> answersOf(PersonId person, std::span<const LessonRound> rounds,
                                     std::span<const SeatingAnswer> answers)
{
    const std::set<LessonRoundId> own = roundsOf(person, RoundKind::Seating, rounds);
    std::vector<SeatingAnswer> all;
    std::ranges::copy_if(answers, std::back_inserter(all),
                         [&](const SeatingAnswer& answer) { return own.contains(answer.round); });
    return all;
}

std::map<CouplingId, LastRound> lastRoundsOf(PersonId person, std::span<const LessonRound> rounds,
                                             std::span<const SeatingAnswer> answers)
{
    std::map<CouplingId, LastRound> last;
    for (const LessonRound& round : rounds) {
        if (round.person != person || round.kind != RoundKind::Seating)
            continue;
        std::map<CouplingId, LastRound> ofRound;
        int asked = 0;
        for (const SeatingAnswer& answer : answers) {
            if (answer.round != round.id)
                continue;
            ++asked;
            LastRound& told = ofRound[answer.coupling];
            ++told.asked;
            told.right += isRight(answer);
            told.partSeatedAsked += answer.shown == JointState::PartSeated;
            told.missedPartSeated += isMissed(answer, JointState::PartSeated);
            told.missedNotSecured += isMissed(answer, JointState::NotSecured);
            told.missedEmpty += isMissed(answer, JointState::NotConnected);
            told.sureButWrong += answer.sure && !isRight(answer);
        }
        if (asked >= round.asks)
            for (const auto& [coupling, told] : ofRound)
                last[coupling] = told;
    }
    return last;
}

const LessonRound* lastRoundOf(PersonId person, RoundKind kind, std::span<const LessonRound> rounds)
{
    for (const LessonRound& round : rounds | std::views::reverse)
        if (round.person == person && round.kind == kind)
            return &round;
    return nullptr;
}

} // namespace rig
