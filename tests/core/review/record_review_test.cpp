#include "core/airframe/id_source.h"
#include "core/review/layoffs.h"
#include "core/review/record_review.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::literals;

namespace {

// A record of one coupling, written down fact by fact. The gap's verdict is decided by the test.
class Record
{
public:
    Record()
    {
        m_coupling.id.bytes = m_ids.next(0);
        m_coupling.name = "Left flap";
        m_coupling.circuit = Circuit::Flap;
        Surface trim;
        trim.id.bytes = m_ids.next(0);
        trim.name = "Trim";
        trim.kind = SurfaceKind::Trim;
        m_surfaces.push_back(trim);
        for (const SurfaceCheckKind kind : checksOf(trim))
            m_content.surfaceChecks.push_back({{}, {}, trim.id, kind, Answer::Yes, {}, {}, {}});
    }

    Record& answer(CheckKind kind, Answer answer, Turn turn)
    {
        Check check;
        check.id.bytes = m_ids.next(0);
        check.coupling = m_coupling.id;
        check.kind = kind;
        check.answer = answer;
        check.turn = turn;
        m_content.checks.push_back(check);
        return *this;
    }

    Record& by(PersonId person)
    {
        m_content.checks.back().person = person;
        return *this;
    }

    Record& lookAndPull(Turn turn)
    {
        for (const CheckKind kind :
             {CheckKind::BallInSocket, CheckKind::PlungerHome, CheckKind::SleeveAtStop, CheckKind::Pull})
            answer(kind, Answer::Yes, turn);
        if (turn == Turn::First)
            answer(CheckKind::Secured, Answer::Yes, turn);
        return *this;
    }

    Record& ask(QuestionKind kind)
    {
        QuestionStory story;
        story.question.id.bytes = m_ids.next(0);
        story.question.kind = kind;
        story.question.coupling = m_coupling.id;
        m_content.questions.push_back(story);
        return *this;
    }

    Record& about(CheckKind check)
    {
        m_content.questions.back().question.check = check;
        return *this;
    }

    Record& asFound()
    {
        m_content.readings.back().state = SeatState::PartSeated;
        return *this;
    }

    Record& bySecond()
    {
        m_content.readings.back().turn = Turn::Second;
        return *this;
    }

    Record& aboutTheReading()
    {
        m_content.questions.back().question.reading = lastReading();
        return *this;
    }

    // Somebody has been at the coupling, so it starts again at the look.
    Record& resolve()
    {
        m_content.questions.back().resolution = Resolution{};
        return interrupt();
    }

    Record& trySurface(Answer answer)
    {
        SurfaceCheck check;
        check.id.bytes = m_ids.next(0);
        check.surface = m_surfaces.front().id;
        check.kind = SurfaceCheckKind::HoldsSetting;
        check.answer = answer;
        m_content.surfaceChecks.push_back(check);
        return *this;
    }

    Record& forgetCalls()
    {
        std::erase_if(m_content.surfaceChecks, [](const SurfaceCheck& one) { return isCall(one.kind); });
        return *this;
    }

    Record& call(SurfaceCheckKind way, rig::Movement seen)
    {
        SurfaceCheck check;
        check.id.bytes = m_ids.next(0);
        check.surface = m_surfaces.front().id;
        check.kind = way;
        check.answer = Answer::Yes;
        check.seen = seen;
        m_content.surfaceChecks.push_back(check);
        return *this;
    }

    Record& askAboutSurface()
    {
        QuestionStory story;
        story.question.kind = QuestionKind::SurfaceDoubt;
        story.question.surface = m_surfaces.front().id;
        story.question.surfaceCheck = SurfaceCheckKind::HoldsSetting;
        m_content.questions.push_back(story);
        return *this;
    }

    Record& closeSurfaceQuestion()
    {
        Resolution resolution;
        resolution.id.bytes = m_ids.next(0);
        m_content.questions.back().resolution = resolution;
        return *this;
    }

    Record& withoutSurfaces()
    {
        m_surfaces.clear();
        return *this;
    }

    // The surface is one that the coupling moves, and was tried whole.
    Record& tryFlap()
    {
        m_surfaces.front().kind = SurfaceKind::Flap;
        for (const SurfaceCheckKind kind : checksOf(m_surfaces.front())) {
            SurfaceCheck check;
            check.id.bytes = m_ids.next(0);
            check.surface = m_surfaces.front().id;
            check.kind = kind;
            check.answer = Answer::Yes;
            m_content.surfaceChecks.push_back(check);
        }
        return *this;
    }

