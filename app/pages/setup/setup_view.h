#pragma once

#include "core/airframe/airframe.h"
#include "core/airframe/coupling.h"
#include "core/airframe/gauge.h"
#include "core/airframe/person.h"
#include "core/airframe/surface.h"
#include "core/rigging/event.h"
#include "core/rigging/joint_play.h"

#include <array>
#include <optional>
#include <vector>

namespace rig {

// The parts of Set up in their order; Alt+1 to Alt+9.
enum class SetUpPart {
    Airframe,
    Couplings,
    Surfaces,
    Gauges,
    People,
    Events,
    BaselineDay,
    Demonstration,
    Paper,
};

inline constexpr std::array<SetUpPart, 9> kSetUpParts{
    SetUpPart::Airframe,    SetUpPart::Couplings,     SetUpPart::Surfaces,
    SetUpPart::Gauges,      SetUpPart::People,        SetUpPart::Events,
    SetUpPart::BaselineDay, SetUpPart::Demonstration, SetUpPart::Paper};

struct CouplingRow
{
    Coupling coupling;
    std::optional<Fitting> fitting; // the one that holds today
    int fittings = 0;
    bool hasBand = false; // of that fitting
    bool wasShownPartSeated = false;
};

struct GaugeRow
{
    Gauge gauge;
    std::vector<GaugeCheck> checks;  // newest first
    std::optional<Day> doubtedSince; // readings taken with it today would be in doubt
};

struct EventRow
{
    Event event;
    std::string coupling; // empty: the whole airframe
};

struct PlayRow
{
    JointPlay play;
    std::string coupling;
    std::string person;
};

// Everything that Set up shows of the file and of one airframe.
struct SetUpView
{
    std::optional<Airframe> airframe;   // empty: none yet, or a further one is being entered
    std::vector<CouplingRow> couplings; // in rigging order, those out of use last
    std::vector<Surface> surfaces;      // in the order of the control check, those out of use last
    std::vector<GaugeRow> gauges;
    std::vector<Person> persons;
    std::vector<EventRow> events; // newest first
    std::vector<PlayRow> plays;   // likewise
    std::optional<GaugeId> gaugeUsedLast;
    Day today;

    int couplingsInUse() const;
    int couplingsWithGap() const; // in use, as the two below
    int couplingsWithBand() const;
    int couplingsShownPartSeated() const;
    int gaugesInUse() const;
    int surfacesInUse() const;

    // What the job needs is there: an airframe, a coupling, a gauge, two people, a band for every coupling.
    bool isDone(SetUpPart part) const;
    int stepsDone() const; // of the five on the guided way
    // What has to be there before a rigging can be recorded, whether today or from paper.
    bool mayRig() const;
    // The first part that a newcomer still has to do; empty when the way to the first reading is clear.
    std::optional<SetUpPart> nextToDo() const;
};

// The guided way: airframe, couplings, leaf set, people, baseline day. Empty at its end and beside it.
inline constexpr int kGuidedSteps = 5;
std::optional<SetUpPart> partAfter(SetUpPart part);
bool isOnGuidedWay(SetUpPart part);

} // namespace rig
