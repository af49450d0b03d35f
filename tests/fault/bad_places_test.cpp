#include "core/airframe/id_source.h"
#include "core/store/connection.h"
#include "core/store/copies.h"
#include "core/store/look_through.h"
#include "tests/support/hangar.h"

#include <QCoreApplication>
#include <QProcess>

#include <filesystem>
#include <gtest/gtest.h>
#include <unistd.h>

using namespace rig;
using namespace rig::test;
namespace fs = std::filesystem;

namespace {

constexpr uid_t kNobody = 65534;
constexpr auto kReadOnlyFile = fs::perms::owner_read | fs::perms::group_read | fs::perms::others_read;
constexpr auto kReadOnlyFolder =
    kReadOnlyFile | fs::perms::owner_exec | fs::perms::group_exec | fs::perms::others_exec;

// File permissions do not bind root, so a test run by root steps down for as long as this lives.
class OrdinaryUser
{
public:
    OrdinaryUser() : m_before{::geteuid()}
    {
        if (m_before == 0 && ::seteuid(kNobody) != 0)
            ADD_FAILURE() << "cannot step down to an ordinary user";
    }
    ~OrdinaryUser()
    {
        if (::seteuid(m_before) != 0)
            std::abort();
    }
    OrdinaryUser(const OrdinaryUser&) = delete;
    OrdinaryUser& operator=(const OrdinaryUser&) = delete;

private:
    uid_t m_before;
};

class BadPlace : public testing::Test
{
protected:
    TempStore store;
    Hangar hangar{store.records()};

    Reading reading() { return hangar.reading(between(450, 500), store.clock().now()); }
    std::size_t readings() { return must(store.records().readings(hangar.airframe)).size(); }

    // Opens for reading, shows what is there, and says why nothing can be saved.
    void expectOnlyReading(ProblemKind kind)
    {
        const OrdinaryUser user;
        auto file = must(StoreFile::open(store.path(), OpenAs::Existing, store.clock()));
        EXPECT_TRUE(file->isReadOnly());
        EXPECT_EQ(file->readOnlyFor(), kind);
        IdSource ids{5};
        Records records{*file, ids, store.clock()};
        EXPECT_EQ(must(records.readings(hangar.airframe)).size(), 1U);
        const auto added = records.add(reading(), std::nullopt);
        ASSERT_FALSE(added);
        EXPECT_EQ(added.problem().kind, kind);
        EXPECT_EQ(must(records.readings(hangar.airframe)).size(), 1U);
    }
};

} // namespace

TEST_F(BadPlace, FileMayOnlyBeRead)
{
    must(store.records().add(reading(), std::nullopt));
    store.close();
    fs::permissions(store.folder(), fs::perms::all);
    fs::permissions(store.path(), kReadOnlyFile);
    expectOnlyReading(ProblemKind::FileReadOnly);
}

TEST_F(BadPlace, FolderMayOnlyBeRead)
{
    must(store.records().add(reading(), std::nullopt));
    store.close();
    fs::permissions(store.path(), fs::perms::all);
    fs::permissions(store.folder(), kReadOnlyFolder);
    expectOnlyReading(ProblemKind::FolderReadOnly);
    EXPECT_FALSE(fs::exists(copiesFolder(store.path())));
}

TEST_F(BadPlace, FolderStopsBeingWritableWhileTheFileIsOpen)
{
    fs::permissions(store.path(), fs::perms::all);
    fs::permissions(store.folder(), kReadOnlyFolder);
    const OrdinaryUser user;
    const auto added = store.records().add(reading(), std::nullopt);
    ASSERT_FALSE(added);
    EXPECT_EQ(added.problem().kind, ProblemKind::FolderReadOnly);
    EXPECT_EQ(readings(), 0U);
}

TEST_F(BadPlace, NewFileInAFolderThatMayOnlyBeRead)
{
    fs::permissions(store.folder(), kReadOnlyFolder);
    const OrdinaryUser user;
    const auto made = StoreFile::open(store.folder() / "new.rigband", OpenAs::New, store.clock());
    ASSERT_FALSE(made);
    EXPECT_EQ(made.problem().kind, ProblemKind::FolderReadOnly);
}

TEST_F(BadPlace, NewFileInAFolderThatIsNotThere)
{
    const auto made = StoreFile::open(store.folder() / "gone" / "new.rigband", OpenAs::New, store.clock());
    ASSERT_FALSE(made);
    EXPECT_EQ(made.problem().kind, ProblemKind::CannotOpen);
}

TEST_F(BadPlace, FileMayNotEvenBeRead)
{
    store.close();
    fs::permissions(store.folder(), fs::perms::all);
    fs::permissions(store.path(), fs::perms::none);
    const OrdinaryUser user;
    const auto opened = StoreFile::open(store.path(), OpenAs::Existing, store.clock());
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.problem().kind, ProblemKind::CannotOpen);
}

TEST_F(BadPlace, FileIsMovedAwayWhileOpen)
{
    must(store.records().add(reading(), std::nullopt));
    fs::rename(store.path(), store.folder() / "elsewhere.rigband");
    const auto added = store.records().add(reading(), std::nullopt);
    ASSERT_FALSE(added) << "a reading saved into a file that is not there is lost";
    EXPECT_EQ(added.problem().kind, ProblemKind::NoSuchFile);
}

