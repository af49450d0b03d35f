#pragma once

#include "core/review/airframe_facts.h"
#include "core/review/coupling_history.h"
#include "core/review/says.h"
#include "core/rigging/record_content.h"

#include <map>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <vector>

namespace rig {

// What a surface that was wrong or not seen in the control check has to do with a joint.
enum class SurfaceTie {
    Own,     // the joint's circuit on the joint's side
    Circuit, // the same circuit, elsewhere
    Unknown, // one of the two is of no named kind, so it may be the same
};

struct DoubtedSurface
{
    std::string name;
    SurfaceTie tie = SurfaceTie::Own;
    std::optional<Answer> answer = {}; // that asks it; empty: not known any more
    bool movedWrong = false;           // that is a “no” to how it moves

    bool saidNo() const { return answer == Answer::No; }
    bool operator==(const DoubtedSurface&) const = default;
};

// Empty where no joint of that circuit has to do with how such a surface moves. `question` asks about it.
std::optional<DoubtedSurface> doubtedFor(const Coupling& coupling, const Surface& surface,
                                         const Question& question);

// How one coupling stands: the gravest that nobody has resolved, in any record that is open or asked in one
// that is closed; then what the latest rigging says. Every page, list, table and paper tells this one.
struct CouplingStanding
{
    Says says = Says::NotRead;
    std::optional<Reading> reading; // that says it; the latest where a question says it that is about none
    std::optional<Judgement> judgement;    // of that reading, worked out anew; empty for one found not locked
    int among = 0;                         // readings of its rigging that speak, it among them
    std::optional<QuestionKind> asked;     // what the gravest open question asks
    std::optional<RecordId> askedIn;       // the record that it came up in
    std::optional<CheckKind> askedAbout;   // the part of it that was looked at
    std::optional<DoubtedSurface> surface; // where a surface of its circuit is what is asked about
    int openQuestions = 0;
    std::optional<Day>
        outsideBefore;         // last day before the period that OutsideBefore tells of; none elsewhere
    bool isUnresolved = false; // nobody has said yet what it was, asked or not
    bool factsInDoubt = false; // told beside whatever is graver

    // Of `reading`, where it is the reading that speaks and nothing graver is said beside it.
    std::optional<Verdict> verdict() const;
    // Said before what was done at it.
    bool isSaidFirst() const { return isUnresolved || says == Says::InDoubt; }
    // The reading that stands beside what is asked was taken in another record than that.
    bool isReadElsewhere() const { return askedIn && reading && reading->record != askedIn; }
    // Something is told beside it: how it moves, or what befell it in the period. No mark of an inside
    // reading for that.
    void standBeside(Says told);
};

// How the couplings of one airframe stand at the end of a day. What it is made of outlives it.
class CouplingStandings
{
public:
    // What was read before `from` does not speak any more; what nobody has resolved does, however old it is.
    CouplingStandings(const AirframeFacts& facts, Day from, Day to);
    // Of one record alone, as it says by itself.
    CouplingStandings(const RecordContent& record, std::span<const Surface> surfaces);

    // Of one without a gap no reading speaks: only what nobody has resolved. Where a surface was wrong or not
    // seen and nobody has found out why, every joint of its circuit is asked about.
    CouplingStanding standingOf(const Coupling& coupling, const CouplingHistory& history) const;

private:
    struct Known
    {
        std::vector<const Reading*> readings; // that may speak, or are asked about; newest first
        std::vector<const QuestionStory*> questions;
    };

    // What one reading says by itself.
    struct Spoken
    {
        Says says = Says::NotRead;
        std::optional<Judgement> judgement;
    };

    static void say(const Reading& reading, const Spoken& spoken, CouplingStanding& standing);
    void takeStrikes(const std::vector<Exclusion>& exclusions);
    void takeQuestions(const std::vector<QuestionStory>& questions, std::span<const Surface> surfaces);
    std::optional<DoubtedSurface> doubtedAt(const Coupling& coupling) const;
    CouplingStanding toldOf(const Coupling& coupling, const CouplingHistory& history) const;
    CouplingStanding hiddenOf(const Coupling& coupling, const CouplingStanding& standing) const;
    CouplingStanding ownStandingOf(const Coupling& coupling, const CouplingHistory& history) const;
    void takeBackwards(const AirframeFacts& facts, Day back, Day opened);
    void take(const Reading& reading);
    bool isSetAside(const Reading& reading) const;
    bool maySpeak(const Reading& reading) const;
    bool isResolvedSince(const Known& known, const Reading& reading) const;
    bool isUnasked(const Known& known, const Reading& reading) const;
    Spoken spokenBy(const Known& known, const Reading& reading, const CouplingHistory& history) const;
    void sayUnresolved(const Known& known, const CouplingHistory& history, CouplingStanding& standing) const;
    std::vector<const Reading*> latestOf(const Known& known, const CouplingHistory& history) const;

    Day m_from;
    Day m_to;
    Day m_heldOn; // the day whose fittings speak: of a record from paper its own, however late it was typed
                  // in
    std::set<CouplingId> m_hidden;    // what was found there in the record that is open is kept back
    std::set<RecordId> m_open;        // records not closed at the end of m_to
    std::set<ReadingId> m_asked;      // readings that open questions are about, until found
    std::set<ReadingId> m_superseded; // of those that may speak
    std::set<ReadingId> m_struck;     // by the end of m_to
    struct Doubted
    {
        const Surface* surface = nullptr;
        const Question* question = nullptr;
    };
    std::vector<Doubted> m_doubted; // in the order of asking
    std::map<CouplingId, Known> m_known;
};

} // namespace rig
