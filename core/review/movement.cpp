#include "core/review/movement.h"

#include "core/baseline/gap_numbers.h"

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

using numbers::Chart;
using numbers::Interval;

std::vector<double> scoresOf(std::span<const LaterReading> readings, bool own)
{
    std::vector<double> scores;
    for (const LaterReading& one : readings)
        scores.push_back(*one.score - (own ? one.shared : 0));
    return scores;
}

std::vector<Interval> intervalsOf(std::span<const LaterReading> readings)
{
    std::vector<Interval> intervals;
    for (const LaterReading& one : readings)
        intervals.push_back(inNumbers(one.reading.interval));
    return intervals;
}

// The last time in the period that the EWMA was beyond its limit.
std::optional<DriftFlag> driftFlagOf(const Chart& chart, double limit, std::size_t periodFrom)
{
    const std::vector<double>& ewma = chart.ewma;
    std::size_t last = ewma.size();
    while (last > periodFrom && std::abs(ewma[last - 1]) <= limit)
        --last;
    if (last == periodFrom)
        return std::nullopt;
    DriftFlag flag;
    flag.isRaised = last == ewma.size();
    flag.signal = last - 1;
    flag.isUp = ewma[flag.signal] > 0;
    const double side = flag.isUp ? 1 : -1;
    while (flag.signal > 0 && side * ewma[flag.signal - 1] > limit)
        --flag.signal;
    const std::vector<double>& cusum = flag.isUp ? chart.cusumUp : chart.cusumDown;
    flag.onset = flag.signal;
    while (flag.onset > 0 && cusum[flag.onset - 1] > 0)
        --flag.onset;
    return flag;
}

std::optional<ScatterNow> scatterOf(const FittingHistory& fitting, std::span<const LaterReading> readings)
{
    const std::size_t count = std::min(readings.size(), kReadingsForScatterNow);
    const auto now =
        numbers::IntervalPosterior::of(numbers::intervalSetOf(intervalsOf(readings.last(count))));
    if (count < static_cast<std::size_t>(kReadingsForBand) || !now || !fitting.baseline.band())
        return std::nullopt;
    ScatterNow scatter;
    scatter.readings = static_cast<int>(count);
    scatter.now = now->meanSigma();
    scatter.baseline = fitting.baseline.band()->scatter;
    scatter.chanceLarger = now->sigmaExceeds(*fitting.baseline.posterior());
    scatter.from = readings.size() - count;
    return scatter;
}

class MovementMaker
{
public:
    MovementMaker(const CouplingReadings& all, const FittingHistory& fitting, const ReviewPeriod& period,
                  double riggingsToCome)
        : m_all{all}, m_fitting{fitting}, m_period{period}, m_riggingsToCome{riggingsToCome}
    {
    }

    FittingMovement make()
    {
        for (const LaterReading& one : m_all.readings)
            if (one.reading.fitting == m_fitting.fitting.id && one.score && !one.inDoubt)
                m_movement.readings.push_back(one);
        const auto isBefore = [this](const LaterReading& one) {
            return one.reading.when.localDay() < m_period.from;
        };
        m_periodFrom = static_cast<std::size_t>(std::ranges::count_if(m_movement.readings, isBefore));
        addCharts();
        addLine();
        addChange();
        m_movement.scatter =
            scatterOf(m_fitting, std::span<const LaterReading>{m_movement.readings}.subspan(m_periodFrom));
        if (m_movement.scatter)
            m_movement.scatter->from += m_periodFrom;
        return std::move(m_movement);
    }

private:
    void addCharts()
    {
        const auto limits = numbers::chartLimitsFor(m_fitting.baseline.readings());
        if (!limits || m_movement.readings.empty())
            return;
        m_movement.limits = *limits;
        m_movement.chart = numbers::chartOf(scoresOf(m_movement.readings, false), *limits);
        m_movement.ownChart = numbers::chartOf(scoresOf(m_movement.readings, true), *limits);
        m_movement.drift = driftFlagOf(*m_movement.ownChart, limits->ewmaLimit(), m_periodFrom);
        const auto asTheyAre = driftFlagOf(*m_movement.chart, limits->ewmaLimit(), m_periodFrom);
        m_movement.sharedOnly = asTheyAre && !m_movement.drift;
    }

