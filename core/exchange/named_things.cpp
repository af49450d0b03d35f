#include "core/exchange/named_things.h"

#include <utility>

namespace rig {

namespace {

template <typename Thing> ByName<Thing> byName(const std::vector<Thing>& things, std::string Thing::*name)
{
    ByName<Thing> named;
    for (const Thing& thing : things)
        named.emplace(comparable(thing.*name), thing);
    return named;
}

} // namespace

Result<NamedThings> thingsIn(const Records& records)
{
    Problem problem;
    std::vector<Person> people;
    std::vector<Gauge> gauges;
    std::vector<Airframe> airframes;
    const bool read = take(records.persons(), people, problem) && take(records.gauges(), gauges, problem) &&
                      take(records.airframes(), airframes, problem);
    if (!read)
        return problem;
    NamedThings known{byName(people, &Person::name), byName(gauges, &Gauge::name), {}};
    for (const Airframe& airframe : airframes) {
        NamedAirframe own{airframe.id, airframe.registration, {}, {}};
        std::vector<Coupling> couplings;
        if (!take(records.couplings(airframe.id), couplings, problem) ||
            !take(records.fittings(airframe.id), own.fittings, problem))
            return problem;
        own.couplings = byName(couplings, &Coupling::name);
        known.airframes.emplace(comparable(airframe.registration), std::move(own));
    }
    return known;
}

} // namespace rig
