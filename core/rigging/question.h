#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/stamp.h"
#include "core/rigging/control_check.h"
#include "core/rigging/rigging_record.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace rig {

enum class QuestionKind {
    OutsideReading,   // a reading lay outside its band
    AnsweredNo,       // look, pull or secured
    CannotSee,        // likewise; closed by whoever answers the same again and has seen it
    ReadingsDisagree, // the two persons' readings differ by more than measuring explains
    SidesSwapped,     // left reads like right and right like left
    SurfaceDoubt,     // a surface that was wrong or not seen in the control check
    GaugeQuarantined, // readings were taken with a gauge that is now in doubt
    BandInDoubt,      // without such readings the band is another, and a verdict with it
    ShownPartSeated,  // it was left half home on purpose; closed only after the whole inspection since
    Asked,            // by somebody, in words of their own
};

// Something that has to be found out. It stays open until a named person has said what was found and done; no
// later reading or answer closes it.
struct Question
{
    QuestionId id; // null until saved
    AirframeId airframe;
    QuestionKind kind = QuestionKind::OutsideReading;
    std::optional<RecordId> record;
    std::optional<CouplingId> coupling;
    std::optional<SurfaceId> surface;
    // The one it is about, the second of two that disagree, or the last whose verdict is another.
    std::optional<ReadingId> reading;
    std::optional<GaugeId> gauge;
    std::optional<CheckKind> check;               // the step that was answered
    std::optional<SurfaceCheckKind> surfaceCheck; // the same of a control check
    Stamp stamp;
    std::string text = {}; // what somebody asks
    // Of a surface: the last answer of its control check that asks it, none of a yes, and what was called
    // then. Both follow from the record and stand in no table.
    std::optional<Answer> surfaceAnswer = {};
    std::optional<Movement> surfaceSeen = {};
    // Of a rigging that was typed in from paper: its moment. It follows from the record and stands in no
    // table.
    std::optional<Moment> onPaper = {};

    // When it came up. `stamp.when` is when it was written into the file, on paper much later.
    Day day() const { return onPaper.value_or(stamp.when).localDay(); }
    // The same thing at the same place: while one is open, another need not be asked.
    bool asksTheSameAs(const Question& other) const;
    // While it is open what it is about is left as it is: an outside reading, a “no” at a joint or a surface.
    bool isStop() const;
    // Among those that are open: an outside reading and a wrong movement before any other stop, then what is
    // in question; last what somebody asks in words of their own. More is graver.
    int gravity() const;
    // A surface did something else than was expected, or nothing.
    bool isWrongMovement() const;
    // Whoever closes it has had the joint in hand. A band in doubt is about figures only, a whole inspection
    // has been done before its question is closed, and what somebody asked may be answered from the desk.
    bool isAtTheJoint() const;
};

// How a question was closed: by whom, what was found, what was done. All three are filled in.
struct Resolution
{
    FactId id; // null until saved
    QuestionId question;
    PersonId person; // who decided; stamp.by is who entered it
    std::string found;
    std::string done;
    Stamp stamp;
    // The later answer that closed it, where nobody had to decide anything: `found` and `done` are empty
    // then, and it stands in no table of its own.
    std::optional<Answer> answered = {};
    // Of such an answer that was typed in from paper: the moment of the paper, and who copied what another
    // person had written. Both follow from the record and stand in no table.
    std::optional<Moment> onPaper = {};
    std::optional<PersonId> copiedBy = {};

    // When it was closed. `stamp.when` is when that was written into the file, on paper much later.
    Moment when() const { return onPaper.value_or(stamp.when); }
    Day day() const { return when().localDay(); }
};

struct QuestionStory
{
    Question question;
    std::optional<Resolution> resolution;

    bool isOpen() const { return !resolution.has_value(); }
    // When that day was over; closed since, it was open then.
    bool isOpenAfter(Day day) const { return isOpen() || resolution->day() > day; }
};

// Those that nobody has closed yet: every list and every count of open questions is made of these.
std::vector<QuestionStory> openAmong(std::span<const QuestionStory> questions);

// Closes each “cannot see” that is open and was answered again, by either person, with anything else.
void settleWhatWasSeen(std::span<QuestionStory> questions, std::span<const Check> checks);

// Gives each question about a surface what was answered at it in that record, until it was closed.
void takeSurfaceAnswers(std::span<QuestionStory> questions, std::span<const SurfaceCheck> checks);

// Gives each that came up in this rigging the moment of its paper, where there is one, and each answer that
// closed one there.
void takeMomentOfPaper(std::span<QuestionStory> questions, const RiggingRecord& record);

// The part of a look that nobody has seen yet at this coupling in this record.
std::optional<CheckKind> notSeenAmong(std::span<const QuestionStory> questions, RecordId record,
                                      CouplingId coupling);

// The question that an answer opens; none for a yes and for what was felt.
std::optional<Question> questionFrom(const Check& check, AirframeId airframe);
std::optional<Question> questionFrom(const SurfaceCheck& check, AirframeId airframe);

} // namespace rig
