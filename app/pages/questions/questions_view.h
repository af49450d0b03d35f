#pragma once

#include "core/airframe/airframe.h"
#include "core/airframe/gauge.h"
#include "core/airframe/person.h"
#include "core/baseline/band.h"
#include "core/judgement/judgement.h"
#include "core/rigging/question.h"
#include "core/rigging/reading.h"
#include "core/rigging/rigging_record.h"

#include <optional>
#include <string>
#include <vector>

namespace rig {

// One reading that a question is about, and who took it.
struct AskedReading
{
    GapInterval interval;
    std::string person;
};

// What was said of the reading outside afterwards: that it was a slip.
struct RowSlip
{
    GapInterval slip;
    std::optional<GapInterval> instead; // empty: it was struck
    std::string by;
    std::string reason;
};

// Readings that are in doubt since a gauge is.
struct ReadingsInDoubt
{
    Day from;
    int count = 0;
};

// A coupling's band with the readings of a gauge in doubt, and without them: what the question is about.
struct BandWithoutDoubted
{
    int doubted = 0;               // of the band's readings
    std::optional<Band> with;      // the band that they made with the others
    std::optional<Band> without;   // the one that holds; empty: too few are left
    int judgedOtherwise = 0;       // readings with other gauges whose verdict is another
    std::optional<Reading> latest; // the last of them
    Verdict before = Verdict::NoBandYet;
    Verdict after = Verdict::NoBandYet;
};

// Who went through the whole joint after it had been shown part-seated.
struct RowInspection
{
    std::string first;
    std::string second;
    Moment when;
};

// A question with all that is needed to tell its story.
struct QuestionRow
{
    QuestionStory story;
    std::string place;                  // name of the coupling, the surface or the gauge
    std::optional<Answer> answer;       // of a check or a control check
    std::optional<Movement> called;     // of a surface: what was called at it
    std::vector<AskedReading> readings; // the one outside, or the two that disagree, in time order
    std::optional<RowSlip> slip;
    std::optional<Gauge> gauge; // that is in doubt
    std::optional<ReadingsInDoubt> inDoubt;
    std::optional<BandWithoutDoubted> band;
    bool waitsForInspection = false; // nobody may close it before the whole joint was gone through
    std::optional<RowInspection> inspected;
    std::string statedBy;
    std::optional<RiggingRecord> record;
    bool ofOpenRecord = false;
    bool startsAgain = false; // after closing it the coupling is at the look in the record that is open
    std::optional<PersonId> foundBy; // it is this person's own finding
    std::string decidedBy;           // of a closed one
    std::string enteredBy;           // likewise; empty when nobody else was named
};

// Open questions oldest first, then closed ones, the last closed first.
struct QuestionsView
{
    Airframe airframe;
    std::vector<Person> persons;
    std::vector<QuestionRow> rows;
    std::vector<std::string> closedToSecond; // names of couplings whose first result is kept back
    int openCount = 0;

    const QuestionRow* find(QuestionId id) const; // null when there is none
};

// What the window says of one open question beside every page.
struct OpenQuestion
{
    Question question;
    std::string place;
};

// What stands in the form, as typed.
struct CloseEntry
{
    std::optional<PersonId> decidedBy;
    std::optional<PersonId> enteredBy; // when it is somebody else
    std::string found;
    std::string done;
};

enum class CloseLack { Person, Found, Done, AlreadyClosed, Inspection };

// Either what is lacking, and nothing was kept, or what came of it.
struct Closed
{
    std::vector<CloseLack> lacks;
    bool startsAgain = false;

    bool isClosed() const { return lacks.empty(); }
};

} // namespace rig
