#pragma once

#include "core/measure/gap.h"
#include "core/measure/gap_entry.h"

#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace rig {

// Why a typed list of leaves was not taken. Nothing doubtful is guessed at.
enum class SizeListProblem {
    Empty,
    NotASize,         // a piece is no figure in millimetres: see `entry`
    NoThickness,      // a leaf of 0
    Repeated,         // the same size twice
    StepMissing,      // 0.05-1.00 without a step
    StepDoesNotFit,   // the step passes over the end
    StepTooSmall,     // a step of 0
    Backwards,        // 1.00-0.05
    CommaOrSeparator, // 0,05,0,10: which comma parts two leaves?
    TooMany,          // more leaves than kMostSizes
};

struct SizeListRefusal
{
    SizeListProblem problem = SizeListProblem::Empty;
    std::string piece;                             // what could not be taken, as typed
    EntryProblem entry = EntryProblem::NotANumber; // with NotASize
    Gap size;                                      // with Repeated and NoThickness
};

using SizeListEntry = std::variant<std::vector<Gap>, SizeListRefusal>;

// A slip of a step ("0.05-10 step 0.001") would otherwise make thousands of leaves.
inline constexpr std::size_t kMostSizes = 200;

// Reads the sizes of a gauge set in millimetres: "0.05-1.00 step 0.05", or a list "0.05, 0.10, 0.15", or both
// mixed. Pieces are parted by semicolons or line ends; by commas only where no comma can be a decimal mark.
// The result rises.
SizeListEntry parseSizeList(std::string_view text);

// The shortest text that parseSizeList() reads back as the same sizes. `decimalMark` is '.' or ','.
std::string sizeListText(std::span<const Gap> sizes, char decimalMark);

} // namespace rig
