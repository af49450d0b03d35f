// Work that takes long: the window goes on meanwhile, says how far it is, and Esc leaves everything as it
// was.

#include "app/report/review_files.h"
#include "app/widgets/long_work.h"
#include "app/window/main_window.h"
#include "core/progress.h"
#include "tests/fault/file_bytes.h"
#include "tests/support/laptop.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/typing.h"

#include <QElapsedTimer>
#include <QPushButton>
#include <QTemporaryDir>

#include <algorithm>
#include <filesystem>
#include <functional>
#include <semaphore>
#include <stop_token>

using namespace rig;
using namespace rig::test;
namespace fs = std::filesystem;

namespace {

// Somebody who watches the window while it works: how often it turned, and what stood over it.
class Watcher : public QObject
{
public:
    explicit Watcher(QWidget& window) : m_window{window}
    {
        m_since.start();
        m_timer.setInterval(5);
        connect(&m_timer, &QTimer::timeout, this, [this] { look(); });
        m_timer.start();
    }

    bool pressesEsc = false;
    std::function<void()> seen; // called once it stood there for a while
    int looks = 0;
    qint64 longest = 0; // milliseconds between two looks
    bool sawIt = false;
    std::string howFar;

private:
    void look()
    {
        ++looks;
        longest = std::max(longest, m_since.restart());
        auto* shown = m_window.findChild<QWidget*>("longWork");
        if (!shown || !shown->isVisible())
            return;
        sawIt = true;
        howFar = textOf(*shown, "longWorkHowFar");
        if (seen && ++m_seen > 20)
            std::exchange(seen, nullptr)();
        if (pressesEsc)
            QTest::keyClick(shown, Qt::Key_Escape);
    }

    QWidget& m_window;
    QTimer m_timer;
    QElapsedTimer m_since;
    int m_seen = 0;
};

class LongWorkJourney : public testing::Test
{
protected:
    LongWorkJourney()
    {
        must(store.records().add(hangar.reading(between(450, 500), store.clock().now()), Shown{}));
        store.close();
        window.resize(1280, 800);
        window.show();
        window.openPath(QString::fromStdString(store.path()), OpenAs::Existing);
        window.activateWindow();
        Typist::look();
    }

    // A copy of the file with so many readings more, put there by hand.
    std::string withReadings(int count) const
    {
        const std::string large = store.folder() / "large.rigband";
        fs::copy_file(store.path(), large);
        addReadingsByHand(large, count);
        return large;
    }
    // What lies beside the file that only work leaves which did not end well, or which came to its end.
    std::vector<std::string> traces() const
    {
        std::vector<std::string> names;
        for (const auto& one : fs::recursive_directory_iterator{store.folder()})
            for (const char* trace : {"before taking in", "reading-", "making-", "-journal"})
                if (one.path().filename().string().find(trace) != std::string::npos)
                    names.push_back(one.path().filename().string());
        return names;
    }

    TempStore store;
    Hangar hangar{store.records()};
    ScriptedPrompts prompts;
    MainWindow window{store.clock(), prompts};
    Typist typist{window};
};

} // namespace

TEST_F(LongWorkJourney, TheWindowTurnsAndSaysHowFarItIs)
{
    Watcher watcher{window};
    std::binary_semaphore seen{0};
    watcher.seen = [&seen] { seen.release(); };
    const bool isDone = LongWork::run(window, "Counting.", [&seen](Progress& progress) {
        EXPECT_TRUE(progress.goOn(42, 100));
        seen.acquire();
    });
    EXPECT_TRUE(isDone);
    EXPECT_TRUE(watcher.sawIt);
    EXPECT_EQ(watcher.howFar, "42 in 100");
    EXPECT_GT(watcher.looks, 20);
    EXPECT_FALSE(LongWork::standsOn(window));
}

TEST_F(LongWorkJourney, WhatIsSoonDoneIsNotTold)
{
    Watcher watcher{window};
    EXPECT_TRUE(LongWork::run(window, "Counting.", [](Progress&) {}));
    EXPECT_FALSE(watcher.sawIt);
}

TEST_F(LongWorkJourney, EscStopsIt)
{
    Watcher watcher{window};
    watcher.pressesEsc = true;
    EXPECT_FALSE(LongWork::run(window, "Counting.", [](Progress& progress) {
        std::binary_semaphore stopped{0};
        const std::stop_callback end{progress.token(), [&stopped] { stopped.release(); }};
        stopped.acquire();
        EXPECT_FALSE(progress.goOn(1, 0));
    }));
    EXPECT_FALSE(LongWork::standsOn(window));
}

TEST_F(LongWorkJourney, ALargeFileThatIsTakenInIsStoppedWithoutATrace)
{
    prompts.openFiles.push_back(withReadings(200'000));
    prompts.confirmations.push_back(true);
    const std::string before = bytesOf(store.path());
    Watcher watcher{window};
    watcher.pressesEsc = true;
    typist.press(Qt::Key_I, Qt::ControlModifier);
    Typist::look();
    EXPECT_TRUE(watcher.sawIt);
    EXPECT_GT(watcher.looks, 10) << "the window turned meanwhile";
    EXPECT_EQ(bytesOf(store.path()), before);
    EXPECT_TRUE(traces().empty()) << traces().front();
    EXPECT_TRUE(prompts.told.empty()) << prompts.told.front();
}

TEST_F(LongWorkJourney, ALargeFileComesInWhileTheWindowTurns)
{
    prompts.openFiles.push_back(withReadings(200'000));
    prompts.confirmations.push_back(true);
    Watcher watcher{window};
    typist.press(Qt::Key_I, Qt::ControlModifier);
    Typist::look();
    ASSERT_EQ(prompts.told.size(), 1U);
    EXPECT_NE(prompts.told.front().find("facts"), std::string::npos) << prompts.told.front();
    EXPECT_TRUE(watcher.sawIt);
    RecordProperty("longestWithoutATurnInMilliseconds", static_cast<int>(watcher.longest));
    const auto file = must(StoreFile::Connection::open(store.path(), StoreFile::Connection::Access::Reading));
    EXPECT_EQ(must(file->integer("SELECT count(*) FROM reading")), 200'001);
}

TEST_F(LongWorkJourney, AReportIsWrittenWhileTheWindowTurns)
{
    window.openDemo();
    Typist::look();
    window.showMoment(Moments::BeforeTheAnnual);
    Typist::look();
    prompts.saveFiles.push_back(store.folder() / "R.pdf");
    part<QPushButton>(window, "annualReport").click();
    Watcher watcher{window};
    part<QPushButton>(window, "previewSave").click();
    Typist::look();
    EXPECT_TRUE(fs::exists(store.folder() / "R.pdf"));
    EXPECT_TRUE(fs::exists(store.folder() / "R-csv"));
    EXPECT_GT(watcher.looks, 10) << "the window turned meanwhile";
    std::printf("longest without a turn: %lld ms\n", static_cast<long long>(watcher.longest));
}

TEST_F(LongWorkJourney, AReportThatIsStoppedLeavesNoFile)
{
    const std::string path = store.folder() / "R.pdf";
    const AirframeFacts facts;
    Progress stopped;
    stopped.stop();
    QString failed;
    EXPECT_FALSE(writeReviewFiles(QString::fromStdString(path), facts, airframeReviewOf(facts, {}), {},
                                  failed, &stopped));
    EXPECT_FALSE(fs::exists(path));
    EXPECT_FALSE(fs::exists(store.folder() / "R-csv"));
}
