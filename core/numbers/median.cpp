#include "core/numbers/median.h"

#include <algorithm>

namespace rig::numbers {

double medianOf(std::vector<double> values)
{
    if (values.empty())
        return 0;
    const auto half = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::ranges::nth_element(values, half);
    if (values.size() % 2 == 1)
        return *half;
    return 0.5 * *std::max_element(values.begin(), half) + 0.5 * *half; // their sum may be beyond a double
}

} // namespace rig::numbers
