// How persons stand on an airframe is told where they are chosen, and on paper; nothing is stopped by it.

#include "app/pages/rigged_today/rigged_today_page.h"
#include "app/report/record_report.h"
#include "app/report/sheet_report.h"
#include "core/day_entry.h"
#include "core/review/record_summary.h"
#include "core/store/airframe_facts.h"
#include "core/views/paper_sheet.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/who_connected.h"

#include <QAbstractButton>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>

using namespace rig;
using namespace rig::test;

namespace {

class PersonStanding : public testing::Test
{
protected:
    PersonStanding()
    {
        takeTwelve(store, hangar);
        store.clock().passMinutes(24 * 60);
        iver = must(store.records().add(aPerson("J. Iver")));
    }

    Day today() { return store.clock().now().localDay(); }

    void signOff(PersonId person, SignOffKind kind = SignOffKind::Signed)
    {
        SignOff one;
        one.airframe = hangar.airframe;
        one.person = person;
        one.signer = hangar.oren;
        one.kind = kind;
        one.note = kind == SignOffKind::Withdrawn ? "moved away" : "";
        one.day = today();
        must(store.records().add(one));
    }

    void open()
    {
        showAt(page, {1280, 744});
        page.showAirframe(hangar.airframe);
        QApplication::processEvents();
    }

    std::string leaderStands(int index)
    {
        chooseIn(page, "leader", index);
        const auto& note = part<QLabel>(page, "leaderStanding");
        return note.isVisible() ? note.text().toStdString() : std::string{};
    }

    static bool says(const std::vector<Block>& blocks, const QString& words)
    {
        return std::ranges::any_of(blocks, [&words](const Block& block) {
            const auto* text = std::get_if<ParagraphBlock>(&block);
            return text && text->text.contains(words);
        });
    }

    TempStore store;
    Hangar hangar{store.records()};
    PersonId iver;
    ScriptedPrompts prompts;
    RiggedTodayPage page{store.records(), store.clock(), prompts};
};

} // namespace

TEST_F(PersonStanding, IsNotToldToAnOwnerWhoDoesWithout)
{
    open();
    for (const int index : {1, 2, 3})
        EXPECT_EQ(leaderStands(index), "") << index;
}

TEST_F(PersonStanding, IsToldBesideTheNameAndStopsNothing)
{
    signOff(hangar.vale);
    open();
    EXPECT_EQ(leaderStands(1), "") << "who signs for others is asked nothing";
    EXPECT_TRUE(leaderStands(2).starts_with("signed off until ")) << leaderStands(2);
    EXPECT_EQ(leaderStands(3), "not signed off on this airframe");
    part<QPushButton>(page, "begin").click();
    QApplication::processEvents();
    if (part(page, "seasonNext").isVisible())
        part<QPushButton>(page, "seasonNext").click();
    passWhoConnected(page);
    EXPECT_EQ(textOf(page, "personStanding"), "J. Iver: not signed off on this airframe");
}

TEST_F(PersonStanding, IsToldWhereTheTwoOfTheControlCheckAreChosen)
{
    signOff(hangar.vale);
    open();
    chooseIn(page, "leader", 1);
    part<QPushButton>(page, "begin").click();
    QApplication::processEvents();
    part<QAbstractButton>(page, "recordRow5").click();
    QApplication::processEvents();
    part<QAbstractButton>(page, "addUsualSurfaces").click();
    QApplication::processEvents();
    chooseIn(page, "atSurface", 3);
    EXPECT_EQ(textOf(page, "atSurfaceStanding"), "J. Iver: not signed off on this airframe");
    chooseIn(page, "inCockpit", 2);
    EXPECT_TRUE(textOf(page, "inCockpitStanding").starts_with("T. Vale: signed off until "));
}

TEST_F(PersonStanding, OfAPaperIsThatOfItsDay)
{
    const Day before = today();
    signOff(hangar.vale);
    store.clock().passMinutes(3 * 24 * 60);
    signOff(iver);
    open();
    page.enterFromPaper();
    chooseIn(page, "paperFirst", 3);
    EXPECT_FALSE(part(page, "paperFirstStanding").isVisible()) << "of no day yet";
    part<QLineEdit>(page, "paperDay").setText(QString::fromStdString(dayText(before)));
    EXPECT_EQ(textOf(page, "paperFirstStanding"), "not signed off on this airframe");
    part<QLineEdit>(page, "paperDay").setText(QString::fromStdString(dayText(today())));
    EXPECT_TRUE(textOf(page, "paperFirstStanding").starts_with("signed off until "));
    part<QLineEdit>(page, "paperDay").setText(QString::fromStdString(dayText(before)));
    part<QLineEdit>(page, "paperTime").setText("9:30");
    chooseIn(page, "paperSecond", 3);
    part<QRadioButton>(page, "paperApart").setChecked(true);
    chooseIn(page, "paperTypist", 1);
    part<QPushButton>(page, "paperBegin").click();
    EXPECT_TRUE(part(page, "paperRefused").isVisible());
    chooseIn(page, "paperSecond", 2);
    EXPECT_FALSE(part(page, "paperRefused").isVisible()) << "they differ now";
    part<QPushButton>(page, "paperBegin").click();
    QApplication::processEvents();
    if (part(page, "seasonNext").isVisible())
        part<QPushButton>(page, "seasonNext").click();
    passWhoConnected(page);
    EXPECT_EQ(textOf(page, "personStanding"), "J. Iver: not signed off on this airframe");
}

