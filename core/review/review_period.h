#pragma once

#include "core/clock.h"
#include "core/review/airframe_facts.h"

#include <optional>
#include <vector>

namespace rig {

// What is looked back on, both days included, and the annual that it is looked back on for.
struct ReviewPeriod
{
    Day from{};
    Day to{};
    std::optional<Day> annual; // the one that ended it, or the next one due; empty when none is known
    bool sinceAnnual = false;  // begins with an annual; otherwise with the file
    bool isCurrent = false;    // ends today

    // An annual that is due but was not done is no day to look forward to.
    bool isAnnualToCome() const { return annual && *annual >= to; }
    bool contains(Day day) const { return from <= day && day <= to; }
    bool operator==(const ReviewPeriod&) const = default;
};

// The current one first, then back from annual to annual, and last the whole file when that is not the same.
// Days after today are not looked at. Never empty.
std::vector<ReviewPeriod> reviewPeriods(const AirframeFacts& facts, Day today);

} // namespace rig
