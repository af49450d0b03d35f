#pragma once

#include "core/airframe/airframe.h"
#include "core/airframe/coupling.h"
#include "core/demo/saying.h"

#include <span>
#include <string_view>
#include <vector>

namespace rig::demo {

// An invented hangar: no name, figure or event in it is real.

enum class Who { Oren, Vale, Sand, Iver, Quill, Marsh };
enum class Tool { SetA, SetB, SetC, Pins, Taper };

struct PersonPlan
{
    const char* name;
    Saying role;
    const char* phone;
    double offset; // mm that this person reads above the gap
};

struct AirframePlan
{
    const char* registration;
    const char* type;
    const char* serial;
    int riggingsBefore;
    int spanCentimetres;
    int wingPanels;
};

struct CouplingPlan
{
    int airframe; // index into airframePlans()
    Saying name;
    Circuit circuit;
    Side side;
    PlanPlace place;
    Saying access;
    AccessSide seenFrom;
    AccessSide mirrorFrom;
    Saying leafPlace;
    Layout layout;
    double mean;    // mm, locked
    double scatter; // mm, rigging to rigging
    Tool baselineTool;
    Tool riggingTool;
    int baselineReadings;
    std::vector<double> partSeated; // mm, as demonstrated on the first baseline day
    CouplingKind kind = CouplingKind::Sleeve;
    CouplingParts parts = {true, true, true};
};

std::span<const PersonPlan> personPlans();     // in the order of Who
std::span<const AirframePlan> airframePlans(); // QX-17, QX-42, QX-88
const std::vector<CouplingPlan>& couplingPlans();

} // namespace rig::demo
