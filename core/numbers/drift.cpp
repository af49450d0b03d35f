#include "core/numbers/drift.h"

#include "core/numbers/grading.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace rig::numbers {
namespace {

struct LimitsRow
{
    double inverseReadings = 0; // 1 / n; 0 is a mean known exactly
    ChartLimits limits;
};

// Docs/method.md C.
constexpr std::array kLimits{
    LimitsRow{1.0 / 5, {3.71, 12.6}},   LimitsRow{1.0 / 6, {3.66, 11.1}},   LimitsRow{1.0 / 8, {3.58, 9.42}},
    LimitsRow{1.0 / 10, {3.52, 8.48}},  LimitsRow{1.0 / 12, {3.47, 7.88}},  LimitsRow{1.0 / 15, {3.41, 7.29}},
    LimitsRow{1.0 / 20, {3.33, 6.72}},  LimitsRow{1.0 / 25, {3.28, 6.40}},  LimitsRow{1.0 / 30, {3.24, 6.17}},
    LimitsRow{1.0 / 40, {3.18, 5.90}},  LimitsRow{1.0 / 50, {3.15, 5.74}},  LimitsRow{1.0 / 75, {3.09, 5.51}},
    LimitsRow{1.0 / 100, {3.06, 5.40}}, LimitsRow{1.0 / 200, {3.02, 5.23}}, LimitsRow{0, kSequentialLimits},
};

struct CusumSide
{
    double value = 0;
    std::size_t since = 0; // where it began to grow, not 0 since

    void add(double excess, std::size_t place)
    {
        value = std::max(0.0, value + excess);
        if (value == 0)
            since = place + 1;
    }
};

bool isReading(const Interval& reading)
{
    return reading.lower <= reading.upper; // false for NaN
}

} // namespace

double ChartLimits::ewmaLimit(double weight) const
{
    return ewma * std::sqrt(weight / (2 - weight));
}

std::optional<ChartLimits> chartLimitsFor(int readings)
{
    if (readings < kReadingsForDrift)
        return std::nullopt;
    const double wanted = 1.0 / readings;
    const auto isBelow = [wanted](const LimitsRow& row) { return row.inverseReadings < wanted; };
    const auto next = std::ranges::find_if(kLimits, isBelow);
    const LimitsRow& after = *next;
    const LimitsRow& before = *std::prev(next);
    const double share = (before.inverseReadings - wanted) / (before.inverseReadings - after.inverseReadings);
    return ChartLimits{std::lerp(before.limits.ewma, after.limits.ewma, share),
                       std::lerp(before.limits.cusum, after.limits.cusum, share)};
}

Chart chartOf(std::span<const double> scores, const ChartLimits& limits, const ChartSettings& settings)
{
    const double limit = limits.ewmaLimit(settings.ewmaWeight);
    Chart chart;
    double ewma = 0;
    CusumSide up;
    CusumSide down;
    for (std::size_t i = 0; i < scores.size(); ++i) {
        ewma = (1 - settings.ewmaWeight) * ewma + settings.ewmaWeight * scores[i];
        up.add(scores[i] - settings.cusumReference, i);
        down.add(-scores[i] - settings.cusumReference, i);
        if (!chart.ewmaSignal && std::abs(ewma) > limit) {
            chart.ewmaSignal = i;
            chart.onset = std::min(i, ewma > 0 ? up.since : down.since);
        }
        if (!chart.cusumSignal && std::max(up.value, down.value) > limits.cusum) {
            chart.cusumSignal = i;
            chart.cusumOnset = up.value > down.value ? up.since : down.since;
        }
        chart.ewma.push_back(ewma);
        chart.cusumUp.push_back(up.value);
        chart.cusumDown.push_back(down.value);
    }
    return chart;
}

std::optional<DriftCharts> driftOf(const IntervalPosterior& baseline, std::span<const Interval> later)
{
    const auto limits = chartLimitsFor(baseline.readings());
    if (!limits || !std::ranges::all_of(later, isReading))
        return std::nullopt;
    DriftCharts drift{*limits, {}, {}};
    for (const Interval& reading : later)
        drift.scores.push_back(scoreOf(reading, baseline));
    drift.chart = chartOf(drift.scores, drift.limits);
    return drift;
}

std::optional<DriftCharts> sequentialDriftOf(std::span<const Interval> first, std::span<const Interval> later,
                                       const SigmaPrior& prior)
{
    std::vector<Interval> reference{first.begin(), first.end()};
    const IntervalSet firstSet = intervalSetOf(reference);
    const auto range = sigmaRangeOf(firstSet, prior);
    if (firstSet.readings < 2 || !range || !std::ranges::all_of(later, isReading))
        return std::nullopt;
    const SigmaPrior fixed{prior.nu0, prior.s0, range->lower, range->upper};
    DriftCharts drift{kSequentialLimits, {}, {}};
    for (const Interval& reading : later) {
        const auto posterior = IntervalPosterior::of(intervalSetOf(reference), fixed);
        if (!posterior)
            return std::nullopt;
        drift.scores.push_back(scoreOf(reading, *posterior));
        reference.push_back(reading);
    }
    drift.chart = chartOf(drift.scores, drift.limits);
    return drift;
}

} // namespace rig::numbers
