#include "core/measure/size_list.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::literals;

namespace {

struct TakenList
{
    const char* text;
    std::vector<Gap> sizes;

    friend std::ostream& operator<<(std::ostream& out, const TakenList& row)
    {
        out << '"';
        for (const char one : std::string_view{row.text})
            one == '\r' ? out << "\\r" : out << one; // gtest itself writes a line feed as \\n
        return out << '"';
    }
};

class TakenSizes : public testing::TestWithParam<TakenList>
{
};

struct RefusedList
{
    const char* text;
    SizeListProblem problem;

    friend std::ostream& operator<<(std::ostream& out, const RefusedList& row)
    {
        return out << '"' << row.text << '"';
    }
};

class RefusedSizes : public testing::TestWithParam<RefusedList>
{
};

std::vector<Gap> stepped(int fromUm, int toUm, int stepUm)
{
    std::vector<Gap> sizes;
    for (int um = fromUm; um <= toUm; um += stepUm)
        sizes.push_back(Gap::micrometres(um));
    return sizes;
}

} // namespace

TEST_P(TakenSizes, AreThoseThatTheOwnerMeant)
{
    const SizeListEntry entry = parseSizeList(GetParam().text);
    ASSERT_TRUE(std::holds_alternative<std::vector<Gap>>(entry)) << GetParam().text;
    EXPECT_EQ(std::get<std::vector<Gap>>(entry), GetParam().sizes) << GetParam().text;
}

INSTANTIATE_TEST_SUITE_P(Typed, TakenSizes,
                         testing::Values(TakenList{"0.05-1.00 step 0.05", stepped(50, 1000, 50)},
                                         TakenList{"0,05-1,00 step 0,05", stepped(50, 1000, 50)},
                                         TakenList{" .05 - 1 Step .05 ", stepped(50, 1000, 50)},
                                         TakenList{"0.05\u20131.00 step 0.05", stepped(50, 1000, 50)},
                                         TakenList{"0.05, 0.10, 0.15", {50_um, 100_um, 150_um}},
                                         TakenList{"0.05,0.10,0.15", {50_um, 100_um, 150_um}},
                                         TakenList{"0,05; 0,10; 0,15", {50_um, 100_um, 150_um}},
                                         TakenList{"0,05;0.10;", {50_um, 100_um}},
                                         TakenList{"0.05\n0.10\r\n0.15", {50_um, 100_um, 150_um}},
                                         TakenList{"1, 2, 3", {1000_um, 2000_um, 3000_um}},
                                         TakenList{"0.15, 0.05", {50_um, 150_um}},
                                         TakenList{"0,5;", {500_um}}, TakenList{"0.035", {35_um}},
                                         TakenList{"0.05-0.15 step 0.05, 0.3-0.5 step 0.1, 0.7",
                                                   {50_um, 100_um, 150_um, 300_um, 400_um, 500_um, 700_um}},
                                         TakenList{"0,05-0,15 step 0,05; 0,3",
                                                   {50_um, 100_um, 150_um, 300_um}}));

TEST_P(RefusedSizes, AreNamedAndNeverGuessed)
{
    const SizeListEntry entry = parseSizeList(GetParam().text);
    ASSERT_TRUE(std::holds_alternative<SizeListRefusal>(entry)) << GetParam().text;
    EXPECT_EQ(std::get<SizeListRefusal>(entry).problem, GetParam().problem) << GetParam().text;
}

INSTANTIATE_TEST_SUITE_P(
    Typed, RefusedSizes,
    testing::Values(RefusedList{"", SizeListProblem::Empty}, RefusedList{"  ", SizeListProblem::Empty},
                    RefusedList{";;", SizeListProblem::Empty}, RefusedList{",", SizeListProblem::Empty},
                    RefusedList{"0,05, 0,10, 0,15", SizeListProblem::CommaOrSeparator},
                    RefusedList{"0,05,0,10", SizeListProblem::CommaOrSeparator},
                    RefusedList{"0,5", SizeListProblem::CommaOrSeparator},
                    RefusedList{"0.05,1,1.5", SizeListProblem::CommaOrSeparator},
                    RefusedList{"0.05 0.10", SizeListProblem::NotASize},
                    RefusedList{"0.05, thick", SizeListProblem::NotASize},
                    RefusedList{"NaN", SizeListProblem::NotASize},
                    RefusedList{"0.025 in", SizeListProblem::NotASize},
                    RefusedList{"-0.05", SizeListProblem::NotASize},
                    RefusedList{"0.0505", SizeListProblem::NotASize},
                    RefusedList{"0.05, 10.5", SizeListProblem::NotASize},
                    RefusedList{"1.234,5; 0,05", SizeListProblem::NotASize},
                    RefusedList{"0, 0.05", SizeListProblem::NoThickness},
                    RefusedList{"0-1 step 0.05", SizeListProblem::NoThickness},
                    RefusedList{"0.05, 0.10, 0.05", SizeListProblem::Repeated},
                    RefusedList{"0.05-0.50 step 0.05, 0.50-1.00 step 0.05", SizeListProblem::Repeated},
                    RefusedList{"0.05-1.00", SizeListProblem::StepMissing},
                    RefusedList{"0.05-1.00 step 0.10", SizeListProblem::StepDoesNotFit},
                    RefusedList{"0.05-1.00 step 0", SizeListProblem::StepTooSmall},
                    RefusedList{"0.05-1.00 step", SizeListProblem::NotASize},
                    RefusedList{"1.00-0.05 step 0.05", SizeListProblem::Backwards},
                    RefusedList{"0.05-0.05 step 0.05", SizeListProblem::Backwards},
                    RefusedList{"0.05-10 step 0.001", SizeListProblem::TooMany}));

TEST(SizeList, NamesThePieceThatCouldNotBeTaken)
{
    const auto refusal = std::get<SizeListRefusal>(parseSizeList("0.05, 0.1o, 0.15"));
    EXPECT_EQ(refusal.piece, "0.1o");
    EXPECT_EQ(refusal.entry, EntryProblem::NotANumber);
    EXPECT_EQ(std::get<SizeListRefusal>(parseSizeList("0.05, 0.05")).size, 50_um);
}

TEST(SizeList, IsWrittenSoThatItReadsBackTheSame)
{
    EXPECT_EQ(sizeListText(stepped(50, 1000, 50), '.'), "0.05-1.00 step 0.05");
    EXPECT_EQ(sizeListText(stepped(50, 1000, 50), ','), "0,05-1,00 step 0,05");
    EXPECT_EQ(sizeListText(std::vector{50_um, 105_um}, '.'), "0.05, 0.105");
    EXPECT_EQ(sizeListText(std::vector{50_um}, '.'), "0.05");
    const std::vector<std::vector<Gap>> sets{{50_um},
                                             {50_um, 100_um},
                                             {50_um, 100_um, 150_um},
                                             {20_um, 30_um, 50_um, 100_um, 150_um, 200_um, 400_um},
                                             stepped(20, 500, 20)};
    for (const auto& sizes : sets)
        for (const char mark : {'.', ','}) {
            const std::string text = sizeListText(sizes, mark);
            EXPECT_EQ(std::get<std::vector<Gap>>(parseSizeList(text)), sizes) << text;
        }
}