    Record& closeQuestion()
    {
        m_content.questions.back().resolution = Resolution{};
        m_content.questions.back().resolution->id.bytes = m_ids.next(0);
        return *this;
    }

    Record& ofKind(CouplingKind kind, CouplingParts parts)
    {
        m_coupling.kind = kind;
        m_coupling.parts = parts;
        return *this;
    }

    Record& feelPlay()
    {
        JointPlay play;
        play.id.bytes = m_ids.next(0);
        play.coupling = m_coupling.id;
        play.along.felt = PlayFelt::None;
        m_content.jointPlays.push_back(play);
        return *this;
    }

    Record& ofCircuit(Circuit circuit)
    {
        m_coupling.circuit = circuit;
        return *this;
    }

    // Put right on paper, a while after it was measured.
    Record& correct(Gap enters)
    {
        read(enters, lastReading());
        m_content.readings.back().stamp.when.utcSeconds = 60;
        return *this;
    }

    Record& onlyLookedAtSurface()
    {
        m_content.surfaceChecks.pop_back();
        return *this;
    }

    Record& asFirstOfSeason()
    {
        m_isFirstOfSeason = true;
        return *this;
    }

    Record& tick(TickKind kind)
    {
        m_content.ticks.push_back({{}, {}, kind, {}, {}});
        return *this;
    }

    Record& read(Gap enters, std::optional<ReadingId> corrects = {})
    {
        Reading reading;
        reading.id.bytes = m_ids.next(0);
        reading.coupling = m_coupling.id;
        reading.interval = {enters, enters + 50_um};
        reading.corrects = corrects;
        m_content.readings.push_back(reading);
        return *this;
    }

    Record& strike()
    {
        m_content.exclusions.push_back({{}, lastReading(), "read on the wrong joint", {}});
        return *this;
    }

    Record& interrupt()
    {
        Interruption interruption;
        interruption.id.bytes = m_ids.next(0);
        interruption.coupling = m_coupling.id;
        m_content.interruptions.push_back(interruption);
        return *this;
    }

    ReadingId lastReading() const { return m_content.readings.back().id; }

    RecordReview review(Verdict verdict = Verdict::Inside) const
    {
        return reviewWith([verdict](const Reading&) { return verdict; });
    }

    template <typename Function> RecordReview reviewWith(Function verdictOf) const
    {
        const std::vector<Coupling> couplings{m_coupling};
        return reviewOf(m_content, {couplings, m_surfaces, m_isFirstOfSeason},
                        [&verdictOf](const Reading& reading) {
                            Judgement judgement;
                            judgement.verdict = verdictOf(reading);
                            return judgement;
                        });
    }

    static std::vector<OpenItemKind> kinds(const RecordReview& review)
    {
        std::vector<OpenItemKind> all;
        for (const OpenItem& item : review.openItems)
            all.push_back(item.kind);
        return all;
    }

private:
    IdSource m_ids{7};
    Coupling m_coupling;
    std::vector<Surface> m_surfaces; // one, gone through
    RecordContent m_content;
    bool m_isFirstOfSeason = false;
};

using Kinds = std::vector<OpenItemKind>;

} // namespace

TEST(RecordReview, IsNeverCompleteWithoutCouplings)
{
    EXPECT_FALSE(reviewOf({}, {}, {}).mayCloseComplete());
}

TEST(RecordReview, TellsWhereTheSecondPersonWhoLookedIsNotTheOneWhoPulled)
{
    Record record;
    record.lookAndPull(Turn::First).read(600_um).lookAndPull(Turn::Second);
    EXPECT_TRUE(record.review().mayCloseComplete());
    record.answer(CheckKind::Pull, Answer::Yes, Turn::Second).by(PersonId{{7}});
    EXPECT_EQ(Record::kinds(record.review()), Kinds{OpenItemKind::SecondInParts});
    EXPECT_FALSE(record.review().mayCloseComplete());
}