TEST_F(PersonStanding, StandsOnThePaperOfWhoeverOnlyTriedASurface)
{
    RiggingRecord record = hangar.record(store.clock().now());
    const RecordId id = must(store.records().add(record));
    Surface surface;
    surface.airframe = hangar.airframe;
    surface.name = "Left aileron";
    SurfaceCheck check;
    check.record = id;
    check.surface = must(store.records().add(surface));
    check.person = hangar.oren;
    check.cockpit = iver;
    must(store.records().add(check));
    signOff(hangar.vale);
    const AirframeFacts facts = must(factsOf(store.records(), hangar.airframe));
    const PersonStandings people = must(personStandingsOn(store.records(), facts, today()));
    EXPECT_TRUE(says(recordBlocks(summaryOf(facts, must(store.records().content(id)), people)),
                     "J. Iver: not signed off on this airframe"));
}

TEST_F(PersonStanding, SaysThatTheSecondNameOfACloseDidNoSecondLook)
{
    const RecordId id = must(store.records().add(hangar.record(store.clock().now())));
    must(store.records().add(RecordClose{{}, id, Closing::LeftOpen, hangar.oren, iver, {}, {}}));
    const AirframeFacts facts = must(factsOf(store.records(), hangar.airframe));
    EXPECT_TRUE(says(recordBlocks(summaryOf(facts, must(store.records().content(id)))),
                     "J. Iver, the second name, did no second look"));
}

TEST_F(PersonStanding, SaysThatItWasWithdrawnOrHasExpired)
{
    signOff(hangar.vale);
    signOff(iver);
    signOff(iver, SignOffKind::Withdrawn);
    store.clock().passMinutes(100 * 24 * 60);
    open();
    EXPECT_TRUE(leaderStands(2).ends_with("(three months without rigging)")) << leaderStands(2);
    EXPECT_EQ(leaderStands(3), "sign-off withdrawn");
}

TEST_F(PersonStanding, StandsOnTheRecordAsItWasOnThatDayAndOnTheSheet)
{
    RiggingRecord record = hangar.record(store.clock().now());
    record.leader = iver;
    const RecordId id = must(store.records().add(record));
    signOff(hangar.vale);
    store.clock().passMinutes(24 * 60);
    signOff(iver);
    const AirframeFacts facts = must(factsOf(store.records(), hangar.airframe));
    const RecordContent content = must(store.records().content(id));
    const PersonStandings then =
        must(personStandingsOn(store.records(), facts, content.record.begins.localDay()));
    EXPECT_TRUE(
        says(recordBlocks(summaryOf(facts, content, then)), "J. Iver: not signed off on this airframe"));
    EXPECT_FALSE(says(recordBlocks(summaryOf(facts, content)), "signed off"));
    const KnownAirframe known{facts};
    const PersonStandings now = must(personStandingsOn(store.records(), facts, today()));
    EXPECT_TRUE(says(sheetBlocks(paperSheetOf(known, {}, today(), now)), "J. Iver: signed off until "));
}

TEST_F(PersonStanding, CountsARiggingByWhateverPartSomebodyHadInIt)
{
    signOff(iver);
    store.clock().passMinutes(60 * 24 * 60);
    const RecordId record = must(store.records().add(hangar.record(store.clock().now())));
    must(store.records().add(SideConnected{{}, record, Side::Left, {hangar.oren}, {}}));
    must(store.records().add(SideConnected{{}, record, Side::Left, {iver}, {}}));
    const auto parts = must(store.records().partsInRiggings(hangar.airframe));
    ASSERT_EQ(parts.size(), 1U) << "what was said last counts";
    EXPECT_EQ(parts.front().person, iver);
    const auto stands = [&] {
        const AirframeFacts facts = must(factsOf(store.records(), hangar.airframe));
        return must(personStandingsOn(store.records(), facts, today())).at(iver).state;
    };
    RecordClose close;
    close.record = record;
    close.first = hangar.oren;
    close.second = hangar.vale;
    must(store.records().add(close));
    store.clock().passMinutes(60 * 24 * 60);
    EXPECT_EQ(stands(), SignOffState::Signed);
}

TEST_F(PersonStanding, SaysWhatWasNotMetWhenItWasSignedOnScreenAndPaper)
{
    SignOff one;
    one.airframe = hangar.airframe;
    one.person = iver;
    one.signer = hangar.oren;
    one.day = today();
    one.askedFor = AskedFor{1, 2, 0};
    must(store.records().add(one));
    const char* const lacked =
        "(not met when it was signed: 1 of 3 riggings under supervision and 2 couplings not practised)";
    open();
    EXPECT_TRUE(leaderStands(3).ends_with(lacked)) << leaderStands(3);
    const AirframeFacts facts = must(factsOf(store.records(), hangar.airframe));
    const PersonStandings now = must(personStandingsOn(store.records(), facts, today()));
    EXPECT_TRUE(says(sheetBlocks(paperSheetOf(KnownAirframe{facts}, {}, today(), now)), lacked));
}
