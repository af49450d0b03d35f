// A whole file as one document, as a script would write and read it.

#include "core/store/connection.h"
#include "tests/file/running.h"
#include "tests/support/laptop.h"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>

namespace rig::test {
namespace {

namespace fs = std::filesystem;

class Documents : public testing::Test
{
protected:
    void SetUp() override { Laptop{path, 1}.read(hangar, 450); }

    QString at(const char* name) const { return QString::fromStdString(elsewhere.file(name)); }
    QString file() const { return QString::fromStdString(path); }
    Answer exported(const QStringList& more = {})
    {
        return run(QStringList{"export", file(), "--json", at("all.json")} + more);
    }
    Answer imported(const QStringList& more = {})
    {
        return run(QStringList{"import", at("new.rigband"), "--json", at("all.json")} + more);
    }
    void write(const std::string& text)
    {
        std::ofstream{elsewhere.file("all.json"), std::ios::binary} << text;
    }
    std::string document() const { return rig::test::textOf(elsewhere.file("all.json")); }

    // One sentence that says this, and nothing is made.
    void expectRefused(const char* what)
    {
        const Answer answer = imported();
        EXPECT_EQ(answer.status, 1);
        EXPECT_EQ(answer.out, "");
        EXPECT_TRUE(answer.err.contains(what)) << what << '\n' << answer.err.toStdString();
        EXPECT_TRUE(answer.err.endsWith("Nothing was made.\n")) << answer.err.toStdString();
        EXPECT_EQ(answer.err.count('\n'), 2) << answer.err.toStdString();
        EXPECT_EQ(std::distance(fs::directory_iterator{elsewhere.path()}, {}), 1) << "the document alone";
    }

    TempStore store;
    Hangar hangar{store.records()};
    std::string path = (store.close(), store.path());
    TempFolder elsewhere;
};

} // namespace

TEST_F(Documents, GoOutAndComeBackAsAFileOfWhichCheckSaysTheSame)
{
    const Answer out = exported();
    EXPECT_EQ(out.status, 0) << out.err.toStdString();
    EXPECT_TRUE(out.out.contains("facts")) << out.out.toStdString();
    const Answer in = imported();
    EXPECT_EQ(in.status, 0) << in.err.toStdString();
    Answer before = run({"check", file()});
    Answer after = run({"check", at("new.rigband")});
    EXPECT_EQ(after.out.replace(at("new.rigband"), file()), before.out);
    EXPECT_EQ(after.err, before.err);
    EXPECT_EQ(contentOf(elsewhere.file("new.rigband")), contentOf(path));
}

TEST_F(Documents, AreNeverWrittenOverAnything)
{
    exported();
    EXPECT_TRUE(exported().err.contains("is there already"));
    imported();
    EXPECT_TRUE(imported().err.contains("is there already"));
}

TEST_F(Documents, OfAFileThatWasChangedGoOutAndComeInOnlyAsFound)
{
    {
        const auto open = must(StoreFile::Connection::open(path, StoreFile::Connection::Access::Writing));
        byHand(*open, "reading", "UPDATE reading SET enters_um = 400");
    }
    const Answer refused = exported();
    EXPECT_EQ(refused.status, 1);
    EXPECT_TRUE(refused.err.contains("Changed since it was saved")) << refused.err.toStdString();
    EXPECT_FALSE(fs::exists(elsewhere.file("all.json")));
    EXPECT_EQ(exported({"--as-found"}).status, 3) << "done, and something was found";
    const Answer in = imported();
    EXPECT_EQ(in.status, 1);
    EXPECT_TRUE(in.err.contains("Changed since it was saved")) << in.err.toStdString();
    EXPECT_TRUE(in.err.contains("--as-found"));
    EXPECT_FALSE(fs::exists(elsewhere.file("new.rigband")));
    EXPECT_EQ(imported({"--as-found"}).status, 3);
    EXPECT_TRUE(run({"check", at("new.rigband")}).err.contains("Changed since it was saved"));
    const Answer tables = run({"export", file(), "--csv", at("tables")});
    EXPECT_EQ(tables.status, 3);
    EXPECT_TRUE(tables.err.contains("changed by another program")) << tables.err.toStdString();
}

TEST_F(Documents, AreRefusedWithOneSentenceThatSaysWhatIsWrongAndWhere)
{
    exported();
    const std::string whole = document();
    const auto changed = [&whole](const std::string& from, const std::string& to) {
        std::string text = whole;
        const std::size_t at = text.find(from);
        EXPECT_NE(at, std::string::npos) << from;
        return text.replace(at, from.size(), to);
    };
    write(changed("\"enters_um\":450,", ""));
    expectRefused(": “enters_um” is missing.");
    write(changed("\"enters_um\":450", "\"enters_um\":-450"));
    expectRefused("smaller or larger than it may be");
    write(changed("\"enters_um\":450", "\"enters_um\":\"450\""));
    expectRefused("what stands at “enters_um” is not of the kind that belongs there");
    write(changed("\"reading\":[", "\"wheel\":["));
    expectRefused("“wheel” is no kind of fact");
    write(whole.substr(0, whole.size() / 2));
    expectRefused("ends too early");
    write(std::string(200'000, '['));
    expectRefused("is no document of a Rigband file");
    write("{\"format\":\"rigband\",\"version\":1,\"layout\":99");
    expectRefused("newer Rigband");
    write("");
    expectRefused("ends too early");
    write(std::string(200'000'000, ','));
    expectRefused("is no JSON in line 1");
}

TEST_F(Documents, ThatAreNoFileOrTooLargeAreNotRead)
{
    write("{");
    fs::resize_file(elsewhere.file("all.json"), 4'000'000'001);
    const Answer large = imported();
    EXPECT_EQ(large.status, 1);
    EXPECT_TRUE(large.err.contains("larger than 4 GB")) << large.err.toStdString();
    EXPECT_TRUE(run({"import", at("new.rigband"), "--json", "/dev/zero"}).err.contains("is no file but"));
    EXPECT_TRUE(run({"import", at("new.rigband"), "--json", at("none.json")}).err.contains("cannot be read"));
}

TEST_F(Documents, AreAskedForAlone)
{
    EXPECT_EQ(run({"export", file(), "--json", at("all.json"), "--csv", at("tables")}).status, 2);
    EXPECT_EQ(run({"export", file(), "--json", at("all.json"), "--nameless"}).status, 2);
    EXPECT_EQ(run({"import", at("new.rigband"), "--json", at("all.json"), "--people", at("x.csv")}).status,
              2);
    EXPECT_EQ(run({"check", file(), "--json", at("all.json")}).status, 2);
    EXPECT_EQ(run({"export", "--json", at("all.json")}).status, 2);
}

} // namespace rig::test
