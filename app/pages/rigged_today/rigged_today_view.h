#pragma once

#include "core/airframe/airframe.h"
#include "core/airframe/gauge.h"
#include "core/airframe/person.h"
#include "core/numbers/shared_shift.h"
#include "core/review/coupling_standing.h"
#include "core/review/layoffs.h"
#include "core/review/notes_left.h"
#include "core/review/person_standings.h"
#include "core/review/record_review.h"
#include "core/rigging/rigging_session.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace rig {

struct RecordHeader
{
    RecordId id;
    PersonId leader;
    Moment begins;
    bool fromAnotherDay = false;            // left overnight: it is not continued
    std::optional<PersonId> enteredBy = {}; // from paper: typed in afterwards, on whatever day
    bool isOfEarlierPaper = false;          // from paper, and of another day than today

    // What is done now belongs to this moment: on paper it was done when the paper says.
    Moment momentOf(Moment now) const { return enteredBy ? begins : now; }
};

// How the record before ended.
struct LastClose
{
    Moment when;
    Closing closing = Closing::LeftOpen;
    std::string first;
    std::string second;
};

// The airframe's rigging of today, as far as it has come.
struct RiggedTodayView
{
    std::int64_t writesElsewhere = 0; // of FactsBook, when this was read
    Airframe airframe;
    std::vector<Person> persons;
    std::vector<Gauge> gauges;         // in use
    std::map<GaugeId, Day> goodChecks; // when each was last found usable
    std::vector<Coupling> couplings;   // in use, in rigging order
    std::vector<Surface> surfaces;     // in use, in the order of the control check
    std::optional<RecordHeader> record;
    std::optional<RecordNow> now; // of `record`, when work on it can go on today
    std::optional<LastClose> lastClose;
    std::vector<NoteLeft> notes;  // that nobody has noted as read, the newest first
    bool hasClosedRecord = false; // one that was not left behind
    std::map<CouplingId, Event>
        wholeChecks; // what asks for the whole check of a coupling, where anything does
    RecordReview review;
    std::map<CouplingId, CouplingStanding> standings; // while a record is open
    std::optional<numbers::SharedShift> sharedShift;  // of the first person's readings so far
    // None is in the file before it, and riggings before the file are stated: when the last of those was
    // nobody has said.
    bool isSeasonNotKnown = false;
    bool isFirstOfSeason = false; // this record, by the calendar year or after a layoff
    StoodBefore stood;            // how long the airframe had, when it began
    PersonStandings people;       // how they stand on this airframe, of whom there is anything to tell
    // The last rigging was closed and nobody has noted since that it was taken apart.
    bool mayStandRigged = false;
};

inline std::optional<SignOffStanding> standingOf(const RiggedTodayView& view, std::optional<PersonId> person)
{
    const auto found = person ? view.people.find(*person) : view.people.end();
    return found == view.people.end() ? std::nullopt : std::optional{found->second};
}

// A reading of this record with what it is judged as.
struct SheetReading
{
    Reading reading;
    Judgement judgement;
};

} // namespace rig
