// The stories of the demonstration, found again by the program from the readings alone.

#include "core/review/airframe_review.h"
#include "tests/demo/demo_file.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <map>

using namespace rig;
using namespace rig::test;

namespace {

class Stories : public DemoFile
{
protected:
    // As it stood when somebody looked on that day: the annual that is now past was still to come.
    static AirframeReview lookedAtOn(Day today, const std::string& registration)
    {
        AirframeFacts then = facts.at(registration);
        for (const Event& event : then.events)
            if (event.kind == EventKind::Annual && event.day > today &&
                (!then.airframe.annualDue || event.day < *then.airframe.annualDue))
                then.airframe.annualDue = event.day;
        return airframeReviewOf(then, reviewPeriods(then, today).front());
    }
    static AirframeReview wholeFile(const std::string& registration)
    {
        const AirframeFacts& all = facts.at(registration);
        return airframeReviewOf(all, reviewPeriods(all, dayOf(2026, 11, 1)).back());
    }
    static const CouplingReview& in(const AirframeReview& review, const std::string& name)
    {
        return *std::ranges::find(review.couplings, name,
                                  [](const CouplingReview& one) { return one.coupling.name; });
    }
    static PersonId person(const std::string& name)
    {
        const auto& persons = facts.at("QX-17").persons;
        return std::ranges::find(persons, name, &Person::name)->id;
    }
    static GaugeId gauge(const std::string& name)
    {
        const auto& gauges = facts.at("QX-17").gauges;
        return std::ranges::find(gauges, name, &Gauge::name)->id;
    }
    static MeasuredOffset offsetOf(const AirframeReview& review, const std::string& name)
    {
        return *std::ranges::find(review.measurers.persons, person(name), &MeasuredBy<PersonId>::who)->offset;
    }
};

} // namespace

TEST_F(Stories, TheLeftFlapOpensFromAboutRigging236AndStandsOutFirst)
{
    const AirframeReview review = lookedAtOn(dayOf(2025, 10, 27), "QX-17");
    EXPECT_EQ(review.couplings.front().coupling.name, "Left flap");
    const CouplingReview& flap = review.couplings.front();
    ASSERT_TRUE(flap.has(Sign::Drift));
    const FittingMovement& movement = *flap.movement;
    const PathChangeTold& drift = *movement.told();
    EXPECT_EQ(drift.kind, ChangeKind::Drift);
    EXPECT_TRUE(drift.isUp());
    EXPECT_NEAR(drift.at, 236, 8);
    EXPECT_LE(drift.atLower, 236);
    EXPECT_GE(drift.atUpper, 236);
    EXPECT_LE(drift.rate->interval.lower, 0.23) << "what the scene wears it by, mm per 100 riggings";
    EXPECT_GE(drift.rate->interval.upper, 0.23);
    EXPECT_GT(drift.rate->interval.lower, 0);
    ASSERT_TRUE(movement.forecast);
    EXPECT_GT(movement.forecast->chanceOutside, 0.5);
    EXPECT_NEAR(movement.forecast->riggings, 17, 1) << "54 in the year before, 116 days to the annual";
    EXPECT_FALSE(flap.otherSideMovesToo);
    for (const CouplingReview& other : review.couplings)
        if (&other != &flap && other.movement && other.movement->forecast) {
            EXPECT_FALSE(other.movement->told()) << other.coupling.name;
            EXPECT_LT(other.movement->forecast->chanceOutside, 0.1) << other.coupling.name;
        }
}

TEST_F(Stories, TheLeftFlapIsStillBeforeItWearsAndAfterItsRefit)
{
    EXPECT_FALSE(in(lookedAtOn(dayOf(2024, 10, 28), "QX-17"), "Left flap").movement->told());
    const AirframeReview now = lookedAtOn(dayOf(2026, 10, 31), "QX-17");
    const CouplingReview& flap = in(now, "Left flap");
    EXPECT_EQ(flap.fittingNumber, 2);
    EXPECT_FALSE(flap.movement->told());
    EXPECT_TRUE(flap.firstBand) << "still shown beside the new one";
    ASSERT_EQ(now.fittings.size(), 1U);
    EXPECT_EQ(now.fittings[0].fitting.reason, "ball and plunger replaced");
    EXPECT_TRUE(now.fittings[0].bandBefore);
}

