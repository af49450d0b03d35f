#include "core/review/airframe_review.h"
#include "core/review/coupling_signs.h"
#include "tests/support/airframe_in_memory.h"
#include "tests/support/fixed_clock.h"

#include <algorithm>
#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

constexpr Day kReviewBegins = dayOf(2024, 3, 1);

// Five couplings, rigged every third day.
class FiveCouplings : public testing::Test
{
protected:
    FiveCouplings()
    {
        for (const char* name : {"Left aileron", "Right aileron", "Left airbrake", "Right airbrake", "Trim"})
            told.addCoupling(name, 0.50, kReviewBegins, std::string{name} == "Trim" ? 4 : 12);
        for (std::size_t i = 0; i < 4; ++i) {
            told.facts.couplings[i].circuit = i < 2 ? Circuit::Aileron : Circuit::Airbrake;
            told.facts.couplings[i].side = i % 2 == 0 ? Side::Left : Side::Right;
        }
    }

    void rig(double shift = 0)
    {
        static constexpr double kOff[] = {0.01, -0.02, 0.02, 0, -0.01, 0};
        day += std::chrono::days{3};
        told.rig(day);
        std::size_t at = told.facts.riggingRecords.size();
        for (const Coupling& coupling : told.facts.couplings)
            told.read(coupling.id, 0.50 + shift + kOff[at++ % 6]);
    }
    Reading& lastOf(std::size_t coupling)
    {
        const auto last = std::find_if(told.facts.readings.rbegin(), told.facts.readings.rend(),
                                       [&](const KeptReading& kept) {
                                           return kept.reading.coupling == told.facts.couplings[coupling].id;
                                       });
        return last->reading;
    }
    void lookAt(std::size_t coupling, Gap enters)
    {
        lastOf(coupling).interval = {enters, enters + Gap::micrometres(20)};
    }
    // What lay outside was grit, and was cleaned.
    void askAndResolve(const Reading& outside)
    {
        QuestionStory story;
        story.question.kind = QuestionKind::OutsideReading;
        story.question.coupling = outside.coupling;
        story.question.reading = outside.id;
        story.question.stamp.when = outside.when;
        story.resolution =
            Resolution{{}, {}, told.facts.persons[1].id, "grit", "cleaned", {{}, outside.when}};
        told.facts.questions.push_back(story);
    }
    AirframeReview review() const
    {
        return airframeReviewOf(told.facts, reviewPeriods(told.facts, day).front());
    }
    const CouplingReview& of(const AirframeReview& all, std::size_t coupling) const
    {
        return *all.find(told.facts.couplings[coupling].id);
    }

    AirframeInMemory told;
    Day day = kReviewBegins;
};

} // namespace

TEST_F(FiveCouplings, WithNothingToSayStillSayThatTrimHasNoBandAndPartSeatedWasNeverShown)
{
    for (int i = 0; i < 12; ++i)
        rig();
    const AirframeReview all = review();
    EXPECT_EQ(all.couplings.front().coupling.name, "Trim");
    EXPECT_EQ(all.couplings.front().signs, (std::vector{Sign::NoBand, Sign::PartSeatedNeverShown}));
    for (std::size_t i = 0; i < 4; ++i)
        EXPECT_EQ(of(all, i).signs, (std::vector{Sign::PartSeatedNeverShown})) << i;
    EXPECT_EQ(all.counts.riggings, 12);
    EXPECT_EQ(all.counts.readings, 60);
    EXPECT_EQ(all.counts.persons, 1);
    EXPECT_EQ(all.counts.gauges, 1);
}

