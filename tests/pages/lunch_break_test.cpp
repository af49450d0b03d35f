// A lunch break sends the coupling that was begun back to the look; what was completed stays, and so does the
// record. Only one left overnight is begun whole.

#include "app/pages/rigged_today/rigged_today_page.h"
#include "core/rigging/rigging_flow.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/sleeve_joint.h"
#include "tests/support/who_connected.h"

#include <QComboBox>
#include <QPushButton>
#include <QTimer>

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

// The left aileron is done by both, the right one begun by the first person.
class LunchBreak : public testing::Test
{
protected:
    LunchBreak()
    {
        takeTwelve(store, hangar);
        store.clock().passMinutes(24 * 60);
        page = std::make_unique<RiggedTodayPage>(store.records(), store.clock(), prompts);
        page->showAirframe(hangar.airframe);
        showAt(*page, {1280, 744});
        part<QComboBox>(*page, "leader").setCurrentIndex(1);
        part<QPushButton>(*page, "begin").click();
        if (part(*page, "seasonNext").isVisible())
            part<QPushButton>(*page, "seasonNext").click();
        passWhoConnected(*page);
        type("yyy0.5\ryy");
        part<QPushButton>(*page, "turn").click();
        choose("measuredBy", 2);
        type("yyyy");
        part<QPushButton>(*page, "turn").click();
        QTest::keyClick(page.get(), Qt::Key_PageDown);
        EXPECT_EQ(textOf(*page, "couplingTitle"), "Right aileron");
        type("yy");
        EXPECT_TRUE(flow(hangar.rightAileron).begun);
        record = content().record.id;
    }

    void type(const char* keys) { typeSlowly(*page, keys); }

    void choose(const char* box, int index) { chooseIn(*page, box, index); }

    RecordContent content()
    {
        return must(store.records().content(must(store.records().riggingRecords(hangar.airframe)).back().id));
    }
    CouplingFlow flow(CouplingId coupling, Turn turn = Turn::First)
    {
        return flowOfSleeve(content(), coupling, turn);
    }

    void expectOnlyTheBegunOneBackAtTheLook(InterruptionReason reason)
    {
        const RecordContent now = content();
        EXPECT_EQ(now.record.id, record);
        EXPECT_FALSE(now.close);
        EXPECT_TRUE(flow(hangar.leftAileron, Turn::First).isDone()) << "what was completed stays";
        EXPECT_TRUE(flow(hangar.leftAileron, Turn::Second).isDone());
        EXPECT_FALSE(flow(hangar.rightAileron).begun);
        EXPECT_EQ(flow(hangar.rightAileron).ask, CheckKind::BallInSocket);
        EXPECT_TRUE(flow(hangar.rightAileron).interrupted) << "and is marked";
        ASSERT_EQ(now.interruptions.size(), 1U);
        EXPECT_EQ(now.interruptions.back().reason, reason);
    }

    TempStore store;
    Hangar hangar{store.records()};
    ScriptedPrompts prompts;
    std::unique_ptr<RiggedTodayPage> page;
    RecordId record;
};

} // namespace

TEST_F(LunchBreak, ByTheEscapeKey)
{
    QTest::keyClick(page.get(), Qt::Key_Escape);
    expectOnlyTheBegunOneBackAtTheLook(InterruptionReason::Asked);
}

TEST_F(LunchBreak, ByTwentyMinutesWithoutAKey)
{
    const auto timers = page->findChildren<QTimer*>();
    const auto idle = std::ranges::find(timers, 20 * 60 * 1000, &QTimer::interval);
    ASSERT_NE(idle, timers.end());
    EXPECT_TRUE((*idle)->isActive());
    (*idle)->start(0);
    QApplication::processEvents();
    expectOnlyTheBegunOneBackAtTheLook(InterruptionReason::Idle);
}

TEST_F(LunchBreak, WithTheLidShutSoThatNoTimerRan)
{
    store.clock().passMinutes(21);
    type("y");
    expectOnlyTheBegunOneBackAtTheLook(InterruptionReason::Idle);
    type("y");
    EXPECT_TRUE(flow(hangar.rightAileron).begun) << "the look goes on from its beginning";
}

TEST_F(LunchBreak, IsNoneWithinTwentyMinutes)
{
    store.clock().passMinutes(19);
    type("y");
    EXPECT_EQ(flow(hangar.rightAileron).next, Step::Measure);
    EXPECT_TRUE(content().interruptions.empty());
}

TEST_F(LunchBreak, IsNoneWhereAnotherPageWasLookedAt)
{
    page->leave();
    page->hide();
    page->show();
    page->showAirframe(hangar.airframe);
    type("y");
    EXPECT_EQ(flow(hangar.rightAileron).next, Step::Measure);
    EXPECT_TRUE(content().interruptions.empty());
}

TEST_F(LunchBreak, OnAnotherPageIsOneToo)
{
    page->leave();
    store.clock().passMinutes(21);
    page->showAirframe(hangar.airframe);
    type("y");
    expectOnlyTheBegunOneBackAtTheLook(InterruptionReason::Idle);
}

TEST_F(LunchBreak, ByAnotherPersonWhoTakesOver)
{
    choose("measuredBy", 2);
    expectOnlyTheBegunOneBackAtTheLook(InterruptionReason::PersonChanged);
}

TEST_F(LunchBreak, ByTheProgramThatIsClosedAndOpenedAgain)
{
    page->end();
    page.reset();
    store.reopen();
    store.clock().passMinutes(45);
    page = std::make_unique<RiggedTodayPage>(store.records(), store.clock(), prompts);
    page->showAirframe(hangar.airframe);
    expectOnlyTheBegunOneBackAtTheLook(InterruptionReason::ProgramClosed);
}

TEST_F(LunchBreak, LeavesNoRecordToGoOnWithTheNextDay)
{
    page->end();
    store.clock().passMinutes(24 * 60);
    page->showAirframe(hangar.airframe);
    EXPECT_TRUE(part(*page, "begin").isVisible());
    part<QComboBox>(*page, "leader").setCurrentIndex(1);
    part<QPushButton>(*page, "begin").click();
    EXPECT_NE(content().record.id, record);
    EXPECT_EQ(must(store.records().content(record)).close->closing, Closing::Abandoned);
    EXPECT_FALSE(flow(hangar.leftAileron).begun) << "it starts whole";
}
