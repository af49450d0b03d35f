#include "core/numbers/mixed_fit.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>

using namespace rig::numbers;

namespace {

// Five groups with both of two treatments, twice each.
struct Crossed
{
    std::vector<GroupedValue> values;
    std::vector<Column> columns{{}, {}};
};

Crossed crossed(double betweenGroups)
{
    Crossed all;
    for (int group = 0; group < 5; ++group)
        for (int i = 0; i < 4; ++i) {
            const double rough = (i < 2 ? 0.1 : -0.1) * (1 + 0.3 * group) * (i == 0 || i == 3 ? 1 : 0.6);
            all.values.push_back(
                {1 + (i % 2) * 0.5 + betweenGroups * std::cos(2.0 * group) + rough, 1, group});
            all.columns[0].push_back(1);
            all.columns[1].push_back(i % 2);
        }
    return all;
}

struct MeanSquares
{
    double groups = 0;
    double rest = 0;
};

// Of the balanced table, 4 and 14 degrees of freedom.
MeanSquares meanSquaresOf(const Crossed& all)
{
    double mean = 0;
    double treatment[2] = {0, 0};
    double group[5] = {0, 0, 0, 0, 0};
    for (std::size_t i = 0; i < 20; ++i) {
        mean += all.values[i].value / 20;
        treatment[i % 2] += all.values[i].value / 10;
        group[i / 4] += all.values[i].value / 4;
    }
    MeanSquares squares;
    for (const double one : group)
        squares.groups += 4 * std::pow(one - mean, 2) / 4;
    for (std::size_t i = 0; i < 20; ++i)
        squares.rest += std::pow(all.values[i].value - treatment[i % 2] - group[i / 4] + mean, 2) / 14;
    return squares;
}

} // namespace

// Balanced: REML is the analysis of variance, a difference within groups has its degrees of freedom, and
// those of a mean are Satterthwaite's formula for its two mean squares.
TEST(MixedFit, OfABalancedTableIsItsAnalysisOfVariance)
{
    const Crossed all = crossed(0.4);
    const auto fit = MixedFit::of(all.values, all.columns);
    const MeanSquares squares = meanSquaresOf(all);
    ASSERT_TRUE(fit);
    EXPECT_NEAR(fit->residualVariance(), squares.rest, 1e-9 * squares.rest);
    EXPECT_NEAR(fit->groupVariance(), (squares.groups - squares.rest) / 4, 1e-6);

    const MixedContrast difference = fit->contrast(std::vector<double>{0, 1});
    EXPECT_NEAR(difference.degreesOfFreedom, 14, 1e-5);
    EXPECT_NEAR(difference.standardError, std::sqrt(squares.rest / 5), 1e-7);

    const MixedContrast mean = fit->contrast(std::vector<double>{1, 0.5});
    EXPECT_NEAR(mean.standardError, std::sqrt(squares.groups / 20), 1e-7);
    EXPECT_NEAR(mean.degreesOfFreedom, 4, 1e-4);
    const MixedContrast first = fit->contrast(std::vector<double>{1, 0});
    const double a = squares.groups / 20;
    const double b = squares.rest / 20;
    EXPECT_NEAR(first.standardError, std::sqrt(a + b), 1e-7);
    EXPECT_NEAR(first.degreesOfFreedom, (a + b) * (a + b) / (a * a / 4 + b * b / 14), 1e-4);
}

TEST(MixedFit, WithoutGroupsIsLeastSquares)
{
    Crossed all = crossed(0);
    const auto fit = MixedFit::of(all.values, all.columns);
    ASSERT_TRUE(fit);
    EXPECT_EQ(fit->groupVariance(), 0);
    const MixedContrast difference = fit->contrast(std::vector<double>{0, 1});
    EXPECT_EQ(difference.degreesOfFreedom, 18);
    double mean[2] = {0, 0};
    double squares = 0;
    for (std::size_t i = 0; i < 20; ++i)
        mean[i % 2] += all.values[i].value / 10;
    for (std::size_t i = 0; i < 20; ++i)
        squares += std::pow(all.values[i].value - mean[i % 2], 2);
    EXPECT_NEAR(difference.estimate, mean[1] - mean[0], 1e-12);
    EXPECT_NEAR(difference.standardError, std::sqrt(squares / 18 / 5), 1e-12);
}

TEST(MixedFit, AWeightOfTwoIsTwoReadingsOfWhichOneIsKnown)
{
    Crossed all = crossed(0.4);
    for (GroupedValue& value : all.values)
        value.weight = 2;
    const auto doubled = MixedFit::of(all.values, all.columns);
    const auto plain = MixedFit::of(crossed(0.4).values, all.columns);
    ASSERT_TRUE(doubled && plain);
    EXPECT_NEAR(doubled->residualVariance(), 2 * plain->residualVariance(), 1e-9);
    EXPECT_NEAR(doubled->groupVariance(), plain->groupVariance(), 1e-6);
}

TEST(MixedFit, HasNoneWithoutItsConditions)
{
    Crossed all = crossed(0.4);
    EXPECT_FALSE(MixedFit::of(all.values, {}));
    EXPECT_FALSE(MixedFit::of(all.values, {all.columns[0], all.columns[0]}));
    EXPECT_FALSE(MixedFit::of(std::span{all.values}.first(2), {{1, 1}, {0, 1}}));
    all.values[3].weight = 0;
    EXPECT_FALSE(MixedFit::of(all.values, all.columns));
    all.values[3] = {std::numeric_limits<double>::quiet_NaN(), 1, 0};
    EXPECT_FALSE(MixedFit::of(all.values, all.columns));
    for (GroupedValue& value : all.values)
        value = {2, 1, value.group};
    EXPECT_FALSE(MixedFit::of(all.values, all.columns)); // nothing is left over
}
