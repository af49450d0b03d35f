#include "core/numbers/interval_curve.h"

#include "core/numbers/distributions.h"

#include <algorithm>
#include <cmath>

namespace rig::numbers {
namespace {

constexpr double kNarrow = 1e-4; // width below which differences of densities would lose their digits

double logNormalDensity(double z)
{
    return -0.5 * z * z - kLnSqrtTwoPi;
}

// Up to an upper bound z.
IntervalCurve curveBelow(double z)
{
    IntervalCurve curve;
    curve.log = logNormalBelow(z);
    curve.m = std::exp(logNormalDensity(z) - curve.log);
    curve.mm = std::clamp(-curve.m * (z + curve.m), -1.0, 0.0);
    return curve;
}

// ln of the probability and the mean of a standard normal kept between the bounds. The derivatives by m are
// minus that mean, and its variance less 1. For a narrow interval they are those of the middle with the terms
// of second order in the width.
IntervalCurve curveBetween(double m, double d)
{
    const double lower = m - d;
    const double upper = m + d;
    const double width = 2 * d;
    const bool isNarrow = width < kNarrow;
    IntervalCurve curve;
    curve.log = isNarrow
                    ? logNormalDensity(m) + std::log(width) + std::log1p((m * m - 1) * width * width / 24)
                    : logNormalBetween(lower, upper);
    const double atLower = std::exp(logNormalDensity(lower) - curve.log);
    const double atUpper = std::exp(logNormalDensity(upper) - curve.log);
    const double mean = isNarrow ? m * (1 - width * width / 12) : atLower - atUpper;
    const double weighted = lower * atLower - upper * atUpper;
    curve.m = -mean;
    curve.mm = isNarrow ? width * width / 12 - 1 : std::clamp(weighted - mean * mean, -1.0, 0.0);
    curve.d = atLower + atUpper;
    curve.md = mean * curve.d - lower * atLower - upper * atUpper;
    curve.dd = curve.mm + mean * mean - curve.d * curve.d;
    return curve;
}

} // namespace

IntervalKind intervalKindOf(const Interval& interval)
{
    if (interval.isExact())
        return IntervalKind::Exact;
    if (interval.isClosed())
        return IntervalKind::Closed;
    return std::isfinite(interval.upper) ? IntervalKind::OpenBelow : IntervalKind::OpenAbove;
}

IntervalCurve intervalCurveOf(IntervalKind kind, double m, double d)
{
    switch (kind) {
    case IntervalKind::Exact:
        return {logNormalDensity(m), -m, 0, -1, 0, 0};
    case IntervalKind::Closed:
        return curveBetween(m, d);
    case IntervalKind::OpenBelow:
        return curveBelow(m);
    case IntervalKind::OpenAbove: {
        IntervalCurve curve = curveBelow(-m);
        curve.m = -curve.m;
        return curve;
    }
    }
    return {};
}

} // namespace rig::numbers
