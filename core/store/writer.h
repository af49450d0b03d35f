#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/saved_before.h"
#include "core/clock.h"
#include "core/store/connection.h"
#include "core/store/fact_shape.h"
#include "core/store/records.h"

#include <functional>

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
    Outcome attach(const IdBytes& owner, const AnyFact& fact);
    // What was added comes into the chain, with all that belongs to it.
    Outcome link();

private:
    // Greater than every id in the file, whatever the clock says: the order of ids is the order of saving.
    Result<IdBytes> newId();
    Outcome append(const IdBytes& row, const AnyFact& fact);
    Outcome insert(const AnyFact& fact, const QVariantList& values);

    StoreFile::Connection& m_connection;
    IdSource& m_ids;
    Moment m_now;
    FactChecking m_checking;
    std::vector<SavedLog::Saved> m_added;
};

template <typename Fact> Result<IdBytes> Writer::add(Fact fact)
{
    const Result<IdBytes> row = newId();
    if (!row)
        return row;
    if (!kNamesVersions<decltype(fact.id)> || fact.id.isNull())
        fact.id.bytes = row.value();
    fact.stamp.when = m_now;
    if (const Outcome done = append(row.value(), fact); !done)
        return done.problem();
    return fact.id.bytes;
}

// One transaction around `work`.
Result<IdBytes> saved(Writer writer, const std::function<Result<IdBytes>(Writer&)>& work);

} // namespace rig
