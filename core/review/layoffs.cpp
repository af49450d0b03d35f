#include "core/review/layoffs.h"

#include "core/airframe/saved_before.h"
#include "core/review/record_review.h"

#include <algorithm>

namespace rig {

namespace {

bool isAbandoned(const RiggingRecord& record, std::span<const RecordClose> closings)
{
    return std::ranges::any_of(closings, [&record](const RecordClose& close) {
        return close.record == record.id && close.closing == Closing::Abandoned;
    });
}

bool beganBefore(const RiggingRecord& one, const RiggingRecord& other)
{
    if (one.begins != other.begins)
        return one.begins < other.begins;
    return savedBefore(one, other);
}

} // namespace

StoodBefore stoodBefore(const RiggingRecord& record, std::span<const RiggingRecord> all,
                        std::span<const RecordClose> closings)
{
    StoodBefore stood{record.id, record.begins.localDay(), {}, isFirstOfSeason(record, all, closings)};
    for (const RiggingRecord& one : all)
        if (one.id != record.id && beganBefore(one, record) && !isAbandoned(one, closings))
            stood.since = std::max(stood.since.value_or(one.begins.localDay()), one.begins.localDay());
    return stood;
}

std::vector<StoodBefore> stoodBefore(std::span<const RiggingRecord> all,
                                     std::span<const RecordClose> closings)
{
    std::vector<const RiggingRecord*> riggings;
    for (const RiggingRecord& one : all)
        if (!isAbandoned(one, closings))
            riggings.push_back(&one);
    std::ranges::stable_sort(riggings, [](const RiggingRecord* one, const RiggingRecord* other) {
        return beganBefore(*one, *other);
    });
    const auto yearOf = [](Day day) { return std::chrono::year_month_day{day}.year(); };
    std::vector<StoodBefore> stood;
    std::optional<Day> last;
    std::optional<Day> lastRigging;
    for (const RiggingRecord* one : riggings) {
        const Day day = one->begins.localDay();
        if (one->origin != RecordOrigin::Recheck) {
            stood.push_back({one->id, day, last, !lastRigging || yearOf(*lastRigging) != yearOf(day)});
            lastRigging = day;
        }
        last = day;
    }
    return stood;
}

} // namespace rig
