#pragma once

#include "core/lesson/sign_off.h"
#include "core/review/airframe_facts.h"

#include <map>
#include <optional>
#include <span>
#include <vector>

namespace rig {

// That somebody connected a side, or was the second person at a joint.
struct PartInRigging
{
    RecordId record;
    PersonId person;
};

// The days on which each person led, connected, closed or was second of a rigging that was closed and not
// abandoned, each once and oldest first. A recheck is no rigging, nor is a record left open or a table.
std::map<PersonId, std::vector<Day>> riggingDaysOf(const AirframeFacts& facts,
                                                   std::span<const PartInRigging> parts);

// The last of them; empty where the file knows of none.
std::optional<Day> lastRiggingOf(PersonId person, const std::map<PersonId, std::vector<Day>>& days);

// The last one before the first break that was too long for this sign-off: one rigging after such a break
// does not bring it back. It may lie before the signing. Empty where the file knows of none up to then.
std::optional<Day> lastBeforeABreak(const SignOff& signOff, std::span<const Day> days);

} // namespace rig
