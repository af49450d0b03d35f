#include "core/lesson/sign_off_standing.h"

#include <algorithm>
#include <ranges>
#include <set>

namespace rig {

SignOffStanding signOffStandingOf(PersonId person, std::span<const SignOff> signOffs,
                                  std::optional<Day> lastRigging, Day today)
{
    const auto ofPerson = signOffs | std::views::reverse;
    const auto found = std::ranges::find(ofPerson, person, &SignOff::person);
    if (found == ofPerson.end())
        return {};
    SignOffStanding standing{SignOffState::Withdrawn, *found, {}, false};
    if (found->kind == SignOffKind::Withdrawn)
        return standing;
    const Day rested = monthsAfter(lastRigging.value_or(found->day), found->monthsWithoutRigging);
    const Day old = monthsAfter(found->day, found->months);
    standing.byLayoff = rested < old;
    standing.expires = std::min(rested, old);
    standing.state = *standing.expires <= today ? SignOffState::Expired : SignOffState::Signed;
    return standing;
}

LearnerProgress progressOf(PersonId person, std::span<const CouplingId> couplings,
                           std::span<const SupervisedRigging> supervised, std::span<const LessonRound> rounds,
                           std::span<const SeatingAnswer> answers)
{
    std::set<RecordId> riggings;
    for (const SupervisedRigging& one : supervised)
        if (one.learner == person)
            riggings.insert(one.record);
    LearnerProgress progress{static_cast<int>(riggings.size()), {}, {}};
    const std::map<CouplingId, LastRound> last = lastRoundsOf(person, rounds, answers);
    for (const CouplingId coupling : couplings) {
        const auto found = last.find(coupling);
        if (found == last.end() || found->second.partSeatedAsked == 0)
            progress.notPractised.push_back(coupling);
        else if (!found->second.missedNothing())
            progress.missedLastRound.push_back(coupling);
    }
    return progress;
}

} // namespace rig
