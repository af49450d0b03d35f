// The dated copies of a file listed, one looked at, one brought back: keyboard only, in the whole window.

#include "app/window/main_window.h"
#include "core/store/copies.h"
#include "tests/fault/file_bytes.h"
#include "tests/support/clipped.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/typing.h"

#include <filesystem>
#include <set>

using namespace rig;
using namespace rig::test;
namespace fs = std::filesystem;

namespace {

// A file with a reading, its copy of that day, and another reading since; one copy is damaged.
class CopiesJourney : public testing::Test
{
protected:
    CopiesJourney()
    {
        read();
        store.close();
        must(keepTodaysCopy(store.path(), dayOf(2026, 4, 30)));
        store.reopen();
        read();
        store.close();
        fs::copy_file(store.path(), folder() / "hangar before taking in 2026-05-01.rigband");
        writeBytes(folder() / "hangar 2026-04-29.rigband", "nothing of ours");
        window.resize(1280, 800);
        window.show();
        window.openPath(QString::fromStdString(store.path()), OpenAs::Existing);
        window.activateWindow();
        Typist::look();
    }

    void read() { must(store.records().add(hangar.reading(between(450, 500), store.clock().now()), {})); }
    fs::path folder() const { return copiesFolder(store.path()); }
    void list()
    {
        typist.press(Qt::Key_9, Qt::ControlModifier);
        Typist::look();
    }
    void chooseFirstDay()
    {
        const std::string wanted = "hangar 2026-04-30.rigband";
        for (int i = 0; i < 5 && textOf(window, "copyFile") != wanted; ++i)
            typist.press(Qt::Key_Down);
        ASSERT_EQ(textOf(window, "copyFile"), wanted);
    }
    bool barShown() { return part(window, "copyBar").isVisible(); }
    static bool says(const std::string& text, const char* part)
    {
        return text.find(part) != std::string::npos;
    }

    TempStore store;
    Hangar hangar{store.records()};
    ScriptedPrompts prompts;
    MainWindow window{store.clock(), prompts};
    Typist typist{window};
};

} // namespace

TEST_F(CopiesJourney, ACopyIsLookedAtSaysSoOnEveryPageAndLeadsBackToTheFile)
{
    const std::string before = bytesOf(folder() / "hangar 2026-04-30.rigband");
    list();
    EXPECT_EQ(textOf(window, "copiesCount"), "Copies in the folder beside it: 4");
    std::set<QString> told;
    for (const char* row : {"copy0", "copy1", "copy2", "copy3"})
        told.insert(part(window, row).accessibleDescription());
    EXPECT_EQ(told.size(), 4U) << "two of one day are told apart by the names of their files";
    chooseFirstDay();
    EXPECT_TRUE(says(textOf(window, "copyTitle"), "30 April 2026, ")) << textOf(window, "copyTitle");
    EXPECT_TRUE(says(textOf(window, "copyTitle"), " kB")) << textOf(window, "copyTitle");
    EXPECT_TRUE(says(textOf(window, "copyEnd"), "facts, end ")) << textOf(window, "copyEnd");
    EXPECT_TRUE(says(textOf(window, "copyPlace"), "all that stood in the copy is still in the file"))
        << textOf(window, "copyPlace");
    typist.press(Qt::Key_Return);
    Typist::look();
    ASSERT_TRUE(barShown());
    EXPECT_TRUE(says(textOf(window, "copyBarText"), "a copy of hangar.rigband, of 30 April 2026"))
        << textOf(window, "copyBarText");
    EXPECT_TRUE(window.windowTitle().contains("hangar 2026-04-30.rigband"));
    for (const Qt::Key page : {Qt::Key_2, Qt::Key_3, Qt::Key_4, Qt::Key_5, Qt::Key_6}) {
        typist.press(page, Qt::ControlModifier);
        Typist::look();
        EXPECT_TRUE(barShown());
    }
    typist.press(Qt::Key_I, Qt::ControlModifier);
    Typist::look();
    ASSERT_EQ(prompts.told.size(), 1U) << "nothing is taken into a copy";
    EXPECT_EQ(prompts.told.back(), textOf(window, "copyBarText"));
    EXPECT_FALSE(fs::exists(folder() / "hangar 2026-04-30-copies"));
    typist.press(Qt::Key_W, Qt::ControlModifier);
    Typist::look();
    EXPECT_FALSE(barShown());
    EXPECT_TRUE(window.windowTitle().contains("hangar.rigband"));
    EXPECT_TRUE(before == bytesOf(folder() / "hangar 2026-04-30.rigband"));
}