TEST_F(FiveCouplings, AreOrderedByWhatStandsOut)
{
    for (int i = 0; i < 12; ++i)
        rig();
    lookAt(3, Gap::micrometres(900)); // outside
    rig();
    QuestionStory story;
    story.question.coupling = told.facts.couplings[1].id;
    story.question.kind = QuestionKind::CannotSee;
    story.question.stamp.when = noonOf(day);
    told.facts.questions.push_back(story);
    const AirframeReview all = review();
    EXPECT_EQ(all.couplings[0].coupling.name, "Right aileron");
    EXPECT_EQ(all.couplings[0].openQuestions.size(), 1U);
    EXPECT_EQ(all.couplings[1].coupling.name, "Right airbrake");
    EXPECT_TRUE(all.couplings[1].has(Sign::Outside));
    EXPECT_EQ(all.couplings[2].coupling.name, "Trim");
}

TEST_F(FiveCouplings, AnOpenSurfaceIsAskedAtEveryJointOfItsCircuit)
{
    rig();
    Surface rudder;
    rudder.id = told.next<SurfaceId>();
    rudder.airframe = told.facts.airframe.id;
    rudder.kind = SurfaceKind::Rudder;
    told.facts.surfaces.push_back(rudder);
    for (Coupling& one : told.facts.couplings)
        one.circuit = Circuit::Aileron;
    told.facts.couplings[2].circuit = Circuit::Rudder;
    QuestionStory story;
    story.question.kind = QuestionKind::SurfaceDoubt;
    story.question.surface = rudder.id;
    story.question.stamp.when = noonOf(day);
    told.facts.questions.push_back(story);
    const AirframeReview all = review();
    EXPECT_EQ(all.couplings.front().coupling.id, told.facts.couplings[2].id) << "the gravest of all";
    EXPECT_EQ(of(all, 2).openQuestions.size(), 1U);
    EXPECT_TRUE(of(all, 0).openQuestions.empty());
}

TEST_F(FiveCouplings, WhatSomebodyAsksAboutAReadingOutsideBelongsToItsStory)
{
    rig();
    lookAt(0, Gap::micrometres(900));
    QuestionStory story;
    story.question.kind = QuestionKind::Asked;
    story.question.coupling = told.facts.couplings[0].id;
    story.question.reading = lastOf(0).id;
    story.question.text = "written wrongly?";
    story.question.stamp.when = noonOf(day);
    told.facts.questions.push_back(story);
    const AirframeReview all = review();
    ASSERT_EQ(of(all, 0).outside.size(), 1U);
    ASSERT_TRUE(of(all, 0).outside.front().question);
    EXPECT_TRUE(of(all, 0).outside.front().isOpen());
}

TEST_F(FiveCouplings, AnOutsideReadingIsToldWithItsQuestionAndWhatWasReadAfterwards)
{
    rig();
    lookAt(0, Gap::micrometres(900));
    const Reading outside = lastOf(0);
    askAndResolve(outside);
    told.read(outside.coupling, 0.51).when.utcSeconds += 600;
    const AirframeReview all = review();
    ASSERT_EQ(of(all, 0).outside.size(), 1U);
    const OutsideStory& one = of(all, 0).outside.front();
    EXPECT_EQ(one.reading.id, outside.id);
    EXPECT_EQ(one.judgement.direction, Direction::Above);
    EXPECT_EQ(one.question->resolution->found, "grit");
    ASSERT_EQ(one.afterwards.size(), 1U);
    EXPECT_EQ(one.rigging, 1);
    EXPECT_TRUE(of(all, 0).openQuestions.empty());
}

TEST_F(FiveCouplings, NobodySaysOfReadingsOfATableWhichCameFirstWhereItDidNotTellWhen)
{
    rig();
    lookAt(0, Gap::micrometres(900));
    const Reading outside = lastOf(0);
    Reading& other = told.read(outside.coupling, 0.51);
    other.technique = Technique::Table;
    other.when = noonOf(outside.when.localDay());
    const AirframeReview all = review();
    ASSERT_EQ(of(all, 0).outside.size(), 1U);
    EXPECT_TRUE(of(all, 0).outside.front().afterwards.empty());
    ASSERT_EQ(of(all, 0).outside.front().besides.size(), 1U);
    EXPECT_EQ(of(all, 0).outside.front().besides.front().id, other.id);
}

