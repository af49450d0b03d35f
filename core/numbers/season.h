#pragma once

#include "core/numbers/hand_offsets.h"
#include "core/numbers/movement.h"
#include "core/numbers/scatter_change.h"
#include "core/numbers/shared_shift.h"

#include <optional>
#include <span>
#include <vector>

namespace rig::numbers {

// A reading of one coupling of one fitting, with everything it may have been moved by. Labels are equal or
// not.
struct SeasonReading
{
    Interval interval;  // mm
    double rigging = 0; // its number on the airframe; 0 and below: of the fitting's baseline
    int fitting = 0;    // one coupling, one fitting
    int person = 0;
    int gauge = 0;
    int day = 0;
    // Tells of persons and gauges, not of the joint: a further reading of it on the same rigging, or one with
    // a gauge in doubt. Its day it tells of where no other reading of the joint does.
    bool isSecond = false;
};

// Who or what a reading outside, or a day, is told as.
enum class ExplainedBy { Nothing, Person, Gauge, Both };

struct SingleReading
{
    std::size_t reading = 0;                        // its place among those given
    double away = 0;                                // of its middle from the path, offsets taken off, mm
    double scatters = 0;                            // the same in the fitting's scatters
    ExplainedBy explainedBy = ExplainedBy::Nothing; // what named offset brings it inside
};

struct SeasonFitting
{
    int fitting = 0;
    Movement movement;
    bool chartIsBeyond = false; // the EWMA of section C; asked only where it decides
    std::optional<ScatterChange> scatter;
    std::vector<SingleReading> singles; // those outside, the farthest first

    bool isTold() const { return isMovementTold(movement, chartIsBeyond); }
};

struct SeasonDay
{
    int day = 0;
    SharedShift shift; // of what offsets and paths leave, in scatters; as it was where something explains it
    double median = 0; // mm
    ExplainedBy explainedBy = ExplainedBy::Nothing;
};

struct Season
{
    std::vector<SeasonFitting> fittings; // by label
    HandOffsets offsets;
    std::vector<SeasonDay> days; // with readings of riggings, by label; called or not
    int turns = 0;               // of paths and offsets
    bool hasSettled = false;     // no offset moved by 0.1 um in the last
};

// Movements, offsets, scatter, single readings and days of a season, paths and offsets in turns until no
// offset moves by 0.1 um (docs/method.md J, M). Offsets come first, from steady paths: what several couplings
// do together is a hand's before it is eight joints'. Fittings without a posterior are left out. Empty when
// none is left.
std::optional<Season> seasonOf(std::span<const SeasonReading> readings);

} // namespace rig::numbers
