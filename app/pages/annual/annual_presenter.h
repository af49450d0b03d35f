#pragma once

#include "app/pages/annual/annual_view.h"
#include "core/result.h"
#include "core/review/airframe_facts.h"
#include "core/store/records.h"

namespace rig {

class Clock;

// Facts -> AnnualView: what a period of one airframe says, what stands out first.
class AnnualPresenter
{
public:
    // Both must outlive this object.
    AnnualPresenter(const Records& records, const Clock& clock) : m_records{records}, m_clock{clock} {}

    // Of the period chosen; of the first that holds anything when there is none, or it is no longer offered.
    Result<AnnualView> view(AirframeId airframe, const std::optional<PeriodOffer>& chosen) const;

    // What the report is made of, without what stands in its records; and that.
    Result<AirframeFacts> facts(AirframeId airframe) const;
    Result<RecordContent> content(RecordId record) const { return m_records.content(record); }

    // See Records::evidence().
    Result<FileEvidence> evidence(const std::vector<std::string>& ends) const
    {
        return m_records.evidence(ends);
    }

private:
    const Records& m_records;
    const Clock& m_clock;
};

} // namespace rig
