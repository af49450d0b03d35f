#include "app/wording/import_words.h"

#include <gtest/gtest.h>
#include <set>

namespace rig {
namespace {

constexpr int kProblems = static_cast<int>(RowProblem::FittingTooEarly) + 1;

QString sentenceOf(RowProblem problem)
{
    return ImportWords::sentence({7, problem, "QX-%1", "enters_mm", TableKind::Readings, "leaves, pins"});
}

TEST(ImportWords, HaveASentenceOfTheirOwnForEveryReason)
{
    const QString unknown = sentenceOf(static_cast<RowProblem>(kProblems));
    std::set<QString> sentences;
    for (int i = 0; i < kProblems; ++i) {
        const QString sentence = sentenceOf(static_cast<RowProblem>(i));
        SCOPED_TRACE(sentence.toStdString());
        EXPECT_NE(sentence, unknown);
        EXPECT_TRUE(sentence.endsWith('.'));
        EXPECT_EQ(sentence.contains("ine 7"), i != static_cast<int>(RowProblem::Empty) &&
                                                  i != static_cast<int>(RowProblem::TableTooLarge));
        EXPECT_FALSE(sentence.contains("%2"));
        EXPECT_FALSE(sentence.contains("%3"));
        EXPECT_FALSE(sentence.contains("%4"));
        sentences.insert(sentence);
    }
    EXPECT_EQ(sentences.size(), static_cast<std::size_t>(kProblems));
}

TEST(ImportWords, NameLineTextAndColumnAndSayWhatToDo)
{
    EXPECT_EQ(ImportWords::sentence({12, RowProblem::TwoSeparators, "1.234,5", "refuses_mm"}),
              "Line 12 has “1.234,5” in the column refuses_mm, with more than one point or comma. Write one "
              "of them only, "
              "such as 0.60.");
}

TEST(ImportWords, NameTheTableAndTheWordsThatMayStandThere)
{
    EXPECT_EQ(ImportWords::inTable("couplings.csv", {4, RowProblem::NotAWord, "lef%3", "side",
                                                     TableKind::Couplings, "none, left, right"}),
              "couplings.csv: Line 4 has “lef%3” in the column side. Write one of these: none, left, right.");
}

// Readings whose figures differ are no repeats of one another.
TEST(ImportWords, SayInWhatARepeatedReadingIsTheSame)
{
    const QString said = sentenceOf(RowProblem::RepeatSkips);
    EXPECT_TRUE(said.contains("the same in coupling, day, both figures, person, gauge and state"))
        << said.toStdString();
    EXPECT_TRUE(said.contains("leave repeat empty"));
}

TEST(ImportWords, CountWhatCameInByKindAndLeaveOutWhatDidNot)
{
    Imported imported;
    imported.couplings = 8;
    imported.people = 1200;
    EXPECT_EQ(ImportWords::added(imported), "Added. Couplings: 8. People: 1,200.");
}

TEST(ImportWords, NameTheDaysThatHaveARiggingAlready)
{
    const Day first = Day{std::chrono::year{2026} / 4 / 11};
    EXPECT_TRUE(ImportWords::sameDay(1, {first}).startsWith("On 11 April 2026 the file has a rigging"));
    std::set<Day> many;
    for (int i = 0; i < 9; ++i)
        many.insert(first + std::chrono::days{i});
    const QString of = ImportWords::sameDay(9, many);
    EXPECT_TRUE(of.contains("16 April 2026 and later days")) << of.toStdString();
    EXPECT_FALSE(of.contains("17")) << "a long table makes no long sentence";
    EXPECT_TRUE(of.contains("9 in all"));
}

TEST(ImportWords, CutALineThatIsAsLongAsATable)
{
    const QString sentence =
        ImportWords::sentence({2, RowProblem::UnclosedQuote, std::string(5000, 'x'), {}});
    EXPECT_LT(sentence.size(), 300);
    EXPECT_TRUE(sentence.contains(QChar{0x2026}));
}

TEST(ImportWords, SayThatAColumnHasNoName)
{
    EXPECT_EQ(ImportWords::sentence({1, RowProblem::UnknownColumn, " ", {}}),
              "Line 1 has a column without a name. Name it, or take it out.");
}

} // namespace
} // namespace rig
