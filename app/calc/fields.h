#pragma once

#include "app/calc/kinds.h"
#include "core/numbers/grading.h"

namespace rig::calc {

// [lower, upper], an open bound as null.
Output pairOf(const numbers::Interval& interval);
// The number, or null for what is not known.
Output orNull(const std::optional<double>& figure);
const char* nameOf(numbers::ReadingsStatus status);

// The posterior of the readings called `name` in the input; fails the case when there is none.
std::optional<numbers::IntervalPosterior> posteriorOf(CaseInput& input, const char* name,
                                                      const numbers::SigmaPrior& prior);
// The posterior of these readings, whose status is Ok.
std::optional<numbers::IntervalPosterior> posteriorOf(CaseInput& input, const numbers::IntervalSet& readings,
                                                      const numbers::SigmaPrior& prior);

} // namespace rig::calc