    std::optional<numbers::IntervalTrend> lineFrom(std::size_t first) const
    {
        const auto readings = std::span<const LaterReading>{m_movement.readings}.subspan(first);
        std::vector<double> riggings;
        for (const LaterReading& one : readings)
            riggings.push_back(one.rigging);
        auto line = numbers::intervalTrendOf(riggings, intervalsOf(readings), kDriftUnit);
        return line && line->isShown() ? line : std::nullopt;
    }

    void addLine()
    {
        const auto& drift = m_movement.drift;
        m_movement.lineFrom = drift && drift->isRaised ? drift->onset : m_periodFrom;
        m_movement.line = lineFrom(m_movement.lineFrom);
        if (!m_movement.line && m_movement.lineFrom > m_periodFrom) {
            m_movement.lineFrom = m_periodFrom; // too few since the onset
            m_movement.line = lineFrom(m_periodFrom);
        }
        if (!m_movement.line || !m_period.isAnnualToCome() || !m_fitting.baseline.band())
            return;
        DriftForecast forecast;
        forecast.day = *m_period.annual;
        forecast.riggings = std::max(1.0, m_riggingsToCome);
        forecast.rigging = m_movement.readings.back().rigging + forecast.riggings;
        const BandEdges& outer = m_fitting.baseline.band()->outer;
        const Interval band{outer.lower, outer.upper};
        const auto reading = m_movement.line->chanceReadingOutside(band, forecast.rigging);
        const auto mean = m_movement.line->chanceLineOutside(band, forecast.rigging);
        if (!reading || !mean)
            return;
        forecast.chanceOutside = *reading;
        forecast.chanceLineOutside = *mean;
        m_movement.forecast = forecast;
    }

    void addChange()
    {
        const std::size_t all = m_movement.readings.size();
        m_movement.changeFrom =
            std::max(m_periodFrom, all > kReadingsForStep ? all - kReadingsForStep : std::size_t{0});
        m_movement.change = numbers::changePointOf(
            intervalsOf(std::span<const LaterReading>{m_movement.readings}.subspan(m_movement.changeFrom)));
    }

    const CouplingReadings& m_all;
    const FittingHistory& m_fitting;
    const ReviewPeriod& m_period;
    double m_riggingsToCome;
    std::size_t m_periodFrom = 0; // index of the period's first reading
    FittingMovement m_movement;
};

} // namespace

bool ScatterNow::hasGrown() const
{
    return chanceLarger >= kChanceForScatter && now >= kRatioForScatter * baseline;
}

bool ScatterNow::hasShrunk() const
{
    return 1 - chanceLarger >= kChanceForScatter && baseline >= kRatioForScatter * now;
}

bool FittingMovement::hasStep() const
{
    return change && change->p <= kStepP;
}

std::optional<double> FittingMovement::stepAt() const
{
    if (!change)
        return std::nullopt;
    return readings[changeFrom + static_cast<std::size_t>(change->splitAfter)].rigging;
}

std::optional<FittingMovement> movementOf(const CouplingReadings& all, const ReviewPeriod& period,
                                          double riggingsToCome)
{
    const FittingHistory* fitting = all.history.on(period.to);
    if (!fitting)
        return std::nullopt;
    return MovementMaker{all, *fitting, period, riggingsToCome}.make();
}

double riggingsToCome(const RiggingNumbers& numbers, Day today, Day until)
{
    constexpr double kYear = 365;
    constexpr double kShortest = 30;
    const std::optional<Day> first = numbers.firstDay();
    if (until <= today || !first)
        return 0;
    const double age = std::clamp(static_cast<double>((today - *first).count()), kShortest, kYear);
    const Day from = today - std::chrono::days{static_cast<int>(age)};
    return numbers.within(from + std::chrono::days{1}, today) / age *
           static_cast<double>((until - today).count());
}

} // namespace rig
