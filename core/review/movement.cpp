#include "core/review/movement.h"

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

using numbers::MovementKind;

// The last time in the period that the EWMA was beyond its limit.
std::optional<DriftFlag> driftFlagOf(const numbers::Chart& chart, double limit, std::size_t periodFrom)
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
    return flag;
}

ChangeKind namedKind(const numbers::KindChances& chances)
{
    if (chances.step >= numbers::kKindNamed)
        return ChangeKind::Step;
    return chances.drift >= numbers::kKindNamed ? ChangeKind::Drift : ChangeKind::StepOrDrift;
}

// The changes of one path in the words of the review.
class ChangeTeller
{
public:
    ChangeTeller(const numbers::Movement& path, const std::vector<LaterReading>& readings,
                 std::size_t periodFrom)
        : m_path{path}, m_readings{readings}, m_periodFrom{periodFrom}
    {
    }

    std::vector<PathChangeTold> told() const
    {
        std::vector<PathChangeTold> changes{changeOf(m_path.first, 0)};
        if (m_path.second.moved() < numbers::kMovedWithChart)
            return changes;
        PathChangeTold second = changeOf(m_path.second, 1);
        if (hasStopped(changes.front(), second)) {
            changes.front().endedAt = second.at;
            changes.front().endedOn = second.day;
            changes.front().isOfPeriod = second.isOfPeriod && reachesPeriod(second.atUpper);
            return changes;
        }
        if (second.rate)
            second.rate = rateNowOf(m_path);
        changes.push_back(std::move(second));
        return changes;
    }

private:
    PathChangeTold changeOf(const numbers::KindChances& chances, std::size_t change) const
    {
        PathChangeTold told;
        told.kind = namedKind(chances);
        told.chance = chances.moved();
        if (told.kind != ChangeKind::Drift)
            told.step = sizeOf(m_path, MovementKind::Step, change);
        if (told.kind != ChangeKind::Step)
            told.rate = sizeOf(m_path, MovementKind::Drift, change);
        const auto asStep = placeOf(m_path, MovementKind::Step, change);
        const auto asDrift = placeOf(m_path, MovementKind::Drift, change);
        const bool isLikelierStep = asStep && (!asDrift || chances.step >= chances.drift);
        const numbers::MovementPlace& likelier = isLikelierStep ? *asStep : *asDrift;
        told.at = likelier.mode;
        told.atLower = likelier.lower();
        told.atUpper = likelier.upper();
        if (told.kind == ChangeKind::StepOrDrift && asStep && asDrift) {
            told.atLower = std::min(asStep->lower(), asDrift->lower());
            told.atUpper = std::max(asStep->upper(), asDrift->upper());
        }
        told.day = dayAt(told.at);
        told.dayLower = dayAt(told.atLower);
        told.dayUpper = dayAt(told.atUpper);
        told.isOfPeriod =
            told.kind == ChangeKind::Step ? reachesPeriod(told.atUpper) : m_periodFrom < m_readings.size();
        return told;
    }

    // A drift whose rate after a further bend may as well be none.
    bool hasStopped(const PathChangeTold& first, const PathChangeTold& second) const
    {
        if (first.kind != ChangeKind::Drift || second.kind != ChangeKind::Drift)
            return false;
        const auto now = rateNowOf(m_path);
        return now && now->interval.lower <= 0 && now->interval.upper >= 0;
    }

    bool reachesPeriod(double rigging) const
    {
        return m_periodFrom < m_readings.size() && rigging >= m_readings[m_periodFrom].rigging;
    }

    Day dayAt(double rigging) const
    {
        const auto at = std::ranges::lower_bound(m_readings, rigging, {}, &LaterReading::rigging);
        return (at == m_readings.end() ? m_readings.back() : *at).reading.when.localDay();
    }

    const numbers::Movement& m_path;
    const std::vector<LaterReading>& m_readings;
    std::size_t m_periodFrom;
};

class MovementMaker
{
public:
    MovementMaker(const CouplingReadings& all, const FittingHistory& fitting, const SeasonReview& season,
                  const ReviewPeriod& period, std::optional<double> riggingsToCome)
        : m_all{all}, m_fitting{fitting}, m_season{season}, m_period{period}, m_riggingsToCome{riggingsToCome}
    {
    }

