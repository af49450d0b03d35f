#include "core/numbers/interval_trend.h"

#include "core/numbers/distributions.h"
#include "core/numbers/interval_set.h"

#include <algorithm>
#include <cmath>
#include <tuple>
#include <vector>

namespace rig::numbers {
namespace {

constexpr double kTail = 0.025; // on each side of a 95 % interval
constexpr int kBisections = 40; // of one day: to 1e-12 of it
constexpr double kLongestHorizon = 1e6;

struct DatedReading
{
    double day = 0;
    Interval interval;
};

bool comesBefore(const DatedReading& a, const DatedReading& b)
{
    return std::tie(a.day, a.interval.lower, a.interval.upper) <
           std::tie(b.day, b.interval.lower, b.interval.upper);
}

// Sorted, without those open both ways.
std::vector<DatedReading> datedReadings(std::span<const double> days, std::span<const Interval> readings)
{
    std::vector<DatedReading> dated;
    for (std::size_t i = 0; i < readings.size(); ++i)
        if (std::isfinite(readings[i].lower) || std::isfinite(readings[i].upper))
            dated.push_back({days[i], readings[i]});
    std::ranges::sort(dated, comesBefore);
    return dated;
}

double meanDayOf(const std::vector<DatedReading>& dated)
{
    double sum = 0;
    for (const DatedReading& reading : dated)
        sum += reading.day;
    return sum / static_cast<double>(dated.size());
}

int differentDaysIn(const std::vector<DatedReading>& dated)
{
    int count = 1;
    for (std::size_t i = 1; i < dated.size(); ++i)
        count += dated[i].day > dated[i - 1].day ? 1 : 0;
    return count;
}

double smallSampleFactor(const IntervalTrend& trend)
{
    return trend.readings / (trend.readings - 2.0);
}

Interval around(double middle, double reach)
{
    return {middle - reach, middle + reach};
}

// Of a t-distributed value about `fit`; each tail directly.
double chanceOutside(const Interval& band, double fit, double error, double df)
{
    return studentBelow((band.lower - fit) / error, df) + studentBelow((fit - band.upper) / error, df);
}

Interval edgesOf(const TrendPrediction& prediction, TrendEdge edge)
{
    switch (edge) {
    case TrendEdge::Line:
        return {prediction.fit, prediction.fit};
    case TrendEdge::Reading95:
        return prediction.reading95;
    case TrendEdge::Mean95:
        return prediction.mean95;
    }
    return {};
}

} // namespace

std::optional<TrendPrediction> IntervalTrend::predictionAt(double day) const
{
    const double t = (day - meanDay) / slopeUnit;
    const double factor = smallSampleFactor(*this);
    const double variance =
        factor * (covariance.level + 2 * t * covariance.levelAndSlope + t * t * covariance.slope);
    TrendPrediction prediction;
    prediction.fit = level + slope * t;
    prediction.meanError = std::sqrt(std::max(0.0, variance));
    prediction.readingError = std::sqrt(sigma * sigma + std::max(0.0, variance));
    prediction.mean95 = around(prediction.fit, t95 * prediction.meanError);
    prediction.reading95 = around(prediction.fit, t95 * prediction.readingError);
    if (!prediction.reading95.isClosed() || std::isnan(variance))
        return std::nullopt;
    return prediction;
}

std::optional<double> IntervalTrend::chanceReadingOutside(const Interval& band, double day) const
{
    const auto prediction = predictionAt(day);
    if (!prediction || !(prediction->readingError > 0))
        return std::nullopt;
    return chanceOutside(band, prediction->fit, prediction->readingError, readings - 2);
}

std::optional<double> IntervalTrend::chanceLineOutside(const Interval& band, double day) const
{
    const auto prediction = predictionAt(day);
    if (!prediction || !(prediction->meanError > 0))
        return std::nullopt;
    return chanceOutside(band, prediction->fit, prediction->meanError, readings - 2);
}

std::optional<double> IntervalTrend::firstDayReaching(const Interval& limits, TrendEdge edge,
                                                      double horizon) const
{
    const auto isReached = [&](double ahead) {
        const auto prediction = predictionAt(lastDay + ahead);
        if (!prediction)
            return false;
        const Interval edges = edgesOf(*prediction, edge);
        return edges.lower <= limits.lower || edges.upper >= limits.upper;
    };
    if (isReached(0))
        return lastDay;
    const double end = std::min(horizon, kLongestHorizon);
    for (int day = 1; day < end + 1; ++day) {
        double reached = std::min<double>(day, end);
        if (!isReached(reached))
            continue;
        double notReached = day - 1;
        for (int i = 0; i < kBisections; ++i) {
            const double middle = 0.5 * (notReached + reached);
            (isReached(middle) ? reached : notReached) = middle;
        }
        return lastDay + reached;
    }
    return std::nullopt;
}

std::optional<IntervalTrend> intervalTrendOf(std::span<const double> days, std::span<const Interval> readings,
                                             double slopeUnit)
{
    const bool areDays = days.size() == readings.size() &&
                         std::ranges::all_of(days, [](double day) { return std::isfinite(day); });
    const IntervalSet set = intervalSetOf(readings);
    if (!areDays || !(slopeUnit > 0) || set.status != ReadingsStatus::Ok || set.readings < 3)
        return std::nullopt;

    const std::vector<DatedReading> dated = datedReadings(days, readings);
    IntervalTrend trend;
    trend.readings = set.readings;
    trend.differentDays = differentDaysIn(dated);
    trend.meanDay = meanDayOf(dated);
    trend.lastDay = dated.back().day;
    trend.slopeUnit = slopeUnit;
    std::vector<RegressionReading> rows;
    rows.reserve(dated.size());
    for (const auto& [day, interval] : dated)
        rows.push_back({(day - trend.meanDay) / slopeUnit, interval});
    const auto fit = intervalFitOf(rows, Predictor::Line, resolutionFloor(set.medianWidth));
    if (!fit)
        return std::nullopt;

    trend.level = fit->level;
    trend.slope = fit->slope;
    trend.sigmaMl = fit->sigma;
    trend.sigma = fit->sigma * std::sqrt(smallSampleFactor(trend));
    trend.isFloored = fit->isFloored;
    trend.covariance = fit->covariance;
    trend.logLikelihood = fit->logLikelihood;
    const double slopeError = std::sqrt(smallSampleFactor(trend) * fit->covariance.slope);
    trend.t95 = studentQuantile(1 - kTail, trend.readings - 2);
    trend.slope95 = around(fit->slope, trend.t95 * slopeError);
    trend.slopeP = 2 * studentBelow(-std::abs(fit->slope) / slopeError, trend.readings - 2);
    if (!(slopeError > 0) || !trend.slope95.isClosed())
        return std::nullopt;
    return trend;
}

} // namespace rig::numbers
