#include "core/numbers/hand_offsets.h"
#include "tests/support/noise.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>

using namespace rig::numbers;
using rig::tests::noiseAt;

namespace {

using enum OffsetsState;

constexpr double kVariance = 0.02 * 0.02;

// One person a day, eight couplings read with one gauge; the second person has every fourth day and reads
// `low` lower.
std::vector<HandReading> aloneOnTheirDays(int days, double low)
{
    std::vector<HandReading> readings;
    for (int day = 0; day < days; ++day)
        for (std::size_t coupling = 0; coupling < 8; ++coupling) {
            const int person = day % 4 == 3 ? 2 : 1;
            HandReading reading;
            reading.left = 0.02 * noiseAt(day * 8 + static_cast<int>(coupling)) - (person == 2 ? low : 0);
            reading.variance = kVariance;
            reading.coupling = coupling;
            reading.person = person;
            reading.gauge = 1;
            reading.day = day;
            readings.push_back(reading);
        }
    return readings;
}

const HandOffset& handOf(const HandFactor& factor, int label)
{
    return *std::ranges::find(factor.levels, label, &HandOffset::label);
}

} // namespace

// Days as fixed effects could never tell: nobody else reads on those days.
TEST(HandOffsets, AReaderWhoIsAloneOnHisDaysIsNamed)
{
    const auto offsets = handOffsetsOf(aloneOnTheirDays(48, 0.02));
    ASSERT_TRUE(offsets);
    ASSERT_EQ(offsets->persons.state, Estimated);
    const HandOffset& second = handOf(offsets->persons, 2);
    EXPECT_EQ(second.readings, 96);
    EXPECT_TRUE(second.isNamed());
    EXPECT_NEAR(second.estimate, -0.015, 0.004); // three quarters of the difference
    EXPECT_NEAR(second.readings * second.estimate,
                -handOf(offsets->persons, 1).readings * handOf(offsets->persons, 1).estimate, 1e-12);
    EXPECT_EQ(offsets->gauges.state, OneLevel);
    EXPECT_EQ(offsets->persons.offsetOf(7), 0);
}

TEST(HandOffsets, WhoReadsAsOthersDoIsNot)
{
    const auto offsets = handOffsetsOf(aloneOnTheirDays(48, 0));
    ASSERT_TRUE(offsets);
    ASSERT_EQ(offsets->persons.levels.size(), 2U);
    EXPECT_FALSE(offsets->persons.levels[0].isNamed());
}

// Days that scatter by themselves leave a person's few days less sure.
TEST(HandOffsets, RandomDaysWidenTheIntervals)
{
    auto readings = aloneOnTheirDays(48, 0.02);
    const double before = handOf(handOffsetsOf(readings)->persons, 2).interval.width();
    for (HandReading& reading : readings)
        reading.left += 0.03 * std::cos(1.9 * reading.day * reading.day);
    const auto after = handOffsetsOf(readings);
    ASSERT_TRUE(after);
    EXPECT_NEAR(after->dayDeviation, 0.03 / std::sqrt(2.0), 0.006);
    const HandOffset& second = handOf(after->persons, 2);
    EXPECT_GT(second.interval.width(), 2 * before);
    EXPECT_NEAR(second.degreesOfFreedom, 46, 6); // days, less the two means
}

TEST(HandOffsets, APersonWithASetOfHisOwnCannotBeToldApartFromIt)
{
    auto readings = aloneOnTheirDays(48, 0.02);
    for (HandReading& reading : readings)
        reading.gauge = reading.person;
    const auto offsets = handOffsetsOf(readings);
    ASSERT_TRUE(offsets);
    EXPECT_EQ(offsets->persons.state, CannotBeToldApart);
    EXPECT_EQ(offsets->persons.hidden, std::vector{2});
    EXPECT_EQ(offsets->persons.hiddenBehind, std::vector{OffsetFactor::LeafSet});
    EXPECT_EQ(offsets->gauges.state, CannotBeToldApart);
    EXPECT_EQ(offsets->gauges.hiddenBehind, std::vector{OffsetFactor::Person});
}

// The others are compared all the same.
TEST(HandOffsets, ALonerHidesNobodyElse)
{
    auto readings = aloneOnTheirDays(48, 0.02);
    for (HandReading& reading : readings)
        if (reading.day % 8 == 0)
            reading.person = reading.gauge = 9;
    const auto offsets = handOffsetsOf(readings);
    ASSERT_TRUE(offsets);
    EXPECT_EQ(offsets->persons.state, Estimated);
    EXPECT_EQ(offsets->persons.levels.size(), 2U);
    EXPECT_TRUE(handOf(offsets->persons, 2).isNamed());
    EXPECT_EQ(offsets->persons.hidden, std::vector{9});
}

// He only ever uses one set, but others use it too.
TEST(HandOffsets, APersonWithOneSetThatOthersUseIsTold)
{
    auto readings = aloneOnTheirDays(48, 0.02);
    for (HandReading& reading : readings) {
        reading.gauge = reading.person == 2 || reading.day % 2 == 0 ? 2 : 1;
        reading.left += reading.gauge == 2 ? 0.01 : 0;
    }
    const auto offsets = handOffsetsOf(readings);
    ASSERT_TRUE(offsets);
    EXPECT_NEAR(handOf(offsets->persons, 2).estimate, -0.015, 0.004);
    EXPECT_NEAR(handOf(offsets->gauges, 2).estimate - handOf(offsets->gauges, 1).estimate, 0.01, 0.005);
}

TEST(HandOffsets, AShapeTakesNothingFromThePersons)
{
    auto readings = aloneOnTheirDays(48, 0.02);
    for (HandReading& reading : readings)
        if (reading.coupling == 3) {
            reading.shape[0] = reading.day >= 24 ? 1 : 0;
            reading.left += 0.5 * reading.shape[0];
        }
    const auto offsets = handOffsetsOf(readings);
    ASSERT_TRUE(offsets);
    EXPECT_NEAR(handOf(offsets->persons, 2).estimate, -0.015, 0.004);
}

TEST(HandOffsets, FewReadingsAreComparedWithNothing)
{
    auto readings = aloneOnTheirDays(48, 0.02);
    readings[5].person = 3;
    const auto offsets = handOffsetsOf(readings);
    ASSERT_TRUE(offsets);
    EXPECT_EQ(offsets->persons.levels.size(), 2U);
    EXPECT_TRUE(offsets->persons.hidden.empty());
    const auto none = handOffsetsOf({});
    ASSERT_TRUE(none);
    EXPECT_EQ(none->persons.state, OneLevel);
    readings[5].variance = 0;
    EXPECT_FALSE(handOffsetsOf(readings));
}
