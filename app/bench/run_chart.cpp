#include "app/bench/run_chart.h"

#include "core/numbers/drift.h"
#include "core/numbers/grading.h"

#include <map>
#include <utility>

namespace rig::bench {
namespace {

constexpr int kReadings = 100;

// A leaf set shows the same few steps again and again: each is scored once.
class Scores
{
public:
    explicit Scores(const numbers::IntervalPosterior& posterior) : m_posterior{posterior} {}

    double of(const numbers::Interval& reading)
    {
        const auto [known, isNew] = m_known.try_emplace({reading.lower, reading.upper});
        if (isNew)
            known->second = numbers::scoreOf(reading, m_posterior);
        return known->second;
    }

private:
    const numbers::IntervalPosterior& m_posterior;
    std::map<std::pair<double, double>, double> m_known;
};

} // namespace

Flags flagsOf(const Coupling& coupling, double shift, int baselines, std::uint64_t seed)
{
    Draws draws{seed};
    const numbers::ChartLimits limits = *numbers::chartLimitsFor(coupling.readings);
    Flags flags;
    for (int i = 0; i < baselines; ++i) {
        const double mean = 0.5 + 0.1 * draws.uniform();
        const auto readings = readingsOf(coupling.readings, mean, coupling.sigma, coupling.kind, draws);
        const auto posterior = *numbers::IntervalPosterior::of(numbers::intervalSetOf(readings));
        Scores known{posterior};
        std::vector<double> scores;
        for (const auto& reading : readingsOf(kReadings, mean + shift, coupling.sigma, coupling.kind, draws))
            scores.push_back(known.of(reading));
        const numbers::Chart chart = numbers::chartOf(scores, limits);
        if (chart.ewmaSignal && *chart.ewmaSignal < 20)
            flags.within20 += 1.0 / baselines;
        if (chart.ewmaSignal)
            flags.within100 += 1.0 / baselines;
    }
    return flags;
}

} // namespace rig::bench
