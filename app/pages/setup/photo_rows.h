#pragma once

#include "core/lesson/photo.h"

#include <QByteArray>
#include <QSize>
#include <QString>

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
    PhotoOf of = PhotoOf::Locked;
    QString day;
    QString note;
    QByteArray jpeg; // nothing: no picture was brought yet
    QSize size;

    bool operator==(const PhotoEntry&) const = default;
};

} // namespace rig
