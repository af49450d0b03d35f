#include "core/airframe/id_source.h"
#include "core/review/coupling_history.h"
#include "tests/support/leaves.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::literals;
using rig::tests::twentyLeaves;
using namespace std::chrono_literals;

namespace {

constexpr Day kSpring = std::chrono::sys_days{2024y / 3 / 10};

Day after(int days)
{
    return kSpring + std::chrono::days{days};
}

// One coupling with one fitting and one leaf set; baseline readings between 0.45 and 0.60 mm.
class Joint
{
public:
    Joint()
    {
        coupling.bytes = m_ids.next(0);
        fittings.push_back(newFitting(kSpring));
        gauges.push_back(newGauge());
        for (int i = 0; i < 12; ++i)
            read(i % 3 == 0 ? 450_um : 500_um, kSpring, Purpose::Baseline);
    }

    Fitting newFitting(Day begins)
    {
        Fitting fitting;
        fitting.id.bytes = m_ids.next(0);
        fitting.coupling = coupling;
        fitting.begins = begins;
        return fitting;
    }

    Gauge newGauge()
    {
        Gauge gauge;
        gauge.id.bytes = m_ids.next(0);
        gauge.set = twentyLeaves();
        return gauge;
    }

    GaugeCheck check(Day day, std::optional<Day> quarantineFrom)
    {
        GaugeCheck one;
        one.id.bytes = m_ids.next(0);
        one.gauge = gauges.front().id;
        one.day = day;
        one.quarantineFrom = quarantineFrom;
        return one;
    }

    Reading& read(Gap enters, Day day, Purpose purpose = Purpose::Rigging)
    {
        Reading reading;
        reading.id.bytes = m_ids.next(0);
        reading.coupling = coupling;
        reading.fitting = fittings.back().id;
        reading.interval = {enters, enters + 50_um};
        reading.gauge = gauges.back().id;
        reading.purpose = purpose;
        reading.when = noonOf(day);
        readings.push_back(reading);
        return readings.back();
    }

    CouplingHistory history() const
    {
        return historyOf(coupling, fittings, readings, exclusions, frozen, gauges, checks);
    }

    Verdict verdictOf(const Reading& reading) const { return judgeIn(history(), reading).verdict; }

    CouplingId coupling;
    std::vector<Fitting> fittings;
    std::vector<Reading> readings;
    std::vector<Exclusion> exclusions;
    std::vector<FrozenBaseline> frozen;
    std::vector<Gauge> gauges;
    std::vector<GaugeCheck> checks;

private:
    IdSource m_ids{3};
};

} // namespace

TEST(CouplingHistory, JudgesAReadingAgainstItsOwnFitting)
{
    Joint joint;
    EXPECT_EQ(joint.verdictOf(joint.read(500_um, after(30))), Verdict::Inside);
    EXPECT_EQ(joint.verdictOf(joint.read(900_um, after(31))), Verdict::Outside);
    joint.fittings.push_back(joint.newFitting(after(40)));
    EXPECT_EQ(joint.verdictOf(joint.read(900_um, after(41))), Verdict::NoBandYet);
}

TEST(CouplingHistory, NeverLetsLaterRiggingReadingsMoveTheBand)
{
    Joint joint;
    const double before = joint.history().fittings.front().baseline.band()->outer.upper;
    for (int day = 1; day < 40; ++day)
        joint.read(550_um, after(day));
    EXPECT_EQ(joint.history().fittings.front().baseline.band()->outer.upper, before);
}

TEST(CouplingHistory, KeepsPartSeatedReadingsOutOfTheBand)
{
    Joint joint;
    joint.read(950_um, kSpring, Purpose::Baseline).state = SeatState::PartSeated;
    const CouplingHistory history = joint.history();
    EXPECT_EQ(history.fittings.front().baseline.readings(), 12);
    EXPECT_EQ(history.partSeated.size(), 1U);
}

