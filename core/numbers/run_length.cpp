#include "core/numbers/run_length.h"

#include "core/numbers/distributions.h"
#include "core/numbers/linear_solve.h"
#include "core/numbers/quadrature.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace rig::numbers {
namespace {

constexpr int kFewestChartNodes = 80; // docs/method.md C
constexpr int kMostNodes = 400;
constexpr double kNodesPerStep = 2; // a step: the standard deviation of what one score adds
constexpr double kLongestRun = 1e9; // its reciprocal is known to some 1e-15, rounding of the solution

// A chart as a chain of states that has not signalled: the chances from state to state, and from the start.
struct Chain
{
    SquareMatrix chances;
    std::vector<double> fromStart;
};

std::optional<std::vector<QuadraturePoint>> chartNodesOn(double from, double to, double step)
{
    const double wanted = std::ceil(kNodesPerStep * (to - from) / step);
    if (!(wanted <= kMostNodes))
        return std::nullopt;
    return gaussLegendre(std::max(kFewestChartNodes, static_cast<int>(wanted)), from, to);
}

std::optional<Chain> chainOf(const EwmaChart& chart, double shift)
{
    const bool isChart =
        chart.weight > 0 && chart.weight <= 1 && chart.limit > 0 && std::isfinite(chart.limit);
    if (!isChart || !std::isfinite(shift))
        return std::nullopt;
    const double limit = chart.limit * std::sqrt(chart.weight / (2 - chart.weight));
    const auto nodes = chartNodesOn(-limit, limit, chart.weight);
    if (!nodes)
        return std::nullopt;

    const auto chance = [&](double from, const QuadraturePoint& to) {
        const double score = (to.x - (1 - chart.weight) * from) / chart.weight;
        return to.weight / chart.weight * normalDensity(score - shift);
    };
    Chain chain{SquareMatrix{nodes->size()}, {}};
    for (std::size_t i = 0; i < nodes->size(); ++i) {
        chain.fromStart.push_back(chance(0, (*nodes)[i]));
        for (std::size_t j = 0; j < nodes->size(); ++j)
            chain.chances.at(i, j) = chance((*nodes)[i].x, (*nodes)[j]);
    }
    return chain;
}

// One side, upwards. The first state is the chart at 0, where it begins.
std::optional<Chain> upwardChainOf(const CusumChart& chart, double shift)
{
    const bool isChart = chart.reference >= 0 && std::isfinite(chart.reference) && chart.limit > 0;
    if (!isChart || !std::isfinite(shift))
        return std::nullopt;
    const auto nodes = chartNodesOn(0, chart.limit, 1);
    if (!nodes)
        return std::nullopt;

    const double drift = shift - chart.reference;
    const std::size_t size = nodes->size() + 1;
    Chain chain{SquareMatrix{size}, {}};
    for (std::size_t i = 0; i < size; ++i) {
        const double from = i == 0 ? 0 : (*nodes)[i - 1].x;
        chain.chances.at(i, 0) = normalBelow(-from - drift);
        for (std::size_t j = 1; j < size; ++j) {
            const auto& [to, weight] = (*nodes)[j - 1];
            chain.chances.at(i, j) = weight * normalDensity(to - from - drift);
        }
    }
    for (std::size_t j = 0; j < size; ++j)
        chain.fromStart.push_back(chain.chances.at(0, j));
    return chain;
}

double dot(const std::vector<double>& a, const std::vector<double>& b)
{
    double sum = 0;
    for (std::size_t i = 0; i < a.size(); ++i)
        sum += a[i] * b[i];
    return sum;
}

// Signals per reading: one over the average run length. 0 where that is too long for doubles.
double signalRate(const Chain& chain)
{
    const std::size_t size = chain.chances.size();
    SquareMatrix matrix{size};
    for (std::size_t i = 0; i < size; ++i)
        for (std::size_t j = 0; j < size; ++j)
            matrix.at(i, j) = (i == j ? 1.0 : 0.0) - chain.chances.at(i, j);
    const auto runs = solved(std::move(matrix), std::vector<double>(size, 1.0));
    if (!runs)
        return 0;
    const double length = 1 + dot(chain.fromStart, *runs);
    return length > 0 && std::isfinite(length) ? 1 / length : 0;
}

std::optional<double> runLengthOf(double rate)
{
    return rate * kLongestRun >= 1 ? std::optional{std::max(1.0, 1 / rate)} : std::nullopt;
}

} // namespace

std::optional<double> averageRunLength(const EwmaChart& chart, double shift)
{
    const auto chain = chainOf(chart, shift);
    return chain ? runLengthOf(signalRate(*chain)) : std::nullopt;
}

std::optional<double> averageRunLength(const CusumChart& chart, double shift)
{
    const auto up = upwardChainOf(chart, shift);
    const auto down = upwardChainOf(chart, -shift);
    if (!up || !down)
        return std::nullopt;
    return runLengthOf(signalRate(*up) + (chart.isTwoSided ? signalRate(*down) : 0));
}

std::optional<double> chanceOfSignalWithin(int readings, const EwmaChart& chart, double shift)
{
    const auto chain = chainOf(chart, shift);
    if (!chain || readings < 0)
        return std::nullopt;
    if (readings == 0)
        return 0;
    const std::size_t size = chain->chances.size();
    std::vector<double> silent(size, 1.0); // the chance of no signal in what is left, by state
    for (int left = 1; left < readings; ++left) {
        std::vector<double> before(size);
        for (std::size_t i = 0; i < size; ++i)
            for (std::size_t j = 0; j < size; ++j)
                before[i] += chain->chances.at(i, j) * silent[j];
        silent = std::move(before);
    }
    return std::clamp(1 - dot(chain->fromStart, silent), 0.0, 1.0);
}

} // namespace rig::numbers
