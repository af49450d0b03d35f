#pragma once

#include "app/pictures/cutaway.h"
#include "core/lesson/hatch_view.h"

namespace rig {

struct HatchPictureView
{
    CutawayJoint joint;
    CutawayPose pose;
    HatchSight sight;
    bool namesState = false; // false in a practice round: the words give nothing away
    bool withList = true;    // what is seen, dark and hidden, in words beside it
};

// A round opening, or a round mirror, and what is seen in it.
struct HatchOpening
{
    QPointF centre;
    double radius = 0;
    bool isMirror = false;
    AccessSide from = AccessSide::Above;
    std::vector<CutawayPart> parts; // cut off at the edge
};

struct HatchPicture
{
    std::vector<HatchOpening> openings;
    Drawing over;
    QString inWords;
};

HatchPicture layoutHatch(const HatchPictureView& view, QSizeF size, const FontSizes& fonts);
void paint(QPainter& painter, const HatchPicture& picture, const Theme& theme);

} // namespace rig
