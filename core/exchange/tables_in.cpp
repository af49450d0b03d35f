#include "core/exchange/tables_in.h"

#include "core/exchange/readings_in.h"
#include "core/exchange/things_in.h"

#include <algorithm>
#include <utility>

namespace rig {

namespace {

// The tables as they were understood; empty where there is none.
struct TablesRead
{
    std::optional<TableOf<CouplingLine>> couplings;
    std::optional<TableOf<PersonLine>> people;
    std::optional<TableOf<GaugeLine>> gauges;
    std::optional<TableOf<EventLine>> events;
    std::optional<TableOf<JointPlayLine>> jointPlays;
    ReadingTable readings;
    bool isWhole = true; // false when one of them could not be read at all
};

// Of a table that could not be read nobody knows what it names: rows of others would be blamed for it.
template <typename Table>
void parseInto(std::optional<Table>& table, const std::optional<std::string_view>& bytes,
               Table (*parse)(std::string_view), bool& isWhole, Imported& imported)
{
    if (!bytes)
        return;
    table = parse(*bytes);
    isWhole = isWhole && table->isRead;
    imported.bad.insert(imported.bad.end(), table->bad.begin(), table->bad.end());
}

TablesRead parsed(const TablesGiven& given, Imported& imported)
{
    TablesRead read;
    std::optional<ReadingTable> readings;
    parseInto(read.couplings, given.couplings, parseCouplings, read.isWhole, imported);
    parseInto(read.people, given.people, parsePeople, read.isWhole, imported);
    parseInto(read.gauges, given.gauges, parseGauges, read.isWhole, imported);
    parseInto(read.events, given.events, parseEvents, read.isWhole, imported);
    parseInto(read.jointPlays, given.jointPlays, parseJointPlays, read.isWhole, imported);
    parseInto(readings, given.readings, parseReadings, read.isWhole, imported);
    if (readings)
        read.readings = std::move(*readings);
    imported.setAside = read.readings.setAside;
    imported.notSecured = read.readings.notSecured;
    return read;
}

FirstReadings firstReadingsIn(const ReadingTable& table)
{
    FirstReadings first;
    for (const TableRow& row : table.rows) {
        const auto at =
            first.emplace(std::pair{comparable(row.airframe), comparable(row.coupling)}, row.day).first;
        at->second = std::min(at->second, row.day);
    }
    return first;
}

// What others name comes before them.
Outcome addAll(Records& records, Day today, const TablesRead& tables, Imported& imported, Progress* progress)
{
    auto known = thingsIn(records);
    if (!known)
        return known.problem();
    NamedThings things = std::move(known).value();
    ThingsIn into{records, today, things, imported};
    Outcome done = Done{};
    if (tables.people)
        done = into.add(*tables.people);
    if (done && tables.gauges)
        done = into.add(*tables.gauges);
    if (done && tables.couplings)
        done = into.add(*tables.couplings, firstReadingsIn(tables.readings));
    if (done && tables.events)
        done = into.add(*tables.events);
    if (done && tables.jointPlays)
        done = into.add(*tables.jointPlays);
    return done ? addReadings(records, today, tables.readings.rows, things, imported, progress) : done;
}

} // namespace

Result<Imported> importTables(Records& records, const Clock& clock, const TablesGiven& given,
                              Progress* progress)
{
    Imported imported;
    const TablesRead tables = parsed(given, imported);
    // Looked up within the transaction: nothing can come in between from another window.
    const Outcome done = records.together([&]() -> Outcome {
        if (tables.isWhole)
            if (const Outcome added = addAll(records, clock.now().localDay(), tables, imported, progress);
                !added)
                return added;
        if (!imported.bad.empty())
            return Problem{ProblemKind::FactRefused, "bad rows"};
        return Done{};
    });
    if (!imported.bad.empty()) {
        Imported nothing;
        nothing.bad = std::move(imported.bad);
        std::ranges::stable_sort(nothing.bad, {}, [](const BadRow& row) {
            return std::pair{row.table, row.line};
        });
        return nothing;
    }
    if (!done)
        return done.problem();
    return imported;
}

Result<Imported> importReadings(Records& records, const Clock& clock, std::string_view table)
{
    TablesGiven given;
    given.readings = table;
    return importTables(records, clock, given);
}

} // namespace rig
