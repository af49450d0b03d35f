#include "core/review/airframe_review.h"
#include "core/review/coupling_standing.h"
#include "tests/support/airframe_in_memory.h"
#include "tests/support/fixed_clock.h"

#include <algorithm>
#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

constexpr Day kFirstDay = dayOf(2026, 3, 1);
constexpr Day kRigged = dayOf(2026, 5, 2);
constexpr double kUsual = 0.50;
constexpr double kFarOff = 0.80;

class Standing : public testing::Test
{
protected:
    Standing() : flap{told.addCoupling("Left flap", kUsual, kFirstDay).id} { told.rig(kRigged); }

    CouplingHistory history() const
    {
        const AirframeFacts& facts = told.facts;
        return historyOf(flap, facts.fittings, facts.readingsOf(flap), facts.exclusions,
                         facts.frozenBaselines, facts.gauges, facts.gaugeChecks);
    }

    CouplingStanding now(Day to = kRigged, Day from = kFirstDay) const
    {
        return CouplingStandings{told.facts, from, to}.standingOf(
            *std::ranges::find(told.facts.couplings, flap, &Coupling::id), history());
    }

    ReadingId read(double gap) { return told.read(flap, gap).id; }

    void strike(ReadingId slip, Day day = kRigged)
    {
        told.facts.exclusions.push_back(
            {told.next<FactId>(), slip, "read on the wrong joint", {{}, noonOf(day)}});
    }

    void close(Day day = kRigged)
    {
        RecordClose close;
        close.id = told.next<FactId>();
        close.record = told.facts.riggingRecords.back().id;
        close.stamp.when = noonOf(day);
        told.facts.closings.push_back(close);
    }

    void ask(QuestionKind kind, std::optional<ReadingId> about, Day day = kRigged)
    {
        Question question;
        question.id = told.next<QuestionId>();
        question.kind = kind;
        question.record = told.facts.riggingRecords.back().id;
        question.coupling = flap;
        question.reading = about;
        question.stamp.when = noonOf(day);
        told.facts.questions.push_back({question, {}});
    }

    void resolve(Day day = kRigged)
    {
        QuestionStory& last = told.facts.questions.back();
        Resolution resolution;
        resolution.id = told.next<FactId>();
        resolution.question = last.question.id;
        resolution.found = "grit under the sleeve";
        resolution.stamp.when = noonOf(day);
        last.resolution = resolution;
    }

    AirframeInMemory told;
    CouplingId flap;
};

} // namespace

TEST_F(Standing, IsWhatTheLatestRiggingSays)
{
    read(kFarOff);
    close();
    told.rig(kRigged + std::chrono::days{7});
    const ReadingId last = read(kUsual);
    const CouplingStanding standing = now(kRigged + std::chrono::days{7});
    EXPECT_EQ(standing.says, Says::Inside);
    EXPECT_EQ(standing.reading->id, last);
    EXPECT_EQ(standing.verdict(), Verdict::Inside);
    EXPECT_FALSE(standing.isUnresolved);
}

TEST_F(Standing, IsOutsideForAsLongAsNobodyHasResolvedItThoughItWasReadInsideSince)
{
    const ReadingId outside = read(kFarOff);
    ask(QuestionKind::OutsideReading, outside);
    read(kUsual);
    EXPECT_EQ(now().says, Says::Outside);
    EXPECT_EQ(now().reading->id, outside);
    EXPECT_EQ(now().openQuestions, 1);
    EXPECT_TRUE(now().isUnresolved);
}

TEST_F(Standing, StaysOutsideAfterTheRecordWasClosedAndTheNextRiggingReadInside)
{
    ask(QuestionKind::OutsideReading, read(kFarOff));
    close();
    told.rig(kRigged + std::chrono::days{7});
    read(kUsual);
    EXPECT_EQ(now(kRigged + std::chrono::days{7}).says, Says::Outside);
}

TEST_F(Standing, IsOutsideInAnOpenRecordWithoutAQuestionAlsoWhenTheReadingWasSuperseded)
{
    const ReadingId wrong = read(kFarOff);
    told.read(flap, kUsual).corrects = wrong;
    EXPECT_EQ(now().says, Says::Outside);
    EXPECT_TRUE(now().isUnresolved);
    close();
    EXPECT_EQ(now().says, Says::Inside) << "the correction is the latest one that stands";
}

TEST_F(Standing, IsInsideOnceItWasResolvedAndReadAgain)
{
    ask(QuestionKind::OutsideReading, read(kFarOff));
    resolve();
    EXPECT_EQ(now().says, Says::Outside) << "nobody has read it since";
    EXPECT_FALSE(now().isUnresolved);
    read(kUsual);
    EXPECT_EQ(now().says, Says::Inside);
    EXPECT_EQ(now().among, 1);
}

