#include "core/demo/sayings.h"
#include "core/demo/story.h"

namespace rig::demo {

namespace {

constexpr int kMinutesPerCycle = 5;

// Which of the two works: each takes one half, on both leaf sets where there are two.
struct Cycle
{
    Who who;
    Tool tool;
};

Cycle cycleOf(const Joint& joint, int index, int count)
{
    const Who who = index % 2 == 0 ? Who::Oren : Who::Vale;
    const bool isOnSecondSet = joint.plan->baselineTool == Tool::SetA && index >= count / 2;
    return {who, isOnSecondSet ? Tool::SetB : joint.plan->baselineTool};
}

// Disconnect, clean, connect, confirm locked by other means, read.
void takeBaseline(Teller& teller, Joint& joint, int count)
{
    const std::vector<double> throws = teller.dice().evenNormals(count);
    for (int i = 0; i < count; ++i) {
        const Cycle cycle = cycleOf(joint, i, count);
        teller.clock().passSeconds(kMinutesPerCycle * 60);
        teller.read(joint, {.who = cycle.who,
                            .tool = cycle.tool,
                            .gap = joint.mean + joint.scatter * throws[static_cast<std::size_t>(i)],
                            .record = std::nullopt,
                            .purpose = Purpose::Baseline,
                            .corrects = std::nullopt,
                            .note = {}});
    }
}

// Not on a flying day, the surface held, the cockpit tagged, everything inspected afterwards.
void demonstrate(Teller& teller, Joint& joint, const std::vector<double>& gaps, Tool tool)
{
    for (const double gap : gaps) {
        teller.clock().passSeconds(kMinutesPerCycle * 60);
        teller.read(joint, {.who = Who::Quill,
                            .tool = tool,
                            .gap = gap,
                            .record = std::nullopt,
                            .purpose = Purpose::Demonstration,
                            .state = SeatState::PartSeated,
                            .corrects = std::nullopt,
                            .note = {},
                            .second = Who::Oren});
    }
}

void excludeTilted(Teller& teller, Joint& joint)
{
    teller.clock().passSeconds(kMinutesPerCycle * 60);
    teller.read(joint, {.who = Who::Vale,
                        .tool = joint.plan->baselineTool,
                        .gap = joint.mean + 0.13,
                        .record = std::nullopt,
                        .purpose = Purpose::Baseline,
                        .corrects = std::nullopt,
                        .note = {}});
    teller.exclude(joint, Who::Vale, says::kLeafTilted);
}

void firstBaselines(Teller& teller, int airframe)
{
    for (Joint* joint : teller.joints(airframe)) {
        teller.fit(*joint, FittingKind::First, {}, joint->plan->mean, joint->plan->scatter);
        if (!hasGap(joint->coupling))
            continue;
        takeBaseline(teller, *joint, joint->plan->baselineReadings);
        if (airframe == 1 && joint->plan->name == says::kLeftAirbrake)
            excludeTilted(teller, *joint);
        if (joint->plan->baselineReadings >= kReadingsToFreeze)
            teller.freeze(*joint, Who::Oren, Who::Quill);
    }
}

void firstDemonstrations(Teller& teller, int airframe)
{
    for (Joint* joint : teller.joints(airframe)) {
        const bool isNarrow = !joint->plan->partSeated.empty() && joint->plan->partSeated.front() < 0.2;
        demonstrate(teller, *joint, joint->plan->partSeated, isNarrow ? Tool::SetC : Tool::Taper);
    }
}

void refitAirbrake(Teller& teller)
{
    Joint& joint = teller.joint(1, says::kRightAirbrake);
    teller.resolve(joint, Who::Quill, says::kSleeveHadMoved, says::kNewFittingFromToday);
    teller.happen(1, EventKind::Refitted, says::kReadjustedByQuill, &joint);
    teller.fit(joint, FittingKind::Refitted, says::kSleeveReadjusted, 0.76, 0.024);
    takeBaseline(teller, joint, 10);
    teller.freeze(joint, Who::Oren, Who::Quill);
}

void refitFlap(Teller& teller)
{
    Joint& joint = teller.joint(0, says::kLeftFlap);
    teller.feelPlay(joint, Who::Quill, {PlayFelt::Felt, Gap::micrometres(150)}, {PlayFelt::None},
                    says::kFlapPlay);
    teller.fit(joint, FittingKind::PartChanged, says::kBallReplaced, 1.17, 0.018);
    takeBaseline(teller, joint, 12);
    teller.freeze(joint, Who::Oren, Who::Quill);
}

void showOverlap(Teller& teller)
{
    Joint& joint = teller.joint(2, says::kRightAirbrake);
    demonstrate(teller, joint, {0.62, 0.66, 0.69, 0.71, 0.75, 0.80}, Tool::SetC);
    teller.happen(2, EventKind::Note, says::kOverlapShown, &joint);
}

} // namespace

void addBaselineDays(Story& story)
{
    const Day days[] = {dayOf(2024, 3, 16), dayOf(2024, 3, 17), dayOf(2024, 3, 23)};
    for (int airframe = 0; airframe < 3; ++airframe) {
        const Day day = days[airframe];
        story.push_back({day, 9, [airframe](Teller& teller) { firstBaselines(teller, airframe); }});
        story.push_back({day + std::chrono::days{1}, 20,
                         [airframe](Teller& teller) { firstDemonstrations(teller, airframe); }});
    }
    story.push_back({dayOf(2024, 6, 9), 14, refitAirbrake});
    story.push_back({dayOf(2025, 8, 23), 10, showOverlap});
    story.push_back({dayOf(2026, 2, 20), 15, refitFlap});
}

} // namespace rig::demo
