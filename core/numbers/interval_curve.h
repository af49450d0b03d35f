#pragma once

#include "core/numbers/interval.h"

namespace rig::numbers {

// What is known of the value: itself, two bounds, or one.
enum class IntervalKind { Exact, Closed, OpenBelow, OpenAbove };

// Not open both ways.
IntervalKind intervalKindOf(const Interval& interval);

// ln of the probability that a standard normal lies in an interval with middle m and half width d (of an
// exact value m: ln of its density), and the first and second derivatives of it by m and d. An interval that
// is open on a side has its only bound in the place of m and no d.
struct IntervalCurve
{
    double log = 0;
    double m = 0;
    double d = 0;
    double mm = 0; // from -1 to 0: the ln probability is concave in m
    double md = 0;
    double dd = 0;
};

// d > 0 for a closed interval; not used for the others. Figures that are not finite for an interval too far
// out or too wide for doubles.
IntervalCurve intervalCurveOf(IntervalKind kind, double m, double d);

} // namespace rig::numbers
