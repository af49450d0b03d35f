#pragma once

#include "core/airframe/coupling.h"
#include "core/lesson/photo.h"

namespace rig {

// What stands in place of a photo in the demonstration: the joint through its hatch, or where it is on the
// airframe, as a small JPEG. It says in itself that it is no photo.
DrawnPhoto drawnPhoto(const Coupling& coupling, PhotoOf of);

} // namespace rig
