#pragma once

#include "app/pictures/drawing.h"
#include "core/views/offset_row.h"

#include <QSizeF>

#include <vector>

namespace rig {

struct OffsetsPicture : Drawing
{
    QRectF plot; // of the intervals, between names and figures
    double mmAtLeft = -0.05;
    double mmAtRight = 0.05;
};

// How high the picture wants to be for these rows.
double heightOfOffsets(const std::vector<OffsetRow>& rows, const FontSizes& fonts);
// Rows one below the other on one scale around zero, which is labelled at the foot.
OffsetsPicture layoutOffsets(const std::vector<OffsetRow>& rows, QSizeF size, const FontSizes& fonts);

} // namespace rig
