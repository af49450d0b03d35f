// The program is killed at calls drawn over a whole rigging, alone and while another one saves into the same
// file.

#include "tests/fault/scripted_rigging.h"
#include "tests/fault/shim_vfs.h"

#include <array>
#include <gtest/gtest.h>
#include <iostream>
#include <limits>
#include <random>
#include <sys/wait.h>
#include <unistd.h>

using namespace rig;
using namespace rig::test;

namespace {

enum class Ended { AtTheCall, ByItself, Wrongly };

constexpr int kAtTheCall = 7; // exit codes of a saver
constexpr int kWrongly = 8;

// A saver in a process of its own, a copy of this one, which ends without tidying up at the call of that
// number. What it acknowledges comes through a pipe, so it is known whatever becomes of it.
class KilledSaver
{
public:
    using Save = std::function<std::vector<Problem>(const Acknowledge&)>;

    KilledSaver(const Save& save, int endsAt)
    {
        std::array<int, 2> pipe{};
        if (::pipe(pipe.data()) != 0)
            std::abort();
        m_process = ::fork();
        if (m_process == 0) {
            ::close(pipe[0]);
            run(save, endsAt, pipe[1]);
        }
        ::close(pipe[1]);
        m_from = pipe[0];
    }
    KilledSaver(const KilledSaver&) = delete;
    KilledSaver& operator=(const KilledSaver&) = delete;
    ~KilledSaver() { ::close(m_from); }

    // Waits for its end and adds what it had acknowledged.
    Ended ended(std::vector<IdBytes>& acknowledged) const
    {
        IdBytes fact{};
        while (::read(m_from, fact.data(), fact.size()) == static_cast<ssize_t>(fact.size()))
            acknowledged.push_back(fact);
        int status = 0;
        ::waitpid(m_process, &status, 0);
        const int code = WIFEXITED(status) ? WEXITSTATUS(status) : kWrongly;
        return code == 0 ? Ended::ByItself : code == kAtTheCall ? Ended::AtTheCall : Ended::Wrongly;
    }

private:
    [[noreturn]] static void run(const Save& save, int endsAt, int into)
    {
        int calls = 0;
        bool isEnding = false;
        // Of a write half may have reached the system, then the next call ends it.
        const ShimVfs shim{[&](const DiskCall& call) -> DiskAnswer {
            if (isEnding || (++calls == endsAt && (call.kind != DiskCall::Kind::Write || endsAt % 2 == 0)))
                ::_exit(kAtTheCall);
            isEnding = calls == endsAt;
            return isEnding ? DiskAnswer{SQLITE_IOERR_WRITE, call.bytes.size() / 2} : DiskAnswer{};
        }};
        const std::vector<Problem> problems = save([into](const std::vector<IdBytes>& facts) {
            for (const IdBytes& fact : facts)
                if (::write(into, fact.data(), fact.size()) < 0)
                    ::_exit(kWrongly);
        });
        if (isEnding) // it gave up before the next call
            ::_exit(kAtTheCall);
        for (const Problem& problem : problems)
            std::cerr << describe(problem) << std::endl;
        ::_exit(problems.empty() ? 0 : kWrongly);
    }

    pid_t m_process = -1;
    int m_from = -1;
};

constexpr int kNever = std::numeric_limits<int>::max();

enum class Beside { Nobody, OneWhoLives, OneWhoIsKilledToo };

class KilledSavers : public testing::Test
{
protected:
    // The calls of a rigging that nobody kills.
    int callsOfARigging() const
    {
        file.beginAgain();
        int made = 0;
        const ShimVfs shim{[&made](const DiskCall&) -> DiskAnswer {
            ++made;
            return {};
        }};
        saveRigging({file.path(), file.hangar(), [](const std::vector<IdBytes>&) {}});
        return made;
    }

    void kill(int run, Beside beside)
    {
        file.beginAgain();
        std::mt19937 random{static_cast<unsigned>(run)};
        const int at = 1 + static_cast<int>(random() % static_cast<unsigned>(calls));
        const int otherAt = 1 + static_cast<int>(random() % 150);
        std::vector<IdBytes> acknowledged;
        const auto rigging = [&](const Acknowledge& acknowledge) {
            return saveRigging({file.path(), file.hangar(), acknowledge});
        };
        const auto pairs = [&](const Acknowledge& acknowledge) {
            return savePairs({file.path(), file.hangar(), acknowledge, 8}, 4);
        };
        {
            const KilledSaver saver{rigging, at};
            std::optional<KilledSaver> other;
            if (beside != Beside::Nobody)
                other.emplace(pairs, beside == Beside::OneWhoLives ? kNever : otherAt);
            count(saver.ended(acknowledged));
            if (other)
                count(other->ended(acknowledged));
        }
        const Kept kept = keptIn(file.path(), acknowledged);
        facts += acknowledged.size();
        ASSERT_EQ(kept.lost, 0) << "run " << run << ": " << kept.why;
        ASSERT_EQ(kept.half, 0) << "run " << run << ": " << kept.why;
    }

    FileToSaveIn file;
    const int calls = callsOfARigging();
    int kills = 0;
    std::size_t facts = 0; // acknowledged

private:
    void count(Ended ended)
    {
        EXPECT_NE(ended, Ended::Wrongly);
        kills += ended == Ended::AtTheCall ? 1 : 0;
    }
};

} // namespace

TEST_F(KilledSavers, LoseNothingThatWasAcknowledgedAndLeaveNothingByHalves)
{
    const int wanted = isThorough() ? 3000 : 300;
    int run = 0;
    for (; kills < wanted && !HasFailure(); ++run)
        kill(run, static_cast<Beside>(run % 3));
    ASSERT_FALSE(HasFailure());
    std::cout << run << " runs, " << kills << " kills, " << facts << " facts acknowledged, 0 lost, 0 half\n";
}