TEST(CouplingHistory, LeavesAnExcludedReadingOutUnlessTheBaselineIsFrozenWithIt)
{
    Joint joint;
    Exclusion exclusion;
    exclusion.reading = joint.readings.front().id;
    joint.exclusions.push_back(exclusion);
    EXPECT_EQ(joint.history().fittings.front().baseline.readings(), 11);

    FrozenBaseline frozen;
    frozen.fitting = joint.fittings.front().id;
    for (const Reading& reading : joint.readings)
        frozen.readings.push_back(reading.id);
    joint.frozen.push_back(frozen);
    EXPECT_EQ(joint.history().fittings.front().baseline.readings(), 12);
    EXPECT_TRUE(joint.history().fittings.front().isFrozen);
}

TEST(CouplingHistory, CannotTellByALeafSetInQuarantine)
{
    Joint joint;
    joint.checks.push_back(joint.check(after(20), after(10)));
    EXPECT_EQ(joint.verdictOf(joint.read(500_um, after(9))), Verdict::Inside);
    EXPECT_EQ(joint.verdictOf(joint.read(500_um, after(10))), Verdict::CannotTell);
    EXPECT_EQ(joint.verdictOf(joint.read(950_um, after(10))), Verdict::Outside)
        << "a doubtful leaf set never softens an outside reading";
}

TEST(CouplingHistory, TrustsALeafSetAgainFromTheDayItWasFoundUsable)
{
    Joint joint;
    joint.checks.push_back(joint.check(after(20), after(10)));
    joint.checks.push_back(joint.check(after(30), std::nullopt));
    EXPECT_EQ(joint.verdictOf(joint.read(500_um, after(29))), Verdict::CannotTell);
    EXPECT_EQ(joint.verdictOf(joint.read(500_um, after(30))), Verdict::Inside);
}

TEST(CouplingHistory, DoesNotTakeALeafSetOutOfQuarantineByAnEarlierCheck)
{
    Joint joint;
    joint.checks.push_back(joint.check(after(15), std::nullopt));
    joint.checks.push_back(joint.check(after(20), after(10)));
    EXPECT_EQ(joint.verdictOf(joint.read(500_um, after(25))), Verdict::CannotTell);
}

TEST(CouplingHistory, TakesReadingsInDoubtOutOfTheBandAndShowsBothVersions)
{
    Joint joint;
    joint.gauges.push_back(joint.newGauge());
    for (int i = 0; i < 3; ++i)
        joint.read(600_um, after(12), Purpose::Baseline);
    const Baseline before = joint.history().fittings.front().baseline;

    joint.checks.push_back(joint.check(after(20), after(10)));
    joint.checks.back().gauge = joint.gauges.back().id;
    const FittingHistory fitting = joint.history().fittings.front();
    EXPECT_EQ(fitting.inDoubt.size(), 3U);
    EXPECT_EQ(fitting.admitted.size(), 15U);
    EXPECT_EQ(fitting.baseline.readings(), 12);
    ASSERT_TRUE(fitting.withDoubted);
    EXPECT_EQ(fitting.withDoubted->band()->inner.upper, before.band()->inner.upper);
    EXPECT_LT(fitting.baseline.band()->inner.upper, before.band()->inner.upper);
    EXPECT_EQ(fitting.gauges, std::set{joint.gauges.front().id});
    EXPECT_EQ(fitting.doubtedGauges, std::set{joint.gauges.back().id});
}

TEST(CouplingHistory, HasNoOtherVersionWhereNothingIsInDoubt)
{
    Joint joint;
    joint.checks.push_back(joint.check(after(20), after(10)));
    EXPECT_TRUE(joint.history().fittings.front().inDoubt.empty());
    EXPECT_FALSE(joint.history().fittings.front().withDoubted);
}

