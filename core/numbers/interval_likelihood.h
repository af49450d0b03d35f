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
    double drop = 0;  // ln units between the mode and both ends, at least
};

// How far down a range reaches: `most` ln units below the mode, and no further than the height `worth`.
struct MuDepth
{
    double most = 0;
    double worth = 0;
};

// ln likelihood of counted intervals under N(mu, sigma^2): independent, each interval with the probability of
// lying in it, an exact value with its density (docs/method.md A1). Borrows the set. For fixed sigma it is
// concave in mu (Pratt 1981, Burridge 1981, from memory), so it has one mode and one range.
class IntervalLikelihood
{
public:
    struct Point
    {
        double x = 0;
        double height = 0;
    };

    explicit IntervalLikelihood(std::span<const CountedInterval> readings) : m_readings{readings} {}

    double logAt(double mu, double sigma) const;

    // Count-weighted mean of midpoints, a finite bound where one is open: where a search for the mode begins.
    double centre() const;

    // The mode to a few per cent of sigma and, on both sides, the first point found that lies as deep as
    // wanted and not much deeper. `near` is the range of a neighbouring sigma, scaled; it only saves steps.
    MuRange rangeAt(double sigma, const MuDepth& depth, const MuRange& near) const;

private:
    double modeNear(double start, double sigma) const;
    double distanceTo(double drop, const Point& mode, double direction, double sigma, double guess) const;

    std::span<const CountedInterval> m_readings;
};

} // namespace rig::numbers
