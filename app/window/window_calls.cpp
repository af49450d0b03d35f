#include "app/window/window_calls.h"

#include <QFile>
#include <QSocketNotifier>
#include <QWidget>

#include <array>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <poll.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/un.h>
#include <unistd.h>

namespace rig {

namespace {

constexpr int kPatience = 500; // milliseconds for an answer
constexpr std::size_t kLongestCall = 1024;
constexpr const char* kCall = "raise ";
constexpr const char* kAnswer = "raised";

// Empty where there is none that is this user's alone.
std::string runtimeFolder()
{
    const char* folder = std::getenv("XDG_RUNTIME_DIR");
    struct stat found
    {
    };
    const bool isOurs = folder && *folder == '/' && ::stat(folder, &found) == 0 && S_ISDIR(found.st_mode) &&
                        found.st_uid == ::geteuid() && (found.st_mode & (S_IRWXG | S_IRWXO)) == 0;
    return isOurs ? std::string{folder} : std::string{};
}

// Where a window that has this file open hears; empty where it cannot.
std::string placeFor(const QString& path)
{
    const std::string folder = runtimeFolder();
    struct stat file
    {
    };
    if (folder.empty() || ::stat(QFile::encodeName(path).constData(), &file) != 0)
        return {};
    std::array<char, 64> name{};
    std::snprintf(name.data(), name.size(), "/rigband-%llx-%llx.window",
                  static_cast<unsigned long long>(file.st_dev), static_cast<unsigned long long>(file.st_ino));
    std::string place = folder + name.data();
    return place.size() < sizeof(sockaddr_un::sun_path) ? place : std::string{};
}

sockaddr_un addressOf(const std::string& place)
{
    sockaddr_un address{};
    address.sun_family = AF_UNIX;
    std::memcpy(address.sun_path, place.data(), place.size());
    return address;
}

// Of whatever kind the calls of the system take.
template <typename Address> const sockaddr* plain(const Address& address)
{
    return static_cast<const sockaddr*>(static_cast<const void*>(&address));
}

int newSocket()
{
    return ::socket(AF_UNIX, SOCK_DGRAM | SOCK_CLOEXEC | SOCK_NONBLOCK, 0);
}

// A socket that speaks to whoever hears at `place` and to nobody else, with an address of its own for the
// answer; below 0 where nobody does.
int speakTo(const std::string& place)
{
    const int speaking = newSocket();
    const sa_family_t own = AF_UNIX;
    const sockaddr_un address = addressOf(place);
    if (speaking >= 0 && ::bind(speaking, plain(own), sizeof own) == 0 &&
        ::connect(speaking, plain(address), sizeof address) == 0)
        return speaking;
    if (speaking >= 0)
        ::close(speaking);
    return -1;
}

bool isHeardAt(const std::string& place)
{
    const int speaking = speakTo(place);
    if (speaking >= 0)
        ::close(speaking);
    return speaking >= 0;
}

void bringToFront(QWidget& window, const QByteArray& token)
{
    // Where a desktop lets only those come to the front who were asked to, Qt takes the token from here.
    qputenv("XDG_ACTIVATION_TOKEN", token);
    window.setWindowState(window.windowState() & ~Qt::WindowMinimized);
    window.show();
    window.raise();
    window.activateWindow();
    qunsetenv("XDG_ACTIVATION_TOKEN");
}

} // namespace

WindowCalls::WindowCalls(QWidget& window) : QObject{&window}, m_window{window} {}

WindowCalls::~WindowCalls()
{
    hearNone();
}

void WindowCalls::hearFor(const QString& path)
{
    hearNone();
    const std::string place = placeFor(path);
    if (place.empty() || isHeardAt(place))
        return;
    ::unlink(place.c_str()); // of a window that went down
    const int hearing = newSocket();
    const sockaddr_un address = addressOf(place);
    if (hearing < 0 || ::bind(hearing, plain(address), sizeof address) != 0) {
        if (hearing >= 0)
            ::close(hearing);
        return;
    }
    m_socket = hearing;
    m_place = place;
    m_heard = new QSocketNotifier{hearing, QSocketNotifier::Read, this};
    connect(m_heard, &QSocketNotifier::activated, this, &WindowCalls::answer);
}

void WindowCalls::hearNone()
{
    if (m_socket < 0)
        return;
    delete m_heard;
    m_heard = nullptr;
    ::unlink(m_place.c_str());
    ::close(m_socket);
    m_socket = -1;
}

void WindowCalls::answer()
{
    std::array<char, kLongestCall> said{};
    sockaddr_un from{};
    socklen_t length = sizeof from;
    const ssize_t got = ::recvfrom(m_socket, said.data(), said.size(), 0,
                                   static_cast<sockaddr*>(static_cast<void*>(&from)), &length);
    const QByteArray call{said.data(), got > 0 ? static_cast<qsizetype>(got) : 0};
    if (!call.startsWith(kCall))
        return;
    ::sendto(m_socket, kAnswer, std::strlen(kAnswer), 0, plain(from), length);
    bringToFront(m_window, call.mid(static_cast<qsizetype>(std::strlen(kCall))));
}

Called callWindowOf(const QString& path, const QByteArray& token)
{
    const std::string place = placeFor(path);
    const int speaking = place.empty() ? -1 : speakTo(place);
    if (speaking < 0)
        return Called::Nobody;
    const QByteArray call = (kCall + token).left(kLongestCall);
    std::array<char, kLongestCall> said{};
    pollfd waits{speaking, POLLIN, 0};
    const bool isSaid = ::send(speaking, call.constData(), static_cast<std::size_t>(call.size()),
                               MSG_NOSIGNAL) == call.size();
    const ssize_t got =
        isSaid && ::poll(&waits, 1, kPatience) == 1 ? ::recv(speaking, said.data(), said.size(), 0) : -1;
    ::close(speaking);
    const bool isRaised = got > 0 && QByteArray{said.data(), static_cast<qsizetype>(got)} == kAnswer;
    return isRaised ? Called::Raised : Called::NoAnswer;
}

} // namespace rig
