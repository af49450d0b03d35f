// The window around the pages: colours, and what goes on behind it while a file is already shown.

#include "app/pages/rigged_today/rigged_today_page.h"
#include "app/pages/setup/setup_page.h"
#include "app/window/main_window.h"
#include "app/window/question_bar.h"
#include "app/window/start_up.h"
#include "app/wording/chain_words.h"
#include "core/airframe/id_source.h"
#include "tests/fault/file_bytes.h"
#include "tests/house/wording.h"
#include "tests/support/clipped.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/typing.h"

#include <QAction>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>

#include <algorithm>
#include <sqlite3.h>

using namespace rig;
using namespace rig::test;

namespace {

// Where the last readings stand in the file.
std::size_t placeOfReadings(const std::string& path)
{
    sqlite3* file = nullptr;
    EXPECT_EQ(sqlite3_open(path.c_str(), &file), SQLITE_OK);
    sqlite3_stmt* ask = nullptr;
    EXPECT_EQ(sqlite3_prepare_v2(
                  file, "SELECT max(pgoffset) FROM dbstat WHERE name = 'reading' AND pagetype = 'leaf'", -1,
                  &ask, nullptr),
              SQLITE_OK);
    EXPECT_EQ(sqlite3_step(ask), SQLITE_ROW);
    const auto place = static_cast<std::size_t>(sqlite3_column_int64(ask, 0));
    EXPECT_GT(place, 0U);
    sqlite3_finalize(ask);
    sqlite3_close(file);
    return place;
}

// As somebody would who knows SQL and covers the tracks: the triggers stand again afterwards.
void changeByHand(const std::string& path)
{
    sqlite3* file = nullptr;
    EXPECT_EQ(sqlite3_open(path.c_str(), &file), SQLITE_OK);
    std::string trigger;
    const auto take = [](void* into, int, char** cells, char**) {
        *static_cast<std::string*>(into) = cells[0];
        return 0;
    };
    EXPECT_EQ(sqlite3_exec(file, "SELECT sql FROM sqlite_schema WHERE name = 'reading_no_update'", take,
                           &trigger, nullptr),
              SQLITE_OK);
    const std::string change = "DROP TRIGGER reading_no_update; UPDATE reading SET enters_um = 800, "
                               "refuses_um = 850 WHERE id = (SELECT max(id) FROM reading); " +
                               trigger;
    EXPECT_EQ(sqlite3_exec(file, change.c_str(), nullptr, nullptr, nullptr), SQLITE_OK);
    sqlite3_close(file);
}

// To the layout before the chain.
void setBackByHand(const std::string& path)
{
    sqlite3* file = nullptr;
    EXPECT_EQ(sqlite3_open(path.c_str(), &file), SQLITE_OK);
    EXPECT_EQ(sqlite3_exec(file,
                           "DROP TABLE name_replaced; DROP TABLE decision; DROP TABLE tie; DROP TABLE link; "
                           "DROP TABLE origin; PRAGMA user_version = 11",
                           nullptr, nullptr, nullptr),
              SQLITE_OK);
    sqlite3_close(file);
}

class Window : public testing::Test
{
protected:
    Window()
    {
        must(store.records().together([this]() -> Outcome {
            for (int i = 0; i < 300; ++i)
                must(store.records().add(hangar.reading(between(450, 500), store.clock().now()), {}));
            return Done{};
        }));
        store.close();
        window.resize(1280, 800);
        window.show();
    }

    void open() { window.openPath(QString::fromStdString(store.path()), OpenAs::Existing); }
    QString ground() { return QApplication::palette().color(QPalette::Window).name(); }

    TempStore store;
    Hangar hangar{store.records()};
    ScriptedPrompts prompts;
    MainWindow window{store.clock(), prompts};
};

} // namespace

TEST_F(Window, OpensAtItsUsualSizeWhereTheScreenHasRoomAndFillsASmallOne)
{
    QWidget large;
    showWithin(large, {1920, 1080});
    EXPECT_EQ(large.size(), QSize(1280, 800));
    EXPECT_FALSE(large.isMaximized());
    QWidget small;
    showWithin(small, {1280, 800});
    EXPECT_TRUE(small.isMaximized());
    EXPECT_LT(small.normalGeometry().height(), 800);
}

TEST_F(Window, BearsThePicturesOfTheProgram)
{
    const QIcon icon = programIcon();
    for (const int size : {16, 24, 32, 48, 64, 128, 256}) {
        EXPECT_EQ(icon.actualSize({size, size}), QSize(size, size));
        EXPECT_EQ(icon.pixmap(size, size).toImage().pixelColor(size / 2, size / 8).alpha(), 255);
    }
}

