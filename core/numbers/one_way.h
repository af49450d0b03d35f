#pragma once

#include <optional>
#include <span>
#include <vector>

namespace rig::numbers {

// One-way analysis of variance: how much of the scatter lies between groups. Mean squares in the square of
// the values' unit.
struct OneWay
{
    int dfBetween = 0;
    int dfWithin = 0;
    double msBetween = 0;
    double msWithin = 0;
    double residualSd = 0;          // root of msWithin
    std::optional<double> F;        // empty when nothing scatters within groups
    std::optional<double> rSquared; // between / total; empty when nothing scatters at all
};

// Groups may differ in size. Empty for fewer than two groups, an empty group, no group with two values, a
// value that is not finite, or a figure beyond a double's range. Formulas as in the NIST Statistical
// Reference Datasets, ANOVA, whose certified values it reaches.
std::optional<OneWay> oneWay(std::span<const std::vector<double>> groups);

} // namespace rig::numbers
