// The menu File: files opened last, a file dropped on the window, a copy saved, the folder shown.

#include "app/pages/rigged_today/rigged_today_page.h"
#include "app/window/file_menu.h"
#include "app/window/main_window.h"
#include "core/baseline/baseline.h"
#include "tests/fault/file_bytes.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/typing.h"

#include <QAction>
#include <QDesktopServices>
#include <QDropEvent>
#include <QLineEdit>
#include <QMenu>
#include <QMimeData>
#include <QSettings>
#include <QTextBrowser>
#include <QUrl>

#include <filesystem>
#include <functional>

using namespace rig;
using namespace rig::test;
namespace fs = std::filesystem;

namespace {

class FileMenuJourney : public testing::Test
{
protected:
    FileMenuJourney()
    {
        QSettings{}.clear();
        must(store.records().add(hangar.reading(between(450, 500), store.clock().now()), {}));
        store.close();
        window.resize(1280, 800);
        window.show();
        window.activateWindow();
        Typist::look();
    }

    QString in(const std::string& name) const { return QString::fromStdString(store.folder() / name); }
    QString ours() const { return QString::fromStdString(store.path()); }
    void open() { window.openPath(ours(), OpenAs::Existing); }
    bool isOpen(const QString& name) const { return window.windowTitle().contains(name); }

    // As they stand in the menu when somebody opens it.
    QList<QAction*> recentRows()
    {
        auto* menu = window.findChild<FileMenu*>("fileRows");
        menu->popup({});
        Typist::look();
        menu->hide();
        return window.findChild<QMenu*>("recentFiles")->actions();
    }

    // Whether the window takes what is let go of over `on`.
    bool drop(QWidget& on, const QList<QUrl>& urls)
    {
        QMimeData carried;
        carried.setUrls(urls);
        carried.setText(urls.constFirst().toString());
        QDragEnterEvent enter{{3, 3}, Qt::CopyAction, &carried, Qt::LeftButton, Qt::NoModifier};
        QApplication::sendEvent(&on, &enter);
        if (!enter.isAccepted())
            return false;
        QDropEvent let{{3, 3}, Qt::CopyAction, &carried, Qt::LeftButton, Qt::NoModifier};
        QApplication::sendEvent(&on, &let);
        Typist::look();
        return let.isAccepted();
    }

    TempStore store;
    Hangar hangar{store.records()};
    ScriptedPrompts prompts;
    MainWindow window{store.clock(), prompts};
    Typist typist{window};
};

} // namespace

TEST_F(FileMenuJourney, HasTheLastSixFilesTheNewestFirst)
{
    EXPECT_TRUE(recentRows().isEmpty());
    for (int i = 1; i <= 7; ++i)
        window.openPath(in("field" + std::to_string(i) + ".rigband"), OpenAs::New);
    window.openPath(in("field4.rigband"), OpenAs::Existing);
    const QList<QAction*> rows = recentRows();
    ASSERT_EQ(rows.size(), 6);
    EXPECT_TRUE(rows[0]->text().startsWith("&1  field4.rigband in ")) << rows[0]->text().toStdString();
    EXPECT_TRUE(rows[1]->text().startsWith("&2  field7.rigband in "));
    EXPECT_TRUE(rows[5]->text().startsWith("&6  field2.rigband in "));
    EXPECT_EQ(rows[0]->toolTip(), in("field4.rigband"));
    rows[5]->trigger();
    EXPECT_TRUE(isOpen("field2.rigband"));
    EXPECT_TRUE(recentRows()[0]->text().contains("field2.rigband"));
}

TEST_F(FileMenuJourney, KeepsNoDemonstrationAmongTheLastFiles)
{
    window.openDemo();
    EXPECT_TRUE(recentRows().isEmpty());
}

TEST_F(FileMenuJourney, SaysThatAFileIsGoneAndNamesItNoMore)
{
    window.openPath(in("gone.rigband"), OpenAs::New);
    open();
    fs::remove(in("gone.rigband").toStdString());
    recentRows()[1]->trigger();
    ASSERT_EQ(prompts.told.size(), 1U);
    EXPECT_NE(prompts.told[0].find("gone.rigband is not there any more"), std::string::npos);
    EXPECT_TRUE(isOpen("hangar.rigband"));
    EXPECT_EQ(recentRows().size(), 1);
}