TEST(RecordReview, NamesTheStepThatIsMissing)
{
    Record record;
    EXPECT_EQ(Record::kinds(record.review()), (Kinds{OpenItemKind::NotLooked, OpenItemKind::NoSecondPerson}));
    for (const CheckKind kind : {CheckKind::BallInSocket, CheckKind::PlungerHome, CheckKind::SleeveAtStop})
        record.answer(kind, Answer::Yes, Turn::First);
    EXPECT_EQ(Record::kinds(record.review()),
              (Kinds{OpenItemKind::NotMeasured, OpenItemKind::NoSecondPerson}));
    record.read(600_um);
    EXPECT_EQ(Record::kinds(record.review()), (Kinds{OpenItemKind::NotPulled, OpenItemKind::NoSecondPerson}));
    record.answer(CheckKind::Pull, Answer::Yes, Turn::First);
    EXPECT_EQ(Record::kinds(record.review()),
              (Kinds{OpenItemKind::NotSecured, OpenItemKind::NoSecondPerson}));
    record.answer(CheckKind::Secured, Answer::Yes, Turn::First);
    EXPECT_EQ(Record::kinds(record.review()), Kinds{OpenItemKind::NoSecondPerson});
    EXPECT_FALSE(record.review().mayCloseComplete());
    record.lookAndPull(Turn::Second);
    EXPECT_TRUE(record.review().openItems.empty());
    EXPECT_TRUE(record.review().mayCloseComplete());
}

TEST(RecordReview, AnOutsideReadingStaysOpenAfterALaterInsideOne)
{
    Record record;
    record.lookAndPull(Turn::First).read(900_um).read(600_um).lookAndPull(Turn::Second);
    const RecordReview review = record.reviewWith([](const Reading& reading) {
        return reading.interval.enters == 900_um ? Verdict::Outside : Verdict::Inside;
    });
    EXPECT_EQ(Record::kinds(review), Kinds{OpenItemKind::OutsideReading});
    EXPECT_EQ(review.couplings.front().verdict, Verdict::Outside);
    EXPECT_FALSE(review.mayCloseComplete());
}

TEST(RecordReview, AnOutsideReadingStaysOpenEvenWhenItIsCorrected)
{
    Record record;
    record.lookAndPull(Turn::First).read(900_um);
    record.read(600_um, record.lastReading()).lookAndPull(Turn::Second);
    const RecordReview review = record.reviewWith([](const Reading& reading) {
        return reading.interval.enters == 900_um ? Verdict::Outside : Verdict::Inside;
    });
    EXPECT_EQ(Record::kinds(review), Kinds{OpenItemKind::OutsideReading});
    EXPECT_EQ(review.couplings.front().verdict, Verdict::Inside) << "the row shows the reading that counts";
}

TEST(RecordReview, AnOutsideReadingStaysInSightAfterAnInterruption)
{
    Record record;
    record.lookAndPull(Turn::First).read(900_um).interrupt();
    const RecordReview review = record.review(Verdict::Outside);
    EXPECT_TRUE(review.couplings.front().outside);
    EXPECT_FALSE(review.couplings.front().reading) << "it has to be read anew";
    EXPECT_EQ(Record::kinds(review),
              (Kinds{OpenItemKind::OutsideReading, OpenItemKind::NotLooked, OpenItemKind::NoSecondPerson}));
}

TEST(RecordReview, ADoubtBlocksTheCloseAlsoAfterAYes)
{
    Record record;
    record.answer(CheckKind::BallInSocket, Answer::No, Turn::First)
        .lookAndPull(Turn::First)
        .read(600_um)
        .lookAndPull(Turn::Second);
    EXPECT_EQ(Record::kinds(record.review()), Kinds{OpenItemKind::Doubted});
    EXPECT_FALSE(record.review().mayCloseComplete());
}

TEST(RecordReview, WhatCouldNotBeSeenBlocksTheCloseAndCannotTellUntilSomebodyHasSeenIt)
{
    Record record;
    record.lookAndPull(Turn::First)
        .answer(CheckKind::PlungerHome, Answer::CannotSee, Turn::First)
        .read(600_um)
        .lookAndPull(Turn::Second);
    const RecordReview review = record.review();
    ASSERT_EQ(Record::kinds(review), Kinds{OpenItemKind::NotSeen});
    EXPECT_EQ(review.openItems.front().check, CheckKind::PlungerHome);
    EXPECT_EQ(review.couplings.front().verdict, Verdict::CannotTell);
    EXPECT_EQ(record.review(Verdict::Outside).couplings.front().verdict, Verdict::Outside);
    EXPECT_FALSE(review.mayCloseComplete());
    record.answer(CheckKind::PlungerHome, Answer::Felt, Turn::First);
    EXPECT_TRUE(record.review().mayCloseComplete());
    EXPECT_EQ(record.review().couplings.front().verdict, Verdict::Inside);
}

