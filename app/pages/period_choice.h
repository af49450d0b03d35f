#pragma once

#include "core/review/review_period.h"

#include <optional>

namespace rig {

// The period that somebody chose to look back on, of one airframe: one choice for every page that looks back.
class PeriodChoice
{
public:
    void choose(AirframeId airframe, const PeriodOffer& offer)
    {
        m_airframe = airframe;
        m_offer = offer;
    }
    // Empty: nobody chose one for this airframe.
    std::optional<PeriodOffer> of(AirframeId airframe) const
    {
        return m_airframe == airframe ? m_offer : std::nullopt;
    }

private:
    std::optional<AirframeId> m_airframe;
    std::optional<PeriodOffer> m_offer;
};

} // namespace rig
