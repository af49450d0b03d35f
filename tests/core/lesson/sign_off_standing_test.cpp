#include "core/lesson/sign_off_standing.h"
#include "tests/support/made_id.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;
using namespace std::chrono;

namespace {

const PersonId kLearner = madeId<PersonId>(1);
const PersonId kSigner = madeId<PersonId>(2);

SignOff signedOn(Day day, SignOffKind kind = SignOffKind::Signed)
{
    SignOff signOff;
    signOff.person = kLearner;
    signOff.signer = kSigner;
    signOff.day = day;
    signOff.kind = kind;
    return signOff;
}

} // namespace

TEST(SignOffStanding, OfSomebodyForWhomNobodySignedIsNever)
{
    const std::vector signOffs{signedOn(Day{2026y / May / 1})};
    EXPECT_EQ(signOffStandingOf(kSigner, signOffs, {}, Day{2026y / May / 2}).state, SignOffState::Never);
}

TEST(SignOffStanding, ExpiresAfterTwelveMonthsOrThreeWithoutARigging)
{
    const std::vector signOffs{signedOn(Day{2026y / May / 1})};
    const auto on = [&](Day today, std::optional<Day> lastRigging) {
        return signOffStandingOf(kLearner, signOffs, lastRigging, today);
    };
    EXPECT_EQ(on(Day{2026y / July / 31}, {}).state, SignOffState::Signed);
    const SignOffStanding rested = on(Day{2026y / August / 1}, {});
    EXPECT_EQ(rested.state, SignOffState::Expired);
    EXPECT_TRUE(rested.byLayoff);
    EXPECT_EQ(rested.expires, Day{2026y / August / 1});
    EXPECT_EQ(on(Day{2026y / September / 1}, Day{2026y / June / 20}).state, SignOffState::Signed);
    EXPECT_EQ(on(Day{2026y / June / 15}, Day{2026y / March / 10}).expires, Day{2026y / June / 10})
        << "from the last rigging, also one before the signing: to sign is not to rig";
    const SignOffStanding old = on(Day{2027y / May / 1}, Day{2027y / April / 30});
    EXPECT_EQ(old.state, SignOffState::Expired);
    EXPECT_FALSE(old.byLayoff);
    EXPECT_EQ(on(Day{2027y / April / 30}, Day{2027y / April / 29}).state, SignOffState::Signed);
}

TEST(SignOffStanding, TheOneSavedLastCounts)
{
    std::vector signOffs{signedOn(Day{2026y / May / 1})};
    signOffs.push_back(signedOn(Day{2026y / May / 3}, SignOffKind::Withdrawn));
    EXPECT_EQ(signOffStandingOf(kLearner, signOffs, {}, Day{2026y / May / 4}).state, SignOffState::Withdrawn);
    signOffs.push_back(signedOn(Day{2026y / May / 5}));
    EXPECT_EQ(signOffStandingOf(kLearner, signOffs, {}, Day{2026y / May / 6}).state, SignOffState::Signed);
}

TEST(LearnerProgress, AsksForThreeSupervisedRiggingsAndNoMissOnAnyCoupling)
{
    const std::vector couplings{madeId<CouplingId>(1), madeId<CouplingId>(2)};
    std::vector<SupervisedRigging> supervised;
    for (const int record : {1, 1, 2}) {
        SupervisedRigging one;
        one.record = madeId<RecordId>(record);
        one.learner = kLearner;
        one.mentor = kSigner;
        supervised.push_back(one);
    }
    LessonRound round;
    round.id = madeId<LessonRoundId>(1);
    round.person = kLearner;
    round.asks = 2;
    const std::vector rounds{round};
    SeatingAnswer answer;
    answer.round = round.id;
    answer.coupling = couplings[0];
    answer.shown = JointState::PartSeated;
    answer.expected = answer.said = SeatingCall::NotLocked;
    std::vector answers{answer, answer};
    LearnerProgress progress = progressOf(kLearner, couplings, supervised, rounds, answers);
    EXPECT_EQ(progress.supervised, 2) << "one rigging told twice is one";
    EXPECT_EQ(progress.notPractised, std::vector{couplings[1]});
    EXPECT_FALSE(progress.askedFor().isMet());

    supervised.back().record = madeId<RecordId>(3);
    supervised.push_back(supervised.back());
    supervised.back().record = madeId<RecordId>(2);
    answers[1].coupling = couplings[1];
    EXPECT_TRUE(progressOf(kLearner, couplings, supervised, rounds, answers).askedFor().isMet());
    EXPECT_FALSE(progressOf(kSigner, couplings, supervised, rounds, answers).askedFor().isMet());

    answers[1].said = SeatingCall::Locked;
    progress = progressOf(kLearner, couplings, supervised, rounds, answers);
    EXPECT_EQ(progress.missedLastRound, std::vector{couplings[1]});
    EXPECT_FALSE(progress.askedFor().isMet());
}
