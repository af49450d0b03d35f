#include "app/pictures/trend.h"
#include "app/pictures/trend_layout.h"
#include "app/wording/formats.h"
#include "app/wording/trend_words.h"
#include "tests/pictures/trend_scene.h"

#include <QFontMetricsF>
#include <QLineF>

#include <algorithm>
#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

double heightOf(const TrendPicture& picture, double mm)
{
    const double share = (mm - picture.mmAtBottom) / (picture.mmAtTop - picture.mmAtBottom);
    return picture.plot.bottom() - share * picture.plot.height();
}

bool says(const TrendPicture& picture, const QString& part)
{
    return std::any_of(picture.labels.begin(), picture.labels.end(),
                       [&part](const DrawnLabel& label) { return label.text.contains(part); });
}

std::ptrdiff_t marksOf(const TrendPicture& picture, MarkShape shape)
{
    return std::count_if(picture.marks.begin(), picture.marks.end(),
                         [shape](const DrawnMark& mark) { return mark.shape == shape; });
}

// One fitting, ten readings inside its band.
TrendSeries tenReadings()
{
    TrendSeries series;
    series.fittings = {{at(2025, 4, 1, 14), 0.5, bandAround(0.60, 0.06, 0.09), ""}};
    for (unsigned i = 0; i < 10; ++i)
        series.readings.push_back(
            readingOf(leafReading(i % 2 ? 0.60 : 0.57), 1.0 + i, at(2025, 4, 2 + i), Verdict::Inside));
    return series;
}

TrendReading anotherReading(const TrendSeries& series, const GapInterval& gap, Verdict verdict)
{
    TrendReading reading =
        readingOf(gap, series.readings.back().rigging + 1, series.readings.back().when, verdict);
    reading.when.utcSeconds += 86400;
    return reading;
}

struct Canvas
{
    QSizeF size;
    double scale;

    friend std::ostream& operator<<(std::ostream& out, const Canvas& canvas)
    {
        return out << canvas.size.width() << 'x' << canvas.size.height() << " at " << canvas.scale;
    }
};

class TrendCanvas : public testing::TestWithParam<Canvas>
{
};

void expectReadable(const TrendPicture& picture, const Canvas& canvas)
{
    const QRectF all{QPointF{}, canvas.size};
    EXPECT_FALSE(picture.labels.empty()) << "there is nothing to read";
    for (std::size_t i = 0; i < picture.labels.size(); ++i) {
        const DrawnLabel& label = picture.labels[i];
        const QFontMetricsF metrics{fontOf(label.pixels, label.strong ? Weight::SemiBold : Weight::Regular)};
        EXPECT_TRUE(all.contains(label.where)) << label.text.toStdString();
        EXPECT_LE(metrics.horizontalAdvance(label.text), label.where.width() + 0.5)
            << label.text.toStdString();
        for (std::size_t j = i + 1; j < picture.labels.size(); ++j)
            EXPECT_FALSE(label.where.intersects(picture.labels[j].where))
                << label.text.toStdString() << " | " << picture.labels[j].text.toStdString();
    }
    for (const DrawnBox& bar : picture.bars)
        EXPECT_TRUE(picture.plot.adjusted(-3, -0.01, 3, 0.01).contains(bar.where) ||
                    picture.partLane.adjusted(-3, -0.01, 3, 0.01).contains(bar.where));
    EXPECT_GE(picture.plot.height(), 60 * canvas.scale);
}

// More events than there is room for, and several fittings close together.
TrendSeries crowded()
{
    TrendSeries series = leftFlap();
    for (unsigned i = 0; i < 40; ++i) {
        TrendEvent event{at(2025, 1, 1), 211.0 + i * 1.3, i % 9 == 0 ? EventKind::Annual : EventKind::Note,
                         "cleaned, greased and looked at with a mirror"};
        event.when.utcSeconds += static_cast<std::int64_t>(i) * 6 * 86400;
        series.events.push_back(event);
    }
    series.fittings.push_back(
        {at(2025, 5, 1, 14), 229.5, bandAround(1.17, 0.05, 0.09), "locknut turned by a quarter"});
    series.fittings.push_back({at(2025, 5, 12, 14), 231.5, std::nullopt, "plunger changed"});
    return series;
}

} // namespace

