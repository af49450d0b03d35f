#include "core/numbers/distributions.h"
#include "core/numbers/fleet_prior.h"
#include "core/numbers/interval_posterior.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <vector>

using namespace rig::numbers;

namespace {

// Ten exact readings around `mean` that lie like a normal sample of this standard deviation.
IntervalSet scattering(double sigma, double mean)
{
    std::vector<Interval> readings;
    for (int i = 0; i < 10; ++i) {
        const double x = mean + 1.05 * sigma * normalQuantile((i + 0.5) / 10);
        readings.push_back({x, x});
    }
    return intervalSetOf(readings);
}

std::vector<IntervalSet> fleetScattering(std::size_t couplings, double sigma)
{
    std::vector<IntervalSet> fleet;
    for (std::size_t i = 0; i < couplings; ++i)
        fleet.push_back(scattering(sigma, 0.4 + 0.05 * static_cast<double>(i)));
    return fleet;
}

// Leaf readings, 0.05 mm apart, of such a sample.
IntervalSet leafSample(int count, double sigma)
{
    std::vector<Interval> readings;
    for (int i = 0; i < count; ++i) {
        const double x = 0.517 + sigma * normalQuantile((i + 0.5) / count);
        const double leaf = 0.05 * std::floor(x / 0.05);
        readings.push_back({leaf, leaf + 0.05});
    }
    return intervalSetOf(readings);
}

double evidenceOf(const std::vector<IntervalSet>& fleet, double nu0, double s0)
{
    double sum = 0;
    for (const IntervalSet& coupling : fleet)
        sum += IntervalPosterior::of(coupling, {nu0, s0, 0.005, 0.3})->logEvidence();
    return sum;
}

} // namespace

TEST(FleetPrior, LearnsTheScatterThatAllCouplingsShare)
{
    const auto prior = fleetPriorOf(fleetScattering(12, 0.03));
    ASSERT_TRUE(prior);
    EXPECT_NEAR(prior->s0, 0.03, 0.0015);
    EXPECT_EQ(prior->nu0, 10); // as sure as it may be
    EXPECT_TRUE(prior->atUpperBound);
    EXPECT_FALSE(prior->atLowerBound);
    EXPECT_TRUE(prior->isUsable);
}

TEST(FleetPrior, IsWeakWhereCouplingsDiffer)
{
    std::vector<IntervalSet> fleet;
    for (int i = 0; i < 12; ++i)
        fleet.push_back(scattering(0.008 * std::pow(1.35, i), 0.5));
    const auto prior = fleetPriorOf(fleet);
    ASSERT_TRUE(prior);
    EXPECT_LT(prior->nu0, 3);
    EXPECT_TRUE(prior->isUsable);
}

TEST(FleetPrior, NeedsEightCouplingsOfFiveReadings)
{
    std::vector<IntervalSet> fleet = fleetScattering(7, 0.03);
    EXPECT_FALSE(fleetPriorOf(fleet)->isUsable);
    fleet.push_back(intervalSetOf(std::vector<Interval>{{0.5, 0.5}, {0.51, 0.51}, {0.49, 0.49}, {0.5, 0.5}}));
    EXPECT_FALSE(fleetPriorOf(fleet)->isUsable);
    fleet.push_back(scattering(0.03, 0.7));
    EXPECT_TRUE(fleetPriorOf(fleet)->isUsable);
}

TEST(FleetPrior, IsNotUsableWhenTheGaugeHidesTheScatter)
{
    // Every coupling reads the same leaf every time: the fit runs to the smallest scatter and full strength.
    std::vector<IntervalSet> tied;
    for (int i = 0; i < 10; ++i)
        tied.push_back(intervalSetOf(std::vector<Interval>(10, {0.05 * i, 0.05 * (i + 1)})));
    const auto prior = fleetPriorOf(tied);
    ASSERT_TRUE(prior);
    EXPECT_NEAR(prior->s0, 0.005, 1e-12);
    EXPECT_EQ(prior->nu0, 10);
    EXPECT_FALSE(prior->isUsable);
}

TEST(FleetPrior, LeavesOutCouplingsThatHaveNoBand)
{
    std::vector<IntervalSet> fleet = fleetScattering(9, 0.03);
    const auto before = fleetPriorOf(fleet);
    fleet.push_back(intervalSetOf(std::vector<Interval>(6, {2, kInfinity})));
    fleet.push_back(intervalSetOf({}));
    fleet.push_back(intervalSetOf(std::vector<Interval>{{-1e308, -1e308}, {1e308, 1e308}}));
    const auto after = fleetPriorOf(fleet);
    ASSERT_TRUE(before && after);
    EXPECT_EQ(before->s0, after->s0);
    EXPECT_EQ(before->nu0, after->nu0);
    EXPECT_EQ(before->logMarginal, after->logMarginal);
}

// Each coupling's evidence under the prior that was found, worked out by the posterior's own quadrature,
// which looks for where the weight lies.
TEST(FleetPrior, AddsUpTheEvidenceOfItsCouplings)
{
    for (const int readings : {1, 3, 10, 28, 100, 1000}) {
        std::vector<IntervalSet> fleet;
        for (const double sigma : {0.011, 0.02, 0.034, 0.06})
            fleet.push_back(leafSample(readings, sigma));
        const auto prior = fleetPriorOf(fleet);
        ASSERT_TRUE(prior);
        EXPECT_NEAR(prior->logMarginal, evidenceOf(fleet, prior->nu0, prior->s0), 1e-6) << readings;
    }
}

TEST(FleetPrior, HasTheLargestEvidence)
{
    std::vector<IntervalSet> fleet;
    for (int i = 0; i < 10; ++i)
        fleet.push_back(leafSample(12, 0.02 * std::pow(1.18, i)));
    const auto prior = fleetPriorOf(fleet);
    ASSERT_TRUE(prior);
    EXPECT_FALSE(prior->atLowerBound || prior->atUpperBound);
    for (const double factor : {0.95, 1.05}) {
        EXPECT_LT(evidenceOf(fleet, prior->nu0, factor * prior->s0), prior->logMarginal) << factor;
        EXPECT_LT(evidenceOf(fleet, factor * prior->nu0, prior->s0), prior->logMarginal) << factor;
    }
}

TEST(FleetPrior, SearchesOnlyWhereItIsTold)
{
    const auto prior = fleetPriorOf(fleetScattering(9, 0.03), 4, 4);
    ASSERT_TRUE(prior);
    EXPECT_EQ(prior->nu0, 4);
    EXPECT_TRUE(prior->atLowerBound && prior->atUpperBound);
}

TEST(FleetPrior, DoesNotExistForNoFleetOrAnImpossibleRange)
{
    EXPECT_FALSE(fleetPriorOf({}));
    EXPECT_FALSE(fleetPriorOf(std::vector<IntervalSet>(3)));
    const std::vector<IntervalSet> fleet = fleetScattering(9, 0.03);
    EXPECT_FALSE(fleetPriorOf(fleet, 0, 10));
    EXPECT_FALSE(fleetPriorOf(fleet, 5, 4));
    EXPECT_FALSE(fleetPriorOf(fleet, 1, kInfinity));
    EXPECT_FALSE(fleetPriorOf(fleet, std::numeric_limits<double>::quiet_NaN(), 10));
}
