#pragma once

#include "core/review/airframe_facts.h"

#include <cstdint>
#include <map>
#include <optional>
#include <span>
#include <vector>

namespace rig {

// The riggings of one airframe, counted on from those before the file began, in the order they began. An
// abandoned record is no rigging. A table brought in from elsewhere counts one rigging for each day it has
// rigging readings of.
class RiggingNumbers
{
public:
    explicit RiggingNumbers(const AirframeFacts& facts);

    // Empty for a reading outside every record, or of an abandoned one.
    std::optional<int> of(const Reading& reading) const;

    // The number of the last rigging up to the end of a day.
    int lastBy(Day day) const;
    // Riggings that began on these days, both included.
    int within(Day from, Day to) const;
    // The day of the first rigging in the file; empty without any.
    std::optional<Day> firstDay() const;
    // The day of the first of the last so many up to the end of a day; empty where there are not more than
    // those.
    std::optional<Day> firstDayOfLast(int count, Day upTo) const;

    // Places between the numbers, for whatever stands outside the records: several things between riggings 12
    // and 13 share that space evenly, in the order of their times. Before the first rigging it is the space
    // behind the last uncounted number. `times` rise; see wallSeconds().
    std::vector<double> between(std::span<const std::int64_t> times) const;

private:
    using Key = std::pair<RecordId, Day>;

    int m_before = 0;
    std::vector<std::int64_t> m_begins; // of rigging m_before + 1 onwards, rising
    std::map<Key, int> m_numbers;
};

// Seconds as the clock on the wall showed them, so that days and moments can be put in one order. A day
// stands at its first second: what happened on it comes after.
std::int64_t wallSeconds(const Moment& moment);
std::int64_t wallSeconds(Day day);

} // namespace rig
