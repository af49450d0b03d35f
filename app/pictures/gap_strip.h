#pragma once

#include "app/theme/theme.h"
#include "core/views/gap_strip_view.h"

#include <QPointF>
#include <QRectF>
#include <QString>

#include <vector>

class QPainter;

namespace rig {

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
    QRectF strip; // the band's scale; part-seated readings far from it have their own, behind a break
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
