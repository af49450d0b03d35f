#pragma once

#include "app/report/page_flow.h"
#include "core/clock.h"
#include "core/review/file_evidence.h"

#include <QString>

#include <optional>

namespace rig {

// How and when something is printed, and by what.
struct Printing
{
    Paper paper = Paper::A4;
    Day day;
    QString program;                       // name and version
    bool withAppendix = true;              // of the engineer's report
    std::optional<FileEvidence> file = {}; // from which it is printed
};

// What stands at the foot of every page: when, by what, and how far the file had come.
QString printedLine(const Printing& printing);

} // namespace rig