TEST(RecordReview, ListsWhatTheGapCouldNotSayWithoutBlocking)
{
    Record record;
    record.lookAndPull(Turn::First).read(600_um).lookAndPull(Turn::Second);
    EXPECT_EQ(Record::kinds(record.review(Verdict::NoBandYet)), Kinds{OpenItemKind::NotJudged});
    EXPECT_EQ(Record::kinds(record.review(Verdict::CannotTell)), Kinds{OpenItemKind::CannotTell});
    EXPECT_TRUE(record.review(Verdict::CannotTell).mayCloseComplete());
}

TEST(RecordReview, ListsEachPartThatEitherPersonCouldNotSee)
{
    Record record;
    record.lookAndPull(Turn::First)
        .answer(CheckKind::PlungerHome, Answer::CannotSee, Turn::First)
        .ask(QuestionKind::CannotSee)
        .about(CheckKind::PlungerHome)
        .read(600_um)
        .lookAndPull(Turn::Second)
        .answer(CheckKind::SleeveAtStop, Answer::CannotSee, Turn::Second)
        .ask(QuestionKind::CannotSee)
        .about(CheckKind::SleeveAtStop);
    const RecordReview review = record.review();
    ASSERT_EQ(Record::kinds(review), (Kinds{OpenItemKind::NotSeen, OpenItemKind::NotSeen}));
    EXPECT_EQ(review.openItems.front().check, CheckKind::PlungerHome);
    EXPECT_EQ(review.openItems.back().check, CheckKind::SleeveAtStop);
    EXPECT_FALSE(review.mayCloseComplete());
}

TEST(RecordReview, WhatTheSecondPersonCouldNotSeeIsListedBesideWhatTheFirstHasSeenMeanwhile)
{
    Record record;
    record.lookAndPull(Turn::First)
        .ask(QuestionKind::CannotSee)
        .about(CheckKind::PlungerHome)
        .closeQuestion()
        .read(600_um)
        .lookAndPull(Turn::Second)
        .answer(CheckKind::SleeveAtStop, Answer::CannotSee, Turn::Second);
    ASSERT_EQ(Record::kinds(record.review()), Kinds{OpenItemKind::NotSeen});
    EXPECT_EQ(record.review().openItems.front().check, CheckKind::SleeveAtStop);
}

TEST(RecordReview, ListsThatTheSecondPersonsReadingCouldNotTell)
{
    Record record;
    record.lookAndPull(Turn::First).read(600_um).lookAndPull(Turn::Second).read(650_um).bySecond();
    const RecordReview review = record.reviewWith([](const Reading& reading) {
        return reading.turn == Turn::Second ? Verdict::CannotTell : Verdict::Inside;
    });
    EXPECT_EQ(Record::kinds(review), Kinds{OpenItemKind::CannotTell});
    EXPECT_EQ(review.couplings.front().verdict, Verdict::Inside) << "the first person's own";
}

TEST(RecordReview, AStopByAReadingThatWasASlipStaysAndIsToldAsOne)
{
    const auto judge = [](const Reading& reading) {
        return reading.interval.enters > 1000_um ? Verdict::Outside : Verdict::Inside;
    };
    Record record;
    record.lookAndPull(Turn::First).read(1700_um).ask(QuestionKind::OutsideReading).aboutTheReading();
    EXPECT_FALSE(record.reviewWith(judge).openItems.front().isSlip);
    record.correct(470_um);
    const RecordReview review = record.reviewWith(judge);
    EXPECT_TRUE(review.couplings.front().stop);
    ASSERT_EQ(review.openItems.front().kind, OpenItemKind::OutsideReading);
    EXPECT_TRUE(review.openItems.front().isSlip);
    record.read(1600_um);
    EXPECT_FALSE(record.reviewWith(judge).openItems.front().isSlip)
        << "another lies outside, and was no slip";
}

TEST(RecordReview, ANoStopsTheJointUntilItIsResolved)
{
    Record record;
    record.answer(CheckKind::BallInSocket, Answer::Yes, Turn::First)
        .answer(CheckKind::PlungerHome, Answer::No, Turn::First)
        .ask(QuestionKind::AnsweredNo)
        .about(CheckKind::PlungerHome);
    const RecordReview review = record.review();
    ASSERT_TRUE(review.couplings.front().stop);
    EXPECT_EQ(review.couplings.front().stop->saidNo, CheckKind::PlungerHome);
    EXPECT_FALSE(record.resolve().review().couplings.front().stop);
}