TEST_F(FiveCouplings, AQuestionClosedAfterThePeriodWasOpenAtItsEnd)
{
    rig();
    QuestionStory story;
    story.question.coupling = told.facts.couplings[0].id;
    story.question.stamp.when = noonOf(day);
    story.resolution =
        Resolution{{}, {}, told.facts.persons[1].id, "x", "y", {{}, noonOf(day + std::chrono::days{20})}};
    told.facts.questions.push_back(story);
    told.happen(EventKind::Annual, day + std::chrono::days{10});
    const auto periods = reviewPeriods(told.facts, day + std::chrono::days{30});
    EXPECT_TRUE(airframeReviewOf(told.facts, periods[0]).questions.empty());
    EXPECT_TRUE(
        airframeReviewOf(told.facts, periods[1]).find(told.facts.couplings[0].id)->has(Sign::OpenQuestion));
}

TEST_F(FiveCouplings, AGaugeThatReadsHighIsToldForItsDaysAndNoCouplingIs)
{
    for (int i = 0; i < 20; ++i)
        rig();
    for (int i = 0; i < 6; ++i) {
        rig(0.045);
        for (std::size_t c = 0; c < 5; ++c)
            lastOf(c).gauge = told.facts.gauges[1].id;
    }
    const AirframeReview all = review();
    ASSERT_EQ(all.sharedShifts.size(), 1U);
    EXPECT_EQ(all.sharedShifts[0].days.size(), 6U);
    EXPECT_EQ(all.sharedShifts[0].gauge, told.facts.gauges[1].id);
    EXPECT_NEAR(all.sharedShifts[0].millimetres, 0.045, 0.015);
    EXPECT_FALSE(all.sharedShifts[0].person);
    for (std::size_t c = 0; c < 4; ++c) {
        EXPECT_TRUE(of(all, c).movement->changes.empty()) << c;
        EXPECT_FALSE(of(all, c).movement->flag) << "taken off the chart, too";
    }
    ASSERT_EQ(all.measurers.gauges.size(), 2U);
    EXPECT_TRUE(all.measurers.gauges[1].offset->isShown());
    EXPECT_EQ(all.readings.shifts.size(), 26U) << "the others are there, and not called";
}

// Nobody else read with another set: nothing can be compared, and nobody is accused.
TEST_F(FiveCouplings, DaysWithoutAnythingToCompareThemWithAccuseNoGauge)
{
    for (int i = 0; i < 20; ++i)
        rig();
    rig(0.08);
    for (int i = 0; i < 5; ++i)
        rig();
    const AirframeReview all = review();
    ASSERT_EQ(all.sharedShifts.size(), 1U);
    EXPECT_FALSE(all.sharedShifts[0].gauge);
    EXPECT_FALSE(all.sharedShifts[0].person);
    EXPECT_NEAR(all.sharedShifts[0].millimetres, 0.08, 0.02);
}

// What is told of the day is told beside each joint that went along, and no tick stands there.
TEST_F(FiveCouplings, ThatWentTogetherAtTheLastRiggingStandAsMovedAndAreCounted)
{
    for (int i = 0; i < 20; ++i)
        rig();
    rig(0.08);
    lookAt(3, Gap::micrometres(480)); // all but one
    const AirframeReview all = review();
    const DayShift* last = togetherWith(of(all, 0), all.shifts);
    ASSERT_TRUE(last);
    EXPECT_EQ(wentTogether(*last), last->shift.scores - 1);
    EXPECT_NE(of(all, 0).standing.says, Says::Inside);
    EXPECT_FALSE(togetherWith(of(all, 3), all.shifts)) << "it did not go along";
}

