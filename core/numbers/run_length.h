#pragma once

#include <optional>

namespace rig::numbers {

// How long charts of independent normal scores run until they signal. Scores have standard deviation 1 and
// mean `shift`; the chart begins at 0 and signals when it is beyond its limit. docs/method.md C.

// E <- (1 - weight) E + weight z, signal when |E| > limit x sqrt(weight / (2 - weight)).
struct EwmaChart
{
    double weight = 0.2;  // of the newest score, above 0, at most 1; 1 is a chart of single scores
    double limit = 2.962; // above 0
};

// C <- max(0, C + z - reference), signal when C > limit; two-sided with its mirror image beside it.
struct CusumChart
{
    double reference = 0.5; // not negative
    double limit = 5.07;    // above 0
    bool isTwoSided = true;
};

// Average run length, at least 1. Integral equations of Crowder 1987 (Technometrics 29) for the EWMA and of
// Page 1954 (Biometrika 41), with its atom at 0, for the CUSUM (all from memory), on 80 Gauss-Legendre nodes,
// more where the chart's range is long for its step. Two CUSUM sides together: 1 / ARL = 1 / ARL up + 1 / ARL
// down. Empty for impossible figures, for a range too long to follow (about 200 steps), and above 1e9
// readings, where doubles lose the answer.
std::optional<double> averageRunLength(const EwmaChart& chart, double shift);
std::optional<double> averageRunLength(const CusumChart& chart, double shift);

// The chance that the chart signals within so many readings; the work grows with them. Empty for impossible
// figures, for a range too long to follow, and for a negative number.
std::optional<double> chanceOfSignalWithin(int readings, const EwmaChart& chart, double shift);

} // namespace rig::numbers
