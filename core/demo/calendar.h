#pragma once

#include "core/clock.h"

#include <set>
#include <vector>

namespace rig::demo {

// So many days between the two, spread evenly over the club's days (Wednesday, Friday to Sunday): all of
// `wanted`, none of `unwanted`, in order.
std::vector<Day> flyingDays(Day from, Day to, int count, const std::set<Day>& wanted,
                            const std::set<Day>& unwanted);

} // namespace rig::demo
