#include "tests/support/hangar.h"

namespace rig::test {

Person aPerson(const std::string& name)
{
    Person person;
    person.name = name;
    person.role = "member";
    return person;
}

Airframe anAirframe(const std::string& registration)
{
    Airframe airframe;
    airframe.registration = registration;
    airframe.type = "Orvane 15";
    return airframe;
}

Gauge aLeafSet(const std::string& name)
{
    std::vector<Gap> sizes;
    for (int um = 50; um <= 1000; um += 50)
        sizes.push_back(Gap::micrometres(um));
    Gauge gauge;
    gauge.name = name;
    gauge.set = GaugeSet{GaugeKind::Leaves, sizes};
    return gauge;
}

Coupling aCoupling(AirframeId airframe, const std::string& name)
{
    Coupling coupling;
    coupling.airframe = airframe;
    coupling.name = name;
    coupling.circuit = Circuit::Aileron;
    return coupling;
}

GapInterval between(int entersUm, int refusesUm)
{
    return GapInterval{Gap::micrometres(entersUm), Gap::micrometres(refusesUm)};
}

namespace {

FittingId firstFitting(Records& records, CouplingId coupling)
{
    Fitting fitting;
    fitting.coupling = coupling;
    fitting.begins = dayOf(2026, 3, 1);
    fitting.kind = FittingKind::First;
    return must(records.add(fitting));
}

} // namespace

Hangar::Hangar(Records& records)
    : airframe{must(records.add(anAirframe("QX-17")))}, oren{must(records.add(aPerson("M. Oren")))},
      vale{must(records.add(aPerson("T. Vale")))}, setA{must(records.add(aLeafSet("A")))}
{
    Coupling left = aCoupling(airframe, "Left aileron");
    left.side = Side::Left;
    Coupling right = aCoupling(airframe, "Right aileron");
    right.side = Side::Right;
    leftAileron = must(records.add(left));
    rightAileron = must(records.add(right));
    leftFitting = firstFitting(records, leftAileron);
    rightFitting = firstFitting(records, rightAileron);
}

Reading Hangar::reading(GapInterval interval, Moment when) const
{
    Reading reading;
    reading.coupling = leftAileron;
    reading.fitting = leftFitting;
    reading.interval = interval;
    reading.gauge = setA;
    reading.person = oren;
    reading.when = when;
    reading.stamp.by = oren;
    return reading;
}

RiggingRecord Hangar::record(Moment begins) const
{
    RiggingRecord record;
    record.airframe = airframe;
    record.leader = oren;
    record.begins = begins;
    record.stamp.by = oren;
    return record;
}

void takeTwelve(TempStore& store, const Hangar& hangar)
{
    for (int i = 0; i < 12; ++i) {
        Reading reading = hangar.reading(between(i % 3 ? 500 : 450, i % 3 ? 550 : 500), store.clock().now());
        reading.purpose = Purpose::Baseline;
        must(store.records().add(reading, std::nullopt));
    }
}

} // namespace rig::test
