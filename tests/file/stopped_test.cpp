// rigband-file at a terminal: it says how far it is, and Ctrl+C ends it without a trace.

#include "tests/file/running.h"
#include "tests/support/hangar.h"
#include "tests/support/laptop.h"

#include <QRegularExpression>

#include <algorithm>
#include <array>
#include <csignal>
#include <filesystem>
#include <poll.h>
#include <pty.h>

namespace rig::test {
namespace {

namespace fs = std::filesystem;

constexpr int kReadings = 20'000;

// What the lines on the error stream said, one over the other.
std::vector<int> hundredthsIn(const QString& seen)
{
    static const QRegularExpression said{QStringLiteral("([0-9]+) in 100")};
    std::vector<int> all;
    for (auto at = said.globalMatch(seen); at.hasNext();)
        all.push_back(at.next().captured(1).toInt());
    return all;
}

class AtATerminal : public testing::Test
{
protected:
    void SetUp() override
    {
        const RecordId record = must(store.records().add(hangar.record(noonOf(dayOf(2026, 4, 20)))));
        Reading reading = hangar.reading(between(450, 500), noonOf(dayOf(2026, 4, 20)));
        reading.record = record;
        must(store.records().add(reading, std::nullopt));
        store.close();
        addReadingsByHand(store.path(), kReadings);
    }

    // Its error stream is a terminal. Interrupted once it said so much; by nobody where that is more than
    // 100.
    Answer run(const QStringList& arguments, int interruptedAt)
    {
        int terminal = -1;
        int its = -1;
        EXPECT_EQ(::openpty(&terminal, &its, nullptr, nullptr, nullptr), 0);
        QProcess process;
        process.setChildProcessModifier([its] { ::dup2(its, STDERR_FILENO); });
        process.start(QStringLiteral(RIGBAND_FILE), arguments);
        EXPECT_TRUE(process.waitForStarted());
        ::close(its);
        Answer answer;
        bool isInterrupted = false;
        for (pollfd one{terminal, POLLIN, 0}; ::poll(&one, 1, 60'000) > 0;) {
            std::array<char, 4096> bytes{};
            const ssize_t read = ::read(terminal, bytes.data(), bytes.size());
            if (read <= 0) // the other end is gone
                break;
            answer.err += QString::fromUtf8(bytes.data(), static_cast<int>(read));
            const std::vector<int> told = hundredthsIn(answer.err);
            if (!isInterrupted && !told.empty() && told.back() >= interruptedAt) {
                isInterrupted = true;
                ::kill(static_cast<pid_t>(process.processId()), SIGINT);
            }
        }
        ::close(terminal);
        EXPECT_TRUE(process.waitForFinished(60'000));
        answer.out = QString::fromUtf8(process.readAllStandardOutput());
        if (process.exitStatus() == QProcess::NormalExit)
            answer.status = process.exitCode();
        return answer;
    }

    void expectStopped(const QStringList& arguments, int at)
    {
        const std::string before = textOf(store.path());
        const Answer answer = run(arguments, at);
        EXPECT_EQ(answer.status, 1) << arguments.front().toStdString() << " at " << at;
        EXPECT_TRUE(answer.err.contains("Stopped. Everything is as it was.")) << answer.err.toStdString();
        EXPECT_TRUE(answer.out.isEmpty()) << answer.out.toStdString();
        EXPECT_EQ(textOf(store.path()), before);
        EXPECT_TRUE(fs::is_empty(elsewhere.path())) << arguments.front().toStdString() << " at " << at;
    }

    void expectToldOn(const QStringList& arguments)
    {
        constexpr int kNever = 1000;
        const Answer answer = run(arguments, kNever);
        EXPECT_NE(answer.status, 1) << answer.err.toStdString();
        const std::vector<int> told = hundredthsIn(answer.err);
        EXPECT_GT(told.size(), 10U) << arguments.front().toStdString();
        EXPECT_TRUE(std::ranges::is_sorted(told)) << answer.err.toStdString();
    }

    QString file() const { return QString::fromStdString(store.path()); }
    QString pathOf(const std::string& name) const { return QString::fromStdString(elsewhere.file(name)); }
    QStringList report() const { return {"report", file(), "--airframe", "QX-17", "--out", pathOf("x.pdf")}; }

    TempStore store;
    Hangar hangar{store.records()};
    TempFolder elsewhere;
};

TEST_F(AtATerminal, ACheckSaysHowFarItIs)
{
    expectToldOn({"check", file()});
}

TEST_F(AtATerminal, ACheckIsStoppedByCtrlC)
{
    for (const int at : {0, 30, 60})
        expectStopped({"check", file()}, at);
}

TEST_F(AtATerminal, AReportSaysHowFarItIs)
{
    expectToldOn(report());
}

TEST_F(AtATerminal, AReportThatIsStoppedLeavesNoFile)
{
    for (const int at : {0, 20, 40})
        expectStopped(report(), at);
}

TEST_F(AtATerminal, TablesThatAreStoppedLeaveNone)
{
    expectStopped({"export", file(), "--csv", pathOf("tables")}, 0);
}

TEST_F(AtATerminal, ADocumentThatIsStoppedLeavesNone)
{
    expectStopped({"export", file(), "--json", pathOf("x.json"), "--as-found"}, 0);
}

} // namespace
} // namespace rig::test
