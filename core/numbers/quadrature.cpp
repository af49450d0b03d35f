#include "core/numbers/quadrature.h"

#include <cassert>
#include <cmath>
#include <numbers>

namespace rig::numbers {
namespace {

struct LegendreValue
{
    double value = 0;
    double derivative = 0;
};

// P_n and its derivative at x, |x| < 1, by the three-term recurrence.
LegendreValue legendre(int n, double x)
{
    double before = 1;
    double value = x;
    for (int k = 2; k <= n; ++k) {
        const double next = ((2.0 * k - 1) * x * value - (k - 1.0) * before) / k;
        before = value;
        value = next;
    }
    return {value, n * (x * value - before) / (x * x - 1)};
}

// The i-th largest root, i from 0.
double legendreRoot(int n, int i)
{
    double x = std::cos(std::numbers::pi * (i + 0.75) / (n + 0.5));
    for (int step = 0; step < 20; ++step) {
        const LegendreValue at = legendre(n, x);
        const double change = at.value / at.derivative;
        x -= change;
        if (std::abs(change) < 1e-15)
            break;
    }
    return x;
}

} // namespace

std::vector<QuadraturePoint> gaussLegendre(int count, double from, double to)
{
    assert(count >= 1);
    const double middle = 0.5 * (from + to);
    const double half = 0.5 * (to - from);
    const auto size = static_cast<std::size_t>(count);
    std::vector<QuadraturePoint> points(size);
    if (count == 1)
        return {{middle, to - from}};
    for (int i = 0; i < (count + 1) / 2; ++i) {
        const bool isMiddle = 2 * i + 1 == count;
        const double root = isMiddle ? 0.0 : legendreRoot(count, i);
        const double slope = legendre(count, root).derivative;
        const double weight = 2 * half / ((1 - root * root) * slope * slope);
        const auto at = static_cast<std::size_t>(i);
        points[at] = {middle - half * root, weight};
        points[size - 1 - at] = {middle + half * root, weight};
    }
    return points;
}

} // namespace rig::numbers
