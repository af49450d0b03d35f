// What Trends says of movement: line and fan, sentences, what to look at, all couplings together, looking
// back.

#include "app/pages/trends/trends_page.h"
#include "app/widgets/aircraft_widget.h"
#include "app/widgets/trend_widget.h"
#include "tests/pages/trends_scene.h"

#include <QLabel>
#include <QPushButton>
#include <QtTest>

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

class TrendsMovement : public testing::Test
{
protected:
    // Twenty-four riggings, every fifth day from April on; from the thirteenth on each reads one leaf higher
    // than the last but one.
    void tellADrift()
    {
        scene.baselineDay(kBaselineDay);
        for (int i = 0; i < 24; ++i)
            scene.rig(dayOf(2026, 4, 4) + std::chrono::days{5 * i}, 500 + (i < 12 ? 0 : 50 * ((i - 10) / 2)));
    }
    void annualOn(Day day)
    {
        Airframe airframe = must(store.records().airframes()).front();
        airframe.annualDue = day;
        must(store.records().add(airframe));
    }
    void tellCalm()
    {
        scene.baselineDay(kBaselineDay);
        for (int i = 0; i < 24; ++i)
            scene.rig(dayOf(2026, 4, 4) + std::chrono::days{5 * i}, i % 3 ? 500 : 450);
    }
    void show()
    {
        page.resize(1280, 744);
        page.show();
        page.showAirframe(hangar.airframe);
        QCoreApplication::processEvents();
    }
    QString text(const char* name) { return page.findChild<QLabel*>(name)->text(); }
    TrendsView view(const std::optional<PeriodOffer>& period = {})
    {
        return must(TrendsPresenter{store.records(), store.clock()}.view(hangar.airframe, period));
    }

    TrendsScene scene;
    TempStore& store{scene.store};
    Hangar& hangar{scene.hangar};
    TrendsPage page{store.records(), store.clock()};
};

} // namespace

TEST_F(TrendsMovement, DrawsTheLineFromTheOnsetAndTheFanToTheAnnual)
{
    tellADrift();
    annualOn(dayOf(2027, 2, 20));
    const TrendsView all = view();
    const TrendSeries& series = all.find(hangar.leftAileron)->series;
    ASSERT_TRUE(series.onset);
    EXPECT_NEAR(series.onset->rigging, 13, 2);
    ASSERT_EQ(series.path.size(), 2U);
    EXPECT_EQ(series.path.front().rigging, series.onset->rigging);
    EXPECT_EQ(series.path.back().rigging, 24);
    EXPECT_LT(series.path.front().middle, series.path.back().middle);
    ASSERT_GT(series.forecast.size(), 2U);
    EXPECT_EQ(series.forecast.front().rigging, 24);
    EXPECT_EQ(series.forecast.back().rigging, *series.annualRigging);
    EXPECT_LT(series.forecast.back().lower, series.forecast.back().middle);
    EXPECT_GT(series.forecast.back().upper - series.forecast.back().lower,
              series.forecast.front().upper - series.forecast.front().lower);
}

TEST_F(TrendsMovement, SaysTheDriftWithItsIntervalAndWhatToLookAtWithoutADiagnosis)
{
    tellADrift();
    annualOn(dayOf(2027, 2, 20));
    show();
    EXPECT_TRUE(text("movementTitle").startsWith("The gap has been growing since about rigging 1"))
        << text("movementTitle").toStdString();
    EXPECT_TRUE(text("movementFigures").contains("mm per 100 riggings (95 % interval"));
    EXPECT_TRUE(text("movementFigures").contains("lies outside the band is"));
    EXPECT_TRUE(text("movementLookAt").contains("The gap grows slowly."));
    EXPECT_TRUE(text("movementLookAt").contains("For: the engineer."));
    EXPECT_TRUE(text("movementLookAt").contains("cannot tell which"));
}

TEST_F(TrendsMovement, SaysThatNoneShowsInStillReadingsAndNamesNoCause)
{
    tellCalm();
    show();
    EXPECT_TRUE(text("movementTitle").startsWith("No drift"));
    EXPECT_FALSE(page.findChild<QLabel*>("movementLookAt")->isVisible());
}

