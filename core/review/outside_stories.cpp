#include "core/review/outside_stories.h"

#include "core/review/judging.h"
#include "core/rigging/counts_as.h"
#include "core/rigging/measured_before.h"

#include <algorithm>
#include <map>
#include <set>

namespace rig {

namespace {

class StoryTeller
{
public:
    StoryTeller(const AirframeFacts& facts, const AirframeReadings& all, const RiggingNumbers& numbers)
        : m_facts{facts}, m_numbers{numbers}
    {
        for (const CouplingReadings& one : all.couplings)
            m_judging.try_emplace(one.coupling.id, one.history);
        for (const KeptReading& kept : facts.readings)
            if (kept.reading.corrects)
                m_corrections.emplace(*kept.reading.corrects, &kept.reading);
    }

    std::optional<OutsideStory> storyOf(const KeptReading& kept)
    {
        const Reading& reading = kept.reading;
        const auto judging = m_judging.find(reading.coupling);
        if (!countsAs(reading.purpose).rigging || judging == m_judging.end())
            return std::nullopt;
        const bool foundPartSeated = reading.state == SeatState::PartSeated;
        if (foundPartSeated && reading.corrects)
            return std::nullopt; // told with the one it corrects
        const auto correction = m_corrections.find(reading.id);
        const bool correctedToPartSeated =
            correction != m_corrections.end() && correction->second->state == SeatState::PartSeated;
        const Judgement judgement = judging->second.of(reading);
        const bool isOutside = !foundPartSeated && judgement.verdict == Verdict::Outside;
        if (!isOutside && !foundPartSeated && !correctedToPartSeated)
            return std::nullopt;
        OutsideStory story;
        story.reading = reading;
        story.judgement = judgement;
        story.shown = kept.shown;
        story.rigging = placeOf(reading);
        if (correction != m_corrections.end())
            story.corrected = *correction->second;
        if (const Exclusion* strike = strikeOf(reading, m_facts.exclusions))
            story.struck = *strike;
        story.question = questionAbout(reading);
        story.afterwards = afterwards(reading);
        return story;
    }

private:
    double placeOf(const Reading& reading) const
    {
        if (const auto number = m_numbers.of(reading))
            return *number;
        const std::int64_t time = wallSeconds(reading.when);
        return m_numbers.between(std::span{&time, 1}).front();
    }

    std::optional<QuestionStory> questionAbout(const Reading& reading) const
    {
        for (const QuestionStory& story : m_facts.questions)
            if (story.question.reading == reading.id)
                return story;
        for (const QuestionStory& story : m_facts.questions)
            if (reading.record && story.question.record == reading.record &&
                story.question.coupling == reading.coupling)
                return story;
        return std::nullopt;
    }

    std::vector<Reading> afterwards(const Reading& reading) const
    {
        std::vector<Reading> later;
        if (!reading.record)
            return later;
        for (const KeptReading& kept : m_facts.readings) {
            const Reading& other = kept.reading;
            if (other.record == reading.record && other.coupling == reading.coupling &&
                isLockedAtRigging(other) && !m_corrections.contains(other.id) &&
                !strikeOf(other, m_facts.exclusions) && measuredBefore(reading, other))
                later.push_back(other);
        }
        return later;
    }

    const AirframeFacts& m_facts;
    const RiggingNumbers& m_numbers;
    std::map<CouplingId, Judging> m_judging;
    std::map<ReadingId, const Reading*> m_corrections;
};

} // namespace

std::vector<OutsideStory> outsideStories(const AirframeFacts& facts, const AirframeReadings& all,
                                         const RiggingNumbers& numbers, const ReviewPeriod& period)
{
    StoryTeller teller{facts, all, numbers};
    std::vector<OutsideStory> stories;
    for (const KeptReading& kept : facts.readings)
        if (period.contains(kept.reading.when.localDay()))
            if (auto story = teller.storyOf(kept))
                stories.push_back(std::move(*story));
    std::ranges::stable_sort(stories, {}, [](const OutsideStory& one) { return one.reading.when; });
    return stories;
}

} // namespace rig
