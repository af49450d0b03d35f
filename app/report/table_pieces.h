#pragma once

#include "app/report/pieces.h"

namespace rig {

// Blocks and rows as they are measured one after the other.
struct Measured
{
    Progress* progress = nullptr;
    std::size_t of = 0;
    std::size_t done = 0;

    bool goesOnWithOne() { return goesOn(progress, done++, of); }
};

// A table's head and rows as pieces; see piecesOf(). Stopped: not all of them.
std::vector<Piece> tablePieces(const TableBlock& block, double width, double tallest,
                               Measured* measured = nullptr);

} // namespace rig