TEST(Trend, DrawsAReadingFromTheLeafThatEntersToTheOneThatDoesNot)
{
    const TrendSeries series = tenReadings();
    const TrendPicture picture = layoutTrend(series, kRiggings, kUsual, {});
    const auto place = placeOf(series, picture, 0);
    ASSERT_TRUE(place);
    EXPECT_NEAR(place->bottom(), heightOf(picture, 0.55), 1e-6);
    EXPECT_NEAR(place->top(), heightOf(picture, 0.60), 1e-6);
}

TEST(Trend, DrawsAReadingInDoubtHollowAndSaysWhy)
{
    TrendSeries series = tenReadings();
    series.readings[4].inDoubt = true;
    series.readings[4].note = "leaf set B in quarantine";
    const TrendPicture picture = layoutTrend(series, kRiggings, kUsual, {});
    EXPECT_EQ(std::count_if(picture.bars.begin(), picture.bars.end(),
                            [](const DrawnBox& bar) { return bar.hollow; }),
              1);
    const QString said = TrendWords::reading(series.readings[4]);
    EXPECT_TRUE(said.contains("In doubt")) << said.toStdString();
    EXPECT_TRUE(said.contains("leaf set B in quarantine"));
    EXPECT_TRUE(picture.inWords.contains("1 reading in doubt"));
}

TEST(Trend, SaysWhereTheDriftBeganAndWhereTheMeanMadeAStep)
{
    TrendSeries series = leftFlap();
    series.onset = TrendPlace{at(2025, 6, 1), 236};
    series.change = TrendPlace{at(2025, 5, 18), 233};
    const TrendPicture byRigging = layoutTrend(series, kRiggings, kUsual, {});
    EXPECT_TRUE(says(byRigging, "drift from about rigging 236"));
    EXPECT_TRUE(says(byRigging, "step about rigging 233"));
    const TrendPicture byDate = layoutTrend(series, kDates, kUsual, {});
    EXPECT_TRUE(says(byDate, "drift from about 1 Jun 2025"));
    EXPECT_TRUE(says(byDate, "step about 18 May 2025"));
    EXPECT_TRUE(byDate.inWords.contains("Drift from about rigging 236, 1 Jun 2025."));
    const TrendPicture before = layoutTrend(series, {TrendAxis::ByRigging, 208, 225}, kUsual, {});
    EXPECT_FALSE(says(before, "drift from")) << "it lies to the right of what is shown";
}

TEST(Trend, DashesAForecastOfManyPiecesAsOneLine)
{
    const TrendPicture picture = layoutTrend(leftFlap(), kRiggings, kUsual, {});
    double length = 0;
    int pieces = 0;
    for (const DrawnLine& line : picture.linesOver) {
        if (!line.dashed)
            continue;
        EXPECT_NEAR(line.dashesBegun, length, 1e-6);
        length += QLineF{line.from, line.to}.length();
        ++pieces;
    }
    EXPECT_EQ(pieces, 3);
}

TEST(Trend, KeepsOnsetAndStepReadableWhereverTheyLie)
{
    for (const double rigging : {209.6, 223.5, 236.0, 249.0, 262.9})
        for (const double scale : {1.0, 1.5})
            for (const QSizeF size : {kUsual, QSizeF{500, 312}}) {
                TrendSeries series = crowded();
                series.onset = TrendPlace{at(2025, 6, 1), rigging};
                series.change = TrendPlace{at(2025, 6, 1), rigging};
                FontSizes fonts;
                fonts.scale = scale;
                for (const TrendWindow& window : {kRiggings, kDates}) {
                    const TrendPicture picture = layoutTrend(series, window, size, fonts);
                    expectReadable(picture, {size, scale});
                    EXPECT_TRUE(says(picture, "drift from"));
                    EXPECT_TRUE(says(picture, "step about"));
                }
            }
}

