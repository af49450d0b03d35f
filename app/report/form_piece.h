#pragma once

#include "app/report/pieces.h"

namespace rig {

// One thing to fill in by hand, never split. See piecesOf().
Piece formPiece(const FormBlock& block, double width);

} // namespace rig
