#pragma once

#include "core/airframe/coupling.h"
#include "core/airframe/gauge.h"
#include "core/baseline/admitted.h"
#include "core/baseline/baseline.h"
#include "core/judgement/judge.h"
#include "core/review/quarantine.h"

#include <map>
#include <optional>
#include <set>
#include <span>
#include <tuple>
#include <vector>

namespace rig {

struct AirframeFacts;

// One fitting with what its admitted readings say.
struct FittingHistory
{
    Fitting fitting;
    Baseline baseline; // without the readings in doubt; readings are judged against this one
    bool isFrozen = false;
    std::set<ReadingId> admitted;
    std::set<ReadingId> inDoubt;               // of the admitted: their gauge was in quarantine on their day
    std::optional<Baseline> withDoubted;       // of all admitted; only where some are in doubt
    std::set<GaugeId> doubtedGauges;           // those were read with these
    std::set<GaugeId> gauges;                  // the baseline was read with these
    std::map<GaugeId, WitnessFinding> witness; // for every gauge this fitting was read with
};

// What is told beside a band that is made without readings in doubt.
struct DoubtedVersion
{
    int readings = 0;          // in doubt
    std::vector<Gauge> gauges; // that they were read with
    std::optional<Band> band;  // that they would make with the others
};

// What a judgement depends on beside the history itself: fitting, interval, gauge and whether that was in
// doubt.
using JudgedCase = std::tuple<FittingId, GapInterval, std::optional<GaugeId>, bool>;
// The same of a score.
using ScoredCase = std::tuple<FittingId, GapInterval, std::optional<GaugeId>>;

// Everything needed to judge a reading of one coupling. Build once, judge often: then nothing in it is
// changed.
struct CouplingHistory
{
    CouplingId coupling;
    std::vector<FittingHistory> fittings; // oldest first
    std::vector<GapInterval> partSeated;  // seen on purpose or by accident, over all fittings
    int partSeatedDays = 0;               // different days of those
    bool factsInDoubt = false;            // see core/review/facts_in_doubt.h: no band of it is trusted
    std::vector<Gauge> gauges;
    std::vector<GaugeCheck> checks;
    // By judgeIn() and scoreIn(): the same few intervals come again and again.
    mutable std::map<JudgedCase, Judgement> judged;
    mutable std::map<ScoredCase, double> scored;

    // The fitting that holds on a day; null when the coupling has none.
    const FittingHistory* on(Day day) const;
    const FittingHistory* find(FittingId fitting) const;
    PartSeatedShown shownPartSeated() const { return {partSeated, partSeatedDays}; }
    // Empty when none of the fitting's readings is in doubt.
    std::optional<DoubtedVersion> doubtedVersionOf(const FittingHistory& fitting) const;
};

// `readings` are those of this coupling, superseded ones among them.
CouplingHistory historyOf(CouplingId coupling, std::span<const Fitting> fittings,
                          std::span<const Reading> readings, std::span<const Exclusion> exclusions,
                          std::span<const FrozenBaseline> frozen, std::span<const Gauge> gauges,
                          std::span<const GaugeCheck> checks);
// The same by what is known of the airframe.
CouplingHistory historyOf(CouplingId coupling, const AirframeFacts& facts, std::span<const Reading> readings);
// And as though these were the checks of its gauges.
CouplingHistory historyOf(CouplingId coupling, const AirframeFacts& facts, std::span<const Reading> readings,
                          std::span<const GaugeCheck> checks);

// Whether the history would be the same with this further reading of its coupling: so for an ordinary one at
// a rigging, which makes no band and is the first of nothing.
bool staysTheSameWith(const CouplingHistory& history, const Reading& reading);

// Judges against the band of the reading's own fitting, with its gauge's quarantine, witness and set
// variance.
Judgement judgeIn(const CouplingHistory& history, const Reading& reading);

// The normal score of a reading against the band of its own fitting (docs/method.md, Score); empty while that
// fitting has no band.
std::optional<double> scoreIn(const CouplingHistory& history, const Reading& reading);

} // namespace rig
