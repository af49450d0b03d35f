#pragma once

#include "core/review/coupling_standing.h"
#include "tests/support/temp_store.h"

#include <string>
#include <vector>

namespace rig::test {

// What one place says of one coupling.
struct Told
{
    std::string place;
    std::string coupling;
    Says says = Says::NotRead;
    bool looksBack = true; // over the period too: how it moves, what befell it
};

// From the lists, the tables and the papers of one airframe, each as its page or its reader gets it.
std::vector<Told> toldEverywhere(TempStore& store, AirframeId airframe);

// Each two places that do not say the same of a coupling, and each tick beside something that is unresolved.
std::vector<std::string> disagreements(const std::vector<Told>& all);

} // namespace rig::test
