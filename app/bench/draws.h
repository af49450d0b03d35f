#pragma once

#include "core/numbers/interval.h"

#include <cstdint>
#include <random>
#include <vector>

namespace rig::bench {

// How invented gaps are read.
struct ReadingKind
{
    const char* name;
    double step = 0; // mm between leaves; 0: the gap itself is known
};

inline constexpr ReadingKind kExact{"exact", 0};
inline constexpr ReadingKind kLeaves{"leaves 0.05", 0.05};
inline constexpr ReadingKind kTaper{"gauge 0.01", 0.01};

// Invented normal gaps from one seed, the same on every machine: the engine's own bits, no library
// distribution.
class Draws
{
public:
    explicit Draws(std::uint64_t seed) : m_engine{seed} {}

    double uniform(); // strictly between 0 and 1
    double normal();  // mean 0, deviation 1

private:
    std::mt19937_64 m_engine;
};

// What this gauge says of a true gap: the step that holds it.
numbers::Interval readingOf(double gap, const ReadingKind& kind);

std::vector<numbers::Interval> readingsOf(int count, double mean, double sigma, const ReadingKind& kind,
                                          Draws& draws);

} // namespace rig::bench
