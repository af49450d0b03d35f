#include "core/review/person_riggings.h"

#include "core/lesson/spacing.h"

#include <algorithm>

namespace rig {

std::map<PersonId, std::vector<Day>> riggingDaysOf(const AirframeFacts& facts,
                                                   std::span<const PartInRigging> parts)
{
    std::map<RecordId, Day> riggings;
    for (const RiggingRecord& record : facts.riggingRecords)
        if (record.origin != RecordOrigin::Recheck)
            riggings.emplace(record.id, record.begins.localDay());
    for (const RecordClose& close : facts.closings)
        if (close.closing == Closing::Abandoned)
            riggings.erase(close.record);
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
        if (day <= signOff.day)
            continue;
        if (day >= monthsAfter(last.value_or(signOff.day), signOff.monthsWithoutRigging))
            break;
        last = day;
    }
    return last;
}

} // namespace rig
