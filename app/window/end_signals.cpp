#include "app/window/end_signals.h"

#include <QSocketNotifier>

#include <array>
#include <atomic>
#include <cerrno>
#include <csignal>
#include <sys/socket.h>
#include <unistd.h>

namespace rig {

namespace {

constexpr std::array kEnding{SIGTERM, SIGHUP, SIGINT};

// Where a signal writes to: nothing else may be done in one.
std::atomic<int> toldAt{-1};

void tell(int)
{
    const char one = 1;
    const int before = errno;
    if (const int at = toldAt.load(); at >= 0 && write(at, &one, sizeof one) < 0) {
        // The event loop has one waiting already.
    }
    errno = before;
}

void handleAll(void (*handler)(int))
{
    struct sigaction action = {};
    action.sa_handler = handler;
    action.sa_flags = SA_RESTART;
    sigemptyset(&action.sa_mask);
    for (const int one : kEnding)
        sigaction(one, &action, nullptr);
}

} // namespace

EndSignals::EndSignals(QObject* parent) : QObject{parent}
{
    std::array<int, 2> pair{};
    if (socketpair(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC | SOCK_NONBLOCK, 0, pair.data()) != 0)
        return; // they end the program as they do any other
    toldAt = pair[0];
    m_heard = pair[1];
    auto* notifier = new QSocketNotifier{m_heard, QSocketNotifier::Read, this};
    connect(notifier, &QSocketNotifier::activated, this, &EndSignals::hear);
    handleAll(tell);
}

EndSignals::~EndSignals()
{
    if (m_heard < 0)
        return;
    handleAll(SIG_DFL);
    close(toldAt.exchange(-1));
    close(m_heard);
}

void EndSignals::hear()
{
    std::array<char, 16> all{};
    while (read(m_heard, all.data(), all.size()) > 0) {
    }
    emit ended();
}

} // namespace rig
