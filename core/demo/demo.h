#pragma once

#include "core/demo/language.h"
#include "core/lesson/photo.h"
#include "core/result.h"

#include <functional>

namespace rig {

class StoreFile;
struct Coupling;

// Draws what stands in place of a photo, and says in the picture that it is none.
using PhotoDrawer = std::function<DrawnPhoto(const Coupling&, PhotoOf)>;

// Fills a new, empty file with an invented hangar: three airframes, seven people, five gauges, and the
// seasons 2024 to 2026 with all that happened in them. The same facts, with the same ids, every time; in each
// language only the words differ. One transaction. A few couplings get photos where somebody draws them;
// everything else is the same without.
Outcome buildDemo(StoreFile& file, demo::Language language, const PhotoDrawer& drawPhoto = {});

// The photos alone, into a file that was filled in this language without them: their words are those of the
// day.
Outcome addDemoPhotos(StoreFile& file, demo::Language language, const PhotoDrawer& drawPhoto);

} // namespace rig
