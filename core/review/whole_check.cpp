#include "core/review/whole_check.h"

#include "core/rigging/abandoned.h"
#include "core/rigging/rigged_before.h"

#include <algorithm>
#include <set>

namespace rig {

namespace {

// By the day and, within one, by the order of saving: that is all that an event knows of its hour.
bool isLater(const Event* one, const Event* other)
{
    return one->day != other->day ? one->day > other->day : savedBefore(*other, *one);
}

// Whether the event came before the rigging, or in the middle of it. Of the day of a rigging from paper
// nobody knows, and it asks.
bool cameBefore(const Event& event, const RiggingRecord& record, const std::vector<RecordClose>& closings)
{
    const Day day = record.begins.localDay();
    if (event.day != day || record.isFromPaper())
        return event.day <= day;
    const auto close = std::ranges::find(closings, record.id, &RecordClose::record);
    return close == closings.end() || savedBefore(event, *close);
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
    case EventKind::Finding:
        break;
    }
    return false;
}

WholeChecks::WholeChecks(const AirframeFacts& facts, const RiggingRecord* record)
{
    for (const Event& event : facts.events)
        if (asksForWholeCheck(event.kind) && (!record || cameBefore(event, *record, facts.closings)))
            m_events.push_back(&event);
    std::ranges::sort(m_events, isLater);
    const std::set<RecordId> complete = closedAs(Closing::Complete, facts.closings);
    for (const RiggingRecord& one : facts.riggingRecords) {
        if (!complete.contains(one.id) || (record && !riggedBefore(one, *record)))
            continue;
        const Day day = one.begins.localDay();
        if (!m_lastDay || *m_lastDay < day) {
            m_lastDay = day;
            m_last.reset();
        }
        if (day == m_lastDay && !one.isFromPaper())
            m_last = std::max(m_last.value_or(SaveOrder{}), saveOrderOf(one));
    }
}

// By a rigging of a later day, or of the same one that was begun after the event was told. One from paper
// says nothing of its own day: it was saved whenever it was typed in.
bool WholeChecks::isAnswered(const Event& event) const
{
    return m_lastDay &&
           (event.day < *m_lastDay || (event.day == *m_lastDay && m_last && saveOrderOf(event) < *m_last));
}

std::optional<Event> WholeChecks::askedOf(CouplingId coupling) const
{
    const auto last = std::ranges::find_if(
        m_events, [coupling](const Event* event) { return !event->coupling || event->coupling == coupling; });
    return last == m_events.end() || isAnswered(**last) ? std::nullopt : std::optional{**last};
}

} // namespace rig
