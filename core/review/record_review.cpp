#include "core/review/record_review.h"

#include "core/airframe/name_in.h"
#include "core/baseline/admitted.h"
#include "core/review/not_seen.h"
#include "core/review/slips.h"
#include "core/rigging/surface_answers.h"

#include <algorithm>
#include <array>
#include <set>
#include <tuple>

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

std::optional<OpenItemKind> notDone(Step next)
{
    switch (next) {
    case Step::Look:
        return OpenItemKind::NotLooked;
    case Step::Measure:
        return OpenItemKind::NotMeasured;
    case Step::Pull:
        return OpenItemKind::NotPulled;
    case Step::Secure:
        return OpenItemKind::NotSecured;
    case Step::Done:
        break;
    }
    return std::nullopt;
}

bool isOutsideAnywhere(const RecordContent& content, CouplingId coupling, const Judge& judge)
{
    return std::ranges::any_of(content.readings, [&](const Reading& reading) {
        return reading.coupling == coupling && reading.state == SeatState::Locked &&
               judge(reading).verdict == Verdict::Outside;
    });
}

// How the questions of one kind about a coupling stand in this record.
struct Asked
{
    bool ever = false;
    bool open = false;
};

Asked asked(const RecordContent& content, CouplingId coupling, QuestionKind wanted)
{
    Asked found;
    for (const QuestionStory& story : content.questions) {
        if (story.question.coupling != coupling || story.question.kind != wanted)
            continue;
        found.ever = true;
        found.open = found.open || story.isOpen();
    }
    return found;
}

// Each part that somebody could not see, also where no question was asked about it.
std::vector<CheckKind> notSeenIn(const RecordContent& content, CouplingId coupling, const CouplingFlow& first,
                                 const CouplingFlow& second)
{
    std::set<CheckKind> parts;
    std::set<CheckKind> asked;
    for (const QuestionStory& story : content.questions) {
        if (story.question.coupling != coupling || story.question.kind != QuestionKind::CannotSee)
            continue;
        const CheckKind part = story.question.check.value_or(CheckKind::BallInSocket);
        asked.insert(part);
        if (story.isOpen())
            parts.insert(part);
    }
    for (const CouplingFlow* flow : {&first, &second})
        for (const auto& [kind, answer] : flow->answers)
            if (answer == Answer::CannotSee && !asked.contains(kind))
                parts.insert(kind);
    return {parts.begin(), parts.end()};
}

std::vector<OpenItemKind> kindsOf(const RecordContent& content, const CouplingProgress& progress,
                                  const CouplingFlow& first, const CouplingFlow& second)
{
    std::vector<OpenItemKind> kinds;
    if (progress.doubted)
        kinds.push_back(OpenItemKind::Doubted);
    if (progress.outside)
        kinds.push_back(OpenItemKind::OutsideReading);
    if (asked(content, progress.id, QuestionKind::ReadingsDisagree).open)
        kinds.push_back(OpenItemKind::ReadingsDisagree);
    if (asked(content, progress.id, QuestionKind::SidesSwapped).open)
        kinds.push_back(OpenItemKind::SidesSwapped);
    if (const auto kind = notDone(first.next))
        kinds.push_back(*kind);
    // After a stop nobody was asked for what comes behind the pull either.
    if (progress.stop && first.next == Step::Pull && first.asks.parts.securing)
        kinds.push_back(OpenItemKind::NotSecured);
    if (!second.isDone())
        kinds.push_back(OpenItemKind::NoSecondPerson);
    else if (second.isOfSeveral())
        kinds.push_back(OpenItemKind::SecondInParts);
    const auto isSaid = [&progress](Verdict verdict) {
        return progress.verdict == verdict || progress.secondVerdict == verdict;
    };
    if (isSaid(Verdict::NoBandYet))
        kinds.push_back(OpenItemKind::NotJudged);
    if (isSaid(Verdict::CannotTell) && progress.notSeen.empty())
        kinds.push_back(OpenItemKind::CannotTell);
    return kinds;
}

std::optional<CheckKind> firstOf(const std::vector<CheckKind>& parts)
{
    return parts.empty() ? std::nullopt : std::optional{parts.front()};
}

// Those that stand; one as it was found is not judged.
std::vector<Reading> lockedOf(const CouplingFlow& flow, std::span<const Exclusion> exclusions)
{
    std::vector<Reading> locked = standing(flow.readings, exclusions);
    std::erase_if(locked, [](const Reading& one) { return one.state != SeatState::Locked; });
    return locked;
}

std::optional<Verdict> gravestOf(std::span<const Reading> readings, const Judge& judge,
                                 std::optional<CheckKind> notSeen)
{
    std::optional<Verdict> gravest;
    for (const Reading& reading : readings) {
        const Verdict verdict = withoutSight(judge(reading), notSeen).verdict;
        gravest = gravest ? graver(*gravest, verdict) : verdict;
    }
    return gravest;
}