TEST_F(Window, GoesRoundItsThreeColoursWithF9)
{
    window.setLook({Theme::dark(), {}});
    const auto actions = window.findChildren<QAction*>();
    const auto f9 =
        std::ranges::find_if(actions, [](const QAction* one) { return one->shortcut() == Qt::Key_F9; });
    ASSERT_NE(f9, actions.end());
    const QString before = ground();
    const auto rows = window.findChild<QMenu*>("colours")->actions();
    for (const Scheme next : {Scheme::Sunlight, Scheme::Light, Scheme::Dark}) {
        (*f9)->trigger();
        EXPECT_EQ(window.look().theme.scheme(), next);
        EXPECT_EQ(ground() == before, next == Scheme::Dark);
        EXPECT_EQ(std::ranges::count_if(rows, &QAction::isChecked), 1);
    }
}

TEST_F(Window, HasARowForEachOfItsColours)
{
    const auto rows = window.findChild<QMenu*>("colours")->actions();
    ASSERT_GE(rows.size(), 3);
    for (const auto& [row, scheme] :
         {std::pair{2, Scheme::Sunlight}, {1, Scheme::Dark}, {0, Scheme::Light}}) {
        rows[row]->trigger();
        EXPECT_EQ(window.look().theme.scheme(), scheme);
        EXPECT_TRUE(rows[row]->isChecked());
    }
}

TEST(DesktopLook, FollowsADesktopOfHighContrast)
{
    const auto of = [](const char* ground, const char* words) {
        QPalette palette;
        palette.setColor(QPalette::Window, QColor{ground});
        palette.setColor(QPalette::WindowText, QColor{words});
        return palette;
    };
    const QPalette plain = of("#efefef", "#000000");
    EXPECT_EQ(schemeFor(of("#ffffff", "#000000"), plain), Scheme::Sunlight);
    EXPECT_EQ(schemeFor(of("#000000", "#ffffff"), plain), Scheme::Dark);
    EXPECT_EQ(schemeFor(of("#f0f0f0", "#2e3436"), plain), Scheme::Light);
    EXPECT_EQ(schemeFor(plain, plain), Scheme::Light) << "no desktop has said anything";
}

TEST_F(Window, ShowsAFileBeforeItIsLookedThroughAndClosesItWhenItIsFoundDamaged)
{
    std::string bytes = bytesOf(store.path());
    bytes.replace(placeOfReadings(store.path()), 512, 512, '\xA5'); // which the first page is painted without
    writeBytes(store.path(), bytes);
    open();
    EXPECT_TRUE(window.page(Moments::RiggedToday));
    EXPECT_TRUE(QTest::qWaitFor([this] { return !window.page(Moments::RiggedToday); }));
    EXPECT_NE(textOf(window, "problemText").find("damaged"), std::string::npos);
    EXPECT_TRUE(part(window, "welcomeOpen").isVisible());
    EXPECT_TRUE(bytes == bytesOf(store.path()));
}

TEST_F(Window, ReadsWhatCanBeReadOfADamagedFileIntoANewOneByKeys)
{
    std::string bytes = bytesOf(store.path());
    bytes.replace(placeOfReadings(store.path()), 512, 512, '\xA5');
    writeBytes(store.path(), bytes);
    open();
    ASSERT_TRUE(QTest::qWaitFor([this] { return part(window, "salvage").isVisible(); }));
    for (const double scale : {1.0, 1.5}) {
        window.setLook(lookAt(scale));
        Typist::look();
        expectNothingClipped(part(window, "problemBanner"), 3);
    }
    window.activateWindow();
    Typist typist{window};
    const std::string taken = store.folder() / "taken.rigband";
    writeBytes(taken, "mine");
    prompts.newFiles = {taken, store.folder() / "saved"};
    typist.press(Qt::Key_R, Qt::ControlModifier);
    Typist::look();
    ASSERT_EQ(prompts.told.size(), 1U);
    EXPECT_NE(prompts.told.back().find("taken.rigband is there already"), std::string::npos)
        << prompts.told.back();
    EXPECT_EQ(bytesOf(taken), "mine");
    typist.press(Qt::Key_R, Qt::ControlModifier);
    Typist::look();
    ASSERT_EQ(prompts.told.size(), 2U);
    EXPECT_NE(prompts.told.back().find("Facts read and kept in saved.rigband"), std::string::npos);
    EXPECT_NE(prompts.told.back().find("of the table “reading”"), std::string::npos) << prompts.told.back();
    EXPECT_TRUE(window.page(Moments::RiggedToday)->isVisible());
    EXPECT_TRUE(window.windowTitle().contains("saved.rigband"));
    EXPECT_FALSE(part(window, "problemBanner").isVisible());
    EXPECT_TRUE(bytes == bytesOf(store.path()));
}

