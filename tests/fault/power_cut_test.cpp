// The power goes at every call that a rigging makes to the disk.

#include "tests/fault/file_bytes.h"
#include "tests/fault/power_cut.h"
#include "tests/fault/scripted_rigging.h"

#include <gtest/gtest.h>
#include <iostream>
#include <set>

using namespace rig;
using namespace rig::test;

namespace {

// A call of a rigging that went well, and how many facts had been acknowledged before it.
struct CallMade
{
    DiskCall call;
    std::string bytes; // those of the call
    std::size_t acknowledged;
};

struct RiggingMade
{
    std::vector<CallMade> calls;
    std::vector<IdBytes> facts; // in the order in which they were acknowledged
};

RiggingMade riggingMade(const FileToSaveIn& file, const char* setting)
{
    file.beginAgain();
    RiggingMade made;
    const ShimVfs shim{[&](const DiskCall& call) -> DiskAnswer {
        const bool isOfTheFile = call.path == file.path() || call.path.starts_with(file.path() + "-");
        if (isOfTheFile && call.kind != DiskCall::Kind::Lock) // what does nothing to a disk
            made.calls.push_back({call, std::string{call.bytes}, made.facts.size()});
        return {};
    }};
    const Acknowledge acknowledge = [&made](const std::vector<IdBytes>& facts) {
        made.facts.insert(made.facts.end(), facts.begin(), facts.end());
    };
    EXPECT_TRUE(saveRigging({file.path(), file.hangar(), acknowledge, 7, setting}).empty());
    return made;
}

struct Told
{
    int cuts = 0;
    int lost = 0;
    int half = 0;
    std::string why;
};

class PowerCut : public testing::Test
{
protected:
    // Cuts before each call of a rigging and after the last.
    Told cutEverywhere(unsigned draws, const char* setting = nullptr)
    {
        const RiggingMade made = riggingMade(file, setting);
        UncertainDisk disk{file.path(), file.bytes()};
        Told told;
        for (const auto& [call, bytes, acknowledged] : made.calls) {
            cut(disk, draws, {made.facts.begin(), made.facts.begin() + static_cast<long>(acknowledged)},
                told);
            DiskCall again = call;
            again.bytes = bytes;
            disk.take(again);
        }
        cut(disk, draws, made.facts, told);
        std::cout << told.cuts << " cuts at " << made.calls.size() + 1 << " moments, " << seen.size()
                  << " disks that differ, " << told.lost << " lost, " << told.half << " half\n";
        return told;
    }

private:
    void cut(const UncertainDisk& disk, unsigned draws, const std::vector<IdBytes>& acknowledged, Told& told)
    {
        for (unsigned draw = 0; draw < draws; ++draw) {
            ++told.cuts; // by which all draws differ but the first two
            const unsigned number = draw < 2 ? draw : draw + draws * static_cast<unsigned>(told.cuts);
            const auto files = disk.afterTheCut(number);
            std::string all = std::to_string(acknowledged.size());
            for (const auto& [path, bytes] : files)
                all += path + bytes;
            if (!seen.insert(std::hash<std::string>{}(all)).second)
                continue; // tried already
            file.beginAgain();
            for (const auto& [path, bytes] : files)
                writeBytes(path, bytes);
            const Kept kept = keptIn(file.path(), acknowledged);
            told.lost += kept.lost;
            told.half += kept.half;
            if (told.why.empty() && kept.lost + kept.half > 0)
                told.why =
                    "cut " + std::to_string(told.cuts) + ", draw " + std::to_string(number) + ": " + kept.why;
        }
    }

    FileToSaveIn file;
    std::set<std::size_t> seen; // by hash
};

} // namespace

TEST_F(PowerCut, LosesNothingThatWasAcknowledgedAndKeepsNothingByHalves)
{
    const Told told = cutEverywhere(isThorough() ? 40 : 5);
    EXPECT_EQ(told.lost, 0) << told.why;
    EXPECT_EQ(told.half, 0) << told.why;
}

// What would be lost by saving less carefully is seen, or the test above would say nothing.
TEST_F(PowerCut, WouldBringAJournalBackIfItsEndWereNotSynced)
{
    EXPECT_GT(cutEverywhere(1, "PRAGMA synchronous = FULL").lost, 0);
}

TEST_F(PowerCut, WouldTearAFileThatIsNotSynced)
{
    const Told told = cutEverywhere(3, "PRAGMA synchronous = OFF");
    EXPECT_GT(told.lost, 0);
    EXPECT_GT(told.half, 0);
}
