#pragma once

#include "core/review/coupling_standing.h"
#include "core/review/layoffs.h"
#include "core/review/measurers.h"
#include "core/review/movement.h"

#include <optional>
#include <string>
#include <vector>

namespace rig {

// What stands out on a coupling, gravest first. None of them is a diagnosis, and having none of them says no
// more than that.
enum class Sign {
    FactsInDoubt,     // of what it rests on something was changed past this program, or nobody can tell
    OpenQuestion,     // something that nobody has found out yet
    Drift,            // the path goes up or down
    Step,             // it came to another level in the period; as grave as a drift
    StepOrDrift,      // one of the two, not yet to be told apart; likewise
    ScatterGrew,      //
    Outside,          // readings outside the band in the period, all of them found out
    OutsideBefore,    // outside before the period on this fitting, and nobody has said what it was
    NearEdge,         // the last reading lies near the edge
    GapIsNoWitness,   // locked and part-seated share gaps
    OutsideExplained, // readings outside, each of them by a named person's or gauge's offset
    DriftEnded,       // the path drifted in the period and does so no more
    ScatterShrank,    //
    NotRead,          // no reading in the period
    NoBand,           //
    MissedRiggings,   // some riggings without a reading
    ThinBand,         // from fewer than ten readings
    PartSeatedNeverShown,
};

// What, taken off a reading outside its band, brings it inside.
enum class OutsideBy { Nothing, Person, Gauge, Both, Movement };

// A reading that lay outside its band, or was found part-seated or not secured at a rigging, with what came
// of it.
struct OutsideStory
{
    Reading reading;
    Judgement judgement;        // worked out anew
    std::optional<Shown> shown; // as it was shown at the time
    double rigging = 0;
    std::optional<Reading> corrected;      // the reading that superseded it, with the reason in its note
    std::optional<Exclusion> struck;       // it was a slip, with nothing in its place
    std::optional<QuestionStory> question; // asked about it or, failing that, about its coupling there
    std::vector<Reading> afterwards;       // read on the same coupling in the same record later
    std::vector<Reading> besides;          // likewise, before or after: a table did not tell when
    OutsideBy by = OutsideBy::Nothing;
    double beyond = 0;     // the outer edge, mm; what the reading surely is
    bool together = false; // on a day on which all couplings went that way

    // It, or what it was corrected to; empty: neither is anything but locked.
    std::optional<SeatState> foundAs() const;
    bool isOpen() const { return question && question->isOpen(); }
    // It was outside, and was neither corrected nor struck since.
    bool isStanding() const { return !corrected && !struck && !foundAs(); }
};

// Readings outside one after the other, on the same side and for the same reason, with none inside between
// them. One that was found not locked, corrected or struck, or whose question is open, stands alone.
struct OutsideRun
{
    std::size_t first = 0; // place in CouplingReview::outside
    std::size_t count = 1; // of those that follow, it among them
    double nearest = 0;    // beyond the outer edge, mm
    double farthest = 0;
};

struct VerdictCounts
{
    int inside = 0;
    int nearEdge = 0;
    int outside = 0;
    int cannotTell = 0;
    int noBand = 0;

    void add(Verdict verdict);
    int all() const { return inside + nearEdge + outside + cannotTell + noBand; }
};

struct CouplingReview
{
    Coupling coupling;
    std::optional<Fitting> fitting; // that held at the end of the period; empty without any
    int fittingNumber = 0;          // from 1
    std::optional<Band> band;
    std::optional<Band> bandWithDoubted; // had the readings in doubt been left in; only where there are some
    std::optional<Band> firstBand;       // of the first fitting, when this is a later one
    bool isFrozen = false;
    int baselineReadings = 0;
    WitnessFinding witness;              // with the gauge of the last reading
    std::vector<GapInterval> partSeated; // seen on this coupling, ever
    std::optional<LaterReading> latest;  // of the first person, in the period; `standing` says how it stands
    std::optional<Judgement> latestJudgement;
    VerdictCounts counts;                    // of the period's locked readings that stand, both persons'
    int inDoubt = 0;                         // of those, with a gauge in quarantine
    int riggingsMissed = 0;                  // of the period's riggings, without any reading of this coupling
    std::optional<FittingMovement> movement; // empty without a fitting
    bool otherSideMovesToo = false; // the same circuit on the other side is told to move the same way
    std::vector<QuestionStory> openQuestions;
    std::optional<DoubtedSurface> askedSurface; // that the first of these is about
    std::vector<OutsideStory> outside;          // in the period, oldest first
    std::vector<OutsideStory> outsideBefore;    // before it, of which nobody has said what it was; likewise
    std::vector<OutsideRun> runs;               // of those, oldest first
    std::vector<Sign> signs;                    // gravest first
    CouplingStanding standing;                  // at the end of the period

