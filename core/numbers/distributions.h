#pragma once

#include <numbers>

namespace rig::numbers {

// Plain functions over Boost.Math, which is seen by distributions.cpp alone. None of them throws.

inline constexpr double kLnSqrtTwoPi = 0.918938533204672741780329736406; // ln sqrt(2 pi)
inline constexpr double kSqrtHalf = 1.0 / std::numbers::sqrt2;

double normalDensity(double z);
// P(Z <= z), accurate in the lower tail; for the upper tail give -z.
double normalBelow(double z);
// z with P(Z <= z) = p. p <= 0 gives -infinity, p >= 1 +infinity, NaN stays NaN.
double normalQuantile(double p);

// ln P(Z <= z), without underflow however small (docs/method.md A2).
double logNormalBelow(double z);
// ln P(a < Z <= b) for a < b, either may be infinite; no loss when both lie in one tail or close together.
double logNormalBetween(double a, double b);

// P(T <= t) with `df` degrees of freedom, df > 0; NaN otherwise.
double studentBelow(double t, double df);
// Its density; NaN for df <= 0.
double studentDensity(double t, double df);
// t with P(T <= t) = p. p <= 0 gives -infinity, p >= 1 +infinity; NaN for df <= 0.
double studentQuantile(double p, double df);

// psi(x), the derivative of ln Gamma, and its derivative psi'(x); x > 0, NaN otherwise.
double digamma(double x);
double trigamma(double x);
// y with psi'(y) = x; NaN unless x > 0.
double inverseTrigamma(double x);

// P(X <= x) of chi-square with `df` degrees of freedom, df > 0; NaN otherwise. 0 for x <= 0.
double chiSquareBelow(double x, double df);
// x with P(X <= x) = p. p <= 0 gives 0, p >= 1 +infinity; NaN for df <= 0.
double chiSquareQuantile(double p, double df);

// Fisher's F, both degrees of freedom > 0; NaN otherwise. Each tail is accurate where it is small.
double fisherBelow(double f, double df1, double df2); // P(F <= f)
double fisherAbove(double f, double df1, double df2); // P(F >= f)
// f with P(F <= f) = p. p <= 0 gives 0, p >= 1 +infinity.
double fisherQuantile(double p, double df1, double df2);

// The largest share of which `hits` or fewer in `trials` would still be seen with a chance of 1 - confidence:
// the one-sided upper bound of Clopper & Pearson 1934, Biometrika 26 (from memory), by the beta quantile. 1
// when every trial is a hit; NaN unless 0 <= hits <= trials, trials > 0 and 0 < confidence < 1.
double shareAtMost(int hits, int trials, double confidence);

} // namespace rig::numbers
