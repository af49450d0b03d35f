#include "core/judgement/judge.h"
#include "tests/support/gaps.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::tests;

namespace {

const Baseline& leafBaseline()
{
    static const Baseline baseline = Baseline::from(tenLeafReadings());
    return baseline;
}

Judgement judged(const GapInterval& reading, const JudgeContext& context = {})
{
    return judge(reading, leafBaseline(), context);
}

JudgeContext quarantined()
{
    JudgeContext context;
    context.gaugeQuarantined = true;
    return context;
}

JudgeContext withWitness(Witness witness)
{
    JudgeContext context;
    context.witness.witness = witness;
    return context;
}

void expectVerdict(const Judgement& judgement, Verdict verdict, Reason reason, Direction direction)
{
    EXPECT_EQ(judgement.verdict, verdict);
    EXPECT_EQ(judgement.reason, reason);
    EXPECT_EQ(judgement.direction, direction);
}

} // namespace

TEST(Judge, CallsAReadingWithinTheBandInside)
{
    const Judgement judgement = judged(aGap(500, 550));
    expectVerdict(judgement, Verdict::Inside, Reason::None, Direction::Neither);
    EXPECT_DOUBLE_EQ(judgement.tail, 1);
    ASSERT_TRUE(judgement.band);
    EXPECT_NEAR(judgement.band->outer.upper, 0.5982, 5e-5);
}

TEST(Judge, CallsAReadingWhollyBeyondTheOuterBandOutsideOnItsSide)
{
    expectVerdict(judged(aGap(600, 650)), Verdict::Outside, Reason::None, Direction::Above);
    expectVerdict(judged(aGap(350, 400)), Verdict::Outside, Reason::None, Direction::Below);
}

TEST(Judge, SaysHowOftenALockedReadingFallsThatFarOut)
{
    // Oracle, case leaf10: p_tail of 0.60 to 0.65.
    EXPECT_NEAR(judged(aGap(600, 650)).tail, 0.002386512882457793, 1e-6);
}

TEST(Judge, CallsAReadingBetweenTheTwoBandsNearEdge)
{
    expectVerdict(judged(aGap(560, 590)), Verdict::NearEdge, Reason::None, Direction::Above);
    expectVerdict(judged(aGap(440, 470)), Verdict::NearEdge, Reason::None, Direction::Below);
}

TEST(Judge, CannotTellWhenTheReadingReachesBeyondTheOuterBand)
{
    expectVerdict(judged(aGap(550, 600)), Verdict::CannotTell, Reason::ReachesBeyondBand, Direction::Above);
    expectVerdict(judged(aGap(420, 475)), Verdict::CannotTell, Reason::ReachesBeyondBand, Direction::Below);
    expectVerdict(judged(aGap(400, 700)), Verdict::CannotTell, Reason::ReachesBeyondBand, Direction::Neither);
}

TEST(Judge, NeverCallsAnOpenReadingInside)
{
    for (int enters = 0; enters <= 1000; enters += 10) {
        const Judgement judgement = judged(anOpenGap(enters));
        EXPECT_NE(judgement.verdict, Verdict::Inside) << enters;
        EXPECT_NE(judgement.verdict, Verdict::NoBandYet) << enters;
    }
    expectVerdict(judged(anOpenGap(1000)), Verdict::Outside, Reason::None, Direction::Above);
    expectVerdict(judged(anOpenGap(400)), Verdict::CannotTell, Reason::ReachesBeyondBand, Direction::Neither);
    expectVerdict(judged(anOpenGap(500)), Verdict::CannotTell, Reason::ReachesBeyondBand, Direction::Above);
}

TEST(Judge, LetsTheCommonestLeafStickOutOfANarrowBand)
{
    // Many readings on both sides of a leaf: the band becomes narrower than the two steps it was read with.
    const Baseline baseline =
        Baseline::from(together(repeated(aGap(500, 550), 220), repeated(aGap(550, 600), 180)));
    ASSERT_TRUE(baseline.band());
    ASSERT_GT(baseline.band()->outer.lower, 0.5);
    expectVerdict(judge(aGap(500, 550), baseline, {}), Verdict::Inside, Reason::None, Direction::Neither);
    // Coarser than the baseline's leaves: the exception does not hold.
    expectVerdict(judge(aGap(450, 550), baseline, {}), Verdict::CannotTell, Reason::ReachesBeyondBand,
                  Direction::Below);
}

TEST(Judge, CannotTellFromAQuarantinedGauge)
{
    expectVerdict(judged(aGap(500, 550), quarantined()), Verdict::CannotTell, Reason::GaugeQuarantined,
                  Direction::Neither);
    expectVerdict(judged(aGap(560, 590), quarantined()), Verdict::CannotTell, Reason::GaugeQuarantined,
                  Direction::Neither);
}

