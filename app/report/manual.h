#pragma once

#include "app/report/page_flow.h"
#include "app/theme/theme.h"
#include "core/result.h"

#include <QString>

#include <vector>

class QTextDocument;

namespace rig {

// A chapter of docs/manual, which the program carries with it in each of its languages. Everything here is of
// the language that is spoken now.
struct ManualChapter
{
    QString name;  // of its file: "trends.md"
    QString title; // "Trends"
};

// In the order of its list of contents.
std::vector<ManualChapter> manualChapters();

// Where its chapters and pictures stand among the program's resources, with a slash at the end.
QString manualFolder();

// Markdown; empty where there is no chapter of that name.
QString manualChapter(const QString& name);

// How a text of the manual is laid out.
struct ManualStyle
{
    Look look;
    double width = 0;       // of the text, in pixels; no picture is wider
    bool isPrinted = false; // links lead nowhere, and every character can be read out of the PDF again
};

// Lays the text into the document, with its pictures, and under each of them what it shows.
void layOutManual(QTextDocument& document, const QString& markdown, const ManualStyle& style);

// All chapters as a PDF, the contents first; each begins a page. All of it or nothing: where it cannot be
// written, what stood at `path` stays as it was.
Outcome writeManual(const QString& path, Paper paper, const QString& program);

// rigband-manual.pdf
QString manualFileName();

} // namespace rig
