// Runs rigband-file report, as a script would.

#include "core/day_entry.h"
#include "core/exchange/csv.h"
#include "tests/file/running.h"
#include "tests/support/laptop.h"

#include <QStandardPaths>

#include <algorithm>
#include <filesystem>

namespace rig::test {
namespace {

namespace fs = std::filesystem;

class EngineersReport : public testing::Test
{
protected:
    void SetUp() override
    {
        for (int i = 0; i < 12; ++i) {
            Reading reading =
                hangar.reading(between(450, 500), noonOf(dayOf(2026, 4, 1) + std::chrono::days{i / 6}));
            reading.purpose = Purpose::Baseline;
            must(store.records().add(reading, std::nullopt));
        }
        const RecordId record = must(store.records().add(hangar.record(noonOf(dayOf(2026, 4, 20)))));
        Reading reading = hangar.reading(between(900, 950), noonOf(dayOf(2026, 4, 20)));
        reading.record = record;
        reading.note = "read \"twice\", then left";
        must(store.records().add(reading, std::nullopt));
        store.close();
    }

    QString file() const { return QString::fromStdString(store.path()); }
    std::string at(const std::string& name) const { return elsewhere.file(name); }
    QString pathOf(const std::string& name) const { return QString::fromStdString(at(name)); }
    Answer report(const QStringList& options = {}, const std::string& out = "x.pdf") const
    {
        return run(QStringList{"report", file(), "--airframe", "QX-17", "--out", pathOf(out)} + options);
    }

