// Each call that a rigging makes to the disk fails in turn: nothing that was said to be saved is lost,
// nothing is there by halves, and what is told is the disk's trouble.

#include "tests/fault/scripted_rigging.h"
#include "tests/fault/shim_vfs.h"

#include <gtest/gtest.h>
#include <iostream>

using namespace rig;
using namespace rig::test;

namespace {

using Kind = DiskCall::Kind;

enum class Failing { Once, FromThenOn };

// How a disk refuses: in what way, and for how long.
struct Refusal
{
    const char* name;
    int writing; // the code of a write that fails
    bool isHalfWritten;
    Failing failing;
};
constexpr Refusal kRefusals[] = {
    {"full for one write", SQLITE_FULL, false, Failing::Once},
    {"full after half a write", SQLITE_FULL, true, Failing::FromThenOn},
    {"broken for one call", SQLITE_IOERR_WRITE, true, Failing::Once},
    {"broken from then on", SQLITE_IOERR_WRITE, false, Failing::FromThenOn},
};

int codeOf(Kind kind, const Refusal& refusal)
{
    switch (kind) {
    case Kind::Create:
        return SQLITE_CANTOPEN;
    case Kind::Write:
        return refusal.writing;
    case Kind::Truncate:
        return SQLITE_IOERR_TRUNCATE;
    case Kind::Sync:
        return SQLITE_IOERR_FSYNC;
    case Kind::SyncFolder:
        return SQLITE_IOERR_DIR_FSYNC;
    case Kind::Lock:
        return SQLITE_IOERR_LOCK;
    case Kind::Delete:
        return SQLITE_IOERR_DELETE;
    }
    return SQLITE_ERROR;
}

// A full disk refuses what takes room, a broken one everything.
bool isRefused(Kind kind, const Refusal& refusal)
{
    return refusal.writing != SQLITE_FULL || kind == Kind::Write || kind == Kind::Create;
}

struct TriedRun
{
    int calls = 0;
    int failed = 0;            // of them
    bool isKeptUntold = false; // the folder could not be synced: kept, and told as not kept
    std::vector<IdBytes> acknowledged;
    std::vector<Problem> problems;
};

// The call of that number, counted from 1, fails.
TriedRun runFailingAt(const FileToSaveIn& file, int number, const Refusal& refusal)
{
    file.beginAgain(FileToSaveIn::Copying::ToDo);
    TriedRun run;
    const ShimVfs shim{[&](const DiskCall& call) -> DiskAnswer {
        if (++run.calls < number || !isRefused(call.kind, refusal) ||
            (run.failed > 0 && refusal.failing == Failing::Once))
            return {};
        ++run.failed;
        run.isKeptUntold |= call.kind == Kind::SyncFolder;
        return {codeOf(call.kind, refusal), refusal.isHalfWritten ? call.bytes.size() / 2 : 0};
    }};
    run.problems =
        saveRigging({file.path(), file.hangar(), [&run](const std::vector<IdBytes>& facts) {
                         run.acknowledged.insert(run.acknowledged.end(), facts.begin(), facts.end());
                     }});
    return run;
}

bool isOfTheDisk(const Problem& problem, const TriedRun& run)
{
    if (problem.kind == ProblemKind::FactRefused) // pressed again: the record is closed already
        return run.isKeptUntold;
    return problem.kind == ProblemKind::DiskFull || problem.kind == ProblemKind::CannotOpen ||
           problem.kind == ProblemKind::Unexpected;
}

void expectHeld(const FileToSaveIn& file, const TriedRun& run, const std::string& where)
{
    const Kept kept = keptIn(file.path(), run.acknowledged);
    EXPECT_EQ(kept.lost, 0) << where << kept.why;
    EXPECT_EQ(kept.half, 0) << where << kept.why;
    EXPECT_TRUE(run.failed > 0 || run.problems.empty()) << where;
    for (const Problem& problem : run.problems)
        EXPECT_TRUE(isOfTheDisk(problem, run)) << where << describe(problem);
}

} // namespace

// Each call in one of the ways, or in each of them where it may take longer.
TEST(FailingDisk, LosesNothingThatWasAcknowledgedAndKeepsNothingByHalves)
{
    const FileToSaveIn file;
    const std::size_t ways = std::size(kRefusals);
    const std::size_t each = isThorough() ? ways : 1;
    int runs = 0;
    int failures = 0;
    std::size_t told = 0;
    for (int number = 1, last = 0; last == 0; ++number) {
        for (std::size_t way = 0; way < each; ++way) {
            const Refusal& refusal = kRefusals[(static_cast<std::size_t>(number) + way) % ways];
            const TriedRun run = runFailingAt(file, number, refusal);
            expectHeld(file, run, std::string{refusal.name} + ", call " + std::to_string(number) + ": ");
            ASSERT_FALSE(HasFailure());
            ++runs;
            failures += run.failed;
            told += run.problems.size();
            if (run.calls < number)
                last = number;
        }
    }
    std::cout << runs << " runs, " << failures << " calls failed, " << told
              << " problems told, 0 lost, 0 half\n";
}
