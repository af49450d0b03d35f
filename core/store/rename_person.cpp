#include "core/store/rename_person.h"

#include "core/airframe/name_replaced.h"
#include "core/store/chain_link.h"
#include "core/store/chain_look.h"
#include "core/store/conflicts_in.h"
#include "core/store/create_file.h"
#include "core/store/every_shape.h"
#include "core/store/layout.h"
#include "core/store/names.h"
#include "core/store/raw_file.h"
#include "core/store/values.h"
#include "core/store/writer.h"

#include <QStringList>

#include <set>

namespace rig {

namespace {

// A version of the person.
struct NamedRow
{
    IdBytes row{};
    std::string name;
    std::string phone;
};

class Renaming
{
public:
    Renaming(StoreFile::Connection& file, const RenameWanted& wanted) : m_file{file}, m_wanted{wanted} {}

    Result<Renamed> made(IdSource& ids, const Clock& clock)
    {
        if (const Outcome found = findRows(); !found)
            return found.problem();
        {
            Transaction transaction{m_file};
            if (!transaction.begun())
                return transaction.begun().problem();
            if (const Outcome replaced = replaceEach(ids, clock); !replaced)
                return replaced.problem();
            if (const Outcome committed = transaction.commit(); !committed)
                return committed.problem();
        }
        if (const Outcome gone = forgetWhatStoodThere(); !gone)
            return gone.problem();
        Renamed renamed;
        renamed.versions = static_cast<std::int64_t>(m_rows.size());
        if (const Outcome counted = countStillNamed(renamed.stillNamed); !counted)
            return counted.problem();
        const auto end = endOf(m_file);
        if (!end)
            return end.problem();
        renamed.end = end.value();
        return renamed;
    }

private:
    // Of everybody whom it was decided to read as this person.
    Outcome findRows()
    {
        if (const Outcome decided = readDecided(m_file); !decided)
            return decided;
        bool isTaken = false;
        const Outcome read = m_file.each(
            QStringLiteral("SELECT id, subject, name, phone FROM person ORDER BY id"), {}, [&](Row& row) {
                const IdBytes id = row.bytes().value_or(IdBytes{});
                const IdBytes subject = row.bytes().value_or(IdBytes{});
                const std::string name = row.text();
                const std::string phone = row.text();
                if (m_file.decided.asRead(subject) == m_file.decided.asRead(m_wanted.person.bytes))
                    m_rows.push_back({id, name, phone});
                else
                    isTaken = isTaken || comparable(name) == comparable(m_wanted.as);
            });
        if (!read)
            return read;
        if (m_rows.empty())
            return Problem{ProblemKind::NotFound, textOf(m_wanted.person.bytes)};
        return isTaken ? Outcome{Problem{ProblemKind::FactRefused, "somebody else has this name"}} : Done{};
    }

    Outcome replaceEach(IdSource& ids, const Clock& clock)
    {
        for (const NamedRow& row : m_rows)
            if (const Outcome replaced = replaceIn(row.row); !replaced)
                return replaced;
        const auto kept = saved(Writer{m_file, ids, clock.now(), FactChecking::Each},
                                [this](Writer& writer) { return tellEach(writer); });
        return kept ? Outcome{Done{}} : kept.problem();
    }

    // Which the file refuses everybody else.
    Outcome replaceIn(const IdBytes& row)
    {
        const SilencedTriggers silenced{m_file};
        return m_file.run(QStringLiteral("UPDATE person SET name = ?, phone = '' WHERE id = ?"),
                          {valueOf(std::string_view{m_wanted.as}), valueOf(row)});
    }

    Result<IdBytes> tellEach(Writer& writer)
    {
        FactBytes bytes{m_file};
        IdBytes last{};
        for (const NamedRow& row : m_rows) {
            const auto reads = bytes.of("person", row.row);
            if (!reads)
                return reads.problem();
            NameReplaced fact;
            fact.replaced.bytes = row.row;
            fact.reads = digestOf(reads.value().value_or(QByteArray{}));
            fact.person = m_wanted.by;
            fact.stamp.by = m_wanted.by;
            const auto id = writer.add(fact);
            if (!id)
                return id;
            last = id.value();
        }
        return last;
    }

    // What was written over can still lie in free places of the file, until all of it is written anew.
    Outcome forgetWhatStoodThere()
    {
        m_file.allowAttaching(true);
        const Outcome written = m_file.run(QStringLiteral("VACUUM"));
        m_file.allowAttaching(false);
        return written;
    }

    Outcome countStillNamed(std::vector<FactCount>& into)
    {
        std::set<std::string> names;
        for (const NamedRow& row : m_rows)
            for (const std::string& one : {row.name, row.phone})
                if (!isBlank(one))
                    names.insert(one);
        for (const FactShape* shape : everyShape())
            if (const Outcome counted = countIn(*shape, names, into); !counted)
                return counted;
        return Done{};
    }

    Outcome countIn(const FactShape& shape, const std::set<std::string>& names, std::vector<FactCount>& into)
    {
        QStringList ways;
        QVariantList values;
        for (const ColumnInfo& column : shape.columns)
            for (const std::string& name : names)
                if (column.storage == Storage::Text) {
                    ways << QStringLiteral("instr(lower(%1), lower(?)) > 0").arg(QLatin1String{column.name});
                    values << valueOf(std::string_view{name});
                }
        if (ways.isEmpty())
            return Done{};
        const auto facts =
            m_file.integer(QStringLiteral("SELECT count(*) FROM %1 WHERE %2")
                               .arg(QLatin1String{shape.table}, ways.join(QStringLiteral(" OR "))),
                           values);
        if (!facts)
            return facts.problem();
        if (const auto count = facts.value().value_or(0); count > 0)
            into.push_back({shape.table, count});
        return Done{};
    }

    StoreFile::Connection& m_file;
    const RenameWanted& m_wanted;
    std::vector<NamedRow> m_rows;
};

Result<Renamed> renamedIn(const std::string& path, OtherFile& whole, const RenameWanted& wanted,
                          IdSource& ids, const Clock& clock)
{
    if (const Outcome copied = copyPages(whole.connection().path, path, {}); !copied)
        return copied.problem();
    const auto made = StoreFile::Connection::open(path, StoreFile::Connection::Access::Writing);
    if (!made)
        return made.problem();
    if (const Outcome known = readVersion(*made.value()); !known)
        return known.problem();
    return Renaming{*made.value(), wanted}.made(ids, clock);
}

} // namespace

Result<Renamed> replaceName(OtherFile& whole, const RenameWanted& wanted, IdSource& ids, const Clock& clock,
                            const std::string& out)
{
    Renamed renamed;
    const Outcome made = makeUnderAnotherName(out, [&](const std::string& making) -> Outcome {
        Problem problem;
        return take(renamedIn(making, whole, wanted, ids, clock), renamed, problem) ? Outcome{Done{}}
                                                                                    : problem;
    });
    if (!made)
        return made.problem();
    return renamed;
}

} // namespace rig
