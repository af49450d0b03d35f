#include "core/review/quarantine.h"

#include "core/airframe/saved_before.h"

#include <algorithm>

namespace rig {

namespace {

bool coversDay(const GaugeCheck& bad, Day day, std::span<const GaugeCheck> checks)
{
    if (!bad.quarantineFrom || day < *bad.quarantineFrom)
        return false;
    return std::ranges::none_of(checks, [&](const GaugeCheck& good) {
        return good.gauge == bad.gauge && !good.quarantineFrom && bad.day <= good.day && good.day <= day &&
               !(good.day == bad.day && savedBefore(good, bad));
    });
}

} // namespace

bool isQuarantined(GaugeId gauge, Day day, std::span<const GaugeCheck> checks)
{
    return std::ranges::any_of(checks, [&](const GaugeCheck& check) {
        return check.gauge == gauge && coversDay(check, day, checks);
    });
}

bool QuarantineDays::covers(GaugeId gauge, Day day)
{
    const std::pair key{gauge, day};
    const auto known = m_known.find(key);
    if (known != m_known.end())
        return known->second;
    return m_known.emplace(key, isQuarantined(gauge, day, m_checks)).first->second;
}

bool QuarantineDays::covers(const Reading& reading)
{
    return reading.gauge && covers(*reading.gauge, reading.when.localDay());
}

const GaugeCheck* doubtOn(GaugeId gauge, Day day, std::span<const GaugeCheck> checks)
{
    const GaugeCheck* latest = nullptr;
    for (const GaugeCheck& check : checks)
        if (check.gauge == gauge && coversDay(check, day, checks) &&
            (!latest || latest->day < check.day || (latest->day == check.day && savedBefore(*latest, check))))
            latest = &check;
    return latest;
}

} // namespace rig
