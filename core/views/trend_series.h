#pragma once

#include "core/airframe/coupling.h"
#include "core/airframe/ids.h"
#include "core/baseline/band.h"
#include "core/clock.h"
#include "core/judgement/judgement.h"
#include "core/measure/gap_interval.h"
#include "core/rigging/event.h"
#include "core/rigging/joint_play.h"
#include "core/rigging/reading.h"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace rig {

// One reading in a coupling's history, as facts and kinds; the layout words it.
struct TrendReading
{
    GapInterval interval;
    Moment when;
    bool isTimeKnown = true; // else `when` is the noon of its day: a table did not tell
    double rigging = 0;      // rigging number; readings between riggings stand at fractions
    Verdict verdict = Verdict::NoBandYet;
    SeatState state = SeatState::Locked;
    bool ofBaseline = false; // one of those the band is made of
    bool setAside = false;   // left out, superseded or struck: drawn hollow
    bool inDoubt = false;    // its gauge was in quarantine that day: drawn hollow; `note` says why
    std::string person;
    std::string gauge;
    std::string note;
};

struct TrendFitting
{
    Moment begins;
    double rigging = 0;
    std::optional<Band> band; // also drawn beyond the fitting's end, faintly, when it is the first
    std::string reason;
    FittingKind kind = FittingKind::Other;
};

struct TrendEvent
{
    Moment when;
    double rigging = 0;
    EventKind kind = EventKind::Note;
    std::string note;
    std::string done = {};   // of a finding
    std::string person = {}; // who found it
    // Felt at the joint on that day; then there is nothing that was done.
    std::optional<JointPlay> play = {};
};

// One place on a fitted line or a forecast, on both axes.
struct TrendPoint
{
    Moment when;
    double rigging = 0;
    double lower = 0; // of its interval, mm; the same as middle where there is none
    double middle = 0;
    double upper = 0;
};

// Where something that the numbers tell begins, on both axes.
struct TrendPlace
{
    Moment when;
    double rigging = 0;
};

// The period looked back on: its first moment and its last, on both axes.
struct TrendPeriod
{
    TrendPlace begins;
    TrendPlace ends;
};

// One coupling's whole history, oldest first.
struct TrendSeries
{
    std::optional<CouplingId> coupling; // the same again is the same coupling, read anew
    std::string name;
    bool hasGap = true; // without one nothing is missing where there is no reading
    std::vector<TrendReading> readings;
    std::vector<TrendFitting> fittings;
    std::vector<TrendEvent> events;
    std::vector<TrendPoint> path;      // where the readings lie without their scatter, oldest first
    std::vector<TrendPoint> forecast;  // goes on from there, with its interval
    std::optional<TrendPeriod> period; // only where readings lie outside it
    std::optional<TrendPlace> onset;   // of the drift
    std::optional<TrendPlace> change;  // the path made a step here
    std::optional<TrendPlace> either;  // a step or a drift, not yet to be told apart
    // Between these two the change began, as surely as 95 in 100.
    std::optional<std::pair<TrendPlace, TrendPlace>> changeWithin;
    std::optional<Moment> annualDue;
    std::optional<double> annualRigging; // riggings expected by then; without it only dates show the annual
};

} // namespace rig
