#pragma once

#include "core/clock.h"

#include <array>
#include <optional>
#include <span>

namespace rig {

// When something is asked again: the same day, after a week, a month, and three months. What was known and
// sure, when it was due, moves one step on; what was not known goes back to the first. The steps are those of
// a box of cards with compartments (S. Leitner 1972, from memory); that practice holds longer when it is
// spread so is well shown (N. J. Cepeda et al. 2006, Psychological Bulletin 132, from memory).
inline constexpr std::array kSpacingDays{0, 7, 30, 91};

// One time that it was asked.
struct Recalled
{
    Day day;
    bool isRight = false;
    bool isSure = false;
};

struct Spacing
{
    int step = 0;                 // of kSpacingDays
    std::optional<Day> due;       // empty: never asked
    bool wasSureButWrong = false; // the last time; it comes before everything else

    bool isDue(Day today) const { return !due || *due <= today; }
};

// From every time one thing was asked, oldest first.
Spacing spacingOf(std::span<const Recalled> times);

// Somebody who has not rigged for so long is asked everything again, whatever its step.
bool isRefreshDue(std::optional<Day> lastRigging, Day today, int monthsWithoutRigging);

// That many months later; the last day of the month where it has no such day.
Day monthsAfter(Day day, int months);

} // namespace rig