TEST_F(FileMenuJourney, ShortensALongFolderInItsMiddleAndTellsAllOfItBeside)
{
    const fs::path deep = store.folder() / std::string(60, 'm') / "glid&ing" / std::string(60, 'n');
    fs::create_directories(deep);
    const QString path = QString::fromStdString(deep / "hangar.rigband");
    window.openPath(path, OpenAs::New);
    for (const double scale : {1.0, 1.5}) {
        window.setLook(lookAt(scale));
        const QAction& row = *recentRows().constFirst();
        EXPECT_TRUE(row.text().contains("…")) << row.text().toStdString();
        EXPECT_EQ(row.toolTip(), path);
        EXPECT_LT(window.findChild<QMenu*>("recentFiles")->sizeHint().width(), 1280);
    }
}

TEST_F(FileMenuJourney, TakesAFileThatIsDroppedOnIt)
{
    open();
    fs::copy_file(store.path(), in("other.rigband").toStdString());
    QWidget& page = *window.page(Moments::RiggedToday);
    EXPECT_FALSE(drop(window, {QUrl::fromLocalFile(in("notes.txt"))}));
    EXPECT_FALSE(drop(window, {QUrl::fromLocalFile(ours()), QUrl::fromLocalFile(in("other.rigband"))}));
    EXPECT_FALSE(drop(page, {QUrl{"https://example.org/other.rigband"}}));
    EXPECT_TRUE(isOpen("hangar.rigband"));
    EXPECT_TRUE(drop(window, {QUrl::fromLocalFile(in("other.rigband"))}));
    EXPECT_TRUE(isOpen("other.rigband"));
}

TEST_F(FileMenuJourney, AsksBeforeADroppedOrAnOpenedFileTakesThePlaceOfAHalfDoneEntry)
{
    open();
    fs::copy_file(store.path(), in("other.rigband").toStdString());
    qobject_cast<RiggedTodayPage*>(window.page(Moments::RiggedToday))->enterFromPaper();
    auto& day = part<QLineEdit>(window, "paperDay");
    day.setText("2026-05-09");
    EXPECT_TRUE(drop(day, {QUrl::fromLocalFile(in("other.rigband"))}));
    ASSERT_EQ(prompts.asked.size(), 1U);
    EXPECT_NE(prompts.asked[0].find("this file is left"), std::string::npos) << prompts.asked[0];
    EXPECT_EQ(day.text(), "2026-05-09");
    prompts.openFiles.push_back(in("other.rigband").toStdString());
    typist.press(Qt::Key_O, Qt::ControlModifier);
    Typist::look();
    EXPECT_EQ(prompts.asked.size(), 3U) << "which file, and whether";
    EXPECT_TRUE(isOpen("hangar.rigband"));
    prompts.confirmations.push_back(true);
    EXPECT_TRUE(drop(day, {QUrl::fromLocalFile(in("other.rigband"))}));
    EXPECT_TRUE(isOpen("other.rigband"));
}

TEST_F(FileMenuJourney, SavesACopyThatHoldsAllAndNeverOverAFile)
{
    open();
    const std::string taken = in("taken.rigband").toStdString();
    writeBytes(taken, "mine");
    prompts.newFiles = {taken, in("copy").toStdString()};
    typist.press(Qt::Key_S, Qt::ControlModifier | Qt::ShiftModifier);
    Typist::look();
    ASSERT_EQ(prompts.told.size(), 1U);
    EXPECT_NE(prompts.told[0].find("taken.rigband is there already"), std::string::npos) << prompts.told[0];
    EXPECT_EQ(bytesOf(taken), "mine");
    typist.press(Qt::Key_S, Qt::ControlModifier | Qt::ShiftModifier);
    Typist::look();
    ASSERT_EQ(prompts.told.size(), 2U);
    EXPECT_NE(prompts.told[1].find("copy.rigband now holds all"), std::string::npos) << prompts.told[1];
    EXPECT_TRUE(isOpen("hangar.rigband"));
    const auto copy =
        must(StoreFile::open(in("copy.rigband").toStdString(), OpenAs::Existing, store.clock()));
    IdSource ids{7};
    Records records{*copy, ids, store.clock()};
    EXPECT_EQ(must(records.readings(hangar.airframe)).size(), 1U);
}

