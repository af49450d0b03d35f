#include "tests/file/running.h"
#include "tests/support/laptop.h"

#include <filesystem>
#include <gtest/gtest.h>

namespace rig::test {
namespace {

namespace fs = std::filesystem;

class RenamePerson : public testing::Test
{
protected:
    void SetUp() override
    {
        Laptop laptop{path, 1};
        Person person = aPerson("Ida Quill");
        person.phone = "01632 960998";
        must(laptop.records->add(person));
        Event event;
        event.airframe = hangar.airframe;
        event.kind = EventKind::Note;
        event.day = dayOf(2026, 4, 2);
        event.note = "found by Ida Quill";
        must(laptop.records->add(event));
    }
    Answer rename(const QString& person, const QString& as, const QString& by = "ida quill")
    {
        return run({"rename-person", QString::fromStdString(path), "--person", person, "--as", as, "--by", by,
                    "--out", QString::fromStdString(out)});
    }

    TempStore store;
    Hangar hangar{store.records()};
    std::string path = (store.close(), store.path());
    std::string out = store.folder() / "out.rigband";
};

} // namespace

TEST_F(RenamePerson, SaysWhatStillHoldsTheNameAndCheckTellsIt)
{
    const Answer answer = rename("IDA quill", "I 7");
    EXPECT_EQ(answer.status, 0) << answer.err.toStdString();
    EXPECT_TRUE(answer.out.contains(
        "whose words still hold the name or the telephone number, as they were typed: 1."))
        << answer.out.toStdString();
    EXPECT_TRUE(answer.out.contains("in its dated copies")) << answer.out.toStdString();
    const Answer checked = run({"check", QString::fromStdString(out)});
    EXPECT_TRUE(checked.out.contains("Name replaced on request: I 7, on ")) << checked.out.toStdString();
    EXPECT_FALSE(checked.err.contains("Changed since")) << checked.err.toStdString();
    EXPECT_TRUE(rename("Ida Quill", "I 7").err.contains("is there already"));
}

TEST_F(RenamePerson, IsRefusedInASentence)
{
    EXPECT_TRUE(rename("Nobody", "I 7").err.contains("no person named “Nobody”"));
    EXPECT_TRUE(rename("Ida Quill", "I 7", "Nobody").err.contains("no person named “Nobody”"));
    EXPECT_TRUE(rename("Ida Quill", "  ").err.contains("cannot stand for a name"));
    EXPECT_TRUE(rename("Ida Quill", "I\n7").err.contains("cannot stand for a name"));
    EXPECT_TRUE(rename("Ida Quill", "T. Vale").err.contains("cannot stand for a name"))
        << "nobody else's either";
    {
        Laptop laptop{path, 3};
        must(laptop.records->add(aPerson("OO 1")));
    }
    EXPECT_TRUE(rename("Ida Quill", "OO 1").err.contains("Somebody else"));
    EXPECT_FALSE(fs::exists(out));
    EXPECT_EQ(run({"rename-person", QString::fromStdString(path), "--person", "Ida Quill"}).status, 2);
    EXPECT_EQ(run({"check", QString::fromStdString(path), "--by", "Ida Quill"}).status, 2);
}

} // namespace rig::test
