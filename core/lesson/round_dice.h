#pragma once

#include "core/lesson/lesson.h"
#include "core/numbers/dice.h"

#include <cstring>

namespace rig {

// The throws of one round after so many answers: the same whenever the question is shown again.
inline numbers::Dice roundDice(const LessonRound& round, std::size_t answered)
{
    std::uint64_t seed = 0;
    std::memcpy(&seed, round.id.bytes.data() + sizeof seed, sizeof seed); // the drawn half of the id
    return numbers::Dice{seed ^ (answered * 0x9e3779b97f4a7c15ULL)};
}

} // namespace rig
