// The manual, opened from wherever one is and left again, read and printed: keyboard only, in the whole
// window.

#include "app/window/main_window.h"
#include "app/window/welcome.h"
#include "app/wording/language.h"
#include "tests/support/clipped.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/temp_store.h"
#include "tests/support/typing.h"

#include <QListWidget>
#include <QScrollBar>
#include <QTextBlock>
#include <QTextBrowser>

#include <filesystem>

using namespace rig;
using namespace rig::test;

namespace {

class ManualJourney : public testing::Test
{
protected:
    ManualJourney()
    {
        clock.set(dayOf(2026, 11, 2));
        window.resize(1280, 800);
        window.show();
        window.activateWindow();
        Typist::look();
    }

    void openDemo()
    {
        window.openDemo();
        Typist::look();
    }
    void openManual() { typist.press(Qt::Key_F1, Qt::ShiftModifier); }
    bool isManualSeen() { return part(window, "manual").isVisible(); }
    QTextBrowser& text() { return part<QTextBrowser>(window, "manualText"); }
    QListWidget& list() { return part<QListWidget>(window, "manualChapters"); }
    // The heading of the text itself.
    std::string chapter() { return text().document()->begin().text().toStdString(); }
    int place() { return text().verticalScrollBar()->value(); }

    FixedClock clock;
    ScriptedPrompts prompts;
    MainWindow window{clock, prompts};
    Typist typist{window};
};

} // namespace

TEST_F(ManualJourney, OpensAtTheChapterOfWhatIsSeenAndEscGoesBackThere)
{
    openDemo();
    const std::pair<Qt::Key, const char*> pages[] = {
        {Qt::Key_1, "Rigged today"},       {Qt::Key_2, "Trends"}, {Qt::Key_3, "Before the annual"},
        {Qt::Key_4, "Know this airframe"}, {Qt::Key_5, "Set up"}, {Qt::Key_6, "Open questions"},
        {Qt::Key_1, "Rigged today"}};
    for (const auto& [page, wanted] : pages) {
        typist.press(page, Qt::ControlModifier);
        Typist::look();
        openManual();
        ASSERT_TRUE(isManualSeen()) << wanted;
        EXPECT_EQ(chapter(), wanted);
        EXPECT_EQ(list().currentItem()->text().toStdString(), wanted);
        EXPECT_EQ(text().accessibleName().toStdString(), wanted);
        typist.press(Qt::Key_Escape);
        EXPECT_FALSE(isManualSeen()) << wanted;
        const auto* questions = window.findChild<QWidget*>("questions");
        EXPECT_EQ(questions && questions->isVisible(), page == Qt::Key_6) << wanted;
    }
}

TEST_F(ManualJourney, IsThereBeforeAFileIsOpenAndLeadsBackToTheWelcome)
{
    openManual();
    ASSERT_TRUE(isManualSeen());
    EXPECT_EQ(chapter(), "Start here");
    typist.press(Qt::Key_Escape);
    EXPECT_FALSE(isManualSeen());
    EXPECT_TRUE(window.findChild<Welcome*>()->isVisible());
    openManual();
    openDemo();
    EXPECT_TRUE(window.findChild<QWidget*>("manual") == nullptr) << "the file is what was opened last";
    openManual();
    EXPECT_EQ(chapter(), "Rigged today");
}

TEST_F(ManualJourney, GoesFromChapterToChapterByArrowsAndOnInTheTextByPageDown)
{
    openDemo();
    openManual();
    typist.press(Qt::Key_Down);
    EXPECT_EQ(chapter(), "The second person");
    typist.press(Qt::Key_Up);
    EXPECT_EQ(chapter(), "Rigged today");
    EXPECT_EQ(place(), 0);
    typist.press(Qt::Key_PageDown);
    const int after = place();
    EXPECT_GT(after, 300);
    EXPECT_EQ(chapter(), "Rigged today");
    typist.press(Qt::Key_PageUp);
    EXPECT_EQ(place(), 0);
    typist.press(Qt::Key_Return);
    EXPECT_EQ(typist.focused().toStdString(), "manualText");
    typist.press(Qt::Key_PageDown);
    EXPECT_GT(place(), 300);
    openManual();
    EXPECT_EQ(chapter(), "Rigged today") << "it is open already";
    typist.press(Qt::Key_Escape);
    EXPECT_FALSE(isManualSeen());
}

