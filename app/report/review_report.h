#pragma once

#include "app/report/printing.h"
#include "core/result.h"
#include "core/review/airframe_review.h"

#include <QString>

#include <vector>

namespace rig {

// The engineer's report on one period of an airframe: what stands out first, then every coupling whatever it
// shows, what was outside and what came of it, who measured with what, and what was changed. At the end an
// empty box for findings and a line to sign on.
std::vector<Block> reviewBlocks(const AirframeFacts& facts, const AirframeReview& review);

PageFlow layoutReview(const AirframeFacts& facts, const AirframeReview& review, const Printing& printing);
Outcome writeReview(const QString& path, const AirframeFacts& facts, const AirframeReview& review,
                    const Printing& printing);

// QX-17-2026-10-31-review.pdf
QString reviewFileName(const AirframeReview& review);

} // namespace rig
