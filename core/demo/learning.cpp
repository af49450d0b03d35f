#include "core/demo/sayings.h"
#include "core/demo/story.h"

#include <algorithm>
#include <array>
#include <utility>

namespace rig::demo {

namespace {

constexpr int kQx88 = 2;

bool isOf(const RecordClose& close, PersonId one, PersonId other)
{
    return (close.first == one && close.second == other) || (close.first == other && close.second == one);
}

// The riggings of QX-88 so far that J. Iver did together with M. Oren, who knows it.
void stateSupervised(Teller& teller)
{
    const PersonId learner = teller.person(Who::Iver);
    const PersonId mentor = teller.person(Who::Oren);
    for (const RecordClose& close : teller.keep(teller.records().closings(teller.airframe(kQx88))))
        if (isOf(close, learner, mentor))
            teller.keep(teller.records().add(
                SupervisedRigging{{}, close.record, learner, mentor, {}, teller.by(Who::Oren)}));
}

void signOff(Teller& teller)
{
    SignOff one;
    one.airframe = teller.airframe(kQx88);
    one.person = teller.person(Who::Iver);
    one.signer = teller.person(Who::Oren);
    one.day = teller.clock().now().localDay();
    one.note = teller.told(says::kNamedAll);
    one.stamp = teller.by(Who::Oren);
    teller.keep(teller.records().add(one));
}

std::optional<Gap> shownGap(const Joint& joint, JointState state)
{
    if (state == JointState::NotSecured)
        return std::nullopt;
    const auto& partSeated = joint.plan->partSeated;
    const bool isPartSeated = state == JointState::PartSeated;
    if (isPartSeated && partSeated.empty())
        return std::nullopt;
    constexpr double kMicrometres = 1000;
    const double mm = isPartSeated ? partSeated.front() : joint.mean;
    return Gap::micrometres(static_cast<std::int32_t>(mm * kMicrometres + 0.5));
}

struct Asked
{
    Joint* joint;
    JointState state;
};

// Each joint part-seated, and in one other state.
std::vector<Asked> askedOf(Teller& teller)
{
    constexpr std::array kOthers{JointState::Locked, JointState::NotConnected, JointState::NotSecured};
    std::vector<Asked> asked;
    std::size_t other = 0;
    for (Joint* joint : teller.joints(kQx88)) {
        if (!isBallJoint(joint->coupling.kind) || !hasGap(joint->coupling))
            continue;
        asked.push_back({joint, kOthers[other++ % kOthers.size()]});
        asked.push_back({joint, JointState::PartSeated});
    }
    return asked;
}

// So many of the part-seated ones are called locked; the first of them by somebody who was sure.
void practise(Teller& teller, int misses)
{
    const std::vector<Asked> asked = askedOf(teller);
    LessonRound round;
    round.airframe = teller.airframe(kQx88);
    round.person = teller.person(Who::Iver);
    round.asks = static_cast<int>(asked.size());
    round.stamp = teller.by(Who::Iver);
    const LessonRoundId id = teller.keep(teller.records().add(round));
    bool isFirstMiss = true;
    for (const Asked& one : asked) {
        teller.clock().passSeconds(20);
        SeatingAnswer answer;
        answer.round = id;
        answer.coupling = one.joint->coupling.id;
        answer.shown = one.state;
        answer.gap = shownGap(*one.joint, one.state);
        answer.mirror = true;
        answer.torch = true;
        answer.expected = one.state == JointState::Locked ? SeatingCall::Locked : SeatingCall::NotLocked;
        answer.said = answer.expected;
        answer.sure = true;
        if (one.state == JointState::PartSeated && misses-- > 0) {
            answer.said = SeatingCall::Locked;
            answer.sure = std::exchange(isFirstMiss, false);
        }
        answer.stamp = teller.by(Who::Iver);
        teller.keep(teller.records().add(answer));
    }
}

} // namespace

void addLearning(Story& story)
{
    story.push_back({dayOf(2024, 4, 14), 19, [](Teller& teller) { practise(teller, 3); }});
    story.push_back({dayOf(2024, 4, 21), 19, [](Teller& teller) { practise(teller, 1); }});
    story.push_back({dayOf(2024, 5, 19), 19, [](Teller& teller) { practise(teller, 0); }});
    story.push_back({dayOf(2024, 10, 13), 19, stateSupervised});
    story.push_back({dayOf(2024, 10, 13), 20, signOff});
}

} // namespace rig::demo
