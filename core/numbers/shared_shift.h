#pragma once

#include <optional>
#include <span>
#include <vector>

namespace rig::numbers {

// Did everything that was read together move together? Taken from the scores of one occasion, each against
// its own frozen band.
struct SharedShift
{
    int scores = 0;
    double mean = 0;
    double median = 0;
    double z = 0; // mean times sqrt(n): standard normal while nothing shifts and scores are independent
    double p = 1; // two-sided
    double sameSignShare = 0; // the larger of the shares above and below 0; 0 itself counts for neither
    // Four scores or more, |z| > 3, three quarters of one sign, |median| >= 1 (docs/method.md I). Then they
    // may have a gauge or a measurer in common, and each is looked at.
    bool isCalled = false;
};

// Empty without scores, or when one is not finite.
std::optional<SharedShift> sharedShiftOf(std::span<const double> scores);

// Each score less the median of all, for a chart of what is its own. Empty without scores.
std::vector<double> scoresLessMedian(std::span<const double> scores);

} // namespace rig::numbers
