// How a joint was found follows from the “no” of its record.

#include "core/rigging/found_as.h"

#include <algorithm>
#include <array>
#include <gtest/gtest.h>
#include <vector>

using namespace rig;

namespace {

constexpr RecordId kRecord{{1}};
constexpr CouplingId kJoint{{2}};

class FoundAs : public testing::Test
{
protected:
    QuestionStory& sayNo(CheckKind kind, int minute)
    {
        QuestionStory story;
        story.question.id = QuestionId{idOf(3, minute)};
        story.question.kind = QuestionKind::AnsweredNo;
        story.question.record = kRecord;
        story.question.coupling = kJoint;
        story.question.check = kind;
        story.question.stamp.when = at(minute);
        m_questions.push_back(story);
        return m_questions.back();
    }

    void resolve(QuestionStory& story, int minute)
    {
        story.resolution = Resolution{{}, story.question.id, {}, "seen", "put right", {{}, at(minute)}, {}};
    }

    Reading& read(int minute)
    {
        Reading reading;
        reading.id = ReadingId{idOf(4, minute)};
        reading.record = kRecord;
        reading.coupling = kJoint;
        reading.state = SeatState::PartSeated;
        reading.stamp.when = at(minute);
        m_readings.push_back(reading);
        return m_readings.back();
    }

    SeatState last()
    {
        takeHowFound(m_readings, m_questions);
        return m_readings.back().state;
    }

    std::vector<QuestionStory> m_questions;
    std::vector<Reading> m_readings;

private:
    // Without a time of its own: the moment alone says what was saved first.
    static IdBytes idOf(std::uint8_t kind, int minute)
    {
        IdBytes bytes{};
        bytes[14] = kind;
        bytes[15] = static_cast<std::uint8_t>(minute);
        return bytes;
    }
    static Moment at(int minute) { return Moment{60 * minute, 0}; }
};

} // namespace

TEST_F(FoundAs, ANoToTheLockAloneIsNotSecuredAndAnyOtherPartSeated)
{
    for (const auto& [kind, found] : {std::pair{CheckKind::SleeveAtStop, SeatState::NotSecured},
                                      std::pair{CheckKind::PinThrough, SeatState::NotSecured},
                                      std::pair{CheckKind::Secured, SeatState::NotSecured},
                                      std::pair{CheckKind::PlungerHome, SeatState::PartSeated},
                                      std::pair{CheckKind::Pull, SeatState::PartSeated}}) {
        m_questions.clear();
        m_readings.clear();
        sayNo(kind, 1);
        read(2);
        EXPECT_EQ(last(), found);
        EXPECT_EQ(foundAfterNo(kind), found);
    }
}

TEST_F(FoundAs, NothingSaysSoOfAReadingWithoutANo)
{
    read(2);
    EXPECT_EQ(last(), SeatState::PartSeated);
}

TEST_F(FoundAs, TwoNosOfWhichOneIsAboutThePlungerArePartSeated)
{
    sayNo(CheckKind::SleeveAtStop, 1);
    sayNo(CheckKind::PlungerHome, 2);
    read(3);
    EXPECT_EQ(last(), SeatState::PartSeated);
}

TEST_F(FoundAs, OnlyANoThatWasOpenWhenItWasReadSpeaks)
{
    resolve(sayNo(CheckKind::PlungerHome, 1), 2);
    resolve(sayNo(CheckKind::SleeveAtStop, 3), 5);
    read(4);
    EXPECT_EQ(last(), SeatState::NotSecured);
    sayNo(CheckKind::Pull, 6);
    EXPECT_EQ(last(), SeatState::NotSecured) << "what is said later is about another state of the joint";
}

TEST_F(FoundAs, ACorrectionWasFoundAsWhatItCorrects)
{
    resolve(sayNo(CheckKind::SleeveAtStop, 1), 3);
    read(2);
    const ReadingId slip = m_readings.back().id;
    read(4).corrects = slip;
    EXPECT_EQ(last(), SeatState::NotSecured);
}

TEST_F(FoundAs, LeavesALockedReadingAndAShownOneAlone)
{
    sayNo(CheckKind::SleeveAtStop, 1);
    read(2).state = SeatState::Locked;
    EXPECT_EQ(last(), SeatState::Locked);
    read(3).purpose = Purpose::Demonstration;
    EXPECT_EQ(last(), SeatState::PartSeated);
}
