#include "core/review/person_riggings.h"

#include "core/lesson/spacing.h"
#include "core/review/last_rigging.h"

#include <algorithm>

namespace rig {

std::map<PersonId, std::vector<Day>> riggingDaysOf(const AirframeFacts& facts,
                                                   std::span<const PartInRigging> parts)
{
    std::map<RecordId, Day> riggings;
    for (const EndedRigging& ended : endedRiggings(facts))
        if (!ended.isAbandoned() && ended.rigging().origin == RecordOrigin::Rigging)
            riggings.emplace(ended.rigging().id, ended.rigging().begins.localDay());
    std::map<PersonId, std::vector<Day>> days;
    const auto note = [&](RecordId record, const std::optional<PersonId>& person) {
        if (const auto rigging = riggings.find(record); person && rigging != riggings.end())
            days[*person].push_back(rigging->second);
    };
    for (const RiggingRecord& record : facts.riggingRecords)
        note(record.id, record.leader);
    for (const RecordClose& close : facts.closings) {
        note(close.record, close.first);
        note(close.record, close.second);
    }
    for (const PartInRigging& part : parts)
        note(part.record, part.person);
    for (auto& [person, of] : days) {
        std::ranges::sort(of);
        const auto again = std::ranges::unique(of);
        of.erase(again.begin(), again.end());
    }
    return days;
}

std::optional<Day> lastRiggingOf(PersonId person, const std::map<PersonId, std::vector<Day>>& days)
{
    const auto found = days.find(person);
    return found == days.end() ? std::nullopt : std::optional{found->second.back()};
}

std::optional<Day> lastBeforeABreak(const SignOff& signOff, std::span<const Day> days)
{
    std::optional<Day> last;
    for (const Day day : days) {
        if (day > signOff.day && day >= monthsAfter(last.value_or(signOff.day), signOff.monthsWithoutRigging))
            break;
        last = day;
    }
    return last;
}

} // namespace rig
