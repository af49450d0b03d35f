#pragma once

#include "core/lesson/photo.h"

#include <QByteArray>
#include <QSize>
#include <QString>

#include <optional>
#include <string>

namespace rig {

struct PhotoRow
{
    Photo photo;
    std::string person;
};

// A picture that was taken in, and what is said of it.
struct PhotoEntry
{
    std::optional<PhotoOf> of; // nobody has said yet
    QString day;
    QString note;
    QByteArray jpeg; // nothing: no picture was brought yet
    QSize size;

    bool operator==(const PhotoEntry&) const = default;
};

} // namespace rig
