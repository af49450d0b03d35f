#include "core/review/layoffs.h"

#include "core/airframe/saved_before.h"
#include "core/review/record_review.h"

#include <algorithm>
#include <set>

namespace rig {

namespace {

std::set<RecordId> abandonedAmong(std::span<const RecordClose> closings)
{
    std::set<RecordId> abandoned;
    for (const RecordClose& close : closings)
        if (close.closing == Closing::Abandoned)
            abandoned.insert(close.record);
    return abandoned;
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
    const std::set<RecordId> abandoned = abandonedAmong(closings);
    for (const RiggingRecord& one : all)
        if (one.id != record.id && beganBefore(one, record) && !abandoned.contains(one.id))
            stood.since = std::max(stood.since.value_or(one.begins.localDay()), one.begins.localDay());
    return stood;
}

std::vector<StoodBefore> stoodBefore(std::span<const RiggingRecord> all,
                                     std::span<const RecordClose> closings)
{
    std::vector<const RiggingRecord*> riggings;
    const std::set<RecordId> abandoned = abandonedAmong(closings);
    for (const RiggingRecord& one : all)
        if (!abandoned.contains(one.id))
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
