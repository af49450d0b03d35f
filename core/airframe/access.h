#pragma once

namespace rig {

// From which side the eye comes to a coupling, as somebody standing at the rigged airframe sees it.
enum class AccessSide { Unknown, Above, Below, Front, Rear, Left, Right };

} // namespace rig
