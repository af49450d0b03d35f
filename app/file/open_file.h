#pragma once

#include "core/airframe/id_source.h"
#include "core/review/airframe_facts.h"
#include "core/store/records.h"
#include "core/store/store_file.h"

#include <QString>

#include <memory>
#include <optional>

namespace rig::file {

// An open file with all that it takes to read and add facts. Made in place: its parts refer to one another.
struct OpenFile
{
    SystemClock clock;
    IdSource ids;
    std::unique_ptr<StoreFile> file;
    std::unique_ptr<Records> records;

    OpenFile();
    Outcome open(const QString& path, OpenAs as = OpenAs::Existing);
};

// The airframe that is registered so, however it is typed; null where there is none.
const Airframe* airframeNamed(const std::vector<Airframe>& airframes, const QString& registration);

// Opens the file; what it knows of the airframe with this registration. Where that cannot be told, why is
// complained of.
std::optional<AirframeFacts> factsNamed(OpenFile& open, const QString& path, const QString& registration);

// Whether nothing stands there yet, which is complained of otherwise: nothing is ever written over.
bool isFree(const QString& out);

} // namespace rig::file
