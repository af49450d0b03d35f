#pragma once

#include "app/pictures/drawing.h"
#include "core/views/band_bar_view.h"

#include <QSizeF>

namespace rig {

struct BandBarPicture : Drawing
{
    QRectF bar;
    QRectF band; // between the inner edges: the same place in every row; null without a band
};

// The band takes the middle half of the width whatever its millimetres are, so that rows compare at a look.
// A reading beyond the bar stands at its end with an arrow. Without a band the bar is a dashed outline.
BandBarPicture layoutBandBar(const BandBarView& view, QSizeF size, const FontSizes& fonts);

} // namespace rig
