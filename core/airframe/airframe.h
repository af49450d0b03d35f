#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/stamp.h"

#include <optional>
#include <string>

namespace rig {

struct Airframe
{
    AirframeId id; // null until saved
    std::string registration;
    std::string type;
    std::string serial;
    std::string jurisdiction;     // free text; the law differs and changes
    std::string manualReferences; // free text
    std::optional<Day> annualDue;
    std::string callName; // whom to call when a reading lies outside
    std::string callPhone;
    int riggingsBefore = 0; // riggings already counted when the file began
    Stamp stamp;
};

} // namespace rig
