#pragma once

namespace rig {

// What a control circuit moves. Of a coupling it says which circuit the joint stands in, of a surface what it
// is.
enum class Circuit { Aileron, Elevator, Rudder, Flap, Airbrake, Trim, WaterDump, Other };

} // namespace rig
