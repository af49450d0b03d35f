#include "core/review/judged_readings.h"

#include "core/review/judging.h"
#include "core/review/not_seen.h"
#include "core/rigging/counts_as.h"
#include "core/rigging/measured_before.h"

#include <algorithm>
#include <map>

namespace rig {

namespace {

void sortOldestFirst(std::vector<JudgedReading>& readings)
{
    if (!std::ranges::is_sorted(readings, measuredBefore, &JudgedReading::reading)) // mostly it is
        std::ranges::sort(readings, measuredBefore, &JudgedReading::reading);
}

// Why a reading stands aside, or cannot tell, by the reading.
struct SetAside
{
    explicit SetAside(const AirframeFacts& facts)
    {
        for (const KeptReading& kept : facts.readings)
            if (kept.reading.corrects)
                superseded.emplace(*kept.reading.corrects, kept.reading.note);
        for (const Exclusion& exclusion : facts.exclusions)
            excluded.emplace(exclusion.reading, exclusion.reason);
        for (const QuestionStory& story : facts.questions)
            if (story.isOpen() && story.question.kind == QuestionKind::CannotSee)
                notSeen.push_back(story);
    }

    void tell(JudgedReading& one) const
    {
        if (one.reading.record && !notSeen.empty())
            one.judgement =
                withoutSight(one.judgement, notSeenAmong(notSeen, *one.reading.record, one.reading.coupling));
        if (const auto found = superseded.find(one.reading.id); found != superseded.end()) {
            one.superseded = true;
            one.supersededReason = found->second;
        }
        const auto found = excluded.find(one.reading.id);
        if (found == excluded.end())
            return;
        if (countsAs(one.reading.purpose).rigging) {
            one.struck = true;
            one.struckReason = found->second;
        } else if (!one.ofBaseline) {
            one.leftOut = true;
            one.leftOutReason = found->second;
        }
    }

    std::map<ReadingId, std::string> superseded;
    std::map<ReadingId, std::string> excluded;
    std::vector<QuestionStory> notSeen; // what nobody has seen yet
};

void judgeEach(const CouplingHistory& history, const std::vector<const KeptReading*>& readings,
               const SetAside& setAside, const RiggingNumbers& numbers, std::vector<JudgedReading>& into)
{
    Judging judging{history};
    for (const KeptReading* kept : readings) {
        const Reading& reading = kept->reading;
        JudgedReading one;
        one.reading = reading;
        one.shown = kept->shown;
        one.rigging = numbers.of(reading);
        one.judgement = judging.of(reading);
        if (isHeldAgainstBand(reading))
            one.score = judging.scoreOf(reading);
        one.inDoubt = judging.isInDoubt(reading);
        const FittingHistory* fitting = history.find(reading.fitting);
        one.ofBaseline = fitting && fitting->admitted.contains(reading.id) && !one.inDoubt;
        setAside.tell(one);
        into.push_back(std::move(one));
    }
}

} // namespace

std::vector<JudgedReading> judgedReadingsOf(const CouplingHistory& history, const AirframeFacts& facts,
                                            const RiggingNumbers& numbers, Day last)
{
    std::vector<const KeptReading*> readings;
    for (const KeptReading& kept : facts.readings)
        if (kept.reading.coupling == history.coupling && kept.reading.when.localDay() <= last)
            readings.push_back(&kept);
    std::vector<JudgedReading> judged;
    judgeEach(history, readings, SetAside{facts}, numbers, judged);
    sortOldestFirst(judged);
    return judged;
}

std::vector<JudgedReading> judgedReadings(const AirframeFacts& facts, Day last)
{
    const RiggingNumbers numbers{facts};
    const SetAside setAside{facts};
    std::map<CouplingId, std::vector<const KeptReading*>> byCoupling;
    for (const KeptReading& kept : facts.readings)
        if (kept.reading.when.localDay() <= last)
            byCoupling[kept.reading.coupling].push_back(&kept);
    std::vector<JudgedReading> judged;
    for (const auto& [coupling, readings] : byCoupling) {
        std::vector<Reading> known;
        for (const KeptReading* kept : readings)
            known.push_back(kept->reading);
        const CouplingHistory history = historyOf(coupling, facts, known);
        judgeEach(history, readings, setAside, numbers, judged);
    }
    sortOldestFirst(judged);
    return judged;
}

} // namespace rig
