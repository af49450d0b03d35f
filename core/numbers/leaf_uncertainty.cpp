#include "core/numbers/leaf_uncertainty.h"

#include "core/numbers/distributions.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>

namespace rig::numbers {
namespace {

// Standard uncertainty of a value known to lie within +-halfWidth and no more.
double ofRectangle(double halfWidth)
{
    return halfWidth / std::numbers::sqrt3;
}

double rootSumOfSquares(const std::vector<double>& terms)
{
    double sum = 0;
    for (const double term : terms)
        sum = std::hypot(sum, term);
    return sum;
}

bool isUsable(const LeafReading& reading)
{
    const auto isSize = [](double value) { return value >= 0 && std::isfinite(value); };
    return reading.bracket.isClosed() && reading.bracket.lower <= reading.bracket.upper &&
           std::ranges::all_of(reading.leafTolerances, isSize) && isSize(reading.film) &&
           isSize(reading.repeatSd) && std::isfinite(reading.kelvinFrom20);
}

// Half-widths of the leaf tolerances that are independent of each other.
std::vector<double> independentTolerances(const LeafReading& reading)
{
    if (!reading.sharedTolerance)
        return reading.leafTolerances;
    return {std::accumulate(reading.leafTolerances.begin(), reading.leafTolerances.end(), 0.0)};
}

// Integral of the normal distribution function up to t.
double normalIntegral(double t)
{
    return t * normalBelow(t) + normalDensity(t);
}

// P(|R + N| <= x); from the integral of the normal distribution function over the rectangle.
double shareWithin(double x, double halfWidth, double sd)
{
    return sd / halfWidth * (normalIntegral((x + halfWidth) / sd) - normalIntegral((x - halfWidth) / sd)) - 1;
}

} // namespace

double halfWidth95(double halfWidth, double sd)
{
    if (sd == 0)
        return 0.95 * halfWidth;
    // A rectangle so much smaller changes the shape of the sum by less than 1e-12 (its fourth cumulant is
    // 1.2 (halfWidth / sd)^4 / 9), while the difference in shareWithin() would lose that many digits.
    if (halfWidth <= 1e-3 * sd)
        return normalQuantile(0.975) * std::hypot(sd, ofRectangle(halfWidth));
    double lower = 0;
    double upper = halfWidth + 2 * sd; // |R| never exceeds the first, |N| the second in fewer than 5 %
    for (int step = 0; step < 100; ++step) {
        const double middle = lower + 0.5 * (upper - lower);
        (shareWithin(middle, halfWidth, sd) < 0.95 ? lower : upper) = middle;
    }
    return lower + 0.5 * (upper - lower);
}

std::optional<LeafUncertainty> leafUncertainty(const LeafReading& reading)
{
    if (!isUsable(reading))
        return std::nullopt;
    const double middle = (reading.bracket.lower + reading.bracket.upper) / 2;
    const double joints = std::max(0.0, static_cast<double>(reading.leafTolerances.size()) - 1);
    std::vector<double> rectangles = independentTolerances(reading);
    LeafUncertainty result;
    result.midpoint = middle + joints * reading.film / 2;
    result.bracket = ofRectangle(reading.bracket.width() / 2);
    for (const double tolerance : rectangles)
        result.leaves = std::hypot(result.leaves, ofRectangle(tolerance));
    result.films = std::sqrt(joints) * ofRectangle(reading.film / 2);
    result.temperature = ofRectangle(std::abs(middle * kSteelPerKelvin * reading.kelvinFrom20));
    result.feel = reading.repeatSd;
    const double others = rootSumOfSquares({result.films, result.temperature, result.feel});
    result.combined = rootSumOfSquares({result.bracket, result.leaves, others});

    rectangles.push_back(reading.bracket.width() / 2);
    const auto largest = std::ranges::max_element(rectangles);
    result.largestRectangularHalfWidth = *largest;
    rectangles.erase(largest);
    double rest = others;
    for (const double halfWidth : rectangles)
        rest = std::hypot(rest, ofRectangle(halfWidth));
    result.halfWidth95 = halfWidth95(result.largestRectangularHalfWidth, rest);
    const bool isFinite =
        std::isfinite(result.midpoint) && std::isfinite(result.combined) && std::isfinite(result.halfWidth95);
    return isFinite ? std::optional{result} : std::nullopt;
}

} // namespace rig::numbers