// A doubt or an outside reading that no question was asked about stays open all the same.
CouplingProgress progressOf(const RecordContent& content, const Coupling& coupling, const CouplingFlow& first,
                            const CouplingFlow& second, const RecordScope& scope, const Judge& judge)
{
    CouplingProgress progress;
    progress.id = coupling.id;
    progress.name = coupling.name;
    progress.stage = stageOf(first, second);
    progress.parts = first.asks.parts;
    progress.next = first.next;
    progress.interrupted = first.interrupted || second.interrupted;
    progress.stop = stopAmong(content.questions, coupling, scope.surfaces);
    progress.notSeen = notSeenIn(content, coupling.id, first, second);
    const Asked doubt = asked(content, coupling.id, QuestionKind::AnsweredNo);
    progress.doubted = doubt.open || (!doubt.ever && everSaidNo(content, coupling.id));
    const Asked outside = asked(content, coupling.id, QuestionKind::OutsideReading);
    progress.outside = outside.open || (!outside.ever && isOutsideAnywhere(content, coupling.id, judge));
    progress.isSlip =
        slipThatStops(content.questions, coupling.id, content.readings, content.exclusions, judge)
            .has_value();
    progress.resolved = std::ranges::any_of(content.questions, [&coupling](const QuestionStory& story) {
        return story.question.coupling == coupling.id && !story.isOpen() && !story.resolution->answered;
    });
    const std::vector<Reading> readings = lockedOf(first, content.exclusions);
    if (!readings.empty())
        progress.reading = readings.back().interval;
    const auto notSeen = firstOf(progress.notSeen);
    progress.verdict = gravestOf(readings, judge, notSeen);
    progress.secondVerdict = gravestOf(lockedOf(second, content.exclusions), judge, notSeen);
    return progress;
}

// Whatever has been done at a joint since: what stopped a surface is still to be found out.
bool isStopped(const RecordContent& content, SurfaceId surface, SurfaceCheckKind kind)
{
    const auto isOfIt = [&](const SurfaceCheck& one) { return one.surface == surface && one.kind == kind; };
    const auto last =
        std::ranges::find_if(content.surfaceChecks.rbegin(), content.surfaceChecks.rend(), isOfIt);
    if (last == content.surfaceChecks.rend() || last->answer != Answer::No)
        return false;
    return std::ranges::any_of(content.questions, [&](const QuestionStory& story) {
        return story.isOpen() && story.question.surface == surface && story.question.surfaceCheck == kind;
    });
}

std::optional<SurfaceCheckKind> stopOf(const RecordContent& content, const Surface& surface)
{
    for (const SurfaceCheckKind kind :
         {SurfaceCheckKind::CalledOneWay, SurfaceCheckKind::CalledOtherWay, SurfaceCheckKind::Sense})
        if (isStopped(content, surface.id, kind))
            return kind;
    for (const SurfaceCheckKind kind : checksOf(surface))
        if (isStopped(content, surface.id, kind))
            return kind;
    return std::nullopt;
}

// A wrong movement before any other “no”, and that before what was not seen.
std::optional<Question> doubtAbout(const RecordContent& content, const Surface& surface)
{
    const auto order = [](const Question& one) { return std::pair{!one.isWrongMovement(), !one.isStop()}; };
    std::optional<Question> gravest;
    for (const QuestionStory& story : content.questions) {
        const Question& one = story.question;
        if (one.surface == surface.id && story.isOpen() && (!gravest || order(one) < order(*gravest)))
            gravest = one;
    }
    return gravest;
}

SurfaceProgress progressOf(const RecordContent& content, const RecordScope& scope, const Surface& surface)
{
    SurfaceProgress progress;
    progress.id = surface.id;
    progress.name = surface.name;
    std::optional<JointHand> hand;
    for (const SurfaceAnswer& answer : surfaceAnswersIn(content, scope.couplings, surface)) {
        if (answer.hand && !answer.isFoundOut)
            hand = answer.hand;
        progress.isFoundOut = progress.isFoundOut || (answer.isFoundOut && !answer.isAnsweredAgain);
        if (!answer.counts())
            continue;
        const SurfaceCheck& check = *answer.check;
        progress.answers[check.kind] = check.answer;
        if (check.seen)
            progress.seen[check.kind] = *check.seen;
    }
    const bool isPlain = progress.isSenseAnsweredPlainly();
    for (const SurfaceCheckKind kind : checksOf(surface)) {
        if (!progress.answers.contains(kind) && !(isPlain && isCall(kind))) {
            progress.next = kind;
            break;
        }
    }
    progress.stop = stopOf(content, surface);
    progress.isFoundOut = progress.isFoundOut && progress.next;
    if (hand && progress.next)
        progress.setBackBy = nameIn(scope.couplings, hand->coupling);
    progress.doubt = doubtAbout(content, surface);
    return progress;
}

void reviewCouplings(RecordReview& review, const RecordContent& content, const RecordScope& scope,
                     const Judge& judge)
{
    for (const Coupling& coupling : scope.couplings) {
        if (!coupling.inUse)
            continue;
        const CouplingFlow first = flowOf(content, coupling, Turn::First);
        const CouplingFlow second = flowOf(content, coupling, Turn::Second);
        const CouplingProgress progress = progressOf(content, coupling, first, second, scope, judge);
        for (const CheckKind part : progress.notSeen)
            review.openItems.push_back({coupling.name, OpenItemKind::NotSeen, {}, part});
        for (const OpenItemKind kind : kindsOf(content, progress, first, second))
            review.openItems.push_back({coupling.name, kind, {}, {}, progress.parts.pull, progress.isSlip});
        review.couplings.push_back(progress);
    }
}

