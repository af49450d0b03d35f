#include "core/review/paper_entry.h"

#include "core/rigging/abandoned.h"

#include <algorithm>

namespace rig {

namespace {

// The first fitting of a joint reaches back without end: it began when the joint was typed in, and nobody
// chose that day. Only of a joint that begins with a refit is nothing known of what was there before.
std::optional<Day> firstDayKnown(const AirframeFacts& facts)
{
    std::optional<Day> first;
    for (const Fitting& one : facts.fittings) {
        if (one.kind == FittingKind::First)
            return std::nullopt;
        first = std::min(first.value_or(one.begins), one.begins);
    }
    return first;
}

} // namespace

PaperMoment paperMomentOf(const AirframeFacts& facts, Moment begins, Moment now)
{
    using enum PaperMoment::Finding;
    if (begins > now)
        return {ToCome};
    const Day day = begins.localDay();
    if (const auto first = firstDayKnown(facts); first && day < *first)
        return {BeforeFirstFitting, *first};
    const std::set<RecordId> leftBehind = abandonedAmong(facts.closings);
    for (const RiggingRecord& record : facts.riggingRecords)
        if (record.origin != RecordOrigin::ImportedTable && record.begins.localDay() == day &&
            !leftBehind.contains(record.id))
            return {RiggedThatDay, {}, &record};
    return {};
}

} // namespace rig