TEST_F(CopiesJourney, ACopyIsBroughtBackUnderANewNameAndNeverOverAFile)
{
    const std::string before = bytesOf(store.path());
    list();
    chooseFirstDay();
    prompts.newFiles = {store.path(), store.folder() / "back"};
    typist.press(Qt::Key_B, Qt::ControlModifier);
    Typist::look();
    ASSERT_EQ(prompts.told.size(), 1U);
    EXPECT_TRUE(says(prompts.told.back(), "is there already")) << prompts.told.back();
    typist.press(Qt::Key_B, Qt::ControlModifier);
    Typist::look();
    ASSERT_EQ(prompts.told.size(), 2U);
    EXPECT_TRUE(says(prompts.told.back(), "back.rigband now holds what the copy held"));
    EXPECT_TRUE(window.windowTitle().contains("back.rigband"));
    EXPECT_FALSE(barShown());
    EXPECT_TRUE(before == bytesOf(store.path()));
    const auto back = must(StoreFile::open(store.folder() / "back.rigband", OpenAs::ToLook, store.clock()));
    store.reopen();
    EXPECT_EQ(must(back->end()).facts + 1, must(store.file().end()).facts);
}

TEST_F(CopiesJourney, ACopyThatIsLookedAtIsBroughtBackFromItsOwnLine)
{
    list();
    chooseFirstDay();
    typist.press(Qt::Key_Return);
    Typist::look();
    prompts.newFiles = {store.folder() / "back.rigband"};
    typist.press(Qt::Key_B, Qt::ControlModifier);
    Typist::look();
    EXPECT_TRUE(window.windowTitle().contains("back.rigband"));
    EXPECT_FALSE(barShown());
}

TEST_F(CopiesJourney, ACopyThatWentItsOwnWayOrCannotBeOpenedIsSaidToBeSo)
{
    const fs::path other = folder() / "hangar 2026-04-28.rigband";
    fs::copy_file(folder() / "hangar 2026-04-30.rigband", other);
    {
        SystemClock clock;
        IdSource ids{77};
        const auto file = must(StoreFile::open(other, OpenAs::Existing, clock));
        Records records{*file, ids, clock};
        must(records.add(aPerson("N. Else")));
    }
    list();
    for (int i = 0; i < 9; ++i)
        typist.press(Qt::Key_Down);
    EXPECT_EQ(textOf(window, "copyFile"), "hangar 2026-04-28.rigband");
    EXPECT_TRUE(says(textOf(window, "copyPlace"), "never ended so")) << textOf(window, "copyPlace");
    typist.press(Qt::Key_Up);
    EXPECT_EQ(textOf(window, "copyFile"), "hangar 2026-04-29.rigband");
    EXPECT_TRUE(says(textOf(window, "copyEnd"), "is not a Rigband file")) << textOf(window, "copyEnd");
    EXPECT_FALSE(part(window, "bringBack").isVisible());
    typist.press(Qt::Key_Return);
    Typist::look();
    EXPECT_FALSE(barShown());
}

TEST_F(CopiesJourney, AllHasRoomAtAnySizeOfText)
{
    list();
    for (const double scale : {1.0, 1.5}) {
        SCOPED_TRACE(scale);
        window.setLook(lookAt(scale));
        Typist::look();
        expectNothingClipped(part(window, "copies"), 10);
    }
    chooseFirstDay();
    typist.press(Qt::Key_Return);
    Typist::look();
    expectNothingClipped(part(window, "copyBar"), 3);
}
