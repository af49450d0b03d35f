#pragma once

#include "app/report/page_flow.h"
#include "core/clock.h"

#include <QString>

namespace rig {

// How and when something is printed, and by what.
struct Printing
{
    Paper paper = Paper::A4;
    Day day;
    QString program;          // name and version
    bool withAppendix = true; // of the engineer's report
};

} // namespace rig