TEST_F(Standing, IsTheGravestReadingOfTheRiggingWhoeverTookIt)
{
    read(kUsual);
    told.read(flap, kFarOff).turn = Turn::Second;
    close();
    EXPECT_EQ(now().says, Says::Outside);
    EXPECT_EQ(now().among, 2);
}

TEST_F(Standing, IsAskedWhileAnythingElseAboutItIsOpen)
{
    read(kUsual);
    ask(QuestionKind::CannotSee, {});
    const CouplingStanding standing = now();
    EXPECT_EQ(standing.says, Says::Asked);
    EXPECT_EQ(standing.asked, QuestionKind::CannotSee);
    EXPECT_TRUE(standing.reading) << "the latest one is told beside it";
    EXPECT_EQ(standing.verdict(), std::nullopt) << "and lends it no colour";
}

TEST_F(Standing, IsOutsideBeforeItIsAsked)
{
    ask(QuestionKind::CannotSee, {});
    ask(QuestionKind::OutsideReading, read(kFarOff));
    EXPECT_EQ(now().says, Says::Outside);
    EXPECT_EQ(now().openQuestions, 2);
}

TEST_F(Standing, IsNotKnownBeforeItWasReadOrSinceItWasRefitted)
{
    EXPECT_EQ(now().says, Says::NotRead);
    read(kUsual);
    EXPECT_EQ(now().says, Says::Inside);
    told.addFitting(flap, "sleeve refitted", kUsual, kRigged + std::chrono::days{3});
    EXPECT_EQ(now(kRigged + std::chrono::days{4}).says, Says::NotRead);
}

TEST_F(Standing, SaysNothingFromBeforeThePeriodButWhatIsUnresolved)
{
    ask(QuestionKind::AnsweredNo, {});
    read(kUsual);
    close();
    const Day later = kRigged + std::chrono::days{30};
    EXPECT_EQ(now(later, later).says, Says::Stopped);
    resolve();
    EXPECT_EQ(now(later, later).says, Says::NotRead);
}

TEST_F(Standing, IsThatOfTheDayLookedBackOn)
{
    ask(QuestionKind::OutsideReading, read(kFarOff));
    close();
    resolve(kRigged + std::chrono::days{5});
    told.rig(kRigged + std::chrono::days{7});
    read(kUsual);
    EXPECT_EQ(now(kRigged).says, Says::Outside);
    EXPECT_TRUE(now(kRigged).isUnresolved);
    EXPECT_EQ(now(kRigged + std::chrono::days{7}).says, Says::Inside);
    EXPECT_EQ(now(kRigged - std::chrono::days{1}).says, Says::NotRead);
}

TEST_F(Standing, HasNoVerdictWhenTheLastReadingFoundItPartSeated)
{
    read(kUsual);
    told.read(flap, kUsual).state = SeatState::PartSeated;
    EXPECT_EQ(now().says, Says::PartSeated);
    EXPECT_EQ(now().judgement, std::nullopt);
}

TEST_F(Standing, HasNoTickBesideAMovement)
{
    CouplingStanding standing;
    standing.says = Says::Inside;
    standing.standBeside(Says::Moved);
    EXPECT_EQ(standing.says, Says::Moved);
    standing.says = Says::Inside;
    standing.standBeside(Says::WasOutside);
    EXPECT_EQ(standing.says, Says::WasOutside);
    standing.says = Says::NearEdge;
    standing.standBeside(Says::Moved);
    EXPECT_EQ(standing.says, Says::NearEdge) << "what is said already is graver";
}

TEST_F(Standing, IsTheReviewsWithWhatBefellTheCouplingInThePeriod)
{
    read(kFarOff);
    close();
    Day day = kRigged;
    for (int i = 0; i < 3; ++i) {
        told.rig(day += std::chrono::days{7});
        read(kUsual);
        close(day);
    }
    const AirframeReview review = airframeReviewOf(told.facts, reviewPeriods(told.facts, day).front());
    const CouplingReview* reviewed = review.find(flap);
    ASSERT_TRUE(reviewed);
    EXPECT_TRUE(reviewed->has(Sign::Outside));
    EXPECT_EQ(reviewed->standing.says, Says::WasOutside);
}

