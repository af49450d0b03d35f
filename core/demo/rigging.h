#pragma once

#include "core/demo/teller.h"

namespace rig::demo {

// A reading outside the band, and what came of it.
struct Surprise
{
    Saying coupling;
    Tool tool;
    double seen; // mm
    bool isPartSeated;
    std::optional<double> after; // mm, once mended; empty: everything stopped there
    Saying note;                 // at the close
    // How its question was closed on the spot; unused where everything stopped.
    Who decides = Who::Oren;
    Saying found = {};
    Saying done = {};
};

struct RiggingPlan
{
    int airframe = 0;
    Day day;
    int number = 0; // of all riggings of this airframe
    int hour = 9;
    Who first = Who::Oren;
    Who second = Who::Vale;
    std::optional<Tool> onlyTool; // instead of each coupling's own
    double shift = 0;             // mm, what that tool reads too high
    int secondReads = 0;          // so many of the first couplings are read by the second person too
    double secondShift = 0;
    Saying interruptedAt = {};
    std::optional<Who> secondName; // of the close, where it was not the second person
    bool controlsFirst = false;    // the control check before the couplings
    std::optional<Surprise> surprise;
    Saying note = {};
};

// One rigging from the first look to the close.
void rigWhole(Teller& teller, const RiggingPlan& plan);

// The first so many couplings, by the first person only, and no close.
RecordId beginRigging(Teller& teller, const RiggingPlan& plan, int couplings);

void answer(Teller& teller, RecordId record, const Joint& joint, CheckKind kind, Answer answer, Turn turn,
            Who who);
void interrupt(Teller& teller, RecordId record, const Joint& joint, InterruptionReason reason, Who who);
void close(Teller& teller, RecordId record, Closing closing, std::optional<Who> first,
           std::optional<Who> second, const Saying& note);

} // namespace rig::demo
