#pragma once

#include <stdexcept>
#include <string>

namespace rig::fuzz {

// What holds whatever the bytes are; `what` is told where it does not.
inline void always(bool holds, const std::string& what)
{
    if (!holds)
        throw std::logic_error{what};
}

} // namespace rig::fuzz
