#include "core/review/whole_check.h"

#include "core/airframe/saved_before.h"

#include <algorithm>

namespace rig {

namespace {

// Everything was done in it, and it began after the event.
bool answers(const RiggingRecord& record, const Event& event, const AirframeFacts& facts)
{
    const Day day = record.begins.localDay();
    const bool cameLater = day > event.day || (day == event.day && savedBefore(event, record));
    return cameLater && std::ranges::any_of(facts.closings, [&record](const RecordClose& close) {
               return close.record == record.id && close.closing == Closing::Complete;
           });
}

bool isBegunBefore(const Event& event, const AirframeFacts& facts, std::optional<RecordId> record)
{
    const auto asked = std::ranges::find_if(facts.riggingRecords,
                                            [&record](const RiggingRecord& one) { return record == one.id; });
    return asked == facts.riggingRecords.end() || event.day <= asked->begins.localDay();
}

} // namespace

bool asksForWholeCheck(EventKind kind)
{
    switch (kind) {
    case EventKind::Cleaned:
    case EventKind::Greased:
    case EventKind::Refitted:
    case EventKind::PartChanged:
        return true;
    case EventKind::Annual:
    case EventKind::Note:
    case EventKind::Derigged:
        break;
    }
    return false;
}

std::optional<Event> wholeCheckAsked(const AirframeFacts& facts, CouplingId coupling,
                                     std::optional<RecordId> record)
{
    const Event* last = nullptr;
    for (const Event& event : facts.events) {
        const bool isOfIt = !event.coupling || event.coupling == coupling;
        if (!isOfIt || !asksForWholeCheck(event.kind) || !isBegunBefore(event, facts, record))
            continue;
        if (!last || last->day < event.day || (last->day == event.day && savedBefore(*last, event)))
            last = &event;
    }
    if (!last)
        return std::nullopt;
    const auto asked = std::ranges::find_if(facts.riggingRecords,
                                            [&record](const RiggingRecord& one) { return record == one.id; });
    const bool isAnswered = std::ranges::any_of(facts.riggingRecords, [&](const RiggingRecord& one) {
        return (asked == facts.riggingRecords.end() || savedBefore(one, *asked)) &&
               answers(one, *last, facts);
    });
    return isAnswered ? std::nullopt : std::optional{*last};
}

} // namespace rig
