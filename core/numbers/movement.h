#pragma once

#include "core/numbers/path_fit.h"

#include <optional>
#include <span>
#include <vector>

namespace rig::numbers {

// Docs/method.md M: one coupling of one fitting, rigging by rigging.
enum class MovementKind { Steady, Step, Drift };

// One reading of a fitting: of its baseline, or of a rigging by its number.
struct SeriesReading
{
    Interval interval;   // mm
    double rigging = 0;  // 0 and below: baseline
    double scatters = 1; // of the fitting's, which this one has: more than 1 where it is known to be wider
};

inline constexpr int kRiggingsBeforeChange = 4;
inline constexpr int kRiggingsAfterChange = 3; // from the change on
inline constexpr double kRateUnit = 100;       // a rate is in mm per 100 riggings

// A change of the path: from rigging `at` on another level, or from there a line.
struct PathChange
{
    MovementKind kind = MovementKind::Steady;
    double at = 0; // of a step the first rigging at the new level, of a drift the last at the old one

    double shapeAt(double rigging) const;
};

// One way in which the readings may have come about: level, up to two changes, and what the readings say of
// their sizes given the places. Covariance and sigma are adjusted by n / (n - coefficients), the size is t
// with `df`.
struct MovementWay
{
    std::array<PathChange, kMostShapes> changes{};
    double chance = 0; // of all ways
    Vector3 coefficients{};
    Matrix3 covariance{};
    double sigma = 0;
    double df = 0;

    double meanAt(double rigging) const;
    double errorAt(double rigging) const; // standard error of that mean
};

// By kind: the first change of the path, or the second; Steady: no such change.
struct KindChances
{
    double steady = 1;
    double step = 0;
    double drift = 0;

    double of(MovementKind kind) const;
    MovementKind likeliest() const;
    double moved() const { return step + drift; }
};

struct Movement
{
    int readings = 0;
    int riggings = 0;
    double medianWidth = 0; // D of the readings
    KindChances first;
    KindChances second; // all Steady where no second change was looked for
    // The likeliest first within each kind. Their chances add up to 1.
    std::vector<MovementWay> ways;

    const MovementWay& likeliestWay() const;
    double meanAt(double rigging) const; // over all ways
    // The same at riggings that rise, all in one sweep.
    std::vector<double> meansAt(std::span<const double> rising) const;
};

// Whether a movement is told at all: a chance of 0.95 with the chart of section C beyond its limit, or 0.999.
inline constexpr double kMovedWithChart = 0.95;
inline constexpr double kMovedAlone = 0.999;
inline constexpr double kKindNamed = 0.8;
bool isMovementTold(const Movement& movement, bool chartIsBeyond);

enum class MovementDepth {
    Steady, // as though nothing had moved
    Quick,  // places by the quadratic neighbourhood of the best of each kind, no second change
    Full,   // the places that matter fitted one by one; a second change once the first is settled
};

// What moved in one fitting. Readings open both ways are dropped, those of the baseline come first, riggings
// rise. Kinds with priors 0.90 steady, 0.05 step, 0.05 drift, places uniform, penalty (p / 2) ln N for p free
// values (Schwarz 1978, Ann. Statist. 6, from memory); the evidence of a kind is the mean over its places. A
// second change with the same priors is looked for from a chance of 0.95 on. With too few riggings for any
// change the answer is Steady, with a chance of 1. Empty without a posterior of its own: no readings,
// reversed bounds, all open on one side,
// or a bound beyond a kilometre.
std::optional<Movement> movementOf(std::span<const SeriesReading> readings,
                                   MovementDepth depth = MovementDepth::Full);

// Where the n-th change (0 or 1) of that kind lies, given that there is one: the likeliest place and the
// smallest set of places that together hold 95 %. Empty when no way has one.
struct MovementPlace
{
    double mode = 0;
    std::vector<double> set; // rising
    double lower() const { return set.front(); }
    double upper() const { return set.back(); }
};
std::optional<MovementPlace> placeOf(const Movement& movement, MovementKind kind, std::size_t change = 0);

struct EstimateWithInterval
{
    double estimate = 0; // the median
    Interval interval;   // 95 %
};

// The size in mm (a step) or the rate in mm per 100 riggings (a drift) of the n-th change, over all its
// places. Empty when no way has one.
std::optional<EstimateWithInterval> sizeOf(const Movement& movement, MovementKind kind,
                                           std::size_t change = 0);
// The rate now, in mm per 100 riggings, over all ways with a drift; a second drift added to the first.
std::optional<EstimateWithInterval> rateNowOf(const Movement& movement);

// The next reading at a rigging to come, over all ways, steady and steps with their chances.
struct MovementForecast
{
    EstimateWithInterval mean;    // of the path
    EstimateWithInterval reading; // of one reading
    double chanceOutside = 0;     // of the reading, beyond the band
    double chanceMeanOutside = 0; // of the path itself
};
MovementForecast forecastOf(const Movement& movement, double rigging, const Interval& band);

// Of the same, what a fan into the time to come draws.
struct ForecastPlace
{
    double mean = 0;  // the median of the path
    Interval reading; // 95 % of one reading
};
ForecastPlace forecastPlaceOf(const Movement& movement, double rigging);

} // namespace rig::numbers
