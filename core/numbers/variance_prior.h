#pragma once

#include <optional>
#include <span>
#include <vector>

namespace rig::numbers {

// Sample variances that share a scaled inverse chi-square prior: its strength, its scale, and each variance
// drawn towards it.
struct VariancePrior
{
    // Infinite when the variances differ no more than their degrees of freedom explain: then every posterior
    // variance is the prior's.
    double degreesOfFreedom = 0;
    double variance = 0;
    std::vector<double> posteriorVariances; // in the order given
};

// Method of moments on the logarithms (Smyth 2004, Stat. Appl. Genet. Mol. Biol. 3(1) art. 3, sec. 6.2, from
// memory; docs/method.md A, Fleet prior), for exact data and as a check of fleetPriorOf. Needs as many
// degrees of freedom as variances, at least two of them, finite, degrees above 0, variances not negative and
// more than half of them above 0; empty otherwise, and for figures that doubles cannot follow.
std::optional<VariancePrior> variancePriorOf(std::span<const double> variances,
                                             std::span<const double> degreesOfFreedom);

} // namespace rig::numbers
