#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/stamp.h"

#include <string>

namespace rig {

// Somebody who measures, looks, signs or is called.
struct Person
{
    PersonId id; // null until saved
    std::string name;
    std::string role; // free text: owner, member, engineer
    std::string phone;
    Stamp stamp;
};

} // namespace rig
