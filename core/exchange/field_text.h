#pragma once

#include "core/airframe/coupling.h"
#include "core/clock.h"
#include "core/measure/gap.h"

#include <optional>
#include <string>

// What stands in the fields of a table, whatever the computer's own habits.
namespace rig {

// Whole micrometres as millimetres: two decimals, three when needed.
std::string millimetres(Gap gap);
std::string millimetresOrNothing(const std::optional<Gap>& gap);
std::string dayOrNothing(const std::optional<Day>& day);
std::string yesNo(bool yes);
// With a point and so many decimals; a figure that is not finite is nothing.
std::string decimal(double value, int decimals);
// In so many significant figures, for chances: 0.83, 2.1e-05.
std::string significant(double value, int figures);
// The kind's word, or what was said in words where no kind names it.
std::string circuitText(const Coupling& coupling);
// What was done, or the kind's word where the words say nothing.
std::string reasonText(const Fitting& fitting);
// The clock on the wall, 14:05:09.
std::string timeText(const Moment& moment);

} // namespace rig
