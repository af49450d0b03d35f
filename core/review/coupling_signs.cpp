#include "core/review/coupling_signs.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace rig {

namespace {

Sign signOf(const PathChangeTold& change)
{
    if (change.endedAt)
        return Sign::DriftEnded;
    switch (change.kind) {
    case ChangeKind::Step:
        return Sign::Step;
    case ChangeKind::Drift:
        return Sign::Drift;
    case ChangeKind::StepOrDrift:
        break;
    }
    return Sign::StepOrDrift;
}

void addMovement(const CouplingReview& coupling, std::vector<Sign>& signs)
{
    if (!coupling.movement)
        return;
    const FittingMovement& movement = *coupling.movement;
    if (const PathChangeTold* change = movement.told())
        signs.push_back(signOf(*change));
    if (movement.scatter && movement.scatter->hasGrown)
        signs.push_back(Sign::ScatterGrew);
    if (movement.scatter && movement.scatter->hasShrunk)
        signs.push_back(Sign::ScatterShrank);
}

bool isOfHands(const OutsideStory& story)
{
    return story.by == OutsideBy::Person || story.by == OutsideBy::Gauge || story.by == OutsideBy::Both;
}

// The three kinds of movement are one to the order.
int rankOf(const CouplingReview& coupling)
{
    if (coupling.signs.empty())
        return static_cast<int>(Sign::PartSeatedNeverShown) + 1;
    const Sign gravest = coupling.signs.front();
    return static_cast<int>(isMovement(gravest) ? Sign::Drift : gravest);
}

// In mm beyond the outer edge.
double farthestOutside(const CouplingReview& coupling)
{
    double farthest = 0;
    for (const OutsideStory& story : coupling.outside)
        farthest = std::max(farthest, story.beyond);
    return farthest;
}

double forecastOutside(const CouplingReview& coupling)
{
    return coupling.movement && coupling.movement->forecast ? coupling.movement->forecast->chanceOutside : 0;
}

} // namespace

bool isMovement(Sign sign)
{
    return sign == Sign::Drift || sign == Sign::Step || sign == Sign::StepOrDrift;
}

std::vector<Sign> signsOf(const CouplingReview& coupling)
{
    std::vector<Sign> signs;
    if (coupling.standing.factsInDoubt)
        signs.push_back(Sign::FactsInDoubt);
    if (!coupling.openQuestions.empty())
        signs.push_back(Sign::OpenQuestion);
    addMovement(coupling, signs);
    if (!coupling.outside.empty())
        signs.push_back(std::ranges::all_of(coupling.outside, isOfHands) ? Sign::OutsideExplained
                                                                         : Sign::Outside);
    if (!coupling.outsideBefore.empty())
        signs.push_back(Sign::OutsideBefore);
    if (!hasGap(coupling.coupling)) { // what has no gap lacks no reading
        std::ranges::sort(signs);
        return signs;
    }
    if (coupling.latestJudgement && coupling.latestJudgement->verdict == Verdict::NearEdge)
        signs.push_back(Sign::NearEdge);
    if (!coupling.latest)
        signs.push_back(Sign::NotRead);
    else if (coupling.riggingsMissed > 0)
        signs.push_back(Sign::MissedRiggings);
    if (coupling.witness.witness == Witness::None)
        signs.push_back(Sign::GapIsNoWitness);
    if (coupling.witness.witness == Witness::NeverShown)
        signs.push_back(Sign::PartSeatedNeverShown);
    if (!coupling.band)
        signs.push_back(Sign::NoBand);
    else if (coupling.band->isThin())
        signs.push_back(Sign::ThinBand);
    std::ranges::sort(signs);
    return signs;
}

Says gravestTold(const CouplingReview& coupling)
{
    for (const Sign sign : coupling.signs) // gravest first
        switch (sign) {
        case Sign::Drift:
        case Sign::Step:
        case Sign::StepOrDrift:
        case Sign::DriftEnded:
            return Says::Moved;
        case Sign::ScatterGrew:
        case Sign::ScatterShrank:
            return Says::Scatters;
        case Sign::Outside:
        case Sign::OutsideExplained:
            return Says::WasOutside;
        case Sign::OutsideBefore:
            return Says::OutsideBefore;
        case Sign::NearEdge:
            return Says::NearEdge;
        case Sign::GapIsNoWitness:
            return Says::CannotTell;
        case Sign::FactsInDoubt:
        case Sign::OpenQuestion:
        case Sign::NotRead:
        case Sign::NoBand:
        case Sign::MissedRiggings:
        case Sign::ThinBand:
        case Sign::PartSeatedNeverShown:
            break;
        }
    return Says::Inside;
}

const DayShift* togetherWith(const CouplingReview& coupling, std::span<const DayShift> shifts)
{
    if (!coupling.latest || !coupling.latest->score)
        return nullptr;
    const auto wentAlong = [&latest = *coupling.latest](const DayShift& day) {
        return day.shift.isCalled && day.rigging == std::floor(latest.rigging) &&
               *latest.score * day.shift.mean > 0;
    };
    const auto day = std::ranges::find_if(shifts, wentAlong);
    return day == shifts.end() ? nullptr : &*day;
}

bool wentWithAll(std::span<const DayShift> shifts, double rigging, Direction direction)
{
    return std::ranges::any_of(shifts, [&](const DayShift& day) {
        return day.shift.isCalled && day.rigging == std::floor(rigging) &&
               (direction == Direction::Above) == (day.shift.mean > 0);
    });
}

void tellTogether(std::span<const DayShift> shifts, std::vector<OutsideStory>& stories)
{
    for (OutsideStory& story : stories)
        story.together = story.beyond > 0 && wentWithAll(shifts, story.rigging, story.judgement.direction);
}

int wentTogether(const DayShift& day)
{
    return static_cast<int>(std::lround(day.shift.sameSignShare * day.shift.scores));
}

bool standsOutMore(const CouplingReview& one, const CouplingReview& other)
{
    const auto key = [](const CouplingReview& coupling) {
        const bool moves = !coupling.signs.empty() && isMovement(coupling.signs.front());
        return std::tuple{rankOf(coupling), moves ? -forecastOutside(coupling) : 0.0,
                          -farthestOutside(coupling)};
    };
    return key(one) < key(other);
}

std::vector<SharedShiftStory> sharedShiftStories(const std::vector<DayShift>& shifts,
                                                 const std::vector<GaugeCheck>& checks)
{
    std::map<std::pair<std::optional<GaugeId>, std::optional<PersonId>>, SharedShiftStory> stories;
    for (const DayShift& day : shifts) {
        if (!day.shift.isCalled)
            continue;
        SharedShiftStory& story = stories[{day.ofGauge, day.ofPerson}];
        story.gauge = day.ofGauge;
        story.person = day.ofPerson;
        story.days.push_back(day);
    }
    std::vector<SharedShiftStory> all;
    for (auto& [cause, story] : stories) {
        for (const DayShift& day : story.days) {
            story.millimetres += day.millimetres / static_cast<double>(story.days.size());
            story.gaugeInDoubt = story.gaugeInDoubt ||
                                 (story.gauge && isQuarantined(*story.gauge, day.when.localDay(), checks));
        }
        all.push_back(std::move(story));
    }
    std::ranges::stable_sort(all, std::ranges::greater{},
                             [](const SharedShiftStory& story) { return story.days.size(); });
    return all;
}

} // namespace rig
