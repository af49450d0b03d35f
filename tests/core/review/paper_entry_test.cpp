#include "core/review/last_rigging.h"
#include "core/review/layoffs.h"
#include "core/review/notes_left.h"
#include "core/review/paper_entry.h"
#include "core/review/record_summary.h"
#include "core/review/rigging_numbers.h"
#include "core/review/whole_check.h"
#include "core/rigging/rigged_before.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <string>
#include <vector>

using namespace rig;

namespace {

constexpr Day onDay(unsigned month, unsigned day)
{
    return Day{std::chrono::year{2026} / std::chrono::month{month} / std::chrono::day{day}};
}

// An airframe whose first fitting began on 1 March, with riggings in the order of saving.
class PaperFacts
{
public:
    explicit PaperFacts(FittingKind kind = FittingKind::First)
    {
        m_facts.fittings.push_back({{}, {}, onDay(3, 1), kind, {}, {}});
    }

    RecordId rig(Day day, bool fromPaper, std::optional<Closing> closing = Closing::Complete)
    {
        ++m_saved;
        RiggingRecord record;
        record.id.bytes[15] = static_cast<std::uint8_t>(m_saved);
        record.begins = noonOf(day);
        record.stamp.when = fromPaper ? noonOf(onDay(6, static_cast<unsigned>(m_saved))) : noonOf(day);
        if (fromPaper)
            record.enteredBy = PersonId{{1}};
        m_facts.riggingRecords.push_back(record);
        std::ranges::sort(m_facts.riggingRecords, {}, [](const RiggingRecord& one) { return one.begins; });
        if (closing) {
            RecordClose close;
            close.id.bytes[15] = static_cast<std::uint8_t>(100 + m_saved);
            close.record = record.id;
            close.closing = *closing;
            close.stamp.when = fromPaper ? record.stamp.when : noonOf(day);
            m_facts.closings.push_back(close);
        }
        return record.id;
    }

    void recheck(Day day)
    {
        const RecordId id = rig(day, false);
        std::ranges::find(m_facts.riggingRecords, id, &RiggingRecord::id)->origin = RecordOrigin::Recheck;
    }

    // In the close of the rigging told last.
    void leaveNote(const std::string& note) { m_facts.closings.back().note = note; }

    void readNoteOf(RecordId record, Moment when)
    {
        RecordTick tick;
        tick.record = record;
        tick.kind = TickKind::NoteRead;
        tick.stamp.when = when;
        m_facts.notesRead.push_back(tick);
    }

    void grease(Day day, Moment told)
    {
        Event event;
        event.kind = EventKind::Greased;
        event.day = day;
        event.stamp.when = told;
        m_facts.events.push_back(event);
    }

    const RiggingRecord& record(RecordId id) const
    {
        return *std::ranges::find(m_facts.riggingRecords, id, &RiggingRecord::id);
    }

    bool isWholeCheckAsked(std::optional<RecordId> of = {}) const
    {
        const WholeChecks checks{m_facts, of ? &record(*of) : nullptr};
        return checks.askedOf(CouplingId{{1}}).has_value();
    }

    std::vector<std::string> notesMet(RecordId id) const
    {
        std::vector<std::string> texts;
        for (const NoteLeft& note : notesMetBy(record(id), m_facts))
            texts.push_back(note.text);
        return texts;
    }

    const AirframeFacts& facts() const { return m_facts; }
    PaperMoment::Finding on(Day day) const
    {
        return paperMomentOf(m_facts, noonOf(day), noonOf(onDay(6, 20))).finding;
    }

private:
    AirframeFacts m_facts;
    int m_saved = 0;
};

} // namespace

TEST(PaperMoment, MayLieBeforeAFirstFittingWhoseDayNobodyChose)
{
    using enum PaperMoment::Finding;
    PaperFacts paper;
    EXPECT_EQ(paper.on(onDay(2, 28)), Possible);
    EXPECT_EQ(paper.on(onDay(6, 21)), ToCome);
}

