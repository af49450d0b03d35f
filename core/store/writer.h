#pragma once

#include "core/airframe/ids.h"
#include "core/clock.h"
#include "core/store/cells.h"
#include "core/store/connection.h"
#include "core/store/records.h"
#include "core/store/shapes.h"
#include "core/store/values.h"

namespace rig {

class IdSource;

// Appends facts within the transaction that saved() holds.
class Writer
{
public:
    Writer(StoreFile::Connection& connection, IdSource& ids, Moment now, FactChecking checking)
        : m_connection{connection}, m_ids{ids}, m_now{now}, m_checking{checking}
    {
    }

    bool checksFacts() const { return m_checking == FactChecking::Each; }

    StoreFile::Connection& connection() { return m_connection; }
    Moment now() const { return m_now; }

    // Stated now, with a new id, which is given back; of a thing with versions the id of its first one.
    template <typename Fact> Result<IdBytes> add(Fact fact);
    // What belongs to a fact and has no id of its own.
    template <typename Fact> Outcome attach(const IdBytes& owner, const Fact& fact);

private:
    // Greater than every id in the file, whatever the clock says: the order of ids is the order of saving.
    Result<IdBytes> newId();
    template <typename Fact> Outcome addChildren(const IdBytes& row, const Fact& fact);

    StoreFile::Connection& m_connection;
    IdSource& m_ids;
    Moment m_now;
    FactChecking m_checking;
};

template <typename Fact> Result<IdBytes> Writer::add(Fact fact)
{
    const Result<IdBytes> row = newId();
    if (!row)
        return row;
    BoundCells cells;
    constexpr bool kVersioned = kNamesVersions<decltype(fact.id)>;
    if constexpr (kVersioned)
        cells.values.append(valueOf(row.value()));
    if (!kVersioned || fact.id.isNull())
        fact.id.bytes = row.value();
    fact.stamp.when = m_now;
    tell(fact, cells);
    if (const Outcome done = m_connection.run(insertSql<Fact>(), cells.values); !done)
        return done.problem();
    if constexpr (HasChildren<Fact>)
        if (const Outcome done = addChildren(row.value(), fact); !done)
            return done.problem();
    m_connection.saved.note(Shape<Fact>::table, row.value());
    return fact.id.bytes;
}

template <typename Fact> Outcome Writer::attach(const IdBytes& owner, const Fact& fact)
{
    BoundCells cells;
    cells.values.append(valueOf(owner));
    Shape<Fact>::columns.tell(fact, cells);
    return m_connection.run(insertSql<Fact>(), cells.values);
}

template <typename Fact> Outcome Writer::addChildren(const IdBytes& row, const Fact& fact)
{
    constexpr auto& children = Shape<Fact>::children;
    const QString sql = insertSql(children.table, {children.owner.name, children.value.name});
    for (const auto& value : children.all(fact))
        if (const Outcome done = m_connection.run(sql, {valueOf(row), valueOf(children.raw(value))}); !done)
            return done;
    return Done{};
}

// One transaction around `work(Writer&) -> Result<IdBytes>`.
template <typename SomeId, typename Work> Result<SomeId> saved(Writer writer, Work work)
{
    Transaction transaction{writer.connection()};
    if (!transaction.begun())
        return transaction.begun().problem();
    const Result<IdBytes> id = work(writer);
    if (!id)
        return id.problem();
    if (const Outcome committed = transaction.commit(); !committed)
        return committed.problem();
    return SomeId{id.value()};
}

} // namespace rig