TEST_F(TrendsMovement, DoesNotSpeakOfMovementWithTooFewReadings)
{
    scene.baselineDay(kBaselineDay);
    scene.rig(dayOf(2026, 4, 4), 500);
    show();
    EXPECT_TRUE(text("movementTitle").startsWith("Too few readings"));
    EXPECT_TRUE(view().find(hangar.leftAileron)->series.path.empty());
}

TEST_F(TrendsMovement, LaysAllCouplingsTogetherByOneLetterAndBackByEnter)
{
    tellCalm();
    show();
    QTest::keyClick(&page, Qt::Key_A);
    auto* aircraft = page.findChild<AircraftWidget*>("aircraftChart");
    EXPECT_TRUE(aircraft->isVisible());
    EXPECT_TRUE(page.findChild<QPushButton*>("aircraftButton")->isChecked());
    EXPECT_FALSE(text("aircraftShifts").isEmpty());
    EXPECT_FALSE(aircraft->accessibleName().isEmpty());
    QTest::keyClick(&page, Qt::Key_Return);
    EXPECT_FALSE(aircraft->isVisible());
    EXPECT_FALSE(page.findChild<QPushButton*>("aircraftButton")->isChecked());
}

TEST_F(TrendsMovement, PutsEveryScoredReadingAndRiggingDayIntoTheAircraftView)
{
    tellCalm();
    const TrendsView all = view();
    ASSERT_EQ(all.aircraft.couplings.size(), all.couplings.size());
    EXPECT_EQ(all.aircraft.couplings.front().points.size(), 24U);
    EXPECT_EQ(all.aircraft.shifts.size(), 24U);
    for (const ShiftDay& day : all.aircraft.shifts)
        EXPECT_FALSE(day.isCalled) << "one coupling alone is no aircraft";
}

TEST_F(TrendsMovement, LooksBackOnAPeriodAndComesBackByEscape)
{
    tellADrift();
    scene.event(dayOf(2026, 9, 1), EventKind::Annual, "");
    show();
    EXPECT_TRUE(text("movementTitle").startsWith("The gap has been growing"))
        << "nothing was read since the annual, so it begins with the period before";
    EXPECT_TRUE(page.findChild<QLabel*>("lookingBack")->isVisible());
    EXPECT_TRUE(text("movementTitle").startsWith("The gap has been growing"));
    QTest::keyClick(&page, Qt::Key_Escape);
    EXPECT_FALSE(page.findChild<QLabel*>("lookingBack")->isVisible());
    EXPECT_FALSE(text("movementTitle").startsWith("The gap has been growing"));
}

TEST_F(TrendsMovement, TellsTheBandOfTheFittingThatHeldAtTheEndOfThePeriod)
{
    tellADrift();
    scene.refit(dayOf(2026, 9, 1), "ball replaced");
    const TrendsView before =
        view(PeriodOffer{{kBaselineDay, dayOf(2026, 8, 31), {}, false, false, PeriodKind::Days}});
    EXPECT_EQ(before.find(hangar.leftAileron)->origin.fittingNumber, 1);
    EXPECT_EQ(view().find(hangar.leftAileron)->origin.fittingNumber, 2);
}

TEST_F(TrendsMovement, LooksAtTheDaysThatWereChosenAndShowsThemLarge)
{
    tellADrift();
    show();
    auto* chart = page.findChild<TrendWidget*>("chart");
    const double whole = chart->shown().to - chart->shown().from;
    page.lookBack(PeriodOffer{{dayOf(2026, 6, 1), dayOf(2026, 6, 30), {}, false, false, PeriodKind::Days}},
                  {});
    EXPECT_LT(chart->shown().to - chart->shown().from, whole / 2);
    EXPECT_TRUE(text("lookingBack").contains("1 June 2026 to 30 June 2026"));
    QTest::keyClick(&page, Qt::Key_Escape);
    EXPECT_FALSE(page.findChild<QLabel*>("lookingBack")->isVisible());
    EXPECT_DOUBLE_EQ(chart->shown().to - chart->shown().from, whole);
}