void reviewSurfaces(RecordReview& review, const RecordContent& content, const RecordScope& scope)
{
    for (const Surface& surface : scope.surfaces) {
        if (!surface.inUse)
            continue;
        const SurfaceProgress progress = progressOf(content, scope, surface);
        if (progress.doubt)
            review.openItems.push_back(
                {surface.name, OpenItemKind::SurfaceDoubted, {}, {}, true, false, progress.doubt});
        if (progress.setBackBy)
            review.openItems.push_back({surface.name, OpenItemKind::SurfaceSetBack, *progress.setBackBy});
        else if (progress.next)
            review.openItems.push_back({surface.name, OpenItemKind::SurfaceNotChecked});
        review.surfaces.push_back(progress);
    }
    if (review.surfaces.empty())
        review.openItems.push_back({{}, OpenItemKind::NoSurfaces});
}

// What the other items of its rank are among.
int closingRankOf(const OpenItem& item)
{
    switch (item.kind) {
    case OpenItemKind::Doubted:
    case OpenItemKind::OutsideReading:
    case OpenItemKind::SurfaceDoubted:
        return item.stops() ? 0 : 1;
    case OpenItemKind::NotSeen:
    case OpenItemKind::ReadingsDisagree:
    case OpenItemKind::SidesSwapped:
        return 1;
    case OpenItemKind::NotLooked:
    case OpenItemKind::NotMeasured:
    case OpenItemKind::NotPulled:
    case OpenItemKind::NotSecured:
    case OpenItemKind::NoSecondPerson:
    case OpenItemKind::SecondInParts:
    case OpenItemKind::SurfaceNotChecked:
    case OpenItemKind::SurfaceSetBack:
    case OpenItemKind::NoSurfaces:
    case OpenItemKind::SeasonList:
        return 2;
    case OpenItemKind::NotJudged:
    case OpenItemKind::CannotTell:
        break;
    }
    return 3;
}

// What is to be done and what could not be told stand together where they are the same.
void sortByGravity(std::vector<OpenItem>& items)
{
    constexpr int kInQuestion = 1;
    std::ranges::stable_sort(items, {}, [](const OpenItem& one) {
        const int rank = closingRankOf(one);
        return std::pair{rank, rank <= kInQuestion ? 0 : static_cast<int>(one.kind)};
    });
}

void reviewSeason(RecordReview& review, const RecordContent& content, const RecordScope& scope)
{
    if (!scope.isFirstOfSeason)
        return;
    for (const TickKind kind : seasonTicks())
        if (std::ranges::find(content.ticks, kind, &RecordTick::kind) == content.ticks.end())
            review.seasonList.push_back(kind);
    if (!review.seasonList.empty())
        review.openItems.push_back({{}, OpenItemKind::SeasonList});
}

} // namespace

bool OpenItem::stops() const
{
    return kind == OpenItemKind::Doubted || kind == OpenItemKind::OutsideReading ||
           (kind == OpenItemKind::SurfaceDoubted && question && question->isStop());
}

bool OpenItem::isLike(const OpenItem& other) const
{
    const auto said = [](const OpenItem& one) {
        return std::tie(one.kind, one.by, one.check, one.pulls, one.isSlip);
    };
    return !question && !other.question && said(*this) == said(other);
}

bool SurfaceProgress::isCalledBothWays() const
{
    return answers.contains(SurfaceCheckKind::CalledOneWay) &&
           answers.contains(SurfaceCheckKind::CalledOtherWay);
}

bool SurfaceProgress::isSenseAnsweredPlainly() const
{
    return answers.contains(SurfaceCheckKind::Sense) && !answers.contains(SurfaceCheckKind::CalledOneWay) &&
           !answers.contains(SurfaceCheckKind::CalledOtherWay);
}

Verdict graver(Verdict a, Verdict b)
{
    return gravity(a) >= gravity(b) ? a : b;
}

bool RecordReview::mayCloseComplete() const
{
    return !couplings.empty() && std::ranges::none_of(openItems, &OpenItem::blocks);
}

int RecordReview::surfacesDone() const
{
    return static_cast<int>(
        std::ranges::count_if(surfaces, [](const SurfaceProgress& one) { return !one.next && !one.doubt; }));
}

RecordReview reviewOf(const RecordContent& content, const RecordScope& scope, const Judge& judge)
{
    RecordReview review;
    reviewSeason(review, content, scope);
    reviewCouplings(review, content, scope, judge);
    reviewSurfaces(review, content, scope);
    sortByGravity(review.openItems);
    return review;
}

std::span<const TickKind> seasonTicks()
{
    static constexpr std::array kTicks{TickKind::SeasonCleaned, TickKind::SeasonGreased,
                                       TickKind::SeasonLeaves, TickKind::SeasonRefresher};
    return kTicks;
}

} // namespace rig
