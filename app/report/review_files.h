#pragma once

#include "app/report/review_report.h"
#include "core/progress.h"

#include <QString>

namespace rig {

// Where the tables of a report stand: X.pdf -> X-csv, a folder beside it.
QString tablesFolderFor(const QString& pdf);

// The report as `pdf` and, in the folder beside it, everything it rests on as tables. What stood there with
// the same names is replaced. On a problem `failed` is the path that could not be written. Where `progress`
// was stopped nothing is written. Touches no widget: a thread of its own may do it.
Outcome writeReviewFiles(const QString& pdf, const AirframeFacts& facts, const AirframeReview& review,
                         const Printing& printing, QString& failed, Progress* progress = nullptr);
// The same with pages that were laid out before.
Outcome writeReviewFiles(const QString& pdf, const AirframeFacts& facts, const AirframeReview& review,
                         const PageFlow& flow, const QString& program, QString& failed,
                         Progress* progress = nullptr);

} // namespace rig
