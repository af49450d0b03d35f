#pragma once

#include "core/clock.h"

#include <optional>
#include <string>
#include <string_view>

namespace rig {

// Reads a day typed as year-month-day, 2026-05-02. Anything else, and a day that no calendar has, is empty:
// 02/05 would be February to one reader and May to another.
std::optional<Day> parseDay(std::string_view text);

std::string dayText(Day day);

} // namespace rig
