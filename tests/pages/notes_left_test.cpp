#include "app/pages/rigged_today/rigged_today_page.h"
#include "app/report/record_report.h"
#include "core/review/record_summary.h"
#include "core/store/facts_book.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"

#include <QComboBox>
#include <QPushButton>

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

// Two riggings that were closed with a note each; the page stands before the next one.
class NotesLeft : public testing::Test
{
protected:
    NotesLeft()
    {
        leave("Mirror lies in the trailer.");
        leave("");
        leave("Left hatch is stiff.");
    }

    void leave(const std::string& note)
    {
        store.clock().passMinutes(24 * 60);
        RecordClose close;
        close.record = must(store.records().add(hangar.record(store.clock().now())));
        close.first = hangar.oren;
        close.second = hangar.vale;
        close.note = note;
        must(store.records().add(close));
    }

    void show()
    {
        store.clock().passMinutes(60);
        page.showAirframe(hangar.airframe);
        showAt(page, {1280, 744});
    }

    void pressRead() { QTest::keyClick(&page, Qt::Key_R); }
    void chooseOren() { part<QComboBox>(page, "leader").setCurrentIndex(1); }
    std::string notes() { return textOf(page, "notesText"); }
    bool isShown() { return part(page, "notesLeft").isVisible(); }

    std::string paperOf(RecordId record)
    {
        const auto known = must(store.records().book().airframe(hangar.airframe));
        std::string all;
        for (const Block& block :
             recordBlocks(summaryOf(known->facts(), must(store.records().content(record)))))
            if (const auto* text = std::get_if<ParagraphBlock>(&block))
                all += text->text.toStdString() + '\n';
        return all;
    }

    TempStore store;
    Hangar hangar{store.records()};
    ScriptedPrompts prompts;
    RiggedTodayPage page{store.records(), store.clock(), prompts};
};

} // namespace

TEST_F(NotesLeft, AreShownAtTheNextStartTheNewestFirstWithTheirNames)
{
    show();
    EXPECT_TRUE(isShown());
    EXPECT_NE(notes().find("M. Oren and T. Vale: “Left hatch is stiff.”\n"), std::string::npos) << notes();
    EXPECT_NE(notes().find("Mirror lies in the trailer."), std::string::npos) << "nobody has read it either";
}

TEST_F(NotesLeft, StayUntilANamedPersonHasReadThem)
{
    show();
    pressRead();
    EXPECT_TRUE(isShown()) << "nobody was chosen";
    EXPECT_NE(textOf(page, "startMissing").find("First choose your name"), std::string::npos);
    chooseOren();
    pressRead();
    EXPECT_FALSE(isShown());
    store.reopen();
    const auto known = must(store.records().book().airframe(hangar.airframe));
    EXPECT_TRUE(notesUnread(known->facts()).empty()) << "it is in the file";
    EXPECT_EQ(known->facts().notesRead.back().person, hangar.oren);
}

TEST_F(NotesLeft, AreShownAgainWhenANewOneIsLeft)
{
    show();
    chooseOren();
    pressRead();
    leave("New tape on the fin.");
    page.showAirframe(hangar.airframe);
    EXPECT_TRUE(isShown());
    EXPECT_EQ(notes().find("stiff"), std::string::npos) << "that one was read";
}

TEST_F(NotesLeft, StandOnThePaperOfTheRiggingThatMetThemWithWhoReadThem)
{
    show();
    const RecordId unread = must(store.records().add(hangar.record(store.clock().now())));
    EXPECT_NE(paperOf(unread).find("Left hatch is stiff.” Nobody has noted that it was read."),
              std::string::npos)
        << paperOf(unread);
    must(store.records().add(RecordClose{{}, unread, Closing::Abandoned, {}, {}, {}, {}}));
    page.showAirframe(hangar.airframe);
    chooseOren();
    pressRead();
    store.clock().passMinutes(5);
    const RecordId next = must(store.records().add(hangar.record(store.clock().now())));
    EXPECT_NE(paperOf(next).find("Read by M. Oren,"), std::string::npos) << paperOf(next);
    must(store.records().add(RecordClose{{}, next, Closing::LeftOpen, hangar.oren, hangar.vale, {}, {}}));
    const RecordId later = must(store.records().add(hangar.record(store.clock().now())));
    EXPECT_EQ(paperOf(later).find("Left hatch"), std::string::npos) << "that was the rigging before";
}

TEST_F(NotesLeft, CannotBeReadBeforeTheRecordIsClosed)
{
    const RecordId open = must(store.records().add(hangar.record(store.clock().now())));
    EXPECT_FALSE(store.records().add(RecordTick{{}, open, TickKind::NoteRead, hangar.oren, {}}));
}