TEST_F(FiveCouplings, AStepIsOneHeadlineAndItsReadingsOutsideAreOneRun)
{
    for (const char* name : {"Elevator", "Left flap", "Right flap"})
        told.addCoupling(name, 0.50, kReviewBegins);
    for (int i = 0; i < 34; ++i) {
        rig();
        if (i >= 20)
            lookAt(0, Gap::micrometres(620 + 20 * (i % 2)));
        if (i == 10)
            lookAt(2, Gap::micrometres(900));
    }
    const AirframeReview all = review();
    const CouplingReview& stepped = of(all, 0);
    EXPECT_EQ(all.couplings.front().coupling.name, "Left aileron");
    EXPECT_TRUE(stepped.has(Sign::Step));
    EXPECT_FALSE(stepped.has(Sign::Drift));
    EXPECT_EQ(stepped.outside.size(), 14U);
    ASSERT_EQ(stepped.runs.size(), 1U);
    EXPECT_EQ(stepped.runs.front().count, 14U);
    EXPECT_EQ(stepped.outside.front().by, OutsideBy::Movement);
    EXPECT_LT(stepped.runs.front().nearest, stepped.runs.front().farthest);
    const CouplingReview& single = of(all, 2);
    EXPECT_EQ(single.signs.front(), Sign::Outside);
    ASSERT_EQ(single.runs.size(), 1U);
    EXPECT_EQ(single.outside.front().by, OutsideBy::Nothing);
    EXPECT_NEAR(single.runs.front().farthest, 0.34, 0.03);
}

TEST_F(FiveCouplings, AReadingInsideOrAnOpenQuestionPartsARun)
{
    for (int i = 0; i < 12; ++i)
        rig();
    for (int i = 0; i < 5; ++i) {
        rig();
        if (i != 2)
            lookAt(0, Gap::micrometres(900));
    }
    QuestionStory story;
    story.question.kind = QuestionKind::OutsideReading;
    story.question.coupling = lastOf(0).coupling;
    story.question.reading = lastOf(0).id;
    story.question.stamp.when = lastOf(0).when;
    told.facts.questions.push_back(story);
    const AirframeReview all = review();
    std::vector<std::size_t> counts;
    for (const OutsideRun& run : of(all, 0).runs)
        counts.push_back(run.count);
    EXPECT_EQ(counts, (std::vector<std::size_t>{2, 1, 1}));
}

TEST_F(FiveCouplings, WhatANamedGaugeBringsOutsideRanksBelow)
{
    for (int i = 0; i < 24; ++i) {
        rig(i % 4 == 3 ? 0.10 : 0);
        for (std::size_t c = 0; c < 5; ++c)
            lastOf(c).gauge = told.facts.gauges[i % 4 == 3 ? 1 : 0].id;
    }
    const AirframeReview all = review();
    ASSERT_FALSE(of(all, 0).outside.empty());
    EXPECT_EQ(of(all, 0).outside.front().by, OutsideBy::Gauge);
    EXPECT_TRUE(of(all, 0).has(Sign::OutsideExplained));
    EXPECT_FALSE(of(all, 0).has(Sign::Outside));
    EXPECT_EQ(of(all, 0).runs.size(), of(all, 0).outside.size()) << "others read inside between them";
}

TEST_F(FiveCouplings, APersonWhoReadsLowNowAndThenIsToldAndTheOthersAreNot)
{
    for (int i = 0; i < 60; ++i) {
        rig(i % 5 == 4 ? -0.03 : 0);
        for (std::size_t c = 0; c < 5; ++c)
            lastOf(c).person = told.facts.persons[i % 5 == 4 ? 1 : 0].id;
    }
    const AirframeReview all = review();
    ASSERT_EQ(all.measurers.persons.size(), 2U);
    const MeasuredOffset low = *all.measurers.persons[1].offset;
    EXPECT_TRUE(low.isShown());
    EXPECT_NEAR(low.estimate, -0.025, 0.008) << "from the mean of all";
    EXPECT_FALSE(all.measurers.persons[0].offset->estimate > 0.008);
    for (std::size_t c = 0; c < 4; ++c)
        EXPECT_TRUE(of(all, c).movement->changes.empty()) << c;
}

