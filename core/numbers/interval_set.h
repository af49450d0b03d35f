#pragma once

#include "core/numbers/interval.h"

#include <cstddef>
#include <span>
#include <vector>

namespace rig::numbers {

// Whether a set of readings has a posterior at all, checked in this order (docs/method.md 0).
enum class ReadingsStatus { Ok, NoReadings, NotANumber, ReversedBounds, NoLowerBound, NoUpperBound };

// The same interval read `count` times.
struct CountedInterval
{
    Interval interval;
    int count = 0;
};

// Readings made ready: counted, sorted, measured. Their order no longer matters.
struct IntervalSet
{
    ReadingsStatus status = ReadingsStatus::NoReadings;
    int readings = 0;                      // those open on both sides say nothing and are not counted
    double medianWidth = 0;                // D: median of the finite widths, 0 without any
    std::vector<CountedInterval> distinct; // sorted; empty unless status is Ok
};

IntervalSet intervalSetOf(std::span<const Interval> readings);

// The same set with one copy of its `index`-th distinct reading left out; the median width stays that of the
// whole.
IntervalSet withoutOne(const IntervalSet& set, std::size_t index);

// The smallest sigma that a gauge of this median width can speak for: max(0.005, D / 4), in mm. A gauge of
// step D has a standard uncertainty of D / sqrt(12) of its own (JCGM 100:2008 4.3.7, from memory), and a
// sigma far below that made bands too narrow in simulation (docs/method.md A).
double resolutionFloor(double medianWidth);

} // namespace rig::numbers
