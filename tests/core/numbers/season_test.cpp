#include "core/numbers/season.h"
#include "tests/support/noise.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>

using namespace rig::numbers;
using rig::tests::noiseAt;

namespace {

using enum MovementKind;

constexpr int kCouplings = 6;
constexpr int kRiggings = 80;

struct Plan
{
    int lowDays = 0;  // every so many days person 2 reads 0.02 low
    int bentFrom = 0; // three days on which gauge 2 reads 0.06 high
    double stepOfFirst = 0;
    double strangerOfThird = 0; // at rigging 30
    double widerLast = 1;       // scatter of the last ten riggings of the fifth
    bool twice = false;         // person 1 reads the first coupling again
};

std::vector<SeasonReading> seasonOfPlan(const Plan& plan)
{
    std::vector<SeasonReading> readings;
    const auto read = [&](double gap, int rigging, int fitting, int person, int gauge, bool isSecond) {
        const double shown = gap - (person == 2 ? 0.02 : 0) + (gauge == 2 ? 0.06 : 0);
        const double below = std::floor(shown * 100) / 100;
        readings.push_back({{below, below + 0.01},
                            static_cast<double>(rigging),
                            fitting,
                            person,
                            gauge,
                            rigging > 0 ? rigging : -fitting,
                            isSecond});
    };
    for (int fitting = 0; fitting < kCouplings; ++fitting) {
        for (int i = 0; i < 12; ++i)
            read(0.6 + 0.02 * noiseAt(1000 * fitting + i), 0, fitting, 1, 1, false);
        for (int rigging = 1; rigging <= kRiggings; ++rigging) {
            double gap = 0.02 * noiseAt(1000 * fitting + 12 + rigging);
            gap *= fitting == 4 && rigging > kRiggings - 10 ? plan.widerLast : 1;
            gap += 0.6 + (fitting == 0 && rigging >= 51 ? plan.stepOfFirst : 0) +
                   (fitting == 2 && rigging == 30 ? plan.strangerOfThird : 0);
            const int person = plan.lowDays > 0 && rigging % plan.lowDays == 0 ? 2 : 1;
            const bool isBent = plan.bentFrom > 0 && rigging >= plan.bentFrom && rigging < plan.bentFrom + 3;
            read(gap, rigging, fitting, person, isBent ? 2 : 1, false);
            if (plan.twice && fitting == 0 && person == 2)
                read(gap, rigging, fitting, 1, 1, true);
        }
    }
    return readings;
}

} // namespace

TEST(Season, WithoutStoriesTellsNone)
{
    const auto season = seasonOf(seasonOfPlan({}));
    ASSERT_TRUE(season);
    ASSERT_EQ(season->fittings.size(), static_cast<std::size_t>(kCouplings));
    for (const SeasonFitting& fitting : season->fittings)
        EXPECT_FALSE(fitting.isTold()) << fitting.fitting;
    EXPECT_EQ(season->offsets.persons.state, OffsetsState::OneLevel);
    EXPECT_TRUE(season->hasSettled);
}

TEST(Season, TellsSeveralStoriesApart)
{
    const auto season = seasonOf(seasonOfPlan({8, 20, 0.12, 0.4, 3, false}));
    ASSERT_TRUE(season);
    EXPECT_TRUE(season->hasSettled);
    EXPECT_TRUE(season->fittings[0].isTold());
    EXPECT_EQ(season->fittings[0].movement.first.likeliest(), Step);
    EXPECT_NEAR(sizeOf(season->fittings[0].movement, Step)->estimate, 0.12, 0.012);
    for (const std::size_t i : {1U, 2U, 3U, 4U, 5U})
        EXPECT_FALSE(season->fittings[i].isTold()) << i;

    const auto& persons = season->offsets.persons.levels;
    ASSERT_EQ(persons.size(), 2U);
    EXPECT_TRUE(persons[1].isNamed());
    EXPECT_NEAR(persons[1].estimate - persons[0].estimate, -0.02, 0.008);
    const auto& gauges = season->offsets.gauges.levels;
    ASSERT_EQ(gauges.size(), 2U);
    EXPECT_NEAR(gauges[1].estimate - gauges[0].estimate, 0.06, 0.012);

    EXPECT_TRUE(season->fittings[4].scatter->hasGrown(kCouplings));
    ASSERT_FALSE(season->fittings[2].singles.empty());
    const SingleReading& farthest = season->fittings[2].singles.front();
    EXPECT_NEAR(farthest.away, 0.4, 0.06);
    EXPECT_EQ(farthest.explainedBy, ExplainedBy::Nothing);
}

