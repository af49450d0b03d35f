#pragma once

#include "app/pictures/drawing.h"
#include "core/baseline/band.h"
#include "core/judgement/judgement.h"
#include "core/measure/gap_interval.h"

#include <QSizeF>

#include <optional>

namespace rig {

// The latest reading of one coupling on its own band, as small as a table's row.
struct BandBarView
{
    std::optional<Band> band;
    std::optional<GapInterval> reading;
    std::optional<Verdict> verdict; // of `reading`: colours its bar
};

struct BandBarPicture : Drawing
{
    QRectF bar;
    QRectF band; // between the inner edges: the same place in every row; null without a band
};

// The band takes the middle half of the width whatever its millimetres are, so that rows compare at a look.
// A reading beyond the bar stands at its end with an arrow. Without a band the bar is a dashed outline.
BandBarPicture layoutBandBar(const BandBarView& view, QSizeF size, const FontSizes& fonts);

} // namespace rig
