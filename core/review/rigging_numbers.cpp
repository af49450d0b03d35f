#include "core/review/rigging_numbers.h"

#include "core/rigging/abandoned.h"
#include "core/rigging/counts_as.h"
#include "core/rigging/time_known.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace rig {

namespace {

Day dayOfWall(std::int64_t seconds)
{
    return std::chrono::floor<std::chrono::days>(std::chrono::sys_seconds{std::chrono::seconds{seconds}});
}

bool isRiggingOfTable(const Reading& reading, const std::map<RecordId, Moment>& tables)
{
    return reading.record && tables.contains(*reading.record) && countsAs(reading.purpose).rigging;
}

} // namespace

std::int64_t wallSeconds(const Moment& moment)
{
    return moment.utcSeconds + moment.offsetSeconds;
}

std::int64_t wallSeconds(Day day)
{
    return std::chrono::sys_seconds{day}.time_since_epoch().count();
}

RiggingNumbers::RiggingNumbers(const AirframeFacts& facts) : m_before{facts.airframe.riggingsBefore}
{
    const std::set<RecordId> abandoned = abandonedAmong(facts.closings);
    std::map<Key, std::int64_t> begins;
    std::map<RecordId, Moment> tables; // when they began
    for (const RiggingRecord& record : facts.riggingRecords) {
        if (record.origin == RecordOrigin::ImportedTable)
            tables.emplace(record.id, record.begins);
        else if (record.origin == RecordOrigin::Rigging && !abandoned.contains(record.id))
            begins.emplace(Key{record.id, Day{}}, wallSeconds(record.begins));
    }
    for (const KeptReading& kept : facts.readings) {
        if (!isRiggingOfTable(kept.reading, tables))
            continue;
        const Moment& begun = tables.at(*kept.reading.record);
        const bool isTold = isTimeTold(begun) && begun.localDay() == kept.reading.when.localDay();
        const std::int64_t when = wallSeconds(isTold ? begun : kept.reading.when);
        const auto [day, isNew] =
            begins.emplace(Key{*kept.reading.record, kept.reading.when.localDay()}, when);
        day->second = isNew ? when : std::min(day->second, when);
    }

    std::vector<std::pair<std::int64_t, Key>> inOrder;
    for (const auto& [key, when] : begins)
        inOrder.emplace_back(when, key);
    std::ranges::sort(inOrder);
    for (const auto& [when, key] : inOrder) {
        m_begins.push_back(when);
        m_numbers.emplace(key, m_before + static_cast<int>(m_begins.size()));
    }
}

std::optional<int> RiggingNumbers::of(const Reading& reading) const
{
    if (!reading.record)
        return std::nullopt;
    auto found = m_numbers.find({*reading.record, Day{}});
    if (found == m_numbers.end() && countsAs(reading.purpose).rigging)
        found = m_numbers.find({*reading.record, reading.when.localDay()});
    if (found == m_numbers.end())
        return std::nullopt;
    return found->second;
}

int RiggingNumbers::lastBy(Day day) const
{
    const std::int64_t end = wallSeconds(day + std::chrono::days{1});
    return m_before + static_cast<int>(std::ranges::lower_bound(m_begins, end) - m_begins.begin());
}

int RiggingNumbers::within(Day from, Day to) const
{
    return from <= to ? lastBy(to) - lastBy(from - std::chrono::days{1}) : 0;
}

std::optional<Day> RiggingNumbers::firstDay() const
{
    if (m_begins.empty())
        return std::nullopt;
    return dayOfWall(m_begins.front());
}

std::optional<Day> RiggingNumbers::firstDayOfLast(int count, Day upTo) const
{
    const int riggings = lastBy(upTo) - m_before;
    if (count < 1 || count >= riggings)
        return std::nullopt;
    return dayOfWall(m_begins[static_cast<std::size_t>(riggings - count)]);
}

std::vector<double> RiggingNumbers::between(std::span<const std::int64_t> times) const
{
    const auto riggingsBy = [this](std::int64_t time) {
        return std::ranges::upper_bound(m_begins, time) - m_begins.begin();
    };
    std::vector<double> places;
    for (std::size_t begin = 0; begin < times.size();) {
        const auto riggings = riggingsBy(times[begin]);
        std::size_t end = begin + 1;
        while (end < times.size() && riggingsBy(times[end]) == riggings)
            ++end;
        const auto shares = static_cast<double>(end - begin + 1);
        for (std::size_t i = begin; i < end; ++i)
            places.push_back(m_before + static_cast<double>(riggings) +
                             static_cast<double>(i - begin + 1) / shares);
        begin = end;
    }
    return places;
}

} // namespace rig
