#pragma once

#include "app/pages/rigged_today/rigged_today_view.h"
#include "core/review/comparisons.h"
#include "core/review/coupling_history.h"
#include "core/review/known_airframe.h"
#include "core/review/paper_entry.h"
#include "core/rigging/taken_back.h"
#include "core/store/records.h"
#include "core/views/trend_series.h"

#include <QString>

#include <map>
#include <optional>
#include <vector>

namespace rig {

// A reading outside that stops a joint and was a slip.
struct SlipThatStops
{
    TakenBack taken;
    std::string by;
};

// A photo that stands beside the look.
struct SheetPhoto
{
    Photo photo;
    std::string coupling;
    std::string person;
};

// One coupling as one person works on it: everything the panel shows, worked out from facts and session.
struct CouplingSheet
{
    Coupling coupling;
    Turn turn = Turn::First;
    CouplingFlow flow;
    std::optional<JointStop> stop;
    std::string stopSurface;           // its name, where a surface stops it
    std::optional<Day> stoppedSince;   // where an earlier rigging stopped it
    std::optional<SlipThatStops> slip; // that it is for, where everything outside was one
    std::optional<CheckKind> notSeen;  // in this record, by either person, and not seen since
    std::optional<PersonId> person;    // chosen, never filled in for the second person
    std::optional<Gauge> gauge;
    std::optional<Day> gaugeChecked;
    bool isGaugeOverdue = false;             // a month and more since then
    std::map<PersonId, NotSecond> notSecond; // who is no second person here, and why
    bool isNobodyApart = false;              // everybody connected it or did it first
    bool isBegunElsewhere = false;           // half done, and not by this window
    bool isHidden = false;             // what the first person found: until the second has found their own
    bool hasConnectedIt = false;       // `person`
    std::optional<Coupling> otherSide; // left for right, right for left
    std::vector<PersonId> otherSidePersons; // who did that one first in this record
    std::vector<SheetReading> readings;     // of this person since the last interruption
    std::vector<JointPlay> plays;           // felt in this record by this person, by day
    TrendSeries lastTwelve;                 // without this record's own readings
    CouplingHistory history;
    std::optional<Band> band; // of the fitting that holds today
    FittingId fitting;        // that fitting
    ReadingWanted wanted = ReadingWanted::None;
    bool isMeasuringOpen = false; // by the look and by what was asked for
    // The locked one of this joint, where there is one; left before right while it is asked whether the sides
    // were swapped.
    std::vector<SheetPhoto> photos;
    bool isSwapAsked = false;
    QString movement; // what its past readings show, for the first person; empty: nothing, or not worked out

    // Not before whoever works here is named, nor what a reading that is taken back comes before.
    bool mayAnswer() const { return person && !stop && wanted != ReadingWanted::Corrected; }
};

// What the readings of couplings show together, one sentence each; no entry where they show nothing.
using MovementsTold = std::map<CouplingId, QString>;

// Facts of the rigging record and the state of the session -> views. Knows no widget and writes nothing.
class RiggedTodayPresenter
{
public:
    // Both outlive it.
    RiggedTodayPresenter(const Records& records, const Clock& clock);

    Result<RiggedTodayView> view(AirframeId airframe) const;
    // Whether a rigging of that moment can be typed in from paper, in words where it cannot.
    struct PaperFinding
    {
        PaperMoment::Finding finding = PaperMoment::Finding::Possible;
        Day first{};           // the first fitting
        RiggingRecord other{}; // the rigging of that day that is there already
        std::string otherLeader;
    };
    Result<PaperFinding> paperFinding(AirframeId airframe, Moment begins) const;

    // Another window has written since `view` was read.
    bool hasMovedOn(const RiggedTodayView& view) const;
    // How the couplings move as a review tells it, of today or, from paper, of the day on the paper. That is
    // worked out from the whole history: too much for a key press.
    Result<MovementsTold> movements(AirframeId airframe) const;
    // `view` has a record and `session` stands at one of its couplings.
    Result<CouplingSheet> sheet(const RiggedTodayView& view, const RiggingSession& session) const;

    // How persons stand on it, from today's view; too much for a key press where somebody was signed off.
    Result<PersonStandings> people(AirframeId airframe) const;
    Result<PersonStandings> peopleOn(AirframeId airframe, Day day) const;
    Result<PhotoImage> image(PhotoId photo) const { return m_records.image(photo); }

private:
    Outcome addPhotos(CouplingSheet& sheet, const RiggedTodayView& view, const AirframeFacts& facts) const;
    // Of the rigging that is open, or that would be begun now.
    Day dayOfRigging(const AirframeFacts& facts) const;
    Result<RiggedTodayView> viewOfRecord(AirframeId airframe) const;
    // Hands the sheet the gauge in use: the one chosen, or the only one there is.
    void useGauge(CouplingSheet& sheet, const RiggedTodayView& view, std::optional<GaugeId> chosen) const;

    const Records& m_records;
    const Clock& m_clock;
};

} // namespace rig
