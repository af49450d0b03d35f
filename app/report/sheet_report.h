#pragma once

#include "app/report/page_flow.h"
#include "app/report/printing.h"
#include "core/result.h"
#include "core/views/paper_sheet.h"

#include <QString>

#include <vector>

namespace rig {

// A sheet for a rigging without the program: boxes and lines, the second person's on pages of their own, so
// that the first result is not in sight.
// The airframe from above, its joints numbered as on the sheet: where, and how high.
struct SheetPlan
{
    enum class At { BeforeJoints, AfterTop, AfterJoints };
    At at = At::BeforeJoints;
    double height = 0; // 1/96 inch; none: it is left out
};
std::vector<Block> sheetBlocks(const PaperSheet& sheet, const SheetPlan& plan = {});
// With the plan where that takes no other page.
PageFlow layoutSheet(const PaperSheet& sheet, const Printing& printing);
Outcome writeSheet(const QString& path, const PaperSheet& sheet, const Printing& printing);

// QX-17-sheet.pdf
QString sheetFileName(const PaperSheet& sheet);

} // namespace rig
