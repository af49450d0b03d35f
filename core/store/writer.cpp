#include "core/store/writer.h"

#include "core/airframe/id_source.h"
#include "core/store/cells.h"
#include "core/store/chain.h"
#include "core/store/tables.h"
#include "core/store/values.h"

#include <QStringList>

namespace rig {

namespace {

QString greatestIdSql()
{
    QStringList each;
    for (const FactTable& table : kFactTables)
        if (table.isFact)
            each.append(QStringLiteral("SELECT max(id) AS id FROM ") + QString::fromLatin1(table.name));
    return QStringLiteral("SELECT max(id) FROM (") + each.join(QStringLiteral(" UNION ALL ")) +
           QStringLiteral(")");
}

Result<IdBytes> greatestIn(StoreFile::Connection& connection)
{
    if (connection.greatestId)
        return *connection.greatestId;
    IdBytes greatest{};
    const Outcome read = connection.each(
        greatestIdSql(), {}, [&greatest](Row& row) { greatest = row.bytes().value_or(greatest); });
    if (!read)
        return read.problem();
    return greatest;
}

} // namespace

Result<IdBytes> Writer::newId()
{
    const Result<IdBytes> greatest = greatestIn(m_connection);
    if (!greatest)
        return greatest;
    IdBytes id = m_ids.next(m_now.utcSeconds * 1000);
    if (id <= greatest.value() && millisecondsIn(greatest.value()) < kMostMilliseconds)
        id = m_ids.next(millisecondsIn(greatest.value()) + 1);
    if (id <= greatest.value())
        return Problem{ProblemKind::NoGreaterId, "after " + textOf(greatest.value())};
    m_connection.greatestId = id;
    return id;
}

Outcome Writer::insert(const AnyFact& fact, const QVariantList& values)
{
    QString& sql = m_connection.insertInto[fact.shape().table];
    if (sql.isEmpty())
        sql = insertSql(fact.shape());
    return m_connection.run(sql, values);
}

Outcome Writer::append(const IdBytes& row, const AnyFact& fact)
{
    BoundCells cells;
    if (fact.shape().hasVersions)
        cells.values.append(valueOf(row));
    fact.tell(cells);
    if (const Outcome done = insert(fact, cells.values); !done)
        return done;
    if (const std::optional<ChildShape>& children = fact.shape().children) {
        BoundCells each;
        fact.tellChildren(each);
        const QString sql = insertSql(children->table, {children->owner.name, children->value.name});
        for (const QVariant& value : each.values)
            if (const Outcome done = m_connection.run(sql, {valueOf(row), value}); !done)
                return done;
    }
    m_connection.saved.note(fact.shape().table, row);
    m_added.push_back({fact.shape().table, row});
    return Done{};
}

Outcome Writer::attach(const IdBytes& owner, const AnyFact& fact)
{
    BoundCells cells;
    cells.values.append(valueOf(owner));
    fact.tell(cells);
    return insert(fact, cells.values);
}

Outcome Writer::link()
{
    if (!m_connection.chain)
        m_connection.chain = std::make_unique<Chain>(m_connection);
    return m_connection.chain->append(m_added, m_now, [this] { return m_ids.next(m_now.utcSeconds * 1000); });
}

Result<IdBytes> saved(Writer writer, const std::function<Result<IdBytes>(Writer&)>& work)
{
    Transaction transaction{writer.connection()};
    if (!transaction.begun())
        return transaction.begun().problem();
    const Result<IdBytes> id = work(writer);
    if (!id)
        return id.problem();
    if (const Outcome linked = writer.link(); !linked)
        return linked.problem();
    if (const Outcome committed = transaction.commit(); !committed)
        return committed.problem();
    return id;
}

} // namespace rig
