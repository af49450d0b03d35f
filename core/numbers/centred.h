#pragma once

#include <optional>
#include <span>
#include <vector>

namespace rig::numbers {

// Values as their mean and what is left of each, in units of 2^exponent. All sums of squares in this folder
// start here.
//
// Why this way. A sum of raw squares loses all its digits when the values share their leading ones
// (10000001, 10000003, 10000002), so the mean is taken out first (two passes). The mean itself is a large
// sum; counted from a value of the data its terms are exact differences, and what rounding leaves in it is
// measured in a second pass and taken out as well (Chan, Golub & LeVeque 1983, Am. Stat. 37, from memory).
// The power of two costs no digit and keeps squares of huge and tiny values within a double's range.
struct Centred
{
    double mean = 0;
    std::vector<double> rests;
    int exponent = 0;
};

// e such that no value is larger than 2^e in size; 0 for zeros. Empty without values or when one of them is
// not finite.
std::optional<int> exponentOf(std::span<const double> values);

// Empty as for exponentOf().
std::optional<Centred> centred(std::span<const double> values);
// In units of 2^exponent, for values that share one; needs at least one value and finite ones.
Centred centred(std::span<const double> values, int exponent);

double sumOf(std::span<const double> values);
double sumOfProducts(std::span<const double> a, std::span<const double> b); // of equal length

} // namespace rig::numbers
