#include "core/store/join.h"

#include "core/store/attached.h"
#include "core/store/chain.h"
#include "core/store/chain_link.h"
#include "core/store/chain_look.h"
#include "core/store/conflicts_in.h"
#include "core/store/create_file.h"
#include "core/store/every_shape.h"
#include "core/store/faulty_fact.h"
#include "core/store/layout.h"
#include "core/store/migrations.h"
#include "core/store/tables.h"
#include "core/store/values.h"

#include <QStringList>

#include <algorithm>
#include <numeric>

namespace rig {

namespace {

// In one transaction of `into`, to which the other file is attached.
class Union
{
public:
    Union(StoreFile::Connection& into, StoreFile::Connection& theirs, Progress* progress)
        : m_into{into}, m_theirs{theirs}, m_progress{progress}
    {
    }

    Result<Joined> made()
    {
        if (m_progress)
            if (const Outcome counted = countTheirs(); !counted)
                return counted.problem();
        for (const auto step : {&Union::settleDifferences, &Union::takeFacts, &Union::takeChain})
            if (const Outcome done = (this->*step)(); !done)
                return done.problem();
        return m_joined;
    }

private:
    Outcome countTheirs()
    {
        for (const FactTable& table : kFactTables) {
            if (!table.isFact)
                continue;
            const auto rows = m_into.integer(
                QStringLiteral("SELECT count(*) FROM theirs.%1").arg(QString::fromLatin1(table.name)));
            if (!rows)
                return rows.problem();
            m_theirFacts += static_cast<std::size_t>(rows.value().value_or(0));
        }
        return Done{};
    }

    Outcome settleDifferences()
    {
        for (const FactTable& table : kFactTables)
            if (table.isFact)
                if (const Outcome settled = settleDifferencesIn(table.name); !settled)
                    return settled;
        return settleDifferencesIn("origin");
    }

    Outcome settleDifferencesIn(std::string_view table)
    {
        const auto ids = differingIn(table);
        if (!ids)
            return ids.problem();
        for (const IdBytes& id : ids.value())
            if (const Outcome settled = settle(table, id); !settled)
                return settled;
        return Done{};
    }

    // Of the rows with one id those of which the two files say different things: in the row itself, or in
    // what belongs to it.
    Result<std::vector<IdBytes>> differingIn(std::string_view table)
    {
        const auto columns = columnsIn(m_into, table);
        if (!columns)
            return columns.problem();
        QStringList unlike;
        for (const QString& column : columns.value())
            unlike.append(QStringLiteral("m.%1 IS NOT t.%1").arg(column));
        const QString name = valueOf(table).toString();
        QString sql = QStringLiteral("SELECT m.id FROM main.%1 m JOIN theirs.%1 t ON t.id = m.id WHERE %2")
                          .arg(name, unlike.join(QStringLiteral(" OR ")));
        constexpr const char* kUnlike =
            " UNION SELECT %2 FROM (SELECT %3 FROM %4.%1 EXCEPT SELECT %3 FROM %5.%1) WHERE "
            "%2 IN (SELECT id FROM main.%6) AND %2 IN (SELECT id FROM theirs.%6)";
        for (const BelongingTable& belonging : tablesBelongingTo(table)) {
            const auto of = columnsIn(m_into, belonging.table);
            if (!of)
                return of.problem();
            for (const auto& [one, other] : {std::pair{"main", "theirs"}, std::pair{"theirs", "main"}})
                sql += QString::fromLatin1(kUnlike).arg(
                    valueOf(belonging.table).toString(), valueOf(belonging.owner).toString(),
                    of.value().join(u','), QString::fromLatin1(one), QString::fromLatin1(other), name);
        }
        std::vector<IdBytes> ids;
        const Outcome read = m_into.each(sql, {}, [&ids](Row& row) {
            if (const auto id = row.bytes())
                ids.push_back(*id);
        });
        if (!read)
            return read.problem();
        return ids;
    }

    Outcome settle(std::string_view table, const IdBytes& id)
    {
        const char* const named = table == "origin" ? "origin" : "fact";
        const auto ours = howALinkHolds(m_into, named, id);
        const auto others = howALinkHolds(m_theirs, named, id);
        if (!ours || !others)
            return (ours ? others : ours).problem();
        // A name that was replaced on request stays replaced, and nobody changed anything by hand.
        if (isReplacedIn(ours.value(), others.value()))
            return Done{};
        if (isReplacedIn(others.value(), ours.value()))
            return makeRoom(table, id);
        if (ours.value() == LinkHolds::NameReplaced && others.value() == LinkHolds::NameReplaced)
            return settleLetters(table, id);
        const bool oursHold = ours.value() <= LinkHolds::NameReplaced;
        const bool othersHold = others.value() <= LinkHolds::NameReplaced;
        const auto tell = [&](StoreFile::Connection& file) {
            return tellOf(file, ChainFault::Changed, std::string{table}, id);
        };
        if (oursHold == othersHold)
            m_joined.undecided.emplace_back(tell(m_into), tell(m_theirs));
        else
            m_joined.leftOut.push_back(tell(oursHold ? m_theirs : m_into));
        return othersHold && !oursHold ? makeRoom(table, id) : Done{};
    }

