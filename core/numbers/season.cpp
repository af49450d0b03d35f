#include "core/numbers/season.h"

#include "core/numbers/distributions.h"
#include "core/numbers/drift.h"
#include "core/numbers/interval_set.h"
#include "core/numbers/median.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace rig::numbers {
namespace {

constexpr double kSettledOffset = 1e-4; // mm
constexpr int kMostTurns = 12;          // of either depth
constexpr double kOutsideTail = 0.00135;
constexpr double kMostScore = 4;         // as in section C
constexpr double kChangeEstimated = 0.5; // the chance from which on a change is estimated beside the offsets
constexpr double kLeastTame = 1e-6;

// What is taken off readings, or put back.
struct HandShifts
{
    std::map<int, double> persons;
    std::map<int, double> gauges;

    double of(const SeasonReading& reading) const { return person(reading) + gauge(reading); }
    double person(const SeasonReading& reading) const { return at(persons, reading.person); }
    double gauge(const SeasonReading& reading) const { return at(gauges, reading.gauge); }

private:
    static double at(const std::map<int, double>& shifts, int label)
    {
        const auto found = shifts.find(label);
        return found == shifts.end() ? 0 : found->second;
    }
};

HandShifts shiftsOf(const HandOffsets& offsets, bool namedOnly)
{
    HandShifts shifts;
    for (const HandOffset& person : offsets.persons.levels)
        if (!namedOnly || person.isNamed())
            shifts.persons[person.label] = person.estimate;
    for (const HandOffset& gauge : offsets.gauges.levels)
        if (!namedOnly || gauge.isNamed())
            shifts.gauges[gauge.label] = gauge.estimate;
    return shifts;
}

double farthestBetween(const std::map<int, double>& a, const std::map<int, double>& b)
{
    double farthest = 0;
    for (const auto& [label, shift] : a) {
        const auto other = b.find(label);
        farthest = std::max(farthest, std::abs(shift - (other == b.end() ? 0 : other->second)));
    }
    return farthest;
}

double farthestBetween(const HandShifts& a, const HandShifts& b)
{
    return std::max({farthestBetween(a.persons, b.persons), farthestBetween(b.persons, a.persons),
                     farthestBetween(a.gauges, b.gauges), farthestBetween(b.gauges, a.gauges)});
}

Interval less(const Interval& interval, double shift)
{
    return {interval.lower - shift, interval.upper - shift};
}

// One fitting's readings in order, and the path found for them last.
struct FittingRow
{
    int label = 0;
    std::vector<std::size_t> first;  // places of the readings that tell of the joint: baseline, then riggings
    std::vector<std::size_t> second; // and of further ones
    std::optional<Movement> movement;
    std::optional<ScatterChange> scatter;
    double widened = 1; // scatters of the last readings, where the scatter grew

    const MovementWay& way() const { return movement->likeliestWay(); }
    double scattersAt(std::size_t place) const
    {
        return place + (scatter ? scatter->readingsNow : 0) >= first.size() ? widened : 1;
    }
    std::vector<double> means; // of the path at each of `first`
    std::vector<double> secondMeans;
};

class SeasonSearch
{
public:
    explicit SeasonSearch(std::span<const SeasonReading> readings) : m_readings{readings}
    {
        std::map<int, FittingRow> rows;
        for (std::size_t i = 0; i < readings.size(); ++i) {
            FittingRow& row = rows[readings[i].fitting];
            row.label = readings[i].fitting;
            (readings[i].isSecond ? row.second : row.first).push_back(i);
        }
        for (auto& [label, row] : rows) {
            for (auto* places : {&row.first, &row.second})
                std::ranges::stable_sort(*places, {},
                                         [&](std::size_t i) { return std::max(0.0, readings[i].rigging); });
            m_rows.push_back(std::move(row));
        }
    }

    std::optional<Season> found()
    {
        followPaths(MovementDepth::Steady); // before anything is known of persons and gauges
        if (m_rows.empty())
            return std::nullopt;
        Season season;
        compareHands(season);
        settle(season, MovementDepth::Quick);
        settle(season, MovementDepth::Full);
        if (findsWiderScatter())
            settle(season, MovementDepth::Full);
        tellFittings(season);
        tellDays(season);
        return season;
    }

private:
    void followPaths(MovementDepth depth)
    {
        for (FittingRow& row : m_rows) {
            std::vector<SeriesReading> series;
            for (std::size_t k = 0; k < row.first.size(); ++k) {
                const SeasonReading& reading = m_readings[row.first[k]];
                series.push_back(
                    {less(reading.interval, m_shifts.of(reading)), reading.rigging, row.scattersAt(k)});
            }
            row.movement = movementOf(series, depth);
            if (!row.movement)
                continue;
            row.means = row.movement->meansAt(riggingsOf(row.first));
            row.secondMeans = row.movement->meansAt(riggingsOf(row.second));
        }
        std::erase_if(m_rows, [](const FittingRow& row) { return !row.movement; });
    }

