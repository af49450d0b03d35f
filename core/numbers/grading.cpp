#include "core/numbers/grading.h"

#include "core/numbers/distributions.h"

#include <algorithm>

namespace rig::numbers {
namespace {

constexpr double kScoreCap = 4;           // one wild reading must not trip a chart by itself (docs/method.md)
constexpr double kWidthAllowance = 1.001; // rounding in upper minus lower of equal leaf steps

// Phi^-1 of F(x), from the smaller tail.
double normalScore(double x, const IntervalPosterior& posterior, double extraVariance)
{
    const double below = posterior.below(x, extraVariance);
    if (below < 0.5)
        return normalQuantile(below);
    return -normalQuantile(posterior.above(x, extraVariance));
}

Grade gradeOf(const Interval& reading, Place inner, Place outer, const PredictiveBands& bands,
              double medianWidth)
{
    if (isOutside(outer))
        return Grade::Outside;
    if (isOutside(inner))
        return Grade::Watch;
    const bool isTypical = reading.lower <= bands.median && bands.median <= reading.upper &&
                           reading.width() <= kWidthAllowance * medianWidth;
    return outer == Place::Inside || isTypical ? Grade::Normal : Grade::Unresolved;
}

} // namespace

PredictiveBands bandsOf(const IntervalPosterior& posterior, double extraVariance)
{
    const auto band = [&](double tail) {
        return Interval{posterior.lowerQuantile(tail, extraVariance),
                        posterior.upperQuantile(tail, extraVariance)};
    };
    return {band(kInnerTail), band(kOuterTail), posterior.lowerQuantile(0.5, extraVariance)};
}

Place placeOf(const Interval& reading, const Interval& band)
{
    if (reading.isExact()) {
        if (reading.upper < band.lower)
            return Place::OutsideLow;
        return reading.lower > band.upper ? Place::OutsideHigh : Place::Inside;
    }
    if (reading.upper <= band.lower)
        return Place::OutsideLow;
    if (reading.lower >= band.upper)
        return Place::OutsideHigh;
    const bool reachesLow = reading.lower < band.lower;
    const bool reachesHigh = reading.upper > band.upper;
    if (reachesLow && reachesHigh)
        return Place::Covers;
    if (reachesLow)
        return Place::StraddlesLow;
    return reachesHigh ? Place::StraddlesHigh : Place::Inside;
}

Grading gradingOf(const Interval& reading, const IntervalPosterior& posterior, const PredictiveBands& bands,
                  double extraVariance)
{
    Grading grading;
    grading.high = posterior.above(reading.lower, extraVariance);
    grading.low = posterior.below(reading.upper, extraVariance);
    grading.tail = std::min(1.0, 2 * std::min(grading.high, grading.low));
    grading.inner = placeOf(reading, bands.inner);
    grading.outer = placeOf(reading, bands.outer);
    grading.grade = gradeOf(reading, grading.inner, grading.outer, bands, posterior.medianWidth());
    return grading;
}

double tailOf(const Interval& reading, const IntervalPosterior& posterior, double extraVariance)
{
    const double high = posterior.above(reading.lower, extraVariance);
    const double low = posterior.below(reading.upper, extraVariance);
    return std::min(1.0, 2 * std::min(high, low));
}

double scoreOf(const Interval& reading, const IntervalPosterior& posterior, double extraVariance)
{
    const double a = normalScore(reading.lower, posterior, extraVariance);
    if (reading.isExact())
        return std::clamp(a, -kScoreCap, kScoreCap);
    const double probability = posterior.between(reading, extraVariance);
    if (probability < 1e-12)
        return a > 0 ? kScoreCap : -kScoreCap;
    const double b = normalScore(reading.upper, posterior, extraVariance);
    return std::clamp((normalDensity(a) - normalDensity(b)) / probability, -kScoreCap, kScoreCap);
}

} // namespace rig::numbers
