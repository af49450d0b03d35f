#include "core/numbers/change_point.h"

#include "core/numbers/distributions.h"
#include "core/numbers/interval_regression.h"
#include "core/numbers/interval_set.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

namespace rig::numbers {
namespace {

constexpr double kLikelyShare = 0.95;
constexpr double kSmallestZ = 2;         // below it the second bound turns negative for n > 25
constexpr double kSameLikelihood = 1e-9; // ln likelihoods of two splits this close: the earlier counts

// A reading that says something: which of the distinct intervals it is, and its number among those given.
struct Numbered
{
    std::size_t distinct = 0;
    int number = 0; // from 1
};

std::vector<Numbered> numberedReadings(std::span<const Interval> readings,
                                       std::span<const CountedInterval> distinct)
{
    std::vector<Numbered> numbered;
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const auto found = std::ranges::find(distinct, readings[i], &CountedInterval::interval);
        if (found != distinct.end())
            numbered.push_back({static_cast<std::size_t>(found - distinct.begin()), static_cast<int>(i) + 1});
    }
    return numbered;
}

// The counted readings at x, or none where nothing holds their mean from below or from above: they then add
// nothing to the supremum of the ln likelihood, a probability of 1.
std::vector<RegressionReading> heldReadings(std::span<const CountedInterval> counted, double x)
{
    std::vector<RegressionReading> rows;
    bool isHeldBelow = false;
    bool isHeldAbove = false;
    for (const auto& [interval, count] : counted) {
        if (count == 0)
            continue;
        rows.push_back({x, interval, count});
        isHeldBelow = isHeldBelow || std::isfinite(interval.lower);
        isHeldAbove = isHeldAbove || std::isfinite(interval.upper);
    }
    if (!isHeldBelow || !isHeldAbove)
        rows.clear();
    return rows;
}

// The likelihood of two means with one sigma, for a split that moves along the readings.
class MovingSplit
{
public:
    MovingSplit(const std::vector<CountedInterval>& distinct, double sigmaFloor)
        : m_before{distinct}, m_after{distinct}, m_sigmaFloor{sigmaFloor}
    {
        for (CountedInterval& counted : m_before)
            counted.count = 0;
    }

    void passOne(std::size_t distinct)
    {
        ++m_before[distinct].count;
        --m_after[distinct].count;
    }

