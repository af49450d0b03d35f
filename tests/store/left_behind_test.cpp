#include "core/store/create_file.h"
#include "core/store/other_file.h"
#include "core/store/passing_file.h"
#include "tests/support/hangar.h"

#include <chrono>
#include <csignal>
#include <fstream>
#include <functional>
#include <gtest/gtest.h>
#include <set>
#include <sys/wait.h>
#include <unistd.h>

using namespace rig;
using namespace rig::test;
namespace fs = std::filesystem;

namespace {

// Another process that runs until it is killed.
class Killable
{
public:
    // `work` says when it has come to where it is to be killed.
    explicit Killable(const std::function<void(const std::function<void()>& isThere)>& work)
    {
        int told[2];
        EXPECT_EQ(::pipe(told), 0);
        m_process = ::fork();
        if (m_process == 0) {
            work([&told] {
                if (::write(told[1], "", 1) == 1)
                    for (;;)
                        ::pause();
            });
            ::_exit(1);
        }
        ::close(told[1]);
        char heard = 0;
        EXPECT_EQ(::read(told[0], &heard, 1), 1) << "it ended by itself";
        ::close(told[0]);
    }
    ~Killable() { kill(); }
    Killable(const Killable&) = delete;
    Killable& operator=(const Killable&) = delete;

    void kill()
    {
        if (m_process <= 0)
            return;
        ::kill(m_process, SIGKILL);
        ::waitpid(m_process, nullptr, 0);
        m_process = -1;
    }

private:
    pid_t m_process = -1;
};

class LeftBehind : public testing::Test
{
protected:
    TempStore store;
    std::string copy = store.folder() / "copy.rigband";

    std::set<std::string> names() const
    {
        std::set<std::string> all;
        for (const auto& entry : fs::directory_iterator{store.folder()})
            if (!fs::is_directory(entry.symlink_status()))
                all.insert(entry.path().filename().string());
        return all;
    }
    void passHours(int hours) const
    {
        for (const auto& entry : fs::directory_iterator{store.folder()})
            if (fs::is_regular_file(entry.symlink_status()) && entry.path() != store.path())
                fs::last_write_time(entry.path(),
                                    fs::file_time_type::clock::now() - std::chrono::hours{hours});
    }
    // As joining, handing on, bringing back and salvaging do.
    void makeCopyUntil(const std::function<void()>& isThere) const
    {
        static_cast<void>(makeUnderAnotherName(copy, [&isThere](const std::string& making) -> Outcome {
            const auto made = createFile(making, 1);
            isThere();
            return made ? Outcome{Done{}} : Outcome{made.problem()};
        }));
    }
    void readUntil(const std::function<void()>& isThere) const
    {
        const auto read = OtherFile::read(store.path(), store.path());
        isThere();
    }
    void makeAnother()
    {
        const std::string another = store.folder() / "another.rigband";
        static_cast<void>(must(StoreFile::open(another, OpenAs::New, store.clock())));
        fs::remove(another);
    }
    // A number that no process has.
    static std::string nobody()
    {
        const pid_t child = ::fork();
        if (child == 0)
            ::_exit(0);
        ::waitpid(child, nullptr, 0);
        return std::to_string(child);
    }
    void write(const std::string& name, const std::string& bytes) const
    {
        std::ofstream{store.folder() / name, std::ios::binary} << bytes;
    }
};

const std::string kDatabase{"SQLite format 3\0...", 19};

} // namespace

TEST_F(LeftBehind, OfAKilledMakerIsRemovedByWhoMakesTheNextOne)
{
    Killable{[this](const auto& isThere) { makeCopyUntil(isThere); }}.kill();
    ASSERT_EQ(names().size(), 2U) << "it is named after the file that it was to be";
    makeAnother();
    EXPECT_EQ(names(), std::set<std::string>{"hangar.rigband"});
}

TEST_F(LeftBehind, OfAnotherComputerIsRemovedADayLater)
{
    const std::set<std::string> before = names();
    const std::string number = nobody();
    write("copy.rigband.making-" + number + "-0a1b2c3d", kDatabase);
    write("copy.rigband.reading-" + number + "-0a1b2c3d-1", kDatabase);
    write("copy.json.making-" + number + "-0a1b2c3d", "{\"format\":\"rigband\",\"version\":1");
    write("older.rigband.making-" + number, kDatabase); // by a Rigband that left no mark
    passHours(23);
    makeAnother();
    EXPECT_EQ(names().size(), before.size() + 4) << "its process may run there";
    passHours(25);
    makeAnother();
    EXPECT_EQ(names(), before);
}

