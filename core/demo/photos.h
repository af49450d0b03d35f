#pragma once

#include "core/demo/demo.h"
#include "core/demo/teller.h"

namespace rig::demo {

// Of four couplings how they look locked, part-seated and empty, and where they are.
void addPhotos(Teller& teller, const PhotoDrawer& draw);

} // namespace rig::demo
