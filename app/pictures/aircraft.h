#pragma once

#include "app/pictures/drawing.h"
#include "app/pictures/trend_window.h"
#include "core/views/aircraft_series.h"

#include <QSizeF>

#include <cstddef>
#include <optional>
#include <vector>

namespace rig {

// A bar lane of the shared shifts, alone or below the couplings.
struct ShiftsPicture : Drawing
{
    QRectF plot;
    double scoreAtBottom = -3;
    double scoreAtTop = 3;
};

// Where a coupling's name stands beside the picture.
struct AircraftName
{
    std::size_t coupling = 0;
    QRectF where;
};

struct AircraftPicture : Drawing
{
    std::vector<AircraftName> names;
    QRectF plot;      // of the couplings
    QRectF shiftLane; // null when there are no shifts
    TrendWindow window;
    double scoreAtBottom = -4;
    double scoreAtTop = 4;
    double shiftAtBottom = -3;
    double shiftAtTop = 3;
};

// All couplings over one another, each told apart by its name at the right end; the chosen one strong. Below
// them one bar for each rigging day's shared shift.
AircraftPicture layoutAircraft(const AircraftSeries& series, const TrendWindow& window,
                               std::optional<std::size_t> chosenCoupling, QSizeF size,
                               const FontSizes& fonts);

// How far one can look around in it.
AxisReach reachOf(const AircraftSeries& series, TrendAxis axis);

struct AircraftSpot
{
    std::size_t coupling = 0;
    std::size_t point = 0;
};

// The reading nearest to a point of the picture, when one is near enough to be meant; of several in the same
// place that of the chosen coupling.
std::optional<AircraftSpot> pointAt(const AircraftSeries& series, const AircraftPicture& picture,
                                    std::optional<std::size_t> chosenCoupling, QPointF point);
// The shift whose bar is under a point of the lane.
std::optional<std::size_t> shiftAt(const AircraftSeries& series, const AircraftPicture& picture,
                                   QPointF point);

// Only the shared shifts, one bar a rigging day in their order, evenly spaced.
ShiftsPicture layoutShifts(const std::vector<ShiftDay>& shifts, QSizeF size, const FontSizes& fonts);

} // namespace rig
