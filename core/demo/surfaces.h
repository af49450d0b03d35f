#pragma once

#include "core/demo/teller.h"

namespace rig::demo {

// The control surfaces of an airframe with what its invented manual says; a surface that connects by itself
// is among them.
std::vector<Surface> surfacesOf(int airframe, AirframeId id, Language language);

// One by one through every surface, all in order: `who` stands at the surface, `cockpit` moves the control.
// Measured too where `measures`.
void checkControls(Teller& teller, RecordId record, int airframe, Who who, Who cockpit, bool measures);

} // namespace rig::demo
