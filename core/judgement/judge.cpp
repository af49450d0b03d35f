#include "core/judgement/judge.h"

#include "core/baseline/gap_numbers.h"
#include "core/numbers/discrimination.h"
#include "core/numbers/grading.h"

#include <cassert>
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

// A stacked step may be thicker than marked, by the film between its leaves.
std::vector<numbers::Interval> sizesOf(std::span<const GaugeStep> steps)
{
    std::vector<numbers::Interval> sizes;
    for (const GaugeStep& step : steps)
        sizes.push_back(inNumbers({step.size, step.isStacked() ? step.size + kStackFilm : step.size}));
    return sizes;
}

void countOutside(WitnessFinding& finding, std::span<const numbers::Interval> shown, const BandEdges& outer)
{
    for (const numbers::Interval& reading : shown) {
        const numbers::Place place = numbers::placeOf(reading, {outer.lower, outer.upper});
        finding.above += place == numbers::Place::OutsideHigh ? 1 : 0;
        finding.below += place == numbers::Place::OutsideLow ? 1 : 0;
    }
}

Witness witnessFor(const WitnessFinding& finding, int days)
{
    if (finding.outside() < finding.shown || (finding.miss && *finding.miss > kMissOfWeakWitness))
        return Witness::None;
    if (finding.shown < kShownForWeakWitness)
        return Witness::TooRare;
    if (!finding.miss)
        return Witness::NotKnown;
    return finding.shown >= kShownForGoodWitness && days >= kDaysForGoodWitness &&
                   *finding.miss <= kMissOfGoodWitness
               ? Witness::Good
               : Witness::Weak;
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

WitnessFinding findWitness(const Baseline& locked, const PartSeatedShown& shown,
                           std::span<const GaugeStep> steps)
{
    if (shown.readings.empty())
        return {};
    WitnessFinding finding{Witness::NotKnown, std::nullopt, static_cast<int>(shown.readings.size())};
    if (!locked.band())
        return finding;
    std::vector<numbers::Interval> intervals;
    for (const GapInterval& reading : shown.readings)
        intervals.push_back(inNumbers(reading));
    const BandEdges& outer = locked.band()->outer;
    countOutside(finding, intervals, outer);
    if (const auto posterior = numbers::IntervalPosterior::of(numbers::intervalSetOf(intervals)))
        finding.miss = posterior->between(numbers::unseenBetween({outer.lower, outer.upper}, sizesOf(steps)));
    finding.witness = witnessFor(finding, shown.days);
    return finding;
}

} // namespace rig
