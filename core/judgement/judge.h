#pragma once

#include "core/baseline/baseline.h"
#include "core/judgement/judgement.h"
#include "core/measure/gap_interval.h"
#include "core/measure/gauge_set.h"

#include <span>

namespace rig {

struct JudgeContext
{
    bool gaugeQuarantined = false;
    WitnessFinding witness;
    double setVariance = 0; // mm squared, added for a reading with another gauge than the baseline's
};

// Pure. The order of precedence is that of docs/method.md. The reading is a good one (problemOf says None).
Judgement judge(const GapInterval& reading, const Baseline& baseline, const JudgeContext& context);

// A miss of the outer band above the second makes the gap no witness; a good one has at most the first.
inline constexpr double kMissOfGoodWitness = 0.01;
inline constexpr double kMissOfWeakWitness = 0.10;
// How often part-seated has to have been shown, and on how many days, before the gap is called a witness.
inline constexpr int kShownForWeakWitness = 3;
inline constexpr int kShownForGoodWitness = 5;
inline constexpr int kDaysForGoodWitness = 2;

// What was seen of a coupling while it was part-seated.
struct PartSeatedShown
{
    std::span<const GapInterval> readings;
    int days = 0; // different ones
};

// By the readings shown, and by the miss of the outer band with this gauge (docs/method.md B and K). `steps`
// are the gauge's sizes, rising; empty for a gauge that reads continuously. Some milliseconds: find it once
// per coupling and gauge, not per reading.
WitnessFinding findWitness(const Baseline& locked, const PartSeatedShown& shown,
                           std::span<const GaugeStep> steps);

} // namespace rig