TEST_F(Stories, TheElevatorsScatterHasDoubledInAutumn2025)
{
    const AirframeReview review = lookedAtOn(dayOf(2025, 10, 27), "QX-17");
    EXPECT_EQ(review.couplings[1].coupling.name, "Elevator");
    const CouplingReview& elevator = review.couplings[1];
    ASSERT_TRUE(elevator.has(Sign::ScatterGrew));
    EXPECT_NEAR(elevator.movement->scatter->now / elevator.movement->scatter->before, 2, 0.5);
    EXPECT_FALSE(elevator.movement->told()) << "the mean stays";
    EXPECT_FALSE(in(lookedAtOn(dayOf(2026, 10, 31), "QX-17"), "Elevator").has(Sign::ScatterGrew))
        << "it was cleaned";
}

TEST_F(Stories, LeafSetBReadHighOnEveryCouplingOnThreeDays)
{
    const AirframeReview review = lookedAtOn(dayOf(2025, 10, 27), "QX-17");
    ASSERT_EQ(review.sharedShifts.size(), 1U);
    const SharedShiftStory& story = review.sharedShifts.front();
    EXPECT_EQ(story.gauge, gauge("B"));
    EXPECT_FALSE(story.person) << "three different people read";
    EXPECT_NEAR(story.millimetres, 0.033, 0.01) << "read in steps of 0.05 mm";
    EXPECT_TRUE(story.gaugeInDoubt);
    std::vector<Day> days;
    for (const DayShift& day : story.days)
        days.push_back(day.when.localDay());
    EXPECT_EQ(days, (std::vector{dayOf(2025, 7, 11), dayOf(2025, 7, 13), dayOf(2025, 7, 19)}));
}

TEST_F(Stories, TheSharedShiftIsSeenBeforeTheSetIsPutInQuarantineAndBlamesNoCoupling)
{
    AirframeFacts then = facts.at("QX-17");
    std::erase_if(then.gaugeChecks, [](const GaugeCheck& check) { return check.quarantineFrom.has_value(); });
    const AirframeReview review = airframeReviewOf(then, reviewPeriods(then, dayOf(2025, 7, 19)).front());
    ASSERT_EQ(review.sharedShifts.size(), 1U);
    EXPECT_GE(review.sharedShifts.front().days.size(), 2U) << "read in steps of 0.05 mm";
    for (const DayShift& day : review.sharedShifts.front().days)
        EXPECT_GE(day.when.localDay(), dayOf(2025, 7, 11)) << "and no other";
    EXPECT_FALSE(review.sharedShifts.front().gauge) << "it read as the others do until then";
    EXPECT_FALSE(review.sharedShifts.front().gaugeInDoubt);
    for (const CouplingReview& coupling : review.couplings)
        EXPECT_FALSE(coupling.movement && coupling.movement->told()) << coupling.coupling.name;
}

TEST_F(Stories, TwentyFourReadingsOfLeafSetBAreInDoubt)
{
    const AirframeReview review = lookedAtOn(dayOf(2025, 10, 27), "QX-17");
    const auto b =
        std::ranges::find(review.gauges, gauge("B"), [](const GaugeReview& one) { return one.gauge.id; });
    ASSERT_NE(b, review.gauges.end());
    EXPECT_EQ(b->inDoubt, 24);
    EXPECT_TRUE(b->isQuarantined);
}

TEST_F(Stories, IverReadsHighAndValeReadsLow)
{
    const AirframeReview review = wholeFile("QX-17");
    EXPECT_EQ(review.measurers.personsState, numbers::OffsetsState::Estimated);
    EXPECT_GT(offsetOf(review, "J. Iver").lower, 0);
    EXPECT_LT(offsetOf(review, "T. Vale").upper, 0);
    EXPECT_FALSE(offsetOf(review, "M. Oren").isShown());
    EXPECT_FALSE(offsetOf(review, "R. Sand").isShown());
    // The scene gives him 0.012 mm and all four 0.0025 mm on average.
    EXPECT_LE(offsetOf(review, "J. Iver").lower, 0.0095);
    EXPECT_GE(offsetOf(review, "J. Iver").upper, 0.0095);
}

