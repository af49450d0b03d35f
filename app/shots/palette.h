#pragma once

#include <QImage>

namespace rig {

// The picture in 256 colours, every other one as the nearest of these: a page is flat areas and smoothed
// letters, and takes a third of the room so.
QImage inFewColours(const QImage& picture);

} // namespace rig
