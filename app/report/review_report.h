#pragma once

#include "app/report/printing.h"
#include "core/result.h"
#include "core/review/airframe_review.h"

#include <QString>

#include <vector>

namespace rig {

// The engineer's report on one period of an airframe, a sheet to work from. On its first page what to look at
// first, to be ticked off, and where everything stands; then what was outside and what came of it, every
// coupling whatever it shows, who measured with what, and what was changed. The appendix lists readings,
// looks and control checks, which the tables beside the report hold in any case. At the end an empty box for
// findings and a line to sign on.
std::vector<Block> reviewBlocks(const AirframeFacts& facts, const AirframeReview& review,
                                bool withAppendix = true, bool withPlan = false,
                                const std::optional<FileEvidence>& file = {});

// With the airframe from above where that takes no other page. Stopped: no pages.
PageFlow layoutReview(const AirframeFacts& facts, const AirframeReview& review, const Printing& printing,
                      Progress* progress = nullptr);

// QX-17-2026-10-31-review.pdf
QString reviewFileName(const Airframe& airframe, const ReviewPeriod& period);

} // namespace rig
