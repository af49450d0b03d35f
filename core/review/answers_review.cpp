#include "core/review/answers_review.h"

#include "core/rigging/rigging_flow.h"

#include <algorithm>
#include <set>

namespace rig {

namespace {

bool isWhole(const CouplingFlow& flow, Turn turn)
{
    return !flow.hasDoubt() && std::ranges::all_of(kCheckKinds, [&](CheckKind kind) {
        return !flow.asks.has(kind, turn) || answerOf(flow, kind);
    });
}

void take(const RecordContent& content, LookReview& look)
{
    const CouplingId coupling = look.coupling.id;
    bool isAnswered = false;
    for (const Check& check : content.checks) {
        if (check.coupling != coupling)
            continue;
        isAnswered = true;
        look.felt += check.answer == Answer::Felt ? 1 : 0;
        look.cannotSee += check.answer == Answer::CannotSee ? 1 : 0;
        look.no += check.answer == Answer::No ? 1 : 0;
    }
    if (!isAnswered)
        return;
    ++look.riggings;
    look.wholeFirst += isWhole(flowOf(content, look.coupling, Turn::First), Turn::First) ? 1 : 0;
    look.wholeSecond += isWhole(flowOf(content, look.coupling, Turn::Second), Turn::Second) ? 1 : 0;
    look.interrupted +=
        static_cast<int>(std::ranges::count(content.interruptions, coupling, &Interruption::coupling));
}

void take(const RecordContent& content, SurfaceReview& review)
{
    std::set<SurfaceCheckKind> tried;
    for (const SurfaceCheck& check : content.surfaceChecks) {
        if (check.surface != review.surface.id)
            continue;
        tried.insert(check.kind);
        review.no += check.answer == Answer::No ? 1 : 0;
    }
    review.riggings += tried.empty() ? 0 : 1;
    // Earlier versions asked for the sense with a plain yes or no, and for no calls.
    const bool isPlain = tried.contains(SurfaceCheckKind::Sense) && std::ranges::none_of(tried, isCall);
    const auto kinds = checksOf(review.surface);
    review.whole += std::ranges::all_of(
        kinds, [&](SurfaceCheckKind kind) { return tried.contains(kind) || (isPlain && isCall(kind)); });
    for (const SurfaceMeasure& measure : content.surfaceMeasures)
        if (measure.surface == review.surface.id)
            review.measured.insert_or_assign(measure.kind, measure);
}

template <typename Review>
void takeAll(const AirframeFacts& facts, const ReviewPeriod& period, Review& review)
{
    for (const RecordContent& content : facts.contents)
        if (period.contains(content.record.begins.localDay()))
            take(content, review);
}

} // namespace

AnswersReview answersOf(const AirframeFacts& facts, const ReviewPeriod& period)
{
    AnswersReview all;
    for (const Coupling& coupling : facts.couplings) {
        LookReview look;
        look.coupling = coupling;
        takeAll(facts, period, look);
        if (coupling.inUse || look.riggings > 0)
            all.looks.push_back(look);
    }
    for (const Surface& surface : facts.surfaces) {
        SurfaceReview review;
        review.surface = surface;
        takeAll(facts, period, review);
        if (surface.inUse || review.riggings > 0 || !review.measured.empty())
            all.surfaces.push_back(std::move(review));
    }
    return all;
}

} // namespace rig
