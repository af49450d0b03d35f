#include "core/demo/sayings.h"
#include "core/demo/story.h"

namespace rig::demo {

namespace {

void at(Story& story, Day day, std::function<void(Teller&)> tell)
{
    story.push_back({day, 8, std::move(tell)});
}

// Monthly in season.
void addGaugeChecks(Story& story)
{
    const Day aside = dayOf(2025, 7, 20);
    for (int year = 2024; year <= 2026; ++year)
        for (unsigned month = 3; month <= 10; ++month) {
            const Day day = dayOf(year, month, 5);
            at(story, day, [day, aside](Teller& teller) {
                for (const Tool tool : {Tool::SetA, Tool::SetB, Tool::SetC, Tool::Pins})
                    if (tool != Tool::SetB || day < aside)
                        teller.checkGauge(tool, says::kSizesAsMarked);
            });
        }
    story.push_back({aside, 18, [](Teller& teller) {
                         teller.putAside(Tool::SetB, says::kTipsWorn, dayOf(2025, 7, 11),
                                         says::kSetBPutAside);
                     }});
}

void addSeasonStarts(Story& story)
{
    const Day days[] = {dayOf(2024, 3, 9), dayOf(2025, 3, 15), dayOf(2026, 3, 14)};
    for (const Day day : days)
        at(story, day, [](Teller& teller) {
            for (int airframe = 0; airframe < 3; ++airframe) {
                teller.happen(airframe, EventKind::Cleaned, says::kSeasonCleaned);
                teller.happen(airframe, EventKind::Greased, says::kSeasonGreased);
            }
        });
}

void addAnnuals(Story& story)
{
    struct Annual
    {
        int airframe;
        Day day;
        Day next;
    };
    const Annual annuals[] = {
        {0, dayOf(2024, 2, 23), dayOf(2025, 2, 20)}, {0, dayOf(2025, 2, 20), dayOf(2026, 2, 20)},
        {0, dayOf(2026, 2, 20), dayOf(2027, 2, 20)}, {1, dayOf(2024, 3, 2), dayOf(2025, 3, 1)},
        {1, dayOf(2025, 3, 1), dayOf(2026, 3, 1)},   {1, dayOf(2026, 3, 1), dayOf(2027, 3, 1)},
        {2, dayOf(2024, 3, 8), dayOf(2025, 3, 8)},   {2, dayOf(2025, 3, 8), dayOf(2026, 3, 8)},
        {2, dayOf(2026, 3, 7), dayOf(2027, 3, 7)},
    };
    for (const Annual& annual : annuals)
        at(story, annual.day, [annual](Teller& teller) { teller.annualDone(annual.airframe, annual.next); });
}

// Hardened grease doubles what the elevator of QX-17 scatters; cleaning takes it back. Drawn as a wide even
// spread rather than a wide bell, so that only the story's own readings fall outside.
void addElevator(Story& story)
{
    const auto scatters = [](Teller& teller, double scatter, double widest) {
        Joint& elevator = teller.joint(0, says::kElevator);
        elevator.scatter = scatter;
        elevator.widest = widest;
    };
    const auto grows = [scatters](Teller& teller) { scatters(teller, 0.110, 0.65); };
    const auto isCleaned = [scatters](Teller& teller) {
        scatters(teller, 0.020, 2.2);
        teller.happen(0, EventKind::Cleaned, says::kElevatorCleaned, &teller.joint(0, says::kElevator));
    };
    at(story, dayOf(2025, 9, 11), grows);
    at(story, dayOf(2025, 9, 27), [](Teller& teller) { teller.happen(0, EventKind::Note, says::kWetWeek); });
    at(story, dayOf(2026, 2, 20), isCleaned);
}

} // namespace

void addWorkshop(Story& story)
{
    addGaugeChecks(story);
    addSeasonStarts(story);
    addAnnuals(story);
    addElevator(story);
    at(story, dayOf(2026, 2, 20), [](Teller& teller) {
        teller.happen(0, EventKind::PartChanged, says::kFlapGapHadGrown, &teller.joint(0, says::kLeftFlap));
    });
    story.push_back({dayOf(2024, 7, 27), 17,
                     [](Teller& teller) { teller.happen(0, EventKind::Note, says::kHeldTilted); }});
}

} // namespace rig::demo
