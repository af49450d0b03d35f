#include "core/review/person_standings.h"
#include "tests/support/made_id.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

Day on(int year, unsigned month, unsigned day)
{
    return std::chrono::sys_days{std::chrono::year{year} / static_cast<int>(month) / static_cast<int>(day)};
}

// One airframe with an owner who signs, and a learner.
class PersonsOnAnAirframe : public testing::Test
{
protected:
    PersonsOnAnAirframe()
    {
        facts.persons = {
            {owner, "M. Oren", "", "", {}}, {learner, "J. Iver", "", "", {}}, {other, "T. Vale", "", "", {}}};
    }

    RecordId rigged(Day day, PersonId leader, RecordOrigin origin = RecordOrigin::Rigging)
    {
        RecordClose close;
        close.record = begun(day, leader, origin);
        close.closing = Closing::Complete;
        facts.closings.push_back(close);
        return close.record;
    }

    RecordId begun(Day day, PersonId leader, RecordOrigin origin = RecordOrigin::Rigging)
    {
        RiggingRecord record;
        record.id = madeId<RecordId>(static_cast<int>(facts.riggingRecords.size()) + 100);
        record.origin = origin;
        record.leader = leader;
        record.begins = noonOf(day);
        facts.riggingRecords.push_back(record);
        return record.id;
    }

    void signedOff(Day day)
    {
        SignOff one;
        one.person = learner;
        one.signer = owner;
        one.day = day;
        learning.signOffs.push_back(one);
    }

    PersonStandings standingsOn(Day day) const { return personStandingsOf(learning, facts, parts, day); }

    PersonId owner = madeId<PersonId>(1);
    PersonId learner = madeId<PersonId>(2);
    PersonId other = madeId<PersonId>(3);
    AirframeFacts facts;
    LearningFacts learning;
    std::vector<PartInRigging> parts;
};

} // namespace

TEST_F(PersonsOnAnAirframe, AreToldOfNothingWhereNobodyWasEverSignedOffOrPractised)
{
    rigged(on(2026, 4, 1), learner);
    EXPECT_TRUE(standingsOn(on(2026, 5, 1)).empty());
}

TEST_F(PersonsOnAnAirframe, AreToldOfOnceSomebodyIsSignedOffButNotWhoSigns)
{
    signedOff(on(2026, 4, 1));
    const PersonStandings told = standingsOn(on(2026, 5, 1));
    ASSERT_EQ(told.size(), 2u);
    EXPECT_EQ(told.at(learner).state, SignOffState::Signed);
    EXPECT_EQ(told.at(other).state, SignOffState::Never);
    EXPECT_TRUE(standingsOn(on(2026, 3, 31)).empty()); // as it stood then
}

TEST_F(PersonsOnAnAirframe, AreToldOfByThemselvesOncePractised)
{
    LessonRound round;
    round.person = other;
    learning.rounds.push_back(round);
    const PersonStandings told = standingsOn(on(2026, 5, 1));
    ASSERT_EQ(told.size(), 1u);
    EXPECT_EQ(told.at(other).state, SignOffState::Never);
}

TEST_F(PersonsOnAnAirframe, KeepASignOffAliveByRiggingWhateverTheirPartInIt)
{
    signedOff(on(2026, 1, 10));
    const RecordId asSecond = rigged(on(2026, 4, 1), owner);
    parts.push_back({asSecond, learner});
    rigged(on(2026, 6, 20), learner);
    const SignOffStanding standing = standingsOn(on(2026, 8, 1)).at(learner);
    EXPECT_EQ(standing.state, SignOffState::Signed);
    EXPECT_EQ(standing.expires, on(2026, 9, 20));
}

TEST_F(PersonsOnAnAirframe, DoNotBringAnExpiredSignOffBackByOneMoreRigging)
{
    signedOff(on(2026, 1, 10));
    rigged(on(2026, 6, 20), learner);
    const SignOffStanding standing = standingsOn(on(2026, 7, 1)).at(learner);
    EXPECT_EQ(standing.state, SignOffState::Expired);
    EXPECT_TRUE(standing.byLayoff);
    EXPECT_EQ(standing.expires, on(2026, 4, 10));
}

TEST_F(PersonsOnAnAirframe, RigNeitherByARecheckNorByWhatWasAbandoned)
{
    rigged(on(2026, 4, 1), learner, RecordOrigin::Recheck);
    RecordClose left;
    left.record = begun(on(2026, 4, 2), learner);
    left.closing = Closing::Abandoned;
    facts.closings.push_back(left);
    EXPECT_FALSE(lastRiggingOf(learner, riggingDaysOf(facts, parts)));
    RecordClose close;
    close.record = begun(on(2026, 4, 3), owner);
    close.second = learner;
    facts.closings.push_back(close);
    EXPECT_EQ(lastRiggingOf(learner, riggingDaysOf(facts, parts)), on(2026, 4, 3));
}

TEST_F(PersonsOnAnAirframe, DoNotRigByARecordThatWasLeftOpenOrByATable)
{
    signedOff(on(2026, 4, 1));
    begun(on(2026, 6, 1), learner);
    rigged(on(2026, 6, 2), learner, RecordOrigin::ImportedTable);
    EXPECT_FALSE(lastRiggingOf(learner, riggingDaysOf(facts, parts)));
    EXPECT_EQ(standingsOn(on(2026, 7, 15)).at(learner).state, SignOffState::Expired);
}

TEST_F(PersonsOnAnAirframe, RestFromTheirLastRiggingAndNotFromTheSigning)
{
    rigged(on(2026, 2, 10), learner);
    signedOff(on(2026, 4, 1));
    EXPECT_EQ(standingsOn(on(2026, 4, 2)).at(learner).expires, on(2026, 5, 10));
    EXPECT_EQ(standingsOn(on(2026, 5, 10)).at(learner).state, SignOffState::Expired);
    rigged(on(2026, 4, 20), learner);
    EXPECT_EQ(standingsOn(on(2026, 5, 10)).at(learner).expires, on(2026, 7, 20));
    EXPECT_EQ(standingsOn(on(2026, 4, 2)).at(learner).expires, on(2026, 5, 10)) << "as it stood on that day";
}
