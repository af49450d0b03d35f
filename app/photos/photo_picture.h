#pragma once

#include "core/lesson/photo.h"

#include <QImage>

namespace rig {

// The photo as it is drawn; null where the file holds none that can be decoded. A file may come from
// anywhere: it is asked for its size first.
QImage pictureOf(const PhotoImage& image);

} // namespace rig