TEST_F(Stories, TheRightAileronOfQx42WasFoundPartSeatedBelowItsBand)
{
    const AirframeReview review = lookedAtOn(dayOf(2025, 10, 27), "QX-42");
    const CouplingReview& aileron = in(review, "Right aileron");
    ASSERT_EQ(aileron.outside.size(), 1U);
    const OutsideStory& story = aileron.outside.front();
    EXPECT_EQ(story.reading.when.localDay(), dayOf(2025, 4, 20));
    EXPECT_EQ(story.judgement.direction, Direction::Below);
    ASSERT_TRUE(story.corrected);
    EXPECT_EQ(story.corrected->state, SeatState::PartSeated);
    ASSERT_TRUE(story.question && story.question->resolution);
    EXPECT_EQ(story.afterwards.size(), 1U);
    EXPECT_TRUE(aileron.has(Sign::Outside));
}

TEST_F(Stories, TheGapOfTheRightAirbrakeOfQx88IsNoWitness)
{
    const CouplingReview airbrake = in(lookedAtOn(dayOf(2025, 10, 27), "QX-88"), "Right airbrake");
    EXPECT_TRUE(airbrake.has(Sign::GapIsNoWitness));
    EXPECT_EQ(airbrake.latestJudgement->verdict, Verdict::CannotTell);
    EXPECT_EQ(airbrake.counts.inside, 0);
}

TEST_F(Stories, TheSleeveOfTheRightAirbrakeOfQx42WasReadjusted)
{
    const AirframeReview review = lookedAtOn(dayOf(2024, 10, 28), "QX-42");
    const CouplingReview& airbrake = in(review, "Right airbrake");
    EXPECT_EQ(airbrake.fittingNumber, 2);
    ASSERT_EQ(airbrake.outside.size(), 1U);
    EXPECT_EQ(airbrake.outside.front().judgement.direction, Direction::Above);
    const auto change = std::ranges::find(review.fittings, std::string{"sleeve readjusted"},
                                          [](const FittingChange& one) { return one.fitting.reason; });
    ASSERT_NE(change, review.fittings.end());
    EXPECT_LT(change->bandBefore->median, change->band->median);
}

TEST_F(Stories, TrimHasNoBandAndTheMissingMirrorIsStillAsked)
{
    const AirframeReview qx17 = lookedAtOn(dayOf(2026, 10, 31), "QX-17");
    EXPECT_TRUE(in(qx17, "Trim").has(Sign::NoBand));
    EXPECT_EQ(in(qx17, "Trim").counts.noBand, in(qx17, "Trim").counts.all());
    const AirframeReview qx42 = lookedAtOn(dayOf(2026, 10, 31), "QX-42");
    EXPECT_EQ(qx42.couplings.front().coupling.name, "Left aileron");
    EXPECT_TRUE(qx42.couplings.front().has(Sign::OpenQuestion));
    EXPECT_EQ(qx42.counts.stillOpen, 1);
}

TEST_F(Stories, NineReadingsFellOutsideAndEachIsTold)
{
    std::size_t told = 0;
    for (const auto& [registration, all] : facts)
        for (const CouplingReview& coupling : wholeFile(registration).couplings)
            told += coupling.outside.size();
    EXPECT_EQ(told, 9U);
}

// Nobody of the demonstration takes a joint apart before somebody was called and the cause was found.
TEST_F(Stories, EveryReadingOutsideWasLeftAsItWasAndSomebodyWasCalledBeforeTheJointWasTouched)
{
    int told = 0;
    for (const char* registration : {"QX-17", "QX-42", "QX-88"}) {
        const AirframeFacts& all = facts.at(registration);
        for (const QuestionStory& story : all.questions) {
            if (story.question.kind == QuestionKind::OutsideReading && story.resolution) {
                EXPECT_EQ(story.resolution->person, person("A. Quill")) << story.resolution->found;
            }
        }
        for (const RecordClose& close : all.closings) {
            const std::size_t outside = close.note.find(" outside");
            if (outside == std::string::npos)
                continue;
            ++told;
            EXPECT_NE(close.note.find("stopped, left as it was, A. Quill called"), std::string::npos)
                << close.note;
            EXPECT_LT(close.note.find("A. Quill called"), close.note.find("Then ")) << close.note;
            EXPECT_NE(close.note.find("looked at, pulled, read"), std::string::npos) << close.note;
        }
    }
    EXPECT_EQ(told, 8);
}
