#pragma once

#include "app/report/pieces.h"

namespace rig {

// A table's head and rows as pieces; see piecesOf().
std::vector<Piece> tablePieces(const TableBlock& block, double width, double tallest);

} // namespace rig
