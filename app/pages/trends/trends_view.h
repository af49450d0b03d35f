#pragma once

#include "app/pictures/aircraft.h"
#include "app/pictures/trend.h"
#include "core/airframe/airframe.h"
#include "core/airframe/coupling.h"
#include "core/judgement/judgement.h"
#include "core/numbers/interval_set.h"
#include "core/review/airframe_review.h"
#include "core/review/coupling_history.h"
#include "core/rigging/reading.h"

#include <QStringList>

#include <optional>
#include <string>
#include <vector>

namespace rig {

// One reading as the table shows it.
struct TrendsReading
{
    Reading reading;
    std::optional<int> riggingNumber; // empty for a reading outside every rigging record
    double rigging = 0;               // its place on the axis of rigging numbers
    Judgement judgement;              // worked out anew against the reading's own fitting
    std::string person;
    std::string second; // who stood by at a demonstration; empty: nobody, or not known
    std::string gauge;
    bool ofBaseline = false; // it makes the band
    bool inDoubt = false;    // its gauge was in quarantine on that day
    bool superseded = false;
    std::string supersededReason; // the note of the reading that corrects it
    bool struck = false;
    std::string struckReason;
    bool excluded = false;
    std::string excludedReason;
    std::string note; // with the reason it stands aside for

    bool isStruckThrough() const { return superseded || struck; }
    bool isSetAside() const { return isStruckThrough() || excluded; }
    // Locked and standing: what a verdict is for. A part-seated reading is shown, not judged.
    bool isJudged() const { return reading.state == SeatState::Locked; }
};

// Where the band of the fitting that holds, at the end of the period looked back on, comes from.
struct BandOrigin
{
    std::optional<Band> band;
    int confirmedReadings = 0;
    numbers::ReadingsStatus status = numbers::ReadingsStatus::NoReadings;
    std::optional<Day> firstDay; // of the confirmed readings; empty without any
    std::optional<Day> lastDay;
    bool isFrozen = false;
    std::optional<DoubtedVersion> doubted; // the other version, where readings are in doubt
    int fittingNumber = 0;                 // 1 for the first; 0 when the coupling has no fitting at all
    Day fittingBegins{};
    std::string fittingReason;
};

// Locked readings on that fitting that stand. The band's own are not among them: a band made of them says
// little of them.
struct FittingCounts : VerdictCounts
{
    int outsideSetAside = 0; // outside, but superseded, struck or excluded: they happened
    int outsideTogether = 0; // of those outside, when all couplings went that way
    int partSeatedAtRigging = 0;
    int notSecuredAtRigging = 0;
};

struct CouplingTrend
{
    Coupling coupling;
    TrendSeries series;                  // series.readings[i] belongs to readings[i]
    std::vector<TrendsReading> readings; // oldest first, superseded ones among them
    CouplingStanding standing;           // at the end of the period
    BandOrigin origin;
    FittingCounts counts;
    QStringList plays; // free play felt at the joint, newest first, in sentences
};

struct TrendsView
{
    Airframe airframe;
    std::vector<CouplingTrend> couplings; // in use, in rigging order
    AirframeReview review;                // of the period that is looked back on
    std::vector<PeriodOffer> offers;      // never empty
    PeriodOffer chosen;                   // that period
    AircraftSeries aircraft;              // its couplings stand as those above
    QString closed;           // which readings of today are kept back from the second person; empty: none
    QStringList sharedShifts; // what the couplings moved by together, in sentences

    bool looksBack() const { return !offers.empty() && !chosen.isSameChoiceAs(offers.front()); }
    const CouplingTrend* find(std::optional<CouplingId> coupling) const;
};

} // namespace rig
