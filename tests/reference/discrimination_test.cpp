// Locked against part-seated readings, checked against an independent quadrature (tests/data/README.md)
// inside the tolerances that the file states.

#include "core/numbers/discrimination.h"
#include "core/numbers/grading.h"
#include "tests/support/oracle.h"

using namespace rig::numbers;
using namespace rig::tests;
using nlohmann::json;

namespace {

class DiscriminationOracle : public testing::TestWithParam<json>
{
protected:
    void SetUp() override
    {
        locked = IntervalPosterior::of(intervalSetOf(intervalsOf(input().at("locked"))));
        partSeated = IntervalPosterior::of(intervalSetOf(intervalsOf(input().at("half_home"))));
        ASSERT_TRUE(locked && partSeated);
        bands = bandsOf(*locked);
    }

    const json& input() const { return GetParam()["input"]; }
    void expectShare(double actual, const char* name) const
    {
        SCOPED_TRACE(name);
        expectProbability(actual, GetParam()["expected"].at(name), GetParam()["tolerance"]);
    }
    std::vector<double> leaves() const { return input().at("leaf_boundaries").get<std::vector<double>>(); }

    std::optional<IntervalPosterior> locked;
    std::optional<IntervalPosterior> partSeated;
    PredictiveBands bands;
};

} // namespace

TEST_P(DiscriminationOracle, AgreesOnTheMissOfTrueGaps)
{
    expectBand(bands.inner, GetParam()["expected"].at("band95"), 1e-5);
    expectBand(bands.outer, GetParam()["expected"].at("band9973"), 1e-5);
    expectShare(partSeated->between(bands.outer), "miss_true_gap_9973");
    expectShare(partSeated->between(bands.inner), "miss_true_gap_95");
}

TEST_P(DiscriminationOracle, AgreesOnWhatLeavesMissAndAlarmFalsely)
{
    std::vector<Interval> steps;
    for (const double size : leaves())
        steps.push_back({size, size});
    const Interval outer = unseenBetween(bands.outer, steps);
    const Interval inner = unseenBetween(bands.inner, steps);
    expectShare(partSeated->between(outer), "miss_cells_9973");
    expectShare(partSeated->between(inner), "miss_cells_95");
    expectShare(locked->below(outer.lower) + locked->above(outer.upper), "false_alarm_cells_9973");
    expectShare(locked->below(inner.lower) + locked->above(inner.upper), "false_alarm_cells_95");
}

TEST_P(DiscriminationOracle, AgreesOnTheBestSingleLeaf)
{
    EXPECT_EQ(isLarger(*locked, *partSeated), GetParam()["expected"].at("half_home_is_larger"));
    const auto best = bestDividingLeaf(*locked, *partSeated, leaves());
    ASSERT_TRUE(best);
    EXPECT_EQ(best->size, GetParam()["expected"].at("best_single_leaf"));
    expectShare(best->falseAlarm, "best_single_leaf_false_alarm");
    expectShare(best->miss, "best_single_leaf_miss");
}

TEST_P(DiscriminationOracle, AgreesOnTheLikelihoodRatioOfEachReading)
{
    const double allowed = GetParam()["tolerance"].at("log10_lr").get<double>();
    for (const json& one : GetParam()["expected"].at("judged")) {
        SCOPED_TRACE(one.at("reading").dump());
        const auto ratio = logLikelihoodRatio(intervalOf(one.at("reading")), *locked, *partSeated);
        ASSERT_TRUE(ratio);
        EXPECT_NEAR(*ratio, one.at("log10_lr_uncapped").get<double>(), allowed);
        EXPECT_NEAR(std::clamp(*ratio, -kLogRatioCap, kLogRatioCap), one.at("log10_lr").get<double>(),
                    allowed);
    }
}

INSTANTIATE_TEST_SUITE_P(Method, DiscriminationOracle,
                         testing::ValuesIn(oracleCases("method/discrimination.json")), caseName);
