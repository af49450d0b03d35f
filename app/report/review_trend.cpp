#include "app/report/review_trend.h"

#include "core/rigging/counts_as.h"
#include "core/views/movement_maker.h"
#include "core/views/trend_maker.h"

namespace rig::engineer {

TrendSeries trendOf(const Source& source, const CouplingReview& coupling)
{
    const CouplingId id = coupling.coupling.id;
    std::vector<JudgedReading> readings;
    for (const JudgedReading& one : source.judged)
        if (one.reading.coupling == id && countsAs(one.reading.purpose).ownTrend)
            readings.push_back(one);
    if (readings.empty())
        return {};
    const AirframeFacts& facts = source.facts;
    const CouplingHistory history = historyOf(id, facts, facts.readingsOf(id));
    TrendSeries series =
        trendSeriesOf(coupling.coupling, history, readings, facts, source.numbers, source.review.period.to);
    drawMovement(coupling, source.review, series);
    return series;
}

} // namespace rig::engineer
