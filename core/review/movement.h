#pragma once

#include "core/numbers/drift.h"
#include "core/numbers/movement.h"
#include "core/numbers/scatter_change.h"
#include "core/review/review_period.h"
#include "core/review/season_review.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace rig {

// The early sign: the chart of the scores is beyond its limit (docs/method.md C). It says neither what moved
// nor how far, and is told only where nobody can tell more yet.
struct DriftFlag
{
    std::size_t signal = 0; // index of the reading that raised it
    bool isUp = true;       // the gap grows
    bool isRaised = true;   // false: it was raised within the period and has fallen since
};

enum class ChangeKind { Step, Drift, StepOrDrift }; // the last: not yet to be told apart

// One change of a path, as it is told.
struct PathChangeTold
{
    ChangeKind kind = ChangeKind::Step;
    double chance = 0; // that the path changed here at all
    // Of a step the first rigging at the new level, of a drift the last at the old one: the likeliest, and
    // the ends of the smallest set of riggings that holds 95 %.
    double at = 0;
    double atLower = 0;
    double atUpper = 0;
    Day day{};
    Day dayLower{};
    Day dayUpper{};
    std::optional<numbers::EstimateWithInterval> step; // mm; empty for a drift
    std::optional<numbers::EstimateWithInterval> rate; // mm per numbers::kRateUnit riggings; empty for a step
    std::optional<double> endedAt;                     // of a drift that a second change ended: the rigging
    Day endedOn{};
    bool isOfPeriod = false; // went on in it; else it is history

    bool isUp() const { return (step ? *step : *rate).estimate > 0; }
};

// The scatter of the last readings about the path beside that of all before them.
struct ScatterNow
{
    int readings = 0;
    double now = 0;         // mm
    double before = 0;      // mm
    double chanceGrown = 0; //
    bool hasGrown = false;
    bool hasShrunk = false;
};

// What is to be expected at the annual, over all that the readings may mean.
struct AnnualForecast
{
    double riggings = 0; // still to come by then, at the pace of the last year; at least 1
    double rigging = 0;  // the number that the annual then has
    Day day{};
    double chanceOutside = 0;     // that a reading then lies outside the outer band
    double chanceMeanOutside = 0; // that the path itself does
};

// A reading of the period that lies outside its path by itself.
struct SingleTold
{
    std::size_t index = 0;
    double away = 0; // from the path, offsets taken off; mm
    numbers::ExplainedBy explainedBy = numbers::ExplainedBy::Nothing;
};

// How the readings of one fitting moved. Indexes count through `readings`, which leaves out those in doubt;
// without a band there is nothing but them.
struct FittingMovement
{
    std::vector<LaterReading> readings; // oldest first, one a rigging
    std::size_t periodFrom = 0;         // index of the period's first; one past the last without any
    numbers::ChartLimits limits;
    std::optional<numbers::Chart> chart;   // of the scores less what is not the coupling's own
    std::optional<DriftFlag> flag;         // from it
    std::optional<numbers::Movement> path; // empty with too few riggings to see a change
    std::vector<PathChangeTold> changes;   // at most two, oldest first; empty: none is told
    std::optional<AnnualForecast> forecast;
    std::optional<ScatterNow> scatter;
    std::optional<double> excursion; // mm: the farthest the path was from the band's middle in the period
    std::vector<SingleTold> singles; // the farthest first

    // The early sign where it stands at the end of the period; null where it does not.
    const DriftFlag* raised() const { return flag && flag->isRaised ? &*flag : nullptr; }
    // The latest change that went on in the period, or else the one before it that the gap has not come back
    // from; null where there is none.
    const PathChangeTold* told() const;
};

// `all` are the coupling's readings up to the end of the period. `riggingsToCome` until the period's annual;
// where their pace is not known there is no forecast.
// Empty when the coupling has no fitting.
std::optional<FittingMovement> movementOf(const CouplingReadings& all, const SeasonReview& season,
                                          const ReviewPeriod& period, std::optional<double> riggingsToCome);

// What carries a pace: so many days since the first rigging of the file, and so many riggings in the year
// before.
inline constexpr int kDaysForPace = 60;
inline constexpr int kRiggingsForPace = 4;

// Riggings still to come until a day at the pace of the year before `today`; of what there is of it when the
// file is younger. None of a day that is past; empty while the pace is not known.
std::optional<double> riggingsToCome(const RiggingNumbers& numbers, Day today, Day until);

} // namespace rig
