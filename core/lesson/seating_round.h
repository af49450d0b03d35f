#pragma once

#include "core/lesson/lesson.h"
#include "core/lesson/spacing.h"
#include "core/numbers/dice.h"

#include <functional>
#include <map>
#include <optional>
#include <span>
#include <vector>

namespace rig {

// What practice draws from: a coupling's own readings.
struct PracticeJoint
{
    CouplingId coupling;
    std::vector<Gap> locked;     // the middle of each locked reading of its fitting
    std::vector<Gap> partSeated; // of each that was shown part-seated, on either side; empty: never shown
};

// With what one looks.
struct LookedWith
{
    bool mirror = true;
    bool torch = true;
};

// One state to be called.
struct SeatingTask
{
    CouplingId coupling;
    JointState state = JointState::Locked;
    std::optional<Gap> gap; // empty where no gap can be told: see drawnGap()
    LookedWith view;
    SeatingCall expected = SeatingCall::Locked;
};

// Whether what can be seen of this coupling so tells that state from a locked one.
using TellsState = std::function<bool(CouplingId, JointState, const LookedWith&)>;

inline constexpr int kAskedOfOneCoupling = 6;
inline constexpr int kAskedOfAll = 12;

// The next question of a round, the same each time it is asked for: `seed` and what was answered decide. What
// was called wrongly by somebody who was sure comes next, in another gap and another light; then what was
// never asked, what is due, and the rest. Faults come more often than locked joints, and every round asks
// for one part-seated and one empty joint at least. `answers` are all of this person, oldest first, those of
// the round last. There has to be a joint.
SeatingTask nextTask(std::span<const PracticeJoint> joints, std::span<const SeatingAnswer> answers,
                     const LessonRound& round, bool refreshIsDue, Day today, const TellsState& tells);

// One of the joint's own readings: of its locked ones where it is locked, or empty with a gap like any other;
// of its part-seated ones; none where nobody showed it part-seated, or nothing secures it.
std::optional<Gap> drawnGap(const PracticeJoint& joint, JointState state, numbers::Dice& dice);

// What somebody's last whole round said of one coupling.
struct LastRound
{
    int asked = 0;
    int right = 0;
    int partSeatedAsked = 0;
    int missedPartSeated = 0;
    int missedNotSecured = 0;
    int missedEmpty = 0;
    int sureButWrong = 0;

    bool missedNothing() const { return missedPartSeated + missedNotSecured + missedEmpty == 0; }
};

// Of each coupling that a whole round of this person asked. Rounds in the order of saving.
std::map<CouplingId, LastRound> lastRoundsOf(PersonId person, std::span<const LessonRound> rounds,
                                             std::span<const SeatingAnswer> answers);

// This person's, oldest first.
std::vector<SeatingAnswer> answersOf(PersonId person, std::span<const LessonRound> rounds,
                                     std::span<const SeatingAnswer> answers);

// The round of this kind that somebody began last; null when there is none.
const LessonRound* lastRoundOf(PersonId person, RoundKind kind, std::span<const LessonRound> rounds);

} // namespace rig
