#pragma once

#include "tests/support/temp_store.h"

namespace rig::test {

Person aPerson(const std::string& name);
Airframe anAirframe(const std::string& registration);
Gauge aLeafSet(const std::string& name); // 0.05 to 1.00 in steps of 0.05
Coupling aCoupling(AirframeId airframe, const std::string& name);
GapInterval between(int entersUm, int refusesUm);

// The smallest hangar in which a rigging can be recorded: one airframe with two couplings, each with its
// first fitting since 1 March 2026, a leaf set, two people.
struct Hangar
{
    explicit Hangar(Records& records);

    Reading reading(GapInterval interval,
                    Moment when) const; // locked, of the left aileron, by Oren with set A
    RiggingRecord record(Moment begins) const;

    AirframeId airframe;
    PersonId oren;
    PersonId vale;
    GaugeId setA;
    CouplingId leftAileron;
    CouplingId rightAileron;
    FittingId leftFitting;
    FittingId rightFitting;
};

// Twelve readings of the left aileron's baseline, now.
void takeTwelve(TempStore& store, const Hangar& hangar);

} // namespace rig::test
