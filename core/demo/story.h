#pragma once

#include "core/demo/rigging.h"

#include <functional>
#include <vector>

namespace rig::demo {

// One thing that happens in the three seasons.
struct Happening
{
    Day day;
    int hour = 9;
    std::function<void(Teller&)> tell;
};
using Story = std::vector<Happening>;

void addBaselineDays(Story& story);
void addWorkshop(Story& story); // checks of gauges, cleaning, annuals, refits
void addRiggings(Story& story); // the seasons, with their surprises
void addOddDays(Story& story);  // what was no whole rigging
void addLearning(Story& story); // of J. Iver, on QX-88

} // namespace rig::demo
