#pragma once

#include "core/lesson/photo.h"

#include <optional>

namespace rig {

// What is wrong with a photo that stands in a file, whoever put it there.
enum class PhotoFault {
    NoPicture,       // it cannot be decoded, or is larger than any that is kept
    OtherSize,       // than is said beside it
    MoreThanPicture, // tags, comments or anything else that could say where and with what it was taken
};

std::optional<PhotoFault> faultOf(const Photo& photo, const PhotoImage& image);

} // namespace rig
