#include "core/review/paper_entry.h"

#include "core/rigging/abandoned.h"

#include <algorithm>

namespace rig {

PaperMoment paperMomentOf(const AirframeFacts& facts, Moment begins, Moment now)
{
    using enum PaperMoment::Finding;
    if (begins > now)
        return {ToCome};
    const Day day = begins.localDay();
    const auto first = std::ranges::min_element(facts.fittings, {}, &Fitting::begins);
    if (first != facts.fittings.end() && day < first->begins)
        return {BeforeFirstFitting, first->begins};
    const std::set<RecordId> leftBehind = abandonedAmong(facts.closings);
    for (const RiggingRecord& record : facts.riggingRecords)
        if (record.origin != RecordOrigin::ImportedTable && record.begins.localDay() == day &&
            !leftBehind.contains(record.id))
            return {RiggedThatDay, {}, &record};
    return {};
}

} // namespace rig
