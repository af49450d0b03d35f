#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/stamp.h"
#include "core/measure/gap_interval.h"
#include "core/measure/gauge_set.h"

#include <optional>
#include <string>

namespace rig {

// A leaf set, pin set or taper gauge that somebody owns, known by a short name on its case.
struct Gauge
{
    GaugeId id; // null until saved
    std::string name;
    GaugeSet set;
    std::optional<Gap> tolerance; // plus or minus per leaf, as printed with the set; empty when not known
    std::string note;
    bool inUse = true;
    Stamp stamp;
};

// What a gauge read on a gap whose width is known, a stamped block for instance: the zero check of a day.
struct KnownGapRead
{
    Gap width;
    GapInterval read;

    // From the known width to the nearest that was read; 0 where it lies in what was read, its ends among it.
    // Above 0: the gauge reads high.
    constexpr Gap missedBy() const
    {
        if (read.enters > width)
            return read.enters - width;
        return read.refuses && *read.refuses < width ? *read.refuses - width : Gap{};
    }
};

// A look at the set itself, against a micrometer or a reference block.
struct GaugeCheck
{
    FactId id; // null until saved
    GaugeId gauge;
    Day day;
    std::string how;
    std::string found;
    // Readings taken with the set from this day on are in doubt. Empty: the set was found usable.
    std::optional<Day> quarantineFrom;
    Stamp stamp;
    std::optional<KnownGapRead> known = {}; // where it was tried on a gap of known width
};

} // namespace rig
