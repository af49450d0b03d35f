#include "core/numbers/readings_needed.h"

#include "core/numbers/distributions.h"

#include <cmath>

namespace rig::numbers {

std::optional<double> c4(int n)
{
    if (n < 2)
        return std::nullopt;
    const double half = 0.5 * n;
    return std::exp(std::lgamma(half) - std::lgamma(half - 0.5)) / std::sqrt(half - 0.5);
}

std::optional<double> meanHalfWidth(int n, double content)
{
    const std::optional<double> shrink = c4(n);
    if (!shrink || !(content > 0) || !(content < 1))
        return std::nullopt;
    return studentQuantile(0.5 + 0.5 * content, n - 1.0) * *shrink * std::sqrt(1 + 1.0 / n);
}

} // namespace rig::numbers
