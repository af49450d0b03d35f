#pragma once

#include "core/rigging/joint_asks.h"
#include "core/rigging/record_content.h"

#include <map>
#include <optional>
#include <vector>

namespace rig {

// The steps for one coupling and one person, in this order.
enum class Step { Look, Measure, Pull, Secure, Done };

// A reading that was a slip, with who struck it and why.
struct StruckReading
{
    Reading reading;
    Exclusion strike;
};

// What is asked next of one person at one coupling, worked out from the facts alone: everything since that
// person's last interruption counts, nothing before it.
struct CouplingFlow
{
    JointAsks asks; // of this kind of coupling: a step that is not among them is passed over
    Step next = Step::Look;
    // The question open now, in Look, Pull and Secure, none after a “no”; once done, what is still not seen.
    std::optional<CheckKind> ask;
    std::map<CheckKind, Answer> answers;   // those that count now
    std::map<CheckKind, PersonId> givenBy; // who gave each of them
    // Of this person since the last interruption, in time order; without those that were struck, and without
    // what a struck one had taken the place of.
    std::vector<Reading> readings;
    std::optional<Reading> last;       // that stands, of this person in this record, before a break too
    std::vector<StruckReading> struck; // likewise before a break too
    bool interrupted = false;          // at any time in this record
    std::optional<FactId> since;       // the last interruption: what counts came after it
    bool begun = false;                // anything answered since then

    bool isDone() const { return next == Step::Done; }
    // The first of the answers that count now that is a “cannot see”.
    std::optional<CheckKind> notSeen() const;
    // Any No or CannotSee of the answers that count now: blocks a complete close.
    bool hasDoubt() const;
    // Something that counts now is another person's than this one's.
    bool isPartlyOfAnother(PersonId person) const;
    // The answers that count now are of several persons: nobody went through all of it.
    bool isOfSeveral() const;
    // There is a gap, and the look is done. Measuring opens only after the ball was seen in the socket, as an
    // empty one can show a normal gap, and after no “no”.
    bool mayMeasure() const;
};

// The answer that counts now to one question.
std::optional<Answer> answerOf(const CouplingFlow& flow, CheckKind kind);
// “Yes” or “felt”.
bool isSeen(const CouplingFlow& flow, CheckKind kind);

// Turn::First needs a locked reading, where there is a gap, and the securing step; Turn::Second needs
// neither: its own reading is optional.
CouplingFlow flowOf(const RecordContent& content, const Coupling& coupling, Turn turn);
// The answers and the readings alone, whatever kind of coupling it is: nothing is asked next.
CouplingFlow givenAt(const RecordContent& content, CouplingId coupling, Turn turn);

// A No anywhere in the record for this coupling, also one repeated since: it stays open until resolved by a
// named person.
bool everSaidNo(const RecordContent& content, CouplingId coupling);

} // namespace rig
