#include "core/review/judged_readings.h"
#include "tests/support/airframe_in_memory.h"
#include "tests/support/fixed_clock.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

constexpr Day kReadFrom = dayOf(2024, 3, 1);

class CouplingReadAgain : public testing::Test
{
protected:
    CouplingReadAgain() { coupling = told.addCoupling("Left aileron", 0.50, kReadFrom).id; }

    Reading& read(double gap, int daysLater)
    {
        told.rig(kReadFrom + std::chrono::days{daysLater});
        return told.read(coupling, gap);
    }
    std::vector<JudgedReading> judged(int daysLater = 100) const
    {
        return judgedReadings(told.facts, kReadFrom + std::chrono::days{daysLater});
    }

    AirframeInMemory told;
    CouplingId coupling;
};

} // namespace

TEST_F(CouplingReadAgain, HasItsBaselineAndItsRiggingsToldApart)
{
    read(0.50, 3);
    read(0.90, 6);
    const auto all = judged();
    ASSERT_EQ(all.size(), 14U);
    EXPECT_TRUE(all.front().ofBaseline);
    EXPECT_FALSE(all.front().rigging);
    EXPECT_FALSE(all.back().ofBaseline);
    EXPECT_EQ(all.back().rigging, 2);
    EXPECT_EQ(all.back().judgement.verdict, Verdict::Outside);
    EXPECT_GT(all.back().score.value(), 3);
    EXPECT_EQ(all[12].judgement.verdict, Verdict::Inside);
}

TEST_F(CouplingReadAgain, ShowsNothingOfLaterDays)
{
    read(0.50, 3);
    read(0.50, 6);
    EXPECT_EQ(judged(3).size(), 13U);
    EXPECT_TRUE(judged(-1).empty());
}

TEST_F(CouplingReadAgain, KeepsAStruckReadingWithTheReason)
{
    const ReadingId slip = read(0.90, 3).id;
    told.facts.exclusions.push_back({told.next<FactId>(), slip, "read on the wrong joint", {}});
    const auto all = judged();
    EXPECT_TRUE(all.back().struck);
    EXPECT_TRUE(all.back().isStruckThrough());
    EXPECT_EQ(all.back().struckReason, "read on the wrong joint");
    EXPECT_FALSE(all.back().leftOut) << "it never was of the band";
}

TEST_F(CouplingReadAgain, KeepsASupersededReadingWithTheReasonAndOneLeftOutOfTheBand)
{
    const ReadingId wrong = read(0.90, 3).id;
    Reading& right = told.read(coupling, 0.50);
    right.corrects = wrong;
    right.note = "wrong leaf pressed";
    told.facts.exclusions.push_back(
        {told.next<FactId>(), told.facts.readings.front().reading.id, "burr on the leaf", {}});
    const auto all = judged();
    EXPECT_TRUE(all.front().leftOut);
    EXPECT_FALSE(all.front().ofBaseline);
    EXPECT_EQ(all.front().leftOutReason, "burr on the leaf");
    EXPECT_TRUE(all[12].superseded);
    EXPECT_EQ(all[12].supersededReason, "wrong leaf pressed");
    EXPECT_FALSE(all[13].superseded);
}

TEST_F(CouplingReadAgain, MarksWhatWasReadWithAGaugeInDoubtAndScoresNoPartSeatedOne)
{
    read(0.50, 3);
    read(1.50, 6).state = SeatState::PartSeated;
    GaugeCheck check;
    check.gauge = told.facts.gauges[0].id;
    check.day = kReadFrom + std::chrono::days{10};
    check.quarantineFrom = kReadFrom + std::chrono::days{4};
    told.facts.gaugeChecks.push_back(check);
    const auto all = judged();
    EXPECT_FALSE(all[12].inDoubt);
    EXPECT_TRUE(all[13].inDoubt);
    EXPECT_TRUE(all[12].score);
    EXPECT_FALSE(all[13].score);
}
