#include "core/exchange/reading_table.h"
#include "core/measure/gap.h"

#include <gtest/gtest.h>

namespace rig {

// Named in failures.
void PrintTo(const BadRow& row, std::ostream* out)
{
    *out << "line " << row.line << ", problem " << static_cast<int>(row.problem) << ", text '" << row.text
         << "', column '" << row.column << "'";
}

namespace {

constexpr const char* kHeader =
    "airframe,coupling,date,enters_mm,refuses_mm,gauge,person,state,note,repeat\n";

ReadingTable withRow(const std::string& row)
{
    return parseReadings(kHeader + row + "\n");
}

TEST(ReadingTable, TakesARowWithEverythingInIt)
{
    const auto table =
        withRow("QX-17,Left aileron,2026-05-02,0.45,0.50,A,M. Oren,Part-Seated,\"on trestles, shown\",2");
    EXPECT_EQ(table.bad, std::vector<BadRow>{});
    ASSERT_EQ(table.rows.size(), 1u);
    const TableRow& row = table.rows[0];
    EXPECT_EQ(row.line, 2);
    EXPECT_EQ(row.airframe, "QX-17");
    EXPECT_EQ(row.coupling, "Left aileron");
    EXPECT_EQ(row.day, Day{std::chrono::year{2026} / 5 / 2});
    EXPECT_EQ(row.interval, (GapInterval{Gap::micrometres(450), Gap::micrometres(500)}));
    EXPECT_EQ(row.gauge, "A");
    EXPECT_EQ(row.person, "M. Oren");
    EXPECT_EQ(row.state, RowState::PartSeated);
    EXPECT_EQ(row.note, "on trestles, shown");
    EXPECT_EQ(row.repeat, 2);
}

TEST(ReadingTable, TakesTheSameReadingHoweverItsTableIsWritten)
{
    const char* tables[] = {
        "\xEF\xBB\xBF"
        "airframe,coupling,date,enters_mm,refuses_mm,person\r\nQX-17,Trim,2026-05-02,0.5,.55,T. Vale\r\n",
        "airframe;coupling;date;enters_mm;refuses_mm;person\nQX-17;Trim;2026-05-02;0,50;0,55;T. Vale",
        "Person,DATE, refuses_mm ,Enters_MM,coupling,Airframe\nT. Vale,2026-05-02,0.550,0.500,Trim,QX-17\n",
        "\r\nairframe,coupling,date,enters_mm,refuses_mm,person\n\n QX-17 , Trim "
        ",2026-05-02,\"0,5\",\"0,55\",T. Vale\n,,,,,\n",
    };
    for (const char* text : tables) {
        SCOPED_TRACE(text);
        const auto table = parseReadings(text);
        EXPECT_EQ(table.bad, std::vector<BadRow>{});
        ASSERT_EQ(table.rows.size(), 1u);
        EXPECT_EQ(table.rows[0].airframe, "QX-17");
        EXPECT_EQ(table.rows[0].coupling, "Trim");
        EXPECT_EQ(table.rows[0].person, "T. Vale");
        EXPECT_EQ(table.rows[0].interval, (GapInterval{Gap::micrometres(500), Gap::micrometres(550)}));
        EXPECT_EQ(table.rows[0].state, RowState::Locked);
        EXPECT_EQ(table.rows[0].repeat, 1);
    }
}

TEST(ReadingTable, LeavesAGapOpenWhereNothingWasRefusedAndStartsAtZeroWhereNothingEntered)
{
    const auto table =
        parseReadings(std::string{kHeader} + "Q,C,2026-05-02,1.00,,,P,,,\nQ,C,2026-05-02,,0.05,,P,,,\n");
    EXPECT_EQ(table.bad, std::vector<BadRow>{});
    ASSERT_EQ(table.rows.size(), 2u);
    EXPECT_EQ(table.rows[0].interval, (GapInterval{Gap::micrometres(1000), std::nullopt}));
    EXPECT_EQ(table.rows[1].interval, (GapInterval{Gap{}, Gap::micrometres(50)}));
}

struct Refused
{
    const char* row;
    RowProblem problem;
    const char* text;
    const char* column;
};

TEST(ReadingTable, RefusesEveryBadRowForItsOwnReason)
{
    const Refused table[] = {
        {",C,2026-05-02,0.5,0.55,A,P,,,", RowProblem::NoAirframe, "", "airframe"},
        {"Q, ,2026-05-02,0.5,0.55,A,P,,,", RowProblem::NoCoupling, "", "coupling"},
        {"Q,C,2026-05-02,0.5,0.55,A,,,,", RowProblem::NoPerson, "", "person"},
        {"Q,C,,0.5,0.55,A,P,,,", RowProblem::NoDay, "", "date"},
        {"Q,C,02/05/2026,0.5,0.55,A,P,,,", RowProblem::NotADay, "02/05/2026", "date"},
        {"Q,C,02.05.2026,0.5,0.55,A,P,,,", RowProblem::NotADay, "02.05.2026", "date"},
        {"Q,C,2026-02-30,0.5,0.55,A,P,,,", RowProblem::NotADay, "2026-02-30", "date"},
        {"Q,C,2026-05-02,,,A,P,,,", RowProblem::NoGap, "", "enters_mm"},
        {"Q,C,2026-05-02,0,,A,P,,,", RowProblem::NoGap, "0", "enters_mm"},
        {"Q,C,2026-05-02,NaN,0.55,A,P,,,", RowProblem::NotFinite, "NaN", "enters_mm"},
        {"Q,C,2026-05-02,0.5,-inf,A,P,,,", RowProblem::NotFinite, "-inf", "refuses_mm"},
        {"Q,C,2026-05-02,#N/A,0.55,A,P,,,", RowProblem::NotFinite, "#N/A", "enters_mm"},
        {"Q,C,2026-05-02,half,0.55,A,P,,,", RowProblem::NotANumber, "half", "enters_mm"},
        {"Q,C,2026-05-02,5e-1,0.55,A,P,,,", RowProblem::NotANumber, "5e-1", "enters_mm"},
        {"Q,C,2026-05-02,0.5,0.55 mm,A,P,,,", RowProblem::NotANumber, "0.55 mm", "refuses_mm"},
        {"Q,C,2026-05-02,\"1.234,5\",0.55,A,P,,,", RowProblem::TwoSeparators, "1.234,5", "enters_mm"},
        {"Q,C,2026-05-02,0.5001,0.55,A,P,,,", RowProblem::TooFine, "0.5001", "enters_mm"},
        {"Q,C,2026-05-02,-0.5,0.55,A,P,,,", RowProblem::Negative, "-0.5", "enters_mm"},
        {"Q,C,2026-05-02,0.5,10.001,A,P,,,", RowProblem::TooWide, "10.001", "refuses_mm"},
        {"Q,C,2026-05-02,50,,A,P,,,", RowProblem::TooWide, "50", "enters_mm"},
        {"Q,C,2026-05-02,0.55,0.50,A,P,,,", RowProblem::Reversed, "0.55\u20130.50", "refuses_mm"},
        {"Q,C,2026-05-02,0.50,0.5,A,P,,,", RowProblem::SameBounds, "0.50\u20130.5", "refuses_mm"},
        {"Q,C,2026-05-02,,0,A,P,,,", RowProblem::SameBounds, "\u20130", "refuses_mm"},
        {"Q,C,2026-05-02,0.5,0.55,A,P,half home,,", RowProblem::UnknownState, "half home", "state"},
        {"Q,C,2026-05-02,0.5,0.55,A,P,,,0", RowProblem::NotARepeat, "0", "repeat"},
        {"Q,C,2026-05-02,0.5,0.55,A,P,,,-1", RowProblem::NotARepeat, "-1", "repeat"},
        {"Q,C,2026-05-02,0.5,0.55,A,P,,,99999999999", RowProblem::NotARepeat, "99999999999", "repeat"},
        {"Q,C,2026-05-02,0.5,0.55,A,P", RowProblem::WrongFieldCount, "Q,C,2026-05-02,0.5,0.55,A,P", ""},
        {"Q,C,2026-05-02,0,50,0,55,A,P,,,", RowProblem::DecimalComma, "Q,C,2026-05-02,0,50,0,55,A,P,,,", ""},
        {"Q,C,2026-05-02,0.5,0.55,A,P,,,,", RowProblem::WrongFieldCount, "Q,C,2026-05-02,0.5,0.55,A,P,,,,",
         ""},
        {"Q;C;2026-05-02;0,50;0,55;A;P;;;", RowProblem::WrongFieldCount, "Q;C;2026-05-02;0,50;0,55;A;P;;;",
         ""},
        {"Q,the \"big\" one,2026-05-02,0.5,0.55,A,P,,,", RowProblem::StrayQuote,
         "Q,the \"big\" one,2026-05-02,0.5,0.55,A,P,,,", ""},
        {"Q,\"C,2026-05-02,0.5,0.55,A,P,,,", RowProblem::UnclosedQuote, "Q,C,2026-05-02,0.5,0.55,A,P,,,", ""},
    };
    for (const Refused& refused : table) {
        SCOPED_TRACE(refused.row);
        const auto parsed = withRow(refused.row);
        EXPECT_TRUE(parsed.rows.empty());
        EXPECT_EQ(parsed.bad, (std::vector<BadRow>{{2, refused.problem, refused.text, refused.column}}));
    }
}

TEST(ReadingTable, RefusesATableThatIsNone)
{
    struct Wrong
    {
        std::string text;
        std::vector<BadRow> bad;
    };
    const Wrong table[] = {
        {"", {{1, RowProblem::Empty, "", ""}}},
        {"\xEF\xBB\xBF\r\n  \n", {{1, RowProblem::Empty, "", ""}}},
        {",,,\n", {{1, RowProblem::Empty, "", ""}}},
        {kHeader, {{1, RowProblem::NoRows, "", ""}}},
        {"airframe,coupling;date\nQ,C;D\n", {{1, RowProblem::MixedSeparators, "airframe,coupling;date", ""}}},
        {"airframe,coupling,date,enters_mm\nQ,C,2026-05-02,0.5\n",
         {{1, RowProblem::MissingColumn, "person", ""}}},
        {"airframe,coupling,date,enters_mm,person,colour\n", {{1, RowProblem::UnknownColumn, "colour", ""}}},
        {"airframe,coupling,date,enters_mm,person,\n", {{1, RowProblem::UnknownColumn, "", ""}}},
        {"airframe,coupling,date,enters_mm,person,Person\n", {{1, RowProblem::ColumnTwice, "Person", ""}}},
        {std::string{kHeader} + "Q,C\xE9,2026-05-02,0.5,,A,P,,,\n", {{2, RowProblem::NotUtf8, "", ""}}},
        {"nothing\n",
         {{1, RowProblem::UnknownColumn, "nothing", ""},
          {1, RowProblem::MissingColumn, "airframe", ""},
          {1, RowProblem::MissingColumn, "coupling", ""},
          {1, RowProblem::MissingColumn, "date", ""},
          {1, RowProblem::MissingColumn, "enters_mm", ""},
          {1, RowProblem::MissingColumn, "person", ""}}},
    };
    for (const Wrong& wrong : table) {
        SCOPED_TRACE(wrong.text);
        const auto parsed = parseReadings(wrong.text);
        EXPECT_TRUE(parsed.rows.empty());
        EXPECT_EQ(parsed.bad, wrong.bad);
    }
}

TEST(ReadingTable, ReportsEveryBadFieldOfEveryRowAndKeepsTheGoodOnes)
{
    const auto table = parseReadings(std::string{kHeader} + "Q,C,yesterday,half,0.55,A,,,,\n"
                                                            "Q,C,2026-05-02,0.5,0.55,A,P,,,\n"
                                                            "Q,C,2026-05-03,0.6,0.55,A,P,,,\n");
    ASSERT_EQ(table.bad.size(), 4u);
    EXPECT_EQ(table.bad[0], (BadRow{2, RowProblem::NoPerson, "", "person"}));
    EXPECT_EQ(table.bad[1], (BadRow{2, RowProblem::NotADay, "yesterday", "date"}));
    EXPECT_EQ(table.bad[2], (BadRow{2, RowProblem::NotANumber, "half", "enters_mm"}));
    EXPECT_EQ(table.bad[3].line, 4);
    ASSERT_EQ(table.rows.size(), 1u);
    EXPECT_EQ(table.rows[0].line, 3);
}

TEST(ReadingTable, ReportsABadRowBeforeAQuoteThatSwallowsTheRest)
{
    const auto table = parseReadings(std::string{kHeader} + "Q,C,2026-05-02,x,0.55,A,P,,,\n"
                                                            "Q,C,2026-05-02,0.5,0.55,A,P,,\"oh,\n"
                                                            "Q,C,2026-05-02,y,0.55,A,P,,,\n");
    ASSERT_EQ(table.bad.size(), 2u);
    EXPECT_EQ(table.bad[0].problem, RowProblem::NotANumber);
    EXPECT_EQ(table.bad[1].line, 3);
    EXPECT_EQ(table.bad[1].problem, RowProblem::UnclosedQuote);
}

} // namespace
} // namespace rig
