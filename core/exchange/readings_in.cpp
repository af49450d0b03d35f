#include "core/exchange/readings_in.h"

#include "core/baseline/admitted.h"
#include "core/day_entry.h"
#include "core/exchange/row_key.h"
#include "core/rigging/counts_as.h"
#include "core/rigging/time_known.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <tuple>
#include <utility>

namespace rig {

namespace {

// A rigging that a table tells of: when it began, and whether that is more than its day.
using RiggingKey = std::tuple<AirframeId, Moment, bool>;

RiggingKey keyOfRigging(AirframeId airframe, const Moment& begins)
{
    return {airframe, begins, isTimeTold(begins)};
}

// What of the file bears on further readings.
struct KnownReadings
{
    std::map<RiggingKey, RecordId> imported;     // records of earlier tables
    std::set<std::pair<AirframeId, Day>> rigged; // days that have one of another origin
    RowCounts readings;                          // superseded ones among them

    // Whether nobody can tell from a table that this one is another than one that is there.
    bool mayBeThere(const RiggingKey& key) const
    {
        const auto& [airframe, when, isTimeKnown] = key;
        const Day day = when.localDay();
        return rigged.contains({airframe, day}) || std::ranges::any_of(imported, [&](const auto& one) {
                   const auto& [otherAirframe, otherWhen, isOtherKnown] = one.first;
                   return otherAirframe == airframe && otherWhen.localDay() == day &&
                          isOtherKnown != isTimeKnown;
               });
    }
};

Outcome learn(const Records& records, AirframeId airframe, KnownReadings& known)
{
    Problem problem;
    std::vector<KeptReading> readings;
    std::vector<RiggingRecord> riggings;
    if (!take(records.readings(airframe), readings, problem) ||
        !take(records.riggingRecords(airframe), riggings, problem))
        return problem;
    for (const KeptReading& kept : readings)
        ++known.readings[keyOf(kept.reading)];
    for (const RiggingRecord& record : riggings) {
        if (record.origin == RecordOrigin::ImportedTable)
            known.imported.emplace(keyOfRigging(airframe, record.begins), record.id);
        else
            known.rigged.emplace(airframe, record.begins.localDay());
    }
    return Done{};
}

struct ResolvedRow
{
    AirframeId airframe;
    Reading reading;
    Moment rigging; // when it began
};

// Looks the names of rows up and refuses what does not fit the file.
class Resolver
{
public:
    Resolver(const NamedThings& things, const KnownReadings& known, Day today, std::vector<BadRow>& bad)
        : m_things{things}, m_known{known}, m_today{today}, m_bad{bad}
    {
    }

    void resolve(const TableRow& row)
    {
        const std::size_t before = m_bad.size();
        m_leansOnBadRow = false;
        ResolvedRow resolved;
        fill(row, resolved);
        if (m_bad.size() == before && !m_leansOnBadRow && isNew(row, keyOf(resolved.reading)))
            m_rows.push_back(std::move(resolved));
    }

    const std::vector<ResolvedRow>& rows() const { return m_rows; }

private:
    void refuse(const TableRow& row, RowProblem problem, const std::string& text, const char* column)
    {
        m_bad.push_back({row.line, problem, text, column});
    }

    // The id of what has this name; null where a row refuses it.
    template <typename Thing>
    auto idOf(const ByName<Thing>& things, const std::string& name, const TableRow& row, RowProblem elseWhy,
              const char* column)
    {
        const Thing* thing = found(things, name);
        if (!thing)
            refuse(row, elseWhy, name, column);
        m_leansOnBadRow = m_leansOnBadRow || (thing && thing->id.isNull());
        return thing ? thing->id : decltype(Thing::id){};
    }

    void fill(const TableRow& row, ResolvedRow& resolved)
    {
        Reading& reading = resolved.reading;
        if (row.day > m_today)
            refuse(row, RowProblem::FutureDay, dayText(row.day), "date");
        resolved.airframe =
            idOf(m_things.airframes, row.airframe, row, RowProblem::UnknownAirframe, "airframe");
        if (const NamedAirframe* airframe = found(m_things.airframes, row.airframe))
            fillCoupling(row, *airframe, reading);
        reading.person = idOf(m_things.people, row.person, row, RowProblem::UnknownPerson, "person");
        if (!row.gauge.empty())
            reading.gauge = idOf(m_things.gauges, row.gauge, row, RowProblem::UnknownGauge, "gauge");
        if (!row.second.empty())
            reading.second = idOf(m_things.people, row.second, row, RowProblem::UnknownPerson, "second");
        if (reading.second && !reading.person.isNull() && *reading.second == reading.person)
            refuse(row, RowProblem::SecondIsPerson, row.second, "second");
        reading.interval = row.interval;
        reading.technique = Technique::Table;
        reading.state = row.state == RowState::PartSeated ? SeatState::PartSeated : SeatState::Locked;
        reading.purpose = purposeOf(row.state);
        reading.when = momentOf(row.day, row.time);
        resolved.rigging = momentOf(row.day, row.rigging);
        reading.note = row.note;
        reading.stamp.by = reading.person;
    }

