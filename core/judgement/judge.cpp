#include "core/judgement/judge.h"

#include "core/baseline/gap_numbers.h"
#include "core/numbers/grading.h"

#include <cassert>
#include <limits>
#include <vector>

namespace rig {
namespace {

Direction directionOf(numbers::Place place)
{
    switch (place) {
    case numbers::Place::OutsideLow:
    case numbers::Place::StraddlesLow:
        return Direction::Below;
    case numbers::Place::OutsideHigh:
    case numbers::Place::StraddlesHigh:
        return Direction::Above;
    case numbers::Place::Inside:
    case numbers::Place::Covers:
        return Direction::Neither;
    }
    return Direction::Neither;
}

Reason whyNoBand(const Baseline& baseline)
{
    const bool isOpen = baseline.status() == numbers::ReadingsStatus::NoUpperBound ||
                        baseline.status() == numbers::ReadingsStatus::NoLowerBound;
    return isOpen && baseline.readings() >= kReadingsForBand ? Reason::ReadingsAllOpen
                                                             : Reason::TooFewReadings;
}

void decide(Judgement& judgement, const numbers::Grading& grading, const JudgeContext& context)
{
    const auto say = [&judgement](Verdict verdict, Reason reason, Direction direction) {
        judgement.verdict = verdict;
        judgement.reason = reason;
        judgement.direction = direction;
    };
    using numbers::Grade;
    if (grading.grade == Grade::Outside)
        say(Verdict::Outside, Reason::None, directionOf(grading.outer));
    else if (context.gaugeQuarantined)
        say(Verdict::CannotTell, Reason::GaugeQuarantined, Direction::Neither);
    else if (context.witness.witness == Witness::None)
        say(Verdict::CannotTell, Reason::GapIsNoWitness, Direction::Neither);
    else if (grading.grade == Grade::Watch)
        say(Verdict::NearEdge, Reason::None, directionOf(grading.inner));
    else if (grading.grade == Grade::Unresolved)
        say(Verdict::CannotTell, Reason::ReachesBeyondBand, directionOf(grading.outer));
    else
        say(Verdict::Inside, Reason::None, Direction::Neither);
}

// The part-seated gaps that a reading with these steps would not show as outside. A stacked step may be
// thicker than marked, so a gap within its film is counted as not shown.
numbers::Interval unseenGaps(const BandEdges& outer, std::span<const GaugeStep> steps)
{
    if (steps.empty())
        return {outer.lower, outer.upper};
    constexpr double kInfinity = std::numeric_limits<double>::infinity();
    numbers::Interval unseen{-kInfinity, kInfinity};
    for (const GaugeStep& step : steps) {
        const Gap thickest = step.isStacked() ? step.size + kStackFilm : step.size;
        if (thickest.inMillimetres() <= outer.lower)
            unseen.lower = step.size.inMillimetres();
        if (step.size.inMillimetres() >= outer.upper) {
            unseen.upper = thickest.inMillimetres();
            break;
        }
    }
    return unseen;
}

Witness witnessFor(double miss)
{
    if (miss <= kMissOfGoodWitness)
        return Witness::Good;
    return miss <= kMissOfWeakWitness ? Witness::Weak : Witness::None;
}

} // namespace

Judgement judge(const GapInterval& reading, const Baseline& baseline, const JudgeContext& context)
{
    assert(problemOf(reading) == IntervalProblem::None);
    Judgement judgement;
    judgement.witness = context.witness;
    if (!baseline.band()) {
        judgement.reason = whyNoBand(baseline);
        return judgement;
    }
    const numbers::IntervalPosterior& posterior = *baseline.posterior();
    const Band band = context.setVariance > 0 ? bandOf(posterior, context.setVariance) : *baseline.band();
    const numbers::PredictiveBands bands{
        {band.inner.lower, band.inner.upper}, {band.outer.lower, band.outer.upper}, band.median};
    const numbers::Grading grading =
        numbers::gradingOf(inNumbers(reading), posterior, bands, context.setVariance);
    judgement.tail = grading.tail;
    judgement.band = band;
    decide(judgement, grading, context);
    return judgement;
}

WitnessFinding findWitness(const Baseline& locked, std::span<const GapInterval> partSeated,
                           std::span<const GaugeStep> steps)
{
    if (partSeated.empty())
        return {Witness::NeverShown, std::nullopt};
    std::vector<numbers::Interval> intervals;
    for (const GapInterval& reading : partSeated)
        intervals.push_back(inNumbers(reading));
    const auto shown = numbers::IntervalPosterior::of(numbers::intervalSetOf(intervals));
    if (!locked.band() || !shown)
        return {Witness::NotKnown, std::nullopt};
    const double miss = shown->between(unseenGaps(locked.band()->outer, steps));
    return {witnessFor(miss), miss};
}

} // namespace rig
