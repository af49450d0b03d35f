#pragma once

#include "core/numbers/linear_solve.h"

#include <optional>
#include <span>
#include <vector>

namespace rig::numbers {

// One number for each value.
using Column = std::vector<double>;

// A value with its relative weight, and the group whose random effect it shares: a label, equal or not.
struct GroupedValue
{
    double value = 0;
    double weight = 1; // its variance is residualVariance / weight
    int group = 0;
};

// A linear combination of the effects with what is known of it.
struct MixedContrast
{
    double estimate = 0;
    double standardError = 0;
    double degreesOfFreedom = 0;
};

// value = columns times effects + group + e, group ~ N(0, groupVariance), e ~ N(0, residualVariance /
// weight).
class MixedFit
{
public:
    // By restricted maximum likelihood (Patterson & Thompson 1971, Biometrika 58, from memory), groupVariance
    // >= 0: the ratio of the two variances by a scan and golden section, the other values in closed form. All
    // columns have an entry for each value. Empty when the columns depend on each other, fewer values than
    // columns are left, nothing is left over for the variances, or figures leave a double's range.
    static std::optional<MixedFit> of(std::span<const GroupedValue> values,
                                      const std::vector<Column>& columns);

    const std::vector<double>& effects() const { return m_effects; }
    double residualVariance() const { return m_residualVariance; }
    double groupVariance() const { return m_ratio * m_residualVariance; }
    double logLikelihood() const { return m_logLikelihood; } // restricted

    // With Satterthwaite's degrees of freedom (Biometrics Bulletin 2, 1946, from memory; as in Giesbrecht &
    // Burns 1985, Biometrics 41, from memory): 2 v^2 / var(v), var(v) from the derivatives of v by the
    // variances and the observed information of the restricted likelihood. With groupVariance at 0 they are
    // values less columns.
    MixedContrast contrast(std::span<const double> along) const;

private:
    MixedFit() = default;

    std::vector<double> m_effects;
    SquareMatrix m_inverse{0}; // of columns' V^-1 columns, V in units of the residual variance
    SquareMatrix m_byRatio{0}; // its derivative by the ratio
    double m_ratio = 0;
    double m_residualVariance = 0;
    double m_logLikelihood = 0;
    double m_freedom = 0; // values less columns
    // The inverse of the observed information of the ratio and of ln of the residual variance.
    double m_varianceOfRatio = 0;
    double m_covariance = 0;
    double m_varianceOfResidual = 0;
};

} // namespace rig::numbers