TEST_F(Window, OffersNoReadingOfWhatIsNoFileOfOurs)
{
    const std::string other = store.folder() / "other.rigband";
    writeBytes(other, "somebody's letters");
    window.openPath(QString::fromStdString(other), OpenAs::Existing);
    EXPECT_TRUE(part(window, "problemBanner").isVisible());
    EXPECT_FALSE(part(window, "salvage").isVisible());
}

TEST_F(Window, SaysOnEveryPageWhatWasChangedByAnotherProgramAndNoSaveHidesIt)
{
    changeByHand(store.path());
    open();
    auto& bar = part<QFrame>(window, "faultsBar");
    ASSERT_TRUE(QTest::qWaitFor([&] { return bar.isVisible(); }));
    EXPECT_EQ(part<QLabel>(bar, "faultsBarText").text(), ChainWords::faults(1));
    for (const Moments moment : {Moments::Trends, Moments::BeforeTheAnnual, Moments::SetUp}) {
        window.showMoment(moment);
        EXPECT_TRUE(bar.isVisible());
    }
    QTest::keyClick(&window, Qt::Key_7, Qt::ControlModifier);
    const QStringList said = wordsOn(part<QWidget>(window, "faults"));
    EXPECT_TRUE(said.join(' ').contains("Left aileron")) << said.join(' ').toStdString();
    EXPECT_TRUE(said.join(' ').contains("enters: 0.80 mm"));
    EXPECT_TRUE(said.contains("What another program changed"));
    EXPECT_TRUE(said.contains("The copies are listed with Ctrl+9.")) << "what to compare with";
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    EXPECT_FALSE(part<QWidget>(window, "faults").isVisible());
    EXPECT_TRUE(bar.isVisible());
}

TEST_F(Window, SaysOnEveryPageWhatNobodyCanTellOfAFileThatWasSetBackToBeforeItsChain)
{
    setBackByHand(store.path());
    open();
    auto& bar = part<QFrame>(window, "faultsBar");
    ASSERT_TRUE(QTest::qWaitFor([&] { return bar.isVisible(); }));
    const FixedClock clock;
    const std::int64_t facts = must(must(StoreFile::open(store.path(), OpenAs::ToLook, clock))->end()).facts;
    EXPECT_EQ(part<QLabel>(bar, "faultsBarText").text(), ChainWords::takenOver(facts)) << "as check says it";
    QTest::keyClick(&window, Qt::Key_7, Qt::ControlModifier);
    const QStringList said = wordsOn(part<QWidget>(window, "faults"));
    EXPECT_TRUE(said.contains(ChainWords::takenOver(facts)));
    EXPECT_FALSE(said.contains("What another program changed"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    EXPECT_TRUE(bar.isVisible());
    changeByHand(store.path());
    EXPECT_TRUE(
        QTest::qWaitFor([&] { return part<QLabel>(bar, "faultsBarText").text() == ChainWords::faults(1); }));
}

TEST_F(Window, SaysSoTooWhereAnotherProgramChangesTheFileWhileItIsOpen)
{
    open();
    auto& bar = part<QFrame>(window, "faultsBar");
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.page(Moments::RiggedToday) != nullptr; }));
    EXPECT_FALSE(bar.isVisible());
    changeByHand(store.path());
    EXPECT_TRUE(QTest::qWaitFor([&] { return bar.isVisible(); }));
}

TEST_F(Window, NoPageShowsACouplingAsGoodOfWhichAnotherProgramChangedAFact)
{
    changeByHand(store.path());
    open();
    auto& bar = part<QFrame>(window, "faultsBar");
    ASSERT_TRUE(QTest::qWaitFor([&] { return bar.isVisible(); }));
    QTest::keyClick(&window, Qt::Key_2, Qt::ControlModifier);
    EXPECT_TRUE(wordsOn(*window.page(Moments::Trends))
                    .contains("Cannot tell: another program changed facts it rests on, or may have"))
        << textOf(window, "nowTitle");
    EXPECT_EQ(part<QFrame>(window, "nowCard").property("verdict").toString(), "near");
    QTest::keyClick(&window, Qt::Key_3, Qt::ControlModifier);
    EXPECT_TRUE(wordsOn(*window.page(Moments::BeforeTheAnnual))
                    .join('\n')
                    .contains("another program changed facts it rests on, or may have"));
}

