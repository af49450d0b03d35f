#include "app/pages/rigged_today/rigged_today_page.h"
#include "app/wording/review_words.h"
#include "core/review/airframe_review.h"
#include "core/review/layoffs.h"
#include "core/store/facts_book.h"
#include "tests/pages/trends_scene.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"

#include <QComboBox>
#include <QPushButton>

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

class Layoffs : public testing::Test
{
protected:
    void close(RecordId record)
    {
        must(store.records().add(
            RecordClose{{}, record, Closing::Complete, hangar.oren, hangar.vale, {}, {}}));
    }

    void rigOn(Day day) { close(scene.record(day)); }

    std::vector<StoodBefore> stood()
    {
        return stoodBefore(must(store.records().riggingRecords(hangar.airframe)),
                           must(store.records().closings(hangar.airframe)));
    }

    TrendsScene scene;
    TempStore& store{scene.store};
    Hangar& hangar{scene.hangar};
    ScriptedPrompts prompts;
    RiggedTodayPage page{store.records(), store.clock(), prompts};
};

} // namespace

TEST_F(Layoffs, AreCountedFromTheRiggingBeforeAndToldFromTwelveWeeksOn)
{
    for (const Day day : {dayOf(2025, 10, 4), dayOf(2026, 4, 4), dayOf(2026, 4, 18), dayOf(2026, 7, 11)})
        rigOn(day);
    const auto all = stood();
    ASSERT_EQ(all.size(), 4U);
    EXPECT_FALSE(all[0].since) << "the first of the file";
    EXPECT_EQ(all[1].weeks(), 26);
    EXPECT_TRUE(all[1].isFirstOfYear && all[1].isAfterLayoff());
    EXPECT_FALSE(all[2].isFirstOfYear || all[2].isAfterLayoff());
    EXPECT_EQ(all[3].weeks(), 12);
    EXPECT_TRUE(all[3].isAfterLayoff() && !all[3].isFirstOfYear);
}

TEST_F(Layoffs, AreNotCountedFromARecordThatWasAbandoned)
{
    rigOn(dayOf(2026, 4, 4));
    scene.abandon(scene.record(dayOf(2026, 7, 1)));
    rigOn(dayOf(2026, 7, 11));
    EXPECT_EQ(stood().back().since, dayOf(2026, 4, 4));
    EXPECT_EQ(stood().size(), 2U);
}

TEST_F(Layoffs, AreListedByTheirLengthAndByTheYear)
{
    for (const Day day : {dayOf(2025, 3, 1), dayOf(2025, 6, 7), dayOf(2026, 4, 4), dayOf(2026, 7, 18)})
        rigOn(day);
    const auto known = must(store.records().book().airframe(hangar.airframe));
    ReviewPeriod period;
    period.from = dayOf(2025, 1, 1);
    period.to = dayOf(2026, 11, 1);
    const QString said = ReviewWords::layoffs(airframeReviewOf(known->facts(), period)).join('\n');
    EXPECT_EQ(
        said.toStdString(),
        "First rigging of the year: 4 April 2026, after 43 weeks.\n"
        "First riggings after a layoff, the longest first: 4 April 2026 (43 weeks); 18 July 2026 (15 weeks); "
        "7 June 2025 (14 weeks).");
}

TEST_F(Layoffs, BringTheSeasonsListInTheMiddleOfAYearAndSayHowLongItStood)
{
    rigOn(dayOf(2026, 4, 4));
    page.showAirframe(hangar.airframe);
    showAt(page, {1280, 744});
    part<QComboBox>(page, "leader").setCurrentIndex(1);
    if (part(page, "riggedAnew").isVisible())
        part<QAbstractButton>(page, "riggedAnew").click();
    part<QPushButton>(page, "begin").click();
    ASSERT_TRUE(part(page, "seasonNext").isVisible());
    EXPECT_EQ(textOf(page, "seasonStood"),
              "First rigging after a layoff: none in this file for 30 weeks, since 4 April 2026.");
    EXPECT_EQ(textOf(page, "seasonWhy").find("first record of the year"), std::string::npos);
}

TEST_F(Layoffs, BringNoListAFortnightAfterTheLastRigging)
{
    rigOn(dayOf(2026, 4, 4));
    rigOn(dayOf(2026, 10, 24));
    page.showAirframe(hangar.airframe);
    showAt(page, {1280, 744});
    part<QComboBox>(page, "leader").setCurrentIndex(1);
    part<QAbstractButton>(page, "riggedAnew").click();
    part<QPushButton>(page, "begin").click();
    EXPECT_FALSE(part(page, "seasonNext").isVisible());
}

TEST_F(Layoffs, AreNotGuessedWhereRiggingsBeforeTheFileAreStated)
{
    Airframe airframe = must(store.records().airframes()).front();
    airframe.riggingsBefore = 40;
    must(store.records().add(airframe));
    page.showAirframe(hangar.airframe);
    showAt(page, {1280, 744});
    part<QComboBox>(page, "leader").setCurrentIndex(1);
    part<QPushButton>(page, "begin").click();
    ASSERT_TRUE(part(page, "seasonNext").isVisible());
    EXPECT_EQ(textOf(page, "seasonTitle"), "First rigging in this file");
    EXPECT_EQ(textOf(page, "seasonWhy").find("40 riggings before this file"), 0U)
        << textOf(page, "seasonWhy");
}
