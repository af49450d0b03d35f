#include "core/review/coupling_signs.h"

#include <algorithm>
#include <map>

namespace rig {

namespace {

bool isRaised(const CouplingReview& coupling)
{
    return coupling.movement && coupling.movement->drift && coupling.movement->drift->isRaised;
}

void addMovement(const CouplingReview& coupling, std::vector<Sign>& signs)
{
    if (!coupling.movement)
        return;
    const FittingMovement& movement = *coupling.movement;
    if (movement.drift)
        signs.push_back(movement.drift->isRaised ? Sign::Drift : Sign::DriftEnded);
    if (movement.scatter && movement.scatter->hasGrown())
        signs.push_back(Sign::ScatterGrew);
    if (movement.scatter && movement.scatter->hasShrunk())
        signs.push_back(Sign::ScatterShrank);
    if (movement.hasStep() && !movement.drift)
        signs.push_back(Sign::Step);
}

double forecastOutside(const CouplingReview& coupling)
{
    return coupling.movement && coupling.movement->forecast ? coupling.movement->forecast->chanceOutside : 0;
}

// What the readings of a day have in common; both empty when they have nothing.
using Common = std::pair<std::optional<GaugeId>, std::optional<PersonId>>;

Common commonOf(const DayShift& day)
{
    Common common;
    if (day.gauges.size() == 1)
        common.first = day.gauges.front();
    if (day.persons.size() == 1)
        common.second = day.persons.front();
    return common;
}

} // namespace

std::vector<Sign> signsOf(const CouplingReview& coupling)
{
    std::vector<Sign> signs;
    if (!coupling.openQuestions.empty())
        signs.push_back(Sign::OpenQuestion);
    addMovement(coupling, signs);
    if (!coupling.outside.empty())
        signs.push_back(Sign::Outside);
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
        case Sign::DriftEnded:
            return Says::Moved;
        case Sign::ScatterGrew:
        case Sign::ScatterShrank:
            return Says::Scatters;
        case Sign::Outside:
            return Says::WasOutside;
        case Sign::NearEdge:
            return Says::NearEdge;
        case Sign::GapIsNoWitness:
            return Says::CannotTell;
        case Sign::OpenQuestion:
        case Sign::NotRead:
        case Sign::NoBand:
        case Sign::MissedRiggings:
        case Sign::ThinBand:
        case Sign::PartSeatedNeverShown:
            break;
        }
    return coupling.movement && coupling.movement->sharedOnly ? Says::Moved : Says::Inside;
}

bool standsOutMore(const CouplingReview& one, const CouplingReview& other)
{
    const auto gravest = [](const CouplingReview& coupling) {
        return coupling.signs.empty() ? static_cast<int>(Sign::PartSeatedNeverShown) + 1
                                      : static_cast<int>(coupling.signs.front());
    };
    const auto key = [&](const CouplingReview& coupling) {
        return std::pair{gravest(coupling), isRaised(coupling) ? -forecastOutside(coupling) : 0.0};
    };
    return key(one) < key(other);
}

std::vector<SharedShiftStory> sharedShiftStories(const std::vector<DayShift>& shifts,
                                                 const std::vector<GaugeCheck>& checks)
{
    // By leaf set first: it is the same for every person who takes it up.
    std::map<Common, SharedShiftStory> stories;
    for (const DayShift& day : shifts) {
        if (!day.shift.isCalled)
            continue;
        const Common common = commonOf(day);
        const Common cause{common.first, common.first ? std::nullopt : common.second};
        SharedShiftStory& story = stories[cause];
        if (story.days.empty())
            story.person = common.second;
        else if (story.person != common.second)
            story.person.reset();
        story.gauge = common.first;
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
