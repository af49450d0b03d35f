#include "app/pages/rigged_today/rigged_today_page.h"
#include "app/pages/rigged_today/rigging_writer.h"
#include "core/review/whole_check.h"
#include "core/store/facts_book.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/who_connected.h"

#include <QComboBox>
#include <QPushButton>
#include <QRadioButton>

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

// One rigging was closed with every step answered, a day ago.
class WholeCheck : public testing::Test
{
protected:
    WholeCheck()
    {
        rigged(Closing::Complete);
        store.clock().passMinutes(24 * 60);
    }

    void rigged(Closing closing)
    {
        RecordClose close;
        close.record = must(store.records().add(hangar.record(store.clock().now())));
        close.closing = closing;
        close.first = hangar.oren;
        close.second = hangar.vale;
        must(store.records().add(close));
    }

    void happened(EventKind kind, std::optional<CouplingId> coupling)
    {
        Event event;
        event.airframe = hangar.airframe;
        event.coupling = coupling;
        event.kind = kind;
        event.day = store.clock().now().localDay();
        event.person = hangar.oren;
        must(store.records().add(event));
    }

    std::optional<EventKind> asked(CouplingId coupling)
    {
        const auto known = must(store.records().book().airframe(hangar.airframe));
        const auto event = WholeChecks{known->facts()}.askedOf(coupling);
        return event ? std::optional{event->kind} : std::nullopt;
    }

    TempStore store;
    Hangar hangar{store.records()};
    ScriptedPrompts prompts;
    RiggedTodayPage page{store.records(), store.clock(), prompts};
};

} // namespace

TEST_F(WholeCheck, IsAskedOfAJointThatWasWorkedOnAndOfNoOther)
{
    for (const EventKind kind : {EventKind::Cleaned, EventKind::Greased, EventKind::PartChanged}) {
        happened(kind, hangar.leftAileron);
        EXPECT_EQ(asked(hangar.leftAileron), kind);
        EXPECT_EQ(asked(hangar.rightAileron), std::nullopt);
    }
}

TEST_F(WholeCheck, IsAskedOfEveryJointWhereTheWholeAirframeWasGreased)
{
    happened(EventKind::Greased, {});
    EXPECT_EQ(asked(hangar.rightAileron), EventKind::Greased);
}

TEST_F(WholeCheck, IsNotAskedByWhatLeavesTheJointAlone)
{
    for (const EventKind kind : {EventKind::Note, EventKind::Annual, EventKind::Derigged})
        happened(kind, hangar.leftAileron);
    EXPECT_EQ(asked(hangar.leftAileron), std::nullopt);
}

TEST_F(WholeCheck, IsAskedUntilARiggingAfterItWasClosedWithAllStepsDone)
{
    happened(EventKind::Greased, hangar.leftAileron);
    rigged(Closing::LeftOpen);
    EXPECT_EQ(asked(hangar.leftAileron), EventKind::Greased) << "something was left open";
    rigged(Closing::Complete);
    EXPECT_EQ(asked(hangar.leftAileron), std::nullopt);
}

TEST_F(WholeCheck, LeavesNoWayToSayThatItStoodRiggedAndTellsWhy)
{
    page.showAirframe(hangar.airframe);
    showAt(page, {1280, 744});
    ASSERT_TRUE(part<QRadioButton>(page, "stoodRigged").isVisible());
    happened(EventKind::Greased, hangar.leftAileron);
    page.showAirframe(hangar.airframe);
    EXPECT_FALSE(part<QRadioButton>(page, "stoodRigged").isVisible());
    EXPECT_NE(textOf(page, "wholeChecks").find("Left aileron: greased"), std::string::npos);
    RiggingWriter writer{store.records(), store.clock()};
    const RiggedTodayPresenter presenter{store.records(), store.clock()};
    must(writer.begin(must(presenter.view(hangar.airframe)), hangar.oren, RecordOrigin::Recheck));
    EXPECT_EQ(must(store.records().riggingRecords(hangar.airframe)).back().origin, RecordOrigin::Rigging);
}

TEST_F(WholeCheck, IsAskedOfARiggingFromPaperByWhatWasDoneBeforeItsOwnDay)
{
    const Moment yesterday = noonOf(store.clock().now().localDay() - std::chrono::days{1});
    happened(EventKind::Greased, hangar.leftAileron);
    RiggingWriter writer{store.records(), store.clock()};
    const RiggedTodayPresenter presenter{store.records(), store.clock()};
    const RiggedTodayView before = must(presenter.view(hangar.airframe));
    ASSERT_FALSE(before.wholeChecks.empty());
    must(writer.begin(before, hangar.oren, RecordOrigin::Recheck, {}, FromPaper{yesterday, hangar.vale}));
    EXPECT_EQ(must(store.records().riggingRecords(hangar.airframe)).back().origin, RecordOrigin::Recheck);
}

TEST_F(WholeCheck, IsAskedOfTheNextRiggingWhereOneFromAnotherDayWasLeftOpen)
{
    must(store.records().add(hangar.record(store.clock().now())));
    store.clock().passMinutes(24 * 60);
    happened(EventKind::Greased, hangar.leftAileron);
    const RiggedTodayPresenter presenter{store.records(), store.clock()};
    const RiggedTodayView view = must(presenter.view(hangar.airframe));
    ASSERT_TRUE(view.record->fromAnotherDay);
    EXPECT_TRUE(view.wholeChecks.contains(hangar.leftAileron));
}

TEST_F(WholeCheck, IsToldAtTheJointToBothPersons)
{
    happened(EventKind::Cleaned, hangar.leftAileron);
    page.showAirframe(hangar.airframe);
    showAt(page, {1280, 744});
    part<QComboBox>(page, "leader").setCurrentIndex(1);
    part<QPushButton>(page, "begin").click();
    passWhoConnected(page);
    EXPECT_EQ(textOf(page, "couplingTitle"), "Left aileron");
    EXPECT_NE(textOf(page, "couplingTold").find("This joint: cleaned"), std::string::npos);
    part<QPushButton>(page, "turn").click();
    EXPECT_TRUE(part(page, "couplingTold").isVisible());
    QTest::keyClick(&page, Qt::Key_PageDown);
    EXPECT_EQ(textOf(page, "couplingTitle"), "Right aileron");
    EXPECT_FALSE(part(page, "couplingTold").isVisible());
}
