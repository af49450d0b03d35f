#pragma once

#include "app/pictures/drawing.h"
#include "app/pictures/scale.h"
#include "core/views/readings_strip.h"

#include <QSizeF>

namespace rig {

struct ReadingsStripPicture : Drawing
{
    QRectF strip;
    Scale mm;
    bool saysNothingBetween = false;
};

// A legend with shapes, words and counts; the band as a tint; every locked reading as a small bar, alike ones
// stacked; part-seated ones as tall bars with a mark, and those found so at a rigging with another.
ReadingsStripPicture layoutReadingsStrip(const ReadingsStripView& view, QSizeF size, const FontSizes& fonts);
double readingsStripHeight(const FontSizes& fonts); // enough for 58 readings

} // namespace rig
