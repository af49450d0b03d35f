// A second start with a file that is open: the window that has it comes to the front.

#include "app/window/main_window.h"
#include "app/window/program.h"
#include "app/window/window_calls.h"
#include "tests/support/hangar.h"
#include "tests/support/scripted_prompts.h"

#include <QSettings>
#include <QTemporaryDir>
#include <QTest>

#include <filesystem>
#include <future>
#include <gtest/gtest.h>
#include <sys/socket.h>
#include <sys/un.h>
#include <unistd.h>

using namespace rig;
using namespace rig::test;
namespace fs = std::filesystem;

namespace {

// What stands ready for the desktop when a window comes back from being minimized.
class TokenSeen : public QObject
{
public:
    bool eventFilter(QObject*, QEvent* event) override
    {
        // The system may tell of the same change once more, when the token is gone again.
        if (event->type() == QEvent::WindowStateChange && token.isEmpty())
            token = qgetenv("XDG_ACTIVATION_TOKEN");
        return false;
    }
    QByteArray token;
};

class SecondStart : public testing::Test
{
protected:
    SecondStart()
    {
        store.close();
        qputenv("XDG_RUNTIME_DIR", runtime.path().toLocal8Bit());
    }
    ~SecondStart() override
    {
        qunsetenv("XDG_RUNTIME_DIR");
        if (hung >= 0)
            ::close(hung);
    }

    QString file() const { return QString::fromStdString(store.path()); }
    // As another program would, while the window goes on.
    static Called call(const QString& path)
    {
        auto calling = std::async(std::launch::async, [&path] { return callWindowOf(path, "token"); });
        EXPECT_TRUE(QTest::qWaitFor(
            [&calling] { return calling.wait_for(std::chrono::seconds{0}) == std::future_status::ready; },
            30000));
        return calling.get();
    }
    // A machine with much to do may not get to the answer in the time that a start waits: then it is called
    // again.
    static bool isAnswered(const QString& path)
    {
        constexpr int kCalls = 10;
        for (int i = 0; i < kCalls; ++i)
            if (call(path) == Called::Raised)
                return true;
        return false;
    }
    std::vector<fs::path> places() const
    {
        const fs::directory_iterator all{runtime.path().toStdString()};
        return {fs::begin(all), fs::end(all)};
    }
    // What a window leaves that is killed, or a window that has not answered yet.
    int socketInPlaceOfWindow()
    {
        fs::path place;
        {
            WindowCalls before{window};
            before.hearFor(file());
            place = places().at(0);
        }
        EXPECT_FALSE(fs::exists(place)) << "a window that closes takes its place away";
        const int one = ::socket(AF_UNIX, SOCK_DGRAM | SOCK_CLOEXEC, 0);
        sockaddr_un address{};
        address.sun_family = AF_UNIX;
        place.string().copy(address.sun_path, sizeof address.sun_path - 1);
        EXPECT_EQ(
            ::bind(one, static_cast<const sockaddr*>(static_cast<const void*>(&address)), sizeof address), 0);
        return one;
    }

    QTemporaryDir runtime;
    TempStore store;
    Hangar hangar{store.records()};
    ScriptedPrompts prompts;
    MainWindow window{store.clock(), prompts};
    int hung = -1;
};

} // namespace

TEST_F(SecondStart, BringsTheWindowThatHasTheFileToTheFront)
{
    window.openPath(file(), OpenAs::Existing);
    window.showMinimized();
    EXPECT_TRUE(isAnswered(file()));
    EXPECT_FALSE(window.isMinimized());
    EXPECT_TRUE(window.isVisible());
    EXPECT_TRUE(window.isActiveWindow());
}

TEST_F(SecondStart, FindsTheFileUnderAnotherNameOfIt)
{
    window.openPath(file(), OpenAs::Existing);
    fs::create_symlink(store.path(), store.folder() / "link.rigband");
    EXPECT_TRUE(isAnswered(QString::fromStdString(store.folder() / "link.rigband")));
}

TEST_F(SecondStart, FindsTheWindowThatWasMadeAnewInAnotherLanguage)
{
    Program program{store.clock(), prompts, Look{}};
    program.window().openPath(file(), OpenAs::Existing);
    program.speak("de");
    EXPECT_TRUE(isAnswered(file()));
    QSettings{}.clear(); // it is remembered
}

TEST_F(SecondStart, HandsOverWhatTheDesktopGaveToIt)
{
    TokenSeen seen;
    window.openPath(file(), OpenAs::Existing);
    window.showMinimized();
    window.installEventFilter(&seen);
    EXPECT_TRUE(isAnswered(file()));
    window.removeEventFilter(&seen);
    EXPECT_EQ(seen.token, "token");
    EXPECT_TRUE(qEnvironmentVariableIsEmpty("XDG_ACTIVATION_TOKEN")) << "it is good for once";
}

TEST_F(SecondStart, OpensAWindowWhereThisFileIsOpenInNone)
{
    EXPECT_EQ(call(file()), Called::Nobody);
    const QString other = QString::fromStdString(store.folder() / "other.rigband");
    window.openPath(file(), OpenAs::Existing);
    window.openPath(other, OpenAs::New);
    EXPECT_EQ(call(file()), Called::Nobody) << "it was left for another";
    EXPECT_TRUE(isAnswered(other));
    window.openDemo();
    EXPECT_EQ(call(other), Called::Nobody);
    EXPECT_EQ(call(QString::fromStdString(store.folder() / "missing.rigband")), Called::Nobody);
}

TEST_F(SecondStart, TakesThePlaceOfAWindowThatWentDown)
{
    ::close(socketInPlaceOfWindow());
    EXPECT_EQ(call(file()), Called::Nobody);
    window.openPath(file(), OpenAs::Existing);
    EXPECT_TRUE(isAnswered(file()));
}

TEST_F(SecondStart, WaitsNotLongForAWindowThatDoesNotAnswerAndLeavesItItsPlace)
{
    hung = socketInPlaceOfWindow();
    EXPECT_EQ(call(file()), Called::NoAnswer);
    window.openPath(file(), OpenAs::Existing);
    EXPECT_TRUE(window.page(Moments::RiggedToday));
    EXPECT_EQ(call(file()), Called::NoAnswer) << "the first one still stands there";
    window.openDemo();
    EXPECT_EQ(places().size(), 1U) << "and is not taken away by another";
}

TEST_F(SecondStart, OpensAWindowWhereTheRuntimeFolderIsMissingOrOpenToOthers)
{
    fs::permissions(runtime.path().toStdString(), fs::perms::others_exec, fs::perm_options::add);
    window.openPath(file(), OpenAs::Existing);
    EXPECT_EQ(call(file()), Called::Nobody);
    EXPECT_TRUE(places().empty());
    qunsetenv("XDG_RUNTIME_DIR");
    window.openPath(file(), OpenAs::Existing);
    EXPECT_EQ(call(file()), Called::Nobody);
    EXPECT_TRUE(window.page(Moments::RiggedToday));
}
