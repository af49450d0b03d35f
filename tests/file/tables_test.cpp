// A walk without a window: tables, a file, the engineer's report.

#include "core/exchange/csv.h"
#include "tests/file/running.h"
#include "tests/support/temp_store.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <sstream>

namespace rig::test {
namespace {

namespace fs = std::filesystem;

// The lines of readings that stand; no note of the invented hangar has a line end in it.
std::string withoutSetAside(const std::string& table)
{
    std::string standing;
    std::istringstream lines{table};
    for (std::string line; std::getline(lines, line);)
        if (line.find(",corrected,") == std::string::npos && line.find(",struck,") == std::string::npos)
            standing += line + '\n';
    return standing;
}

class FileOfTables : public testing::Test
{
protected:
    void SetUp() override
    {
        write("couplings.csv", "airframe,coupling,circuit,side,fitting_begins\n"
                               "QZ-1,Left aileron,aileron,left,\n"
                               "QZ-1,Right aileron,aileron,right,2026-03-01\n");
        write("people.csv", "name,role\nM. Oren,owner\nT. Vale,member\n");
        write("gauges.csv", "name,sizes_mm,tolerance_mm\nA,0.05-1.00 step 0.05,0.004\n");
        write("events.csv", "airframe,coupling,date,kind,note,person\n"
                            "QZ-1,,2026-02-20,annual,\"by the book, all of it\",M. Oren\n");
        std::string readings = "airframe,coupling,date,enters_mm,refuses_mm,gauge,person,state,repeat\n";
        for (int i = 1; i <= 12; ++i)
            readings += "QZ-1,Left aileron,2026-03-02,0.45,0.50,A," +
                        std::string{i % 2 == 0 ? "M. Oren" : "T. Vale"} + ",baseline," +
                        std::to_string((i + 1) / 2) + "\n";
        readings += "QZ-1,Left aileron,2026-04-11,0.90,0.95,A,M. Oren,locked,\n"
                    "QZ-1,Right aileron,2026-04-11,0.60,0.65,A,M. Oren,,\n";
        write("readings.csv", readings);
    }

    void write(const std::string& name, const std::string& text) const
    {
        std::ofstream{at(name), std::ios::binary} << text;
    }
    std::string at(const std::string& name) const { return folder.file(name); }
    QString pathOf(const std::string& name) const { return QString::fromStdString(at(name)); }
    QStringList imports(const QStringList& options) const
    {
        return QStringList{"import", pathOf("new.rigband")} + options;
    }
    QStringList all() const
    {
        return imports({"--couplings", pathOf("couplings.csv"), "--people", pathOf("people.csv"), "--gauges",
                        pathOf("gauges.csv"), "--events", pathOf("events.csv"), "--csv",
                        pathOf("readings.csv")});
    }
    std::vector<std::string> files() const
    {
        std::vector<std::string> names;
        for (const auto& entry : fs::directory_iterator{folder.path()})
            names.push_back(entry.path().filename().string());
        std::ranges::sort(names);
        return names;
    }

