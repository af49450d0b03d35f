#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/stamp.h"
#include "core/clock.h"
#include "core/store/connection.h"
#include "core/store/records.h"
#include "core/store/values.h"

#include <vector>

namespace rig {

class IdSource;

struct ColumnValue
{
    const char* name;
    QVariant value;
};
using Columns = std::vector<ColumnValue>;

template <typename Kind> ColumnValue kindColumn(const char* name, Kind kind)
{
    return {name, valueOf(wordOf(kind))};
}

template <typename Kind> ColumnValue kindColumn(const char* name, const std::optional<Kind>& kind)
{
    return {name, kind ? valueOf(wordOf(*kind)) : QVariant{}};
}

// Appends rows within the transaction that saved() holds.
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

    Outcome insert(const char* table, const Columns& columns);
    // A fact with a new id, stated now.
    Result<IdBytes> fact(const char* table, const Stamp& stamp, Columns columns);

    struct Version
    {
        IdBytes id;
        IdBytes subject;
    };
    // The first version when `subject` is null, otherwise a later one of the same thing.
    Result<Version> version(const char* table, const IdBytes& subject, const Stamp& stamp, Columns columns);

private:
    // Greater than every id in the file, whatever the clock says: the order of ids is the order of saving.
    Result<IdBytes> newId();
    Columns stamped(const IdBytes& id, const Stamp& stamp, Columns columns) const;

    StoreFile::Connection& m_connection;
    IdSource& m_ids;
    Moment m_now;
    FactChecking m_checking;
};

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
