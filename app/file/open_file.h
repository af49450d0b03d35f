#pragma once

#include "core/store/records.h"
#include "core/store/store_file.h"

#include <QString>

#include <memory>

namespace rig::file {

// An open file with all that it takes to read and add facts. Made in place: its parts refer to one another.
struct OpenFile
{
    SystemClock clock;
    IdSource ids;
    std::unique_ptr<StoreFile> file;
    std::unique_ptr<Records> records;

    OpenFile();
    Outcome open(const QString& path);
};

} // namespace rig::file
