#pragma once

#include "app/pages/learn/learn_view.h"
#include "core/result.h"
#include "core/store/records.h"

namespace rig {

// Practising to measure, and the crossed study: readings that count for nothing else. Knows no widget.
class MeasuringPresenter
{
public:
    // Both outlive it.
    MeasuringPresenter(Records& records, const Clock& clock) : m_records{records}, m_clock{clock} {}

    Result<MeasuringView> measuring(AirframeId airframe, PersonId person) const;
    Result<StudyView> study(AirframeId airframe) const;

    Outcome keep(PersonId person, CouplingId coupling, GaugeId gauge, const GaugeReading& reading);
    Outcome share(PersonId person, bool isShared);

    // At least two of each. Its order is drawn, and does not follow from anything that is known.
    Outcome begin(AirframeId airframe, PersonId by, const std::vector<CouplingId>& couplings,
                  const std::vector<PersonId>& persons, int repeats);
    Outcome keep(const StudyPlace& place, GaugeId gauge, const GaugeReading& reading);

    Outcome takeBack(const PracticeReading& reading, const std::string& reason);

private:
    Outcome keep(PracticeReading reading);

    Records& m_records;
    const Clock& m_clock;
};

} // namespace rig
