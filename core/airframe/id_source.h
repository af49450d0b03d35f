#pragma once

#include "core/airframe/ids.h"

#include <random>

namespace rig {

// Makes ids in strictly rising order. Seeded by the caller: the program from the system's entropy, tests and
// the demo with a fixed number.
class IdSource
{
public:
    explicit IdSource(std::uint64_t seed) : m_random{seed} {}

    IdBytes next(std::int64_t utcMilliseconds);

private:
    std::mt19937_64 m_random;
    std::int64_t m_lastMilliseconds = 0;
    std::uint16_t m_counter = 0; // the 12 bits rand_a, raised within one millisecond
};

} // namespace rig