    static bool isReplacedIn(LinkHolds one, LinkHolds other)
    {
        return one == LinkHolds::NameReplaced && other == LinkHolds::Yes;
    }

    // Replaced by different letters in the two: those that were given last hold, in whatever order files are
    // joined, as they do where one file replaced its own letters once more. Both facts stay.
    Outcome settleLetters(std::string_view table, const IdBytes& id)
    {
        const auto ours = whenReplaced(m_into, id);
        const auto others = whenReplaced(m_theirs, id);
        if (!ours || !others)
            return (ours ? others : ours).problem();
        return ours.value() < others.value() ? makeRoom(table, id) : Done{};
    }

    // The row that was changed by hand goes; the one that was saved comes with all others that lack.
    Outcome makeRoom(std::string_view table, const IdBytes& id)
    {
        for (const BelongingTable& belonging : tablesBelongingTo(table))
            if (const Outcome gone = removeRows(belonging.table, belonging.owner, id); !gone)
                return gone;
        return removeRows(table, "id", id);
    }

    // Which the file refuses everybody else.
    Outcome removeRows(std::string_view table, std::string_view key, const IdBytes& id)
    {
        const SilencedTriggers silenced{m_into};
        return m_into.run(QStringLiteral("DELETE FROM main.%1 WHERE %2 = ?")
                              .arg(valueOf(table).toString(), valueOf(key).toString()),
                          {valueOf(id)});
    }

    Outcome takeFacts()
    {
        for (const FactTable& table : kFactTables)
            if (table.isFact)
                if (const Outcome taken = takeFrom(table.name); !taken)
                    return taken;
        return Done{};
    }

    Outcome takeFrom(const char* table)
    {
        const QString name = QString::fromLatin1(table);
        const auto count = [this](const QString& sql) { return m_into.integer(sql); };
        const auto theirs = count(QStringLiteral("SELECT count(*) FROM theirs.%1").arg(name));
        const auto came = count(QStringLiteral("SELECT count(*) FROM theirs.%1 WHERE id NOT IN "
                                               "(SELECT id FROM main.%1)")
                                    .arg(name));
        // What belongs to a fact first, while it still shows which facts come.
        for (const BelongingTable& belonging : tablesBelongingTo(table))
            if (const Outcome taken = takeRows(m_into, belonging.table,
                                               QStringLiteral("%1 NOT IN (SELECT id FROM main.%2)")
                                                   .arg(valueOf(belonging.owner).toString(), name));
                !taken)
                return taken;
        if (const Outcome taken = takeRows(
                m_into, table, QStringLiteral("id NOT IN (SELECT id FROM main.%1) ORDER BY id").arg(name));
            !taken)
            return taken;
        const auto all = count(QStringLiteral("SELECT count(*) FROM main.%1").arg(name));
        if (!theirs || !came || !all)
            return (!theirs ? theirs : !came ? came : all).problem();
        m_looked += static_cast<std::size_t>(theirs.value().value_or(0));
        if (!goesOn(m_progress, m_looked, m_theirFacts))
            return stoppedWork();
        m_joined.all += all.value().value_or(0);
        m_joined.onlyOurs += all.value().value_or(0) - theirs.value().value_or(0);
        if (const std::int64_t facts = came.value().value_or(0); facts > 0)
            m_joined.came.push_back({table, facts});
        return Done{};
    }

    // A tie that no link stands on tells nothing.
    Outcome takeChain()
    {
        struct TakenPart
        {
            const char* table;
            const char* which;
        };
        constexpr TakenPart kParts[] = {
            {"origin", "id NOT IN (SELECT id FROM main.origin)"},
            {"link", "NOT EXISTS (SELECT 1 FROM main.link AS m WHERE m.sequence = t.sequence AND m.hash = "
                     "t.hash AND m.origin = t.origin AND m.kind = t.kind AND m.fact = t.fact AND m.before = "
                     "t.before) ORDER BY sequence, hash"},
            {"tie", "before IN (SELECT before FROM theirs.link) AND NOT EXISTS (SELECT 1 FROM main.tie AS m "
                    "WHERE m.before = t.before AND m.hash = t.hash AND m.sequence = t.sequence)"},
        };
        for (const TakenPart& part : kParts)
            if (const Outcome taken = takeRows(m_into, part.table, QString::fromLatin1(part.which)); !taken)
                return taken;
        return Done{};
    }