TEST_F(ManualJourney, FollowsALinkToAChapterAndNoneOutOfTheProgram)
{
    openManual();
    typist.press(Qt::Key_Return);
    for (int i = 0; i < 2; ++i) // the second one
        typist.press(Qt::Key_Tab);
    typist.press(Qt::Key_Return);
    EXPECT_EQ(chapter(), "Rigged today");
    EXPECT_EQ(list().currentItem()->text(), "Rigged today");
    for (const char* outside : {"https://rigband.example/x.md", "file:///etc/hostname", "none.md"}) {
        emit text().anchorClicked(QUrl{outside});
        EXPECT_EQ(chapter(), "Rigged today") << outside;
    }
    EXPECT_FALSE(text().openLinks() || text().openExternalLinks());
}

TEST_F(ManualJourney, IsSavedToBePrinted)
{
    openManual();
    const TempFolder folder;
    prompts.saveFiles = {folder.file("m.pdf"), folder.file("none/m.pdf")};
    typist.press(Qt::Key_P, Qt::ControlModifier);
    Typist::look();
    ASSERT_EQ(prompts.told.size(), 1U);
    EXPECT_NE(prompts.told.back().find("m.pdf"), std::string::npos);
    EXPECT_GT(std::filesystem::file_size(folder.file("m.pdf")), 100'000U);
    EXPECT_EQ(prompts.suggested.back(), "rigband-manual.pdf");
    typist.press(Qt::Key_P, Qt::ControlModifier);
    Typist::look();
    EXPECT_NE(textOf(window, "problemText").find("cannot be written"), std::string::npos);
}

TEST_F(ManualJourney, HasRoomForItsWordsAtEverySize)
{
    for (const auto& [size, scale] :
         {std::pair{QSize{1280, 800}, 1.0}, {{1024, 740}, 1.0}, {{1280, 800}, 1.5}}) {
        window.setLook(lookAt(scale));
        window.resize(size);
        openManual();
        Typist::look();
        SCOPED_TRACE(scale);
        EXPECT_EQ(window.size(), size);
        expectNothingClipped(part(window, "manual"), 3);
        for (int row = 0; row < list().count(); ++row) {
            list().setCurrentRow(row);
            EXPECT_LE(text().document()->size().width(), text().viewport()->width() + 1) << chapter();
            EXPECT_LE(list().visualItemRect(list().item(row)).width(), list().viewport()->width());
        }
    }
}

TEST_F(ManualJourney, KeepsItsPlaceWhenTheTextGrowsAndTakesTheColours)
{
    openDemo();
    openManual();
    typist.press(Qt::Key_PageDown);
    typist.press(Qt::Key_PageDown);
    const auto cursorOnTop = [this] { return text().cursorForPosition({30, 4}); };
    const auto onTop = [&] { return cursorOnTop().block().text().toStdString(); };
    // A line begins there: between two paragraphs nothing would stand on top.
    QScrollBar* bar = text().verticalScrollBar();
    bar->setValue(bar->value() + text().cursorRect(cursorOnTop()).top());
    const std::string before = onTop();
    ASSERT_NE(before, chapter());
    typist.press(Qt::Key_F9);
    const QColor ink = Theme::dark().color(Role::Ink);
    EXPECT_EQ(text().document()->begin().begin().fragment().charFormat().foreground().color(), ink);
    typist.press(Qt::Key_Plus, Qt::ControlModifier);
    Typist::look();
    EXPECT_EQ(onTop(), before);
}

TEST(ManualInAnotherLanguage, IsTheOneOfThatLanguage)
{
    const FixedClock clock;
    ScriptedPrompts prompts;
    const auto firstChapterIn = [&](const char* code) {
        const Speech speech{code};
        MainWindow window{clock, prompts};
        window.show();
        window.showManual();
        const auto& chapters = part<QListWidget>(window, "manualChapters");
        const QString title = chapters.item(0)->text();
        EXPECT_TRUE(part<QTextBrowser>(window, "manualText").toPlainText().startsWith(title)) << code;
        return title;
    };
    EXPECT_EQ(firstChapterIn("en"), "Start here");
    EXPECT_NE(firstChapterIn("de"), "Start here");
    EXPECT_NE(firstChapterIn("fr"), "Start here");
    EXPECT_NE(firstChapterIn("fr"), firstChapterIn("de"));
}
