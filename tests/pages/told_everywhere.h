#pragma once

#include "core/review/coupling_standing.h"
#include "tests/support/temp_store.h"

#include <QString>

#include <map>
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

// What is said in words of the left aileron, by place. It is read in the record that is open, and some
// question that is about it is open too.
std::map<std::string, QString> saidOfLeftAileron(TempStore& store, AirframeId airframe);

} // namespace rig::test
