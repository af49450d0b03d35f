#pragma once

#include "core/review/airframe_facts.h"
#include "core/review/coupling_history.h"

#include <optional>
#include <span>
#include <vector>

namespace rig {

// The baseline of one fitting before and after some of its readings came in doubt.
struct BandChange
{
    Fitting fitting;
    int inDoubt = 0; // of its admitted readings, on account of this gauge
    Baseline before;
    Baseline after;
};

// A reading whose verdict is another because the band is.
struct VerdictChange
{
    Reading reading;
    Verdict before = Verdict::NoBandYet;
    Verdict after = Verdict::NoBandYet;
};

// What a doubt about a gauge does to one coupling.
struct CouplingInDoubt
{
    CouplingId coupling;
    int readings = 0;                    // that come in doubt: all that stand
    std::vector<BandChange> bands;       // of the fittings that lose readings, oldest first
    int judgedOtherwise = 0;             // readings as below
    std::optional<VerdictChange> latest; // the last of them; empty: no verdict changes
};

// What becomes of one airframe's couplings when `after` is known of a gauge instead of `before`; both hold
// the checks of every gauge. Verdicts are compared of locked readings that stand, taken with another gauge,
// and neither of the baseline nor left out of it. Couplings without a reading in doubt are not listed.
std::vector<CouplingInDoubt> couplingsInDoubt(const AirframeFacts& facts, GaugeId gauge,
                                              std::span<const GaugeCheck> before,
                                              std::span<const GaugeCheck> after);

// What a check that is not in the file yet would do to one airframe. Nothing when it finds the gauge usable.
struct QuarantineEffect
{
    int covered = 0; // readings of the gauge from the doubted day on, also those in doubt before
    std::vector<CouplingInDoubt> couplings;

    int marked() const; // readings that come in doubt
};

QuarantineEffect effectOf(const GaugeCheck& check, const AirframeFacts& facts);

// One question about the gauge where any of its readings is covered, and one for each coupling of which a
// verdict changes with the band.
std::vector<Question> questionsFrom(const QuarantineEffect& effect, const GaugeCheck& check,
                                    AirframeId airframe);

// The bad checks of one gauge left out: what the file would say had nobody doubted it.
std::vector<GaugeCheck> withoutDoubtsOf(GaugeId gauge, std::span<const GaugeCheck> checks);

} // namespace rig