TEST(Trend, DrawsEachFittingsBandOverItsOwnReadingsOnly)
{
    const TrendSeries series = leftFlap();
    const TrendPicture picture = layoutTrend(series, kRiggings, kUsual, {});
    std::vector<QRectF> bands;
    for (const DrawnBox& box : picture.boxes)
        if (box.role == Role::Band)
            bands.push_back(box.where);
    ASSERT_EQ(bands.size(), 2U);
    EXPECT_NEAR(bands[0].top(), heightOf(picture, 1.18), 1e-6);
    EXPECT_NEAR(bands[1].bottom(), heightOf(picture, 1.11), 1e-6);
    EXPECT_NEAR(bands[0].right(), bands[1].left(), 1e-6);
    EXPECT_LT(placeOf(series, picture, 14)->right(), bands[1].left()); // rigging 223
    EXPECT_GT(placeOf(series, picture, 15)->left(), bands[0].right()); // rigging 224
}

TEST(Trend, GoesOnDrawingTheFirstBandFaintlyToTheRightEnd)
{
    const TrendPicture picture = layoutTrend(leftFlap(), kRiggings, kUsual, {});
    for (const double edge : {1.04, 1.18}) {
        const auto line = std::find_if(picture.lines.begin(), picture.lines.end(), [&](const DrawnLine& one) {
            return one.dashed && one.from.y() == one.to.y() &&
                   std::abs(one.from.y() - heightOf(picture, edge)) < 0.01;
        });
        ASSERT_NE(line, picture.lines.end()) << edge;
        EXPECT_NEAR(line->to.x(), picture.plot.right(), 1e-6);
    }
    EXPECT_TRUE(says(picture, "first band"));
}

TEST(Trend, KeepsPartSeatedReadingsApartSoThatTheLockedScaleIsNotSquashed)
{
    const TrendSeries series = leftFlap();
    const TrendPicture picture = layoutTrend(series, kRiggings, kUsual, {});
    EXPECT_LT(picture.mmAtTop, 1.5);
    ASSERT_FALSE(picture.partLane.isNull());
    EXPECT_LE(picture.partLane.bottom(), picture.plot.top()); // wider than locked: above
    EXPECT_TRUE(picture.partLane.contains(*placeOf(series, picture, 10)));
    EXPECT_TRUE(says(picture, "part-seated"));
    EXPECT_TRUE(says(picture, QStringLiteral("2.35–2.40")));
}

TEST(Trend, PutsPartSeatedReadingsBelowWhereTheyAreNarrowerThanLocked)
{
    TrendSeries series = tenReadings();
    series.readings[4].state = SeatState::PartSeated;
    series.readings[4].interval = leafReading(0.12);
    const TrendPicture picture = layoutTrend(series, kRiggings, kUsual, {});
    EXPECT_GE(picture.partLane.top(), picture.plot.bottom());
    EXPECT_GT(picture.mmAtBottom, 0.2);
}

TEST(Trend, SetsWhatWasNotSecuredApartAndHatchesNothingForIt)
{
    TrendSeries series = tenReadings();
    series.readings[4].state = SeatState::NotSecured;
    const TrendPicture picture = layoutTrend(series, kRiggings, kUsual, {});
    ASSERT_FALSE(picture.partLane.isNull());
    EXPECT_TRUE(says(picture, "not secured"));
    EXPECT_FALSE(says(picture, "part-seated"));
    for (const DrawnBox& box : picture.boxes)
        EXPECT_FALSE(box.hatched && box.where == picture.partLane);
    EXPECT_TRUE(TrendWords::reading(series.readings[4]).contains("found not secured"));
}

TEST(Trend, EndsAReadingWithoutUpperBoundInAnArrow)
{
    TrendSeries series = tenReadings();
    EXPECT_TRUE(layoutTrend(series, kRiggings, kUsual, {}).arrows.empty());
    series.readings[3].interval.refuses.reset();
    const TrendPicture picture = layoutTrend(series, kRiggings, kUsual, {});
    ASSERT_EQ(picture.arrows.size(), 1U);
    EXPECT_TRUE(picture.arrows[0].up);
    EXPECT_LT(picture.arrows[0].tip.y(), placeOf(series, picture, 3)->top());
}

