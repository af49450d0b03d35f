#pragma once

#include "core/numbers/interval_posterior.h"

namespace rig::numbers {

// Tail on each side of a central band: content 95 % and 99.73 %.
inline constexpr double kInnerTail = 0.025;
inline constexpr double kOuterTail = 0.00135;

// Central bands of the predictive distribution. Not limits: where the past puts the next value.
struct PredictiveBands
{
    Interval inner;
    Interval outer;
    double median = 0;
};

PredictiveBands bandsOf(const IntervalPosterior& posterior, double extraVariance = 0);

// How an interval lies to a band. Outside: all of it, touching counts. An exact value is Outside only
// strictly beyond.
enum class Place { OutsideLow, StraddlesLow, Inside, Covers, StraddlesHigh, OutsideHigh };

Place placeOf(const Interval& reading, const Interval& band);
constexpr bool isOutside(Place place)
{
    return place == Place::OutsideLow || place == Place::OutsideHigh;
}

// The first that holds (docs/method.md A): outside the outer band; outside the inner; not inside the outer,
// unless the reading is as fine as the baseline's and holds the median; none of these.
enum class Grade { Outside, Watch, Unresolved, Normal };

struct Grading
{
    double high = 1; // P(X >= lower bound)
    double low = 1;  // P(X <= upper bound)
    double tail = 1; // min(1, 2 min(high, low)): how often a value falls this far out or further, either side
    Place inner = Place::Inside;
    Place outer = Place::Inside;
    Grade grade = Grade::Normal;
};

// `bands` are those of this posterior with this extra variance. The reading has lower <= upper and no NaN.
Grading gradingOf(const Interval& reading, const IntervalPosterior& posterior, const PredictiveBands& bands,
                  double extraVariance = 0);

// The tail of Grading alone.
double tailOf(const Interval& reading, const IntervalPosterior& posterior, double extraVariance = 0);

// Normal score of a reading against the predictive distribution, within -4 and 4. For an interval the
// conditional expected value (Steiner & MacKay 2000, J. Qual. Technol. 32, from memory).
double scoreOf(const Interval& reading, const IntervalPosterior& posterior, double extraVariance = 0);

} // namespace rig::numbers
