#include "core/airframe/id_source.h"
#include "core/review/quarantine_effect.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::literals;
using namespace std::chrono_literals;

namespace {

constexpr Day kBaselineDay = std::chrono::sys_days{2025y / 3 / 10};

Day daysOn(int days)
{
    return kBaselineDay + std::chrono::days{days};
}

// One airframe with one coupling, read for its baseline with leaf sets A and B: B reads 0.10 mm too high.
class Airframes
{
public:
    Airframes()
    {
        facts.airframe.id.bytes = m_ids.next(0);
        Coupling coupling;
        coupling.id.bytes = m_ids.next(0);
        facts.couplings.push_back(coupling);
        Fitting fitting;
        fitting.id.bytes = m_ids.next(0);
        fitting.coupling = coupling.id;
        fitting.begins = kBaselineDay;
        facts.fittings.push_back(fitting);
        setA = addGauge();
        setB = addGauge();
        for (int i = 0; i < 8; ++i)
            read(i % 3 ? 500_um : 450_um, setA, kBaselineDay, Purpose::Baseline);
        for (int i = 0; i < 4; ++i)
            read(600_um, setB, daysOn(1), Purpose::Baseline);
    }

    ReadingId read(Gap enters, GaugeId gauge, Day day, Purpose purpose = Purpose::Rigging)
    {
        Reading reading;
        reading.id.bytes = m_ids.next(0);
        reading.coupling = facts.couplings.front().id;
        reading.fitting = facts.fittings.front().id;
        reading.interval = {enters, enters + 50_um};
        reading.gauge = gauge;
        reading.purpose = purpose;
        reading.when = noonOf(day);
        facts.readings.push_back({reading, {}});
        return reading.id;
    }

    GaugeCheck check(GaugeId gauge, Day day, std::optional<Day> quarantineFrom)
    {
        GaugeCheck one;
        one.id.bytes = m_ids.next(0);
        one.gauge = gauge;
        one.day = day;
        one.quarantineFrom = quarantineFrom;
        return one;
    }

    QuarantineEffect effectOfDoubting(GaugeId gauge, Day from)
    {
        return effectOf(check(gauge, daysOn(60), from), facts);
    }

    std::vector<Question> questionsOfDoubting(GaugeId gauge, Day from)
    {
        const GaugeCheck bad = check(gauge, daysOn(60), from);
        return questionsFrom(effectOf(bad, facts), bad, facts.airframe.id);
    }

    AirframeFacts facts;
    GaugeId setA;
    GaugeId setB;

private:
    GaugeId addGauge()
    {
        std::vector<Gap> sizes;
        for (int um = 50; um <= 1000; um += 50)
            sizes.push_back(Gap::micrometres(um));
        Gauge gauge;
        gauge.id.bytes = m_ids.next(0);
        gauge.set = {GaugeKind::Leaves, sizes};
        facts.gauges.push_back(gauge);
        return gauge.id;
    }

    IdSource m_ids{3};
};

} // namespace

TEST(Quarantine, MarksTheReadingsOfTheSetFromTheDayOnAndShowsTheBandBeforeAndAfter)
{
    Airframes file;
    file.read(500_um, file.setB, daysOn(30));
    file.read(500_um, file.setA, daysOn(30));
    const QuarantineEffect effect = file.effectOfDoubting(file.setB, daysOn(1));
    EXPECT_EQ(effect.marked(), 5);
    ASSERT_EQ(effect.couplings.size(), 1U);
    ASSERT_EQ(effect.couplings.front().bands.size(), 1U);
    const BandChange& change = effect.couplings.front().bands.front();
    EXPECT_EQ(change.inDoubt, 4);
    EXPECT_EQ(change.before.readings(), 12);
    EXPECT_EQ(change.after.readings(), 8);
    EXPECT_LT(change.after.band()->outer.upper, change.before.band()->outer.upper);
}

TEST(Quarantine, ChangesNoBandWhereTheDoubtBeginsAfterTheBaseline)
{
    Airframes file;
    file.read(500_um, file.setB, daysOn(30));
    const QuarantineEffect effect = file.effectOfDoubting(file.setB, daysOn(2));
    EXPECT_EQ(effect.marked(), 1);
    EXPECT_TRUE(effect.couplings.front().bands.empty());
}

TEST(Quarantine, DoesNothingToCouplingsThatTheSetNeverRead)
{
    Airframes file;
    const QuarantineEffect effect = file.effectOfDoubting(file.setB, daysOn(2));
    EXPECT_TRUE(effect.couplings.empty());
    EXPECT_TRUE(file.questionsOfDoubting(file.setB, daysOn(2)).empty());
}

