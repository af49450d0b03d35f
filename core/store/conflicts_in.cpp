#include "core/store/conflicts_in.h"

#include "core/review/decided.h"
#include "core/review/lineage.h"
#include "core/store/cells.h"
#include "core/store/decide.h"
#include "core/store/faulty_fact.h"
#include "core/store/names.h"
#include "core/store/newest.h"
#include "core/store/values.h"

#include <algorithm>
#include <tuple>

namespace rig {

namespace {

std::string stringOf(Row& row)
{
    return std::string{row.bytesView()};
}

Result<std::vector<Decision>> decisionsIn(StoreFile::Connection& connection)
{
    static const QString sql =
        QStringLiteral("SELECT %1 FROM decision t").arg(columnsSql(factShape<Decision>(), "t"));
    std::vector<Decision> decisions;
    const Outcome read =
        connection.each(sql, {}, [&decisions](Row& row) { decisions.push_back(factFrom<Decision>(row)); });
    if (!read)
        return read.problem();
    return decisions;
}

// A kind of rivals, each row of the statement with what it is about, its id, and when it was stated.
struct Asked
{
    ConflictKind kind;
    const char* table;
    const char* sql;
};

constexpr Asked kAsked[] = {
    {ConflictKind::Closings, "closing",
     "SELECT record, id, stated_at FROM closing WHERE record IN (SELECT record FROM closing GROUP BY record "
     "HAVING count(*) > 1)"},
    {ConflictKind::Resolutions, "resolution",
     "SELECT question, id, stated_at FROM resolution WHERE question IN (SELECT question FROM resolution "
     "GROUP BY question HAVING count(*) > 1)"},
    // One that was struck says nothing any more.
    {ConflictKind::Corrections, "reading",
     "SELECT corrects, id, stated_at FROM reading WHERE corrects IN (SELECT corrects FROM reading WHERE "
     "corrects IS NOT NULL GROUP BY corrects HAVING count(*) > 1) AND id NOT IN (SELECT reading FROM "
     "exclusion)"},
};

// Which the chain must tell to have been saved apart.
constexpr Asked kAskedOfForks[] = {
    {ConflictKind::Versions, "person", nullptr},
    {ConflictKind::Versions, "airframe", nullptr},
    {ConflictKind::Versions, "gauge", nullptr},
    {ConflictKind::Versions, "coupling", nullptr},
    {ConflictKind::Versions, "surface", nullptr},
    {ConflictKind::Records, "rigging_record",
     "SELECT airframe || CAST((begins_at + begins_offset) / 86400 AS TEXT), id, stated_at, origin = "
     "'imported-table', begins_offset <> 0 OR begins_at % 86400 <> 43200 FROM rigging_record"},
};

// In one file two records of a day are for a person to tell apart only where one of them came with a table.
constexpr Asked kAskedOfTables{
    ConflictKind::Records, "rigging_record",
    "SELECT airframe || CAST((begins_at + begins_offset) / 86400 AS TEXT) AS about, id, stated_at, origin = "
    "'imported-table', begins_offset <> 0 OR begins_at % 86400 <> 43200 FROM rigging_record WHERE EXISTS "
    "(SELECT 1 FROM rigging_record WHERE origin = "
    "'imported-table') AND about IN (SELECT airframe || CAST((begins_at + begins_offset) / 86400 AS TEXT) "
    "FROM rigging_record WHERE origin = 'imported-table')"};

class Gathering
{
public:
    explicit Gathering(StoreFile::Connection& connection) : m_connection{connection} {}

    Result<std::vector<Rival>> rivals(bool isForked)
    {
        for (const Asked& asked : kAsked)
            take(asked, QString::fromLatin1(asked.sql));
        if (isForked)
            for (const Asked& asked : kAskedOfForks)
                take(asked, asked.sql ? QString::fromLatin1(asked.sql) : versionsSql(asked.table));
        else
            take(kAskedOfTables, QString::fromLatin1(kAskedOfTables.sql));
        takeNames<Person>("person", &Person::name);
        takeNames<Airframe>("airframe", &Airframe::registration);
        takeNames<Gauge>("gauge", &Gauge::name);
        takeNames<Coupling>("coupling", &Coupling::name);
        takeNames<Surface>("surface", &Surface::name);
        if (!m_outcome)
            return m_outcome.problem();
        return std::move(m_rivals);
    }

private:
    static QString versionsSql(const char* table)
    {
        return QStringLiteral(
                   "SELECT subject, id, stated_at FROM %1 WHERE subject IN (SELECT subject FROM %1 "
                   "GROUP BY subject HAVING count(*) > 1)")
            .arg(QLatin1String{table});
    }

    void take(const Asked& asked, const QString& sql)
    {
        if (!m_outcome)
            return;
        m_outcome = m_connection.each(sql, {}, [&](Row& row) {
            std::string about = stringOf(row);
            const IdBytes id = row.bytes().value_or(IdBytes{});
            const Stamp stamp{{}, Moment{row.integer(), 0}};
            const bool areRecords = asked.kind == ConflictKind::Records;
            const bool fromTable = areRecords && row.integer() == 1;
            const bool isTimed = areRecords && row.integer() == 1;
            m_rivals.push_back(
                {asked.kind, asked.table, std::move(about), id, saveOrderOf(stamp, id), fromTable, isTimed});
        });
    }

