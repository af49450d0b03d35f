#include "core/review/outside_stories.h"

#include "core/baseline/gap_numbers.h"
#include "core/review/judging.h"
#include "core/rigging/counts_as.h"
#include "core/rigging/measured_before.h"
#include "core/rigging/time_known.h"

#include <algorithm>
#include <map>
#include <set>

namespace rig {

namespace {

double beyondOuterEdge(const numbers::Interval& reading, const BandEdges& outer)
{
    return std::max({reading.lower - outer.upper, outer.lower - reading.upper, 0.0});
}

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
        const bool foundNotLocked = wasFoundNotLocked(reading);
        if (foundNotLocked && reading.corrects)
            return std::nullopt; // told with the one it corrects
        const auto correction = m_corrections.find(reading.id);
        const bool correctedToNotLocked =
            correction != m_corrections.end() && wasFoundNotLocked(*correction->second);
        const Judgement judgement = judging->second.of(reading);
        const bool isOutside = !foundNotLocked && judgement.verdict == Verdict::Outside;
        if (!isOutside && !foundNotLocked && !correctedToNotLocked)
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
        takeOthers(reading, story);
        if (isOutside && judgement.band)
            story.beyond = beyondOuterEdge(inNumbers(reading.interval), judgement.band->outer);
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
            if (story.question.reading == reading.id && story.question.kind != QuestionKind::Asked)
                return story;
        for (const QuestionStory& story : m_facts.questions)
            if (reading.record && story.question.record == reading.record &&
                story.question.coupling == reading.coupling)
                return story;
        for (const QuestionStory& story : m_facts.questions)
            if (story.question.reading == reading.id)
                return story; // asked in words
        return std::nullopt;
    }

    // What else was read of the coupling at that rigging: later, or nobody knows when.
    void takeOthers(const Reading& reading, OutsideStory& story) const
    {
        if (!reading.record)
            return;
        for (const KeptReading& kept : m_facts.readings) {
            const Reading& other = kept.reading;
            if (other.id == reading.id || other.record != reading.record ||
                other.coupling != reading.coupling || !isLockedAtRigging(other) ||
                m_corrections.contains(other.id) || strikeOf(other, m_facts.exclusions))
                continue;
            if (!isTimeKnown(reading) || !isTimeKnown(other))
                story.besides.push_back(other);
            else if (measuredBefore(reading, other))
                story.afterwards.push_back(other);
        }
    }

    const AirframeFacts& m_facts;
    const RiggingNumbers& m_numbers;
    std::map<CouplingId, Judging> m_judging;
    std::map<ReadingId, const Reading*> m_corrections;
};

// Whether the reading, with so much taken off, is no longer wholly beyond its band.
bool isInsideWithout(const OutsideStory& story, double shift)
{
    const numbers::Interval reading = inNumbers(story.reading.interval);
    return beyondOuterEdge({reading.lower - shift, reading.upper - shift}, story.judgement.band->outer) <= 0;
}

OutsideBy explanationOf(const OutsideStory& story, const LaterReading& later,
                        const std::vector<PathChangeTold>& changes)
{
    if (later.gauge != 0 && isInsideWithout(story, later.gauge))
        return OutsideBy::Gauge;
    if (later.person != 0 && isInsideWithout(story, later.person))
        return OutsideBy::Person;
    if (later.person != 0 && later.gauge != 0 && isInsideWithout(story, later.person + later.gauge))
        return OutsideBy::Both;
    const bool isAfterChange = std::ranges::any_of(
        changes, [&](const PathChangeTold& change) { return change.atLower <= story.rigging; });
    if (!isAfterChange || !later.path)
        return OutsideBy::Nothing;
    const double moved = *later.path - story.judgement.band->median;
    const bool explains =
        isInsideWithout(story, moved) || isInsideWithout(story, moved + later.person + later.gauge);
    return explains ? OutsideBy::Movement : OutsideBy::Nothing;
}

bool standsAlone(const OutsideStory& story)
{
    return story.foundAs() || story.corrected || story.struck || story.isOpen();
}

// Whether the second goes on where the first was: nothing was read inside between them.
bool goesOn(const OutsideStory& one, const OutsideStory& next, const std::vector<LaterReading>& readings)
{
    if (standsAlone(one) || standsAlone(next) || one.by != next.by ||
        one.judgement.direction != next.judgement.direction || one.reading.fitting != next.reading.fitting)
        return false;
    const auto between = [&](const LaterReading& later) {
        return one.reading.when < later.reading.when && later.reading.when < next.reading.when;
    };
    return std::ranges::none_of(readings, between);
}