TEST_F(BadPlace, DiskFillsUp)
{
    StoreFile::Connection& connection = store.file().connection();
    const auto pages = must(connection.integer("PRAGMA page_count"));
    must(connection.integer(QString("PRAGMA max_page_count = %1").arg(*pages + 2)));
    Shown shown;
    std::size_t saved = 0;
    std::optional<Problem> full;
    while (!full && saved < 2000) {
        Reading one = reading();
        one.note = std::string(300, 'n');
        const auto added = store.records().add(one, shown);
        if (added)
            ++saved;
        else
            full = added.problem();
    }
    ASSERT_TRUE(full);
    EXPECT_EQ(full->kind, ProblemKind::DiskFull) << describe(*full);
    const auto halves =
        "SELECT count(*) FROM reading r LEFT JOIN shown s ON s.reading = r.id WHERE s.reading IS NULL";
    EXPECT_EQ(must(connection.integer(halves)), 0);
    EXPECT_EQ(readings(), saved);
    must(connection.integer("PRAGMA max_page_count = 1000000"));
    must(store.records().add(reading(), shown));
    store.reopen();
    EXPECT_EQ(readings(), saved + 1);
}

TEST_F(BadPlace, DiskFillsUpInTheMiddleOfSeveralWrites)
{
    StoreFile::Connection& connection = store.file().connection();
    const auto pages = must(connection.integer("PRAGMA page_count"));
    must(connection.integer(QString("PRAGMA max_page_count = %1").arg(*pages + 2)));
    const Outcome done = store.records().together([&]() -> Outcome {
        for (int i = 0; i < 2000; ++i)
            if (const auto added = store.records().add(reading(), std::nullopt); !added)
                return added.problem();
        return Done{};
    });
    ASSERT_FALSE(done);
    EXPECT_EQ(done.problem().kind, ProblemKind::DiskFull);
    EXPECT_EQ(readings(), 0U);
    must(connection.integer("PRAGMA max_page_count = 1000000"));
    must(store.records().add(reading(), std::nullopt));
}

TEST_F(BadPlace, AnotherWindowIsWriting)
{
    auto other = must(StoreFile::open(store.path(), OpenAs::Existing, store.clock()));
    must(other->connection().integer("PRAGMA busy_timeout = 20"));
    IdSource ids{5};
    Records records{*other, ids, store.clock()};
    must(store.records().together([&]() -> Outcome {
        must(store.records().add(reading(), std::nullopt));
        const auto added = records.add(reading(), std::nullopt);
        EXPECT_FALSE(added);
        EXPECT_EQ(added.problem().kind, ProblemKind::BusyElsewhere);
        return Done{};
    }));
    must(records.add(reading(), std::nullopt)); // free again
    EXPECT_EQ(readings(), 2U);
}

namespace {

// This very program, started again as the other process of a test.
class OtherProcess
{
public:
    OtherProcess(const char* what, const std::string& path)
    {
        m_process.start(QCoreApplication::applicationFilePath(), {what, QString::fromStdString(path)});
    }
    ~OtherProcess()
    {
        m_process.kill();
        m_process.waitForFinished();
    }

    // Waits for so many lines; false when they do not come.
    bool said(int lines)
    {
        while (m_lines < lines) {
            if (!m_process.canReadLine() && !m_process.waitForReadyRead(30'000))
                return false;
            while (m_process.canReadLine()) {
                m_process.readLine();
                ++m_lines;
            }
        }
        return true;
    }
    // Without a chance to tidy up. Returns the lines said until then.
    int killed()
    {
        m_process.kill();
        m_process.waitForFinished();
        m_lines += static_cast<int>(m_process.readAllStandardOutput().count('\n'));
        return m_lines;
    }

private:
    QProcess m_process;
    int m_lines = 0;
};

} // namespace

TEST_F(BadPlace, ProgramIsKilledWhileSaving)
{
    store.close();
    OtherProcess other{"--save-for-ever", store.path()};
    ASSERT_TRUE(other.said(20));
    const int acknowledged = other.killed();
    store.reopen(); // checks the whole file
    const std::size_t kept = readings();
    EXPECT_GE(kept, static_cast<std::size_t>(2 * acknowledged)) << "what was said to be saved is there";
    EXPECT_EQ(kept % 2, 0U) << "and nothing by halves";
}

TEST_F(BadPlace, AnotherProgramIsKilledWithHalfASaveOnTheDiskWhileThisOneLooksThroughTheFile)
{
    store.close();
    OtherProcess other{"--stop-half-way", store.path()};
    ASSERT_TRUE(other.said(1));
    other.killed();
    const Outcome whole = lookThroughToWrite(store.path());
    EXPECT_TRUE(whole) << describe(whole.problem());
    EXPECT_FALSE(fs::exists(store.path() + "-journal"));
}

TEST_F(BadPlace, ProgramIsKilledWithHalfASaveOnTheDisk)
{
    must(store.records().add(reading(), std::nullopt));
    store.close();
    const auto before = fs::file_size(store.path());
    OtherProcess other{"--stop-half-way", store.path()};
    ASSERT_TRUE(other.said(1));
    other.killed();
    ASSERT_TRUE(fs::exists(store.path() + "-journal"));
    ASSERT_GT(fs::file_size(store.path()), before)
        << "half of it must be on the disk for this test to mean anything";
    const auto looked = StoreFile::open(store.path(), OpenAs::ToLook, store.clock());
    ASSERT_FALSE(looked) << "whoever only reads cannot undo it";
    EXPECT_EQ(looked.problem().kind, ProblemKind::SaveBrokenOff) << looked.problem().detail;
    EXPECT_TRUE(fs::exists(store.path() + "-journal"));
    store.reopen();
    EXPECT_EQ(readings(), 1U);
    EXPECT_FALSE(fs::exists(store.path() + "-journal"));
    must(store.records().add(reading(), std::nullopt));
}
