#include "core/review/review_period.h"

#include <algorithm>
#include <set>

namespace rig {

namespace {

Day firstDayOf(const AirframeFacts& facts, Day today)
{
    Day first = today;
    // Oldest first, but for what places apart on the earth call the same day.
    for (const KeptReading& kept : facts.readings) {
        const Day day = kept.reading.when.localDay();
        if (first + std::chrono::days{2} < day)
            break;
        first = std::min(first, day);
    }
    for (const RiggingRecord& record : facts.riggingRecords)
        first = std::min(first, record.begins.localDay());
    for (const Fitting& fitting : facts.fittings)
        first = std::min(first, fitting.begins);
    for (const Event& event : facts.events)
        first = std::min(first, event.day);
    return first;
}

} // namespace

std::vector<ReviewPeriod> reviewPeriods(const AirframeFacts& facts, Day today)
{
    std::set<Day> annuals;
    for (const Event& event : facts.events)
        if (event.kind == EventKind::Annual && !event.coupling && event.day <= today)
            annuals.insert(event.day);
    const Day first = firstDayOf(facts, today);

    std::vector<ReviewPeriod> periods;
    Day to = today;
    std::optional<Day> annual = facts.airframe.annualDue;
    bool isCurrent = true;
    for (auto begin = annuals.rbegin(); begin != annuals.rend(); ++begin) {
        periods.push_back({*begin, to, annual, true, isCurrent});
        to = *begin - std::chrono::days{1};
        annual = *begin;
        isCurrent = false;
    }
    if (first <= to)
        periods.push_back({first, to, annual, false, isCurrent});
    const ReviewPeriod whole{first, today, facts.airframe.annualDue, false, true};
    if (std::ranges::find(periods, whole) == periods.end() && periods.size() > 1)
        periods.push_back(whole);
    return periods;
}

} // namespace rig