    // Begins from the fit of the last split asked for. Empty when there is no maximum.
    std::optional<double> logLikelihood()
    {
        std::vector<RegressionReading> rows = heldReadings(m_before, 0);
        const std::vector<RegressionReading> after = heldReadings(m_after, 1);
        const bool areTwo = !rows.empty() && !after.empty();
        rows.insert(rows.end(), after.begin(), after.end());
        if (rows.empty())
            return 0;
        const auto fit =
            intervalFitOf(rows, areTwo ? Predictor::Line : Predictor::Level, m_sigmaFloor, m_last);
        if (!fit)
            return std::nullopt;
        m_last = fit;
        return fit->logLikelihood;
    }

private:
    std::vector<CountedInterval> m_before;
    std::vector<CountedInterval> m_after;
    double m_sigmaFloor = 0;
    std::optional<IntervalFit> m_last;
};

struct Split
{
    std::size_t after = 0; // counted readings before it
    double logLikelihood = 0;
};

// Every split that leaves enough on both sides, in order; empty when one of them has no maximum.
std::vector<Split> splitsOf(const IntervalSet& set, const std::vector<Numbered>& readings, int minSegment,
                            double sigmaFloor)
{
    MovingSplit moving{set.distinct, sigmaFloor};
    const auto fewest = static_cast<std::size_t>(minSegment);
    std::vector<Split> splits;
    for (std::size_t k = 1; k + fewest <= readings.size(); ++k) {
        moving.passOne(readings[k - 1].distinct);
        if (k < fewest)
            continue;
        const auto logLikelihood = moving.logLikelihood();
        if (!logLikelihood)
            return {};
        splits.push_back({k, *logLikelihood});
    }
    return splits;
}

Split likeliestOf(const std::vector<Split>& splits)
{
    Split best = splits.front();
    for (const Split& split : splits)
        if (split.logLikelihood > best.logLikelihood + kSameLikelihood)
            best = split;
    return best;
}

std::vector<Split> likelySplits(std::vector<Split> splits)
{
    const auto isLikelier = [](const Split& a, const Split& b) { return a.logLikelihood > b.logLikelihood; };
    std::ranges::stable_sort(splits, isLikelier);
    const double most = splits.front().logLikelihood;
    double total = 0;
    for (const Split& split : splits)
        total += std::exp(split.logLikelihood - most);
    double share = 0;
    std::size_t count = 0;
    while (count < splits.size() && share < kLikelyShare)
        share += std::exp(splits[count++].logLikelihood - most) / total;
    splits.resize(count);
    std::ranges::sort(splits, {}, &Split::after);
    return splits;
}

// The chance of the largest of all splits' t by Bonferroni's inequality.
double bonferroniP(double t, int n, int minSegment)
{
    return std::min(1.0, 2 * (n - 2 * minSegment + 1) * studentBelow(-t, n - 2));
}

// The same from the tail of the maximum of a normed Brownian bridge (Gombay & Horvath 1996, J. Multivariate
// Analysis 56, from memory).
double gombayHorvathP(double t, int n, int minSegment)
{
    const double z = -normalQuantile(studentBelow(-t, n - 2));
    if (z < kSmallestZ)
        return 1;
    if (std::isinf(z))
        return 0;
    const double logRange = 2 * std::log((n - minSegment) / static_cast<double>(minSegment));
    return std::min(1.0, z * normalDensity(z) * (logRange - logRange / (z * z) + 4 / (z * z)));
}

std::optional<RankChange> rankChangeOf(std::span<const Interval> readings)
{
    std::vector<double> middles;
    std::vector<int> numbers;
    for (std::size_t i = 0; i < readings.size(); ++i) {
        if (!readings[i].isClosed())
            continue;
        middles.push_back(0.5 * readings[i].lower + 0.5 * readings[i].upper);
        numbers.push_back(static_cast<int>(i) + 1);
    }
    std::vector<double> sorted = middles;
    std::ranges::sort(sorted);
    if (sorted.empty() || !(sorted.back() > sorted.front()))
        return std::nullopt;

    const auto n = static_cast<double>(middles.size());
    RankChange change;
    double sumOfRanks = 0;
    for (std::size_t i = 0; i + 1 < middles.size(); ++i) {
        const auto [first, next] = std::equal_range(sorted.begin(), sorted.end(), middles[i]);
        sumOfRanks += 0.5 * static_cast<double>((first - sorted.begin()) + (next - sorted.begin()) + 1);
        const double u = std::abs(2 * sumOfRanks - static_cast<double>(i + 1) * (n + 1));
        if (u > change.k) {
            change.k = u;
            change.splitAfter = numbers[i];
        }
    }
    change.p = std::min(1.0, 2 * std::exp(-6 * change.k * change.k / (n * n * n + n * n)));
    return change;
}

bool areUsable(const ChangePointSettings& settings, double sigmaFloor, int readings)
{
    return settings.minSegment >= 2 && settings.minSegment <= readings / 2 &&
           readings >= kReadingsForChangePoint && sigmaFloor >= 0;
}

} // namespace

std::optional<ChangePoint> changePointOf(std::span<const Interval> readings,
                                         const ChangePointSettings& settings)
{
    const IntervalSet set = intervalSetOf(readings);
    const double sigmaFloor = settings.sigmaFloor.value_or(resolutionFloor(set.medianWidth));
    if (set.status != ReadingsStatus::Ok || !areUsable(settings, sigmaFloor, set.readings))
        return std::nullopt;
    const std::vector<Numbered> numbered = numberedReadings(readings, set.distinct);
    const auto oneMean = intervalFitOf(heldReadings(set.distinct, 0), Predictor::Level, sigmaFloor);
    const std::vector<Split> splits = splitsOf(set, numbered, settings.minSegment, sigmaFloor);
    if (!oneMean || splits.empty())
        return std::nullopt;

    const auto numberOf = [&](const Split& split) { return numbered[split.after - 1].number; };
    const Split best = likeliestOf(splits);
    const int n = set.readings;
    ChangePoint change;
    change.readings = n;
    change.splitAfter = numberOf(best);
    change.likelihoodRatio = std::max(0.0, 2 * (best.logLikelihood - oneMean->logLikelihood));
    change.equivalentT = std::sqrt((n - 2) * std::expm1(change.likelihoodRatio / n));
    if (!std::isfinite(change.equivalentT))
        return std::nullopt;
    change.pBonferroni = bonferroniP(change.equivalentT, n, settings.minSegment);
    change.pGombayHorvath = gombayHorvathP(change.equivalentT, n, settings.minSegment);
    change.p = std::min(change.pBonferroni, change.pGombayHorvath);
    for (const Split& split : likelySplits(splits))
        change.likelySplits.push_back(numberOf(split));
    change.ranks = rankChangeOf(readings);
    return change;
}

} // namespace rig::numbers
