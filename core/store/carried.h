#pragma once

#include "core/airframe/ids.h"
#include "core/result.h"
#include "core/review/chain_state.h"
#include "core/store/columns.h"
#include "core/store/store_file.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace rig {

// A whole file row by row, as it stands and not as it is read, so that it can be carried in another form and
// made anew, equal to the last byte that the chain hashes. What there is to carry follows from the shapes.

// What stands in a cell: nothing, a whole number, a number, or the bytes of a text, an id or a picture.
using CarriedCell = std::variant<std::monostate, std::int64_t, double, std::string>;

struct CarriedTable
{
    std::string name;
    std::vector<ColumnInfo> columns; // a fact's own id first; without `owner`
    std::string owner = {};          // of what belongs to a fact: the column that names the fact
    bool isList = false;             // of what belongs to a fact: any number of rows of one cell each
    std::vector<CarriedTable> belonging = {};
};

struct CarriedRow
{
    std::vector<CarriedCell> cells;                      // as many as columns
    std::vector<std::vector<CarriedRow>> belonging = {}; // as many as tables that belong to it
};

// Each after those to which it refers.
const std::vector<CarriedTable>& carriedFacts();
// What links them: origins, links, ties.
const std::vector<CarriedTable>& carriedChain();

// The layout of the files that they are.
int carriedLayout();

enum class CellFault { None, Missing, WrongType, OutOfRange, UnknownWord, NotADay };

// Whether this may stand in a column. Two columns that contradict one another are seen when the fact is read.
CellFault faultOf(const ColumnInfo& column, const CarriedCell& cell);

// Calls `take` for each row with what belongs to it, always in the same order. DamagedFile, with table, id
// and column in the detail, where something stands that may not stand there.
Outcome eachCarried(StoreFile::Connection& file, const CarriedTable& table,
                    const std::function<Outcome(const CarriedRow&)>& take);

enum class Put {
    Done,
    ThereAlready, // a fact of this id
    CannotStand,  // the table refuses it
};
using PutRow = std::function<Result<Put>(const CarriedTable&, const CarriedRow&)>;

// A fact that cannot come along, or an origin.
struct NotCarriedIn
{
    std::string table;
    std::string id;     // as text; empty where it has none
    std::string column; // the cell that is at fault, as far as that is known
    std::string named;  // the table in which there is not what the cell names
};

struct CarriedIn
{
    FileEnd end;
    ChainState chain;
    std::optional<NotCarriedIn> unreadable; // the first of each
    std::optional<NotCarriedIn> lost;
    bool isMade = false;
};

enum class CarryWhat {
    WhatHolds,  // nothing is made where the chain does not hold, or something is named that is not there
    AllAsFound, // also then; what cannot be read as a fact is never taken
};

// Makes a file at `out` of the rows that `fill` puts; it stands there once it is whole. FileExists when
// something stands at `out`; the problem of `fill` where it ends with one.
Result<CarriedIn> carryInto(const std::string& out, CarryWhat what,
                            const std::function<Outcome(const PutRow& put)>& fill);

} // namespace rig
