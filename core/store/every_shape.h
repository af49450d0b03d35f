#pragma once

#include "core/store/fact_shape.h"

#include <string_view>
#include <vector>

namespace rig {

// Of each of Facts.
const std::vector<const FactShape*>& everyShape();

// A table whose rows belong to facts of another one, and its column that names the fact.
struct BelongingTable
{
    std::string_view table;
    std::string_view owner;
};

// In the order of their names.
const std::vector<BelongingTable>& tablesBelongingTo(std::string_view table);

// Of a table of facts; null where `table` is none.
const FactShape* shapeOfTable(std::string_view table);

} // namespace rig
