#pragma once

#include "core/demo/demo.h"
#include "core/store/records.h"

namespace rig::demo {

// Of four couplings how they look locked, part-seated and empty, and where they are.
Outcome addPhotos(Records& records, Language language, Day day, const PhotoDrawer& draw);

} // namespace rig::demo
