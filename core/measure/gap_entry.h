#pragma once

#include "core/measure/gap.h"

#include <string_view>
#include <variant>

namespace rig {

// Why a typed figure was not taken. Nothing doubtful is guessed at.
enum class EntryProblem {
    Empty,
    NotANumber,
    TwoSeparators,   // 1.234,5
    TooManyDecimals, // finer than a micrometre
    Negative,
    TooLarge, // above kWidestGap, or what else is the most
};

using GapEntry = std::variant<Gap, EntryProblem>;

// Reads a length in millimetres as typed: "0.6", "0,60" and ".60" are the same gap. Point or comma, one of
// them, at most three decimals, plain digits only; surrounding blanks are ignored.
GapEntry parseGap(std::string_view text);

// The same for any figure, in thousandths; nothing above `most`, which is no more than a million.
using FigureEntry = std::variant<std::int32_t, EntryProblem>;
FigureEntry parseFigure(std::string_view text, std::int32_t most);

} // namespace rig
