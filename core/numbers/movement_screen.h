#pragma once

#include "core/numbers/movement.h"

#include <cstddef>
#include <span>
#include <vector>

namespace rig::numbers {

// A change by the place of its reading in the series.
struct ChangePlace
{
    MovementKind kind = MovementKind::Steady;
    std::size_t index = 0; // of a step the first reading at the new level, of a drift the last at the old one
};

// Weighted least squares of level and up to two changes, any of them in a handful of operations: sums over
// all readings from each one on are made once.
class MovementScreen
{
public:
    // A reading each, riggings rising; readings of the baseline count as rigging 0.
    MovementScreen(std::span<const PseudoReading> readings, std::span<const double> riggings);

    struct Solution
    {
        double squares = 0; // weighted, left over
        Vector3 coefficients{};
        Matrix3 covariance{}; // inverse of the weighted products
    };
    // `first` before `second`; Steady for none. Squares infinite where nothing holds a coefficient.
    Solution solved(ChangePlace first = {}, ChangePlace second = {}) const;
    // The squares alone, at a fraction of the cost.
    double squaresLeft(ChangePlace first, ChangePlace second = {}) const;

private:
    // Sums of weight times 1, u, u^2, v, u v from a reading on; u the rigging, v the value, both from an
    // origin.
    struct Sums
    {
        double w = 0;
        double u = 0;
        double uu = 0;
        double v = 0;
        double uv = 0;
    };
    const Sums& from(ChangePlace place) const;
    double product(ChangePlace first, ChangePlace second) const; // first not after second
    double withOne(ChangePlace place) const;
    double withValue(ChangePlace place) const;

    std::vector<Sums> m_from;
    std::vector<double> m_u;
    double m_originV = 0;
    double m_squares = 0; // weight times v^2
};

} // namespace rig::numbers
