// The derivatives against differences of the function itself, in every region that has a formula of its own.

#include "core/numbers/distributions.h"
#include "core/numbers/interval_curve.h"

#include <cmath>
#include <gtest/gtest.h>

using namespace rig::numbers;

namespace {

void expectClose(double actual, double expected, double relative)
{
    EXPECT_NEAR(actual, expected, relative * std::max(1.0, std::abs(expected)));
}

} // namespace

TEST(IntervalCurve, HasTheDerivativesOfItsLogarithm)
{
    for (const auto kind :
         {IntervalKind::Closed, IntervalKind::OpenAbove, IntervalKind::OpenBelow, IntervalKind::Exact})
        for (const double m : {-40.0, -7.0, -1.3, 0.0, 0.4, 5.5, 33.0})
            for (const double d : {0.02, 0.7, 3.0, 20.0}) {
                SCOPED_TRACE(testing::Message() << static_cast<int>(kind) << ' ' << m << ' ' << d);
                const double h = 1e-3 * std::min(d, 0.2);
                const auto at = [&](double up, double out) {
                    return intervalCurveOf(kind, m + up * h, d + out * h);
                };
                const IntervalCurve curve = at(0, 0);
                expectClose(curve.m, (at(1, 0).log - at(-1, 0).log) / (2 * h), 1e-5);
                expectClose(curve.mm, (at(1, 0).m - at(-1, 0).m) / (2 * h), 1e-5);
                expectClose(curve.d, (at(0, 1).log - at(0, -1).log) / (2 * h), 1e-5);
                expectClose(curve.dd, (at(0, 1).d - at(0, -1).d) / (2 * h), 1e-5);
                expectClose(curve.md, (at(0, 1).m - at(0, -1).m) / (2 * h), 1e-5);
            }
}

TEST(IntervalCurve, IsSmoothWhereAnIntervalTurnsNarrow)
{
    for (const double m : {-6.0, -0.5, 0.0, 2.0}) {
        const IntervalCurve narrow = intervalCurveOf(IntervalKind::Closed, m, 0.49999e-4);
        const IntervalCurve wide = intervalCurveOf(IntervalKind::Closed, m, 0.50001e-4);
        EXPECT_NEAR(narrow.log - std::log(0.49999), wide.log - std::log(0.50001), 1e-9);
        EXPECT_NEAR(narrow.m, wide.m, 1e-9);
        EXPECT_NEAR(narrow.mm, wide.mm, 1e-6); // a difference of densities loses digits with 1 / width
        EXPECT_NEAR(narrow.m, -m, 1e-7);
    }
}

TEST(IntervalCurve, ComesDownToADensityWithTheWidth)
{
    const IntervalCurve exact = intervalCurveOf(IntervalKind::Exact, 0.7, 0);
    const IntervalCurve narrow = intervalCurveOf(IntervalKind::Closed, 0.7, 1e-12);
    EXPECT_NEAR(narrow.log - std::log(2e-12), exact.log, 1e-12);
    EXPECT_NEAR(narrow.m, exact.m, 1e-12);
    EXPECT_NEAR(narrow.mm, exact.mm, 1e-12);
    EXPECT_NEAR(narrow.d * 1e-12, 1, 1e-9);
}

TEST(IntervalCurve, IsConcaveFarOut)
{
    for (const double m : {-1e6, -3e3, 3e3, 1e6})
        for (const auto kind : {IntervalKind::Closed, IntervalKind::OpenAbove, IntervalKind::OpenBelow}) {
            const IntervalCurve curve = intervalCurveOf(kind, m, 1);
            EXPECT_LE(curve.mm, 0);
            EXPECT_GE(curve.mm, -1);
            EXPECT_TRUE(std::isfinite(curve.m));
        }
}

TEST(IntervalCurve, KnowsWhatIsOpen)
{
    EXPECT_EQ(intervalKindOf({0.5, 0.5}), IntervalKind::Exact);
    EXPECT_EQ(intervalKindOf({0.5, 0.55}), IntervalKind::Closed);
    EXPECT_EQ(intervalKindOf({0.5, kInfinity}), IntervalKind::OpenAbove);
    EXPECT_EQ(intervalKindOf({-kInfinity, 0.5}), IntervalKind::OpenBelow);
}
