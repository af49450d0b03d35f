#include "core/exchange/readings_in.h"

#include "core/day_entry.h"
#include "core/exchange/row_key.h"
#include "core/rigging/counts_as.h"
#include "core/store/names.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <utility>

namespace rig {

namespace {

template <typename Thing, typename Name> auto idsByName(const std::vector<Thing>& things, Name name)
{
    std::map<std::string, decltype(Thing::id)> ids;
    for (const Thing& thing : things)
        ids.emplace(comparable(thing.*name), thing.id);
    return ids;
}

template <typename Ids> auto found(const Ids& ids, const std::string& name)
{
    const auto at = ids.find(comparable(name));
    return at == ids.end() ? std::optional<typename Ids::mapped_type>{} : std::optional{at->second};
}

struct KnownAirframe
{
    AirframeId id;
    std::map<std::string, CouplingId> couplings;
    std::set<CouplingId> withoutGap;
    std::vector<Fitting> fittings;
};

// What is in the file, by the names that a table uses.
struct Known
{
    std::map<std::string, PersonId> people;
    std::map<std::string, GaugeId> gauges;
    std::map<std::string, AirframeId> airframeIds;
    std::map<AirframeId, KnownAirframe> airframes;
    std::map<std::pair<AirframeId, Day>, RecordId> imported; // records of earlier tables
    RowCounts readings;                                      // superseded ones among them
};

Outcome learn(const Records& records, AirframeId airframe, Known& known)
{
    Problem problem;
    std::vector<Coupling> couplings;
    std::vector<KeptReading> readings;
    std::vector<RiggingRecord> riggings;
    KnownAirframe& own = known.airframes[airframe];
    own.id = airframe;
    const bool read = take(records.couplings(airframe), couplings, problem) &&
                      take(records.fittings(airframe), own.fittings, problem) &&
                      take(records.readings(airframe), readings, problem) &&
                      take(records.riggingRecords(airframe), riggings, problem);
    if (!read)
        return problem;
    own.couplings = idsByName(couplings, &Coupling::name);
    for (const Coupling& coupling : couplings)
        if (!hasGap(coupling))
            own.withoutGap.insert(coupling.id);
    for (const KeptReading& kept : readings)
        ++known.readings[keyOf(kept.reading)];
    for (const RiggingRecord& record : riggings)
        if (record.origin == RecordOrigin::ImportedTable)
            known.imported.emplace(std::pair{airframe, record.begins.localDay()}, record.id);
    return Done{};
}

Outcome learn(const Records& records, Known& known)
{
    Problem problem;
    std::vector<Person> people;
    std::vector<Gauge> gauges;
    std::vector<Airframe> airframes;
    const bool read = take(records.persons(), people, problem) && take(records.gauges(), gauges, problem) &&
                      take(records.airframes(), airframes, problem);
    if (!read)
        return problem;
    known.people = idsByName(people, &Person::name);
    known.gauges = idsByName(gauges, &Gauge::name);
    known.airframeIds = idsByName(airframes, &Airframe::registration);
    for (const Airframe& airframe : airframes)
        if (const Outcome learnt = learn(records, airframe.id, known); !learnt)
            return learnt;
    return Done{};
}

struct ResolvedRow
{
    AirframeId airframe;
    Reading reading;
};

// Looks the names of rows up and refuses what does not fit the file.
class Resolver
{
public:
    Resolver(const Known& known, Day today, std::vector<BadRow>& bad)
        : m_known{known}, m_today{today}, m_bad{bad}
    {
    }

    void resolve(const TableRow& row)
    {
        const std::size_t before = m_bad.size();
        ResolvedRow resolved;
        fill(row, resolved);
        if (m_bad.size() == before && isNew(row, keyOf(resolved.reading)))
            m_rows.push_back(std::move(resolved));
    }

    const std::vector<ResolvedRow>& rows() const { return m_rows; }

private:
    void refuse(const TableRow& row, RowProblem problem, const std::string& text, const char* column)
    {
        m_bad.push_back({row.line, problem, text, column});
    }

