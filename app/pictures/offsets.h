#pragma once

#include "app/pictures/drawing.h"

#include <QSizeF>

#include <optional>
#include <string>
#include <vector>

namespace rig {

// One person or gauge against the mean of all, millimetres. Without an estimate the row says why instead.
struct OffsetRow
{
    std::string name;
    std::optional<double> offset;
    std::optional<double> lower; // of its interval
    std::optional<double> upper;
    std::optional<double> spread; // the figure at the right
    int readings = 0;
    bool standsOut = false;
    QString instead; // "4 readings: too few to tell"; only without an estimate
};

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