TEST(RecordReview, OfAJointThatIsStoppedBeforeThePullTheSecuringIsNamedTooThatNobodyWasAskedFor)
{
    Record record;
    record.answer(CheckKind::BallInSocket, Answer::Yes, Turn::First)
        .answer(CheckKind::PlungerHome, Answer::Yes, Turn::First)
        .answer(CheckKind::SleeveAtStop, Answer::Yes, Turn::First)
        .read(900_um)
        .ask(QuestionKind::OutsideReading);
    const Kinds kinds = Record::kinds(record.review());
    for (const OpenItemKind one : {OpenItemKind::NotPulled, OpenItemKind::NotSecured})
        EXPECT_EQ(std::ranges::count(kinds, one), 1) << static_cast<int>(one);
}

TEST(RecordReview, AnOutsideReadingStopsTheJointUntilItIsResolved)
{
    Record record;
    record.lookAndPull(Turn::First).read(900_um).ask(QuestionKind::OutsideReading);
    ASSERT_TRUE(record.review().couplings.front().stop);
    EXPECT_FALSE(record.review().couplings.front().stop->saidNo);
    EXPECT_FALSE(record.resolve().review().couplings.front().stop);
}

TEST(RecordReview, AReadingAsFoundIsNotJudged)
{
    Record record;
    record.read(600_um).asFound();
    const RecordReview review = record.review(Verdict::Outside);
    EXPECT_FALSE(review.couplings.front().verdict);
    EXPECT_FALSE(review.couplings.front().outside);
}

TEST(RecordReview, NeverLetsALesserVerdictHideAGraverOne)
{
    EXPECT_EQ(graver(Verdict::Inside, Verdict::NearEdge), Verdict::NearEdge);
    EXPECT_EQ(graver(Verdict::NoBandYet, Verdict::NearEdge), Verdict::NoBandYet);
    EXPECT_EQ(graver(Verdict::CannotTell, Verdict::NoBandYet), Verdict::CannotTell);
    EXPECT_EQ(graver(Verdict::Outside, Verdict::CannotTell), Verdict::Outside);
}

TEST(RecordReview, AClosedQuestionLetsTheRecordGoOnOnceTheCouplingIsDoneAnew)
{
    for (const QuestionKind kind : {QuestionKind::AnsweredNo, QuestionKind::OutsideReading,
                                    QuestionKind::ReadingsDisagree, QuestionKind::SidesSwapped}) {
        Record record;
        record.lookAndPull(Turn::First).read(600_um).lookAndPull(Turn::Second).ask(kind);
        EXPECT_FALSE(record.review().mayCloseComplete());
        record.resolve();
        EXPECT_EQ(Record::kinds(record.review()), Kinds{OpenItemKind::NotLooked}) << static_cast<int>(kind);
        record.lookAndPull(Turn::First).read(600_um).lookAndPull(Turn::Second);
        EXPECT_TRUE(record.review().mayCloseComplete()) << static_cast<int>(kind);
        EXPECT_TRUE(record.review().couplings.front().resolved);
    }
}

TEST(RecordReview, AQuestionStaysOpenWhateverIsReadLater)
{
    Record record;
    record.ask(QuestionKind::OutsideReading).interrupt();
    record.lookAndPull(Turn::First).read(600_um).lookAndPull(Turn::Second);
    EXPECT_EQ(Record::kinds(record.review()), Kinds{OpenItemKind::OutsideReading});
}

TEST(RecordReview, NamesWhatTheControlCheckHasNotTriedYet)
{
    Record record;
    record.lookAndPull(Turn::First).read(600_um).lookAndPull(Turn::Second).onlyLookedAtSurface();
    const RecordReview review = record.review();
    EXPECT_EQ(Record::kinds(review), Kinds{OpenItemKind::SurfaceNotChecked});
    EXPECT_EQ(review.surfaces.front().next, SurfaceCheckKind::HoldsSetting);
    EXPECT_EQ(review.surfacesDone(), 0);
}

