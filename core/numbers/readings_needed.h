#pragma once

#include <optional>

namespace rig::numbers {

// Mean of the sample standard deviation of n normal values in units of sigma: sqrt(2/(n-1)) Gamma(n/2) /
// Gamma((n-1)/2) (ISO 7870-2, c4). Empty for n < 2. Good to 1e-11 for thousands of values; the difference of
// two logarithms of Gamma loses a digit with each tenfold.
std::optional<double> c4(int n);

// How wide a band from n exact readings comes out on average: mean half-width in units of the true sigma, of
// the interval that holds the next reading with this content, t_{n-1} c4(n) sqrt(1 + 1/n) (docs/method.md H;
// the interval: Hahn & Meeker, Statistical Intervals, from memory). Empty for n < 2 or a content that is not
// between 0 and 1.
std::optional<double> meanHalfWidth(int n, double content);

} // namespace rig::numbers
