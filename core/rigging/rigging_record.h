#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/stamp.h"
#include "core/rigging/reading.h"

#include <optional>
#include <string>
#include <vector>

namespace rig {

// Felt: by a finger that knows the part, where no eye comes; it counts as a yes and stays visible as felt.
enum class Answer { Yes, No, CannotSee, Felt };

constexpr bool countsAsYes(Answer answer)
{
    return answer == Answer::Yes || answer == Answer::Felt;
}

// What was looked at or tried on one coupling, in the order it has to be done. Which of them are asked
// follows from what kind of coupling it is: joint_asks.h.
enum class CheckKind {
    BallInSocket,
    PlungerHome,
    SleeveAtStop,
    PinThrough,
    Engaged,       // all the way, of one that connects by itself
    NoStep,        // nor a gap between the parts that it joins
    LineConnected, // of water ballast
    Connected,     // whatever else it is, as its manual says
    Pull,
    Secured,
};

// One answer. A later answer to the same question stands beside the earlier one, never in its place.
struct Check
{
    CheckId id; // null until saved
    RecordId record;
    CouplingId coupling;
    CheckKind kind = CheckKind::BallInSocket;
    Answer answer = Answer::CannotSee;
    Turn turn = Turn::First;
    PersonId person;
    Moment when;
    Stamp stamp;
    // Of a record from paper: who copied it, where `person` did not type it in.
    std::optional<PersonId> copiedBy = {};
};

enum class InterruptionReason {
    Asked,
    PersonChanged,
    Idle,
    ProgramClosed,
    QuestionClosed, // somebody has been at the coupling: whatever was done, it starts again at the look
};

// A break in the work on one coupling: it starts again at the look, and the mark stays.
struct Interruption
{
    FactId id; // null until saved
    RecordId record;
    CouplingId coupling;
    Turn turn = Turn::First;
    InterruptionReason reason = InterruptionReason::Asked;
    Stamp stamp;
};

enum class Closing {
    Complete,  // every coupling looked at, read, pulled, and by a second person
    LeftOpen,  // closed with something not done or not resolved, which is listed
    Abandoned, // left overnight; a new one starts whole
};

struct RecordClose
{
    FactId id; // null until saved
    RecordId record;
    Closing closing = Closing::LeftOpen;
    std::optional<PersonId> first; // the rigging leader; both are needed to close, and they differ
    std::optional<PersonId> second;
    std::string note;
    Stamp stamp;
};

enum class RecordOrigin {
    Rigging,
    ImportedTable,
    Recheck, // gone through again without having been taken apart: no further rigging is counted
};

// One rigging of one airframe, from the first look to the two names.
struct RiggingRecord
{
    RecordId id; // null until saved
    AirframeId airframe;
    RecordOrigin origin = RecordOrigin::Rigging;
    PersonId leader;
    Moment begins;
    Stamp stamp;
    std::optional<int> celsius = {}; // at the airframe, when it began; empty: nobody said
    // Who typed it in afterwards, from paper. `begins` is then what stood on the paper, and so is the `when`
    // of all that belongs to it; `stamp.when` is when it was typed.
    std::optional<PersonId> enteredBy = {};

    bool isFromPaper() const { return enteredBy.has_value(); }
};

} // namespace rig