    void fill(const TableRow& row, ResolvedRow& resolved)
    {
        Reading& reading = resolved.reading;
        if (row.day > m_today)
            refuse(row, RowProblem::FutureDay, dayText(row.day), "date");
        if (const auto airframe = found(m_known.airframeIds, row.airframe)) {
            resolved.airframe = *airframe;
            fillCoupling(row, m_known.airframes.at(*airframe), reading);
        } else {
            refuse(row, RowProblem::UnknownAirframe, row.airframe, "airframe");
        }
        if (const auto person = found(m_known.people, row.person))
            reading.person = *person;
        else
            refuse(row, RowProblem::UnknownPerson, row.person, "person");
        if (!row.gauge.empty() && !(reading.gauge = found(m_known.gauges, row.gauge)))
            refuse(row, RowProblem::UnknownGauge, row.gauge, "gauge");
        if (!row.second.empty() && !(reading.second = found(m_known.people, row.second)))
            refuse(row, RowProblem::UnknownPerson, row.second, "second");
        reading.interval = row.interval;
        reading.technique = Technique::Table;
        reading.state = row.state == RowState::PartSeated ? SeatState::PartSeated : SeatState::Locked;
        reading.purpose = purposeOf(row.state);
        reading.when = noonOf(row.day);
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
        }
        return Purpose::Rigging;
    }

    void fillCoupling(const TableRow& row, const KnownAirframe& airframe, Reading& reading)
    {
        const auto coupling = found(airframe.couplings, row.coupling);
        if (!coupling) {
            refuse(row, RowProblem::UnknownCoupling, row.coupling, "coupling");
            return;
        }
        reading.coupling = *coupling;
        if (airframe.withoutGap.contains(*coupling))
            refuse(row, RowProblem::NothingToMeasure, row.coupling, "coupling");
        else if (const auto fitting = fittingOn(row.day, *coupling, airframe.fittings))
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

    const Known& m_known;
    Day m_today;
    std::vector<BadRow>& m_bad;
    RowCounts m_inTable;
    std::vector<ResolvedRow> m_rows;
};

// The rigging record that a reading of a table belongs to.
Result<RecordId> recordFor(Records& records, const ResolvedRow& row, Known& known, int& made)
{
    const std::pair key{row.airframe, row.reading.when.localDay()};
    if (const auto at = known.imported.find(key); at != known.imported.end())
        return at->second;
    RiggingRecord record;
    record.airframe = row.airframe;
    record.origin = RecordOrigin::ImportedTable;
    record.leader = row.reading.person;
    record.begins = row.reading.when;
    record.stamp.by = row.reading.person;
    const auto added = records.add(record);
    if (added) {
        known.imported.emplace(key, added.value());
        ++made;
    }
    return added;
}

Outcome keep(Records& records, const std::vector<ResolvedRow>& rows, Known& known, Imported& imported)
{
    for (const ResolvedRow& row : rows) {
        Reading reading = row.reading;
        if (countsAs(reading.purpose).rigging) {
            const auto record = recordFor(records, row, known, imported.records);
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

Result<Imported> importReadings(Records& records, const Clock& clock, std::string_view table)
{
    ReadingTable parsed = parseReadings(table);
    Imported imported;
    imported.bad = std::move(parsed.bad);
    imported.setAside = parsed.setAside;
    // Looked up within the transaction: nothing can come in between from another window.
    const Outcome done = records.together([&]() -> Outcome {
        Known known;
        if (const Outcome learnt = learn(records, known); !learnt)
            return learnt;
        Resolver resolver{known, clock.now().localDay(), imported.bad};
        for (const TableRow& row : parsed.rows)
            resolver.resolve(row);
        if (!imported.bad.empty())
            return Problem{ProblemKind::FactRefused, "bad rows"};
        return keep(records, resolver.rows(), known, imported);
    });
    if (!imported.bad.empty()) {
        std::ranges::stable_sort(imported.bad, {}, &BadRow::line);
        return imported;
    }
    if (!done)
        return done.problem();
    return imported;
}

} // namespace rig
