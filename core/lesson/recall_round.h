#pragma once

#include "core/airframe/airframe.h"
#include "core/airframe/coupling.h"
#include "core/airframe/person.h"
#include "core/airframe/surface.h"
#include "core/lesson/lesson.h"
#include "core/rigging/control_check.h"

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <variant>
#include <vector>

namespace rig {

// Something that happens at a rigging, and what it asks for.
enum class StopCase {
    PlungerNotHome,
    PlungerNotSeen,
    OutsideTheBand,
    PullLetsGo,
    HandAfterControlCheck, // on a joint whose surface had been tried
    CalledAway,            // in the middle of a joint
};

enum class StopAct { StopAndCall, MirrorOrLight, TrySurfaceAgain, LookAgain, GoOn };

StopAct actOf(StopCase what);

// A movement, the next coupling, a name, an act.
using RecallChoice = std::variant<Movement, CouplingId, std::string, StopAct>;

// One thing asked in words, with what may be answered.
struct RecallTask
{
    RecallOf of = RecallOf::Call;
    std::optional<SurfaceId> surface; // of a call
    SurfaceCheckKind call = SurfaceCheckKind::CalledOneWay;
    std::optional<CouplingId> coupling; // of the order: after this one
    StopCase stopCase = StopCase::PlungerNotHome;
    std::vector<RecallChoice> choices;
    std::size_t right = 0;
};

// What is known of the airframe, couplings and surfaces in use and in their order.
struct RecallGround
{
    const Airframe& airframe;
    std::span<const Coupling> couplings;
    std::span<const Surface> surfaces;
    std::span<const Person> persons;
};

// Everything that can be asked: the calls of each surface both ways where the program knows them, what
// follows each coupling in the order of rigging, whom to call where somebody is named, when to stop.
std::vector<RecallTask> recallTasksOf(const RecallGround& ground);

inline constexpr int kRecallAsked = 8;

// Those of one round, choices shuffled where they have no order of their own; the same each time for one
// round. What was wrong the last time comes first, then what was never asked. `asked` says a task in words,
// as the answers hold it; `answers` are this person's, oldest first, those of this round too.
std::vector<RecallTask> recallRoundOf(std::vector<RecallTask> tasks, std::span<const RecallAnswer> answers,
                                      const LessonRound& round,
                                      const std::function<std::string(const RecallTask&)>& asked);

} // namespace rig
