#include "app/report/review_trend.h"

#include "app/report/movement_series.h"
#include "app/wording/trends_page_words.h"

#include <algorithm>

namespace rig::engineer {

namespace {

class SeriesMaker
{
public:
    SeriesMaker(const Source& source, const CouplingReview& coupling) : m_source{source}, m_coupling{coupling}
    {
    }

    TrendSeries make()
    {
        for (const JudgedReading& one : m_source.judged)
            if (one.reading.coupling == m_coupling.coupling.id &&
                one.reading.purpose != Purpose::Demonstration)
                m_readings.push_back(&one);
        if (m_readings.empty())
            return {};
        m_series.name = m_coupling.coupling.name;
        if (m_source.review.period.annual)
            m_series.annualDue = noonOf(*m_source.review.period.annual);
        addFittings();
        addEvents();
        for (const JudgedReading* one : m_readings)
            m_series.readings.push_back(drawn(*one));
        placeBetweenRiggings();
        drawMovement(m_coupling, m_source.review, m_series);
        return std::move(m_series);
    }

private:
    TrendReading drawn(const JudgedReading& one) const
    {
        TrendReading reading;
        reading.interval = one.reading.interval;
        reading.when = one.reading.when;
        reading.verdict = one.judgement.verdict;
        reading.state = one.reading.state;
        reading.ofBaseline = one.ofBaseline;
        reading.setAside = one.superseded || one.leftOut;
        reading.inDoubt = one.inDoubt;
        return reading;
    }

    // The first second of its day where it was read: whatever was read on that day came after it.
    Moment beginOf(const Fitting& fitting) const
    {
        const auto first = std::ranges::find(m_readings, fitting.id,
                                             [](const JudgedReading* one) { return one->reading.fitting; });
        const std::int32_t offset = first == m_readings.end() ? 0 : (*first)->reading.when.offsetSeconds;
        return {wallSeconds(fitting.begins) - offset, offset};
    }

    void addFittings()
    {
        const AirframeFacts& facts = m_source.facts;
        const CouplingId id = m_coupling.coupling.id;
        const CouplingHistory history = historyOf(id, facts.fittings, facts.readingsOf(id), facts.exclusions,
                                                  facts.frozenBaselines, facts.gauges, facts.gaugeChecks);
        for (const FittingHistory& one : history.fittings)
            if (one.fitting.begins <= m_source.review.period.to)
                m_series.fittings.push_back(
                    {beginOf(one.fitting), 0, one.baseline.band(), one.fitting.reason});
    }

    void addEvents()
    {
        for (const Event& event : m_source.facts.events)
            if (event.day <= m_source.review.period.to &&
                (!event.coupling || *event.coupling == m_coupling.coupling.id))
                m_series.events.push_back(
                    {noonOf(event.day), 0,
                     TrendsPageWords::event(event.kind, QString::fromStdString(event.note)).toStdString(),
                     event.kind == EventKind::Annual});
        std::ranges::stable_sort(m_series.events, {}, &TrendEvent::when);
    }

    // What has no rigging number of its own stands between the numbers: fittings first on their day, then
    // what was done, then what was read.
    void placeBetweenRiggings()
    {
        std::vector<std::pair<std::int64_t, double*>> places;
        for (TrendFitting& fitting : m_series.fittings)
            places.emplace_back(wallSeconds(fitting.begins.localDay()), &fitting.rigging);
        for (TrendEvent& event : m_series.events)
            places.emplace_back(wallSeconds(event.when.localDay()), &event.rigging);
        for (std::size_t i = 0; i < m_readings.size(); ++i) {
            if (m_readings[i]->rigging)
                m_series.readings[i].rigging = *m_readings[i]->rigging;
            else
                places.emplace_back(wallSeconds(m_readings[i]->reading.when), &m_series.readings[i].rigging);
        }
        std::ranges::stable_sort(places, {}, [](const auto& place) { return place.first; });
        std::vector<std::int64_t> times;
        for (const auto& place : places)
            times.push_back(place.first);
        const std::vector<double> between = m_source.numbers.between(times);
        for (std::size_t i = 0; i < places.size(); ++i)
            *places[i].second = between[i];
    }

    const Source& m_source;
    const CouplingReview& m_coupling;
    std::vector<const JudgedReading*> m_readings; // oldest first
    TrendSeries m_series;
};

} // namespace

TrendSeries trendOf(const Source& source, const CouplingReview& coupling)
{
    return SeriesMaker{source, coupling}.make();
}

} // namespace rig::engineer