// Of two that lie side by side on one rigging the first names the other.
void tellBesidesOnce(std::vector<OutsideStory>& stories)
{
    std::set<std::pair<ReadingId, ReadingId>> told;
    for (OutsideStory& story : stories) {
        std::erase_if(story.besides, [&](const Reading& other) {
            return told.contains({other.id, story.reading.id});
        });
        for (const Reading& other : story.besides)
            told.emplace(story.reading.id, other.id);
    }
}

bool isBy(Day day, const Stamp& stamp)
{
    return stamp.when.localDay() <= day;
}

bool isSetAside(const OutsideStory& story, Day by)
{
    return story.foundAs() || (story.corrected && isBy(by, story.corrected->stamp)) ||
           (story.struck && isBy(by, story.struck->stamp));
}

bool isAbout(const Question& question, const Reading& reading)
{
    return question.reading == reading.id ||
           (reading.record && question.record == reading.record && question.coupling == reading.coupling);
}

// Asked, so that it is told as a question, or resolved. Who saw later what could not be seen has not said
// what the reading was.
bool isExplained(const Reading& reading, const AirframeFacts& facts, Day by)
{
    const auto isAnswer = [&](const QuestionStory& story) {
        return story.question.day() <= by && isAbout(story.question, reading) &&
               (story.isOpenAfter(by) || !story.resolution->answered);
    };
    const auto isFinding = [&](const Event& event) {
        return event.kind == EventKind::Finding && event.coupling == reading.coupling && event.day <= by &&
               event.day >= reading.when.localDay();
    };
    return std::ranges::any_of(facts.questions, isAnswer) || std::ranges::any_of(facts.events, isFinding);
}

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
    tellBesidesOnce(stories);
    return stories;
}

std::vector<OutsideStory> unexplainedBefore(const AirframeFacts& facts, const AirframeReadings& all,
                                            const RiggingNumbers& numbers, const ReviewPeriod& period)
{
    std::set<FittingId> holding;
    for (const CouplingReadings& one : all.couplings)
        if (const FittingHistory* fitting = one.history.on(period.to); fitting && hasGap(one.coupling))
            holding.insert(fitting->fitting.id);
    StoryTeller teller{facts, all, numbers};
    std::vector<OutsideStory> stories;
    for (const KeptReading& kept : facts.readings) {
        if (kept.reading.when.localDay() >= period.from || !holding.contains(kept.reading.fitting))
            continue;
        auto story = teller.storyOf(kept);
        if (story && story->beyond > 0 && !isSetAside(*story, period.to) &&
            !isExplained(kept.reading, facts, period.to))
            stories.push_back(std::move(*story));
    }
    std::ranges::stable_sort(stories, {}, [](const OutsideStory& one) { return one.reading.when; });
    return stories;
}

std::optional<SeatState> OutsideStory::foundAs() const
{
    if (reading.state != SeatState::Locked)
        return reading.state;
    return corrected && corrected->state != SeatState::Locked ? std::optional{corrected->state}
                                                              : std::nullopt;
}

void tellWhy(const CouplingReadings& all, CouplingReview& coupling)
{
    if (!coupling.movement)
        return;
    std::map<ReadingId, const LaterReading*> readings;
    for (const std::vector<LaterReading>* some : {&all.readings, &all.others})
        for (const LaterReading& one : *some)
            readings.emplace(one.reading.id, &one);
    for (OutsideStory& story : coupling.outside)
        if (const auto later = readings.find(story.reading.id); later != readings.end() && story.beyond > 0)
            story.by = explanationOf(story, *later->second, coupling.movement->changes);
}

std::vector<OutsideRun> outsideRunsOf(const std::vector<OutsideStory>& stories, const CouplingReadings& all)
{
    std::vector<OutsideRun> runs;
    for (std::size_t i = 0; i < stories.size(); ++i) {
        const OutsideStory& story = stories[i];
        if (i == 0 || !goesOn(stories[i - 1], story, all.readings)) {
            runs.push_back({i, 1, story.beyond, story.beyond});
            continue;
        }
        OutsideRun& run = runs.back();
        ++run.count;
        run.nearest = std::min(run.nearest, story.beyond);
        run.farthest = std::max(run.farthest, story.beyond);
    }
    return runs;
}

} // namespace rig
