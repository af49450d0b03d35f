#include "app/pages/learn/lesson_pictures.h"

#include "app/pictures/cutaway.h"
#include "app/pictures/hatch_view.h"

namespace rig {

namespace {

constexpr double kPictureHeight = 330;

// The joint with the gap that was drawn for this state in place of its usual one.
CutawayJoint drawnWith(CutawayJoint joint, JointState state, const std::optional<Gap>& gap)
{
    if (gap)
        (state == JointState::PartSeated ? joint.partSeatedMm : joint.lockedMm) = gap->inMillimetres();
    return joint;
}

PictureBlock blockOf(const CutawayView& view)
{
    PictureBlock block;
    block.height = kPictureHeight;
    block.lay = [view](QSizeF size, const FontSizes& fonts) {
        const CutawayPicture picture = layoutCutaway(view, size, fonts);
        return LaidPicture{
            [picture](QPainter& painter, const Theme& theme) { paint(painter, picture, theme); },
            picture.inWords};
    };
    return block;
}

} // namespace

HatchSight sightOf(const Coupling& coupling, const LookedWith& with)
{
    HatchSight sight;
    sight.side = coupling.seenFrom == AccessSide::Unknown ? AccessSide::Above : coupling.seenFrom;
    if (with.mirror)
        sight.mirror =
            coupling.mirrorFrom == AccessSide::Unknown ? usualMirror(sight.side) : coupling.mirrorFrom;
    sight.torch = with.torch;
    return sight;
}

PictureBlock seenOf(const Coupling& coupling, const CutawayJoint& joint, const SeatingTask& task)
{
    HatchPictureView view;
    view.joint = drawnWith(joint, task.state, task.gap);
    view.pose = poseOf(task.state);
    view.sight = sightOf(coupling, task.view);
    PictureBlock block;
    block.height = kPictureHeight;
    block.lay = [view](QSizeF size, const FontSizes& fonts) {
        const HatchPicture picture = layoutHatch(view, size, fonts);
        return LaidPicture{
            [picture](QPainter& painter, const Theme& theme) { paint(painter, picture, theme); },
            picture.inWords};
    };
    return block;
}

PictureBlock cutOpenOf(const CutawayJoint& joint, const SeatingAnswer& answer)
{
    CutawayView view;
    view.joint = drawnWith(joint, answer.shown, answer.gap);
    view.pose = poseOf(answer.shown);
    return blockOf(view);
}

} // namespace rig