TEST_F(LeftBehind, OfTablesAndDocumentsGoesWithTheRest)
{
    Killable{[this](const auto& isThere) {
        std::ofstream{makingName(store.folder() / "readings.csv")} << "airframe,coupling\n";
        isThere();
    }}.kill();
    ASSERT_EQ(names().size(), 2U);
    makeAnother();
    EXPECT_EQ(names(), std::set<std::string>{"hangar.rigband"});
}

TEST_F(LeftBehind, HasOneNameOnly)
{
    std::set<std::string> seen;
    static_cast<void>(makeUnderAnotherName(copy, [&](const std::string& making) -> Outcome {
        fs::create_directory(makingName(making)); // in the way of a second one
        const auto made = createFile(making, 1);
        fs::remove(makingName(making));
        seen = names();
        return made ? Outcome{Done{}} : Outcome{made.problem()};
    }));
    EXPECT_EQ(seen.size(), 2U);
    EXPECT_TRUE(fs::exists(copy));
}

TEST_F(LeftBehind, OfAKilledReaderIsRemovedByWhoOpensAFileThere)
{
    Killable{[this](const auto& isThere) { readUntil(isThere); }}.kill();
    ASSERT_EQ(names().size(), 2U);
    store.reopen();
    EXPECT_EQ(names(), std::set<std::string>{"hangar.rigband"});
}

TEST_F(LeftBehind, IsRemovedByWhoReadsAFileThere)
{
    Killable{[this](const auto& isThere) { makeCopyUntil(isThere); }}.kill();
    static_cast<void>(must(OtherFile::read(store.path(), store.path())));
    EXPECT_EQ(names(), std::set<std::string>{"hangar.rigband"});
}

TEST_F(LeftBehind, IsNotWhatALivingMakerHasInHand)
{
    Killable maker{[this](const auto& isThere) { makeCopyUntil(isThere); }};
    Killable reader{[this](const auto& isThere) { readUntil(isThere); }};
    passHours(100); // it slept with its computer
    makeAnother();
    EXPECT_EQ(names().size(), 3U);
    maker.kill();
    reader.kill();
    makeAnother();
    EXPECT_EQ(names(), std::set<std::string>{"hangar.rigband"});
}

TEST_F(LeftBehind, TakesItsJournalAlong)
{
    const std::string name = "copy.rigband.making-" + nobody();
    write(name, "");
    write(name + "-journal", "\xd9\xd5\x05\xf9\x20\xa1\x63\xd7...");
    write("copy.rigband.reading-" + nobody() + "-1", std::string(4096, '\0'));
    passHours(25);
    makeAnother();
    EXPECT_EQ(names(), std::set<std::string>{"hangar.rigband"});
}

TEST_F(LeftBehind, IsNothingThatSomebodyNamedAlike)
{
    const std::string number = nobody();
    for (const char* name :
         {"hangar.rigband.making-of", "hangar.rigband.making-", "hangar.rigband.making-0",
          "hangar.rigband.reading-", "hangar.rigband.reading-12", "hangar.rigband.making-1.rigband"})
        write(name, kDatabase);
    for (const std::string& name :
         {".making-" + number, "hangar.rigband.reading-" + number, "hangar.rigband.reading-" + number + "-x",
          "hangar.making-" + number + "a", "hangar.making-" + number + "-0a1b2c3",
          "hangar.making-" + number + "-0a1b2c3g", "hangar.rigband.making-" + number + " (copy)"})
        write(name, kDatabase);
    write("notes.making-" + number, "how the trailer was made");
    fs::create_directory(store.folder() / ("folder.making-" + number));
    fs::create_symlink(store.path(), store.folder() / ("link.making-" + number));
    const std::set<std::string> before = names();
    passHours(1000);
    makeAnother();
    EXPECT_EQ(names(), before);
    EXPECT_TRUE(fs::exists(store.folder() / ("folder.making-" + number)));
}
