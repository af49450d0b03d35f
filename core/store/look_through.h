#pragma once

#include "core/clock.h"
#include "core/result.h"
#include "core/review/chain_state.h"

#include <chrono>
#include <condition_variable>
#include <cstdint>
#include <mutex>
#include <optional>
#include <stop_token>
#include <string>
#include <thread>

namespace rig {

// Looks a whole file through, and once it is found whole keeps the day's copy: in a thread and on connections
// of its own, while the file is already shown. Looking holds no lock that another window would meet, and
// takes a few megabytes whatever the file's size.
class LookThrough
{
public:
    // No copy without a day to keep it under.
    LookThrough(std::string path, std::optional<Day> copyOn);
    ~LookThrough(); // ends what is not finished
    LookThrough(const LookThrough&) = delete;
    LookThrough& operator=(const LookThrough&) = delete;

    // Whether the file is whole: DamagedFile when it is not. Waits at most so long; empty while it is not
    // known.
    std::optional<Outcome> wholeness(std::chrono::milliseconds most = {}) const;
    bool isDone() const;
    // Why there is no copy of the day; known once it is done.
    std::optional<Problem> copyProblem() const;
    // What the chain of a whole file tells; known once it is done, unless it could not be read.
    std::optional<ChainState> chainFound() const;
    // The same of the couplings alone, and how often that has changed; nothing while it is not known.
    FactsInDoubt inDoubt() const;
    std::int64_t doubtsFound() const;
    // Behind the window once more: somebody else has written. Until it is done what was found before stands.
    void lookAtChainAgain();

private:
    void run(const std::stop_token& stop);
    void keep(std::optional<ChainState> chain); // under m_guard

    std::string m_path;
    std::optional<Day> m_copyOn;
    mutable std::mutex m_guard; // of what follows
    mutable std::condition_variable m_isKnown;
    std::optional<Outcome> m_wholeness;
    std::optional<Problem> m_copyProblem;
    std::optional<ChainState> m_chain;
    std::int64_t m_doubtsFound = 0;
    bool m_isDone = false;
    std::jthread m_thread; // the last members: they use the others
    std::jthread m_again;
};

// The same at once, in this thread. Interrupted: Unexpected.
Outcome lookThrough(const std::string& path, const std::stop_token& stop = {});
// The same for a file that will be written to: where another program died in the middle of a save since it
// was opened, which whoever only reads cannot take back, that is taken back first.
Outcome lookThroughToWrite(const std::string& path, const std::stop_token& stop = {});

} // namespace rig
