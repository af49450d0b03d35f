#pragma once

#include "core/numbers/interval_set.h"

#include <span>

namespace rig::numbers {

// Where, for one sigma, the likelihood as a function of mu is worth integrating.
struct MuRange
{
    double mode = 0;
    double below = 0; // distance from the mode down to the lower end
    double above = 0; // and up to the upper end
};

// ln likelihood of counted intervals under N(mu, sigma^2): independent, each interval with the probability of
// lying in it, an exact value with its density (docs/method.md A1). Borrows the set. For fixed sigma it is
// concave in mu (Pratt 1981, Burridge 1981, from memory), so it has one mode and one range.
class IntervalLikelihood
{
public:
    explicit IntervalLikelihood(std::span<const CountedInterval> readings) : m_readings{readings} {}

    double logAt(double mu, double sigma) const;

    // Count-weighted mean of midpoints, a finite bound where one is open: where a search for the mode begins.
    double centre() const;

    // The mode to a few per cent of sigma and, on both sides, the first point found that lies at least `drop`
    // below it and not much more. `near` is the range of a neighbouring sigma, scaled; it only saves steps.
    MuRange rangeAt(double sigma, double drop, const MuRange& near) const;

private:
    double modeNear(double start, double sigma) const;
    double distanceTo(double drop, double mode, double direction, double sigma, double guess) const;

    std::span<const CountedInterval> m_readings;
};

} // namespace rig::numbers
