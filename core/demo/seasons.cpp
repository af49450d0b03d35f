#include "core/demo/calendar.h"
#include "core/demo/sayings.h"
#include "core/demo/story.h"

#include <algorithm>
#include <array>

namespace rig::demo {

namespace {

struct Season
{
    int airframe;
    Day from;
    Day to;
    int riggings;
    std::set<Day> wanted;
    std::set<Day> unwanted;
};

struct OnDay
{
    int airframe;
    Day day;
    Surprise surprise;
};

std::set<Day> between(Day from, Day to)
{
    std::set<Day> days;
    for (Day day = from; day <= to; day += std::chrono::days{1})
        days.insert(day);
    return days;
}

std::vector<Season> seasons()
{
    return {
        {0,
         dayOf(2024, 4, 6),
         dayOf(2024, 10, 27),
         52,
         {dayOf(2024, 5, 11), dayOf(2024, 7, 20), dayOf(2024, 9, 14), dayOf(2024, 9, 28)},
         {}},
        {0,
         dayOf(2025, 4, 5),
         dayOf(2025, 10, 26),
         54,
         {dayOf(2025, 7, 11), dayOf(2025, 7, 13), dayOf(2025, 7, 19), dayOf(2025, 10, 11)},
         {}},
        {0, dayOf(2026, 4, 4), dayOf(2026, 10, 18), 48, {dayOf(2026, 6, 13)}, {}},
        {1,
         dayOf(2024, 4, 7),
         dayOf(2024, 10, 20),
         26,
         {dayOf(2024, 6, 2)},
         between(dayOf(2024, 6, 3), dayOf(2024, 6, 14))},
        {1, dayOf(2025, 4, 6), dayOf(2025, 10, 19), 28, {dayOf(2025, 4, 20)}, {}},
        {1, dayOf(2026, 4, 5), dayOf(2026, 5, 10), 6, {}, {}},
        {2, dayOf(2024, 4, 13), dayOf(2024, 10, 13), 24, {dayOf(2024, 4, 13), dayOf(2024, 6, 15)}, {}},
        {2, dayOf(2025, 4, 12), dayOf(2025, 10, 12), 26, {dayOf(2025, 6, 7)}, {}},
        {2,
         dayOf(2026, 4, 11),
         dayOf(2026, 10, 11),
         24,
         {dayOf(2026, 7, 4)},
         between(dayOf(2026, 8, 15), dayOf(2026, 8, 16))},
    };
}

const std::vector<OnDay>& surprises()
{
    static const std::vector<OnDay> all{
        {0,
         dayOf(2024, 5, 11),
         {says::kLeftAirbrake, Tool::SetA, 0.97, false, 0.82, says::kGritNote, Who::Quill, says::kGrit,
          says::kCleanedThen}},
        {1,
         dayOf(2024, 6, 2),
         {says::kRightAirbrake, Tool::SetC, 0.92, false, std::nullopt, says::kStoppedAtAirbrake}},
        {2,
         dayOf(2024, 6, 15),
         {says::kLeftAileron, Tool::SetC, 1.92, true, 0.88, says::kSleeveShortNote, Who::Quill,
          says::kSleeveShort, says::kCleanedThenTold}},
        {0,
         dayOf(2024, 9, 28),
         {says::kElevator, Tool::SetA, 0.48, false, 0.37, says::kHardGreaseNote, Who::Quill,
          says::kHardGrease, says::kWipedThen}},
        {1,
         dayOf(2025, 4, 20),
         {says::kRightAileron, Tool::SetA, 0.12, true, 0.58, says::kControlsShowedNothingNote, Who::Quill,
          says::kControlsShowedNothing, says::kCleanedThenTold}},
        {2,
         dayOf(2025, 6, 7),
         {says::kElevator, Tool::SetC, 1.34, true, 0.41, says::kInAHurryNote, Who::Quill, says::kInAHurry,
          says::kCleanedThenTold}},
        {0,
         dayOf(2025, 10, 11),
         {says::kElevator, Tool::SetA, 0.23, false, 0.36, says::kWaterNote, Who::Quill, says::kWater,
          says::kDriedThen}},
        {0,
         dayOf(2026, 6, 13),
         {says::kRightFlap, Tool::Pins, 1.12, false, 0.98, says::kPinAtAnAngleNote, Who::Quill,
          says::kPinAtAnAngle, says::kNothingAtTheJoint}},
        {2,
         dayOf(2026, 7, 4),
         {says::kLeftWaterDump, Tool::Pins, 1.68, false, 1.40, says::kSandNote, Who::Quill, says::kSand,
          says::kCleanedThen}},
    };
    return all;
}

constexpr std::array kMembers{Who::Oren, Who::Vale, Who::Sand, Who::Iver};

void chooseTwo(RiggingPlan& plan)
{
    const int first = plan.number % 4;
    const int second = (first + 1 + (plan.number / 4) % 3) % 4;
    plan.first = kMembers[static_cast<std::size_t>(first)];
    plan.second = kMembers[static_cast<std::size_t>(second)];
}

bool isWornSetDay(Day day)
{
    return day == dayOf(2025, 7, 11) || day == dayOf(2025, 7, 13) || day == dayOf(2025, 7, 19);
}

// The days of QX-17 that went otherwise.
void turnOfQx17(RiggingPlan& plan)
{
    if (isWornSetDay(plan.day)) {
        plan.onlyTool = Tool::SetB; // the pins were lent out, so the flaps were read with stacked leaves
        plan.shift = 0.033;
        plan.secondReads = 0;
    }
    if (plan.day == dayOf(2024, 7, 20)) {
        plan.first = Who::Vale;
        plan.second = Who::Iver;
        plan.onlyTool = Tool::SetC;
        plan.secondReads = 5;
        plan.secondShift = 0.019; // with his usual offset 0.04 above T. Vale
        plan.note = says::kIverAboveVale;
    }
    if (plan.day == dayOf(2024, 9, 14)) {
        plan.interruptedAt = says::kLeftFlap;
        plan.note = says::kCalledAway;
    }
}

RiggingPlan planFor(int airframe, Day day, int number)
{
    RiggingPlan plan;
    plan.airframe = airframe;
    plan.day = day;
    plan.number = number;
    plan.hour = 9 + airframe;
    plan.secondReads = number % 5 == 0 ? 2 : 0;
    chooseTwo(plan);
    if (airframe == 0)
        turnOfQx17(plan);
    if (airframe == 2 && day == dayOf(2024, 4, 13)) {
        plan.first = Who::Iver;
        plan.second = Who::Oren;
        plan.note = says::kFirstOfIver;
    }
    plan.controlsFirst = airframe == 1 && day == dayOf(2025, 4, 20);
    for (const OnDay& one : surprises())
        if (one.airframe == airframe && one.day == day)
            plan.surprise = one.surprise;
    return plan;
}

} // namespace

void addRiggings(Story& story)
{
    std::array<int, 3> number{};
    for (std::size_t i = 0; i < number.size(); ++i)
        number[i] = airframePlans()[i].riggingsBefore;
    for (const Season& season : seasons())
        for (const Day day :
             flyingDays(season.from, season.to, season.riggings, season.wanted, season.unwanted)) {
            const RiggingPlan plan =
                planFor(season.airframe, day, ++number[static_cast<std::size_t>(season.airframe)]);
            story.push_back({day, plan.hour, [plan](Teller& teller) { rigWhole(teller, plan); }});
        }
}

} // namespace rig::demo
