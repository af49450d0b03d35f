// Long work that somebody stops, at every place where it asks whether to go on: nothing is left of it.

#include "core/progress.h"
#include "core/store/chain_look.h"
#include "core/store/copies.h"
#include "core/store/inspection.h"
#include "core/store/join.h"
#include "tests/support/laptop.h"

#include <chrono>
#include <filesystem>
#include <fstream>
#include <functional>
#include <gtest/gtest.h>
#include <iterator>
#include <map>

using namespace rig;
using namespace rig::test;
namespace fs = std::filesystem;

namespace {

class StopsAt : public Progress
{
public:
    explicit StopsAt(int at) : m_at{at} {}
    bool wasWhole() const { return m_wasWhole; } // it was told that everything is done

private:
    void told(std::size_t done, std::size_t of) override
    {
        m_wasWhole = of > 0 && done == of;
        if (++m_asked == m_at)
            stop();
    }
    int m_at;
    int m_asked = 0;
    bool m_wasWhole = false;
};

class Stopped : public testing::Test
{
protected:
    Stopped()
    {
        must(store.records().add(hangar.reading(between(450, 500), store.clock().now()), Shown{}));
        store.close();
        fs::copy_file(store.path(), twin);
        Laptop other{twin, 5};
        other.clock.passMinutes(30);
        other.read(hangar, 600);
        other.read(hangar, 650);
    }

    // Every file in the folder and below it, byte for byte.
    std::map<std::string, std::string> everything() const
    {
        std::map<std::string, std::string> all;
        for (const auto& one : fs::recursive_directory_iterator{store.folder()}) {
            if (!one.is_regular_file())
                continue;
            std::ifstream file{one.path(), std::ios::binary};
            all[one.path().string()] = {std::istreambuf_iterator<char>{file},
                                        std::istreambuf_iterator<char>{}};
        }
        return all;
    }

    // How often it could be stopped; each time nothing is left. In the end it is done.
    int stopEverywhere(const std::function<bool(Progress&)>& work) const
    {
        const auto before = everything();
        for (int at = 1;; ++at) {
            StopsAt progress{at};
            const bool isDone = work(progress);
            if (!progress.isStopped()) {
                EXPECT_TRUE(isDone);
                EXPECT_NE(everything(), before);
                return at - 1;
            }
            EXPECT_FALSE(isDone) << "stopped at " << at;
            EXPECT_EQ(everything(), before) << "stopped at " << at;
        }
    }

    TempStore store;
    Hangar hangar{store.records()};
    std::string twin = store.folder() / "twin.rigband";
    std::string out = store.folder() / "out.rigband";
};

} // namespace

TEST_F(Stopped, TakingInLeavesTheFileByteForByte)
{
    const int stops = stopEverywhere([this](Progress& progress) {
        const auto theirs = OtherFile::read(twin, store.path(), &progress);
        return theirs && takeIn(store.path(), *theirs.value(), &progress);
    });
    EXPECT_GT(stops, 20) << "it asks after each kind of fact";
    Laptop ours{store.path(), 7};
    EXPECT_EQ(must(ours.records->readings(hangar.airframe)).size(), 3U);
    EXPECT_EQ(must(ours.file().lookAtChain()).faults, 0);
}

TEST_F(Stopped, ForeseeingLeavesNothingBesideTheFile)
{
    const auto before = everything();
    for (int at = 1; at < 60; ++at) {
        StopsAt progress{at};
        const auto theirs = OtherFile::read(twin, store.path(), &progress);
        if (theirs) {
            const bool isForeseen{foresee(store.path(), *theirs.value(), &progress)};
            EXPECT_NE(isForeseen, progress.isStopped()) << at;
        }
    }
    EXPECT_EQ(everything(), before);
}

TEST_F(Stopped, JoiningMakesNoFile)
{
    EXPECT_GT(stopEverywhere([this](Progress& progress) {
                  const auto ours = OtherFile::read(store.path(), out, &progress);
                  const auto theirs = OtherFile::read(twin, out, &progress);
                  return ours && theirs && join(*ours.value(), *theirs.value(), out, &progress);
              }),
              40);
}

TEST_F(Stopped, SalvagingMakesNoFile)
{
    EXPECT_GT(stopEverywhere([this](Progress& progress) {
                  return bool{StoreFile::salvage(twin, out, store.clock(), &progress)};
              }),
              20)
        << "it asks at each row";
}

TEST_F(Stopped, CopyingMakesNoFile)
{
    EXPECT_GE(stopEverywhere([this](Progress& progress) { return bool{copyIntoNew(twin, out, &progress)}; }),
              1);
}

TEST_F(Stopped, LookingAFileThroughEndsWhereverItAsks)
{
    const auto file = must(StoreFile::Connection::open(twin, StoreFile::Connection::Access::Reading));
    const auto findings = [&](Progress& progress) {
        return bool{findingsIn(*file, store.clock().now(), &progress)};
    };
    const auto chain = [&](Progress& progress) { return bool{lookAtChain(*file, &progress)}; };
    for (const std::function<bool(Progress&)>& look : {std::function<bool(Progress&)>{findings}, {chain}}) {
        int stops = 0;
        for (int at = 1;; ++at) {
            StopsAt progress{at};
            const bool isDone = look(progress);
            EXPECT_NE(isDone, progress.isStopped()) << "stopped at " << at;
            if (isDone)
                break;
            ++stops;
        }
        EXPECT_GT(stops, 20) << "it asks after each kind of fact";
    }
}

TEST_F(Stopped, LookingAFileThroughTellsInTheEndThatAllIsDone)
{
    const auto file = must(StoreFile::Connection::open(twin, StoreFile::Connection::Access::Reading));
    StopsAt findings{0};
    must(findingsIn(*file, store.clock().now(), &findings));
    EXPECT_TRUE(findings.wasWhole());
    StopsAt chain{0};
    must(lookAtChain(*file, &chain));
    EXPECT_TRUE(chain.wasWhole());
}

TEST_F(Stopped, WorkTellsInTheEndThatAllIsDone)
{
    StopsAt never{0};
    const auto theirs = must(OtherFile::read(twin, store.path()));
    must(takeIn(store.path(), *theirs, &never));
    EXPECT_TRUE(never.wasWhole());
}

TEST_F(Stopped, AWindowThatHasTheFileOpenMeetsWhatCameInBesideIt)
{
    Laptop ours{store.path(), 7};
    EXPECT_EQ(must(ours.records->readings(hangar.airframe)).size(), 1U);
    const auto theirs = must(OtherFile::read(twin, store.path()));
    must(takeIn(store.path(), *theirs, nullptr));
    EXPECT_EQ(must(ours.records->readings(hangar.airframe)).size(), 3U);
    ours.clock.passMinutes(60);
    ours.read(hangar, 700);
    EXPECT_EQ(must(ours.file().lookAtChain()).faults, 0) << "it goes on from the end that came in";
}

TEST_F(Stopped, AStatementEndsInTheMiddleAndTheConnectionGoesOn)
{
    constexpr const char* kCount =
        "WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < %1) "
        "SELECT count(*) FROM n";
    const auto file = must(StoreFile::Connection::open(twin, StoreFile::Connection::Access::Reading));
    Progress progress;
    progress.stop();
    {
        const Watched watched{*file, &progress};
        EXPECT_FALSE(file->integer(QString(kCount).arg(2'000'000'000)));
    }
    EXPECT_EQ(must(file->integer(QString(kCount).arg(100'000))), 100'000);
}
