#pragma once

#include <span>

namespace rig::numbers {

// A t-distributed value about `centre` with this error (0: the centre itself), with this weight.
struct StudentPart
{
    double weight = 0; // they need not add up to 1
    double centre = 0;
    double error = 0;
    double df = 1;
};

// P(X <= x) of the mixture. Not empty, total weight above 0.
double mixtureBelow(std::span<const StudentPart> parts, double x);
// x with P(X <= x) = p, 0 < p < 1, to 1e-12 in p or of the width that holds the parts' own quantiles.
double mixtureQuantile(std::span<const StudentPart> parts, double p);

} // namespace rig::numbers
