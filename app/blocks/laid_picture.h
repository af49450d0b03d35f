#pragma once

#include "app/blocks/blocks.h"

#include <utility>

namespace rig {

// Any laid out picture, as a report's block or a PictureWidget takes it.
template <typename Picture> LaidPicture laidPicture(Picture picture)
{
    QString inWords = picture.inWords;
    return {[picture = std::move(picture)](QPainter& painter, const Theme& theme) {
                paint(painter, picture, theme);
            },
            std::move(inWords)};
}

} // namespace rig
