#include "core/review/coupling_history.h"

#include "core/baseline/gap_numbers.h"
#include "core/numbers/grading.h"
#include "core/review/airframe_facts.h"
#include "core/rigging/counts_as.h"

#include <algorithm>

namespace rig {

namespace {

const Gauge* gaugeIn(std::span<const Gauge> gauges, GaugeId id)
{
    const auto found = std::ranges::find(gauges, id, &Gauge::id);
    return found == gauges.end() ? nullptr : &*found;
}

// Squared standard uncertainty of a set's leaves, mm^2: a rectangular distribution of half-width T has T /
// sqrt 3 (JCGM 100:2008, 4.3.7). 0 when the set's figure is not known.
double leafVarianceOf(const Gauge* gauge)
{
    if (!gauge || !gauge->tolerance)
        return 0;
    const double halfWidth = gauge->tolerance->inMillimetres();
    return halfWidth * halfWidth / 3;
}

// docs/method.md A1: only where the reading's set is another than the baseline's.
double setVariance(const CouplingHistory& history, const FittingHistory& fitting, const Reading& reading)
{
    if (!reading.gauge || fitting.gauges.empty() || fitting.gauges.contains(*reading.gauge))
        return 0;
    double ofBaseline = 0;
    for (const GaugeId id : fitting.gauges)
        ofBaseline += leafVarianceOf(gaugeIn(history.gauges, id));
    ofBaseline /= static_cast<double>(fitting.gauges.size());
    return ofBaseline + leafVarianceOf(gaugeIn(history.gauges, *reading.gauge));
}

WitnessFinding witnessWith(const CouplingHistory& history, const FittingHistory& fitting,
                           std::optional<GaugeId> gauge)
{
    const Gauge* known = gauge ? gaugeIn(history.gauges, *gauge) : nullptr;
    const std::vector<GaugeStep> steps = known ? known->set.steps() : std::vector<GaugeStep>{};
    return findWitness(fitting.baseline, history.shownPartSeated(), steps);
}

FittingHistory fittingHistory(const Fitting& fitting, std::span<const Reading> readings,
                              std::span<const Exclusion> exclusions, std::span<const FrozenBaseline> frozen,
                              QuarantineDays& quarantine)
{
    FittingHistory one;
    one.fitting = fitting;
    one.isFrozen = std::ranges::any_of(
        frozen, [&fitting](const FrozenBaseline& baseline) { return baseline.fitting == fitting.id; });
    std::vector<GapInterval> all;
    std::vector<GapInterval> undoubted;
    for (const Reading& reading : admittedReadings(fitting.id, readings, exclusions, frozen)) {
        one.admitted.insert(reading.id);
        all.push_back(reading.interval);
        if (quarantine.covers(reading)) {
            one.inDoubt.insert(reading.id);
            one.doubtedGauges.insert(*reading.gauge);
            continue;
        }
        undoubted.push_back(reading.interval);
        if (reading.gauge)
            one.gauges.insert(*reading.gauge);
    }
    one.baseline = Baseline::from(undoubted);
    if (!one.inDoubt.empty())
        one.withDoubted = Baseline::from(all);
    return one;
}

// A band of facts in doubt finds nothing good; what lies outside of it stays so.
Judgement withoutTrust(Judgement judgement)
{
    if (judgement.verdict == Verdict::Outside || judgement.verdict == Verdict::NoBandYet)
        return judgement;
    judgement.verdict = Verdict::CannotTell;
    judgement.reason = Reason::FactsInDoubt;
    return judgement;
}

// Typed in on a later day, and taken before its fitting is known to begin: how the joint was fitted then
// nobody has said. A table reaches back with the log that it was made of.
bool isBeforeItsFitting(const Reading& reading, const Fitting& fitting)
{
    return reading.technique != Technique::Table && reading.when.localDay() < fitting.begins &&
           reading.stamp.when.localDay() != reading.when.localDay();
}

} // namespace

const FittingHistory* CouplingHistory::find(FittingId fitting) const
{
    const auto found = std::ranges::find_if(
        fittings, [fitting](const FittingHistory& one) { return one.fitting.id == fitting; });
    return found == fittings.end() ? nullptr : &*found;
}

const FittingHistory* CouplingHistory::on(Day day) const
{
    std::vector<Fitting> all;
    for (const FittingHistory& one : fittings)
        all.push_back(one.fitting);
    const auto holding = fittingOn(day, coupling, all);
    return holding ? find(holding->id) : nullptr;
}

std::optional<DoubtedVersion> CouplingHistory::doubtedVersionOf(const FittingHistory& fitting) const
{
    if (!fitting.withDoubted)
        return std::nullopt;
    DoubtedVersion version{static_cast<int>(fitting.inDoubt.size()), {}, fitting.withDoubted->band()};
    std::ranges::copy_if(gauges, std::back_inserter(version.gauges),
                         [&fitting](const Gauge& gauge) { return fitting.doubtedGauges.contains(gauge.id); });
    return version;
}

CouplingHistory historyOf(CouplingId coupling, std::span<const Fitting> fittings,
                          std::span<const Reading> readings, std::span<const Exclusion> exclusions,
                          std::span<const FrozenBaseline> frozen, std::span<const Gauge> gauges,
                          std::span<const GaugeCheck> checks)
{
    CouplingHistory history;
    history.coupling = coupling;
    history.gauges.assign(gauges.begin(), gauges.end());
    history.checks.assign(checks.begin(), checks.end());
    std::map<FittingId, std::set<GaugeId>> used;
    std::set<Day> partSeatedDays;
    for (const Reading& reading : standing(readings, exclusions)) {
        if (reading.gauge)
            used[reading.fitting].insert(*reading.gauge);
        if (reading.state != SeatState::PartSeated)
            continue;
        history.partSeated.push_back(reading.interval);
        partSeatedDays.insert(reading.when.localDay());
    }
    history.partSeatedDays = static_cast<int>(partSeatedDays.size());
    QuarantineDays quarantine{checks};
    for (const Fitting& fitting : fittings)
        if (fitting.coupling == coupling)
            history.fittings.push_back(fittingHistory(fitting, readings, exclusions, frozen, quarantine));
    std::ranges::stable_sort(history.fittings, {},
                             [](const FittingHistory& one) { return one.fitting.begins; });
    for (FittingHistory& fitting : history.fittings)
        for (const GaugeId gauge : used[fitting.fitting.id])
            fitting.witness.emplace(gauge, witnessWith(history, fitting, gauge));
    return history;
}

CouplingHistory historyOf(CouplingId coupling, const AirframeFacts& facts, std::span<const Reading> readings)
{
    return historyOf(coupling, facts, readings, facts.gaugeChecks);
}

CouplingHistory historyOf(CouplingId coupling, const AirframeFacts& facts, std::span<const Reading> readings,
                          std::span<const GaugeCheck> checks)
{
    CouplingHistory history = historyOf(coupling, facts.fittings, readings, facts.exclusions,
                                        facts.frozenBaselines, facts.gauges, checks);
    history.factsInDoubt = facts.inDoubt.isOf(coupling);
    return history;
}

bool staysTheSameWith(const CouplingHistory& history, const Reading& reading)
{
    const FittingHistory* fitting = history.find(reading.fitting);
    return fitting && isLockedAtRigging(reading) && !reading.corrects &&
           (!reading.gauge || fitting->witness.contains(*reading.gauge));
}

Judgement judgeIn(const CouplingHistory& history, const Reading& reading)
{
    const FittingHistory* fitting = history.find(reading.fitting);
    if (!fitting || isBeforeItsFitting(reading, fitting->fitting))
        return judge(reading.interval, Baseline{}, {});
    JudgeContext context;
    context.gaugeQuarantined =
        reading.gauge && isQuarantined(*reading.gauge, reading.when.localDay(), history.checks);
    const JudgedCase one{reading.fitting, reading.interval, reading.gauge, context.gaugeQuarantined};
    if (const auto judged = history.judged.find(one); judged != history.judged.end())
        return judged->second;
    const auto known = reading.gauge ? fitting->witness.find(*reading.gauge) : fitting->witness.end();
    context.witness =
        known != fitting->witness.end() ? known->second : witnessWith(history, *fitting, reading.gauge);
    context.setVariance = setVariance(history, *fitting, reading);
    const Judgement judgement = judge(reading.interval, fitting->baseline, context);
    return history.judged.emplace(one, history.factsInDoubt ? withoutTrust(judgement) : judgement)
        .first->second;
}

std::optional<double> scoreIn(const CouplingHistory& history, const Reading& reading)
{
    const FittingHistory* fitting = history.find(reading.fitting);
    if (!fitting || !fitting->baseline.band() || isBeforeItsFitting(reading, fitting->fitting))
        return std::nullopt;
    const ScoredCase one{reading.fitting, reading.interval, reading.gauge};
    if (const auto scored = history.scored.find(one); scored != history.scored.end())
        return scored->second;
    const double score = numbers::scoreOf(inNumbers(reading.interval), *fitting->baseline.posterior(),
                                          setVariance(history, *fitting, reading));
    return history.scored.emplace(one, score).first->second;
}

} // namespace rig
