#include "core/review/layoffs.h"

#include "core/rigging/abandoned.h"
#include "core/rigging/rigged_before.h"

#include <algorithm>

namespace rig {

namespace {

auto yearOf(Day day)
{
    return std::chrono::year_month_day{day}.year();
}

// What was done on the airframe up to some moment.
class DoneBefore
{
public:
    explicit DoneBefore(std::span<const RecordClose> closings) : m_abandoned{abandonedAmong(closings)} {}

    void take(const RiggingRecord& record)
    {
        if (m_abandoned.contains(record.id))
            return;
        const Day day = record.begins.localDay();
        m_last = std::max(m_last.value_or(day), day);
        if (isRigging(record))
            m_lastRigging = std::max(m_lastRigging.value_or(day), day);
    }

    StoodBefore before(const RiggingRecord& record) const
    {
        const Day day = record.begins.localDay();
        return {record.id, day, m_last, !m_lastRigging || yearOf(*m_lastRigging) != yearOf(day)};
    }

    bool isRigging(const RiggingRecord& record) const
    {
        return record.origin != RecordOrigin::Recheck && !m_abandoned.contains(record.id);
    }

private:
    std::set<RecordId> m_abandoned;
    std::optional<Day> m_last;
    std::optional<Day> m_lastRigging;
};

std::vector<const RiggingRecord*> inOrder(std::span<const RiggingRecord> all)
{
    std::vector<const RiggingRecord*> records;
    for (const RiggingRecord& one : all)
        records.push_back(&one);
    std::ranges::sort(records, [](const RiggingRecord* one, const RiggingRecord* other) {
        return riggedBefore(*one, *other);
    });
    return records;
}

} // namespace

StoodBefore stoodBefore(const RiggingRecord& record, std::span<const RiggingRecord> all,
                        std::span<const RecordClose> closings)
{
    DoneBefore done{closings};
    for (const RiggingRecord& one : all)
        if (riggedBefore(one, record))
            done.take(one);
    return done.before(record);
}

std::map<RecordId, StoodBefore> stoodBeforeEach(std::span<const RiggingRecord> all,
                                                std::span<const RecordClose> closings)
{
    DoneBefore done{closings};
    std::map<RecordId, StoodBefore> stood;
    for (const RiggingRecord* one : inOrder(all)) {
        stood.emplace(one->id, done.before(*one));
        done.take(*one);
    }
    return stood;
}

std::vector<StoodBefore> stoodBefore(std::span<const RiggingRecord> all,
                                     std::span<const RecordClose> closings)
{
    DoneBefore done{closings};
    std::vector<StoodBefore> stood;
    for (const RiggingRecord* one : inOrder(all)) {
        if (done.isRigging(*one))
            stood.push_back(done.before(*one));
        done.take(*one);
    }
    return stood;
}

} // namespace rig
