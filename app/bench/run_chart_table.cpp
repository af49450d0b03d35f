#include "app/bench/run_chart.h"
#include "app/bench/tables.h"

#include <cstdio>

namespace rig::bench {
namespace {

constexpr std::uint64_t kRunChartSeed = 20301; // each row takes the next

void printRow(const Coupling& coupling, double shift, int baselines, std::uint64_t seed)
{
    const Flags found = flagsOf(coupling, shift, baselines, seed);
    std::printf("| %s | %d | %.2f | %.2f | %.1f %% | %.1f %% |\n", coupling.kind.name, coupling.readings,
                coupling.sigma, shift, 100 * found.within20, 100 * found.within100);
}

} // namespace

void printRunChart(int baselines)
{
    std::printf(
        "\nDrift flag within 20 and 100 readings after freezing, %d baselines a row; shift 0: false\n\n"
        "| readings | n | sigma | shift, mm | within 20 | within 100 |\n|---|---|---|---|---|---|\n",
        baselines);
    std::uint64_t seed = kRunChartSeed;
    for (const double sigma : {0.01, 0.03, 0.06}) {
        printRow({10, sigma, kExact}, 0, baselines, seed++);
        printRow({10, sigma, kTaper}, 0, baselines, seed++);
        for (const int readings : {5, 10, 20, 30})
            printRow({readings, sigma, kLeaves}, 0, baselines, seed++);
    }
    for (const double shift : {0.03, 0.06, 0.09})
        for (const ReadingKind& kind : {kExact, kLeaves})
            printRow({10, 0.03, kind}, shift, baselines, seed++);
}

} // namespace rig::bench
