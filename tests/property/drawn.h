#pragma once

#include "app/bench/draws.h"
#include "core/numbers/interval_posterior.h"

#include <gtest/gtest.h>

namespace rig::tests {

// RIG_DRAWS: how many inputs a property is tried on; set by the build, fewer under the sanitizers.
inline constexpr int kDraws = RIG_DRAWS;

// Readings of one invented coupling, as a person could bring them home.
struct Drawn
{
    std::vector<numbers::Interval> readings;
    bench::ReadingKind kind;
    std::vector<double> gaps; // the true ones
};

// Three to sixteen readings by leaf, taper gauge or exactly; now and then one far away or open upwards.
inline Drawn drawn(bench::Draws& draws)
{
    static constexpr bench::ReadingKind kKinds[] = {bench::kExact, bench::kTaper, bench::kLeaves};
    Drawn drawn;
    drawn.kind = kKinds[static_cast<int>(3 * draws.uniform())];
    const int count = 3 + static_cast<int>(14 * draws.uniform());
    const double mean = 0.2 + draws.uniform();
    const double sigma = 0.005 + 0.06 * draws.uniform();
    for (int i = 0; i < count; ++i) {
        const double away = draws.uniform() < 0.025 ? 0.3 : 0;
        drawn.gaps.push_back(mean + sigma * draws.normal() + away);
        drawn.readings.push_back(bench::readingOf(drawn.gaps.back(), drawn.kind));
        if (drawn.kind.step > 0 && draws.uniform() < 0.04)
            drawn.readings.back().upper = numbers::kInfinity;
    }
    return drawn;
}

// Calls `check` with kDraws sets of readings and their posterior; those all open upwards are drawn again.
template <typename Check> void forDrawnReadings(const Check& check)
{
    bench::Draws draws{20240317};
    for (int done = 0; done < kDraws && !testing::Test::HasFailure();) {
        const Drawn one = drawn(draws);
        const numbers::IntervalSet set = numbers::intervalSetOf(one.readings);
        if (set.status != numbers::ReadingsStatus::Ok)
            continue;
        SCOPED_TRACE(done++);
        const auto posterior = numbers::IntervalPosterior::of(set);
        ASSERT_TRUE(posterior);
        check(one, *posterior);
    }
}

} // namespace rig::tests
