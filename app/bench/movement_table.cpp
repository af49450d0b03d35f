#include "app/bench/movement.h"
#include "app/bench/tables.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace rig::bench {
namespace {

constexpr std::uint64_t kMovementSeed = 20'400'000;
constexpr ReadingKind kFineLeaves{"leaves 0.02", 0.02};
constexpr int kSteady = 40;                // riggings before anything changes
constexpr double kWearPerRigging = 0.0023; // mm

std::uint64_t nextSeed()
{
    static std::uint64_t seed = kMovementSeed;
    return ++seed;
}

// How often the scatter of the last readings is said to have grown, while it stayed and after it doubled.
void printScatterRow(int readings, double sigma, const ReadingKind& kind, int couplings)
{
    int said = 0;
    int found = 0;
    for (int i = 0; i < couplings; ++i) {
        InventedCoupling steady{readings, sigma, kind, nextSeed()};
        InventedCoupling doubled{readings, sigma, kind, nextSeed()};
        for (std::size_t j = 0; j < kReadingsForScatterNow; ++j) {
            steady.rig(0);
            doubled.rig(0, 2);
        }
        said += steady.movement().scatter->hasGrown() ? 1 : 0;
        found += doubled.movement().scatter->hasGrown() ? 1 : 0;
    }
    std::printf("| %s | %d | %.3f | %.1f %% | %.0f %% |\n", kind.name, readings, sigma,
                100.0 * said / couplings, 100.0 * found / couplings);
}

struct Wearing
{
    int flagged = 0;
    int holds = 0; // the slope's 95 % interval holds the true slope
    double slope = 0;
    std::vector<double> onsets; // distance from the true one
};

Wearing wearingOf(int readings, double sigma, const ReadingKind& kind, int worn, int couplings)
{
    Wearing result;
    for (int i = 0; i < couplings; ++i) {
        InventedCoupling coupling{readings, sigma, kind, nextSeed()};
        for (int j = 0; j < kSteady; ++j)
            coupling.rig(0);
        for (int j = 1; j <= worn; ++j)
            coupling.rig(kWearPerRigging * j);
        const FittingMovement movement = coupling.movement();
        if (!movement.drift || !movement.drift->isRaised || !movement.line)
            continue;
        ++result.flagged;
        const double slope = kDriftUnit * kWearPerRigging;
        result.holds +=
            movement.line->slope95.lower <= slope && slope <= movement.line->slope95.upper ? 1 : 0;
        result.slope += movement.line->slope;
        result.onsets.push_back(std::abs(movement.readings[movement.drift->onset].rigging - (kSteady + 1)));
    }
    return result;
}

void printWearingRow(int readings, double sigma, const ReadingKind& kind, int worn, int couplings)
{
    Wearing one = wearingOf(readings, sigma, kind, worn, couplings);
    std::printf("| %s | %d | %.3f | %d | %.0f %% |", kind.name, readings, sigma, worn,
                100.0 * one.flagged / couplings);
    if (one.flagged == 0) {
        std::printf(" | | |\n");
        return;
    }
    std::ranges::sort(one.onsets);
    std::printf(" %.1f %% | %.2f | %.0f |\n", 100.0 * one.holds / one.flagged, one.slope / one.flagged,
                one.onsets[one.onsets.size() / 2]);
}

} // namespace

void printMovement(int couplings)
{
    std::printf("\nScatter of the last %zu readings said to have grown, %d couplings a row\n\n"
                "| readings | n | sigma | steady | doubled |\n|---|---|---|---|---|\n",
                kReadingsForScatterNow, couplings);
    for (const ReadingKind& kind : {kLeaves, kFineLeaves, kTaper})
        for (const double sigma : {0.015, 0.03})
            for (const int readings : {10, 24})
                printScatterRow(readings, sigma, kind, couplings);
    std::printf(
        "\nA coupling that wears by %.2f mm per 100 riggings after %d steady ones, %d couplings a row: "
        "flag raised at the end;\nof those, how often the 95 %% interval of the slope from the onset on "
        "holds the true one, its mean, and the onset's median error\n\n"
        "| readings | n | sigma | riggings worn | flagged | interval holds | mean slope | onset off by "
        "|\n|---|---|---|---|---|---|---|---|\n",
        kDriftUnit * kWearPerRigging, kSteady, couplings);
    for (const ReadingKind& kind : {kLeaves, kFineLeaves})
        for (const double sigma : {0.015, 0.03})
            for (const int worn : {20, 40, 60})
                printWearingRow(12, sigma, kind, worn, couplings);
}

} // namespace rig::bench
