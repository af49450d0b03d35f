#pragma once

#include "app/photos/photo_refusal.h"
#include "core/lesson/photo.h"

#include <QSize>

#include <variant>

class QByteArray;
class QImage;
class QString;

namespace rig {

// What a file of the file holds of a picture that somebody brings: turned as it was taken, its longest edge
// at most kPhotoEdge, and nothing but the picture. The place, the device and every other tag stay behind.
struct TakenPhoto
{
    QSize size;
    PhotoImage image;
    bool isFirstOfSeveral = false; // of moving pictures
};

inline constexpr int kPhotoEdge = 1600;           // pixels
inline constexpr int kMostPhotoBytes = 4'000'000; // of what is kept
inline constexpr int kMostBytesBrought = 40'000'000;
inline constexpr int kMostPixelsBrought = 50'000'000;
inline constexpr int kLongestEdgeBrought = 20'000;

using PhotoTaken = std::variant<TakenPhoto, PhotoRefusal>;

// A file that is too large, or a picture that would take too much memory, is refused before it is read.
PhotoTaken takenInFile(const QString& path);
PhotoTaken takenIn(const QByteArray& bytes);
PhotoTaken takenIn(const QImage& picture); // as it comes out of the clipboard

} // namespace rig
