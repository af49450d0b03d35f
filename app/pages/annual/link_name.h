#pragma once

#include "core/airframe/ids.h"

#include <QString>

namespace rig {

// What leads somewhere is named by where it leads, and so is found again when the page was made anew.
template <typename Id> QString linkName(const char* place, Id id)
{
    return QLatin1String(place) + QLatin1Char('-') + QString::fromStdString(textOf(id.bytes));
}

} // namespace rig