    TempFolder folder;
};

TEST_F(FileOfTables, IsMadeAndServesTheEngineersReportAtOnce)
{
    const Answer made = run(all());
    ASSERT_EQ(made.status, 0) << made.err.toStdString();
    EXPECT_TRUE(made.out.contains("new.rigband was not there, and was made.")) << made.out.toStdString();
    EXPECT_TRUE(made.out.contains("Added. Airframes: 1. Couplings: 2. Fittings: 2. People: 2. Leaf sets and "
                                  "gauges: 1. Events: 1."))
        << made.out.toStdString();
    EXPECT_TRUE(made.out.contains("14 readings were imported, with one rigging.")) << made.out.toStdString();

    const Answer report = run({"report", pathOf("new.rigband"), "--airframe", "QZ-1", "--out",
                               pathOf("R.pdf"), "--day", "2026-05-01"});
    ASSERT_EQ(report.status, 0) << report.err.toStdString();
    EXPECT_TRUE(textOf(at("R.pdf")).starts_with("%PDF-"));
    const auto rows = csvRows(textOf(at("R-csv/outside.csv")), ',');
    ASSERT_EQ(rows.size(), 2U) << "the reading of 0.90 mm lies outside the band of the baseline day";
    EXPECT_NE(textOf(at("R-csv/outside.csv")).find("Left aileron"), std::string::npos);
}

TEST_F(FileOfTables, SaysNothingNewTheSecondTime)
{
    ASSERT_EQ(run(all()).status, 0);
    const std::string before = textOf(at("new.rigband"));
    const Answer again = run(imports({"--couplings", pathOf("couplings.csv"), "--people",
                                      pathOf("people.csv"), "--events", pathOf("events.csv")}));
    EXPECT_EQ(again.status, 0) << again.err.toStdString();
    EXPECT_FALSE(again.out.contains("was made"));
    EXPECT_TRUE(again.out.contains("There is nothing in it that the file does not say already."));
    EXPECT_TRUE(again.out.contains("5 rows not taken in, as the file says the same already."))
        << again.out.toStdString();
}

TEST_F(FileOfTables, IsTakenAwayAgainWhenARowOfATableIsBad)
{
    write("people.csv", "name\nM. Oren\n");
    const auto before = files();
    const Answer answer = run(all());
    EXPECT_EQ(answer.status, 2);
    EXPECT_EQ(answer.out, "");
    EXPECT_TRUE(answer.err.contains("readings.csv: Line 2 names “T. Vale” in the column person, and nobody"))
        << answer.err.toStdString();
    EXPECT_TRUE(answer.err.contains("Nothing was imported.")) << answer.err.toStdString();
    EXPECT_TRUE(answer.err.contains("new.rigband was not there before, and is not there now."))
        << answer.err.toStdString();
    EXPECT_EQ(files(), before);
}

TEST_F(FileOfTables, TellsWhatIsOnEveryLineOfATableOnlyTenTimes)
{
    ASSERT_EQ(run(all()).status, 0);
    QByteArray table{"airframe,coupling,date,enters_mm,person\n"};
    for (int i = 0; i < 30; ++i)
        table += "QZ-1,Left aileron,2026-05-02,0.50,Nobody Known\n";
    write("readings.csv", table.constData());
    const Answer answer = run(imports({"--csv", pathOf("readings.csv")}));
    EXPECT_EQ(answer.status, 2);
    EXPECT_EQ(answer.err.count("Nobody Known"), 10) << answer.err.toStdString();
    EXPECT_TRUE(answer.err.contains("20 more lines have the same to put right.")) << answer.err.toStdString();
    EXPECT_TRUE(answer.err.contains("the 30 things named above")) << answer.err.toStdString();
}

TEST_F(FileOfTables, IsNotMadeByTablesThatOnlyTellOfWhatIsThere)
{
    for (const QStringList& options :
         {QStringList{"--csv", pathOf("readings.csv")}, QStringList{"--events", pathOf("events.csv")}}) {
        const Answer answer = run(imports(options));
        EXPECT_EQ(answer.status, 1);
        EXPECT_TRUE(answer.err.contains("new.rigband is not there")) << answer.err.toStdString();
    }
    write("couplings.csv", "airframe,coupling\n");
    const Answer empty = run(imports({"--couplings", pathOf("couplings.csv")}));
    EXPECT_EQ(empty.status, 0);
    EXPECT_TRUE(empty.err.contains("is not there now")) << empty.err.toStdString();
    EXPECT_FALSE(fs::exists(at("new.rigband")));
}

TEST_F(FileOfTables, GoesRoundWithTheInventedHangarByteForByte)
{
    ASSERT_EQ(run({"demo", pathOf("demo.rigband")}).status, 0);
    ASSERT_EQ(run({"export", pathOf("demo.rigband"), "--csv", pathOf("out")}).status, 0);
    const QString out = pathOf("out/");
    const Answer made = run(imports({"--couplings", out + "couplings.csv", "--people", out + "people.csv",
                                     "--gauges", out + "gauges.csv", "--events", out + "events.csv",
                                     "--joint-play", out + "joint_play.csv", "--csv", out + "readings.csv"}));
    ASSERT_EQ(made.status, 0) << made.err.toStdString();
    ASSERT_EQ(run({"export", pathOf("new.rigband"), "--csv", pathOf("back")}).status, 0);
    for (const char* name : {"couplings.csv", "people.csv", "gauges.csv", "events.csv", "joint_play.csv"})
        EXPECT_EQ(textOf(at("back/") + name), textOf(at("out/") + name)) << name;
    EXPECT_EQ(textOf(at("back/readings.csv")), withoutSetAside(textOf(at("out/readings.csv"))));

    const Answer report = run({"report", pathOf("new.rigband"), "--airframe", "QX-42", "--out",
                               pathOf("x.pdf"), "--day", "2026-10-31"});
    EXPECT_EQ(report.status, 0) << report.err.toStdString();
    EXPECT_TRUE(textOf(at("x.pdf")).starts_with("%PDF-"));
}

TEST_F(FileOfTables, IsMadeOfTheSamplesWhichFitTheInventedHangarToo)
{
    const QString samples = QStringLiteral(RIG_SAMPLES "/");
    const QStringList things{"--couplings", samples + "couplings.csv", "--people", samples + "people.csv",
                             "--gauges",    samples + "gauges.csv"};
    const Answer made = run(imports(things) + QStringList{"--csv", samples + "readings.csv"});
    EXPECT_EQ(made.status, 0) << made.err.toStdString();
    ASSERT_EQ(run({"demo", pathOf("demo.rigband")}).status, 0);
    const Answer same = run(QStringList{"import", pathOf("demo.rigband")} + things);
    EXPECT_EQ(same.status, 0) << same.err.toStdString();
    EXPECT_TRUE(same.out.contains("There is nothing in it that the file does not say already."))
        << same.out.toStdString();
}

TEST_F(FileOfTables, IsNotImportedByWrongUse)
{
    for (const QStringList& options :
         {QStringList{}, QStringList{"--couplings"}, QStringList{"--couplings", "x", "--couplings", "y"},
          QStringList{"--people", "x", "--airframe", "QZ-1"}}) {
        const Answer answer = run(imports(options));
        EXPECT_EQ(answer.status, 2);
        EXPECT_TRUE(answer.err.contains("Use one of these")) << answer.err.toStdString();
    }
    const Answer out = run({"export", pathOf("x.rigband"), "--csv", "y", "--people", "z"});
    EXPECT_EQ(out.status, 2);
}

} // namespace
} // namespace rig::test
