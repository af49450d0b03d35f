#pragma once

#include "app/theme/theme.h"
#include "core/baseline/band.h"
#include "core/judgement/judgement.h"
#include "core/measure/gap_interval.h"

#include <QPointF>
#include <QRectF>
#include <QString>

#include <optional>
#include <vector>

class QPainter;

namespace rig {

// One coupling's gaps on one millimetre scale: band, near-edge zones, centre, a reading as a bar from enters
// to refuses, and the part-seated region hatched on the side where it was seen.
struct GapStripView
{
    std::optional<Band> band;
    std::optional<GapInterval> reading; // today's, drawn strongest
    std::optional<Verdict> verdict;     // of `reading`: colours its bar
    std::vector<GapInterval> partSeated;
    std::vector<GapInterval> earlier; // faint ticks below the strip's middle
    bool withLegends = true; // "this coupling's band 0.55-0.71", "part-seated was seen here" or "never shown"
};

struct StripBox
{
    QRectF where;
    Role role = Role::StripGround;
    bool hatched = false;
};

struct StripLine
{
    QPointF from;
    QPointF to;
    Role role = Role::Ink;
    double width = 1;
};

struct StripLabel
{
    QRectF where; // the text fits inside; layout made sure of it
    QString text;
    Role role = Role::InkSoft;
    double pixels = 12;
    bool strong = false;
    Qt::Alignment align;
};

struct GapStripPicture
{
    QRectF strip;
    std::vector<StripBox> boxes;
    std::vector<StripLine> lines;
    std::vector<StripLabel> labels;
    double mmAtLeft = 0;
    double mmAtRight = 1;
    QString inWords; // the accessible description
};

GapStripPicture layoutGapStrip(const GapStripView& view, QSizeF size, const FontSizes& fonts);
void paint(QPainter& painter, const GapStripPicture& picture, const Theme& theme);

} // namespace rig