TEST_F(Standing, IsThatOfTheOthersOnceAReadingIsStruck)
{
    read(kUsual);
    const ReadingId slip = read(0.55);
    const Says before = now().says;
    strike(slip);
    EXPECT_NE(before, Says::Inside);
    EXPECT_EQ(now().says, Says::Inside);
    EXPECT_EQ(now().among, 1);
}

TEST_F(Standing, IsNotReadWhenTheOnlyReadingIsStruck)
{
    strike(read(kUsual));
    EXPECT_EQ(now().says, Says::NotRead);
}

TEST_F(Standing, StaysOutsideWhenTheOutsideReadingIsStruckAndNobodyHasResolvedIt)
{
    const ReadingId slip = read(kFarOff);
    ask(QuestionKind::OutsideReading, slip);
    read(kUsual);
    strike(slip);
    EXPECT_EQ(now().says, Says::Outside);
    EXPECT_TRUE(now().isUnresolved);
    resolve();
    EXPECT_EQ(now().says, Says::Inside);
}

TEST_F(Standing, TakesAResolutionForLaterByTheOrderOfSavingAndNotByItsId)
{
    const ReadingId outside = read(kFarOff);
    ask(QuestionKind::OutsideReading, outside);
    resolve();
    told.facts.questions.back().resolution->id = FactId{{0, 1}}; // made under another clock
    read(kUsual);
    EXPECT_EQ(now().says, Says::Inside);
    EXPECT_EQ(now().among, 1);
}

TEST_F(Standing, OfOneWithoutAGapSaysSoAndNotThatItsBandOrReadingIsMissing)
{
    Coupling& itself = told.facts.couplings.front();
    itself.kind = CouplingKind::ByItself;
    EXPECT_EQ(now().says, Says::NoGap);
    EXPECT_FALSE(now().isUnresolved);
    read(kUsual); // of when it was another kind
    EXPECT_EQ(now().says, Says::NoGap);
    EXPECT_FALSE(now().verdict());
    ask(QuestionKind::AnsweredNo, {});
    EXPECT_EQ(now().says, Says::Stopped) << "the gravest that nobody has resolved is said first";
    EXPECT_TRUE(now().isUnresolved);
    resolve();
    EXPECT_EQ(now().says, Says::NoGap);
    ask(QuestionKind::OutsideReading, read(kFarOff));
    EXPECT_EQ(now().says, Says::Outside) << "what was read outside stands until it is resolved";
}

TEST_F(Standing, OfOneWithoutAGapIsTheReviewsAndBringsNoSignOfAnythingMissing)
{
    told.facts.couplings.front().kind = CouplingKind::ByItself;
    told.facts.readings.clear();
    close();
    const AirframeReview review = airframeReviewOf(told.facts, reviewPeriods(told.facts, kRigged).front());
    ASSERT_EQ(review.couplings.size(), 1U);
    const CouplingReview& one = review.couplings.front();
    EXPECT_EQ(one.standing.says, Says::NoGap);
    EXPECT_TRUE(one.signs.empty());
    EXPECT_EQ(one.riggingsMissed, 0);
    EXPECT_FALSE(one.band);
    EXPECT_FALSE(one.movement);
    EXPECT_TRUE(one.fitting) << "parts of it are changed too";
}

TEST_F(Standing, OfARiggingFromPaperIsThatOfTheFittingOfItsDayThoughItWasRefittedBeforeItWasTypedIn)
{
    read(kUsual);
    RecordContent paper;
    paper.record = told.facts.riggingRecords.back();
    paper.record.enteredBy = told.facts.persons[0].id;
    paper.readings = {told.facts.readings.back().reading};
    paper.close = RecordClose{};
    paper.close->stamp.when = noonOf(kRigged + std::chrono::days{9});
    told.addFitting(flap, "sleeve refitted", kUsual, kRigged + std::chrono::days{3});
    const CouplingStanding standing =
        CouplingStandings{paper, {}}.standingOf(told.facts.couplings.front(), history());
    EXPECT_EQ(standing.says, Says::Inside);
    EXPECT_TRUE(standing.reading);
}

