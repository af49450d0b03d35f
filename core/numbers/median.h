#pragma once

#include <vector>

namespace rig::numbers {

// The middle value, or the mean of the middle two; 0 of nothing.
double medianOf(std::vector<double> values);

} // namespace rig::numbers
