#include "core/demo/calendar.h"
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
         {"Left airbrake", Tool::SetA, 0.97, false, 0.82,
          "Left airbrake outside: stopped, left as it was, A. Quill called. Grit under the sleeve stop. Then "
          "disconnected, cleaned, connected, looked at, pulled, read: 0.80 to 0.85.",
          Who::Quill, "Grit under the sleeve stop.",
          "Left as it was until found. Then disconnected, cleaned, connected; to be looked at, pulled and "
          "read."}},
        {1,
         dayOf(2024, 6, 2),
         {"Right airbrake", Tool::SetC, 0.92, false, std::nullopt,
          "Stopped at the right airbrake and left it as it is. A. Quill called. No flying with it."}},
        {2,
         dayOf(2024, 6, 15),
         {"Left aileron", Tool::SetC, 1.92, true, 0.88,
          "Left aileron outside: stopped, left as it was, A. Quill called. Part-seated: the sleeve had not "
          "come to its stop. Then disconnected, cleaned, connected, looked at, pulled, read. L. Marsh told.",
          Who::Quill, "Part-seated: the sleeve had not come to its stop.",
          "Left as it was until found. Then disconnected, cleaned, connected; to be looked at, pulled and "
          "read. L. Marsh told."}},
        {0,
         dayOf(2024, 9, 28),
         {"Elevator", Tool::SetA, 0.48, false, 0.37,
          "Elevator outside: stopped, left as it was, A. Quill called. The lock moved slowly, its grease was "
          "hard. Then disconnected, wiped, connected, looked at, pulled, read.",
          Who::Quill, "Lock moves slowly: the grease is hard, and leaves the plunger short.",
          "Left as it was until found. Then disconnected, wiped, connected; to be looked at, pulled and "
          "read. To be cleaned at the annual."}},
        {1,
         dayOf(2025, 4, 20),
         {"Right aileron", Tool::SetA, 0.12, true, 0.58,
          "Right aileron outside, after a control check that had shown nothing: stopped, left as it was, "
          "A. Quill called. Part-seated. Then disconnected, cleaned, connected, looked at, pulled, read, "
          "and all controls tried again. L. Marsh told.",
          Who::Quill, "Part-seated. The control check before it had shown nothing.",
          "Left as it was until found. Then disconnected, cleaned, connected; to be looked at, pulled and "
          "read. L. Marsh told."}},
        {2,
         dayOf(2025, 6, 7),
         {"Elevator", Tool::SetC, 1.34, true, 0.41,
          "Elevator outside: stopped, left as it was, A. Quill called. Part-seated: connected in a hurry "
          "before rain. Then disconnected, cleaned, connected, looked at, pulled, read. L. Marsh told.",
          Who::Quill, "Part-seated: connected in a hurry before rain.",
          "Left as it was until found. Then disconnected, cleaned, connected; to be looked at, pulled and "
          "read. L. Marsh told."}},
        {0,
         dayOf(2025, 10, 11),
         {"Elevator", Tool::SetA, 0.23, false, 0.36,
          "Elevator outside: stopped, left as it was, A. Quill called. Water in the grease. Then "
          "disconnected, dried, connected, looked at, pulled, read.",
          Who::Quill, "Water in the grease.",
          "Left as it was until found. Then disconnected, dried, connected; to be looked at, pulled and "
          "read. To be cleaned at the annual."}},
        {0,
         dayOf(2026, 6, 13),
         {"Right flap", Tool::Pins, 1.12, false, 0.98,
          "Right flap outside: stopped, left as it was, A. Quill called. The pin had been pushed in at an "
          "angle. Then looked at, pulled, read once with the pin square: 0.95 to 1.00.",
          Who::Quill,
          "The pin had been pushed in at an angle; the joint itself looked at and pulled by both.",
          "Nothing at the joint. To be looked at, pulled and read once, the pin square."}},
        {2,
         dayOf(2026, 7, 4),
         {"Left water dump", Tool::Pins, 1.68, false, 1.40,
          "Left water dump outside: stopped, left as it was, A. Quill called. Sleeve not at its stop, sand "
          "on "
          "the rod. Then disconnected, cleaned, connected, looked at, pulled, read: 1.40 to 1.45.",
          Who::Quill, "Sleeve not at its stop: sand on the rod.",
          "Left as it was until found. Then disconnected, cleaned, connected; to be looked at, pulled and "
          "read."}},
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
        plan.note =
            "J. Iver reads 0.04 above T. Vale on five couplings. Both stand; to be measured together.";
    }
    if (plan.day == dayOf(2024, 9, 14)) {
        plan.interruptedAt = "Left flap";
        plan.note = "Called away at the left flap; begun there again from the look.";
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
        plan.note = "J. Iver's first rigging of this airframe, beside M. Oren. Not signed off on it yet.";
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
