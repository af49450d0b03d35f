#pragma once

#include "core/airframe/coupling.h"
#include "core/airframe/ids.h"
#include "core/clock.h"
#include "core/judgement/judgement.h"

#include <optional>
#include <string>
#include <vector>

namespace rig {

// One reading of one coupling in that coupling's own scatters: 0 is the middle of its band.
struct AircraftPoint
{
    Moment when;
    double rigging = 0;
    double score = 0;
    Verdict verdict = Verdict::NoBandYet;
    bool inDoubt = false; // drawn as a ring
};

struct AircraftCoupling
{
    std::string name;
    Side side = Side::None;
    std::vector<AircraftPoint> points; // oldest first
};

// What all couplings of one rigging day share: the median of that day's scores.
struct ShiftDay
{
    Moment when;
    double rigging = 0;
    double median = 0;
    int couplings = 0;
    bool isCalled = false;
    std::string cause; // already worded: "leaf set B"; empty when nothing names itself
};

struct AircraftSeries
{
    std::optional<AirframeId> airframe; // the same again is the same airframe, read anew
    std::vector<AircraftCoupling> couplings;
    std::vector<ShiftDay> shifts; // oldest first
};

} // namespace rig
