#include "core/lesson/spacing.h"

#include <gtest/gtest.h>
#include <vector>

using namespace rig;

namespace {

constexpr Day practisedOn(int number)
{
    return Day{std::chrono::days{20'000 + number}};
}

std::optional<int> dueAfter(std::vector<Recalled> times)
{
    const Spacing spacing = spacingOf(times);
    if (!spacing.due)
        return std::nullopt;
    return static_cast<int>((*spacing.due - times.back().day).count());
}

constexpr Recalled known(int on)
{
    return {practisedOn(on), true, true};
}
constexpr Recalled unsure(int on)
{
    return {practisedOn(on), true, false};
}
constexpr Recalled wrong(int on)
{
    return {practisedOn(on), false, false};
}

} // namespace

TEST(Spacing, OfWhatWasNeverAskedIsDue)
{
    EXPECT_TRUE(spacingOf({}).isDue(practisedOn(0)));
    EXPECT_FALSE(spacingOf({}).wasSureButWrong);
}

TEST(Spacing, GoesFromTheSameDayToAWeekAMonthAndThreeMonths)
{
    EXPECT_EQ(dueAfter({wrong(0)}), 0);
    EXPECT_EQ(dueAfter({wrong(0), known(0)}), 7);
    EXPECT_EQ(dueAfter({wrong(0), known(0), known(7)}), 30);
    EXPECT_EQ(dueAfter({wrong(0), known(0), known(7), known(37)}), 91);
    EXPECT_EQ(dueAfter({wrong(0), known(0), known(7), known(37), known(128)}), 91);
}

TEST(Spacing, DoesNotMoveOnForWhatIsAskedAgainBeforeItIsDue)
{
    EXPECT_EQ(dueAfter({known(0), known(0), known(0), known(0)}), 7);
    EXPECT_EQ(spacingOf(std::vector{known(0), known(3)}).due, practisedOn(7))
        << "and does not put it off either";
}

TEST(Spacing, StaysWhereSomebodyIsNotSureAndGoesBackWhereSomebodyIsWrong)
{
    EXPECT_EQ(dueAfter({known(0), unsure(7)}), 7);
    EXPECT_EQ(dueAfter({known(0), known(7), wrong(10)}), 0);
}

TEST(Spacing, KnowsWhoWasSureAndWrongUntilItIsKnown)
{
    const Recalled sureButWrong{practisedOn(0), false, true};
    EXPECT_TRUE(spacingOf(std::vector{sureButWrong}).wasSureButWrong);
    EXPECT_FALSE(spacingOf(std::vector{sureButWrong, known(0)}).wasSureButWrong);
    EXPECT_FALSE(spacingOf(std::vector{wrong(0)}).wasSureButWrong);
}

TEST(Spacing, IsRefreshedAfterMonthsWithoutARigging)
{
    using namespace std::chrono;
    const Day last{2026y / March / 31};
    EXPECT_FALSE(isRefreshDue(last, Day{2026y / June / 29}, 3));
    EXPECT_TRUE(isRefreshDue(last, Day{2026y / June / 30}, 3)) << "June has no 31st";
    EXPECT_FALSE(isRefreshDue({}, Day{2026y / June / 30}, 3)) << "nobody knows of a rigging";
    EXPECT_EQ(monthsAfter(Day{2024y / January / 31}, 1), Day{2024y / February / 29});
    EXPECT_EQ(monthsAfter(Day{2025y / November / 29}, 12), Day{2026y / November / 29});
}