TEST(Trend, DrawsWhatWasSetAsideHollow)
{
    TrendSeries series = tenReadings();
    series.readings[5].setAside = true;
    const TrendPicture picture = layoutTrend(series, kRiggings, kUsual, {});
    EXPECT_EQ(std::count_if(picture.bars.begin(), picture.bars.end(),
                            [](const DrawnBox& bar) { return bar.hollow; }),
              1);
}

TEST(Trend, ShowsEveryVerdictThatIsNotInsideByItsShapeToo)
{
    TrendSeries series = tenReadings();
    series.readings.push_back(anotherReading(series, leafReading(0.66), Verdict::NearEdge));
    series.readings.push_back(anotherReading(series, leafReading(0.75), Verdict::Outside));
    series.readings.push_back(anotherReading(series, leafReading(0.60), Verdict::CannotTell));
    series.readings.push_back(anotherReading(series, leafReading(0.60), Verdict::NoBandYet));
    const TrendPicture picture = layoutTrend(series, kRiggings, kUsual, {});
    EXPECT_EQ(picture.marks.size(), 4U);
    for (const MarkShape shape :
         {MarkShape::Triangle, MarkShape::Diamond, MarkShape::HalfDisc, MarkShape::DashedRing})
        EXPECT_EQ(marksOf(picture, shape), 1);
}

TEST(Trend, WritesTheValueOfAReadingTooFarOffForTheScale)
{
    TrendSeries series = tenReadings();
    const double before = layoutTrend(series, kRiggings, kUsual, {}).mmAtTop;
    series.readings.push_back(anotherReading(series, leafReading(3.01), Verdict::Outside));
    const TrendPicture picture = layoutTrend(series, kRiggings, kUsual, {});
    EXPECT_NEAR(picture.mmAtTop, before, 1e-9);
    EXPECT_EQ(marksOf(picture, MarkShape::Diamond), 1);
    EXPECT_EQ(picture.arrows.size(), 1U);
    EXPECT_TRUE(says(picture, QStringLiteral("3.00–3.05")));
}

TEST(Trend, StandsTwoReadingsOfOneRiggingSideBySide)
{
    TrendSeries series = tenReadings();
    TrendReading second = series.readings[4];
    second.when.utcSeconds += 600;
    series.readings.insert(series.readings.begin() + 5, second);
    const TrendPicture picture = layoutTrend(series, kRiggings, kUsual, {});
    EXPECT_FALSE(placeOf(series, picture, 4)->intersects(*placeOf(series, picture, 5)));
}

TEST(Trend, SaysInASentenceThatNothingWasReadYet)
{
    for (const QSizeF size : {QSizeF{500, 260}, kUsual}) {
        const TrendPicture picture = layoutTrend({}, kDates, size, {});
        ASSERT_EQ(picture.labels.size(), 1U);
        EXPECT_TRUE(picture.labels[0].text.startsWith("No readings yet"));
        EXPECT_TRUE(picture.lines.empty());
        EXPECT_TRUE(picture.boxes.empty());
    }
}

TEST(Trend, NamesTheAnnualInsideTheWindowAndPointsToALaterOne)
{
    TrendSeries series = leftFlap();
    EXPECT_TRUE(says(layoutTrend(series, kDates, kUsual, {}), "annual, 20 Feb 2026"));
    const TrendWindow early{TrendAxis::ByRigging, 212, 230};
    EXPECT_TRUE(says(layoutTrend(series, early, kUsual, {}), QStringLiteral("→")));
}

TEST(Trend, KeepsATickForEveryEventWhateverWordsFit)
{
    const TrendSeries series = crowded();
    const TrendPicture picture = layoutTrend(series, kRiggings, {500, 260}, {});
    const auto ticks =
        std::count_if(picture.lines.begin(), picture.lines.end(), [&picture](const DrawnLine& line) {
            return line.from.x() == line.to.x() && line.from.y() == picture.eventLane.top() &&
                   line.role == Role::InkSoft;
        });
    EXPECT_GE(ticks, 38); // 45 events, a few of them within half a pixel of another
}