TEST(CouplingHistory, HasNoBandWhereFewerThanFiveReadingsAreLeftWithoutTheDoubtedOnes)
{
    Joint joint;
    joint.gauges.push_back(joint.newGauge());
    for (int i = 0; i < 4; ++i)
        joint.read(500_um, after(1), Purpose::Baseline);
    joint.checks.push_back(joint.check(after(20), kSpring));
    const FittingHistory fitting = joint.history().fittings.front();
    EXPECT_EQ(fitting.baseline.readings(), 4);
    EXPECT_FALSE(fitting.baseline.band());
    EXPECT_TRUE(fitting.withDoubted->band());
    EXPECT_EQ(joint.verdictOf(joint.read(500_um, after(2))), Verdict::NoBandYet);
}

TEST(CouplingHistory, LeavesTheDoubtedSpanInDoubtAfterALaterCheckFoundTheSetUsable)
{
    Joint joint;
    joint.checks.push_back(joint.check(after(20), kSpring));
    joint.checks.push_back(joint.check(after(30), std::nullopt));
    joint.read(500_um, after(31), Purpose::Baseline);
    const FittingHistory fitting = joint.history().fittings.front();
    EXPECT_EQ(fitting.inDoubt.size(), 12U);
    EXPECT_EQ(fitting.baseline.readings(), 1);
}

TEST(CouplingHistory, WorksAFrozenBandOutWithoutTheDoubtedReadingsOfItsList)
{
    Joint joint;
    joint.gauges.push_back(joint.newGauge());
    joint.read(600_um, after(1), Purpose::Baseline);
    FrozenBaseline frozen;
    frozen.fitting = joint.fittings.front().id;
    for (const Reading& reading : joint.readings)
        frozen.readings.push_back(reading.id);
    joint.frozen.push_back(frozen);
    joint.checks.push_back(joint.check(after(20), after(1)));
    joint.checks.back().gauge = joint.gauges.back().id;
    const FittingHistory fitting = joint.history().fittings.front();
    EXPECT_TRUE(fitting.isFrozen);
    EXPECT_EQ(fitting.admitted.size(), 13U);
    EXPECT_EQ(fitting.baseline.readings(), 12);
}

TEST(CouplingHistory, NamesTheLatestCheckThatPutAReadingInDoubt)
{
    Joint joint;
    const GaugeId gauge = joint.gauges.front().id;
    joint.checks.push_back(joint.check(after(20), after(10)));
    joint.checks.push_back(joint.check(after(25), after(5)));
    joint.checks.push_back(joint.check(after(30), std::nullopt));
    EXPECT_EQ(doubtOn(gauge, after(4), joint.checks), nullptr);
    EXPECT_EQ(doubtOn(gauge, after(12), joint.checks), &joint.checks[1]);
    EXPECT_EQ(doubtOn(gauge, after(30), joint.checks), nullptr);
}

TEST(CouplingHistory, CannotTellWhereLockedAndPartSeatedShareGaps)
{
    Joint joint;
    for (int i = 0; i < 6; ++i) {
        Reading& shown = joint.read(i % 2 ? 500_um : 450_um, kSpring, Purpose::Demonstration);
        shown.state = SeatState::PartSeated;
    }
    const Judgement judgement = judgeIn(joint.history(), joint.read(500_um, after(1)));
    EXPECT_EQ(judgement.verdict, Verdict::CannotTell);
    EXPECT_EQ(judgement.reason, Reason::GapIsNoWitness);
}

TEST(CouplingHistory, WidensForAnotherLeafSetWithAKnownFigure)
{
    Joint joint;
    joint.gauges.front().tolerance = 20_um;
    const double own = judgeIn(joint.history(), joint.read(600_um, after(1))).tail;
    joint.gauges.push_back(joint.newGauge());
    joint.gauges.back().tolerance = 20_um;
    const double other = judgeIn(joint.history(), joint.read(600_um, after(1))).tail;
    EXPECT_GT(other, own);
}
