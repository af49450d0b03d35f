#include "tests/pictures/aircraft_scene.h"
#include "tests/pictures/readable.h"

#include <QImage>
#include <QPainter>

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

const QSizeF kAircraftSize{900, 520};

double heightOfScore(const AircraftPicture& picture, double score)
{
    const double share = (score - picture.scoreAtBottom) / (picture.scoreAtTop - picture.scoreAtBottom);
    return picture.plot.bottom() - share * picture.plot.height();
}

// Thirty couplings whose last readings lie close together.
AircraftSeries thirtyCouplings()
{
    const AircraftSeries few = aircraftOf(20);
    AircraftSeries series;
    series.shifts = few.shifts;
    for (std::size_t i = 0; i < 30; ++i) {
        series.couplings.push_back(few.couplings[i % few.couplings.size()]);
        series.couplings.back().name = "Coupling number " + std::to_string(i);
    }
    return series;
}

} // namespace

TEST(Aircraft, NamesEveryCouplingAtItsOwnPlace)
{
    const AircraftSeries series = aircraftOf(54);
    const AircraftPicture picture = layoutAircraft(series, kRiggings, 2, kAircraftSize, {});
    for (const AircraftCoupling& coupling : series.couplings)
        EXPECT_TRUE(says(picture, QString::fromStdString(coupling.name))) << coupling.name;
    EXPECT_EQ(picture.curves.size(), 8U);
    EXPECT_EQ(picture.curves.back().role, Role::Accent) << "the chosen one lies on top";
}

TEST(Aircraft, IsReadableAtEverySizeByDateAndByRigging)
{
    for (const AircraftSeries& series : {aircraftOf(54), aircraftOf(1), thirtyCouplings()})
        for (const double scale : {1.0, 1.5})
            for (const QSizeF size : {kAircraftSize, QSizeF{500, 320}, QSizeF{1800, 900}}) {
                FontSizes fonts;
                fonts.scale = scale;
                expectReadable(layoutAircraft(series, kRiggings, 1, size, fonts), size);
                expectReadable(layoutAircraft(series, kDates, std::nullopt, size, fonts), size);
            }
}

TEST(Aircraft, SaysHowManyCouplingsHaveNoRoomForTheirNames)
{
    const AircraftPicture picture = layoutAircraft(thirtyCouplings(), kRiggings, 29, {700, 300}, {});
    EXPECT_TRUE(says(picture, "Coupling number 29")) << "the chosen one is always named";
    EXPECT_TRUE(says(picture, "and "));
}

TEST(Aircraft, TellsTwoCouplingsOfOneNameApartByTheirSides)
{
    AircraftSeries series = aircraftOf(10);
    series.couplings.resize(4);
    series.couplings[0].name = series.couplings[3].name = "Aileron";
    const AircraftPicture picture = layoutAircraft(series, kRiggings, {}, kAircraftSize, {});
    EXPECT_TRUE(says(picture, "Aileron, left"));
    EXPECT_TRUE(says(picture, "Aileron, right"));
}

TEST(Aircraft, DrawsAReadingInDoubtAsARingWithoutAMark)
{
    AircraftSeries series = aircraftOf(10);
    series.couplings.resize(1);
    series.shifts.clear();
    for (AircraftPoint& point : series.couplings[0].points)
        point = {point.when, point.rigging, 0.2, Verdict::Inside, false};
    series.couplings[0].points[4] = {at(2025, 1, 1), series.couplings[0].points[4].rigging, 3.5,
                                     Verdict::Outside, true};
    const AircraftPicture picture = layoutAircraft(series, kRiggings, {}, kAircraftSize, {});
    ASSERT_EQ(picture.curves.front().rings.size(), 1U);
    EXPECT_NEAR(picture.curves.front().rings.front().y(), heightOfScore(picture, 3.5), 0.01);
    EXPECT_TRUE(picture.marks.empty());
}

TEST(Aircraft, PointsOnWhereAReadingLiesBeyondTheScale)
{
    AircraftSeries series = aircraftOf(10);
    series.couplings[5].points[3].score = -11;
    series.couplings[5].points[3].verdict = Verdict::Outside;
    const AircraftPicture picture = layoutAircraft(series, kRiggings, {}, kAircraftSize, {});
    const auto points = [&picture](const DrawnArrow& arrow) {
        return !arrow.up && std::abs(arrow.tip.y() - picture.plot.bottom()) < 0.01;
    };
    EXPECT_TRUE(std::any_of(picture.arrows.begin(), picture.arrows.end(), points));
}

TEST(Aircraft, ShowsMeansAndTheChosenOnesWholeExtentWhenThereAreMoreReadingsThanPixels)
{
    AircraftSeries series = aircraftOf(12500);
    series.couplings[2].points[7000] = {series.couplings[2].points[7000].when, 7210, -3.9, Verdict::Outside,
                                        false};
    const AircraftPicture picture = layoutAircraft(series, kRiggings, 2, kAircraftSize, {});
    EXPECT_TRUE(says(picture, "lines are means"));
    for (const DrawnCurve& curve : picture.curves)
        EXPECT_LE(curve.pieces.front().size(), static_cast<int>(picture.plot.width()));
    const double reached = heightOfScore(picture, -3.9);
    EXPECT_TRUE(std::any_of(picture.boxes.begin(), picture.boxes.end(), [reached](const DrawnBox& box) {
        return box.role == Role::AccentFill && std::abs(box.where.bottom() - 0.5 - reached) < 1;
    })) << "the one low reading of the chosen coupling";
    EXPECT_TRUE(std::any_of(picture.marks.begin(), picture.marks.end(), [reached](const DrawnMark& mark) {
        return mark.shape == MarkShape::Diamond && std::abs(mark.where.center().y() - reached) < 6;
    }));
}

