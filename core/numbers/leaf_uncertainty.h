#pragma once

#include "core/numbers/interval.h"

#include <optional>
#include <vector>

namespace rig::numbers {

// Growth of steel per kelvin, the usual figure for gauge steel (JCGM 100:2008 H.1; known there to 2e-6).
inline constexpr double kSteelPerKelvin = 11.5e-6;

// One reading with a feeler gauge and what is known of its errors. Lengths in mm.
struct LeafReading
{
    Interval bracket;                   // what entered, what did not, as marked
    std::vector<double> leafTolerances; // +-T of each leaf in the stack
    bool sharedTolerance = false;       // the leaves err together, as one set may: the T are added first
    double film = 0;                    // thickest film that may lie between two leaves
    double kelvinFrom20 = 0;            // of the leaves, from 20 degrees Celsius
    double repeatSd = 0;                // s_r of the measurer study: feel
};

// Standard uncertainties (one sigma) of each source, in mm.
struct LeafUncertainty
{
    double midpoint = 0; // with half the films added: they hold the leaves apart
    double bracket = 0;
    double leaves = 0; // also what a band made with another set takes from this one (u_set)
    double films = 0;
    double temperature = 0;
    double feel = 0;
    double combined = 0;                    // root sum of squares
    double largestRectangularHalfWidth = 0; // of the bracket and the leaf tolerances
    double halfWidth95 = 0;                 // the true gap lies this close to the midpoint, 95 %
};

// docs/method.md G; JCGM 100:2008 4.3.7, 5.1, G.1, from memory. Empty for an open or reversed bracket, a
// negative tolerance, film or s_r, a figure that is not finite or one beyond a double's range.
std::optional<LeafUncertainty> leafUncertainty(const LeafReading& reading);

// U with P(|R + N| <= U) = 0.95, R rectangular on +-halfWidth and N normal with this sd, independent; both
// finite and not negative. Twice the combined deviation would overstate U where the rectangle is the larger.
double halfWidth95(double halfWidth, double sd);

} // namespace rig::numbers
