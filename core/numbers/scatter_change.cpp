#include "core/numbers/scatter_change.h"

#include "core/numbers/distributions.h"
#include "core/numbers/interval_set.h"
#include "core/numbers/path_fit.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace rig::numbers {
namespace {

constexpr double kWidestScatter = 10; // mm: where ln sigma ends
constexpr double kScanInLog = 0.25;
constexpr double kWorthIntegrating = 20; // ln units below the top
constexpr int kCells = 40;

double logChanceOf(const Interval& left, double sigma)
{
    if (left.isExact()) {
        const double z = left.lower / sigma;
        const double tame = std::exp(-0.5 * z * z - kLnSqrtTwoPi) / sigma;
        return std::log((1 - kWildShare) * tame + kWildShare / kWildRange);
    }
    const double tame = std::exp(logNormalBetween(left.lower / sigma, left.upper / sigma));
    return std::log((1 - kWildShare) * tame + kWildShare * std::min(1.0, left.width() / kWildRange));
}

// What readings leave likely of ln sigma: cells of equal width with their share.
class SigmaLeft
{
public:
    SigmaLeft(std::span<const CountedInterval> left, double sigmaFloor)
    {
        const auto logAt = [&](double logSigma) {
            double sum = 0;
            for (const auto& [interval, count] : left)
                sum += count * logChanceOf(interval, std::exp(logSigma));
            return sum;
        };
        const Interval all{std::log(sigmaFloor), std::log(kWidestScatter)};
        Interval kept = keptOf(all, kScanInLog, logAt);
        if (kept.width() < 8 * kScanInLog) // a narrow one is scanned again
            kept = keptOf(kept, kept.width() / 24, logAt);
        m_begin = kept.lower;
        m_cell = kept.width() / kCells;
        double most = -kInfinity;
        for (int i = 0; i < kCells; ++i)
            most = std::max(most, m_share.emplace_back(logAt(m_begin + (i + 0.5) * m_cell)));
        double sum = 0;
        for (double& share : m_share)
            sum += share = std::exp(share - most);
        for (double& share : m_share)
            share /= sum;
    }

    double below(double logSigma) const
    {
        double rest = (logSigma - m_begin) / m_cell;
        double sum = 0;
        for (const double share : m_share) {
            if (rest <= 0)
                break;
            sum += share * std::min(1.0, rest);
            rest -= 1;
        }
        return sum;
    }
    double median() const
    {
        double sum = 0;
        for (std::size_t i = 0; i < m_share.size(); ++i) {
            if (sum + m_share[i] >= 0.5)
                return std::exp(m_begin + m_cell * (static_cast<double>(i) + (0.5 - sum) / m_share[i]));
            sum += m_share[i];
        }
        return std::exp(m_begin);
    }
    double exceeds(const SigmaLeft& other) const
    {
        double chance = 0;
        for (std::size_t i = 0; i < m_share.size(); ++i)
            chance += m_share[i] * other.below(m_begin + (static_cast<double>(i) + 0.5) * m_cell);
        return chance;
    }

private:
    // The part of a range that is worth integrating, one step to spare.
    template <typename LogAt> static Interval keptOf(const Interval& range, double step, const LogAt& logAt)
    {
        const int count = static_cast<int>(std::ceil(range.width() / step));
        std::vector<double> logs;
        for (int i = 0; i <= count; ++i)
            logs.push_back(logAt(range.lower + range.width() * i / count));
        const double enough = std::ranges::max(logs) - kWorthIntegrating;
        int first = 0;
        while (logs[static_cast<std::size_t>(first)] < enough)
            ++first;
        int last = count;
        while (logs[static_cast<std::size_t>(last)] < enough)
            --last;
        return {range.lower + range.width() * std::max(0, first - 1) / count,
                range.lower + range.width() * std::min(count, last + 1) / count};
    }

    double m_begin = 0;
    double m_cell = 1;
    std::vector<double> m_share;
};

} // namespace

bool ScatterChange::hasGrown(int couplings) const
{
    return ratio() >= kScatterGrown && chanceGrown >= 1 - kScatterFalsely / std::max(1, couplings);
}

bool ScatterChange::hasShrunk(int couplings) const
{
    return ratio() <= 1 / kScatterGrown && chanceGrown <= kScatterFalsely / std::max(1, couplings);
}

std::optional<ScatterChange> scatterChangeOf(std::span<const Interval> left, std::size_t riggings,
                                             double sigmaFloor)
{
    const std::size_t now = std::min({kMostReadingsNow, riggings, left.size()});
    if (now < kLeastReadingsNow || left.size() - now < kLeastReadingsNow || !(sigmaFloor > 0))
        return std::nullopt;
    const IntervalSet lastSet = intervalSetOf(left.last(now));
    const IntervalSet restSet = intervalSetOf(left.first(left.size() - now));
    if (lastSet.status != ReadingsStatus::Ok || restSet.status != ReadingsStatus::Ok)
        return std::nullopt;
    const SigmaLeft last{lastSet.distinct, sigmaFloor};
    const SigmaLeft rest{restSet.distinct, sigmaFloor};
    return ScatterChange{now, last.median(), rest.median(), last.exceeds(rest)};
}

} // namespace rig::numbers
