#include "app/pictures/trend.h"
#include "tests/pictures/golden.h"
#include "tests/pictures/trend_scene.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

TEST(TrendGolden, LooksAsAgreedByRiggingInLight)
{
    const QSize size{900, 480};
    const TrendPicture picture = layoutTrend(leftFlap(), {TrendAxis::ByRigging, 0, 0}, size, {});
    expectLikeGolden(painted(picture, size, Theme::light()), "trend-by-rigging-light");
}

TEST(TrendGolden, LooksAsAgreedByDateInDark)
{
    const QSize size{900, 480};
    const TrendPicture picture = layoutTrend(leftFlap(), {TrendAxis::ByDate, 0, 0}, size, {});
    expectLikeGolden(painted(picture, size, Theme::dark()), "trend-by-date-dark");
}
