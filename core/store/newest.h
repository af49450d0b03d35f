#pragma once

#include "core/airframe/saved_before.h"
#include "core/store/cells.h"
#include "core/store/connection.h"

#include <vector>

namespace rig {

// Calls `take` for each row of what stands beside a fact in the table of its children.
Outcome eachChild(StoreFile::Connection& connection, const ChildShape& children, const IdBytes& row,
                  const std::function<void(CellSource&)>& take);

// What stands in the table beside the fact's own: the sizes of a gauge, the readings of a baseline.
template <typename Fact>
Outcome readChildren(StoreFile::Connection& connection, const IdBytes& row, Fact& fact)
{
    return hearChildren(fact, [&](const std::function<void(CellSource&)>& take) {
        return eachChild(connection, *factShape<Fact>().children, row, take);
    });
}

// One row of a thing with versions.
struct Version
{
    SaveOrder first; // when the thing was first told of, which is the same for all its versions
    SaveOrder saved;
};

// Where the newest version of each thing stands among these, in the order in which the things were first told
// of.
std::vector<std::size_t> newestAmong(const std::vector<Version>& versions);

// The newest version of each airframe, person, gauge, coupling or surface, in the order in which they were
// first told of.
template <typename Thing>
Result<std::vector<Thing>> newest(StoreFile::Connection& connection, const char* where = "",
                                  const QVariantList& values = {});

} // namespace rig