    bool has(Sign sign) const;
};

// Days on which all couplings moved together, and whose offset explains them.
struct SharedShiftStory
{
    std::vector<DayShift> days;     // oldest first, called ones that the same offset explains
    std::optional<GaugeId> gauge;   // with which every coupling reads so
    std::optional<PersonId> person; // who reads every coupling so; both empty: nothing explains them
    double millimetres = 0;         // mean of the days'
    bool gaugeInDoubt = false;      // in quarantine on those days
};

struct GaugeReview
{
    Gauge gauge;
    int readings = 0;                    // in the period, on this airframe
    int inDoubt = 0;                     // of those, while it was in quarantine
    std::vector<GaugeCheck> checks;      // in the period, oldest first
    std::optional<GaugeCheck> lastCheck; // up to the end of the period
    bool isQuarantined = false;          // at the end of the period
};

// A fitting that began in the period, and what it followed.
struct FittingChange
{
    CouplingId coupling;
    Fitting fitting;
    std::optional<Band> band;
    std::optional<Fitting> before;
    std::optional<Band> bandBefore;
};

struct RiggingCounts
{
    int riggings = 0;             // in the period
    int lastNumber = 0;           // of the last rigging at its end
    int abandoned = 0;            // records left and begun anew
    int leftOpen = 0;             // closed with something not done
    int stillOpen = 0;            // not closed
    int rechecks = 0;             // gone through again without being taken apart
    std::vector<Day> fromPaper;   // days of the records that were typed in afterwards
    int readings = 0;             // that stand, locked, at riggings
    int persons = 0;              // who read
    int gauges = 0;               // that were read with
    int couplings = 0;            // that were read
    std::optional<Day> firstRead; // day of the first of those readings
    std::optional<Day> lastRead;
};

// Everything that one period of one airframe says, worked out from its facts. The same for the page, the
// report and the tables beside it.
struct AirframeReview
{
    Airframe airframe;
    ReviewPeriod period;
    RiggingCounts counts;
    std::optional<double> riggingsToCome;  // until the annual; empty: the pace is not known
    std::vector<CouplingReview> couplings; // what stands out first; equal ones in rigging order
    std::vector<DayShift> shifts;          // of the period
    std::vector<SharedShiftStory> sharedShifts;
    MeasurerOffsets measurers;
    std::vector<GaugeReview> gauges;         // read with in the period, or in use
    std::vector<FittingChange> fittings;     // oldest first
    std::vector<Event> events;               // of the period, oldest first
    std::vector<JointPlay> jointPlays;       // likewise
    std::vector<QuestionStory> questions;    // asked in the period or open at its end; oldest first
    AirframeReadings readings;               // what it was worked out from, up to the end of the period
    std::vector<StoodBefore> stood;          // before each rigging of the period, the longest first
    std::vector<std::string> closedToSecond; // names of couplings whose first reading is kept back

    const CouplingReview* find(CouplingId coupling) const;
};

AirframeReview airframeReviewOf(const AirframeFacts& facts, const ReviewPeriod& period);
// With the season up to the end of the period, which other periods share.
AirframeReview airframeReviewOf(const AirframeFacts& facts, const ReviewPeriod& period,
                                const SeasonUntil& season);

} // namespace rig
