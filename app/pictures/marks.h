#pragma once

#include "app/theme/theme.h"
#include "core/judgement/judgement.h"
#include "core/review/says.h"
#include "core/rigging/question.h"

#include <QRectF>

#include <optional>

class QPainter;

namespace rig {

// The five verdicts as shapes: never colour alone. Inside = filled disc with tick, near edge = triangle,
// outside = diamond, no band yet = dashed ring, cannot tell = half disc. Two more for the rigging record:
// Waiting = small open ring, Current = arrow head.
enum class MarkShape {
    DiscTick,
    Triangle,
    Diamond,
    DashedRing,
    HalfDisc,
    Waiting,
    Current,
    Done,
    Person, // head and shoulders: never of a coupling
};

MarkShape shapeOf(Verdict verdict);
Role shapeRoleOf(Verdict verdict); // colour of the shape
Role textRoleOf(Verdict verdict);  // colour of words beside it, at least 4.5:1 on card and on fillRoleOf
Role fillRoleOf(Verdict verdict);  // behind a verdict card

// How a coupling stands: the tick is for an inside reading with nothing said beside it.
MarkShape shapeOf(Says says);
Role shapeRoleOf(Says says);
Role textRoleOf(Says says);

// Of a question that is open: what stops as an outside reading, any other doubt as a half disc.
MarkShape shapeOf(const Question& question);
Role shapeRoleOf(const Question& question);

void paintMark(QPainter& painter, MarkShape shape, Role role, const QRectF& where, const Theme& theme);

} // namespace rig