TEST_F(FiveCouplings, ARiggingWithoutAReadingIsMissedAndNoneAtAllIsNotRead)
{
    rig();
    rig();
    std::erase_if(told.facts.readings, [&](const KeptReading& kept) {
        return kept.reading.record == told.facts.riggingRecords[1].id &&
               kept.reading.coupling == told.facts.couplings[0].id;
    });
    std::erase_if(told.facts.readings, [&](const KeptReading& kept) {
        return kept.reading.record && kept.reading.coupling == told.facts.couplings[1].id;
    });
    const AirframeReview all = review();
    EXPECT_TRUE(of(all, 0).has(Sign::MissedRiggings));
    EXPECT_EQ(of(all, 0).riggingsMissed, 1);
    EXPECT_TRUE(of(all, 1).has(Sign::NotRead));
    EXPECT_FALSE(of(all, 1).latest);
}

TEST_F(FiveCouplings, BothSidesThatOpenAreSaidToDoSoTogether)
{
    // Two of only four would pass for a shift of all.
    for (const char* name : {"Elevator", "Left flap", "Right flap"})
        told.addCoupling(name, 0.50, kReviewBegins);
    for (int i = 0; i < 25; ++i) {
        rig();
        for (const std::size_t side : {0U, 1U})
            lookAt(side, Gap::micrometres(480 + 20 * (i / 4)));
    }
    const AirframeReview all = review();
    EXPECT_TRUE(of(all, 0).otherSideMovesToo);
    EXPECT_TRUE(of(all, 1).otherSideMovesToo);
    EXPECT_FALSE(of(all, 2).otherSideMovesToo);
}

TEST_F(FiveCouplings, PersonsAreComparedWhereBothReadTheSameJoints)
{
    AirframeInMemory alone = told;
    for (KeptReading& kept : alone.facts.readings)
        kept.reading.person = alone.facts.persons[0].id;
    EXPECT_EQ(airframeReviewOf(alone.facts, reviewPeriods(alone.facts, day).front()).measurers.personsState,
              numbers::OffsetsState::OneLevel);
    for (int i = 0; i < 15; ++i)
        rig();
    EXPECT_EQ(review().measurers.personsState, numbers::OffsetsState::Estimated) << "by their baselines";
    // The second person reads two couplings each time, 0.02 mm higher.
    for (int i = 0; i < 15; ++i) {
        rig();
        for (const std::size_t c : {0U, 2U}) {
            Reading& second = told.read(told.facts.couplings[c].id, 0.53);
            second.turn = Turn::Second;
            second.person = told.facts.persons[1].id;
        }
    }
    const AirframeReview all = review();
    EXPECT_EQ(all.measurers.personsState, numbers::OffsetsState::Estimated);
    ASSERT_EQ(all.measurers.persons.size(), 2U);
    EXPECT_GT(all.measurers.persons[1].offset->lower, 0);
    EXPECT_LT(all.measurers.persons[0].offset->upper, 0);
    EXPECT_EQ(all.counts.persons, 2);
}

TEST_F(FiveCouplings, WithoutAnyReadingMakeAReviewThatSaysSo)
{
    const AirframeInMemory empty;
    const AirframeReview none =
        airframeReviewOf(empty.facts, reviewPeriods(empty.facts, kReviewBegins).front());
    EXPECT_TRUE(none.couplings.empty());
    EXPECT_EQ(none.counts.riggings, 0);
    const AirframeReview all = review();
    EXPECT_EQ(of(all, 0).signs.front(), Sign::NotRead);
}

// Of an import: nobody was asked, and nobody has said anything.
class OutsideBeforeThePeriod : public FiveCouplings
{
protected:
    OutsideBeforeThePeriod()
    {
        for (int i = 0; i < 24; ++i) {
            rig();
            if (i != 4)
                continue;
            lookAt(0, Gap::micrometres(900));
            outside = lastOf(0);
        }
        for (RiggingRecord& record : told.facts.riggingRecords)
            record.origin = RecordOrigin::ImportedTable;
    }

    CouplingReview lastTen() const
    {
        const ReviewPeriod period{day - std::chrono::days{30}, day, {}, false, true,
                                  PeriodKind::LastRiggings};
        return of(airframeReviewOf(told.facts, period), 0);
    }

