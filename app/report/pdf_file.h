#pragma once

#include "app/report/page_flow.h"
#include "core/progress.h"
#include "core/result.h"

#include <QByteArray>
#include <QString>

class QPdfWriter;

namespace rig {

inline constexpr int kPdfDotsPerInch = 1200;
inline constexpr double kPdfDotsPerUnit = kPdfDotsPerInch / 96.0; // a unit is 1/96 inch

// Upright on that paper, to be painted on to its edges.
void preparePdf(QPdfWriter& writer, Paper paper, const QString& title, const QString& program);

// The pages as a PDF, text as text in the bundled font. The same pages give the same bytes, save the stamp of
// when they were made. Empty where `progress` was stopped: it is told each page.
QByteArray pdfOf(const PageFlow& flow, const QString& title, const QString& program,
                 Progress* progress = nullptr);

// All of it or nothing: what stood at `path` stays as it was when this cannot be written, and
// ReportWords::cannotWrite says so.
Outcome writePdf(const QString& path, const PageFlow& flow, const QString& title, const QString& program);
Outcome saveWhole(const QString& path, const QByteArray& bytes);

} // namespace rig