TEST(PaperMoment, IsInThePastAndNotBeforeARefitOfWhichNothingBeforeIsKnown)
{
    using enum PaperMoment::Finding;
    const PaperFacts paper{FittingKind::Refitted};
    EXPECT_EQ(paper.on(onDay(6, 21)), ToCome);
    EXPECT_EQ(paper.on(onDay(6, 20)), Possible) << "today, at the same moment";
    EXPECT_EQ(paper.on(onDay(3, 1)), Possible);
    EXPECT_EQ(paper.on(onDay(2, 28)), BeforeFirstFitting);
    EXPECT_EQ(paperMomentOf(paper.facts(), noonOf(onDay(2, 1)), noonOf(onDay(6, 20))).first, onDay(3, 1));
}

TEST(PaperMoment, OfADayThatHasARiggingNamesIt)
{
    using enum PaperMoment::Finding;
    PaperFacts paper;
    const RecordId there = paper.rig(onDay(5, 2), false);
    paper.rig(onDay(5, 3), false, Closing::Abandoned);
    EXPECT_EQ(paper.on(onDay(5, 2)), RiggedThatDay);
    EXPECT_EQ(paperMomentOf(paper.facts(), noonOf(onDay(5, 2)), noonOf(onDay(6, 20))).other->id, there);
    EXPECT_EQ(paper.on(onDay(5, 3)), Possible) << "one that was left behind is no rigging";
}

TEST(LastRigging, GoesByTheDayOnThePaper)
{
    PaperFacts paper;
    const RecordId live = paper.rig(onDay(5, 9), false);
    paper.rig(onDay(4, 4), true);
    EXPECT_EQ(lastClosedRecord(paper.facts()), live) << "typed in later, rigged earlier";
    const RecordId later = paper.rig(onDay(5, 16), true);
    EXPECT_EQ(lastClosedRecord(paper.facts()), later);
    EXPECT_EQ(lastEnded(paper.facts(), Ended::OrLeftBehind)->when().localDay(), onDay(5, 16));
}

TEST(LastRigging, IsNumberedByTheDayOnThePaper)
{
    PaperFacts paper;
    paper.rig(onDay(5, 9), false);
    paper.rig(onDay(4, 4), true);
    const RiggingNumbers numbers{paper.facts()};
    EXPECT_EQ(numbers.lastBy(onDay(4, 30)), 1);
    EXPECT_EQ(numbers.lastBy(onDay(5, 9)), 2);
}

TEST(LastRigging, IsPutInOneOrderWithThePaperAlsoWhereTheClockWasSetBack)
{
    const auto saved = [](Day day, std::int64_t milliseconds, bool fromPaper) {
        RiggingRecord record;
        for (std::size_t i = 0; i < 6; ++i)
            record.id.bytes[i] = static_cast<std::uint8_t>(milliseconds >> (40 - 8 * i));
        record.begins = record.stamp.when = noonOf(day);
        if (fromPaper)
            record.enteredBy = PersonId{{1}};
        return record;
    };
    const auto millisecondsOn = [](Day day) { return noonOf(day).utcSeconds * 1000; };
    const RiggingRecord first = saved(onDay(5, 10), millisecondsOn(onDay(5, 10)), false);
    const RiggingRecord setBack = saved(onDay(5, 2), millisecondsOn(onDay(5, 10)) + 1000, false);
    const RiggingRecord paper = saved(onDay(5, 6), millisecondsOn(onDay(5, 20)), true);
    EXPECT_TRUE(riggedBefore(first, setBack));
    EXPECT_TRUE(riggedBefore(paper, first));
    EXPECT_TRUE(riggedBefore(paper, setBack)) << "what is before the first of two is before the second";
}

