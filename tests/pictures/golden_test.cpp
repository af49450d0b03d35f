// The comparison with an agreed picture sees what a person would see, and nothing else.

#include "app/pictures/band_bar.h"
#include "app/pictures/trend.h"
#include "tests/pictures/golden.h"
#include "tests/pictures/trend_scene.h"

#include <array>
#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

constexpr QSize kTrend{900, 480};
constexpr std::array kVerdicts{Verdict::NoBandYet, Verdict::Outside, Verdict::CannotTell, Verdict::NearEdge,
                               Verdict::Inside};

QImage trendOf(const TrendSeries& series, const Theme& theme)
{
    return painted(layoutTrend(series, {TrendAxis::ByRigging, 0, 0}, kTrend, {}), kTrend, theme);
}

TrendSeries withVerdict(std::size_t reading, Verdict verdict)
{
    TrendSeries series = leftFlap();
    series.readings[reading].verdict = verdict;
    return series;
}

std::string places(const std::optional<Unlike>& spot)
{
    if (!spot)
        return "nowhere";
    return std::to_string(spot->pixels) + " pixels at " + std::to_string(spot->where.x()) + ", " +
           std::to_string(spot->where.y());
}

} // namespace

TEST(GoldenComparison, SeesOneReadingWithAnotherVerdict)
{
    constexpr std::size_t kReading = 55;
    for (const Theme& theme : {Theme::light(), Theme::dark()})
        for (const Verdict one : kVerdicts)
            for (const Verdict other : kVerdicts) {
                const auto spot = unlike(trendOf(withVerdict(kReading, one), theme),
                                         trendOf(withVerdict(kReading, other), theme));
                EXPECT_EQ(spot.has_value(), one != other)
                    << static_cast<int>(one) << " " << static_cast<int>(other) << ": " << places(spot);
            }
}

TEST(GoldenComparison, SeesAReadingThatIsMissing)
{
    TrendSeries without = leftFlap();
    without.readings.erase(without.readings.begin() + 55);
    EXPECT_TRUE(unlike(trendOf(without, Theme::light()), trendOf(leftFlap(), Theme::light())));
}

TEST(GoldenComparison, SeesEveryMarkOfAnotherShapeOrColour)
{
    const auto markOf = [](MarkShape shape, Role role) {
        Drawing drawing;
        drawing.marks.push_back({QRectF{40.3, 20.6, 11, 11}, shape, role});
        return painted(drawing, {90, 60}, Theme::light());
    };
    constexpr std::array kShapes{MarkShape::DashedRing, MarkShape::Diamond, MarkShape::HalfDisc,
                                 MarkShape::Triangle, MarkShape::DiscTick};
    constexpr std::array kRoles{Role::Inside, Role::NearEdge, Role::Outside, Role::Unknown};
    for (const MarkShape one : kShapes)
        for (const MarkShape other : kShapes)
            EXPECT_EQ(unlike(markOf(one, Role::Unknown), markOf(other, Role::Unknown)).has_value(),
                      one != other)
                << static_cast<int>(one) << " " << static_cast<int>(other);
    for (const MarkShape shape :
         {MarkShape::Diamond, MarkShape::HalfDisc, MarkShape::Triangle, MarkShape::DiscTick})
        for (const Role one : kRoles) // a dashed ring is of one colour only
            for (const Role other : kRoles)
                EXPECT_EQ(unlike(markOf(shape, one), markOf(shape, other)).has_value(), one != other)
                    << static_cast<int>(shape) << ": " << static_cast<int>(one) << " "
                    << static_cast<int>(other);
}

TEST(GoldenComparison, SeesAnotherFigure)
{
    const auto figure = [](const char* text) {
        Drawing drawing;
        drawing.labels.push_back(
            {QRectF{10, 10, 60, 20}, QLatin1String(text), Role::Ink, 12, false, false, {}});
        return painted(drawing, {90, 40}, Theme::light());
    };
    EXPECT_TRUE(unlike(figure("0.50"), figure("0.60")));
    EXPECT_TRUE(unlike(figure("0.50"), figure("0.5")));
}

TEST(GoldenComparison, OverlooksEdgesThatAnotherFontEngineDrawsALittleDifferently)
{
    const QImage before = trendOf(leftFlap(), Theme::light());
    // A quarter of an edge's darkness lost or won, in every third pixel of it.
    QImage after = before;
    Dice dice;
    int touched = 0;
    for (int y = 0; y < after.height(); ++y)
        for (int x = 1; x < after.width(); ++x) {
            const QColor own = before.pixelColor(x, y);
            const QColor left = before.pixelColor(x - 1, y);
            if (own == left || dice.even() > 0.33)
                continue;
            after.setPixelColor(x, y,
                                QColor{(3 * own.red() + left.red()) / 4, (3 * own.green() + left.green()) / 4,
                                       (3 * own.blue() + left.blue()) / 4});
            ++touched;
        }
    EXPECT_GT(touched, 1000);
    const auto spot = unlike(before, after);
    EXPECT_FALSE(spot) << places(spot);
}

TEST(GoldenComparison, CallsPicturesOfDifferentSizeUnlike)
{
    EXPECT_TRUE(unlike(QImage{10, 10, QImage::Format_RGB32}, QImage{10, 11, QImage::Format_RGB32}));
}
