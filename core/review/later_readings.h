#pragma once

#include "core/numbers/shared_shift.h"
#include "core/review/airframe_facts.h"
#include "core/review/coupling_history.h"
#include "core/review/rigging_numbers.h"

#include <functional>
#include <map>
#include <optional>
#include <vector>

namespace rig {

// A locked reading of a rigging that stands, against the band of its own fitting.
struct LaterReading
{
    Reading reading;
    double rigging = 0;          // its number, or a place between the numbers
    std::optional<double> score; // empty while the fitting has no band
    bool inDoubt = false;        // its gauge was in quarantine on that day
    double shared = 0;           // in scores: what all couplings of that day have in common; 0 unless called
};

// All couplings of one rigging, each against its own band (docs/method.md I).
struct DayShift
{
    int rigging = 0;
    Moment when;
    numbers::SharedShift shift;
    double millimetres = 0;      // median over the couplings of score times their own scatter
    std::vector<GaugeId> gauges; // that the readings were taken with; empty when not known
    std::vector<PersonId> persons;
};

// Every coupling in use with its history and what was read at riggings, oldest first, up to a day. The first
// person's last standing reading of each rigging speaks for the coupling; the others, the second person's
// among them, stand in `others` and speak only for those who measured.
struct CouplingReadings
{
    Coupling coupling;
    CouplingHistory history;
    std::vector<LaterReading> readings;
    std::vector<LaterReading> others;
};

using HistoryOfCoupling = std::function<CouplingHistory(CouplingId)>;

struct AirframeReadings
{
    std::vector<CouplingReadings> couplings; // in rigging order
    std::vector<DayShift> shifts;            // one for each rigging with a score, oldest first
};

// `historyOfCoupling` gives what holds for all readings of `facts`; without it that is worked out too.
AirframeReadings readingsUntil(const AirframeFacts& facts, const RiggingNumbers& numbers, Day last,
                               const HistoryOfCoupling& historyOfCoupling = {});

} // namespace rig
