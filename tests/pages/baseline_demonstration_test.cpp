#include "app/pages/setup/demonstration_panel.h"
#include "app/widgets/choice_box.h"
#include "tests/support/clipped.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"

#include <QCheckBox>
#include <QListWidget>
#include <QScrollArea>
#include <QTableWidget>

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

// The small hangar with a band on the left aileron; nothing was ever left part-seated.
class DemonstrationTest : public testing::Test
{
protected:
    DemonstrationTest()
    {
        takeTwelve(store, hangar);
        QObject::connect(&panel, &DemonstrationPanel::problemArose, &panel,
                         [this](const QString& sentence) { problems.push_back(sentence.toStdString()); });
        panel.showAirframe(hangar.airframe);
        showAt(panel, {900, 700});
        QTest::keyClick(&part(panel, "couplings"), Qt::Key_Down);
    }

    void down(const char* box) { QTest::keyClick(&part(panel, box), Qt::Key_Down); }
    void tick(const char* caution) { QTest::keyClick(&part(panel, caution), Qt::Key_Space); }

    void tickAll()
    {
        for (const char* caution : {"caution0", "caution1", "caution2"})
            tick(caution);
    }

    // M. Oren measures, T. Vale stands by, set A.
    void choose()
    {
        down("demonstrationOwner");
        down("demonstrationSecond");
        down("demonstrationGauge");
    }

    void enter(const char* figure)
    {
        typeOn(panel, figure);
        QTest::keyClick(&panel, Qt::Key_Return);
    }

    std::vector<Reading> kept()
    {
        std::vector<Reading> all;
        for (const KeptReading& one : must(store.records().readings(hangar.airframe)))
            if (one.reading.purpose == Purpose::Demonstration)
                all.push_back(one.reading);
        return all;
    }

    bool isOpen() { return part(panel, "demonstrationLeaves").isEnabled(); }
    std::string notice() { return textOf(panel, "demonstrationNotice"); }
    bool says(const char* label, const char* words)
    {
        return textOf(panel, label).find(words) != std::string::npos;
    }

    TempStore store;
    Hangar hangar{store.records()};
    ScriptedPrompts prompts;
    std::vector<std::string> problems;
    DemonstrationPanel panel{store.records(), store.clock(), prompts};
};

TEST_F(DemonstrationTest, IsDoneByKeysAloneAndStandsApartFromTheBand)
{
    tickAll();
    choose();
    enter("0.80");
    ASSERT_EQ(kept().size(), 1U);
    const Reading reading = kept().front();
    EXPECT_EQ(reading.state, SeatState::PartSeated);
    EXPECT_EQ(reading.interval, between(800, 850));
    EXPECT_EQ(reading.fitting, hangar.leftFitting);
    EXPECT_EQ(reading.person, hangar.oren);
    EXPECT_EQ(reading.second, hangar.vale);
    EXPECT_EQ(reading.note, "");
    EXPECT_TRUE(says("demonstrationKept", "Part-seated: 0.80–0.85 mm, saved 11:00."));
    EXPECT_TRUE(says("demonstrationNumbers", "Part-seated was seen once here"));

    const auto sheet =
        must(BaselineDayPresenter{store.records(), store.clock()}.sheet(hangar.airframe, hangar.leftAileron));
    EXPECT_EQ(sheet.admitted, 12);
    EXPECT_EQ(sheet.partSeated.size(), 1U);
}

TEST_F(DemonstrationTest, EachCautionHasToBeTicked)
{
    choose();
    for (const char* caution : {"caution0", "caution1"}) {
        tick(caution);
        enter("0.80");
        EXPECT_FALSE(isOpen());
        EXPECT_EQ(notice(), "First read each caution and tick it.");
    }
    EXPECT_TRUE(kept().empty());
    tick("caution2");
    EXPECT_TRUE(isOpen());
    tick("caution1");
    EXPECT_FALSE(isOpen());
}

TEST_F(DemonstrationTest, TheCautionsSayWhatHasToBeDone)
{
    EXPECT_EQ(part(panel, "caution0").accessibleName(),
              "Not on a flying day: this glider does not fly today.");
    EXPECT_EQ(part(panel, "caution1").accessibleName(),
              "Tag the cockpit: the tag hangs on the controls now.");
    EXPECT_EQ(
        part(panel, "caution2").accessibleName(),
        "Full inspection afterwards: every coupling connected anew, looked at and pulled by two people.");
}

TEST_F(DemonstrationTest, ItTakesTwoDifferentPeopleAndNobodyIsFilledIn)
{
    tickAll();
    EXPECT_EQ(notice(), "First choose the owner. Nobody is filled in.");
    down("demonstrationOwner");
    EXPECT_EQ(notice(), "Now choose the second person, somebody else.");
    auto& second = part<ChoiceBox>(panel, "demonstrationSecond");
    EXPECT_EQ(second.chosen<PersonId>(), std::nullopt);
    EXPECT_EQ(second.findText("M. Oren"), -1) << "the owner is not offered";
    down("demonstrationSecond");
    EXPECT_EQ(second.chosen<PersonId>(), hangar.vale);
    down("demonstrationOwner");
    EXPECT_EQ(part<ChoiceBox>(panel, "demonstrationOwner").chosen<PersonId>(), hangar.vale);
    EXPECT_EQ(second.chosen<PersonId>(), std::nullopt) << "who was second is the owner now";
    EXPECT_FALSE(isOpen());
}

