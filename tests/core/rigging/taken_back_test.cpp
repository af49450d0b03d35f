#include "core/rigging/taken_back.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::literals;

namespace {

Reading aReading(std::uint8_t number, Gap enters, std::optional<ReadingId> corrects = {})
{
    Reading reading;
    reading.id = ReadingId{{number}};
    reading.interval = {enters, enters + 50_um};
    reading.corrects = corrects;
    reading.note = corrects ? "slip of the finger" : "";
    reading.stamp.by = PersonId{{number}};
    return reading;
}

} // namespace

TEST(TakenBack, IsNothingThatNobodyHasSaidToBeWrong)
{
    const std::vector<Reading> readings{aReading(1, 1700_um), aReading(2, 470_um)};
    EXPECT_FALSE(takenBack(readings.front(), readings, {}));
}

TEST(TakenBack, NamesWhatStandsInItsPlaceWhoSaidSoAndWhy)
{
    const std::vector<Reading> readings{aReading(1, 1700_um), aReading(2, 740_um, ReadingId{{1}}),
                                        aReading(3, 470_um, ReadingId{{2}})};
    const auto found = takenBack(readings.front(), readings, {});
    ASSERT_TRUE(found);
    EXPECT_EQ(found->slip.id, ReadingId{{1}});
    ASSERT_TRUE(found->instead);
    EXPECT_EQ(found->instead->interval.enters, 470_um) << "the last of the corrections";
    EXPECT_EQ(found->stamp.by, PersonId{{3}});
    EXPECT_EQ(found->reason, "slip of the finger");
}

TEST(TakenBack, StandsForNothingWhereItWasStruck)
{
    const std::vector<Reading> readings{aReading(1, 1700_um), aReading(2, 470_um, ReadingId{{1}})};
    const std::vector<Exclusion> exclusions{{{}, ReadingId{{2}}, "wrong joint", {PersonId{{7}}, {}}}};
    const auto found = takenBack(readings.front(), readings, exclusions);
    ASSERT_TRUE(found);
    EXPECT_FALSE(found->instead);
    EXPECT_EQ(found->reason, "wrong joint");
    EXPECT_EQ(found->stamp.by, PersonId{{7}});
}

TEST(TakenBack, EndsWhereAFileNamesReadingsInARing)
{
    const std::vector<Reading> readings{aReading(1, 1700_um, ReadingId{{2}}),
                                        aReading(2, 470_um, ReadingId{{1}})};
    EXPECT_TRUE(takenBack(readings.front(), readings, {}));
}
