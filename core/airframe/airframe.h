#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/stamp.h"

#include <optional>
#include <string>

namespace rig {

// Where the tailplane stands, for the plan view alone.
enum class TailForm { Unknown, Low, T, V };

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
    int riggingsBefore = 0;             // riggings already counted when the file began
    std::optional<int> spanCentimetres; // for the plan view, as the two below it
    TailForm tail = TailForm::Unknown;
    std::optional<int> wingPanels; // pieces of wing that are rigged: 2 for a left and a right one
    Stamp stamp;
};

} // namespace rig
