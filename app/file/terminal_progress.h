#pragma once

#include "core/progress.h"

#include <QString>

#include <csignal>
#include <cstddef>
#include <thread>

namespace rig::file {

// How far long work is, on the error stream where that is a terminal, and Ctrl+C, which stops the work
// instead of the program: so that nothing half done is left. One at a time.
class TerminalProgress : public Progress
{
public:
    TerminalProgress();
    ~TerminalProgress() override;

    void clear(); // the line, before something else is said

private:
    void told(std::size_t done, std::size_t of) override;

    bool m_isSeen;            // by somebody at a terminal
    std::size_t m_width = 0;  // of what stands on the line
    QString m_said;           // that stands there
    sigset_t m_before{};      // the signals that did not come through
    std::jthread m_listening; // for Ctrl+C
};

} // namespace rig::file