TEST(RecordReview, ASurfaceIsTriedAnewOnceAQuestionAboutItIsClosed)
{
    Record record;
    record.lookAndPull(Turn::First).read(600_um).lookAndPull(Turn::Second);
    record.trySurface(Answer::No).askAboutSurface().trySurface(Answer::Yes);
    EXPECT_EQ(Record::kinds(record.review()), Kinds{OpenItemKind::SurfaceDoubted})
        << "a later yes closes no question";
    record.closeSurfaceQuestion();
    EXPECT_EQ(Record::kinds(record.review()), Kinds{OpenItemKind::SurfaceNotChecked});
    EXPECT_EQ(record.review().surfaces.front().next, SurfaceCheckKind::HoldsSetting);
    EXPECT_TRUE(record.trySurface(Answer::Yes).review().mayCloseComplete());
}

// What somebody may do at a joint after its controls were tried.
struct AtTheJoint
{
    const char* what;
    void (*does)(Record&);

    friend std::ostream& operator<<(std::ostream& out, const AtTheJoint& row) { return out << row.what; }
};

class AHandOnTheJoint : public testing::TestWithParam<AtTheJoint>
{
};

INSTANTIATE_TEST_SUITE_P(
    Rows, AHandOnTheJoint,
    testing::Values(
        AtTheJoint{"pulled",
                   [](Record& record) { record.answer(CheckKind::Pull, Answer::Yes, Turn::First); }},
        AtTheJoint{"looked at",
                   [](Record& record) { record.answer(CheckKind::PlungerHome, Answer::Yes, Turn::Second); }},
        AtTheJoint{"read", [](Record& record) { record.read(600_um); }},
        AtTheJoint{"interrupted", [](Record& record) { record.interrupt(); }},
        AtTheJoint{"question closed", [](Record& record) { record.closeQuestion(); }}));

TEST_P(AHandOnTheJoint, SetsTheSurfacesOfItsCircuitBackToBeTried)
{
    Record record;
    record.ask(QuestionKind::SidesSwapped).lookAndPull(Turn::First).read(600_um).lookAndPull(Turn::Second);
    record.tryFlap();
    ASSERT_EQ(record.review().surfacesDone(), 1);
    GetParam().does(record);
    const RecordReview review = record.review();
    EXPECT_EQ(review.surfacesDone(), 0);
    EXPECT_EQ(review.surfaces.front().setBackBy, "Left flap");
    EXPECT_TRUE(review.surfaces.front().answers.empty());
    EXPECT_EQ(review.openItems.back().kind, OpenItemKind::SurfaceSetBack);
    EXPECT_EQ(review.openItems.back().by, "Left flap");
    EXPECT_FALSE(review.mayCloseComplete());

    record.tryFlap();
    EXPECT_EQ(record.review().surfacesDone(), 1);
    EXPECT_FALSE(record.review().surfaces.front().setBackBy);
}

TEST(RecordReview, AHandOnAJointOfAnotherCircuitLeavesASurfaceAsTried)
{
    Record record;
    record.lookAndPull(Turn::First).read(600_um).tryFlap().ofCircuit(Circuit::Airbrake).interrupt();
    EXPECT_EQ(record.review().surfacesDone(), 1);
}

TEST(RecordReview, AJointOfNoNamedCircuitMayMoveEverySurface)
{
    Record record;
    record.lookAndPull(Turn::First).read(600_um).tryFlap().ofCircuit(Circuit::Other).interrupt();
    EXPECT_EQ(record.review().surfacesDone(), 0);
}

TEST(RecordReview, AFigurePutRightOnPaperIsNoHandOnTheJoint)
{
    Record record;
    record.lookAndPull(Turn::First).read(600_um).tryFlap();
    EXPECT_EQ(record.correct(650_um).review().surfacesDone(), 1);
}

TEST(RecordReview, WhatStoppedASurfaceStaysStoppedAfterAHandOnTheJoint)
{
    Record record;
    record.trySurface(Answer::No).askAboutSurface().ofCircuit(Circuit::Trim).interrupt();
    EXPECT_EQ(record.review().surfaces.front().stop, SurfaceCheckKind::HoldsSetting);
    EXPECT_FALSE(record.closeSurfaceQuestion().review().surfaces.front().stop);
}

