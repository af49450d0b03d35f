// What belongs to measuring: a set tried on a known gap, how cold it was, a go/no-go block.

#include "app/pages/rigged_today/rigged_today_page.h"
#include "app/pages/setup/setup_presenter.h"
#include "app/widgets/leaf_row.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::literals;
using namespace rig::test;

namespace {

class GaugePractice : public testing::Test
{
protected:
    static GaugeCheckEntry onAKnownGap(const char* width, const char* enters, const char* refuses)
    {
        GaugeCheckEntry entry{"2026-05-02", "stamped block", "tried once", false, {}};
        entry.knownGap = width;
        entry.knownEnters = enters;
        entry.knownRefuses = refuses;
        return entry;
    }

    std::vector<Field> refused(const GaugeCheckEntry& entry)
    {
        std::vector<Field> fields;
        for (const FieldProblem& one : must(presenter.gauges.save(entry, hangar.setA)).problems)
            fields.push_back(one.field);
        return fields;
    }

    std::optional<KnownGapRead> kept() { return must(store.records().gaugeChecks()).back().known; }

    TempStore store;
    Hangar hangar{store.records()};
    SetUpPresenter presenter{store.records(), store.clock()};
};

using RefusedFields = std::vector<Field>;

} // namespace

TEST(KnownGap, SaysHowFarASetReadsHighOrLow)
{
    EXPECT_EQ((KnownGapRead{400_um, between(350, 450)}.missedBy()), 0_um);
    EXPECT_EQ((KnownGapRead{400_um, between(400, 450)}.missedBy()), 0_um) << "its ends are among it";
    EXPECT_EQ((KnownGapRead{400_um, between(430, 480)}.missedBy()), 30_um) << "high";
    EXPECT_EQ((KnownGapRead{400_um, between(300, 350)}.missedBy()), Gap{} - 50_um) << "low";
    EXPECT_EQ((KnownGapRead{400_um, {380_um, std::nullopt}}.missedBy()), 0_um);
}

TEST_F(GaugePractice, KeepsWhatASetReadOnAKnownGap)
{
    EXPECT_EQ(refused(onAKnownGap("0.42", "0.40", "0.45")), RefusedFields{});
    ASSERT_TRUE(kept());
    EXPECT_EQ(kept()->width, 420_um);
    EXPECT_EQ(kept()->read, between(400, 450));
    store.reopen();
    EXPECT_EQ(kept()->read, between(400, 450));
}

TEST_F(GaugePractice, DoesNotNoteASetAsUsableThatMissesTheKnownGap)
{
    EXPECT_EQ(refused(onAKnownGap("0.42", "0.45", "0.50")), RefusedFields{Field::KnownRefuses});
    EXPECT_TRUE(must(store.records().gaugeChecks()).empty());
    GaugeCheckEntry doubted = onAKnownGap("0.42", "0.45", "0.50");
    doubted.doubted = true;
    doubted.doubtedFrom = "2026-05-02";
    EXPECT_EQ(refused(doubted), RefusedFields{});
    EXPECT_EQ(kept()->missedBy(), 30_um);
}

TEST_F(GaugePractice, AsksForAWholeFigureOfAKnownGapOrForNone)
{
    EXPECT_EQ(refused(onAKnownGap("", "0.45", "0.50")), RefusedFields{Field::KnownGap});
    EXPECT_EQ(refused(onAKnownGap("0.42", "0.45", "0.40")), RefusedFields{Field::KnownRefuses});
    EXPECT_EQ(refused(onAKnownGap("", "", "")), RefusedFields{});
    EXPECT_FALSE(kept());
}

TEST_F(GaugePractice, ABlockHasTwoEndsAndThreeReadings)
{
    const GaugeEntry three{"B", GaugeKind::GoNoGo, "0.40, 0.50, 0.60", "", "", ""};
    EXPECT_FALSE(must(presenter.gauges.save(three, {})).isSaved());
    const GaugeEntry two{"B", GaugeKind::GoNoGo, "0.40, 0.60", "", "", ""};
    ASSERT_TRUE(must(presenter.gauges.save(two, {})).isSaved());
    store.reopen();
    const GaugeSet set = must(store.records().gauges()).back().set;
    EXPECT_EQ(set.kind(), GaugeKind::GoNoGo);
    const auto goes = std::get<GaugeReading>(set.enters(400_um));
    EXPECT_EQ(goes.interval, between(400, 600));
    EXPECT_EQ(goes.technique, Technique::GoNoGo);
    EXPECT_EQ(std::get<GaugeReading>(set.noLeafEnters()).interval, (GapInterval{Gap{}, 400_um}));
    EXPECT_EQ(std::get<GaugeReading>(set.thickestLoose()).interval, (GapInterval{600_um, std::nullopt}));
    EXPECT_TRUE(std::holds_alternative<GaugeRefusal>(set.enters(500_um)));
}

TEST_F(GaugePractice, ABlockIsPressedAsItsThreeReadings)
{
    LeafRow row;
    row.setGauge(GaugeSet{GaugeKind::GoNoGo, {400_um, 600_um}}, std::nullopt);
    showAt(row, {900, 120});
    QStringList seen;
    for (const QPushButton* one : row.findChildren<QPushButton*>())
        if (one->isVisible())
            seen << one->text();
    EXPECT_TRUE(seen.contains("0.40 enters, 0.60 does not")) << seen.join('|').toStdString();
    EXPECT_TRUE(seen.contains("Thin end does not enter"));
    EXPECT_TRUE(seen.contains("Thick end enters"));
}

TEST_F(GaugePractice, TheTemperatureStandsInTheRecord)
{
    ScriptedPrompts prompts;
    RiggedTodayPage page{store.records(), store.clock(), prompts};
    page.showAirframe(hangar.airframe);
    showAt(page, {1280, 744});
    part<QComboBox>(page, "leader").setCurrentIndex(1);
    auto& typed = part<QLineEdit>(page, "celsius");
    typed.setText("warm");
    part<QPushButton>(page, "begin").click();
    EXPECT_NE(textOf(page, "startMissing").find("no temperature"), std::string::npos);
    EXPECT_TRUE(must(store.records().riggingRecords(hangar.airframe)).empty());
    typed.setText("-4");
    part<QPushButton>(page, "begin").click();
    EXPECT_EQ(must(store.records().riggingRecords(hangar.airframe)).back().celsius, -4);
}

TEST_F(GaugePractice, TheTemperatureMayStayUnsaid)
{
    ScriptedPrompts prompts;
    RiggedTodayPage page{store.records(), store.clock(), prompts};
    page.showAirframe(hangar.airframe);
    showAt(page, {1280, 744});
    part<QComboBox>(page, "leader").setCurrentIndex(1);
    part<QPushButton>(page, "begin").click();
    EXPECT_FALSE(must(store.records().riggingRecords(hangar.airframe)).back().celsius);
}
