#pragma once

#include "core/airframe/coupling.h"
#include "core/airframe/gauge.h"
#include "core/airframe/person.h"
#include "core/exchange/bad_row.h"
#include "core/exchange/fields.h"
#include "core/rigging/event.h"
#include "core/rigging/joint_play.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace rig {

// What every line of these tables has. Names of others are not looked up yet.
struct TableLine
{
    int line = 0;
    bool isBad = false; // of its names is known only that they stand there
    Fields said;        // in the order of the table's columns, without blanks around
};

struct CouplingLine : TableLine
{
    std::string airframe;
    Coupling coupling;
    std::optional<Day> begins; // of a fitting; empty: of none, or with its first reading
    std::string reason;
};

struct PersonLine : TableLine
{
    Person person;
};

struct GaugeLine : TableLine
{
    Gauge gauge;
    std::optional<GaugeCheck> check;
};

struct EventLine : TableLine
{
    std::string airframe;
    std::string coupling; // empty: the whole airframe
    std::string person;   // empty: nobody says
    Event event;
};

struct JointPlayLine : TableLine
{
    std::string airframe;
    std::string coupling;
    std::string person;
    JointPlay play;
};

template <typename Line> struct TableOf
{
    std::vector<Line> lines;
    std::vector<BadRow> bad;
    bool isRead = true; // false when no line of it could be read
};

// docs/import.md describes each.
TableOf<CouplingLine> parseCouplings(std::string_view bytes);
TableOf<PersonLine> parsePeople(std::string_view bytes);
TableOf<GaugeLine> parseGauges(std::string_view bytes);
TableOf<EventLine> parseEvents(std::string_view bytes);
TableOf<JointPlayLine> parseJointPlays(std::string_view bytes);

} // namespace rig
