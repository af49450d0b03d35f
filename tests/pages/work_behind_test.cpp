// Work behind a page, and what is said of it there.

#include "app/widgets/laying_out.h"
#include "app/widgets/work_behind.h"
#include "tests/support/on_screen.h"

#include <QElapsedTimer>
#include <QProgressBar>
#include <QPushButton>
#include <QSignalSpy>

#include <memory>
#include <semaphore>
#include <stop_token>
#include <thread>
#include <vector>

using namespace rig;
using namespace rig::test;

namespace {

// Goes on until it is stopped or let go.
class Held
{
public:
    int operator()(Progress& progress)
    {
        const std::stop_callback end{progress.token(), [this] { go(); }};
        progress.goOn(42, 100);
        m_begun.release();
        m_go.acquire();
        return 7;
    }
    void awaitBegin() { m_begun.acquire(); }
    void go() { m_go.release(); }

private:
    std::binary_semaphore m_begun{0};
    std::counting_semaphore<> m_go{0};
};

template <typename Reached> bool turnUntil(Reached isReached)
{
    QElapsedTimer since;
    since.start();
    while (!isReached() && since.elapsed() < 20'000)
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 20);
    return isReached();
}

} // namespace

TEST(BehindAPage, WorkIsHandedOverInTheWindowsThread)
{
    WorkBehind behind;
    std::thread::id worked;
    std::thread::id taken;
    behind.begin([](Progress&) { return std::this_thread::get_id(); },
                 [&](std::thread::id id) {
                     worked = id;
                     taken = std::this_thread::get_id();
                 });
    EXPECT_TRUE(turnUntil([&] { return taken != std::thread::id{}; }));
    EXPECT_EQ(taken, std::this_thread::get_id());
    EXPECT_NE(worked, taken);
    EXPECT_FALSE(behind.isGoing());
}

TEST(BehindAPage, TheNewestWinsAndTheOlderIsStopped)
{
    WorkBehind behind;
    Held older;
    std::vector<int> taken;
    behind.begin([&older](Progress& progress) { return older(progress); },
                 [&taken](int made) { taken.push_back(made); });
    older.awaitBegin();
    behind.begin([](Progress&) { return 8; }, [&taken](int made) { taken.push_back(made); });
    EXPECT_TRUE(turnUntil([&] { return !taken.empty(); }));
    EXPECT_EQ(taken, std::vector{8});
}

TEST(BehindAPage, WhatIsNoLongerWantedIsNotHandedOver)
{
    WorkBehind behind;
    bool isTaken = false;
    behind.begin([](Progress&) { return 1; }, [&isTaken](int) { isTaken = true; });
    behind.stop();
    behind.finish();
    for (int i = 0; i < 50; ++i)
        QCoreApplication::processEvents(QEventLoop::AllEvents, 1);
    EXPECT_FALSE(isTaken);
}

TEST(BehindAPage, WhoeverWaitsHasItBeforeTheNextTurn)
{
    WorkBehind behind;
    int taken = 0;
    behind.begin([](Progress&) { return 1; }, [&taken](int made) { taken += made; });
    behind.finish();
    EXPECT_EQ(taken, 1);
    QCoreApplication::processEvents();
    EXPECT_EQ(taken, 1) << "once";
}

TEST(BehindAPage, GoesAwayInTheMiddle)
{
    Held held;
    auto behind = std::make_unique<WorkBehind>();
    bool isTaken = false;
    behind->begin([&held](Progress& progress) { return held(progress); },
                  [&isTaken](int) { isTaken = true; });
    held.awaitBegin();
    behind.reset();
    QCoreApplication::processEvents();
    EXPECT_FALSE(isTaken);
}

TEST(BehindAPage, SaysAfterAMomentWhatGoesOnHowFarItIsAndStops)
{
    QWidget page;
    auto* behind = new WorkBehind{&page};
    auto* said = new LayingOut{*behind, "Laying out."};
    said->setParent(&page);
    showAt(page, {600, 400});
    Held held;
    behind->begin([&held](Progress& progress) { return held(progress); }, [said](int) { said->end(); });
    said->begin();
    EXPECT_FALSE(said->isVisible());
    held.awaitBegin();
    EXPECT_TRUE(turnUntil([said] { return said->isVisible(); }));
    EXPECT_EQ(textOf(page, "layingOutSaid"), "Laying out.");
    EXPECT_EQ(textOf(page, "layingOutHowFar"), "42 in 100");
    EXPECT_EQ(page.findChild<QProgressBar*>()->value(), 420);
    QSignalSpy stop{said, &LayingOut::stopAsked};
    part<QPushButton>(page, "stopLayingOut").click();
    EXPECT_EQ(stop.size(), 1);
    held.go();
    EXPECT_TRUE(turnUntil([said] { return !said->isVisible(); }));
}
