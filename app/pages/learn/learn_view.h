#pragma once

#include "core/airframe/airframe.h"
#include "core/airframe/coupling.h"
#include "core/airframe/gauge.h"
#include "core/airframe/person.h"
#include "core/airframe/surface.h"
#include "core/lesson/cutaway.h"
#include "core/lesson/learning_facts.h"
#include "core/lesson/own_practice.h"
#include "core/lesson/recall_round.h"
#include "core/lesson/seating_round.h"
#include "core/lesson/sign_off_standing.h"
#include "core/lesson/study_plan.h"
#include "core/views/readings_strip.h"

#include <array>
#include <map>
#include <optional>
#include <vector>

namespace rig {

// One coupling in the list, and how the learner stands at it.
struct LearnRow
{
    Coupling coupling;
    std::optional<LastRound> last; // empty: no whole round has asked of it, or nobody is chosen
};

struct LearnView
{
    Airframe airframe;
    std::vector<Person> persons;
    std::vector<LearnRow> rows; // couplings in use, in the order of rigging

    const LearnRow* find(CouplingId coupling) const
    {
        for (const LearnRow& row : rows)
            if (row.coupling.id == coupling)
                return &row;
        return nullptr;
    }
};

// What the file knows of one coupling for looking at it.
struct CouplingFacts
{
    Coupling coupling;
    CutawayJoint joint;           // with the middle of its own gaps
    bool gapTellsNothing = false; // locked and part-seated share gaps here
    ReadingsStripView strip;
    std::array<const Photo*, 4> photos{}; // by PhotoOf; null: none. They stay until the facts are asked again
};

// Of all rounds that somebody ever answered.
struct SeatingTally
{
    int asked = 0;
    int right = 0;
    int missedPartSeated = 0;
    int missedNotSecured = 0;
    int missedEmpty = 0;
};

// A round in the middle, or none. What is answered belongs to what stands here.
struct PracticeView
{
    PersonId person;
    std::vector<Coupling> couplings;           // that can be practised
    std::map<CouplingId, CutawayJoint> joints; // of each, with its own gaps
    std::optional<LessonRound> round;
    std::vector<SeatingAnswer> ofRound;
    std::optional<SeatingTask> task; // the next one; empty once the round is whole
    SeatingTally tally;
    bool refreshIsDue = false;

    const Coupling* find(CouplingId coupling) const
    {
        for (const Coupling& one : couplings)
            if (one.id == coupling)
                return &one;
        return nullptr;
    }
};

struct RecallView
{
    PersonId person;
    std::vector<Coupling> couplings;
    std::vector<Surface> surfaces;
    bool canBeAsked = false; // there is anything to ask
    std::optional<LessonRound> round;
    std::vector<RecallAnswer> ofRound;
    std::vector<RecallTask> tasks; // of the round
    int asked = 0;                 // ever
    int right = 0;

    const RecallTask* task() const
    {
        return ofRound.size() < tasks.size() ? &tasks[ofRound.size()] : nullptr;
    }
};

// A rigging that may be named as supervised.
struct RiggingChoice
{
    RecordId record;
    Day day;
    std::vector<PersonId> people; // who led and closed it
    std::vector<PersonId> named;  // whom its record names as having had a hand in it
};

struct SupervisedRow
{
    SupervisedRigging rigging;
    Day day;
    std::vector<PersonId> notNamed; // of the two, in its record
    std::optional<LearningTakenBack> back;
};

struct SignOffView
{
    PersonId person;
    std::vector<Person> persons;
    std::vector<Coupling> couplings;
    SignOffStanding standing;
    LearnerProgress progress;
    std::vector<SupervisedRow> supervised; // of this person, oldest first, also what was taken back
    std::vector<RiggingChoice> riggings;   // newest first, none that is told already
    std::vector<SignOff> history;          // of this person, newest first
    std::optional<Day> lastRigging;
    Day today;
};

// Practising to measure. Earlier readings are told only as figures, and to this person.
struct MeasuringView
{
    PersonId person;
    std::vector<Gauge> gauges;
    std::vector<Coupling> couplings; // with a gap
    OwnPractice own;
    std::vector<PracticeReading> readings; // of this person, oldest first
    std::vector<WithdrawnFact<PracticeReading>> takenBack;
    bool isShared = false;
};

struct StudyView
{
    std::vector<Person> persons;
    std::vector<Gauge> gauges;
    std::vector<Coupling> couplings;   // with a gap
    std::optional<CrossedStudy> study; // the last one
    std::vector<StudyPlace> places;    // of it
    StudyResult result;
    std::optional<StudyPlace> next;                        // the reading that is wanted
    std::optional<PracticeReading> last;                   // the one that was kept last
    std::vector<WithdrawnFact<PracticeReading>> takenBack; // of this study
};

} // namespace rig
