#pragma once

#include "core/numbers/interval.h"

#include <optional>
#include <span>
#include <vector>

namespace rig::numbers {

inline constexpr int kReadingsForChangePoint = 8;

struct ChangePointSettings
{
    int minSegment = 3;               // fewest readings on either side, at least 2
    std::optional<double> sigmaFloor; // empty: resolutionFloor of the readings, mm
};

// A second opinion by ranks, on the middles of the closed readings (Pettitt 1979, Applied Statistics 28, from
// memory). Very conservative below 20 readings.
struct RankChange
{
    double k = 0; // largest |U|
    int splitAfter = 0;
    double p = 1; // 2 exp(-6 K^2 / (n^3 + n^2)), at most 1
};

// One step of the mean in a row of readings, likelihood ratio over all places it may have (docs/method.md E).
// A split "after k" lies behind the k-th of the readings given, counted from 1.
struct ChangePoint
{
    int readings = 0; // those open both ways are not counted
    int splitAfter = 0;
    double likelihoodRatio = 0; // twice the gain in ln likelihood of two means over one, same sigma
    double equivalentT = 0;     // the two-sample t that has this likelihood ratio on exact readings
    double pBonferroni = 1;
    double pGombayHorvath = 1;
    double p = 1; // the smaller
    // The likeliest places, rising, that together hold 95 % of the likelihood.
    std::vector<int> likelySplits;
    std::optional<RankChange> ranks; // empty without two closed readings that differ
};

// The readings in the order they were taken. Where all readings on one side of a split are open the same way,
// the likelihood only has a supremum, which is taken. Empty when the readings have no status Ok
// (interval_set.h), fewer than kReadingsForChangePoint or than two segments are left, the settings are wrong,
// or a fit has no maximum (interval_regression.h), as with a floor of 0 and no scatter.
std::optional<ChangePoint> changePointOf(std::span<const Interval> readings,
                                         const ChangePointSettings& settings = {});

} // namespace rig::numbers
