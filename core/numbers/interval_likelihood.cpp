#include "core/numbers/interval_likelihood.h"

#include "core/numbers/distributions.h"

#include <algorithm>
#include <utility>

namespace rig::numbers {
namespace {

constexpr double kModeAccuracy = 0.02; // of sigma; the mode is only where the walk outwards begins
constexpr int kMostSteps = 200; // enough to double from a micrometre past any finite double's useful range

struct Point
{
    double x = 0;
    double height = 0;
};

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

} // namespace

double IntervalLikelihood::logAt(double mu, double sigma) const
{
    double sum = 0;
    const double logSigma = std::log(sigma);
    for (const auto& [interval, count] : m_readings) {
        const double a = (interval.lower - mu) / sigma;
        if (interval.isExact())
            sum += count * (-0.5 * a * a - kLnSqrtTwoPi - logSigma);
        else
            sum += count * logNormalBetween(a, (interval.upper - mu) / sigma);
    }
    return sum;
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

MuRange IntervalLikelihood::rangeAt(double sigma, double drop, const MuRange& near) const
{
    MuRange range;
    range.mode = modeNear(near.mode, sigma);
    range.below = distanceTo(drop, range.mode, -1, sigma, near.below);
    range.above = distanceTo(drop, range.mode, +1, sigma, near.above);
    return range;
}

double IntervalLikelihood::modeNear(double start, double sigma) const
{
    const auto at = [this, sigma](double mu) { return Point{mu, logAt(mu, sigma)}; };
    double step = 0.25 * sigma;
    Point left = at(start - step);
    Point middle = at(start);
    Point right = at(start + step);
    // Climb with doubled steps until the middle one is the highest of the three.
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
    for (int i = 0; i < kMostSteps && right.x - left.x > kModeAccuracy * sigma; ++i) {
        double x = vertexOf(left, middle, right);
        if (std::abs(x - middle.x) < 0.5 * kModeAccuracy * sigma)
            break;
        if (!(x > left.x && x < right.x))
            break;
        const Point found = at(x);
        if (found.height > middle.height)
            (x > middle.x ? left : right) = std::exchange(middle, found);
        else
            (x > middle.x ? right : left) = found;
    }
    return middle.x;
}

double IntervalLikelihood::distanceTo(double drop, double mode, double direction, double sigma,
                                      double guess) const
{
    const double top = logAt(mode, sigma);
    const auto dropAt = [&](double distance) { return top - logAt(mode + direction * distance, sigma); };
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