    std::vector<double> riggingsOf(const std::vector<std::size_t>& places) const
    {
        std::vector<double> riggings;
        for (const std::size_t i : places)
            riggings.push_back(std::max(0.0, m_readings[i].rigging));
        return riggings;
    }

    void settle(Season& season, MovementDepth depth)
    {
        season.hasSettled = false;
        for (int i = 0; i < kMostTurns && !season.hasSettled; ++i) {
            followPaths(depth);
            const HandShifts before = m_shifts;
            compareHands(season);
            season.hasSettled = farthestBetween(before, m_shifts) < kSettledOffset;
        }
    }

    void compareHands(Season& season)
    {
        ++season.turns;
        std::vector<HandReading> left;
        for (std::size_t coupling = 0; coupling < m_rows.size(); ++coupling)
            addLeft(left, coupling);
        if (const auto offsets = handOffsetsOf(left)) {
            season.offsets = *offsets;
            m_shifts = shiftsOf(*offsets, false);
        }
    }

    void addLeft(std::vector<HandReading>& left, std::size_t coupling) const
    {
        const FittingRow& row = m_rows[coupling];
        const auto add = [&](const std::vector<std::size_t>& places, const std::vector<double>& means) {
            for (std::size_t i = 0; i < places.size(); ++i)
                if (const SeasonReading& reading = m_readings[places[i]]; reading.interval.isClosed())
                    left.push_back(
                        leftOf(reading, means[i], coupling, row.scattersAt(&places == &row.first ? i : 0)));
        };
        add(row.first, row.means);
        add(row.second, row.secondMeans);
    }

    HandReading leftOf(const SeasonReading& reading, double mean, std::size_t coupling, double scatters) const
    {
        const FittingRow& row = m_rows[coupling];
        const double sigma = row.way().sigma * scatters;
        const double width = reading.interval.width();
        const double tame = pseudoReadingOf(less(reading.interval, m_shifts.of(reading)), mean, sigma).tame;
        HandReading left;
        left.left = reading.interval.place() - mean;
        left.variance = (sigma * sigma + width * width / 12) / std::max(kLeastTame, tame);
        left.coupling = coupling;
        left.person = reading.person;
        left.gauge = reading.gauge;
        left.day = reading.day;
        if (row.movement->first.moved() >= kChangeEstimated)
            left.shape = {row.way().changes[0].shapeAt(reading.rigging),
                          row.way().changes[1].shapeAt(reading.rigging)};
        return left;
    }

    // Readings that came to scatter more would pass for a movement if they counted like the others: where
    // they did, their sigma is taken so many times wider.
    bool findsWiderScatter()
    {
        bool isAny = false;
        for (FittingRow& row : m_rows) {
            row.scatter = scatterOf(row);
            if (!row.scatter || !row.scatter->hasGrown(static_cast<int>(m_rows.size())))
                continue;
            row.widened = row.scatter->ratio();
            isAny = true;
        }
        return isAny;
    }

    void tellFittings(Season& season) const
    {
        const HandShifts named = shiftsOf(season.offsets, true);
        for (const FittingRow& row : m_rows) {
            SeasonFitting fitting;
            fitting.fitting = row.label;
            fitting.movement = *row.movement;
            const double moved = row.movement->first.moved();
            fitting.chartIsBeyond = moved >= kMovedWithChart && moved < kMovedAlone && isChartBeyond(row);
            fitting.scatter = row.scatter;
            fitting.singles = singlesOf(row, named);
            season.fittings.push_back(std::move(fitting));
        }
    }

    bool isChartBeyond(const FittingRow& row) const
    {
        std::vector<Interval> baseline;
        std::vector<Interval> later;
        for (const std::size_t i : row.first)
            (m_readings[i].rigging > 0 ? later : baseline)
                .push_back(less(m_readings[i].interval, m_shifts.of(m_readings[i])));
        const auto posterior = IntervalPosterior::of(intervalSetOf(baseline));
        const auto drift = posterior ? driftOf(*posterior, later) : std::nullopt;
        return drift && drift->chart.ewmaSignal.has_value();
    }

    std::optional<ScatterChange> scatterOf(const FittingRow& row) const
    {
        std::vector<Interval> left;
        for (const std::size_t i : row.first)
            left.push_back(less(m_readings[i].interval,
                                m_shifts.of(m_readings[i]) + row.way().meanAt(m_readings[i].rigging)));
        return scatterChangeOf(left, static_cast<std::size_t>(row.movement->riggings),
                               resolutionFloor(row.movement->medianWidth));
    }

