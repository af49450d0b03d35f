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

// A miss of the outer band up to the first makes the gap a good witness, up to the second a weak one; above,
// none.
inline constexpr double kMissOfGoodWitness = 0.01;
inline constexpr double kMissOfWeakWitness = 0.10;

// Miss of the outer band by readings of this gauge (docs/method.md B and K). `steps` are the gauge's sizes,
// rising; empty for a gauge that reads continuously. Some milliseconds: find it once per coupling and gauge,
// not per reading.
WitnessFinding findWitness(const Baseline& locked, std::span<const GapInterval> partSeated,
                           std::span<const GaugeStep> steps);

} // namespace rig
