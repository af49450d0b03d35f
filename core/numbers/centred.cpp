#include "core/numbers/centred.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

namespace rig::numbers {
namespace {

void shift(std::vector<double>& values, double by)
{
    for (double& value : values)
        value -= by;
}

} // namespace

std::optional<int> exponentOf(std::span<const double> values)
{
    if (values.empty())
        return std::nullopt;
    double largest = 0;
    for (const double value : values) {
        if (!std::isfinite(value))
            return std::nullopt;
        largest = std::max(largest, std::abs(value));
    }
    int exponent = 0;
    std::frexp(largest, &exponent);
    return exponent;
}

std::optional<Centred> centred(std::span<const double> values)
{
    const std::optional<int> exponent = exponentOf(values);
    return exponent ? std::optional{centred(values, *exponent)} : std::nullopt;
}

Centred centred(std::span<const double> values, int exponent)
{
    assert(!values.empty());
    const auto count = static_cast<double>(values.size());
    Centred result{0, {}, exponent};
    result.rests.reserve(values.size());
    for (const double value : values)
        result.rests.push_back(std::ldexp(value, -exponent));
    const double start = result.rests.front();
    shift(result.rests, start);
    const double offset = sumOf(result.rests) / count;
    shift(result.rests, offset);
    const double left = sumOf(result.rests) / count;
    shift(result.rests, left);
    result.mean = start + (offset + left);
    return result;
}

double sumOf(std::span<const double> values)
{
    return std::accumulate(values.begin(), values.end(), 0.0);
}

double sumOfProducts(std::span<const double> a, std::span<const double> b)
{
    assert(a.size() == b.size());
    return std::inner_product(a.begin(), a.end(), b.begin(), 0.0);
}

} // namespace rig::numbers
