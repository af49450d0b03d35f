#pragma once

#include "core/judgement/judgement.h"

namespace rig {

// What a coupling says now, gravest first. None of them says that anything is in order.
enum class Says {
    Outside,    // a reading outside its band that nobody has resolved, or the latest one
    Stopped,    // a “no” about it or about a surface of its circuit that nobody has found out
    Asked,      // something else about it is asked and not found out
    PartSeated, // the latest reading found it so
    NotSecured, // likewise
    InDoubt,    // facts that it rests on were changed past this program, or nobody can tell
    CannotTell,
    NoBandYet,
    Hidden,  // what was found today is kept back until the second person has worked
    NotRead, // at no rigging of the period on the fitting that holds
    NoGap,   // nothing is read of it, as there is no gap to measure, and nothing else is asked
    NearEdge,
    Moved,         // inside, and how it moves stands out
    Scatters,      // inside, and its scatter grew or shrank
    WasOutside,    // inside, and it was outside or found not locked earlier in the period
    OutsideBefore, // inside, and before the period it was outside, of which nobody has said what it was
    Inside,
};

Says saysOf(Verdict verdict);

} // namespace rig
