#include "app/bench/coverage.h"
#include "app/bench/tables.h"

#include <array>
#include <cstdio>

namespace rig::bench {
namespace {

constexpr std::uint64_t kFirstSeed = 20261; // each setting takes the next
constexpr std::array kKinds{kExact, kLeaves, kTaper};

struct Row
{
    int readings = 0;
    double sigma = 0;
    std::array<Coverage, kKinds.size()> found; // as kKinds
};

std::vector<Row> rowsOf(int baselines)
{
    std::vector<Row> rows;
    std::uint64_t seed = kFirstSeed;
    for (const int readings : {3, 5, 10, 20}) {
        for (const double sigma : {0.01, 0.03, 0.06}) {
            Row row{readings, sigma, {}};
            for (std::size_t i = 0; i < kKinds.size(); ++i)
                row.found[i] = coverageOf({readings, sigma, kKinds[i]}, baselines, seed++);
            rows.push_back(row);
        }
    }
    return rows;
}

void printContents(const std::vector<Row>& rows)
{
    std::printf("| n | sigma |");
    for (const ReadingKind& kind : kKinds)
        std::printf(" %s: 95 %% | 99.73 %% |", kind.name);
    std::printf("\n|---|---|---|---|---|---|---|---|\n");
    for (const Row& row : rows) {
        std::printf("| %d | %.2f |", row.readings, row.sigma);
        for (const Coverage& found : row.found)
            std::printf(" %.3f / %.3f | %.4f / %.3f |", found.innerContent, found.innerWidth,
                        found.outerContent, found.outerWidth);
        std::printf("\n");
    }
}

void printGrades(const std::vector<Row>& rows)
{
    std::printf("| n | sigma |");
    for (std::size_t i = 1; i < kKinds.size(); ++i)
        std::printf(" %s: near edge or outside | outside | cannot tell |", kKinds[i].name);
    std::printf("\n|---|---|---|---|---|---|---|---|\n");
    for (const Row& row : rows) {
        std::printf("| %d | %.2f |", row.readings, row.sigma);
        for (std::size_t i = 1; i < kKinds.size(); ++i)
            std::printf(" %.2f %% | %.2f %% | %.2f %% |", 100 * row.found[i].nearEdgeOrOutside,
                        100 * row.found[i].outside, 100 * row.found[i].cannotTell);
        std::printf("\n");
    }
}

} // namespace

void printCoverage(int baselines)
{
    const std::vector<Row> rows = rowsOf(baselines);
    std::printf("Mean true content / mean full width (mm) of the bands, %d baselines a row\n\n", baselines);
    printContents(rows);
    std::printf("\nGrades of the later readings of the same couplings\n\n");
    printGrades(rows);
}

} // namespace rig::bench
