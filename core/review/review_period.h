#pragma once

#include "core/clock.h"
#include "core/review/airframe_facts.h"

#include <optional>
#include <span>
#include <vector>

namespace rig {

// How somebody came to choose these days.
enum class PeriodKind { ByAnnual, BySeason, ByFitting, LastRiggings, Days };

// What is looked back on, both days included, and the annual that it is looked back on for.
struct ReviewPeriod
{
    Day from{};
    Day to{};
    std::optional<Day> annual; // the one that ended it, or the next one due; empty when none is known
    bool sinceAnnual = false;  // begins with an annual; otherwise with the file
    bool isCurrent = false;    // ends today
    PeriodKind kind = PeriodKind::ByAnnual;

    // An annual that is due but was not done is no day to look forward to.
    bool isAnnualToCome() const { return annual && *annual >= to; }
    bool contains(Day day) const { return from <= day && day <= to; }
    bool operator==(const ReviewPeriod&) const = default;
};

// The current one first, then back from annual to annual, and last the whole file when that is not the same.
// Days after today are not looked at. Never empty.
std::vector<ReviewPeriod> reviewPeriods(const AirframeFacts& facts, Day today);

// A period that can be chosen, with what it is called by.
struct PeriodOffer
{
    ReviewPeriod period;
    int number = 0; // the season's year, the fitting's number from 1, or how many riggings
    std::optional<CouplingId> coupling = {}; // of a fitting
    std::optional<FittingId> fitting = {};

    // It stays the same choice while days pass and riggings are added.
    bool isSameChoiceAs(const PeriodOffer& other) const;
};

// Those of reviewPeriods() first; then the years somebody rigged in, the fittings of each coupling in use,
// and the last riggings, newest first. Never empty.
std::vector<PeriodOffer> offeredPeriods(const AirframeFacts& facts, Day today);

// So many riggings at most can be asked for.
inline constexpr int kMostLastRiggings = 9999;

// Any days, the earlier one first, and any number of last riggings can be chosen beside those that are
// offered: the dates and the annual that belong to them are worked out by chosenAmong().
PeriodOffer anyDays(Day from, Day to);
PeriodOffer lastRiggings(int count);

// What was chosen, as it is offered now, today being the end of the first offer. Without a choice, or when it
// is no longer there, the first in which anything was read or asked; the first of all where nothing ever was.
PeriodOffer chosenAmong(const std::vector<PeriodOffer>& offers, const std::optional<PeriodOffer>& chosen,
                        const AirframeFacts& facts);

} // namespace rig
