#include "core/numbers/median.h"

#include <algorithm>

namespace rig::numbers {

double medianOf(std::vector<double> values)
{
    if (values.empty())
        return 0;
    std::ranges::sort(values);
    const std::size_t half = values.size() / 2;
    return values.size() % 2 == 1 ? values[half] : 0.5 * (values[half - 1] + values[half]);
}

} // namespace rig::numbers
