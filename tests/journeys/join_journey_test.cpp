// A file of another laptop taken in, and what both did apart decided: keyboard only, in the whole window.

#include "app/window/main_window.h"
#include "tests/support/clipped.h"
#include "tests/support/laptop.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/typing.h"

#include <filesystem>

using namespace rig;
using namespace rig::test;
namespace fs = std::filesystem;

namespace {

// Two laptops that each closed the record of the day; theirs read once more.
class JoinJourney : public testing::Test
{
protected:
    JoinJourney()
    {
        record = must(store.records().add(hangar.record(store.clock().now())));
        store.close();
        fs::copy_file(store.path(), twin);
        closeOn(store.path(), 3, "ours");
        closeOn(twin, 5, "theirs");
        Laptop{twin, 7}.read(hangar, 500);
        window.resize(1280, 800);
        window.show();
        window.openPath(QString::fromStdString(store.path()), OpenAs::Existing);
        window.activateWindow();
        Typist::look();
    }

    void closeOn(const std::string& path, std::uint64_t seed, const char* note)
    {
        Laptop laptop{path, seed};
        laptop.clock.passMinutes(static_cast<int>(seed));
        RecordClose close;
        close.record = record;
        close.note = note;
        close.stamp.by = hangar.oren;
        must(laptop.records->add(close));
    }
    void takeIn()
    {
        prompts.openFiles.push_back(twin);
        prompts.confirmations.push_back(true);
        typist.press(Qt::Key_I, Qt::ControlModifier);
        Typist::look();
    }
    bool barShown() { return part(window, "conflictsBar").isVisible(); }
    std::string noteInFile()
    {
        store.reopen();
        const auto content = must(store.records().content(record));
        return content.close ? content.close->note : std::string{};
    }
    static bool says(const std::string& text, const char* part)
    {
        return text.find(part) != std::string::npos;
    }

    TempStore store;
    Hangar hangar{store.records()};
    std::string twin = store.folder() / "twin.rigband";
    RecordId record;
    ScriptedPrompts prompts;
    MainWindow window{store.clock(), prompts};
    Typist typist{window};
};

} // namespace

TEST_F(JoinJourney, AnotherFileIsTakenInAndAPersonDecidesWhichClosingHolds)
{
    EXPECT_FALSE(barShown());
    takeIn();
    ASSERT_EQ(prompts.asked.size(), 2U);
    const std::string& asked = prompts.asked.back();
    EXPECT_TRUE(says(asked, "New in twin.rigband: Readings: 1; Closings of records: 1.")) << asked;
    EXPECT_TRUE(says(asked, "The readings are of Left aileron, on 2 May 2026.")) << asked;
    EXPECT_TRUE(says(asked, "One record was closed twice, QX-17.")) << asked;
    ASSERT_EQ(prompts.told.size(), 1U);
    EXPECT_TRUE(says(prompts.told.front(), "Taken in from twin.rigband: 2 facts.")) << prompts.told.front();
    EXPECT_TRUE(fs::exists(store.folder() / "hangar-copies" / "hangar before taking in 2026-05-02.rigband"));
    EXPECT_TRUE(barShown());
    EXPECT_TRUE(says(textOf(window, "conflictsBarText"), "1 is open"));

    typist.press(Qt::Key_8, Qt::ControlModifier);
    Typist::look();
    EXPECT_EQ(textOf(window, "conflictTitle"), "One record was closed twice, QX-17");
    EXPECT_TRUE(says(textOf(window, "conflictFirst"), "note: ours")) << textOf(window, "conflictFirst");
    EXPECT_TRUE(says(textOf(window, "conflictFirst"), "how it was closed: closed with open items"))
        << "no word of the file's own";
    EXPECT_TRUE(says(textOf(window, "conflictSecond"), "note: theirs"));
    EXPECT_TRUE(says(textOf(window, "conflictSecond"), "by M. Oren"));
    typist.tabTo("decideSecond");
    typist.press(Qt::Key_Return); // nothing is kept without a name and a reason
    Typist::look();
    EXPECT_EQ(typist.focused(), "conflictPerson");
    typist.press(Qt::Key_Down);
    typist.press(Qt::Key_Down); // T. Vale
    typist.tabTo("conflictReason");
    typist.type("asked both");
    typist.tabTo("decideSecond");
    typist.press(Qt::Key_Return);
    Typist::look();
    EXPECT_TRUE(part(window, "conflictResult").isVisible());
    EXPECT_EQ(textOf(window, "conflictsCount"), "Nothing is open for a person to decide.");
    typist.press(Qt::Key_Escape);
    Typist::look();
    EXPECT_TRUE(window.page(Moments::RiggedToday)->isVisible());
    EXPECT_FALSE(barShown());
    EXPECT_EQ(noteInFile(), "theirs");
    EXPECT_EQ(must(store.file().lookAtChain()).faults, 0);
}

TEST_F(JoinJourney, BothSidesHaveRoomAtAnySizeOfTextAndWindow)
{
    takeIn();
    typist.press(Qt::Key_8, Qt::ControlModifier);
    for (const double scale : {1.0, 1.5})
        for (const QSize size : {QSize{1024, 740}, QSize{1280, 800}}) {
            SCOPED_TRACE(scale);
            window.resize(size);
            window.setLook(lookAt(scale));
            Typist::look();
            expectNothingClipped(part(window, "conflicts"), 12);
            expectNothingClipped(part(window, "conflictsBar"), 2);
            const auto& row = part(window, "conflict0");
            EXPECT_TRUE(row.hasHeightForWidth()) << "its words go on to another line";
            EXPECT_GE(row.height(), row.heightForWidth(row.width()));
        }
}

TEST_F(JoinJourney, NothingIsTakenInUnlessSomebodySaysSo)
{
    prompts.openFiles.push_back(twin);
    typist.press(Qt::Key_I, Qt::ControlModifier);
    Typist::look();
    EXPECT_TRUE(prompts.told.empty());
    EXPECT_FALSE(barShown());
    EXPECT_EQ(noteInFile(), "ours");
    EXPECT_EQ(must(store.records().readings(hangar.airframe)).size(), 0U);
}

TEST_F(JoinJourney, TheSameAgainBringsNothing)
{
    takeIn();
    takeIn();
    ASSERT_EQ(prompts.told.size(), 2U);
    EXPECT_TRUE(says(prompts.told.back(), "is in this file already")) << prompts.told.back();
}