    FittingMovement make()
    {
        for (const LaterReading& one : m_all.readings)
            if (one.reading.fitting == m_fitting.fitting.id && one.score && !one.inDoubt)
                m_movement.readings.push_back(one);
        std::ranges::stable_sort(m_movement.readings, {}, &LaterReading::rigging);
        const auto isBefore = [this](const LaterReading& one) {
            return one.reading.when.localDay() < m_period.from;
        };
        m_movement.periodFrom =
            static_cast<std::size_t>(std::ranges::count_if(m_movement.readings, isBefore));
        addChart();
        const auto told = m_season.fittings.find(m_fitting.fitting.id);
        if (told == m_season.fittings.end() ||
            told->second.movement.riggings < numbers::kRiggingsBeforeChange + numbers::kRiggingsAfterChange)
            return std::move(m_movement);
        m_movement.path = told->second.movement;
        if (told->second.isTold())
            m_movement.changes =
                ChangeTeller{*m_movement.path, m_movement.readings, m_movement.periodFrom}.told();
        addForecast();
        if (told->second.scatter)
            addScatter(*told->second.scatter);
        addExcursion();
        addSingles();
        return std::move(m_movement);
    }

private:
    void addChart()
    {
        const auto limits = numbers::chartLimitsFor(m_fitting.baseline.readings());
        if (!limits || m_movement.readings.empty())
            return;
        std::vector<double> scores;
        for (const LaterReading& one : m_movement.readings)
            scores.push_back(*one.score - one.notItsOwn() / m_fitting.baseline.band()->scatter);
        m_movement.limits = *limits;
        m_movement.chart = numbers::chartOf(scores, *limits);
        m_movement.flag = driftFlagOf(*m_movement.chart, limits->ewmaLimit(), m_movement.periodFrom);
    }

    void addForecast()
    {
        if (!m_period.isAnnualToCome() || !m_riggingsToCome)
            return;
        AnnualForecast forecast;
        forecast.day = *m_period.annual;
        forecast.riggings = std::max(1.0, *m_riggingsToCome);
        forecast.rigging = m_movement.readings.back().rigging + forecast.riggings;
        const BandEdges& outer = m_fitting.baseline.band()->outer;
        const auto at = forecastOf(*m_movement.path, forecast.rigging, {outer.lower, outer.upper});
        forecast.chanceOutside = at.chanceOutside;
        forecast.chanceMeanOutside = at.chanceMeanOutside;
        m_movement.forecast = forecast;
    }

    // Of readings of the period alone, as far as there are enough of them.
    void addScatter(const numbers::ScatterChange& change)
    {
        const std::size_t inPeriod = m_movement.readings.size() - m_movement.periodFrom;
        if (inPeriod < numbers::kLeastReadingsNow)
            return;
        const int fittings = static_cast<int>(m_season.fittings.size());
        m_movement.scatter = ScatterNow{static_cast<int>(change.readingsNow),
                                        change.now,
                                        change.before,
                                        change.chanceGrown,
                                        change.hasGrown(fittings),
                                        change.hasShrunk(fittings)};
    }

    void addExcursion()
    {
        for (std::size_t i = m_movement.periodFrom; i < m_movement.readings.size(); ++i) {
            const auto& path = m_movement.readings[i].path;
            const double away = path ? *path - m_fitting.baseline.band()->median : 0;
            if (path && std::abs(away) >= std::abs(m_movement.excursion.value_or(0)))
                m_movement.excursion = away;
        }
    }

    void addSingles()
    {
        for (std::size_t i = m_movement.periodFrom; i < m_movement.readings.size(); ++i) {
            const auto single = m_season.singles.find(m_movement.readings[i].reading.id);
            if (single != m_season.singles.end())
                m_movement.singles.push_back({i, single->second.away, single->second.explainedBy});
        }
        std::ranges::stable_sort(m_movement.singles, std::ranges::greater{},
                                 [](const SingleTold& one) { return std::abs(one.away); });
    }

    const CouplingReadings& m_all;
    const FittingHistory& m_fitting;
    const SeasonReview& m_season;
    const ReviewPeriod& m_period;
    std::optional<double> m_riggingsToCome;
    FittingMovement m_movement;
};

} // namespace

const PathChangeTold* FittingMovement::told() const
{
    for (auto change = changes.rbegin(); change != changes.rend(); ++change)
        if (change->isOfPeriod)
            return &*change;
    // The gap has not come back: it stands beside its band for as long as this fitting does.
    const bool wasRead = periodFrom < readings.size();
    return wasRead && !changes.empty() && !changes.back().endedAt ? &changes.back() : nullptr;
}

std::optional<FittingMovement> movementOf(const CouplingReadings& all, const SeasonReview& season,
                                          const ReviewPeriod& period, std::optional<double> riggingsToCome)
{
    const FittingHistory* fitting = all.history.on(period.to);
    if (!fitting)
        return std::nullopt;
    return MovementMaker{all, *fitting, season, period, riggingsToCome}.make();
}

std::optional<double> riggingsToCome(const RiggingNumbers& numbers, Day today, Day until)
{
    constexpr int kYear = 365;
    if (until <= today)
        return 0;
    const std::optional<Day> first = numbers.firstDay();
    const int age = first ? std::min(static_cast<int>((today - *first).count()), kYear) : 0;
    if (age < kDaysForPace)
        return std::nullopt;
    const Day from = today - std::chrono::days{age};
    if (numbers.within(from, today) < kRiggingsForPace)
        return std::nullopt;
    return static_cast<double>(numbers.within(from + std::chrono::days{1}, today)) / age *
           static_cast<double>((until - today).count());
}

} // namespace rig
