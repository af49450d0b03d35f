#pragma once

#include "core/store/names.h"
#include "core/store/records.h"

#include <map>
#include <string>
#include <vector>

namespace rig {

// What a table may name, under its comparable name. A thing that only a bad row tells of has a null id: it is
// told of once, and not again by every row that names it.
template <typename Thing> using ByName = std::map<std::string, Thing>;

struct NamedAirframe
{
    AirframeId id;
    std::string registration;
    ByName<Coupling> couplings;
    std::vector<Fitting> fittings;
};

struct NamedThings
{
    ByName<Person> people;
    ByName<Gauge> gauges;
    ByName<NamedAirframe> airframes;
};

Result<NamedThings> thingsIn(const Records& records);

// Null when nothing has this name.
template <typename Thing> const Thing* found(const ByName<Thing>& things, const std::string& name)
{
    const auto at = things.find(comparable(name));
    return at == things.end() ? nullptr : &at->second;
}

} // namespace rig
