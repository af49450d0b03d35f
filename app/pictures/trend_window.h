#pragma once

#include "core/views/trend_axis.h"

namespace rig {

// Which part is looked at, in axis units. Equal ends: everything.
struct TrendWindow
{
    TrendAxis axis = TrendAxis::ByRigging;
    double from = 0;
    double to = 0;
    bool isWhole() const { return !(from < to); }
};

// How far a window can go.
struct AxisReach
{
    TrendWindow whole; // what is shown when everything is
    double first = 0;  // the readings' own ends
    double last = 0;
    double narrowest = 1; // the narrowest window that still tells anything
    bool isEmpty = true;  // no readings: nothing to look around in
};

// What two readings are apart, or two riggings or two days: narrower, no axis has ticks to tell where one is.
double narrowestOf(TrendAxis axis, double leastApart);

// Zooms about a place (0 left, 1 right of the plot) and pans by a share of the width. Neither goes more than
// half a window beyond the readings, unless everything there is to show (an annual to come) reaches further;
// nor does a window get narrower than what separates two readings.
TrendWindow zoomed(const AxisReach& reach, const TrendWindow& drawn, double factor, double about);
TrendWindow panned(const AxisReach& reach, const TrendWindow& drawn, double share);

} // namespace rig
