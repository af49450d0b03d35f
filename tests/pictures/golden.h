#pragma once

#include "app/pictures/drawing.h"

#include <QImage>
#include <QRect>

#include <optional>

namespace rig::test {

QImage painted(const Drawing& drawing, QSize size, const Theme& theme);

// The largest spot in which two pictures are unlike.
struct Unlike
{
    QRect where;
    int pixels = 0;
};

// Empty when the two show the same. The edges of letters and lines may be a little lighter or darker, as
// another version of the font engine draws them: a pixel counts only when the other picture has nothing like
// it within one pixel. What counts is not summed up over the picture but looked for in one spot, so that one
// changed mark is seen however large the picture is. Pictures of different size are unlike altogether.
std::optional<Unlike> unlike(const QImage& one, const QImage& other);

// Writes what was drawn, and where it is unlike, beside the test when it is not as agreed.
void expectLikeGolden(const QImage& image, const QString& name);

} // namespace rig::test