TEST(Trend, TellsEverythingInWordsAndThatItIsOneSignOnly)
{
    const QString words = layoutTrend(leftFlap(), kRiggings, kUsual, {}).inWords;
    EXPECT_TRUE(words.startsWith("58 reading")) << words.toStdString();
    EXPECT_TRUE(words.contains("1 outside")) << words.toStdString();
    EXPECT_TRUE(words.contains("3 part-seated")) << words.toStdString();
    EXPECT_TRUE(words.contains("one sign only"));
}

TEST_P(TrendCanvas, LetsNoWordsTouchOrLeaveThePicture)
{
    const Canvas& canvas = GetParam();
    const FontSizes fonts{canvas.scale};
    for (const TrendSeries& series : {leftFlap(), crowded(), tenReadings()})
        for (const TrendWindow& whole : {kRiggings, kDates}) {
            TrendPicture picture = layoutTrend(series, whole, canvas.size, fonts);
            expectReadable(picture, canvas);
            for (const double about : {0.0, 0.35, 0.8, 1.0})
                for (const double factor : {2.0, 7.0, 100.0}) {
                    SCOPED_TRACE(testing::Message() << "zoom " << factor << " about " << about);
                    const TrendWindow near = zoomed(series, picture.window, factor, about);
                    expectReadable(layoutTrend(series, near, canvas.size, fonts), canvas);
                }
        }
}

INSTANTIATE_TEST_SUITE_P(AtEverySize, TrendCanvas,
                         testing::Values(Canvas{{500, 260}, 1.0}, Canvas{{500, 260}, 1.5},
                                         Canvas{{640, 300}, 1.25}, Canvas{{900, 340}, 1.5},
                                         Canvas{{900, 480}, 1.0}, Canvas{{1280, 560}, 1.5},
                                         Canvas{{1900, 900}, 1.0}));

TEST(Trend, ShadesWhatLiesOutsideThePeriodAndNamesItsEnds)
{
    TrendSeries series = leftFlap();
    series.fittings.resize(1); // whose names would have the room
    series.annualDue.reset();
    series.annualRigging.reset();
    const auto shades = [](const TrendPicture& picture) {
        return std::ranges::count_if(
            picture.boxes, [](const DrawnBox& box) { return box.role == Role::InkSoft && box.opacity < 1; });
    };
    const auto says = [](const TrendPicture& picture, const char* words) {
        return std::ranges::any_of(picture.labels, [words](const DrawnLabel& label) {
            return label.text.startsWith(QLatin1String(words));
        });
    };
    EXPECT_EQ(shades(layoutTrend(series, kRiggings, kUsual, {})), 0);
    const TrendReading& first = series.readings[series.readings.size() / 4];
    const TrendReading& last = series.readings[3 * series.readings.size() / 4];
    series.period = TrendPeriod{{first.when, first.rigging - 0.5}, {last.when, last.rigging + 0.5}};
    for (const TrendWindow& window : {kRiggings, kDates}) {
        const TrendPicture picture = layoutTrend(series, window, kUsual, {});
        EXPECT_EQ(shades(picture), 2);
        EXPECT_TRUE(says(picture, "period from"));
        EXPECT_TRUE(says(picture, "period to"));
        EXPECT_TRUE(picture.inWords.contains("what lies outside it is shaded"));
    }
    const TrendReading& newest = series.readings.back();
    series.period->ends = {newest.when, newest.rigging + 0.5};
    const TrendPicture untilNow = layoutTrend(series, kRiggings, kUsual, {});
    EXPECT_EQ(shades(untilNow), 1);
    const double end = trend::acrossOf(untilNow).at(newest.rigging + 0.5);
    EXPECT_TRUE(std::ranges::none_of(untilNow.lines, [end](const DrawnLine& line) {
        return line.dashed && std::abs(line.from.x() - end) < 0.01;
    }));
}

TEST(Trend, ShowsNoHourOfAReadingOfATableThatDidNotTellWhen)
{
    TrendSeries series = tenReadings();
    EXPECT_TRUE(TrendWords::reading(series.readings[4]).contains(Formats{}.time(series.readings[4].when)));
    series.readings[4].isTimeKnown = false;
    const QString said = TrendWords::reading(series.readings[4]);
    EXPECT_FALSE(said.contains(Formats{}.time(series.readings[4].when))) << said.toStdString();
}