// A bent set's days are its own, and so are readings that lie outside on them; what lies far beyond is not.
TEST(Season, WhatANamedGaugeExplainsIsTheGauges)
{
    auto readings = seasonOfPlan({0, 20, 0, 0, 1, false});
    for (SeasonReading& reading : readings)
        if (reading.fitting == 3 && reading.rigging == 21)
            reading.interval = {1.0, 1.01};
    const auto season = seasonOf(readings);
    ASSERT_TRUE(season);
    EXPECT_EQ(season->days.size(), static_cast<std::size_t>(kRiggings));
    int called = 0;
    for (const SeasonDay& day : season->days)
        if (day.shift.isCalled) {
            ++called;
            EXPECT_TRUE(day.explainedBy == ExplainedBy::Gauge && day.day >= 20 && day.day <= 22) << day.day;
        }
    EXPECT_GE(called, 2);
    ASSERT_FALSE(season->fittings[3].singles.empty());
    EXPECT_EQ(season->fittings[3].singles.front().explainedBy, ExplainedBy::Nothing);
    for (const SeasonFitting& fitting : season->fittings)
        for (const SingleReading& single : fitting.singles)
            EXPECT_EQ(single.explainedBy == ExplainedBy::Gauge,
                      readings[single.reading].gauge == 2 && std::abs(single.scatters) < 3.1);
}

// All couplings step when the person changes: that is the person.
TEST(Season, WhatAllDoWithAPersonIsThePersons)
{
    auto readings = seasonOfPlan({});
    for (SeasonReading& reading : readings)
        if (reading.rigging > 50) {
            reading.person = 2;
            reading.interval = {reading.interval.lower - 0.03, reading.interval.upper - 0.03};
        }
    const auto season = seasonOf(readings);
    ASSERT_TRUE(season);
    for (const SeasonFitting& fitting : season->fittings)
        EXPECT_FALSE(fitting.isTold()) << fitting.fitting;
    EXPECT_TRUE(season->offsets.persons.levels[1].isNamed());
}

TEST(Season, SecondReadingsTellOfPersonsAndNotOfTheJoint)
{
    const auto once = seasonOf(seasonOfPlan({8, 0, 0, 0, 1, false}));
    const auto twice = seasonOf(seasonOfPlan({8, 0, 0, 0, 1, true}));
    ASSERT_TRUE(once && twice);
    EXPECT_EQ(once->fittings[0].movement.readings, twice->fittings[0].movement.readings);
    EXPECT_GT(twice->offsets.persons.levels[0].readings, once->offsets.persons.levels[0].readings);
}

// A set in doubt: its readings move no path, and the days on which nothing else was read are still told.
TEST(Season, ReadingsThatDoNotTellOfTheJointTellOfTheirDay)
{
    auto readings = seasonOfPlan({0, 20, 0, 0, 1, false});
    for (SeasonReading& reading : readings)
        reading.isSecond = reading.gauge == 2;
    const auto season = seasonOf(readings);
    ASSERT_TRUE(season);
    EXPECT_EQ(season->fittings[0].movement.riggings, kRiggings - 3);
    int called = 0;
    for (const SeasonDay& day : season->days)
        called += day.shift.isCalled && day.explainedBy == ExplainedBy::Gauge ? 1 : 0;
    EXPECT_GE(called, 2);
}

TEST(Season, OrderOfReadingsMattersToNothing)
{
    auto readings = seasonOfPlan({8, 20, 0.12, 0.4, 3, false});
    const auto one = seasonOf(readings);
    std::ranges::reverse(readings);
    const auto other = seasonOf(readings);
    ASSERT_TRUE(one && other);
    for (std::size_t i = 0; i < kCouplings; ++i)
        EXPECT_NEAR(one->fittings[i].movement.first.steady, other->fittings[i].movement.first.steady, 1e-5);
    EXPECT_NEAR(one->offsets.persons.levels[1].estimate, other->offsets.persons.levels[1].estimate, 1e-6);
}

TEST(Season, HasNoneWithoutReadings)
{
    EXPECT_FALSE(seasonOf({}));
    const SeasonReading open{{0.5, kInfinity}, 1, 0, 1, 1, 1, false};
    EXPECT_FALSE(seasonOf(std::vector{open}));
}
