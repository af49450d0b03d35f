#include "core/numbers/interval_likelihood.h"

#include "core/numbers/distributions.h"

#include <algorithm>
#include <limits>
#include <numbers>
#include <optional>
#include <utility>

namespace rig::numbers {
namespace {

using Point = IntervalLikelihood::Point;

constexpr double kModeAccuracy = 0.02; // of sigma; the mode is only where the walk outwards begins
constexpr int kMostSteps = 200; // enough to double from a micrometre past any finite double's useful range

// One bound of a reading, standardised, with twice the tail beyond it on its own side of 0.
struct BoundTail
{
    double bound = std::numeric_limits<double>::quiet_NaN();
    double z = 0;
    double twiceTail = 0;

    static BoundTail of(double bound, double z)
    {
        return {bound, z, std::erfc(std::abs(z) / std::numbers::sqrt2)};
    }
};

// Sum of the logarithms of probabilities, most of them multiplied first: fewer logarithms to take.
class LogProduct
{
public:
    void addLog(double log) { m_sum += log; }
    // 1e-150 < probability <= 1, so that the product never underflows.
    void multiply(double probability)
    {
        m_product *= probability;
        if (m_product < 1e-140)
            m_sum += std::log(std::exchange(m_product, 1.0));
    }
    double sum() const { return m_sum + std::log(m_product); }

private:
    double m_sum = 0;
    double m_product = 1;
};

// The probability of lying between two bounds from tails already known, to a relative 3e-12 and at a third of
// the cost of logNormalBetween; empty where the tails underflow or nearly cancel.
std::optional<double> probabilityBetween(const BoundTail& a, const BoundTail& b)
{
    if (b.z - a.z < 1e-4 || std::min(std::abs(a.z), std::abs(b.z)) > 25)
        return std::nullopt;
    if (a.z <= 0 && b.z >= 0)
        return 1 - 0.5 * (a.twiceTail + b.twiceTail);
    return 0.5 * std::abs(a.twiceTail - b.twiceTail);
}

// Vertex of the parabola through three points, left to right; the middle one where they lie on a line.
double vertexOf(const Point& left, const Point& middle, const Point& right)
{
    const double a = (middle.x - left.x) * (middle.height - right.height);
    const double b = (middle.x - right.x) * (middle.height - left.height);
    const double bottom = a - b;
    if (!(std::abs(bottom) > 0))
        return middle.x;
    return middle.x - 0.5 * ((middle.x - left.x) * a - (middle.x - right.x) * b) / bottom;
}

// Three points, the middle one the highest: the mode of a concave curve lies between the outer two.
struct Bracket
{
    Point left;
    Point middle;
    Point right;
};

// Climbs with doubled steps.
template <typename At> Bracket bracketFrom(double start, double step, const At& at)
{
    Bracket found{at(start - step), at(start), at(start + step)};
    auto& [left, middle, right] = found;
    for (int i = 0; i < kMostSteps && middle.height < std::max(left.height, right.height); ++i) {
        step *= 2;
        if (right.height > middle.height) {
            left = std::exchange(middle, right);
            right = at(middle.x + step);
        } else {
            right = std::exchange(middle, left);
            left = at(middle.x - step);
        }
    }
    return found;
}

// Narrows a bracket by parabolas.
template <typename At> double topOf(Bracket bracket, double accuracy, const At& at)
{
    auto& [left, middle, right] = bracket;
    for (int i = 0; i < kMostSteps && right.x - left.x > accuracy; ++i) {
        const double x = vertexOf(left, middle, right);
        const bool isInside = x > left.x && x < right.x;
        if (!isInside || std::abs(x - middle.x) < 0.5 * accuracy)
            break;
        const Point found = at(x);
        const Point lower = found.height > middle.height ? std::exchange(middle, found) : found;
        (lower.x < middle.x ? left : right) = lower;
    }
    return middle.x;
}

} // namespace

double IntervalLikelihood::logAt(double mu, double sigma) const
{
    LogProduct product;
    const double logSigma = std::log(sigma);
    BoundTail last; // sorted readings of one leaf set share bounds: each tail is worked out once
    for (const auto& [interval, count] : m_readings) {
        const double z = (interval.lower - mu) / sigma;
        if (interval.isExact()) {
            product.addLog(count * (-0.5 * z * z - kLnSqrtTwoPi - logSigma));
            continue;
        }
        const BoundTail lower = last.bound == interval.lower ? last : BoundTail::of(interval.lower, z);
        last = BoundTail::of(interval.upper, (interval.upper - mu) / sigma);
        const std::optional<double> probability = probabilityBetween(lower, last);
        if (probability && count == 1)
            product.multiply(*probability);
        else
            product.addLog(count * (probability ? std::log(*probability) : logNormalBetween(z, last.z)));
    }
    return product.sum();
}

double IntervalLikelihood::centre() const
{
    double sum = 0;
    double total = 0;
    for (const auto& [interval, count] : m_readings) {
        const double place = interval.isClosed()             ? 0.5 * (interval.lower + interval.upper)
                             : std::isfinite(interval.lower) ? interval.lower
                                                             : interval.upper;
        sum += count * place;
        total += count;
    }
    return sum / total;
}

MuRange IntervalLikelihood::rangeAt(double sigma, const MuDepth& depth, const MuRange& near) const
{
    MuRange range;
    range.mode = modeNear(near.mode, sigma);
    const double top = logAt(range.mode, sigma);
    const double reach = top - depth.worth;
    range.drop = reach < depth.most ? std::max(reach, 1.0) : depth.most; // also where reach is no number
    const double scale = near.drop > 0 ? std::sqrt(range.drop / near.drop) : 1; // exact for a parabola
    range.below = distanceTo(range.drop, {range.mode, top}, -1, sigma, near.below * scale);
    range.above = distanceTo(range.drop, {range.mode, top}, +1, sigma, near.above * scale);
    return range;
}

double IntervalLikelihood::modeNear(double start, double sigma) const
{
    const auto at = [this, sigma](double mu) { return Point{mu, logAt(mu, sigma)}; };
    return topOf(bracketFrom(start, 0.25 * sigma, at), kModeAccuracy * sigma, at);
}

double IntervalLikelihood::distanceTo(double drop, const Point& mode, double direction, double sigma,
                                      double guess) const
{
    const auto dropAt = [&](double distance) {
        return mode.height - logAt(mode.x + direction * distance, sigma);
    };
    const double aim = 1.05 * drop;
    const double enough = 1.25 * drop; // a tenth too long for a parabola; the cells stay fine enough

    double inside = 0;
    double outside = guess > 0 ? guess : sigma;
    double reached = dropAt(outside);
    for (int i = 0; i < kMostSteps && reached < drop; ++i) {
        inside = outside;
        outside *= reached > 0.25 * drop ? std::sqrt(aim / reached) : 2.0;
        reached = dropAt(outside);
    }
    for (int i = 0; i < 12 && reached > enough; ++i) {
        double next = outside * std::sqrt(aim / reached); // exact for a parabola
        if (next <= inside)
            next = 0.5 * (inside + outside);
        const double there = dropAt(next);
        if (there < drop) {
            inside = next;
        } else {
            outside = next;
            reached = there;
        }
    }
    return outside;
}

} // namespace rig::numbers
