// Runs rigband-file card, as a script would.

#include "tests/file/running.h"
#include "tests/support/hangar.h"

#include <QRegularExpression>
#include <QStandardPaths>

#include <filesystem>

namespace rig::test {
namespace {

namespace fs = std::filesystem;

class CardOfAFile : public testing::Test
{
protected:
    void SetUp() override
    {
        must(
            store.records().add(hangar.reading(between(600, 650), noonOf(dayOf(2026, 4, 20))), std::nullopt));
        must(store.records().add(anAirframe("QX-18")));
        store.close();
    }

    QString file() const { return QString::fromStdString(store.path()); }
    std::string at(const std::string& name) const { return elsewhere.file(name); }
    QString pathOf(const std::string& name) const { return QString::fromStdString(at(name)); }
    Answer card(const std::string& out = "x.pdf", const QStringList& more = {}) const
    {
        return run(QStringList{"card", file(), "--airframe", "QX-17", "--out", pathOf(out)} + more);
    }

    TempStore store;
    Hangar hangar{store.records()};
    TempFolder elsewhere;
};

TEST_F(CardOfAFile, IsASheetOfA5OnBothSides)
{
    const Answer answer = card();
    ASSERT_EQ(answer.status, 0) << answer.err.toStdString();
    EXPECT_TRUE(textOf(at("x.pdf")).starts_with("%PDF-"));
    if (QStandardPaths::findExecutable("pdfinfo").isEmpty())
        GTEST_SKIP() << "pdfinfo (poppler-utils) is not installed";
    const QString info = outputOf("pdfinfo", {pathOf("x.pdf")}).simplified();
    EXPECT_TRUE(info.contains("595 x 420")) << info.toStdString();
    EXPECT_TRUE(info.contains("Pages: 2")) << info.toStdString();
}

TEST_F(CardOfAFile, TellsTheCouplingsAndNothingThatWasRead)
{
    ASSERT_EQ(card().status, 0);
    if (QStandardPaths::findExecutable("pdftotext").isEmpty())
        GTEST_SKIP() << "pdftotext (poppler-utils) is not installed";
    const QString text = outputOf("pdftotext", {pathOf("x.pdf"), "-"}).simplified();
    for (const char* part : {"QX-17", "Left aileron", "Right aileron", "What locked looks like",
                             "No band and no limit stands on this card."})
        EXPECT_TRUE(text.contains(QString::fromUtf8(part))) << part << " in " << text.toStdString();
    QString said = text;
    said.remove(QRegularExpression{QStringLiteral("Rigband [0-9.]+")});
    static const QRegularExpression figure{QStringLiteral("[0-9][.,][0-9]|\\bmm\\b|no readings")};
    EXPECT_FALSE(said.contains(figure)) << "nor in a picture: " << text.toStdString();
}

TEST_F(CardOfAFile, IsTheSameAgainSaveWhenItWasMade)
{
    ASSERT_EQ(card("one.pdf").status, 0);
    ASSERT_EQ(card("two.pdf").status, 0);
    EXPECT_EQ(withoutStamp(textOf(at("one.pdf"))), withoutStamp(textOf(at("two.pdf"))));
}

TEST_F(CardOfAFile, SaysWhyItIsNotWritten)
{
    const std::pair<QStringList, const char*> table[] = {
        {{"card", file(), "--airframe", "QX-99", "--out", pathOf("x.pdf")}, "knows no airframe QX-99"},
        {{"card", file(), "--airframe", "QX-18", "--out", pathOf("x.pdf")}, "has no couplings yet"},
        {{"card", pathOf("none.rigband"), "--airframe", "QX-17", "--out", pathOf("x.pdf")}, "none.rigband"},
        {{"card", file(), "--airframe", "QX-17", "--out", pathOf("none/x.pdf")}, "its folder is not there"},
        {{"card", file(), "--airframe", "QX-17"}, "Use one of"},
        {{"card", file(), "--airframe", "QX-17", "--out", pathOf("x.pdf"), "--letter"}, "Use one of"},
        {{"card", file(), "--airframe", "QX-17", "--out", pathOf("x.pdf"), "--gauge", "A"}, "Use one of"},
    };
    for (const auto& [arguments, about] : table) {
        const Answer answer = run(arguments);
        EXPECT_NE(answer.status, 0);
        EXPECT_TRUE(answer.err.contains(about)) << answer.err.toStdString();
    }
    EXPECT_FALSE(fs::exists(at("x.pdf")));
    ASSERT_EQ(card().status, 0);
    EXPECT_TRUE(card().err.contains("is there already")) << "never over another file";
}

} // namespace
} // namespace rig::test
