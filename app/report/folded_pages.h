#pragma once

#include "app/report/page_flow.h"

namespace rig {

// Small pages, four on a sheet of A5: printed on both sides, turned over its short edge and folded once in
// the middle, they follow each other as in a booklet. With more than four, the next sheet is folded by
// itself.
inline constexpr std::size_t kPagesOfASheet = 4;

PageFlow layoutFolded(const PageFrame& frame, std::span<const Block> blocks);

} // namespace rig