TEST(RecordReview, APlainAnswerOfAnEarlierVersionNeedsNoCallsAndOneCallNeedsTheOther)
{
    Record record;
    record.lookAndPull(Turn::First).read(600_um).lookAndPull(Turn::Second).forgetCalls();
    EXPECT_TRUE(record.review().mayCloseComplete());
    EXPECT_TRUE(record.review().surfaces.front().isSenseAnsweredPlainly());
    record.call(SurfaceCheckKind::CalledOneWay, rig::Movement::Up);
    EXPECT_EQ(record.review().surfaces.front().next, SurfaceCheckKind::CalledOtherWay);
    record.call(SurfaceCheckKind::CalledOtherWay, rig::Movement::Down);
    EXPECT_TRUE(record.review().mayCloseComplete());
    EXPECT_EQ(record.review().surfaces.front().seen.at(SurfaceCheckKind::CalledOneWay), rig::Movement::Up);
}

TEST(RecordReview, SaysThatNoSurfacesAreSetUp)
{
    Record record;
    record.lookAndPull(Turn::First).read(600_um).lookAndPull(Turn::Second).withoutSurfaces();
    EXPECT_EQ(Record::kinds(record.review()), Kinds{OpenItemKind::NoSurfaces});
    EXPECT_FALSE(record.review().mayCloseComplete());
}

TEST(RecordReview, AsksForTheSeasonListOnTheFirstRiggingOfTheYear)
{
    Record record;
    record.lookAndPull(Turn::First).read(600_um).lookAndPull(Turn::Second).asFirstOfSeason();
    record.tick(TickKind::SeasonCleaned).tick(TickKind::SeasonGreased).tick(TickKind::SeasonLeaves);
    EXPECT_EQ(Record::kinds(record.review()), Kinds{OpenItemKind::SeasonList});
    EXPECT_EQ(record.review().seasonList, std::vector{TickKind::SeasonRefresher});
    EXPECT_TRUE(record.tick(TickKind::SeasonRefresher).review().mayCloseComplete());
}

namespace {

bool isFirstOfYear(const RiggingRecord& record, std::span<const RiggingRecord> all,
                   std::span<const RecordClose> closings)
{
    return stoodBefore(record, all, closings).isFirstOfYear;
}

} // namespace

