#pragma once

#include "core/numbers/cholesky.h"
#include "core/numbers/interval.h"

#include <array>
#include <optional>
#include <span>
#include <vector>

namespace rig::numbers {

// One reading in a hundred may lie anywhere within ten millimetres (docs/method.md M).
inline constexpr double kWildShare = 0.01;
inline constexpr double kWildRange = 10;

inline constexpr std::size_t kMostShapes = 2;

// An interval read `count` times where the mean is level + sum of size times shape.
struct PathReading
{
    Interval interval;
    std::array<double, kMostShapes> shape{};
    double count = 1;
    double scatters = 1; // how many times sigma this one has
};

struct PathFit
{
    Vector3 coefficients{}; // level and the sizes of the shapes
    double sigma = 0;
    bool isFloored = false;   // sigma is held at the floor
    Matrix3 covariance{};     // of the coefficients, not adjusted; 0 for shapes that were not asked for
    double logLikelihood = 0; // with the wild share
    // Minus the second derivative of the ln likelihood by ln sigma, the coefficients following; infinite at
    // the floor. 2 n on exact readings.
    double sigmaInformation = 0;
};

// Maximum likelihood of level, sizes of the first `shapes` shapes and sigma from interval readings of which
// each has the likelihood (1 - kWildShare) P(interval) + kWildShare width / kWildRange; of an exact value the
// densities (docs/method.md M). EM for the share of the wild ones, each of its turns one Newton step in
// (level, sizes, 1) / sigma, in which the ln likelihood is concave given the weights (Burridge 1981, JRSS B
// 43, from memory; Lange 1995, JRSS B 57, for the single step, from memory). The mixture is not concave, so
// `start` decides between maxima: begin with a robust one. Readings open both ways are not given.
//
// Empty when nothing holds a coefficient, sigma grows without end or figures leave a double's range.
std::optional<PathFit> pathFitOf(std::span<const PathReading> readings, std::size_t shapes, double sigmaFloor,
                                 const PathFit& start);

// A reading as its neighbourhood sees it: the ln likelihood at a mean near the fit's is, but for a constant,
// -weight (value - mean)^2 / 2.
struct PseudoReading
{
    double weight = 0; // per mm^2; 0 where the reading says nothing
    double value = 0;
    double tame = 1; // the chance that it is not a wild one
};

PseudoReading pseudoReadingOf(const Interval& interval, double mean, double sigma);

} // namespace rig::numbers
