#include "app/pages/rigged_today/rigged_today_page.h"
#include "tests/pages/trends_scene.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"

#include <QComboBox>
#include <QPushButton>
#include <QTimer>

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

// Twenty-four riggings; where it drifts each reads one leaf higher than the last but one from the thirteenth
// on. Then the record of today is begun.
class MovementTold : public testing::Test
{
protected:
    void tell(bool drifts)
    {
        scene.baselineDay(kBaselineDay);
        for (int i = 0; i < 24; ++i) {
            const int drifted = 500 + (i < 12 ? 0 : 50 * ((i - 10) / 2));
            scene.rig(dayOf(2026, 4, 4) + std::chrono::days{5 * i}, drifts ? drifted : (i % 3 ? 500 : 450));
        }
        for (const RiggingRecord& record : must(store.records().riggingRecords(hangar.airframe)))
            must(store.records().add(
                RecordClose{{}, record.id, Closing::LeftOpen, hangar.oren, hangar.vale, {}, {}}));
        must(store.records().add(hangar.record(store.clock().now())));
        page.showAirframe(hangar.airframe);
        showAt(page, {1280, 744});
        auto& person = part<QComboBox>(page, "measuredBy");
        person.setCurrentIndex(1);
        emit person.activated(1);
        for (QTimer* one : page.findChildren<QTimer*>())
            if (one->isActive() && one->interval() < 1000)
                one->start(0); // worked out when no key waits
        QApplication::processEvents();
    }

    void type(const char* keys) { typeSlowly(page, keys); }

    TrendsScene scene;
    TempStore& store{scene.store};
    Hangar& hangar{scene.hangar};
    ScriptedPrompts prompts;
    RiggedTodayPage page{store.records(), store.clock(), prompts};
};

} // namespace

TEST_F(MovementTold, StandsOnTheCardBeforeAndAfterTheReadingAndLeavesTheVerdictAlone)
{
    tell(true);
    EXPECT_EQ(textOf(page, "verdictMovement").rfind("Its readings have changed: ", 0), 0U)
        << textOf(page, "verdictMovement");
    EXPECT_TRUE(part(page, "verdictMovement").isVisible());
    type("yyy0.5\r");
    EXPECT_EQ(textOf(page, "verdictWord"), "Inside the band");
    EXPECT_TRUE(part(page, "verdictMovement").isVisible()) << "inside or not";
    EXPECT_TRUE(part(page, "verdictCaution").isVisible());
}

TEST_F(MovementTold, IsNotToldToTheSecondPerson)
{
    tell(true);
    part<QPushButton>(page, "turn").click();
    EXPECT_FALSE(part(page, "verdictMovement").isVisible());
}

TEST_F(MovementTold, IsNotSaidOfACouplingThatStands)
{
    tell(false);
    EXPECT_FALSE(part(page, "verdictMovement").isVisible());
}