TEST(FirstOfSeason, IsTheFirstRecordOfTheYearThatWasNotAbandoned)
{
    IdSource ids{9};
    const auto recordAt = [&ids](std::int64_t utcSeconds) {
        RiggingRecord record;
        record.id.bytes = ids.next(0);
        record.begins.utcSeconds = utcSeconds;
        return record;
    };
    constexpr std::int64_t kYear = 366 * 24 * 3600;
    const RiggingRecord before = recordAt(1'700'000'000);
    const RiggingRecord first = recordAt(1'700'000'000 + kYear);
    const RiggingRecord second = recordAt(1'700'000'000 + kYear + 3600);
    const std::vector all{before, first, second};
    EXPECT_TRUE(isFirstOfYear(first, all, {}));
    EXPECT_FALSE(isFirstOfYear(second, all, {}));
    RecordClose abandoned;
    abandoned.record = first.id;
    abandoned.closing = Closing::Abandoned;
    EXPECT_TRUE(isFirstOfYear(second, all, std::vector{abandoned}));
}

TEST(RecordReview, AnOutsideReadingThatWasStruckIsStillToBeResolved)
{
    Record record;
    record.lookAndPull(Turn::First).read(900_um).strike();
    const RecordReview review = record.review(Verdict::Outside);
    EXPECT_TRUE(review.couplings.front().outside);
    EXPECT_FALSE(review.couplings.front().reading) << "it does not count as read";
    EXPECT_FALSE(review.couplings.front().verdict);
    EXPECT_FALSE(review.mayCloseComplete());
}

TEST(RecordReview, OneThatConnectsByItselfNeedsItsLookItsPullAndASecondPersonAndNoReading)
{
    using enum CheckKind;
    Record record;
    record.ofKind(CouplingKind::ByItself, {false, true, false});
    EXPECT_FALSE(record.review().mayCloseComplete()) << "nobody looked";
    record.answer(Engaged, Answer::Yes, Turn::First).answer(NoStep, Answer::Felt, Turn::First);
    EXPECT_EQ(Record::kinds(record.review()),
              (std::vector{OpenItemKind::NotPulled, OpenItemKind::NoSecondPerson}));
    record.answer(Pull, Answer::Yes, Turn::First);
    EXPECT_EQ(Record::kinds(record.review()), std::vector{OpenItemKind::NoSecondPerson});
    record.answer(Engaged, Answer::Yes, Turn::Second).answer(NoStep, Answer::Yes, Turn::Second);
    EXPECT_FALSE(record.review().mayCloseComplete()) << "the second person pulls too";
    record.answer(Pull, Answer::Yes, Turn::Second);
    const RecordReview review = record.review();
    EXPECT_TRUE(review.mayCloseComplete());
    EXPECT_TRUE(review.openItems.empty()) << "no band and no reading are missing";
    EXPECT_FALSE(review.couplings.front().verdict);
    EXPECT_FALSE(review.couplings.front().parts.gap);
}

TEST(RecordReview, OneThatConnectsByItselfBlocksWithANoAndWithWhatCouldNotBeSeen)
{
    using enum CheckKind;
    Record record;
    record.ofKind(CouplingKind::ByItself, {false, false, false});
    record.answer(Engaged, Answer::CannotSee, Turn::First).answer(NoStep, Answer::Yes, Turn::First);
    record.answer(Engaged, Answer::CannotSee, Turn::Second).answer(NoStep, Answer::Yes, Turn::Second);
    EXPECT_EQ(Record::kinds(record.review()), std::vector{OpenItemKind::NotSeen});
    EXPECT_EQ(record.review().openItems.front().check, Engaged);
    record.answer(Engaged, Answer::No, Turn::First);
    EXPECT_TRUE(record.review().couplings.front().doubted);
    EXPECT_FALSE(record.review().mayCloseComplete());
}

TEST(RecordReview, APinJointIsAskedForItsPinAndNotForASleeve)
{
    using enum CheckKind;
    Record record;
    record.ofKind(CouplingKind::Pin, {});
    record.answer(BallInSocket, Answer::Yes, Turn::First).answer(PlungerHome, Answer::Yes, Turn::First);
    record.answer(SleeveAtStop, Answer::Yes, Turn::First).read(450_um);
    EXPECT_EQ(record.review().couplings.front().next, Step::Look) << "nobody has seen the pin";
    record.answer(PinThrough, Answer::Yes, Turn::First);
    EXPECT_EQ(record.review().couplings.front().next, Step::Pull);
}

TEST(RecordReview, FeelingPlayIsAHandOnTheJointSoTheSurfaceIsTriedAnew)
{
    Record record;
    record.ofCircuit(Circuit::Flap).lookAndPull(Turn::First).read(450_um).lookAndPull(Turn::Second).tryFlap();
    EXPECT_FALSE(record.review().surfaces.front().setBackBy);
    EXPECT_EQ(record.feelPlay().review().surfaces.front().setBackBy, "Left flap");
}

TEST(FirstOfSeason, GoesByTheDayOnThePaperAndNotByWhenItWasTyped)
{
    IdSource ids{9};
    const auto recordOn = [&ids](Day day, bool fromPaper) {
        RiggingRecord record;
        record.id.bytes = ids.next(0);
        record.begins = noonOf(day);
        if (fromPaper)
            record.enteredBy = PersonId{{1}};
        return record;
    };
    using namespace std::chrono;
    const RiggingRecord live = recordOn(sys_days{2026y / May / 2}, false);
    const RiggingRecord earlier = recordOn(sys_days{2026y / April / 4}, true);
    const RiggingRecord later = recordOn(sys_days{2026y / May / 9}, true);
    const std::vector all{earlier, live, later};
    EXPECT_TRUE(isFirstOfYear(earlier, all, {})) << "saved after, rigged before";
    EXPECT_FALSE(isFirstOfYear(live, all, {}));
    EXPECT_FALSE(isFirstOfYear(later, all, {}));
}

TEST(OpenItems, StandInOneLineWhereTheSameIsSaidOfThem)
{
    const OpenItem look{"Left aileron", OpenItemKind::NotLooked};
    EXPECT_TRUE(look.isLike({"Trim", OpenItemKind::NotLooked}));
    EXPECT_FALSE(look.isLike({"Trim", OpenItemKind::NotPulled}));
    const OpenItem unseen{"Left aileron", OpenItemKind::NotSeen, {}, CheckKind::PlungerHome};
    EXPECT_FALSE(unseen.isLike({"Trim", OpenItemKind::NotSeen, {}, CheckKind::SleeveAtStop}));
    EXPECT_TRUE(OpenItem({"Trim", OpenItemKind::OutsideReading}).stops());
    EXPECT_FALSE(look.stops());
}