    TempStore store;
    Hangar hangar{store.records()};
    TempFolder elsewhere;
};

TEST_F(EngineersReport, StandsBesideItsTables)
{
    const Answer answer = report({"--day", "2026-05-01"});
    ASSERT_EQ(answer.status, 0) << answer.err.toStdString();
    EXPECT_TRUE(answer.out.contains("x-csv")) << answer.out.toStdString();
    EXPECT_TRUE(textOf(at("x.pdf")).starts_with("%PDF-"));
    for (const char* name : {"period", "couplings", "readings", "outside", "questions", "shifts", "measurers",
                             "gauges", "fittings", "events", "joint_play"}) {
        const auto rows = csvRows(textOf(at("x-csv/") + name + ".csv"), ',');
        ASSERT_FALSE(rows.empty()) << name;
        for (const CsvRow& row : rows) {
            EXPECT_EQ(row.fields.size(), rows.front().fields.size()) << name << " line " << row.line;
            EXPECT_FALSE(row.strayQuote || row.unclosedQuote) << name << " line " << row.line;
        }
    }
    const auto readings = csvRows(textOf(at("x-csv/readings.csv")), ',');
    ASSERT_EQ(readings.size(), 14U) << "a head, twelve of the baseline, one of a rigging";
    const std::vector<std::string>& last = readings.back().fields;
    EXPECT_EQ(last[0], "Left aileron");
    EXPECT_EQ(last[4], "0.90");
    EXPECT_EQ(last[12], "outside");
    EXPECT_EQ(readings.front().fields[30], "temperature_c");
    EXPECT_EQ(readings.front().fields.back(), "from_paper");
    EXPECT_EQ(last[28], "no") << "not struck";
    EXPECT_EQ(last[25], "read \"twice\", then left");
}

TEST_F(EngineersReport, CanBeReadAsTextWithItsFontsAndWithoutImages)
{
    ASSERT_EQ(report({"--day", "2026-05-01", "--letter"}).status, 0);
    if (QStandardPaths::findExecutable("pdftotext").isEmpty())
        GTEST_SKIP() << "pdftotext (poppler-utils) is not installed";
    const QString text = outputOf("pdftotext", {pathOf("x.pdf"), "-"}).simplified();
    for (const char* part :
         {"QX-17 · Orvane 15", "to 1 May 2026", "What stands out first", "1 reading outside", "0.90–0.95 mm",
          "Not an aircraft record", "Page 1 of", "Rigband 0.", "Name, licence or authority, signature"})
        EXPECT_TRUE(text.contains(QString::fromUtf8(part))) << part << " in " << text.toStdString();
    const QStringList fonts = outputOf("pdffonts", {pathOf("x.pdf")}).trimmed().split('\n').mid(2);
    EXPECT_FALSE(fonts.isEmpty());
    for (const QString& font : fonts)
        EXPECT_TRUE(font.simplified().contains(" Identity-H yes ")) << font.toStdString();
    EXPECT_EQ(outputOf("pdfimages", {"-list", pathOf("x.pdf")}).trimmed().split('\n').size(), 2)
        << "only the head of the list";
}

TEST_F(EngineersReport, LeavesItsAppendixOutAndKeepsItsTables)
{
    const QStringList day{"--day", "2026-05-01"};
    ASSERT_EQ(report(day, "whole.pdf").status, 0);
    ASSERT_EQ(report(day + QStringList{"--without-appendix"}, "short.pdf").status, 0);
    EXPECT_NE(textOf(at("short.pdf")), textOf(at("whole.pdf")));
    for (const auto& entry : fs::directory_iterator{at("whole-csv")})
        EXPECT_EQ(textOf(entry.path().string()), textOf(at("short-csv/") + entry.path().filename().string()));
    const Answer record =
        run({"record", file(), "--airframe", "QX-17", "--out", pathOf("r.pdf"), "--without-appendix"});
    EXPECT_TRUE(record.err.contains("Use one of")) << "only a report has one";
}

TEST_F(EngineersReport, IsTheSameAgainSaveWhenItWasMade)
{
    const QStringList day{"--day", "2026-05-01"};
    ASSERT_EQ(report(day, "one.pdf").status, 0);
    ASSERT_EQ(report(day, "two.pdf").status, 0);
    EXPECT_EQ(withoutStamp(textOf(at("one.pdf"))), withoutStamp(textOf(at("two.pdf"))));
    for (const auto& entry : fs::directory_iterator{at("one-csv")})
        EXPECT_EQ(textOf(entry.path().string()), textOf(at("two-csv/") + entry.path().filename().string()));
}

TEST_F(EngineersReport, IsWrittenAlsoWhenNothingWasRead)
{
    const Answer answer = report({"--from", "2026-04-21", "--to", "2026-05-01"});
    EXPECT_EQ(answer.status, 0) << answer.err.toStdString();
    EXPECT_TRUE(answer.out.contains("No gap of QX-17 was read")) << answer.out.toStdString();
    EXPECT_TRUE(fs::exists(at("x.pdf")));
}

TEST_F(EngineersReport, HoldsNoCouplingForGoodOfWhichAnotherProgramChangedAReading)
{
    store.reopen();
    byHand(store.file().connection(), "reading",
           "UPDATE reading SET enters_um = 450, refuses_um = 500 WHERE enters_um = 900");
    store.close();
    const Answer answer = report({"--day", "2026-05-01"});
    EXPECT_EQ(answer.status, 3);
    EXPECT_TRUE(
        answer.err.contains("1 fact in this file is not as Rigband saved it. The report says so on its "
                            "first page and lists them under “The file as evidence”."))
        << answer.err.toStdString();
    const auto valueIn = [this](const std::string& table, const std::string& head, std::size_t row) {
        const auto rows = csvRows(textOf(at("x-csv/") + table + ".csv"), ',');
        const auto& heads = rows.front().fields;
        return rows[row].fields[static_cast<std::size_t>(std::ranges::find(heads, head) - heads.begin())];
    };
    EXPECT_EQ(valueIn("couplings", "standing", 1), "facts-in-doubt");
    EXPECT_EQ(valueIn("readings", "verdict", 13), "cannot-tell");
    EXPECT_EQ(valueIn("readings", "reason", 13), "facts-in-doubt");
}

TEST_F(EngineersReport, TheOtherPrintsEndSoTooAndSayWhereItStands)
{
    store.reopen();
    byHand(store.file().connection(), "reading", "UPDATE reading SET note = 'once' WHERE enters_um = 900");
    store.close();
    for (const char* verb : {"card", "sheet"}) {
        const Answer answer = run({verb, file(), "--airframe", "QX-17", "--out", pathOf(verb)});
        EXPECT_EQ(answer.status, 3) << verb;
        EXPECT_TRUE(answer.err.contains("“rigband-file check” lists them.")) << answer.err.toStdString();
    }
    const Answer record =
        run({"record", file(), "--airframe", "QX-17", "--day", "2026-04-20", "--out", pathOf("record")});
    EXPECT_EQ(record.status, 3);
    EXPECT_TRUE(record.err.contains("The print says so below its heading.")) << record.err.toStdString();
}

TEST_F(EngineersReport, SaysWhyItIsNotWritten)
{
    const std::pair<QStringList, const char*> table[] = {
        {{"report", file(), "--airframe", "QX-99", "--out", pathOf("x.pdf")}, "knows no airframe QX-99"},
        {{"report", file(), "--airframe", "QX-17", "--out", pathOf("x.pdf"), "--day", "1.5."}, "is no day"},
        {{"report", file(), "--airframe", "QX-17", "--out", pathOf("x.pdf"), "--from", "2026-05-02", "--to",
          "2026-05-01"},
         "comes after"},
        {{"report", file(), "--airframe", "QX-17", "--out", pathOf("none/x.pdf")}, "its folder is not there"},
        {{"report", pathOf("none.rigband"), "--airframe", "QX-17", "--out", pathOf("x.pdf")}, "is not there"},
    };
    for (const auto& [arguments, about] : table) {
        const Answer answer = run(arguments);
        EXPECT_NE(answer.status, 0);
        EXPECT_TRUE(answer.err.contains(about)) << answer.err.toStdString();
    }
    EXPECT_FALSE(fs::exists(at("x.pdf")));
    EXPECT_FALSE(fs::exists(at("x-csv")));
    ASSERT_EQ(report().status, 0);
    EXPECT_TRUE(report().err.contains("is there already")) << "never over another file";
}

} // namespace
} // namespace rig::test
