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
    // What the season tells of it, mm (season_review.h): offsets of who read and with what, as far as they
    // are told; what all couplings share on a day that neither explains; and where its coupling's path then
    // lies.
    double person = 0;
    double gauge = 0;
    double day = 0;
    std::optional<double> path;

    double notItsOwn() const { return person + gauge + day; }
};

// What all couplings of one rigging share: of what paths and offsets leave (docs/method.md I, M). On a day
// that an offset explains, with that offset. Of riggings that no season holds against their bands, and never
// called.
struct DayShift
{
    int rigging = 0;
    Moment when;
    numbers::SharedShift shift;
    double millimetres = 0;      // median over the couplings
    std::vector<GaugeId> gauges; // that the readings were taken with; empty when not known
    std::vector<PersonId> persons;
    std::optional<GaugeId> ofGauge; // whose offset explains it
    std::optional<PersonId> ofPerson;
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
