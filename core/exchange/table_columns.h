#pragma once

#include "core/airframe/airframe.h"
#include "core/airframe/coupling.h"
#include "core/airframe/gauge.h"
#include "core/airframe/person.h"
#include "core/exchange/fields.h"

#include <string>
#include <vector>

// What stands in the tables that go out of a file and come into one, in the order in which it is written.
namespace rig {

const std::vector<std::string>& couplingColumns(); // of a coupling, then of one of its fittings
const std::vector<std::string>& personColumns();
const std::vector<std::string>& gaugeColumns(); // of a gauge, then of one of its checks
const std::vector<std::string>& eventColumns();
const std::vector<std::string>& jointPlayColumns();

Fields columnsOf(const std::string& registration, const Coupling& coupling);
Fields columnsOf(const Fitting& fitting);
Fields columnsOf(const Person& person);
Fields columnsOf(const Gauge& gauge);
Fields columnsOf(const GaugeCheck& check);

} // namespace rig
