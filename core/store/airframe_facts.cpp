#include "core/store/airframe_facts.h"

#include "core/store/connection.h"
#include "core/store/facts_book.h"

#include <algorithm>

namespace rig {

Result<AirframeFacts> factsWithoutReadings(const Records& records, AirframeId airframe)
{
    AirframeFacts facts;
    std::vector<Airframe> airframes;
    Problem problem;
    const bool all = take(records.airframes(), airframes, problem) &&
                     take(records.persons(), facts.persons, problem) &&
                     take(records.gauges(), facts.gauges, problem) &&
                     take(records.gaugeChecks(), facts.gaugeChecks, problem) &&
                     take(records.couplings(airframe), facts.couplings, problem) &&
                     take(records.fittings(airframe), facts.fittings, problem) &&
                     take(records.events(airframe), facts.events, problem) &&
                     take(records.jointPlays(airframe), facts.jointPlays, problem) &&
                     take(records.exclusions(airframe), facts.exclusions, problem) &&
                     take(records.frozenBaselines(airframe), facts.frozenBaselines, problem) &&
                     take(records.riggingRecords(airframe), facts.riggingRecords, problem) &&
                     take(records.closings(airframe), facts.closings, problem) &&
                     take(records.surfaces(airframe), facts.surfaces, problem) &&
                     take(records.questions(airframe), facts.questions, problem) &&
                     take(records.notesRead(airframe), facts.notesRead, problem);
    if (!all)
        return problem;
    const auto found = std::ranges::find(airframes, airframe, &Airframe::id);
    if (found == airframes.end())
        return Problem{ProblemKind::NotFound, textOf(airframe.bytes)};
    facts.airframe = *found;
    facts.inDoubt = records.inDoubt();
    return facts;
}

Result<AirframeFacts> factsOf(const Records& records, AirframeId airframe)
{
    auto rest = factsWithoutReadings(records, airframe);
    if (!rest)
        return rest;
    AirframeFacts facts = std::move(rest).value();
    Problem problem;
    if (!take(records.readings(airframe), facts.readings, problem))
        return problem;
    return facts;
}

Outcome readContents(const Records& records, AirframeFacts& facts, Progress* progress)
{
    facts.contents.clear();
    for (const RiggingRecord& record : facts.riggingRecords) {
        if (!goesOn(progress, facts.contents.size(), facts.riggingRecords.size()))
            return stoppedWork();
        auto content = records.content(record.id);
        if (!content)
            return content.problem();
        facts.contents.push_back(std::move(content).value());
    }
    return Done{};
}

Result<PersonStandings> personStandingsOn(const Records& records, const AirframeFacts& facts, Day day)
{
    const auto learning = records.book().learning(facts.airframe.id);
    if (!learning)
        return learning.problem();
    if (!tellsOfAnybody(*learning.value()))
        return PersonStandings{};
    std::vector<PartInRigging> parts;
    Problem problem;
    const bool isAsked = !learning.value()->signOffs.empty();
    if (isAsked && !take(records.partsInRiggings(facts.airframe.id), parts, problem))
        return problem;
    return personStandingsOf(*learning.value(), facts, parts, day);
}

} // namespace rig
