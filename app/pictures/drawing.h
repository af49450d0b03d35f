#pragma once

#include "app/pictures/marks.h"
#include "app/theme/theme.h"

#include <QPolygonF>
#include <QRectF>
#include <QString>

#include <vector>

class QPainter;

namespace rig {

// The plain shapes that a laid out picture consists of. Painting decides nothing about them.

struct DrawnBox
{
    QRectF where;
    Role role = Role::Band;
    bool hollow = false;
    bool hatched = false;
    double opacity = 1;
};

struct DrawnLine
{
    QPointF from;
    QPointF to;
    Role role = Role::Grid;
    double width = 1;
    bool dashed = false;
    double dashesBegun = 0; // pixels of a longer dashed line that lie before this piece
};

struct DrawnArea
{
    QPolygonF outline;
    Role role = Role::AccentFill;
    double opacity = 1;
};

// A line through many places, then a dot on each of `dots` and a small ring on each of `rings`.
struct DrawnCurve
{
    std::vector<QPolygonF> pieces;
    std::vector<QPointF> dots;
    std::vector<QPointF> rings;
    double dotRadius = 2;
    Role role = Role::InkSoft;
    double width = 1;
    double opacity = 1;
};

// Points where a bar goes on without a known end, or lies beyond the scale.
struct DrawnArrow
{
    QPointF tip;
    bool up = true; // to the right when it lies along a level scale
    double size = 6;
    Role role = Role::Ink;
    bool level = false; // points right or left
};

struct DrawnMark
{
    QRectF where;
    MarkShape shape = MarkShape::Triangle;
    Role role = Role::NearEdge;
};

struct DrawnLabel
{
    QRectF where; // the text fits inside; layout made sure of it
    QString text;
    Role role = Role::InkSoft;
    double pixels = 12;
    bool strong = false;
    bool wrapped = false;
    Qt::Alignment align;
};

// Painted in the order of its members.
struct Drawing
{
    std::vector<DrawnBox> boxes; // grounds: bands, zones, lanes
    std::vector<DrawnLine> lines;
    std::vector<DrawnArea> areas;
    std::vector<DrawnCurve> curves;
    std::vector<DrawnBox> bars;
    std::vector<DrawnLine> linesOver;
    std::vector<DrawnArrow> arrows;
    std::vector<DrawnMark> marks;
    std::vector<DrawnLabel> labels;
    QString inWords; // the accessible description
};

void paint(QPainter& painter, const Drawing& drawing, const Theme& theme);

} // namespace rig
