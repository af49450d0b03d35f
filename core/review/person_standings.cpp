#include "core/review/person_standings.h"

#include <algorithm>
#include <iterator>

namespace rig {

namespace {

// What had been stated by that day; later ones say nothing of it.
std::vector<SignOff> statedBy(const std::vector<SignOff>& all, Day day)
{
    std::vector<SignOff> stated;
    std::ranges::copy_if(all, std::back_inserter(stated),
                         [day](const SignOff& one) { return one.day <= day; });
    return stated;
}

std::span<const Day> until(Day day, const std::vector<Day>& days)
{
    return {days.begin(), std::ranges::upper_bound(days, day)};
}

const SignOff* lastOf(PersonId person, const std::vector<SignOff>& signOffs)
{
    const auto found = std::find_if(signOffs.rbegin(), signOffs.rend(),
                                    [person](const SignOff& one) { return one.person == person; });
    return found == signOffs.rend() ? nullptr : &*found;
}

} // namespace

bool tellsOfAnybody(const LearningFacts& learning)
{
    return !learning.signOffs.empty() || !learning.supervisedRiggings.empty() || !learning.rounds.empty();
}

PersonStandings personStandingsOf(const LearningFacts& learning, const AirframeFacts& facts,
                                  std::span<const PartInRigging> parts, Day today)
{
    PersonStandings standings;
    if (!tellsOfAnybody(learning))
        return standings;
    const std::vector<SignOff> stated = statedBy(learning.signOffs, today);
    const bool isUsed = !stated.empty() || !learning.supervisedRiggings.empty();
    const auto days = riggingDaysOf(facts, parts);
    for (const Person& person : facts.persons) {
        const bool practised =
            std::ranges::find(learning.rounds, person.id, &LessonRound::person) != learning.rounds.end();
        const SignOff* last = lastOf(person.id, stated);
        const bool signs = std::ranges::find(stated, person.id, &SignOff::signer) != stated.end();
        if (!last && (signs || !(isUsed || practised)))
            continue;
        const auto own = days.find(person.id);
        const auto rigged = last && own != days.end() ? lastBeforeABreak(*last, until(today, own->second))
                                                      : std::optional<Day>{};
        standings.emplace(person.id, signOffStandingOf(person.id, stated, rigged, today));
    }
    return standings;
}

} // namespace rig
