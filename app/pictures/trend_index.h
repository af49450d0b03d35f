#pragma once

#include "app/pictures/trend.h"

#include <vector>

namespace rig {

namespace trend {

// Where one reading stands on the chosen axis; millimetres. An open interval ends at `low`.
struct Spot
{
    double x = 0;
    double low = 0;
    double high = 0;
    Verdict verdict = Verdict::NoBandYet;
    bool isOpen = false;
    bool isPart = false; // or found not secured: it stands apart
    bool isNotSecured = false;
    bool hollow = false;
    bool ofBaseline = false;
};

struct Range
{
    double from = 0;
    double to = 0;
    double width() const { return to - from; }
    bool contains(double value) const { return value >= from && value <= to; }
};

} // namespace trend

// What of a series on one axis is the same for every window: worked out once, so that looking around stays
// smooth however long the history is. Of the series as it was: made anew when that changes.
struct TrendIndex
{
    TrendAxis axis = TrendAxis::ByRigging;
    std::vector<trend::Spot> spots;     // in the order of the readings
    std::vector<std::uint32_t> byPlace; // indexes of the spots from left to right
    AxisReach reach;
    std::vector<trend::Range> fittings; // the part of the axis each fitting holds, in their order
    // From the lowest to the highest millimetre of the locked readings and bands; readings so far off that
    // the rest would be squashed are left to an arrow at the edge.
    trend::Range locked;
    trend::Range part; // of the part-seated ones
    bool hasPart = false;
    bool partAbove = true; // they are wider than the locked ones
    QString inWords;
};

TrendIndex indexOf(const TrendSeries& series, TrendAxis axis);

} // namespace rig
