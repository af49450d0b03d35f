// Runs rigband-file sheet, as a script would.

#include "tests/file/running.h"
#include "tests/support/hangar.h"

#include <QStandardPaths>

#include <filesystem>

namespace rig::test {
namespace {

namespace fs = std::filesystem;

class SheetOfAFile : public testing::Test
{
protected:
    void SetUp() override
    {
        must(
            store.records().add(hangar.reading(between(600, 650), noonOf(dayOf(2026, 4, 20))), std::nullopt));
        store.close();
    }

    QString file() const { return QString::fromStdString(store.path()); }
    std::string at(const std::string& name) const { return elsewhere.file(name); }
    QString pathOf(const std::string& name) const { return QString::fromStdString(at(name)); }
    Answer sheet(const QStringList& options = {}, const std::string& out = "x.pdf") const
    {
        return run(QStringList{"sheet", file(), "--airframe", "QX-17", "--out", pathOf(out)} + options);
    }

    TempStore store;
    Hangar hangar{store.records()};
    TempFolder elsewhere;
};

TEST_F(SheetOfAFile, IsWrittenOnEachPaper)
{
    const std::tuple<QStringList, const char*, const char*> table[] = {
        {{}, "a4.pdf", "595 x 842"},
        {{"--letter"}, "letter.pdf", "612 x 792"},
        {{"--a5"}, "a5.pdf", "420 x 595"},
    };
    for (const auto& [options, name, size] : table) {
        const Answer answer = sheet(options, name);
        ASSERT_EQ(answer.status, 0) << answer.err.toStdString();
        EXPECT_TRUE(textOf(at(name)).starts_with("%PDF-"));
        if (QStandardPaths::findExecutable("pdfinfo").isEmpty())
            continue;
        const QString info = outputOf("pdfinfo", {pathOf(name)});
        EXPECT_TRUE(info.contains(size)) << info.toStdString();
    }
}

TEST_F(SheetOfAFile, CanBeReadAsText)
{
    ASSERT_EQ(sheet({"--a5", "--gauge", "A"}).status, 0);
    if (QStandardPaths::findExecutable("pdftotext").isEmpty())
        GTEST_SKIP() << "pdftotext (poppler-utils) is not installed";
    const QString text = outputOf("pdftotext", {pathOf("x.pdf"), "-"}).simplified();
    for (const char* part : {"QX-17 · Orvane 15", "1 Left aileron", "2 Right aileron", "0.60",
                             "Second person", "Control check", "Page 1 of"})
        EXPECT_TRUE(text.contains(QString::fromUtf8(part))) << part << " in " << text.toStdString();
    EXPECT_FALSE(text.contains(QString::fromUtf8("0.60–0.65"))) << "never what was read";
}

TEST_F(SheetOfAFile, IsTheSameAgainSaveWhenItWasMade)
{
    ASSERT_EQ(sheet({}, "one.pdf").status, 0);
    ASSERT_EQ(sheet({}, "two.pdf").status, 0);
    EXPECT_EQ(withoutStamp(textOf(at("one.pdf"))), withoutStamp(textOf(at("two.pdf"))));
}

TEST_F(SheetOfAFile, SaysWhyItIsNotWritten)
{
    const std::pair<QStringList, const char*> table[] = {
        {{"sheet", file(), "--airframe", "QX-99", "--out", pathOf("x.pdf")}, "knows no airframe QX-99"},
        {{"sheet", file(), "--airframe", "QX-17", "--out", pathOf("x.pdf"), "--gauge", "Z"},
         "in use with the name Z"},
        {{"sheet", file(), "--airframe", "QX-17", "--out", pathOf("none/x.pdf")}, "its folder is not there"},
        {{"sheet", file(), "--airframe", "QX-17", "--out", pathOf("x.pdf"), "--letter", "--a5"},
         "Use one of"},
        {{"sheet", file(), "--airframe", "QX-17", "--out", pathOf("x.pdf"), "--day", "2026-05-02"},
         "Use one of"},
        {{"report", file(), "--airframe", "QX-17", "--out", pathOf("x.pdf"), "--a5"}, "Use one of"},
    };
    for (const auto& [arguments, about] : table) {
        const Answer answer = run(arguments);
        EXPECT_NE(answer.status, 0);
        EXPECT_TRUE(answer.err.contains(about)) << answer.err.toStdString();
    }
    EXPECT_FALSE(fs::exists(at("x.pdf")));
    ASSERT_EQ(sheet().status, 0);
    EXPECT_TRUE(sheet().err.contains("is there already")) << "never over another file";
}

} // namespace
} // namespace rig::test
