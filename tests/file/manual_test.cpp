// Runs rigband-file manual, as a script would.

#include "tests/file/running.h"
#include "tests/support/hangar.h"

#include <QRegularExpression>
#include <QStandardPaths>

#include <filesystem>

namespace rig::test {
namespace {

namespace fs = std::filesystem;

class PrintedManual : public testing::Test
{
protected:
    std::string at(const std::string& name) const { return elsewhere.file(name); }
    QString pathOf(const std::string& name) const { return QString::fromStdString(at(name)); }
    Answer print(const QStringList& more = {}) const
    {
        return run(QStringList{"manual", "--out", pathOf("x.pdf")} + more);
    }
    // One text a page.
    QStringList pages() const
    {
        QStringList all = outputOf("pdftotext", {"-layout", pathOf("x.pdf"), "-"}).split('\f');
        all.removeLast(); // behind the last page
        return all;
    }
    // As docs/manual/README.md lists them.
    static QStringList chapters()
    {
        static const QRegularExpression line{R"(- \[(.+)\]\((.+\.md)\))"};
        QStringList titles;
        auto all = line.globalMatch(QString::fromStdString(textOf(RIG_MANUAL "/README.md")));
        while (all.hasNext())
            titles << all.next().captured(1);
        return titles;
    }

    TempFolder elsewhere;
};

TEST_F(PrintedManual, BeginsWithContentsThatNameThePageOfEachChapter)
{
    ASSERT_EQ(print().status, 0);
    if (QStandardPaths::findExecutable("pdftotext").isEmpty())
        GTEST_SKIP() << "pdftotext (poppler-utils) is not installed";
    const QStringList pages = this->pages();
    ASSERT_FALSE(chapters().isEmpty());
    for (const QString& chapter : chapters()) {
        const QRegularExpression line{QRegularExpression::escape(chapter) + R"(\s+(\d+)$)",
                                      QRegularExpression::MultilineOption};
        const auto found = line.match(pages.value(0));
        ASSERT_TRUE(found.hasMatch()) << chapter.toStdString() << " in " << pages.value(0).toStdString();
        const int page = found.captured(1).toInt();
        EXPECT_TRUE(pages.value(page - 1).startsWith(chapter))
            << chapter.toStdString() << " on " << page << ": " << pages.value(page - 1).toStdString();
    }
}

TEST_F(PrintedManual, LosesNoLineAndLeavesNoPageEmpty)
{
    ASSERT_EQ(print().status, 0);
    if (QStandardPaths::findExecutable("pdftotext").isEmpty())
        GTEST_SKIP() << "pdftotext (poppler-utils) is not installed";
    const QStringList pages = this->pages();
    for (qsizetype i = 0; i < pages.size(); ++i) {
        EXPECT_TRUE(pages[i].contains(QStringLiteral("Page %1 of %2").arg(i + 1).arg(pages.size())));
        EXPECT_GT(pages[i].simplified().size(), 60) << "page " << i + 1 << " is as good as empty";
    }
    const QString text = pages.join(' ').simplified();
    for (const auto& file : fs::directory_iterator{RIG_MANUAL})
        if (file.path().extension() == ".md")
            for (const QString& line : QString::fromStdString(textOf(file.path().string())).split('\n')) {
                static const QRegularExpression heading{"^## (.+)$"};
                const auto found = heading.match(line);
                EXPECT_TRUE(!found.hasMatch() || text.contains(found.captured(1))) << line.toStdString();
            }
    for (const char* end : {"whom to call. No band and no reading stands on it.", "You are not sure",
                            "local rules and a licensed person ask for stand beside it."})
        EXPECT_TRUE(text.contains(end)) << end;
}

TEST_F(PrintedManual, ComesOnEitherPaper)
{
    if (QStandardPaths::findExecutable("pdfinfo").isEmpty())
        GTEST_SKIP() << "pdfinfo (poppler-utils) is not installed";
    ASSERT_EQ(print().status, 0);
    EXPECT_TRUE(outputOf("pdfinfo", {pathOf("x.pdf")}).contains("(A4)"));
    fs::remove(at("x.pdf"));
    ASSERT_EQ(print({"--letter"}).status, 0);
    EXPECT_TRUE(outputOf("pdfinfo", {pathOf("x.pdf")}).contains("(letter)"));
}

TEST_F(PrintedManual, SaysWhyItIsNotWritten)
{
    const std::pair<QStringList, const char*> table[] = {
        {{"manual", "--out", pathOf("none/x.pdf")}, "its folder is not there"},
        {{"manual"}, "Use one of"},
        {{"manual", "file.rigband", "--out", pathOf("x.pdf")}, "Use one of"},
        {{"manual", "--out", pathOf("x.pdf"), "--airframe", "QX-17"}, "Use one of"},
        {{"manual", "--out", pathOf("x.pdf"), "--a5"}, "Use one of"},
    };
    for (const auto& [arguments, about] : table) {
        const Answer answer = run(arguments);
        EXPECT_NE(answer.status, 0);
        EXPECT_TRUE(answer.err.contains(about)) << answer.err.toStdString();
    }
    EXPECT_FALSE(fs::exists(at("x.pdf")));
    ASSERT_EQ(print().status, 0);
    EXPECT_TRUE(print().err.contains("is there already")) << "never over another file";
}

} // namespace
} // namespace rig::test