    // Whether a reading, that much taken off, lies wholly beyond where 99.73 % of readings do.
    static bool isOutside(const SeasonReading& reading, double shift, double reach)
    {
        const Interval left = less(reading.interval, shift);
        return left.lower > reach || left.upper < -reach;
    }

    // `shift` is all that is taken off the reading: offsets and path.
    static ExplainedBy explanationOf(const SeasonReading& reading, double shift, double reach,
                                     const HandShifts& named)
    {
        if (isOutside(reading, shift - named.gauge(reading), reach))
            return ExplainedBy::Gauge;
        if (isOutside(reading, shift - named.person(reading), reach))
            return ExplainedBy::Person;
        return isOutside(reading, shift - named.of(reading), reach) ? ExplainedBy::Both
                                                                    : ExplainedBy::Nothing;
    }

    std::vector<SingleReading> singlesOf(const FittingRow& row, const HandShifts& named) const
    {
        const MovementWay& way = row.way();
        const double quantile = -studentQuantile(kOutsideTail, way.df);
        std::vector<SingleReading> singles;
        for (std::size_t k = 0; k < row.first.size(); ++k) {
            const std::size_t i = row.first[k];
            const SeasonReading& reading = m_readings[i];
            const double shift = m_shifts.of(reading) + row.means[k];
            const double reach = quantile * std::hypot(way.sigma, way.errorAt(reading.rigging));
            SingleReading single{i, 0, 0, ExplainedBy::Nothing};
            if (!isOutside(reading, shift, reach)) {
                single.explainedBy = explanationOf(reading, shift, reach, named);
                if (single.explainedBy == ExplainedBy::Nothing)
                    continue;
            }
            single.away = reading.interval.place() - shift;
            single.scatters = single.away / way.sigma;
            singles.push_back(single);
        }
        std::ranges::stable_sort(singles, std::ranges::greater{},
                                 [](const SingleReading& single) { return std::abs(single.scatters); });
        return singles;
    }

    // A reading of a day: what is left of it in scatters, and what named offsets would put back.
    struct DayReading
    {
        double left = 0;
        double person = 0;
        double gauge = 0;
        double scatter = 1;
    };

    void tellDays(Season& season) const
    {
        const HandShifts named = shiftsOf(season.offsets, true);
        std::map<int, std::vector<DayReading>> days;
        for (const FittingRow& row : m_rows)
            addDays(row, named, days);
        for (const auto& [day, readings] : days)
            if (auto told = dayOf(readings)) {
                told->day = day;
                season.days.push_back(*told);
            }
    }

    // One reading a day speaks for the fitting.
    void addDays(const FittingRow& row, const HandShifts& named,
                 std::map<int, std::vector<DayReading>>& days) const
    {
        std::set<int> spoken;
        const auto add = [&](const std::vector<std::size_t>& places, const std::vector<double>& means) {
            for (std::size_t k = 0; k < places.size(); ++k) {
                const SeasonReading& reading = m_readings[places[k]];
                if (!(reading.rigging > 0) || !reading.interval.isClosed() ||
                    (&places == &row.second && spoken.contains(reading.day)))
                    continue;
                spoken.insert(reading.day);
                const double scatter =
                    std::hypot(row.way().sigma, reading.interval.width() / std::sqrt(12.0));
                days[reading.day].push_back({reading.interval.place() - m_shifts.of(reading) - means[k],
                                             named.person(reading), named.gauge(reading), scatter});
            }
        };
        add(row.first, row.means);
        add(row.second, row.secondMeans);
    }

    static std::optional<SeasonDay> dayOf(const std::vector<DayReading>& readings)
    {
        const auto shiftWith = [&](double person, double gauge, ExplainedBy by) -> std::optional<SeasonDay> {
            std::vector<double> scores;
            std::vector<double> lengths;
            for (const DayReading& one : readings) {
                lengths.push_back(one.left + person * one.person + gauge * one.gauge);
                scores.push_back(std::clamp(lengths.back() / one.scatter, -kMostScore, kMostScore));
            }
            const auto shift = sharedShiftOf(scores);
            if (!shift)
                return std::nullopt;
            return SeasonDay{0, *shift, medianOf(std::move(lengths)), by};
        };
        const auto left = shiftWith(0, 0, ExplainedBy::Nothing);
        if (!left || left->shift.isCalled)
            return left;
        for (const auto& explained :
             {shiftWith(0, 1, ExplainedBy::Gauge), shiftWith(1, 0, ExplainedBy::Person),
              shiftWith(1, 1, ExplainedBy::Both)})
            if (explained && explained->shift.isCalled)
                return explained;
        return left;
    }

    std::span<const SeasonReading> m_readings;
    std::vector<FittingRow> m_rows;
    HandShifts m_shifts;
};

} // namespace

std::optional<Season> seasonOf(std::span<const SeasonReading> readings)
{
    return SeasonSearch{readings}.found();
}

} // namespace rig::numbers
