#include "core/review/paper_entry.h"

#include <algorithm>

namespace rig {

namespace {

bool isLeftBehind(const AirframeFacts& facts, const RiggingRecord& record)
{
    return std::ranges::any_of(facts.closings, [&record](const RecordClose& close) {
        return close.record == record.id && close.closing == Closing::Abandoned;
    });
}

} // namespace

PaperMoment paperMomentOf(const AirframeFacts& facts, Moment begins, Moment now)
{
    using enum PaperMoment::Finding;
    if (begins > now)
        return {ToCome};
    const Day day = begins.localDay();
    const auto first = std::ranges::min_element(facts.fittings, {}, &Fitting::begins);
    if (first != facts.fittings.end() && day < first->begins)
        return {BeforeFirstFitting, first->begins};
    for (const RiggingRecord& record : facts.riggingRecords)
        if (record.origin != RecordOrigin::ImportedTable && record.begins.localDay() == day &&
            !isLeftBehind(facts, record))
            return {RiggedThatDay, {}, &record};
    return {};
}

} // namespace rig
