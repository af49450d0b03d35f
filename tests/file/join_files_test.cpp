// Runs the program rigband-file itself, as a script would.

#include "core/store/connection.h"
#include "tests/file/running.h"
#include "tests/support/laptop.h"

#include <filesystem>
#include <gtest/gtest.h>

namespace rig::test {
namespace {

namespace fs = std::filesystem;

class JoinFiles : public testing::Test
{
protected:
    void SetUp() override
    {
        Laptop{path, 1}.read(hangar, 450);
        fs::copy_file(path, other);
        Laptop{path, 3}.read(hangar, 500);
        Laptop second{other, 5};
        second.read(hangar, 550);
        second.read(hangar, 600);
    }
    static QString text(const std::string& file) { return QString::fromStdString(file); }
    Answer join(const QStringList& more = {})
    {
        return run(QStringList{"join", text(path), text(other), "--out", text(out)} + more);
    }
    void changeByHand(const std::string& file, int entersUm)
    {
        const auto open = must(StoreFile::Connection::open(file, StoreFile::Connection::Access::Writing));
        byHand(*open, "reading",
               QString("UPDATE reading SET enters_um = %1, refuses_um = 900").arg(entersUm));
    }

    TempStore store;
    Hangar hangar{store.records()};
    std::string path = (store.close(), store.path());
    std::string other = store.folder() / "other.rigband";
    std::string out = store.folder() / "joined.rigband";
};

} // namespace

TEST_F(JoinFiles, SaysWhatEachAloneHadAndHowFarTheNewOneHasCome)
{
    const Answer answer = join();
    EXPECT_EQ(answer.status, 0) << answer.err.toStdString();
    EXPECT_TRUE(answer.out.contains(text(path) + " alone: 1.")) << answer.out.toStdString();
    EXPECT_TRUE(answer.out.contains(text(other) + " alone: 2.")) << answer.out.toStdString();
    const auto file = must(StoreFile::open(out, OpenAs::Existing, store.clock()));
    EXPECT_TRUE(answer.out.contains(text(shortForm(must(file->end()).hash)))) << answer.out.toStdString();
    EXPECT_EQ(join().status, 1) << "nothing is written over";
}

TEST_F(JoinFiles, ShowsWhatWasChangedByHandFirstAndJoinsItOnlyAsFound)
{
    changeByHand(other, 800);
    const Answer refused = join();
    EXPECT_EQ(refused.status, 1);
    EXPECT_TRUE(refused.err.contains(text(other) + ": Changed since it was saved: reading · QX-17 · "
                                                   "Left aileron · saved on"))
        << refused.err.toStdString();
    EXPECT_TRUE(refused.err.contains("--as-found"));
    EXPECT_FALSE(fs::exists(out));
    const Answer joined = join({"--as-found"});
    EXPECT_EQ(joined.status, 3) << joined.err.toStdString();
    EXPECT_TRUE(joined.err.contains("taken as the other has it: reading")) << joined.err.toStdString();
    EXPECT_TRUE(joined.err.contains("enters: 0.80 mm")) << joined.err.toStdString();
}

TEST_F(JoinFiles, RefusesWhereNothingTellsWhichOfTwoWasSaved)
{
    changeByHand(path, 800);
    changeByHand(other, 820);
    const Answer refused = join({"--as-found"});
    EXPECT_EQ(refused.status, 1);
    EXPECT_TRUE(refused.err.contains("enters: 0.80 mm")) << refused.err.toStdString();
    EXPECT_TRUE(refused.err.contains("enters: 0.82 mm")) << refused.err.toStdString();
    EXPECT_TRUE(refused.err.contains("Nothing was joined.")) << refused.err.toStdString();
    EXPECT_FALSE(fs::exists(out));
}

TEST_F(JoinFiles, HandsOneAirframeOnAndSaysHowFarTheWholeHadCome)
{
    const QStringList asked{"part", text(path), "--airframe", "qx-17", "--out", text(out)};
    const FileEnd whole = must(must(StoreFile::open(path, OpenAs::Existing, store.clock()))->end());
    const Answer answer = run(asked);
    EXPECT_EQ(answer.status, 0) << answer.err.toStdString();
    EXPECT_TRUE(answer.out.contains(text(shortForm(whole.hash)))) << answer.out.toStdString();
    const auto part = must(StoreFile::open(out, OpenAs::Existing, store.clock()));
    EXPECT_TRUE(answer.out.contains(text(shortForm(must(part->end()).hash)))) << answer.out.toStdString();
    EXPECT_TRUE(run(asked).err.contains("is there already"));
    EXPECT_TRUE(
        run({"part", text(path), "--airframe", "QX-99", "--out", text(out) + "2"}).err.contains("QX-99"));
    changeByHand(path, 800);
    const Answer refused = run({"part", text(path), "--airframe", "QX-17", "--out", text(out) + "2"});
    EXPECT_EQ(refused.status, 1) << "a chain of its own would hide what was changed";
    EXPECT_TRUE(refused.err.contains("Changed since it was saved")) << refused.err.toStdString();
    EXPECT_EQ(run({"part", text(path), "--out", text(out)}).status, 2);
}

TEST_F(JoinFiles, OfThreeSaysWhenTheLastFactWasSaved)
{
    const std::string third = store.folder() / "third.rigband";
    fs::copy_file(other, third);
    Laptop{third, 7}.read(hangar, 650);
    Laptop{path, 9}.read(hangar, 700);
    ASSERT_EQ(join().status, 0);
    const std::string all = store.folder() / "all.rigband";
    ASSERT_EQ(run({"join", text(out), text(third), "--out", text(all)}).status, 0);
    const Answer answer = run({"check", text(all)});
    EXPECT_FALSE(answer.out.contains("1970")) << answer.out.toStdString();
    EXPECT_TRUE(answer.out.contains("The last fact was saved on")) << answer.out.toStdString();
}

TEST_F(JoinFiles, CheckNamesAReadingThatWasSavedIntoAClosedRecordAndOneOfTheFuture)
{
    RecordClose close;
    {
        Laptop ours{path, 9};
        close.record = must(ours.records->add(hangar.record(ours.clock.now())));
    }
    const std::string third = store.folder() / "third.rigband";
    fs::copy_file(path, third);
    {
        Laptop ours{path, 11};
        close.stamp.by = hangar.oren;
        must(ours.records->add(close));
        Laptop theirs{third, 13};
        theirs.clock.passMinutes(60);
        Reading late = hangar.reading(between(450, 500), theirs.clock.now());
        late.record = close.record;
        must(theirs.records->add(late, std::nullopt));
    }
    const auto check = [](const std::string& file) { return run({"check", text(file)}); };
    EXPECT_EQ(check(path).status, 0);
    ASSERT_EQ(run({"join", text(path), text(third), "--out", text(out)}).status, 0);
    const Answer closed = check(out);
    EXPECT_EQ(closed.status, 3);
    EXPECT_TRUE(closed.err.contains("Wants a second look: reading · QX-17 · Left aileron · saved on"))
        << closed.err.toStdString();
    EXPECT_TRUE(closed.err.contains("into a record that had been closed before")) << closed.err.toStdString();
    {
        Laptop later{path, 15};
        later.clock.set(dayOf(2096, 1, 2));
        later.read(hangar, 700);
    }
    const Answer future = check(path);
    EXPECT_EQ(future.status, 3);
    EXPECT_TRUE(future.err.contains("by the clock, which is still to come")) << future.err.toStdString();
}

TEST_F(JoinFiles, SaysOfWhichFileSomethingIsWrong)
{
    other += ".missing";
    EXPECT_TRUE(join().err.contains(text(other) + " is not there"));
    EXPECT_EQ(run({"join", text(path), "--out", text(out)}).status, 2);
    EXPECT_EQ(run({"join", text(path), text(path), text(path), "--out", text(out)}).status, 2);
    EXPECT_EQ(run({"join", text(path), text(path)}).status, 2);
    EXPECT_EQ(run({"check", text(path), "--as-found"}).status, 2);
}

} // namespace rig::test