    Reading outside;
};

TEST_F(OutsideBeforeThePeriod, IsNoTickWhereNobodyHasSaidWhatItWas)
{
    const CouplingReview review = lastTen();
    EXPECT_TRUE(review.outside.empty());
    EXPECT_EQ(review.standing.says, Says::OutsideBefore);
    EXPECT_EQ(review.standing.outsideBefore, outside.when.localDay());
    EXPECT_TRUE(review.has(Sign::OutsideBefore));
    ASSERT_EQ(review.outsideBefore.size(), 1U);
    EXPECT_NEAR(review.outsideBefore.front().beyond, 0.34, 0.03);
}

TEST_F(OutsideBeforeThePeriod, IsOverWhereItWasStruckOrAFindingWasNotedOfItsCoupling)
{
    told.facts.exclusions.push_back({told.next<FactId>(), outside.id, "slip", {{}, noonOf(day)}});
    EXPECT_EQ(lastTen().standing.says, Says::Inside);
    told.facts.exclusions.clear();
    told.happen(EventKind::Finding, day);
    EXPECT_EQ(lastTen().standing.says, Says::OutsideBefore) << "of the airframe, not of this coupling";
    told.facts.events.back().coupling = outside.coupling;
    EXPECT_EQ(lastTen().standing.says, Says::Inside);
    told.facts.events.back().day = outside.when.localDay() - std::chrono::days{1};
    EXPECT_EQ(lastTen().standing.says, Says::OutsideBefore) << "before it was read outside";
}

TEST_F(OutsideBeforeThePeriod, IsOverWhereItsQuestionWasResolvedAndNotWhereSomebodyOnlySawAgain)
{
    askAndResolve(outside);
    EXPECT_EQ(lastTen().standing.says, Says::Inside);
    told.facts.questions.back().question.kind = QuestionKind::CannotSee;
    told.facts.questions.back().resolution->answered = Answer::Yes;
    EXPECT_EQ(lastTen().standing.says, Says::OutsideBefore);
}

TEST_F(OutsideBeforeThePeriod, IsOverOnceTheJointWasRefitted)
{
    told.addFitting(outside.coupling, "sleeve changed", 0.50, outside.when.localDay() + std::chrono::days{1});
    for (KeptReading& kept : told.facts.readings)
        if (kept.reading.coupling == outside.coupling && kept.reading.when > outside.when)
            kept.reading.fitting = told.facts.fittings.back().id;
    std::ranges::stable_sort(told.facts.readings, {},
                             [](const KeptReading& kept) { return kept.reading.when; });
    EXPECT_EQ(lastTen().standing.says, Says::Inside);
}

TEST_F(FiveCouplings, AReadingOutsideOfADayOnWhichAllReadHighIsToldAsOfThatDay)
{
    for (int i = 0; i < 20; ++i)
        rig();
    lookAt(0, Gap::micrometres(900));
    rig(0.12);
    for (int i = 0; i < 5; ++i)
        rig();
    const AirframeReview all = review();
    ASSERT_EQ(of(all, 0).outside.size(), 2U);
    EXPECT_FALSE(of(all, 0).outside.front().together) << "its own";
    EXPECT_TRUE(of(all, 0).outside.back().together);
}

TEST_F(FiveCouplings, TwoOutsideSideBySideOnOneRiggingNameEachOtherOnce)
{
    rig();
    lookAt(0, Gap::micrometres(900));
    lastOf(0).technique = Technique::Table;
    Reading& other = told.read(lastOf(0).coupling, 0.88);
    other.technique = Technique::Table;
    other.person = told.facts.persons[1].id;
    const AirframeReview all = review();
    ASSERT_EQ(of(all, 0).outside.size(), 2U);
    EXPECT_EQ(of(all, 0).outside.front().besides.size(), 1U);
    EXPECT_TRUE(of(all, 0).outside.back().besides.empty());
}
