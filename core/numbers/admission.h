#pragma once

#include "core/numbers/interval_posterior.h"

#include <optional>
#include <vector>

namespace rig::numbers {

inline constexpr int kReadingsForAdmission = 5;

enum class AdmissionFlag {
    None,
    Straggler,   // n p < 0.05
    Outlier,     // n p < 0.01
    NotTestable, // fewer than kReadingsForAdmission, or the others alone have no posterior
};

struct AdmissionFinding
{
    Interval reading;
    std::optional<double> tail; // p: how often a value falls this far from all the others
    AdmissionFlag flag = AdmissionFlag::NotTestable;
};

// Does each reading belong to the others? One finding per distinct reading, sorted: its tail under the
// posterior of all readings but one copy of it, same range of sigma, times the number of readings
// (Bonferroni). On exact data with a wide range it is Grubbs' test in its deleted-residual form (ISO 5725-2;
// Beckman & Cook 1983; both from memory). Nothing is dropped. Two equal outliers hide each other. Empty when
// the readings have no posterior.
std::vector<AdmissionFinding> admissionOf(const IntervalSet& readings, const SigmaPrior& prior = {});

} // namespace rig::numbers
