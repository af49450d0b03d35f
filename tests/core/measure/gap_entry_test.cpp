#include "core/measure/gap_entry.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::literals;

namespace {

struct Typed
{
    const char* text;
    GapEntry meant;

    friend std::ostream& operator<<(std::ostream& out, const Typed& row)
    {
        return out << '"' << row.text << '"';
    }
};

class GapEntryTable : public testing::TestWithParam<Typed>
{
};

} // namespace

TEST_P(GapEntryTable, IsTakenOrRefusedButNeverGuessed)
{
    EXPECT_EQ(parseGap(GetParam().text), GetParam().meant) << GetParam().text;
}

INSTANTIATE_TEST_SUITE_P(
    Typed, GapEntryTable,
    testing::Values(Typed{"0.6", 600_um}, Typed{"0,60", 600_um}, Typed{".60", 600_um}, Typed{",6", 600_um},
                    Typed{" 0.605 ", 605_um}, Typed{"1.", 1000_um}, Typed{"0", 0_um}, Typed{"10", 10'000_um},
                    Typed{"0.5", 500_um}, Typed{"0,5", 500_um}, Typed{"", EntryProblem::Empty},
                    Typed{"   ", EntryProblem::Empty}, Typed{"NaN", EntryProblem::NotANumber},
                    Typed{"inf", EntryProblem::NotANumber}, Typed{"0.6mm", EntryProblem::NotANumber},
                    Typed{".", EntryProblem::NotANumber}, Typed{"1e-1", EntryProblem::NotANumber},
                    Typed{"0 6", EntryProblem::NotANumber}, Typed{"1.234,5", EntryProblem::TwoSeparators},
                    Typed{"1,234.5", EntryProblem::TwoSeparators}, Typed{"0..6", EntryProblem::TwoSeparators},
                    Typed{"0.6000", EntryProblem::TooManyDecimals}, Typed{"-0.6", EntryProblem::Negative},
                    Typed{"-1", EntryProblem::Negative}, Typed{"\u22121", EntryProblem::Negative},
                    Typed{" -0", EntryProblem::Negative}, Typed{"+1", EntryProblem::NotANumber},
                    Typed{"--1", EntryProblem::NotANumber}, Typed{"-\u22121", EntryProblem::NotANumber},
                    Typed{"- 1", EntryProblem::NotANumber}, Typed{"\u20131", EntryProblem::NotANumber},
                    Typed{"1-", EntryProblem::NotANumber}, Typed{"-", EntryProblem::NotANumber},
                    Typed{"0.4-0.5", EntryProblem::NotANumber}, Typed{"0/5", EntryProblem::NotANumber},
                    Typed{"10.001", EntryProblem::TooLarge}, Typed{"60", EntryProblem::TooLarge},
                    Typed{"99999999999999999999", EntryProblem::TooLarge}));

TEST(FigureEntry, HoldsAnyFigureUpToItsMost)
{
    EXPECT_EQ(parseFigure("250,5", 1'000'000), FigureEntry{250'500});
    EXPECT_EQ(parseFigure("1000", 1'000'000), FigureEntry{1'000'000});
    EXPECT_EQ(parseFigure("180.001", 180'000), FigureEntry{EntryProblem::TooLarge});
    EXPECT_EQ(parseFigure("99999999999", 1'000'000), FigureEntry{EntryProblem::TooLarge});
}