TEST(Aircraft, StaysQuickWithAHundredThousandReadings)
{
    const AircraftSeries series = aircraftOf(12500);
    QImage image{kAircraftSize.toSize(), QImage::Format_RGB32};
    double best = 1e9;
    for (int i = 0; i < 3; ++i) {
        const double begin = processorMilliseconds();
        QPainter painter{&image};
        paint(painter, layoutAircraft(series, kRiggings, 2, kAircraftSize, {}), Theme::light());
        best = std::min(best, processorMilliseconds() - begin);
    }
    EXPECT_LT(best, 160) << "ms; meant to stay under 16 in a release build";
}

TEST(Aircraft, SaysInWordsWhereEachCouplingStandsAndWhatWasShared)
{
    const QString words = layoutAircraft(aircraftOf(54), kRiggings, 2, kAircraftSize, {}).inWords;
    EXPECT_TRUE(words.contains("Left flap +"));
    EXPECT_TRUE(words.contains("Chosen: Left flap."));
    EXPECT_TRUE(words.contains("leaf set B"));
}

TEST(Aircraft, SaysThatThereIsNothingYet)
{
    const AircraftPicture picture = layoutAircraft({}, kRiggings, {}, kAircraftSize, {});
    EXPECT_EQ(picture.labels.size(), 1U);
    EXPECT_FALSE(picture.inWords.isEmpty());
}

TEST(Shifts, NamesTheCauseOfThreeCalledDaysOnce)
{
    const ShiftsPicture picture = layoutShifts(aircraftOf(54).shifts, {600, 140}, {});
    EXPECT_EQ(std::count_if(picture.labels.begin(), picture.labels.end(),
                            [](const DrawnLabel& label) { return label.text.contains("leaf set B"); }),
              1);
    EXPECT_EQ(std::count_if(picture.bars.begin(), picture.bars.end(),
                            [](const DrawnBox& bar) { return bar.role == Role::NearEdge; }),
              3);
}

TEST(Shifts, NameACauseOnceWhereASecondTimeWouldNotFitBeside)
{
    std::vector<ShiftDay> shifts = aircraftOf(54).shifts;
    for (ShiftDay& shift : shifts)
        shift.isCalled = false;
    for (const std::size_t day : {5U, 24U, 27U})
        shifts[day] = {shifts[day].when, shifts[day].rigging, 2, 8, true, "leaf set B"};
    const ShiftsPicture picture = layoutShifts(shifts, {600, 140}, {});
    EXPECT_EQ(std::count_if(picture.labels.begin(), picture.labels.end(),
                            [](const DrawnLabel& label) { return label.text == "leaf set B"; }),
              2)
        << "one for the fifth day, one for the two that lie close together";
}

TEST(Shifts, AreReadableHoweverManyDaysAreCalled)
{
    for (const int riggings : {1, 8, 54, 400})
        for (const double scale : {1.0, 1.5})
            for (const QSizeF size : {QSizeF{280, 130}, QSizeF{600, 210}, QSizeF{1200, 300}}) {
                std::vector<ShiftDay> shifts = aircraftOf(riggings).shifts;
                for (std::size_t i = 0; i < shifts.size(); i += 3) {
                    shifts[i].isCalled = true;
                    shifts[i].cause = i % 2 ? "J. Iver" : "";
                }
                FontSizes fonts;
                fonts.scale = scale;
                expectReadable(layoutShifts(shifts, size, fonts), size);
            }
}

TEST(Shifts, SayThatNoDayStandsOut)
{
    std::vector<ShiftDay> shifts = aircraftOf(6).shifts;
    for (ShiftDay& shift : shifts)
        shift.isCalled = false;
    EXPECT_TRUE(
        layoutShifts(shifts, {600, 140}, {}).inWords.contains("On none did all couplings move together"));
}

TEST(Shifts, HaveAScaleWhoseFiguresStandClearOfOneAnother)
{
    std::vector<ShiftDay> shifts = aircraftOf(54).shifts;
    for (const double median : {2.0, 3.2, 4.1, 5.5, 9.0})
        for (const double height : {120.0, 140.0, 170.0, 210.0, 300.0}) {
            shifts.front().median = median;
            const ShiftsPicture picture = layoutShifts(shifts, {600, height}, {});
            std::vector<QRectF> figures;
            for (const DrawnLabel& label : picture.labels)
                if (label.where.right() < picture.plot.left())
                    figures.push_back(label.where);
            ASSERT_GE(figures.size(), 3U);
            for (std::size_t i = 0; i < figures.size(); ++i)
                for (std::size_t j = 0; j < i; ++j)
                    EXPECT_FALSE(figures[i].adjusted(0, 0.5, 0, -0.5).intersects(figures[j]))
                        << median << " in " << height;
        }
}
