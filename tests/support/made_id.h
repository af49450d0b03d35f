#pragma once

#include "core/airframe/ids.h"

namespace rig::test {

// The same id for the same number; of another number another one.
template <typename SomeId> SomeId madeId(int number)
{
    SomeId made;
    made.bytes[0] = static_cast<std::uint8_t>(number);
    made.bytes[15] = static_cast<std::uint8_t>(number * 37);
    return made;
}

} // namespace rig::test
