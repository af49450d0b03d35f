#pragma once

// Being written: see docs/method.md A. This outline fixes the names others use.

namespace rig::numbers {

enum class ReadingsStatus { Ok, NoReadings, NotANumber, ReversedBounds, NoLowerBound, NoUpperBound };

class IntervalPosterior
{
};

} // namespace rig::numbers