TEST_F(Standing, OfEveryJointOfACircuitIsAskedWhileASurfaceOfItWasWrongOrNotSeen)
{
    read(kUsual);
    Surface surface;
    surface.id = told.next<SurfaceId>();
    surface.kind = SurfaceKind::Flap;
    told.facts.surfaces.push_back(surface);
    ask(QuestionKind::SurfaceDoubt, {});
    told.facts.questions.back().question.coupling.reset();
    told.facts.questions.back().question.surface = surface.id;
    told.facts.couplings.front().circuit = Circuit::Rudder;
    EXPECT_EQ(now().says, Says::Inside) << "another circuit";
    told.facts.couplings.front().circuit = Circuit::Flap;
    EXPECT_EQ(now().says, Says::Asked);
    EXPECT_EQ(now().asked, QuestionKind::SurfaceDoubt);
    EXPECT_TRUE(now().isUnresolved);
    EXPECT_EQ(now().verdict(), std::nullopt) << "no green beside it";
    EXPECT_EQ(now().openQuestions, 0) << "it is the surface's question, and counted there";
    told.facts.questions.back().question.surfaceAnswer = Answer::No;
    EXPECT_EQ(now().says, Says::Stopped) << "no milder than the question itself";
    resolve();
    EXPECT_EQ(now().says, Says::Inside);
}

TEST_F(Standing, IsAskedWhileSomebodyAsksInWordsOfTheirOwn)
{
    read(kUsual);
    ask(QuestionKind::Asked, {});
    EXPECT_EQ(now().says, Says::Asked);
    EXPECT_EQ(now().asked, QuestionKind::Asked);
    EXPECT_EQ(now().openQuestions, 1);
    resolve();
    EXPECT_EQ(now().says, Says::Inside);
}

TEST_F(Standing, StaysOutsideWhenOnlyWhatSomebodyAskedIsAnswered)
{
    const ReadingId outside = read(kFarOff);
    close();
    ask(QuestionKind::Asked, outside, kRigged + std::chrono::days{1});
    resolve(kRigged + std::chrono::days{2});
    EXPECT_EQ(now(kRigged + std::chrono::days{3}).says, Says::Outside);
}

TEST_F(Standing, IsThatOfTheGraverQuestionBesideWhatSomebodyAsks)
{
    read(kUsual);
    ask(QuestionKind::Asked, {});
    ask(QuestionKind::CannotSee, {});
    EXPECT_EQ(now().asked, QuestionKind::CannotSee);
    EXPECT_EQ(now().openQuestions, 2);
}

TEST_F(Standing, NamesTheSurfaceThatWasWrongAndWhetherItIsTheJointsOwn)
{
    read(kUsual);
    Coupling& left = told.facts.couplings.front();
    left.circuit = Circuit::Aileron;
    left.side = Side::Left;
    const auto doubt = [this](const char* name, SurfaceKind kind, Side side) {
        Surface surface;
        surface.id = told.next<SurfaceId>();
        surface.name = name;
        surface.kind = kind;
        surface.side = side;
        told.facts.surfaces.push_back(surface);
        ask(QuestionKind::SurfaceDoubt, {});
        told.facts.questions.back().question.coupling.reset();
        told.facts.questions.back().question.surface = surface.id;
    };
    EXPECT_EQ(now().surface, std::nullopt);
    doubt("Rudder", Circuit::Rudder, Side::None);
    EXPECT_EQ(now().surface, std::nullopt);
    doubt("Mixer", Circuit::Other, Side::None);
    EXPECT_EQ(now().surface, (DoubtedSurface{"Mixer", SurfaceTie::Unknown}));
    doubt("Right aileron", Circuit::Aileron, Side::Right);
    EXPECT_EQ(now().surface, (DoubtedSurface{"Right aileron", SurfaceTie::Circuit}));
    doubt("Left aileron", Circuit::Aileron, Side::Left);
    EXPECT_EQ(now().surface, (DoubtedSurface{"Left aileron", SurfaceTie::Own})) << "its own before another";
    ask(QuestionKind::AnsweredNo, {});
    EXPECT_EQ(now().asked, QuestionKind::AnsweredNo);
    EXPECT_EQ(now().surface, std::nullopt) << "what is asked is about the joint";
}

TEST_F(Standing, OfAReviewNamesTheSurfaceThatItsFirstQuestionIsAbout)
{
    read(kUsual);
    told.facts.couplings.front().circuit = Circuit::Aileron;
    told.facts.couplings.front().side = Side::Left;
    Surface right;
    right.id = told.next<SurfaceId>();
    right.name = "Right aileron";
    right.kind = Circuit::Aileron;
    right.side = Side::Right;
    told.facts.surfaces.push_back(right);
    ask(QuestionKind::SurfaceDoubt, {});
    told.facts.questions.back().question.coupling.reset();
    told.facts.questions.back().question.surface = right.id;
    const AirframeReview review = airframeReviewOf(told.facts, reviewPeriods(told.facts, kRigged).front());
    ASSERT_EQ(review.couplings.front().openQuestions.size(), 1U);
    EXPECT_EQ(review.couplings.front().askedSurface, (DoubtedSurface{"Right aileron", SurfaceTie::Circuit}));
}
