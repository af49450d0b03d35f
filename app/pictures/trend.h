#pragma once

#include "app/pictures/drawing.h"
#include "app/pictures/trend_window.h"
#include "app/theme/theme.h"
#include "core/views/trend_series.h"

#include <QRectF>
#include <QString>

#include <optional>

namespace rig {

struct TrendIndex; // app/pictures/trend_index.h

struct TrendPicture : Drawing
{
    QRectF plot;
    QRectF eventLane;   // null when there are none
    QRectF partLane;    // of part-seated readings, on a scale of their own; null when there are none
    TrendWindow window; // as drawn, never whole
    double mmAtBottom = 0;
    double mmAtTop = 1;
    double partMmAtBottom = 0;
    double partMmAtTop = 1;
    double barWidth = 3; // of a reading
};

// The index is that of the series and the window's axis.
TrendPicture layoutTrend(const TrendSeries& series, const TrendIndex& index, const TrendWindow& window,
                         QSizeF size, const FontSizes& fonts);
// The same for a picture that nobody looks around in.
TrendPicture layoutTrend(const TrendSeries& series, const TrendWindow& window, QSizeF size,
                         const FontSizes& fonts);

// The reading nearest to a point of the picture, when one is near enough to be meant.
std::optional<std::size_t> readingAt(const TrendIndex& index, const TrendPicture& picture, QPointF point);
// The event whose tick in the event lane is nearest to a point of that lane.
std::optional<std::size_t> eventAt(const TrendSeries& series, const TrendPicture& picture, QPointF point);
// Where that reading is drawn; nothing when it lies outside the window.
std::optional<QRectF> placeOf(const TrendIndex& index, const TrendPicture& picture, std::size_t reading);

// The last readings of a coupling as a small trend on its own band. All small trends of an airframe use the
// same millimetres per pixel rule.
TrendPicture layoutSmallTrend(const TrendSeries& series, std::size_t lastReadings, QSizeF size);

} // namespace rig
