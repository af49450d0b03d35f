#include "core/numbers/rank_trend.h"

#include "core/numbers/distributions.h"
#include "core/numbers/median.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <utility>
#include <vector>

namespace rig::numbers {
namespace {

constexpr int kFewestForNormal = 50; // below, without ties, p is exact
constexpr double kNormal95 = 1.959964;

int signOf(double value)
{
    return (value > 0 ? 1 : 0) - (value < 0 ? 1 : 0);
}

// Sums over groups of equal values, u their size. Doubles: u^3 overflows an int at 1300.
struct Ties
{
    double pairs = 0;    // u (u - 1)
    double triples = 0;  // u (u - 1) (u - 2)
    double variance = 0; // u (u - 1) (2 u + 5)
};

Ties tiesIn(std::span<const double> values)
{
    std::vector<double> sorted(values.begin(), values.end());
    std::ranges::sort(sorted);
    Ties ties;
    for (auto first = sorted.begin(); first != sorted.end();) {
        const auto next = std::upper_bound(first, sorted.end(), *first);
        const auto u = static_cast<double>(next - first);
        ties.pairs += u * (u - 1);
        ties.triples += u * (u - 1) * (u - 2);
        ties.variance += u * (u - 1) * (2 * u + 5);
        first = next;
    }
    return ties;
}

double varianceOfS(double n, const Ties& inT, const Ties& inY)
{
    return (n * (n - 1) * (2 * n + 5) - inT.variance - inY.variance) / 18 +
           inT.triples * inY.triples / (9 * n * (n - 1) * (n - 2)) +
           inT.pairs * inY.pairs / (2 * n * (n - 1));
}

// P(at most `most` inversions) in a random order of n: the k-th value to arrive adds 0 to k - 1, all equally
// likely.
double chanceOfInversions(int most, int n)
{
    std::vector<double> chance{1};
    for (int k = 2; k <= n; ++k) {
        std::vector<double> next(chance.size() + static_cast<std::size_t>(k) - 1);
        for (std::size_t i = 0; i < chance.size(); ++i)
            for (std::size_t added = 0; added < static_cast<std::size_t>(k); ++added)
                next[i + added] += chance[i] / k;
        chance = std::move(next);
    }
    double sum = 0;
    for (std::size_t i = 0; i <= static_cast<std::size_t>(most); ++i)
        sum += chance[i];
    return sum;
}

double exactP(double s, int n)
{
    const int pairs = n * (n - 1) / 2;
    return std::min(1.0, 2 * chanceOfInversions((pairs - static_cast<int>(std::abs(s))) / 2, n));
}

double normalP(double s, double variance)
{
    if (signOf(s) == 0 || !(variance > 0))
        return 1;
    return std::min(1.0, 2 * normalBelow(-(std::abs(s) - 1) / std::sqrt(variance)));
}

// The value that would stand at `index` if they were sorted.
double atRank(std::vector<double>& values, std::size_t index)
{
    const auto at = values.begin() + static_cast<std::ptrdiff_t>(index);
    std::ranges::nth_element(values, at);
    return *at;
}

// 1-based ranks of the slopes that bound the slope, clipped to those there are (Sen 1968).
Interval slopesAtSensRanks(std::vector<double>& slopes, double reach)
{
    const auto count = static_cast<double>(slopes.size());
    const auto at = [&](double rank) {
        return atRank(slopes, static_cast<std::size_t>(std::clamp(rank, 1.0, count)) - 1);
    };
    return {at(std::round(0.5 * (count - reach))), at(std::round(0.5 * (count + reach)) + 1)};
}

bool areDifferencesFinite(std::span<const double> values)
{
    const auto [least, most] = std::ranges::minmax(values);
    return std::isfinite(most - least);
}

bool isNumber(double value)
{
    return std::isfinite(value);
}

struct Pairs
{
    double s = 0;
    std::vector<double> slopes;
};

Pairs pairsOf(std::span<const double> t, std::span<const double> y)
{
    Pairs pairs;
    pairs.slopes.reserve(t.size() * (t.size() - 1) / 2);
    for (std::size_t i = 0; i < t.size(); ++i)
        for (std::size_t j = 0; j < i; ++j) {
            const double across = t[i] - t[j];
            const double up = y[i] - y[j];
            pairs.s += signOf(across) * signOf(up);
            if (signOf(across) != 0)
                pairs.slopes.push_back(up / across);
        }
    return pairs;
}

} // namespace

std::optional<RankTrend> rankTrendOf(std::span<const double> t, std::span<const double> y)
{
    if (t.size() != y.size() || t.size() < 3 || !std::ranges::all_of(t, isNumber) ||
        !std::ranges::all_of(y, isNumber) || !areDifferencesFinite(t) || !areDifferencesFinite(y))
        return std::nullopt;
    Pairs pairs = pairsOf(t, y);
    if (pairs.slopes.empty())
        return std::nullopt;

    const auto n = static_cast<double>(t.size());
    const Ties inT = tiesIn(t);
    const Ties inY = tiesIn(y);
    RankTrend trend;
    trend.readings = static_cast<int>(t.size());
    trend.s = pairs.s;
    trend.varianceOfS = varianceOfS(n, inT, inY);
    if (inY.pairs < n * (n - 1))
        trend.tauB = 2 * pairs.s / std::sqrt((n * (n - 1) - inT.pairs) * (n * (n - 1) - inY.pairs));
    trend.isExactP = trend.readings < kFewestForNormal && inT.pairs + inY.pairs == 0;
    trend.p = trend.isExactP ? exactP(pairs.s, trend.readings) : normalP(pairs.s, trend.varianceOfS);

    trend.slope = medianOf(pairs.slopes);
    trend.slope95 = slopesAtSensRanks(pairs.slopes, kNormal95 * std::sqrt(varianceOfS(n, Ties{}, inY)));
    std::vector<double> rests;
    for (std::size_t i = 0; i < t.size(); ++i)
        rests.push_back(y[i] - trend.slope * t[i]);
    trend.intercept = medianOf(std::move(rests));
    if (!isNumber(trend.slope) || !isNumber(trend.intercept) || !trend.slope95.isClosed())
        return std::nullopt;
    return trend;
}

std::optional<RankTrend> rankTrendOf(std::span<const double> t, std::span<const Interval> readings)
{
    if (t.size() != readings.size())
        return std::nullopt;
    std::vector<double> when;
    std::vector<double> middles;
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const auto [lower, upper] = readings[i];
        if (std::isinf(lower) || std::isinf(upper))
            continue;
        when.push_back(t[i]);
        middles.push_back(0.5 * lower + 0.5 * upper);
    }
    return rankTrendOf(when, middles);
}

} // namespace rig::numbers