    template <typename Thing> void takeNames(const char* table, std::string Thing::*name)
    {
        if (!m_outcome)
            return;
        const auto things = newest<Thing>(m_connection);
        if (!things) {
            m_outcome = things.problem();
            return;
        }
        for (const Thing& thing : things.value()) {
            std::string about = comparable(thing.*name);
            if constexpr (requires { thing.airframe; })
                about += textOf(thing.airframe.bytes);
            m_rivals.push_back({ConflictKind::Names, table, std::move(about), thing.id.bytes,
                                firstSavedOf(thing), false, false});
        }
    }

    StoreFile::Connection& m_connection;
    std::vector<Rival> m_rivals;
    Outcome m_outcome = Done{};
};

// A chain in one row was written in one file.
Result<bool> isForked(StoreFile::Connection& connection)
{
    const auto more = connection.integer(QStringLiteral(
        "SELECT count(*) <> coalesce(max(sequence), 0) OR count(*) <> count(DISTINCT sequence) "
        "FROM link"));
    if (!more)
        return more.problem();
    return more.value().value_or(0) != 0;
}

Result<Lineage> lineageIn(StoreFile::Connection& connection)
{
    std::vector<LineageLink> links;
    std::vector<LineageTie> ties;
    Outcome read = connection.each(
        QStringLiteral("SELECT sequence, hash, before, fact, origin FROM link ORDER BY sequence"), {},
        [&links](Row& row) {
            LineageLink& link = links.emplace_back();
            link.sequence = row.integer();
            link.hash = stringOf(row);
            link.before = stringOf(row);
            link.fact = row.bytes().value_or(IdBytes{});
            link.origin = row.bytes().value_or(IdBytes{});
        });
    if (read)
        read = connection.each(QStringLiteral("SELECT before, hash FROM tie"), {}, [&ties](Row& row) {
            LineageTie& tie = ties.emplace_back();
            tie.before = stringOf(row);
            tie.hash = stringOf(row);
        });
    if (!read)
        return read.problem();
    return Lineage{links, ties};
}

// Where what was decided about stands; empty where it does not.
Result<std::string> tableOf(StoreFile::Connection& connection, const Decision& decision)
{
    for (const Asked& asked : kAsked)
        if (asked.kind == decision.kind)
            return std::string{asked.table};
    for (const Asked& asked : kAskedOfForks) {
        const bool isItsKind = asked.kind == decision.kind ||
                               (decision.kind == ConflictKind::Names && asked.kind == ConflictKind::Versions);
        if (!isItsKind)
            continue;
        const auto there = connection.integer(
            QStringLiteral("SELECT 1 FROM %1 WHERE id = ?").arg(QLatin1String{asked.table}),
            {valueOf(decision.first)});
        if (!there)
            return there.problem();
        if (there.value())
            return std::string{asked.table};
    }
    return std::string{};
}

} // namespace

Result<std::vector<Conflict>> openConflictsIn(StoreFile::Connection& connection)
{
    const auto decisions = decisionsIn(connection);
    if (!decisions)
        return decisions.problem();
    const auto forked = isForked(connection);
    if (!forked)
        return forked.problem();
    auto rivals = Gathering{connection}.rivals(forked.value());
    if (!rivals)
        return rivals.problem();
    if (!forked.value())
        return openConflicts(std::move(rivals).value(), decisions.value(),
                             [](const IdBytes&, const IdBytes&) { return false; });
    const auto lineage = lineageIn(connection);
    if (!lineage)
        return lineage.problem();
    return openConflicts(std::move(rivals).value(), decisions.value(),
                         [&lineage](const IdBytes& one, const IdBytes& other) {
                             return lineage.value().areApart(one, other);
                         });
}

Result<std::vector<ToldConflict>> toldConflictsIn(StoreFile::Connection& connection)
{
    const auto open = openConflictsIn(connection);
    if (!open)
        return open.problem();
    std::vector<ToldConflict> told;
    for (const Conflict& conflict : open.value())
        told.push_back({conflict, tellOf(connection, {}, conflict.table, conflict.first),
                        tellOf(connection, {}, conflict.table, conflict.second)});
    return told;
}

Result<std::vector<ToldDecision>> toldDecisionsIn(StoreFile::Connection& connection)
{
    const auto decisions = decisionsIn(connection);
    if (!decisions)
        return decisions.problem();
    std::vector<Decision> counting = lastOfEach(decisions.value());
    std::ranges::sort(counting, {}, [](const Decision& one) { return saveOrderOf(one.stamp, one.id.bytes); });
    std::vector<ToldDecision> told;
    for (const Decision& decision : counting) {
        const auto table = tableOf(connection, decision);
        if (!table)
            return table.problem();
        if (table.value().empty())
            continue;
        const auto sideOf = [&](const FactId& id) { return tellOf(connection, {}, table.value(), id.bytes); };
        told.push_back({{{decision.kind, table.value(), decision.first.bytes, decision.second.bytes},
                         sideOf(decision.first),
                         sideOf(decision.second)},
                        decision});
    }
    return told;
}

Outcome readDecided(StoreFile::Connection& connection)
{
    const auto decisions = decisionsIn(connection);
    if (!decisions)
        return decisions.problem();
    connection.decided = decidedBy(decisions.value());
    return Done{};
}

Outcome decide(Records& records, const Decision& decision)
{
    return records.together([&]() -> Outcome {
        if (const auto kept = records.add(decision); !kept)
            return kept.problem();
        if (decision.kind != ConflictKind::Corrections)
            return Done{};
        Exclusion struck;
        struck.reading = ReadingId{(decision.holds == Holds::First ? decision.second : decision.first).bytes};
        struck.reason = decision.reason;
        struck.stamp.by = decision.stamp.by;
        const auto kept = records.add(struck);
        return kept ? Outcome{Done{}} : Outcome{kept.problem()};
    });
}

} // namespace rig
