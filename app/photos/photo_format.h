#pragma once

#include "app/photos/photo_refusal.h"

#include <QByteArray>

#include <variant>

namespace rig {

// The name that QImageReader knows a format by, told from the first bytes: jpeg, png, bmp or gif.
std::variant<QByteArray, PhotoRefusal> photoFormatOf(const QByteArray& bytes);

// Decoders fill what is missing with grey and call it read; so the end is looked for before.
bool isCutShort(const QByteArray& bytes, const QByteArray& format);

} // namespace rig
