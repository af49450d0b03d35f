#pragma once

#include "core/lesson/seating_round.h"
#include "core/lesson/sign_off.h"

#include <optional>
#include <span>
#include <vector>

namespace rig {

enum class SignOffState { Never, Signed, Expired, Withdrawn };

// How somebody stands on one airframe. It informs; it grants nothing and stops nothing.
struct SignOffStanding
{
    SignOffState state = SignOffState::Never;
    std::optional<SignOff> last; // the one that counts
    // Signed or expired: the first day on which it no longer holds, and why.
    std::optional<Day> expires;
    bool byLayoff = false; // because of so many months without a rigging, and not of its own age
};

// `lastRigging` is the last one this person had a part in (lastBeforeABreak() in core/review), also before
// the signing: that somebody signs is no rigging. Where the file knows of none the signing stands for it.
SignOffStanding signOffStandingOf(PersonId person, std::span<const SignOff> signOffs,
                                  std::optional<Day> lastRigging, Day today);

// What is asked for before somebody signs; who signs decides.
struct LearnerProgress
{
    int supervised = 0;                      // riggings under somebody who knows the airframe
    std::vector<CouplingId> notPractised;    // no whole round has shown it part-seated
    std::vector<CouplingId> missedLastRound; // one that was not locked was called so

    AskedFor askedFor() const
    {
        return {supervised, static_cast<int>(notPractised.size()), static_cast<int>(missedLastRound.size())};
    }
};

// `couplings` are those that can be practised, in the order of rigging.
LearnerProgress progressOf(PersonId person, std::span<const CouplingId> couplings,
                           std::span<const SupervisedRigging> supervised, std::span<const LessonRound> rounds,
                           std::span<const SeatingAnswer> answers);

} // namespace rig