TEST(Quarantine, AsksAboutTheGaugeAloneWhereNoVerdictChanges)
{
    Airframes file;
    file.read(500_um, file.setA, daysOn(30));
    const auto questions = file.questionsOfDoubting(file.setB, daysOn(1));
    ASSERT_EQ(questions.size(), 1U);
    EXPECT_EQ(questions.front().kind, QuestionKind::GaugeQuarantined);
    EXPECT_FALSE(questions.front().coupling);
}

TEST(Quarantine, AsksAboutACouplingWhereAReadingWithAnotherSetWouldBeJudgedOtherwise)
{
    Airframes file;
    file.read(650_um, file.setA, daysOn(30));
    const ReadingId latest = file.read(650_um, file.setA, daysOn(31));
    file.read(500_um, file.setA, daysOn(32)); // is inside both bands
    file.read(650_um, file.setB, daysOn(33)); // is in doubt itself
    const auto questions = file.questionsOfDoubting(file.setB, daysOn(1));
    ASSERT_EQ(questions.size(), 2U);
    EXPECT_EQ(questions.back().kind, QuestionKind::BandInDoubt);
    EXPECT_EQ(questions.back().coupling, file.facts.couplings.front().id);
    EXPECT_EQ(questions.back().gauge, file.setB);
    EXPECT_EQ(questions.back().reading, latest);
    const CouplingInDoubt effect = file.effectOfDoubting(file.setB, daysOn(1)).couplings.front();
    EXPECT_EQ(effect.judgedOtherwise, 2);
    EXPECT_NE(effect.latest->before, Verdict::Outside);
    EXPECT_EQ(effect.latest->after, Verdict::Outside);
}

TEST(Quarantine, ComparesNoReadingThatIsCorrectedLeftOutOrOfTheBaseline)
{
    Airframes file;
    const ReadingId wrong = file.read(650_um, file.setA, daysOn(30));
    file.read(500_um, file.setA, daysOn(30));
    file.facts.readings.back().reading.corrects = wrong;
    Exclusion exclusion;
    exclusion.reading = file.read(650_um, file.setA, daysOn(31), Purpose::Baseline);
    file.facts.exclusions.push_back(exclusion);
    EXPECT_EQ(file.effectOfDoubting(file.setB, daysOn(1)).couplings.front().judgedOtherwise, 0);
}

TEST(Quarantine, TellsThatABandGoesWhenTooFewReadingsAreLeft)
{
    Airframes file;
    file.read(500_um, file.setB, daysOn(30));
    const CouplingInDoubt effect = file.effectOfDoubting(file.setA, kBaselineDay).couplings.front();
    EXPECT_FALSE(effect.bands.front().after.band());
    EXPECT_EQ(effect.bands.front().after.readings(), 4);
    EXPECT_EQ(effect.latest->after, Verdict::NoBandYet);
}

TEST(Quarantine, CountsNoReadingTwiceThatWasInDoubtBefore)
{
    Airframes file;
    file.facts.gaugeChecks.push_back(file.check(file.setB, daysOn(20), daysOn(1)));
    const QuarantineEffect effect = file.effectOfDoubting(file.setB, kBaselineDay);
    EXPECT_EQ(effect.marked(), 0);
    EXPECT_EQ(effect.covered, 4) << "there is something to find out all the same";
}

TEST(Quarantine, ReachesBackBeyondAGoodCheckOfTheSameDay)
{
    Airframes file;
    file.facts.gaugeChecks.push_back(file.check(file.setB, daysOn(60), std::nullopt));
    EXPECT_EQ(file.effectOfDoubting(file.setB, daysOn(1)).marked(), 4);
}

TEST(Quarantine, OneQuestionAboutAGaugeIsNotTheOneAboutACouplingReadWithIt)
{
    Airframes file;
    file.read(650_um, file.setA, daysOn(30));
    const auto first = file.questionsOfDoubting(file.setB, daysOn(1));
    file.read(650_um, file.setA, daysOn(31));
    const auto again = file.questionsOfDoubting(file.setB, daysOn(1));
    ASSERT_EQ(first.size(), 2U);
    EXPECT_FALSE(first[0].asksTheSameAs(first[1]));
    EXPECT_NE(first[1].reading, again[1].reading);
    EXPECT_TRUE(first[1].asksTheSameAs(again[1])) << "a later reading does not make it another question";
}

TEST(Quarantine, TellsWhatADoubtInTheFileDidFromTheChecksWithoutIt)
{
    Airframes file;
    file.read(650_um, file.setA, daysOn(30));
    file.facts.gaugeChecks.push_back(file.check(file.setB, daysOn(60), daysOn(1)));
    const auto told = couplingsInDoubt(
        file.facts, file.setB, withoutDoubtsOf(file.setB, file.facts.gaugeChecks), file.facts.gaugeChecks);
    ASSERT_EQ(told.size(), 1U);
    EXPECT_EQ(told.front().readings, 4);
    EXPECT_EQ(told.front().judgedOtherwise, 1);
}