// The page that is seen is read anew when it is found.
TEST_F(Window, APageThatIsSeenTellsSoWhereAnotherProgramChangesAFactMeanwhile)
{
    open();
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.page(Moments::RiggedToday) != nullptr; }));
    window.showMoment(Moments::Trends);
    EXPECT_FALSE(QString::fromStdString(textOf(window, "nowTitle")).startsWith("Cannot tell"));
    changeByHand(store.path());
    EXPECT_TRUE(QTest::qWaitFor([&] {
        return QString::fromStdString(textOf(window, "nowTitle")).startsWith("Cannot tell: another program");
    }));
}

TEST_F(Window, SaysWhenNoCopyOfTheDayCouldBeKept)
{
    writeBytes((store.folder() / "hangar-copies").string(), "a file in the folder's place");
    open();
    EXPECT_TRUE(QTest::qWaitFor([this] { return part(window, "problemBanner").isVisible(); }));
    EXPECT_NE(textOf(window, "problemText").find("No copy of hangar.rigband"), std::string::npos);
    EXPECT_TRUE(window.page(Moments::RiggedToday));
}

TEST_F(Window, AsksBeforeItClosesInTheMiddleOfAnEntryFromPaper)
{
    open();
    auto* rigging = qobject_cast<RiggedTodayPage*>(window.page(Moments::RiggedToday));
    rigging->enterFromPaper();
    part<QLineEdit>(window, "paperDay").setText("2026-05-09");
    window.showMoment(Moments::Trends);
    EXPECT_FALSE(window.close());
    EXPECT_TRUE(window.isVisible());
    ASSERT_EQ(prompts.asked.size(), 1U);
    prompts.confirmations.push_back(true);
    EXPECT_TRUE(window.close());
}

TEST_F(Window, ShowsInTheQuestionsAndInSetUpWhatAnotherProgramHasWritten)
{
    open();
    const auto file = must(StoreFile::open(store.path(), OpenAs::Existing, store.clock()));
    IdSource ids{7};
    Records other{*file, ids, store.clock()};
    window.showQuestions();
    Question question;
    question.airframe = hangar.airframe;
    question.kind = QuestionKind::CannotSee;
    question.record = must(other.add(hangar.record(store.clock().now())));
    question.coupling = hangar.leftAileron;
    must(other.add(question));
    EXPECT_TRUE(QTest::qWaitFor([this] { return part(window, "questionsCount").isVisible(); }));
    window.showMoment(Moments::SetUp);
    qobject_cast<SetUpPage*>(window.page(Moments::SetUp))->showPart(SetUpPart::People);
    const auto people = [this] {
        const auto rows = window.page(Moments::SetUp)->findChildren<QAbstractButton*>();
        return std::ranges::count_if(rows, [](const QAbstractButton* row) {
            return row->objectName().startsWith("person") && row->isVisible();
        });
    };
    const auto before = people();
    must(other.add(aPerson("A. Quill")));
    EXPECT_TRUE(QTest::qWaitFor([&] { return people() == before + 1; }));
}

TEST_F(Window, ShowsOnEveryPageWhatAnotherProgramHasWritten)
{
    open();
    window.showMoment(Moments::BeforeTheAnnual);
    const std::string before = textOf(*window.page(Moments::BeforeTheAnnual), "annualCounted");
    const auto file = must(StoreFile::open(store.path(), OpenAs::Existing, store.clock()));
    IdSource ids{7};
    Records other{*file, ids, store.clock()};
    RiggingRecord record = hangar.record(store.clock().now());
    record.id = must(other.add(record));
    Reading theirs = hangar.reading(between(900, 950), store.clock().now());
    theirs.record = record.id;
    theirs.id = must(other.add(theirs, std::nullopt));
    Question question;
    question.airframe = hangar.airframe;
    question.kind = QuestionKind::OutsideReading;
    question.record = record.id;
    question.coupling = hangar.leftAileron;
    question.reading = theirs.id;
    must(other.add(question));
    const auto isToldAnew = [&] {
        return textOf(*window.page(Moments::BeforeTheAnnual), "annualCounted") != before &&
               part<QuestionBar>(window, "questionBar").isVisible();
    };
    EXPECT_TRUE(QTest::qWaitFor(isToldAnew));
}
