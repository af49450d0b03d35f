#pragma once

#include "app/pictures/drawing.h"
#include "core/lesson/cutaway.h"

#include <QPainterPath>
#include <QSizeF>

namespace rig {

// What is asked of the picture. Two of one coupling, each in its own state, have the same scale beside each
// other.
struct CutawayView
{
    CutawayJoint joint;
    CutawayPose pose;
    bool withLabels = true;
    bool withCaption = true; // a sentence or two below
    bool withGap = true;     // its measure and its figure
};

// One part, painted in its turn. `overCard`: its colour is mixed with the card's and hides what lies below.
struct CutawayPart
{
    QPainterPath path;
    Role fill = Role::StripGround;
    double opacity = 1;
    bool overCard = true;
    Role line = Role::Ink;
    double width = 0; // none: no outline
    bool dashed = false;
};

struct CutawayPicture
{
    std::vector<CutawayPart> parts;
    Drawing over; // leaders, the gap's measure, title and labels; its inWords say everything
    JointState state = JointState::Locked;
    QRectF ball;          // where it is, or would be at home
    double ballAwayY = 0; // y of its middle at seating 0
    double ballHomeY = 0; // and at 1
    QRectF sleeve;
    QString inWords;

    double seatingAt(double y) const;
};

MarkShape shapeOf(JointState state);
Role shapeRoleOf(JointState state);
Role textRoleOf(JointState state);

CutawayPicture layoutCutaway(const CutawayView& view, QSizeF size, const FontSizes& fonts);
void paint(QPainter& painter, const CutawayPart& part, const Theme& theme);
void paint(QPainter& painter, const CutawayPicture& picture, const Theme& theme);

} // namespace rig
