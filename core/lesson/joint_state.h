#pragma once

namespace rig {

// How a ball joint can stand; docs/terms.md, "The states of a joint".
enum class JointState {
    Locked,
    PartSeated,
    NotSecured,   // fully home, and neither sleeve nor pin holds the plunger
    NotConnected, // no ball: the gap may look like any other
};

} // namespace rig
