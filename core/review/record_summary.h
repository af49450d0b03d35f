#pragma once

#include "core/review/airframe_facts.h"
#include "core/review/coupling_standing.h"
#include "core/review/layoffs.h"
#include "core/review/notes_left.h"
#include "core/review/person_standings.h"
#include "core/review/record_review.h"
#include "core/rigging/event.h"
#include "core/rigging/record_content.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace rig {

// One rigging record as it is read afterwards: what was answered and read, by whom and when, with nothing
// left out, and judged anew. Names instead of ids; a name is empty when the file does not know it.

// Why an answer is not the one that counted at the end.
enum class AnswerStanding { Counts, AnsweredAgain, BeforeInterruption };

struct SummaryAnswer
{
    CheckKind kind = CheckKind::BallInSocket;
    Answer answer = Answer::CannotSee;
    Turn turn = Turn::First;
    std::string person;
    Moment when;
    AnswerStanding standing = AnswerStanding::Counts;
    std::string copiedBy = {}; // from paper, by somebody else; empty: typed by the person
};

// How a reading was put right afterwards: by another one, or struck with nothing in its place.
struct SummaryCorrection
{
    bool isStruck = false;
    std::string reason;
    std::string by; // who entered it
    Moment when;
};

struct SummaryReading
{
    Reading reading;
    std::string person;
    std::string gauge;
    Judgement judgement;                       // worked out anew; of no meaning for a part-seated one
    std::optional<Shown> shown;                // told beside it where it was another: evidence, never input
    std::optional<SummaryCorrection> replaced; // superseded or struck: struck through, and why
    bool isCorrection = false;
    std::string copiedBy; // as in SummaryAnswer
};

struct SummaryQuestion
{
    Question question;
    std::string place; // coupling, surface or gauge; empty for the whole record
    std::optional<Resolution> resolution;
    std::string resolvedBy;
    std::string copiedBy;       // as in SummaryAnswer, of a later answer that closed it
    bool isOwnDecision = false; // by whoever had found it
};

struct SummaryPlay
{
    JointPlay play;
    std::string person;
};

struct SummaryCoupling
{
    Coupling coupling;
    std::vector<SummaryAnswer> answers; // in time order
    std::vector<SummaryReading> readings;
    std::vector<Interruption> interruptions;
    std::vector<std::string> secondsWhoConnected; // nobody independent was there
    std::vector<SummaryPlay> plays;               // felt at this rigging
    std::vector<GapInterval> partSeated;          // as known then
    std::optional<Event> wholeCheck;              // what asked for the whole check of it at this rigging
    CouplingStanding standing;                    // now, or at the close of a closed record
    std::optional<CouplingStanding> now; // beside that one where something graver is unresolved today

    // The last locked one of the first person's that stands; the second person's when there is no other. Null
    // without.
    const SummaryReading* last() const;
};

struct SummarySurfaceAnswer
{
    SurfaceCheck check;
    std::string person;
    std::string cockpit;
    bool isAnsweredAgain = false;
    std::string hand; // the coupling that somebody was at afterwards; empty: none

    // It stands as the last word; one that was found out and not tried again does so too.
    bool isLast() const { return !isAnsweredAgain && hand.empty(); }
};

struct SummarySurfaceMeasure
{
    SurfaceMeasure measure;
    std::string person;
};

struct SummarySurface
{
    Surface surface;
    std::vector<SummarySurfaceAnswer> answers;
    std::vector<SummarySurfaceMeasure> measures;
};

struct SummaryTick
{
    TickKind kind = TickKind::ToolsOut;
    std::string person;
    Moment when;
};

// Who connected one side of the airframe.
struct SummaryConnected
{
    Side side = Side::None;
    bool isSaid = false;
    std::vector<std::string> persons; // none where it was said: it is not known who
};

// How somebody named in the record stood on the airframe on its day.
struct SummaryStanding
{
    std::string person;
    SignOffStanding standing;
};

struct RecordSummary
{
    Airframe airframe;
    RiggingRecord record;
    std::string leader;
    std::vector<NoteLeft> notesMet; // what was left for whoever began it, the newest first
    std::string enteredBy;          // who typed it in afterwards; of one from paper
    std::optional<RecordClose> close;
    std::string first; // the two names of the close
    std::string second;
    std::vector<SummaryConnected> connected; // each side that a joint stands on
    Independence secondName;                 // of the second name of the close; nothing without one
    bool didNoSecondLook = false;            // that person, at any joint
    std::vector<SummaryCoupling> couplings;
    std::vector<SummarySurface> surfaces;
    StoodBefore stood;            // how long the airframe had, when it began
    bool isFirstOfSeason = false; // by the calendar year or after a layoff
    std::vector<SummaryTick> ticks;
    std::vector<SummaryQuestion> questions;
    std::vector<SummaryStanding> standings; // of whom there was anything to tell
    std::vector<OpenItem> notDone;          // as it stood at the close, or now when it is still open
};

AnswerStanding standingOf(const Check& check, const RecordContent& content);

// Of one record of this airframe. What was entered after the close, a correction or how a question was
// closed, is shown with its own day and changes nothing in `notDone`. `people` are told as they stood on the
// day of the record.
RecordSummary summaryOf(const AirframeFacts& facts, const RecordContent& content,
                        const PersonStandings& people = {});

// The last record that two people closed, or that a person closed with open items; not one left behind.
std::optional<RecordId> lastClosedRecord(const AirframeFacts& facts);

} // namespace rig
