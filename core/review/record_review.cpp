#include "core/review/record_review.h"

#include "core/baseline/admitted.h"

#include <algorithm>

namespace rig {

namespace {

int gravity(Verdict verdict)
{
    switch (verdict) {
    case Verdict::Outside:
        return 4;
    case Verdict::CannotTell:
        return 3;
    case Verdict::NoBandYet:
        return 2;
    case Verdict::NearEdge:
        return 1;
    case Verdict::Inside:
        break;
    }
    return 0;
}

CouplingStage stageOf(const CouplingFlow& first, const CouplingFlow& second)
{
    if (first.isDone() && second.isDone())
        return CouplingStage::BothDone;
    if (first.isDone())
        return CouplingStage::FirstDone;
    return first.begun ? CouplingStage::Begun : CouplingStage::Waiting;
}

std::optional<OpenItemKind> notDone(const CouplingFlow& first, const CouplingFlow& second)
{
    switch (first.next) {
    case Step::Look:
        return OpenItemKind::NotLooked;
    case Step::Measure:
        return OpenItemKind::NotMeasured;
    case Step::Pull:
        return OpenItemKind::NotPulled;
    case Step::Done:
        break;
    }
    if (!second.isDone())
        return OpenItemKind::NoSecondPerson;
    return std::nullopt;
}

bool isOutsideAnywhere(const RecordContent& content, CouplingId coupling, const Judge& judge)
{
    return std::ranges::any_of(content.readings, [&](const Reading& reading) {
        return reading.coupling == coupling && judge(reading).verdict == Verdict::Outside;
    });
}

std::vector<OpenItemKind> kindsOf(const CouplingProgress& progress, const CouplingFlow& first,
                                  const CouplingFlow& second)
{
    std::vector<OpenItemKind> kinds;
    if (progress.doubted)
        kinds.push_back(OpenItemKind::Doubted);
    if (progress.outside)
        kinds.push_back(OpenItemKind::OutsideReading);
    if (const auto kind = notDone(first, second))
        kinds.push_back(*kind);
    if (progress.verdict == Verdict::NoBandYet)
        kinds.push_back(OpenItemKind::NotJudged);
    if (progress.verdict == Verdict::CannotTell)
        kinds.push_back(OpenItemKind::CannotTell);
    return kinds;
}

CouplingProgress progressOf(const RecordContent& content, const Coupling& coupling, const CouplingFlow& first,
                            const CouplingFlow& second, const Judge& judge)
{
    CouplingProgress progress;
    progress.id = coupling.id;
    progress.name = coupling.name;
    progress.stage = stageOf(first, second);
    progress.next = first.next;
    progress.interrupted = first.interrupted || second.interrupted;
    progress.doubted = everDoubted(content, coupling.id);
    progress.outside = isOutsideAnywhere(content, coupling.id, judge);
    for (const Reading& reading : standing(first.readings)) {
        progress.reading = reading.interval;
        const Verdict verdict = judge(reading).verdict;
        progress.verdict = progress.verdict ? graver(*progress.verdict, verdict) : verdict;
    }
    return progress;
}

} // namespace

Verdict graver(Verdict a, Verdict b)
{
    return gravity(a) >= gravity(b) ? a : b;
}

int RecordReview::firstDone() const
{
    return static_cast<int>(std::ranges::count_if(couplings, [](const CouplingProgress& one) {
        return one.stage == CouplingStage::FirstDone || one.stage == CouplingStage::BothDone;
    }));
}

int RecordReview::bothDone() const
{
    return static_cast<int>(std::ranges::count(couplings, CouplingStage::BothDone, &CouplingProgress::stage));
}

bool RecordReview::mayCloseComplete() const
{
    return !couplings.empty() && std::ranges::none_of(openItems, &OpenItem::blocks);
}

RecordReview reviewOf(const RecordContent& content, std::span<const Coupling> couplings, const Judge& judge)
{
    RecordReview review;
    for (const Coupling& coupling : couplings) {
        if (!coupling.inUse)
            continue;
        const CouplingFlow first = flowOf(content, coupling.id, Turn::First);
        const CouplingFlow second = flowOf(content, coupling.id, Turn::Second);
        const CouplingProgress progress = progressOf(content, coupling, first, second, judge);
        for (const OpenItemKind kind : kindsOf(progress, first, second))
            review.openItems.push_back({coupling.id, coupling.name, kind});
        review.couplings.push_back(progress);
    }
    return review;
}

} // namespace rig
