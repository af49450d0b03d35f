#pragma once

#include "core/numbers/distributions.h"

#include <cstdint>

namespace rig::tests {

// The i-th of a row of normal deviates, mean 0 and deviation 1: the same on every machine, no two rows alike
// to the eye (SplitMix64, Steele, Lea & Flood 2014, from memory).
inline double noiseAt(int i)
{
    std::uint64_t bits = (static_cast<std::uint64_t>(i) + 1) * 0x9E3779B97F4A7C15U;
    bits = (bits ^ (bits >> 30)) * 0xBF58476D1CE4E5B9U;
    bits = (bits ^ (bits >> 27)) * 0x94D049BB133111EBU;
    bits ^= bits >> 31;
    return numbers::normalQuantile((static_cast<double>(bits >> 11) + 0.5) * 0x1p-53);
}

} // namespace rig::tests
