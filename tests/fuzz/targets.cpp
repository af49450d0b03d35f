#include "tests/fuzz/targets.h"

#include <array>

namespace rig::fuzz {

std::span<const Target> targets()
{
    static constexpr std::array kTargets{
        Target{"tables", tables},      Target{"calculator", calculator}, Target{"typed_gap", typedGap},
        Target{"typed_day", typedDay}, Target{"size_list", sizeList},    Target{"opener", opener},
    };
    return kTargets;
}

} // namespace rig::fuzz
