#pragma once

#include "core/store/records.h"
#include "core/store/store_file.h"

namespace rig {

// The last guard before a fact is kept; the screens check earlier and say it in sentences. Each gives
// FactRefused with the reason, or whatever reading the file met.
class FactChecks
{
public:
    FactChecks(StoreFile::Connection& connection, Moment now) : m_connection{connection}, m_now{now} {}

    Outcome check(const Airframe& airframe) const;
    Outcome check(const Person& person) const;
    Outcome check(const Gauge& gauge) const;
    Outcome check(const GaugeCheck& check) const;
    Outcome check(const Coupling& coupling) const;
    Outcome check(const Fitting& fitting) const;
    Outcome check(const Event& event) const;
    Outcome check(const RiggingRecord& record) const;
    Outcome check(const Check& check) const;
    Outcome check(const Reading& reading) const;
    Outcome check(const Exclusion& exclusion) const;
    Outcome check(const FrozenBaseline& baseline) const;
    Outcome check(const Interruption& interruption) const;
    Outcome check(const RecordClose& close) const;
    Outcome check(const Surface& surface) const;
    Outcome check(const SurfaceCheck& check) const;
    Outcome check(const SurfaceMeasure& measure) const;
    Outcome check(const RecordTick& tick) const;
    Outcome check(const Question& question) const;
    Outcome check(const Resolution& resolution) const;

private:
    // `id` names the first version of something in this table.
    Outcome known(const char* table, const IdBytes& id) const;
    Outcome knownIfAny(const char* table, const IdBytes& id) const;
    Outcome unused(const char* table, const char* column, const std::string& name, const IdBytes& own,
                   const char* within = nullptr, const IdBytes& withinId = {}) const;
    Outcome sameAirframe(const RecordId& record, const CouplingId& coupling) const;
    Outcome sameAirframe(const RecordId& record, const SurfaceId& surface) const;
    Outcome ofAirframe(const char* table, const IdBytes& id, const AirframeId& airframe) const;
    Outcome notYetToCome(Moment when) const;
    Outcome open(const RecordId& record) const;
    Outcome correctable(const Reading& reading) const;

    StoreFile::Connection& m_connection;
    Moment m_now;
};

} // namespace rig