    StoreFile::Connection& m_into;
    StoreFile::Connection& m_theirs;
    Progress* m_progress;
    std::size_t m_theirFacts = 0;
    std::size_t m_looked = 0; // of them
    Joined m_joined;
};

Result<Joined> unite(StoreFile::Connection& into, OtherFile& theirs, Progress* progress)
{
    const Attached attached{into, theirs.connection().path};
    if (!attached.outcome())
        return attached.outcome().problem();
    Transaction transaction{into};
    if (!transaction.begun())
        return transaction.begun().problem();
    Joined joined;
    {
        const Watched watched{into, progress};
        Result<Joined> made = Union{into, theirs.connection(), progress}.made();
        if (!made)
            return made;
        joined = std::move(made).value();
        if (!joined.undecided.empty())
            return joined;
        const Result<FileEnd> end = endOf(into);
        if (!end)
            return end.problem();
        joined.end = end.value();
    }
    if (isStopped(progress)) // the last moment: what is committed stays
        return stoppedWork();
    if (const Outcome committed = transaction.commit(); !committed)
        return committed.problem();
    // Tips and facts that are held are those of before.
    if (into.chain)
        into.chain->forget();
    into.saved.loseTrack();
    return joined;
}

Result<Joined> uniteIn(const std::string& path, OtherFile& ours, OtherFile& theirs, Progress* progress)
{
    const auto made = createFile(path, newestSchemaVersion());
    if (!made)
        return made.problem();
    if (const auto first = unite(*made.value(), ours, progress); !first)
        return first;
    return unite(*made.value(), theirs, progress);
}

// Which readings come, as the page that asks says it.
Outcome takeReadings(StoreFile::Connection& ours, OtherFile& theirs, Foreseen& into)
{
    const Attached attached{ours, theirs.connection().path};
    if (!attached.outcome())
        return attached.outcome();
    return ours.each(
        QStringLiteral("SELECT max(c.name), min(r.measured_at + r.measured_offset), "
                       "max(r.measured_at + r.measured_offset) FROM theirs.reading r JOIN "
                       "theirs.coupling c ON c.id = r.coupling WHERE r.id NOT IN (SELECT id FROM "
                       "main.reading) GROUP BY r.coupling ORDER BY 1"),
        {}, [&into](Row& row) {
            into.couplings.push_back(row.text());
            const Day first = Moment{row.integer(), 0}.localDay();
            const Day last = Moment{row.integer(), 0}.localDay();
            into.first = std::min(into.first.value_or(first), first);
            into.last = std::max(into.last.value_or(last), last);
        });
}

} // namespace

std::int64_t Joined::onlyTheirs() const
{
    return std::accumulate(came.begin(), came.end(), std::int64_t{0},
                           [](std::int64_t sum, const FactCount& count) { return sum + count.facts; });
}

Result<Joined> join(OtherFile& ours, OtherFile& theirs, const std::string& out, Progress* progress)
{
    Joined joined;
    const Outcome made = makeUnderAnotherName(out, [&](const std::string& making) -> Outcome {
        Result<Joined> united = uniteIn(making, ours, theirs, progress);
        if (!united)
            return united.problem();
        joined = std::move(united).value();
        return joined.undecided.empty() ? Outcome{Done{}}
                                        : Problem{ProblemKind::FactRefused, "not known which was saved"};
    });
    if (!made && joined.undecided.empty())
        return made.problem();
    return joined;
}

Result<Joined> takeIn(StoreFile& ours, OtherFile& theirs)
{
    return unite(ours.connection(), theirs, nullptr);
}

Result<Joined> takeIn(const std::string& ours, OtherFile& theirs, Progress* progress)
{
    const auto own = StoreFile::Connection::open(ours, StoreFile::Connection::Access::Writing);
    if (!own)
        return own.problem();
    if (const Outcome known = readVersion(*own.value()); !known)
        return known.problem();
    return unite(*own.value(), theirs, progress);
}

Result<Foreseen> foresee(const std::string& ours, OtherFile& theirs, Progress* progress)
{
    const std::stop_token stop = stopOf(progress);
    const auto copy = OtherFile::read(ours, ours, progress);
    if (!copy)
        return copy.problem();
    StoreFile::Connection& into = copy.value()->connection();
    Foreseen foreseen;
    Problem problem;
    std::vector<Conflict> before;
    if (!take(lookAtChain(into, stop), foreseen.ours, problem) ||
        !take(theirs.lookAtChain(stop), foreseen.theirs, problem) ||
        !take(openConflictsIn(into), before, problem))
        return problem;
    if (const Outcome read = takeReadings(into, theirs, foreseen); !read)
        return read.problem();
    if (!take(unite(into, theirs, progress), foreseen.joined, problem) ||
        !take(toldConflictsIn(into), foreseen.conflicts, problem))
        return problem;
    std::erase_if(foreseen.conflicts, [&before](const ToldConflict& told) {
        return std::ranges::find(before, told.conflict) != before.end();
    });
    return foreseen;
}

} // namespace rig