TEST(Judge, CallsAReadingOutsideEvenFromAQuarantinedGauge)
{
    expectVerdict(judged(aGap(600, 650), quarantined()), Verdict::Outside, Reason::None, Direction::Above);
}

TEST(Judge, CannotTellWhereTheGapIsNoWitness)
{
    const JudgeContext context = withWitness(Witness::None);
    expectVerdict(judged(aGap(500, 550), context), Verdict::CannotTell, Reason::GapIsNoWitness,
                  Direction::Neither);
    expectVerdict(judged(aGap(560, 590), context), Verdict::CannotTell, Reason::GapIsNoWitness,
                  Direction::Neither);
    expectVerdict(judged(aGap(550, 600), context), Verdict::CannotTell, Reason::GapIsNoWitness,
                  Direction::Neither);
    expectVerdict(judged(aGap(600, 650), context), Verdict::Outside, Reason::None, Direction::Above);
}

TEST(Judge, NamesTheGaugeBeforeTheMissingWitness)
{
    JudgeContext context = withWitness(Witness::None);
    context.gaugeQuarantined = true;
    EXPECT_EQ(judged(aGap(500, 550), context).reason, Reason::GaugeQuarantined);
}

TEST(Judge, AnyOtherWitnessLeavesTheVerdictAndIsPassedOn)
{
    for (const Witness witness :
         {Witness::NeverShown, Witness::TooRare, Witness::NotKnown, Witness::Good, Witness::Weak}) {
        JudgeContext context = withWitness(witness);
        context.witness.miss = 0.05;
        const Judgement judgement = judged(aGap(500, 550), context);
        expectVerdict(judgement, Verdict::Inside, Reason::None, Direction::Neither);
        EXPECT_EQ(judgement.witness.witness, witness);
        EXPECT_EQ(judgement.witness.miss, 0.05);
    }
}

TEST(Judge, HasNoVerdictFromFourReadings)
{
    const Baseline baseline = Baseline::from(repeated(aGap(500, 550), 4));
    for (const GapInterval& reading : {aGap(500, 550), aGap(900, 950), anOpenGap(1000)}) {
        const Judgement judgement = judge(reading, baseline, quarantined());
        expectVerdict(judgement, Verdict::NoBandYet, Reason::TooFewReadings, Direction::Neither);
        EXPECT_EQ(judgement.tail, 1);
        EXPECT_FALSE(judgement.band);
    }
}

TEST(Judge, HasNoVerdictWhenEveryBaselineReadingIsOpen)
{
    const Baseline open = Baseline::from(repeated(anOpenGap(1000), 10));
    expectVerdict(judge(anOpenGap(1000), open, {}), Verdict::NoBandYet, Reason::ReadingsAllOpen,
                  Direction::Neither);
    const Baseline few = Baseline::from(repeated(anOpenGap(1000), 4));
    EXPECT_EQ(judge(anOpenGap(1000), few, {}).reason, Reason::TooFewReadings);
}

TEST(Judge, AnotherGaugeWidensTheBandThatItIsJudgedAgainst)
{
    JudgeContext context;
    context.setVariance = 5e-5;
    const Judgement judgement = judged(aGap(600, 650), context);
    ASSERT_TRUE(judgement.band);
    // Oracle, case other_feeler_set: outer 0.42975 to 0.59997.
    EXPECT_NEAR(judgement.band->outer.upper, 0.5999720757120554, 1e-5);
    EXPECT_NEAR(judgement.tail, 0.002694880500280004, 1e-6);
    // 0.599 lies beyond the band of the baseline's own gauge, not beyond the wider one.
    EXPECT_EQ(judged(aGap(599, 609)).verdict, Verdict::Outside);
    EXPECT_EQ(judged(aGap(599, 609), context).verdict, Verdict::NearEdge);
}

TEST(Judge, NeverTurnsBackAsAReadingMovesAway)
{
    const auto rank = [](Verdict verdict) {
        switch (verdict) {
        case Verdict::Inside:
            return 0;
        case Verdict::CannotTell:
            return 1;
        case Verdict::NearEdge:
            return 2;
        case Verdict::Outside:
            return 3;
        case Verdict::NoBandYet:
            return -1;
        }
        return -1;
    };
    for (const int width : {5, 20, 50, 100}) {
        for (const int step : {+1, -1}) {
            int before = 0;
            double tail = 1;
            for (int moved = 0; moved <= 300; ++moved) {
                const int lower = 515 - width / 2 + step * moved;
                const Judgement judgement = judged(aGap(lower, lower + width));
                EXPECT_GE(rank(judgement.verdict), before) << width << " wide at " << lower;
                EXPECT_LE(judgement.tail, tail + 1e-12) << width << " wide at " << lower;
                before = rank(judgement.verdict);
                tail = judgement.tail;
            }
            EXPECT_EQ(before, 3);
        }
    }
}
