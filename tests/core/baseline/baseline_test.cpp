#include "core/baseline/baseline.h"
#include "tests/support/gaps.h"

#include <algorithm>
#include <gtest/gtest.h>

using namespace rig;
using namespace rig::tests;
using numbers::ReadingsStatus;

TEST(Baseline, HasNoBandWithoutReadings)
{
    const Baseline baseline = Baseline::from({});
    EXPECT_EQ(baseline.status(), ReadingsStatus::NoReadings);
    EXPECT_EQ(baseline.readings(), 0);
    EXPECT_FALSE(baseline.band());
    EXPECT_FALSE(baseline.posterior());
}

TEST(Baseline, HasNoBandFromFourReadings)
{
    const Baseline baseline = Baseline::from(repeated(aGap(500, 550), 4));
    EXPECT_EQ(baseline.status(), ReadingsStatus::Ok);
    EXPECT_EQ(baseline.readings(), 4);
    EXPECT_FALSE(baseline.band());
    EXPECT_TRUE(baseline.posterior());
}

TEST(Baseline, HasAThinBandFromFiveToNineReadings)
{
    for (const int count : {5, 9}) {
        const Baseline baseline = Baseline::from(repeated(aGap(500, 550), count));
        ASSERT_TRUE(baseline.band()) << count;
        EXPECT_TRUE(baseline.band()->isThin()) << count;
        EXPECT_EQ(baseline.band()->readings, count);
    }
}

TEST(Baseline, HasAFullBandFromTenReadings)
{
    const Baseline baseline = Baseline::from(tenLeafReadings());
    ASSERT_TRUE(baseline.band());
    const Band& band = *baseline.band();
    EXPECT_FALSE(band.isThin());
    EXPECT_FALSE(band.scatterAtCap);
    // Oracle, case leaf10, within its tolerance of 1e-5 mm.
    EXPECT_NEAR(band.inner.lower, 0.4702663403842473, 1e-5);
    EXPECT_NEAR(band.inner.upper, 0.5582719800489875, 1e-5);
    EXPECT_NEAR(band.outer.lower, 0.4315944050942768, 1e-5);
    EXPECT_NEAR(band.outer.upper, 0.5981633242470374, 1e-5);
    EXPECT_NEAR(band.median, 0.5131519753235336, 1e-5);
    EXPECT_NEAR(band.scatter, 0.019576039588698687, 1e-5);
}

TEST(Baseline, DoesNotDependOnTheOrderOfItsReadings)
{
    std::vector<GapInterval> readings = tenLeafReadings();
    const Baseline before = Baseline::from(readings);
    std::ranges::reverse(readings);
    const Baseline after = Baseline::from(readings);
    EXPECT_EQ(before.band()->outer.lower, after.band()->outer.lower);
    EXPECT_EQ(before.band()->inner.upper, after.band()->inner.upper);
}

TEST(Baseline, HasNoBandWhenEveryReadingIsOpen)
{
    const Baseline baseline = Baseline::from(repeated(anOpenGap(1000), 12));
    EXPECT_EQ(baseline.status(), ReadingsStatus::NoUpperBound);
    EXPECT_EQ(baseline.readings(), 12);
    EXPECT_FALSE(baseline.band());
    EXPECT_FALSE(baseline.posterior());
}

TEST(Baseline, HasABandWhenSomeReadingsAreOpen)
{
    const Baseline baseline = Baseline::from(together(
        together(repeated(aGap(900, 950), 3), repeated(aGap(950, 1000), 3)), repeated(anOpenGap(1000), 2)));
    ASSERT_TRUE(baseline.band());
    // Oracle, case mixed_open.
    EXPECT_NEAR(baseline.band()->outer.upper, 1.259606561762678, 1e-5);
}

TEST(Baseline, SaysWhenItsScatterIsWilderThanItCanFollow)
{
    // Oracle, case outlier: nine readings in one step and one 0.5 mm away.
    const Baseline baseline = Baseline::from(together(repeated(aGap(500, 550), 9), {aGap(1000, 1050)}));
    ASSERT_TRUE(baseline.band());
    EXPECT_TRUE(baseline.band()->scatterAtCap);
}

TEST(Baseline, KeepsABandThatReachesBelowNothing)
{
    // Oracle, case onesided_low: raw edges may be negative; they are shown as 0 and judged as they are.
    const Baseline baseline = Baseline::from(repeated(aGap(0, 50), 9));
    ASSERT_TRUE(baseline.band());
    EXPECT_NEAR(baseline.band()->outer.lower, -0.03835947018784234, 1e-5);
}
