#pragma once

#include "core/airframe/gauge.h"
#include "core/rigging/reading.h"

#include <map>
#include <span>
#include <utility>

namespace rig {

// True from the day of a quarantine on, until a later check found the set usable. A reading on the very day
// of that check is no longer in doubt.
bool isQuarantined(GaugeId gauge, Day day, std::span<const GaugeCheck> checks);

// The same for many readings: each gauge and day is looked up once. `checks` outlive it.
class QuarantineDays
{
public:
    explicit QuarantineDays(std::span<const GaugeCheck> checks) : m_checks{checks} {}

    bool covers(GaugeId gauge, Day day);
    bool covers(const Reading& reading); // never one without a gauge

private:
    std::span<const GaugeCheck> m_checks;
    std::map<std::pair<GaugeId, Day>, bool> m_known;
};

// The check that put the set in doubt on that day: the latest of those that cover it; null when none does.
const GaugeCheck* doubtOn(GaugeId gauge, Day day, std::span<const GaugeCheck> checks);

} // namespace rig