TEST(StoodBefore, IsTheSameOfOneRiggingAndOfAllAndTakesNoRecheckForTheFirstOfTheYear)
{
    PaperFacts paper;
    paper.recheck(onDay(3, 7));
    const RecordId rigged = paper.rig(onDay(4, 4), false);
    const AirframeFacts& facts = paper.facts();
    const StoodBefore one = stoodBefore(paper.record(rigged), facts.riggingRecords, facts.closings);
    const std::vector<StoodBefore> all = stoodBefore(facts.riggingRecords, facts.closings);
    ASSERT_EQ(all.size(), 1U);
    EXPECT_TRUE(one.isFirstOfYear);
    EXPECT_TRUE(all.front().isFirstOfYear);
    EXPECT_EQ(one.since, onDay(3, 7));
    EXPECT_EQ(all.front().since, onDay(3, 7));
}

TEST(NotesLeft, OfWhoeverRiggedOnPaperAreThoseThatWereLeftByThen)
{
    PaperFacts paper;
    const RecordId first = paper.rig(onDay(5, 2), false);
    paper.leaveNote("Mirror lies in the trailer.");
    const RecordId after = paper.rig(onDay(5, 16), false);
    paper.leaveNote("Left hatch is stiff.");
    const RecordId typed = paper.rig(onDay(5, 9), true);
    paper.leaveNote("Tape is used up.");
    EXPECT_EQ(paper.notesMet(typed), std::vector<std::string>{"Mirror lies in the trailer."});
    paper.readNoteOf(first, noonOf(onDay(5, 15)));
    EXPECT_EQ(paper.notesMet(after), std::vector<std::string>{"Mirror lies in the trailer."})
        << "the paper was not typed in yet";
    const std::vector<NoteLeft> unread = notesUnread(paper.facts());
    ASSERT_EQ(unread.size(), 2U);
    EXPECT_EQ(unread[0].text, "Left hatch is stiff.") << "it was left last, whatever was typed in since";
    EXPECT_EQ(unread[1].when.localDay(), onDay(5, 9)) << "the day on the paper";
}

TEST(WholeCheck, IsNotAnsweredByAnEarlierRiggingThatWasTypedInFromPaperAfterwards)
{
    PaperFacts paper;
    paper.rig(onDay(5, 2), false);
    paper.grease(onDay(5, 9), noonOf(onDay(5, 9)));
    paper.rig(onDay(5, 4), true);
    EXPECT_TRUE(paper.isWholeCheckAsked());
    paper.rig(onDay(5, 9), true);
    EXPECT_TRUE(paper.isWholeCheckAsked()) << "of the same day: nobody knows which was first";
    paper.rig(onDay(5, 10), true);
    EXPECT_FALSE(paper.isWholeCheckAsked());
}

TEST(WholeCheck, IsAskedOfTheRiggingOnPaperByWhatWasDoneBeforeItAndAnsweredBeforeIt)
{
    PaperFacts paper;
    paper.rig(onDay(5, 2), false);
    paper.grease(onDay(5, 4), noonOf(onDay(5, 4)));
    const RecordId live = paper.rig(onDay(5, 16), false);
    const RecordId typed = paper.rig(onDay(5, 9), true);
    EXPECT_TRUE(paper.isWholeCheckAsked(typed)) << "the rigging that answers it came a week later";
    EXPECT_FALSE(paper.isWholeCheckAsked(live)) << "the one on paper has answered it";
}

TEST(WholeCheck, IsNotAskedOfARiggingThatWasOverWhenTheJointWasWorkedOn)
{
    PaperFacts paper;
    const RecordId morning = paper.rig(onDay(5, 2), false);
    Moment evening = noonOf(onDay(5, 2));
    evening.utcSeconds += 6 * 3600;
    paper.grease(onDay(5, 2), evening);
    EXPECT_FALSE(paper.isWholeCheckAsked(morning));
    EXPECT_TRUE(paper.isWholeCheckAsked());
}
