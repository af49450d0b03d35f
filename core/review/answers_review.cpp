#include "core/review/answers_review.h"

#include "core/rigging/at_the_close.h"
#include "core/rigging/rigging_flow.h"
#include "core/rigging/surface_answers.h"

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

// Earlier versions asked for the sense with a plain yes or no, and for no calls.
bool isWhole(const std::set<SurfaceCheckKind>& counting, const Surface& surface)
{
    const bool isPlain = counting.contains(SurfaceCheckKind::Sense) && std::ranges::none_of(counting, isCall);
    return std::ranges::all_of(checksOf(surface), [&](SurfaceCheckKind kind) {
        return counting.contains(kind) || (isPlain && isCall(kind));
    });
}

void take(const RecordContent& content, std::span<const Coupling> couplings, SurfaceReview& review)
{
    const std::vector<SurfaceAnswer> answers = surfaceAnswersIn(content, couplings, review.surface);
    std::set<SurfaceCheckKind> counting;
    for (const SurfaceAnswer& answer : answers) {
        if (answer.counts())
            counting.insert(answer.check->kind);
        review.no += answer.check->answer == Answer::No ? 1 : 0;
    }
    review.riggings += answers.empty() ? 0 : 1;
    review.whole += isWhole(counting, review.surface) ? 1 : 0;
    for (const SurfaceMeasure& measure : content.surfaceMeasures)
        if (measure.surface == review.surface.id)
            review.measured.insert_or_assign(measure.kind, measure);
}

} // namespace

std::vector<RecordContent> contentsAtTheClose(const AirframeFacts& facts, const ReviewPeriod& period)
{
    std::vector<RecordContent> contents;
    for (const RecordContent& content : facts.contents)
        if (period.contains(content.record.begins.localDay()))
            contents.push_back(asAtTheClose(content));
    return contents;
}

AnswersReview answersOf(const AirframeFacts& facts, const ReviewPeriod& period)
{
    const std::vector<RecordContent> contents = contentsAtTheClose(facts, period);
    AnswersReview all;
    for (const Coupling& coupling : facts.couplings) {
        LookReview look;
        look.coupling = coupling;
        for (const RecordContent& content : contents)
            take(content, look);
        if (coupling.inUse || look.riggings > 0)
            all.looks.push_back(look);
    }
    for (const Surface& surface : facts.surfaces) {
        SurfaceReview review;
        review.surface = surface;
        for (const RecordContent& content : contents)
            take(content, facts.couplings, review);
        if (surface.inUse || review.riggings > 0 || !review.measured.empty())
            all.surfaces.push_back(std::move(review));
    }
    return all;
}

} // namespace rig
