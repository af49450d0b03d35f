#include "app/file/terminal_progress.h"

#include "app/wording/long_work_words.h"

#include <algorithm>
#include <cstdio>
#include <ctime>
#include <unistd.h>

namespace rig::file {

TerminalProgress::TerminalProgress() : m_isSeen{::isatty(STDERR_FILENO) == 1}
{
    sigset_t interrupt;
    sigemptyset(&interrupt);
    sigaddset(&interrupt, SIGINT);
    pthread_sigmask(SIG_BLOCK, &interrupt, &m_before);
    m_listening = std::jthread{[this, interrupt](const std::stop_token& over) {
        constexpr timespec kLookEvery{0, 50'000'000}; // nanoseconds
        while (!over.stop_requested() && !isStopped())
            if (sigtimedwait(&interrupt, nullptr, &kLookEvery) == SIGINT)
                stop();
    }};
}

TerminalProgress::~TerminalProgress()
{
    m_listening.request_stop();
    m_listening.join();
    pthread_sigmask(SIG_SETMASK, &m_before, nullptr);
    clear();
}

void TerminalProgress::clear()
{
    if (m_width > 0)
        std::fprintf(stderr, "\r%*s\r", static_cast<int>(m_width), "");
    m_width = 0;
    m_said.clear();
}

void TerminalProgress::told(std::size_t done, std::size_t of)
{
    constexpr std::size_t kRowsBetween = 1000; // where nobody knows how many there are
    if (!m_isSeen || (of == 0 && done % kRowsBetween != 0))
        return;
    const QString line = LongWorkWords::soFar(done, of);
    if (line == m_said)
        return;
    m_said = line;
    const auto width = static_cast<std::size_t>(line.size());
    m_width = std::max(m_width, width);
    std::fprintf(stderr, "\r%s%*s", qUtf8Printable(line), static_cast<int>(m_width - width), "");
}

} // namespace rig::file