TEST_F(FileMenuJourney, ShowsTheFolderOfTheFile)
{
    QTextBrowser shown;
    open();
    QDesktopServices::setUrlHandler("file", &shown, "setSource");
    typist.press(Qt::Key_F, Qt::ControlModifier | Qt::ShiftModifier);
    Typist::look();
    QDesktopServices::unsetUrlHandler("file");
    EXPECT_EQ(shown.source(), QUrl::fromLocalFile(QString::fromStdString(store.folder())));
    EXPECT_TRUE(prompts.told.empty());
}

TEST_F(FileMenuJourney, AsksForAFileFirstWhereNoneIsOpen)
{
    for (const Qt::Key key : {Qt::Key_S, Qt::Key_F}) {
        typist.press(key, Qt::ControlModifier | Qt::ShiftModifier);
        Typist::look();
    }
    EXPECT_EQ(prompts.told, (std::vector<std::string>{"Open a file first.", "Open a file first."}));
}

TEST_F(FileMenuJourney, TellsWhatTheProgramIsAndWhoseWorkIsInIt)
{
    typist.press(Qt::Key_F1, Qt::ControlModifier);
    Typist::look();
    ASSERT_EQ(prompts.told.size(), 1U);
    const std::string method = "method version " + std::to_string(kMethodVersion);
    for (const std::string& part :
         {std::string{RIGBAND_VERSION}, method, std::string{"never a limit"},
          std::string{"entitled to decide prevail"}, std::string{"Apache License"}, std::string{qVersion()},
          std::string{"SQLite"}, std::string{"Boost"}, std::string{"Inter"}})
        EXPECT_NE(prompts.told[0].find(part), std::string::npos) << part;
}

TEST_F(FileMenuJourney, LeavesTheKeysWithThePageWhenItIsShutOrARowStaysOnThePage)
{
    open();
    window.activateWindow();
    Typist::look();
    part(window, "leader").setFocus();
    const auto shut = [](QWidget* menu) { QTest::keyClick(menu, Qt::Key_Escape); };
    const auto enlarge = [](QWidget* menu) {
        for (QAction* row : menu->actions())
            if (row->shortcut() == QKeySequence{QKeySequence::ZoomIn})
                qobject_cast<QMenu*>(menu)->setActiveAction(row);
        QTest::keyClick(menu, Qt::Key_Return);
        menu->close(); // where the menu has no such row
    };
    for (const std::function<void(QWidget*)>& end : {std::function<void(QWidget*)>{shut}, {enlarge}})
        for (const char* button : {"fileMenu", "registration"}) {
            SCOPED_TRACE(button);
            QTimer::singleShot(0, &window, [&end] {
                QWidget* menu = QApplication::activePopupWidget();
                ASSERT_TRUE(menu);
                end(menu);
            });
            QTest::mouseClick(&part(window, button), Qt::LeftButton);
            Typist::look();
            if (QWidget* menu = QApplication::activePopupWidget())
                menu->close();
            EXPECT_EQ(window.focusWidget(), &part(window, "leader"));
        }
}

TEST_F(FileMenuJourney, TheStartOffersTheLastFileFirstWhileItIsThere)
{
    EXPECT_FALSE(part(window, "welcomeLast").isVisible()) << "none was opened";
    EXPECT_EQ(part(window, "welcomeNew").property("kind").toString(), "primary");
    open();
    MainWindow next{store.clock(), prompts};
    next.resize(1280, 800);
    next.show();
    next.activateWindow();
    Typist::look();
    ASSERT_TRUE(part(next, "welcomeLast").isVisible());
    EXPECT_EQ(part<QPushButton>(next, "welcomeLast").text().toStdString(), "Open hangar.rigband");
    Typist{next}.press(Qt::Key_Return);
    Typist::look();
    EXPECT_TRUE(next.windowTitle().contains("hangar.rigband"));
}

TEST_F(FileMenuJourney, TheStartOffersNoFileThatIsGone)
{
    window.openPath(in("gone.rigband"), OpenAs::New);
    MainWindow other{store.clock(), prompts};
    fs::remove(in("gone.rigband").toStdString());
    other.show();
    Typist::look();
    EXPECT_FALSE(part(other, "welcomeLast").isVisible());
}
