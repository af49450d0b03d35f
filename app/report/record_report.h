#pragma once

#include "app/report/page_flow.h"
#include "app/report/printing.h"
#include "core/result.h"
#include "core/review/record_summary.h"

#include <QString>

#include <vector>

namespace rig {

// A rigging record as blocks: what is not done first, then every coupling, the control check, the counts.
std::vector<Block> recordBlocks(const RecordSummary& summary);
// The same with what is filled in by hand: two signatures and a box for findings.
std::vector<Block> printedRecordBlocks(const RecordSummary& summary, const std::optional<FileEvidence>& file);

PageFlow layoutRecord(const RecordSummary& summary, const Printing& printing);
Outcome writeRecord(const QString& path, const RecordSummary& summary, const Printing& printing);

// QX-17-2026-06-14-rigging.pdf
QString recordFileName(const RecordSummary& summary);

} // namespace rig
