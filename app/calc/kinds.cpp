#include "app/calc/kinds.h"

#include <array>

namespace rig::calc {

std::span<const Kind> kinds()
{
    static constexpr std::array kTable{
        Kind{"band", answerBand},
        Kind{"discrimination", answerDiscrimination},
    };
    return kTable;
}

} // namespace rig::calc
