#pragma once

#include "core/airframe/airframe.h"
#include "core/airframe/coupling.h"
#include "core/airframe/gauge.h"
#include "core/airframe/surface.h"
#include "core/review/known_airframe.h"
#include "core/review/person_standings.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace rig {

// What stands on a sheet for a rigging without the program: what is asked, in rigging order, and never what
// is expected. Neither a band nor an earlier reading is in it.

// As many leaves are offered at every coupling, so that their number says nothing of its band.
inline constexpr std::size_t kSheetLeaves = 10;

struct SheetCoupling
{
    Coupling coupling;
    std::vector<GaugeStep> leaves; // rising; empty: nothing to offer, the figures are written
};

// How somebody stands on the airframe.
struct SheetPerson
{
    std::string name;
    SignOffStanding standing;
};

struct PaperSheet
{
    Airframe airframe;
    std::vector<SheetCoupling> couplings; // in use, in rigging order
    std::vector<Surface> surfaces;        // in use, in the order of the control check
    std::optional<Gauge> gauge;
    std::vector<SheetPerson> people; // of whom there is anything to tell
};

// The steps of a set around the one that enters a gap of `mm`. Where that one stands among them is the
// coupling's own and the same on each of its sheets: several sheets laid side by side tell no more than one.
std::vector<GaugeStep> sheetLeaves(const GaugeSet& set, double mm, CouplingId coupling);

// The gauge that this airframe was last read with, of those in use; the only one there is; empty otherwise.
std::optional<GaugeId> gaugeUsedLast(const AirframeFacts& facts);

PaperSheet paperSheetOf(const KnownAirframe& known, std::optional<GaugeId> gauge, Day today,
                        const PersonStandings& people = {});

} // namespace rig
