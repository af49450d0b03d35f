#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/stamp.h"
#include "core/lesson/joint_state.h"
#include "core/measure/gap.h"

#include <optional>
#include <string>

namespace rig {

// What a round of practice asks. None of it is ever input of a verdict.
enum class RoundKind {
    Seating, // states of couplings: locked or not
    Recall,  // calls of the control check, the order of rigging, whom to call, when to stop
};

// A round that somebody began. It is whole once it has as many answers as it asks.
struct LessonRound
{
    LessonRoundId id; // null until saved
    AirframeId airframe;
    PersonId person;
    RoundKind kind = RoundKind::Seating;
    std::optional<CouplingId> coupling; // it asks of this one alone
    int asks = 0;
    Stamp stamp;
};

enum class SeatingCall { Locked, NotLocked, CannotTell };

// One state that was shown, and what was said of it before the answer was seen.
struct SeatingAnswer
{
    FactId id; // null until saved
    LessonRoundId round;
    CouplingId coupling;
    JointState shown = JointState::Locked;
    std::optional<Gap> gap; // as it was drawn; empty where none could be seen
    bool mirror = false;
    bool torch = false;
    SeatingCall expected = SeatingCall::Locked; // CannotTell where nothing that could be seen tells
    SeatingCall said = SeatingCall::Locked;
    bool sure = false;
    Stamp stamp;
};

constexpr bool isRight(const SeatingAnswer& answer)
{
    return answer.said == answer.expected;
}

// What must not happen at all, and is counted apart for each state: it was called locked and was not. That
// nobody could have told from there is no excuse: then that is the answer.
constexpr bool isMissed(const SeatingAnswer& answer, JointState state)
{
    return state != JointState::Locked && answer.shown == state && answer.said == SeatingCall::Locked;
}

constexpr bool isMissed(const SeatingAnswer& answer)
{
    return isMissed(answer, answer.shown);
}

enum class RecallOf {
    Call,       // what a surface does, as it is called
    Order,      // which coupling comes next
    WhomToCall, // when something does not stand as it should
    WhenToStop,
};

// One thing asked in words, and what was said before the answer was seen.
struct RecallAnswer
{
    FactId id; // null until saved
    LessonRoundId round;
    RecallOf of = RecallOf::Call;
    std::optional<CouplingId> coupling;
    std::optional<SurfaceId> surface;
    std::string asked;
    std::string expected;
    std::string said;
    bool sure = false;
    Stamp stamp;
};

inline bool isRight(const RecallAnswer& answer)
{
    return answer.said == answer.expected;
}

} // namespace rig
