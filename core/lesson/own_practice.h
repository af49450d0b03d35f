#pragma once

#include "core/lesson/study.h"
#include "core/numbers/interval.h"

#include <optional>
#include <span>
#include <vector>

namespace rig {

// A locked reading that others took of a coupling of this fitting, for comparison.
struct OthersReading
{
    CouplingId coupling;
    PersonId person;
    GapInterval interval;
    Day day;
};

// How alike somebody reads again, and how far from the others; mm. 95 % intervals.
struct OwnPractice
{
    int readings = 0;
    // Standard deviation of repeated readings of one joint about their own mean, pooled over couplings
    // (ISO 5725-2, from memory), chi-square interval. Empty below two of one coupling.
    std::optional<double> repeatSd;
    std::optional<numbers::Interval> repeatSdInterval;
    bool limitedByStep = false; // repeatSd lies below what the gauge's step alone amounts to (method.md F)
    // Own readings less those of others, couplings and days allowed for (docs/method.md J). Empty where it
    // cannot be told.
    std::optional<double> offset;
    std::optional<numbers::Interval> offsetInterval;
};

// `own` are the practice readings of one person, of any couplings; those without a greatest size are left
// out.
OwnPractice ownPracticeOf(std::span<const PracticeReading> own, std::span<const OthersReading> others);

} // namespace rig