    static Purpose purposeOf(RowState state)
    {
        switch (state) {
        case RowState::Locked:
            return Purpose::Rigging;
        case RowState::PartSeated:
            return Purpose::Demonstration;
        case RowState::Baseline:
            return Purpose::Baseline;
        case RowState::NotSecured:
            break;
        }
        return Purpose::Rigging;
    }

    void fillCoupling(const TableRow& row, const NamedAirframe& airframe, Reading& reading)
    {
        reading.coupling =
            idOf(airframe.couplings, row.coupling, row, RowProblem::UnknownCoupling, "coupling");
        if (reading.coupling.isNull())
            return;
        if (!hasGap(*found(airframe.couplings, row.coupling)))
            refuse(row, RowProblem::NothingToMeasure, row.coupling, "coupling");
        else if (const auto fitting = fittingOn(row.day, reading.coupling, airframe.fittings))
            reading.fitting = fitting->id;
        else
            refuse(row, RowProblem::NoFitting, row.coupling, "coupling");
    }

    // Repeats of the same reading count on from those in the file, so a table cannot come in twice.
    bool isNew(const TableRow& row, const RowKey& key)
    {
        const auto counted = m_known.readings.find(key);
        const int inFile = counted == m_known.readings.end() ? 0 : counted->second;
        int& inTable = m_inTable[key];
        if (row.repeat == inFile + inTable + 1) {
            ++inTable;
            return true;
        }
        RowProblem problem = RowProblem::RepeatSkips;
        if (row.repeat <= inFile)
            problem = RowProblem::AlreadyInFile;
        else if (row.repeat <= inFile + inTable)
            problem = RowProblem::TwiceInTable;
        refuse(row, problem, row.coupling, "repeat");
        return false;
    }

    const NamedThings& m_things;
    const KnownReadings& m_known;
    Day m_today;
    std::vector<BadRow>& m_bad;
    RowCounts m_inTable;
    std::vector<ResolvedRow> m_rows;
    bool m_leansOnBadRow = false; // the row names what a bad row of another table tells of
};

// The rigging record that a reading of a table belongs to.
Result<RecordId> recordFor(Records& records, const ResolvedRow& row, KnownReadings& known, Imported& imported)
{
    const RiggingKey key = keyOfRigging(row.airframe, row.rigging);
    if (const auto at = known.imported.find(key); at != known.imported.end())
        return at->second;
    RiggingRecord record;
    record.airframe = row.airframe;
    record.origin = RecordOrigin::ImportedTable;
    record.leader = row.reading.person;
    record.begins = row.rigging;
    record.stamp.by = row.reading.person;
    const auto added = records.add(record);
    if (added) {
        ++imported.records;
        if (known.mayBeThere(key)) {
            ++imported.sameDay;
            imported.sameDays.insert(row.rigging.localDay());
        }
        known.imported.emplace(key, added.value());
    }
    return added;
}

Outcome keep(Records& records, const std::vector<ResolvedRow>& rows, KnownReadings& known, Imported& imported,
             Progress* progress)
{
    std::size_t kept = 0;
    for (const ResolvedRow& row : rows) {
        if (!goesOn(progress, kept++, rows.size()))
            return Problem{ProblemKind::Unexpected, "stopped"};
        Reading reading = row.reading;
        if (countsAs(reading.purpose).rigging) {
            const auto record = recordFor(records, row, known, imported);
            if (!record)
                return record.problem();
            reading.record = record.value();
        }
        if (const auto added = records.add(reading, std::nullopt); !added)
            return added.problem();
        ++imported.readings;
    }
    return Done{};
}

} // namespace

Outcome addReadings(Records& records, Day today, const std::vector<TableRow>& rows, const NamedThings& known,
                    Imported& imported, Progress* progress)
{
    KnownReadings readings;
    for (const auto& [name, airframe] : known.airframes)
        if (const Outcome learnt = learn(records, airframe.id, readings); !learnt)
            return learnt;
    Resolver resolver{known, readings, today, imported.bad};
    for (const TableRow& row : rows)
        resolver.resolve(row);
    return imported.bad.empty() ? keep(records, resolver.rows(), readings, imported, progress)
                                : Outcome{Done{}};
}

} // namespace rig
