#pragma once

#include "app/pages/trends/trends_view.h"
#include "core/result.h"

namespace rig {

class Clock;
class Records;

// Facts -> TrendsView: every coupling's whole history with numbers, verdicts and what can be said of it now.
class TrendsPresenter
{
public:
    // Both must outlive this object.
    TrendsPresenter(const Records& records, const Clock& clock);

    // Movement is looked at over the period chosen; without one, over the first offered that holds anything.
    Result<TrendsView> view(AirframeId airframe, const std::optional<PeriodOffer>& chosen = {}) const;

private:
    const Records& m_records;
    const Clock& m_clock;
};

} // namespace rig