TEST_F(DemonstrationTest, WithoutAGaugeOrWithADoubtedOneNothingIsRead)
{
    tickAll();
    down("demonstrationOwner");
    down("demonstrationSecond");
    enter("0.80");
    EXPECT_EQ(notice(), "First choose what is measured with.");
    GaugeCheck bad;
    bad.gauge = hangar.setA;
    bad.day = dayOf(2026, 5, 1);
    bad.quarantineFrom = dayOf(2026, 4, 1);
    must(store.records().add(bad));
    panel.showAirframe(hangar.airframe);
    down("demonstrationGauge");
    enter("0.80");
    EXPECT_EQ(notice().find("That leaf set is in doubt"), 0U);
    EXPECT_TRUE(kept().empty());
}

TEST_F(DemonstrationTest, ADoubtfulFigureIsRefused)
{
    tickAll();
    choose();
    enter("80");
    EXPECT_TRUE(says("typedMeaning", "If you meant 0.80, type it with a point or a comma."));
    enter("0.82");
    EXPECT_TRUE(says("typedMeaning", "its neighbours are 0.80 and 0.85"));
    EXPECT_TRUE(kept().empty());
}

TEST_F(DemonstrationTest, AFigureTypedAtOneCouplingIsNotKeptAtAnother)
{
    Fitting fitting;
    fitting.coupling = must(store.records().add(aCoupling(hangar.airframe, "Elevator")));
    fitting.begins = dayOf(2026, 3, 1);
    fitting.reason = "first fitting";
    must(store.records().add(fitting));
    panel.showAirframe(hangar.airframe);
    auto& couplings = part<QListWidget>(panel, "couplings");
    couplings.setCurrentRow(1); // neither of the two has a reading yet
    tickAll();
    choose();
    typeOn(panel, "0.80");
    couplings.setCurrentRow(2);
    QTest::keyClick(&panel, Qt::Key_Return);
    EXPECT_TRUE(kept().empty());
    enter("0.80");
    ASSERT_EQ(kept().size(), 1U);
    EXPECT_EQ(kept().front().coupling, fitting.coupling);
}

TEST_F(DemonstrationTest, ACorrectionKeepsWhoMeasuredAndIsStatedByTheOwnerOnTheCard)
{
    tickAll();
    choose();
    enter("0.80");
    down("demonstrationOwner"); // T. Vale
    QTest::keyClick(&part(panel, "demonstrationSecond"), Qt::Key_Down);
    prompts.texts = {"pressed the wrong leaf"};
    QTest::keyClick(&panel, Qt::Key_W);
    enter("0.85");
    ASSERT_EQ(kept().size(), 2U);
    EXPECT_EQ(kept()[1].person, hangar.oren);
    EXPECT_EQ(kept()[1].stamp.by, hangar.vale);
}

TEST_F(DemonstrationTest, AWrongFigureIsCorrectedAndStaysStruckThrough)
{
    tickAll();
    choose();
    enter("0.80");
    prompts.texts = {"pressed the wrong leaf"};
    QTest::keyClick(&panel, Qt::Key_W);
    enter("0.85");
    ASSERT_EQ(kept().size(), 2U);
    EXPECT_EQ(kept()[1].corrects, kept()[0].id);
    EXPECT_EQ(kept()[1].note, "pressed the wrong leaf");
    EXPECT_EQ(kept()[1].second, hangar.vale);
    auto& list = part<QTableWidget>(panel, "readings");
    EXPECT_TRUE(list.item(1, 1)->font().strikeOut());
    EXPECT_TRUE(says("demonstrationNumbers", "Part-seated was seen once here"));
    EXPECT_TRUE(problems.empty());
}

TEST_F(DemonstrationTest, TheCautionsHoldForOneSitting)
{
    tickAll();
    choose();
    ASSERT_TRUE(isOpen());
    panel.hide();
    panel.showAirframe(hangar.airframe);
    panel.show();
    EXPECT_FALSE(isOpen());
    EXPECT_FALSE(part<QCheckBox>(panel, "caution0").isChecked());
}

TEST_F(DemonstrationTest, ARecordBegunTodayIsPointedOut)
{
    EXPECT_FALSE(part(panel, "riggedToday").isVisible());
    must(store.records().add(hangar.record(store.clock().now())));
    panel.showAirframe(hangar.airframe);
    EXPECT_TRUE(part(panel, "riggedToday").isVisible());
}

TEST_F(DemonstrationTest, NeverShownIsSaidWithWhatFollowsFromIt)
{
    EXPECT_TRUE(says("demonstrationNumbers", "both sides of the band count as suspect"));
    EXPECT_EQ(part<QListWidget>(panel, "couplings").item(0)->text(), "Left aileron\npart-seated never shown");
}

TEST_F(DemonstrationTest, SharedGapsAreCalledNoWitness)
{
    tickAll();
    choose();
    for (int i = 0; i < 4; ++i)
        enter("0.50");
    EXPECT_TRUE(says("demonstrationNumbers", "it cannot tell part-seated from locked"))
        << textOf(panel, "demonstrationNumbers");
}

TEST_F(DemonstrationTest, NothingIsClippedAtLargeText)
{
    tickAll();
    choose();
    enter("0.80");
    for (const double scale : {1.0, 1.5}) {
        SCOPED_TRACE(scale);
        panel.setLook(lookAt(scale));
        showAt(panel, {900, 700}, lookAt(scale));
        EXPECT_EQ(panel.width(), 900);
        expectNothingClipped(panel, 24);
        const auto& scroll = *panel.findChild<QScrollArea*>();
        EXPECT_LE(scroll.widget()->width(), scroll.viewport()->width());
    }
}

} // namespace
