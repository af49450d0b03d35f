#include "core/numbers/movement_series.h"

#include "core/numbers/interval_set.h"
#include "core/numbers/median.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace rig::numbers {
namespace {

constexpr std::size_t kNeighbours = 3;    // on each side, for the level around a reading
constexpr double kMedianToSigma = 1.4826; // of absolute deviations, normal

double medianWidthOf(const std::vector<Interval>& readings)
{
    std::vector<double> widths;
    for (const Interval& reading : readings)
        if (reading.isClosed())
            widths.push_back(reading.width());
    return medianOf(std::move(widths));
}

} // namespace

MovementSeries::MovementSeries(std::span<const SeriesReading> readings)
{
    std::map<std::tuple<double, double, double>, std::size_t> known;
    for (const SeriesReading& reading : readings) {
        m_riggings.push_back(std::max(0.0, reading.rigging));
        m_readings.push_back(reading.interval);
        m_scatters.push_back(reading.scatters);
        const std::tuple own{reading.interval.lower, reading.interval.upper, reading.scatters};
        m_distinct.push_back(known.emplace(own, known.size()).first->second);
        m_baseline += reading.rigging > 0 ? 0 : 1;
    }
    m_distinctCount = known.size();
    m_medianWidth = medianWidthOf(m_readings);
    m_floor = resolutionFloor(m_medianWidth);
    m_logCount = std::log(static_cast<double>(m_readings.size()));
}

std::size_t MovementSeries::firstPlace(MovementKind kind, std::size_t before) const
{
    return before + kRiggingsBeforeChange - (kind == MovementKind::Drift ? 1 : 0);
}

std::size_t MovementSeries::endPlace(MovementKind kind) const
{
    const std::size_t least = kRiggingsAfterChange + (kind == MovementKind::Drift ? 1 : 0);
    return size() + 1 > least ? size() + 1 - least : 0;
}

std::size_t MovementSeries::secondFrom(ChangePlace first, MovementKind kind) const
{
    return firstPlace(kind, first.kind == MovementKind::Drift ? first.index + 1 : first.index);
}

double MovementSeries::shapeAt(ChangePlace place, std::size_t reading) const
{
    if (place.kind == MovementKind::Step)
        return reading >= place.index ? 1 : 0;
    if (place.kind == MovementKind::Drift && reading > place.index)
        return (m_riggings[reading] - m_riggings[place.index]) / kRateUnit;
    return 0;
}

// Equal readings where the path is level are counted together.
std::vector<PathReading> MovementSeries::rowsOf(const ChangePlaces& places) const
{
    std::vector<PathReading> rows;
    rows.reserve(size());
    std::vector<std::size_t> rowOf(m_distinctCount, 0); // its place in `rows`, plus one
    std::array<double, kMostShapes> level{};
    for (std::size_t i = 0; i < size(); ++i) {
        const std::array<double, kMostShapes> shape{shapeAt(places.first, i), shapeAt(places.second, i)};
        if (shape != level) {
            level = shape;
            std::ranges::fill(rowOf, 0);
        }
        std::size_t& row = rowOf[m_distinct[i]];
        if (row == 0) {
            rows.push_back({m_readings[i], shape, 0, m_scatters[i]});
            row = rows.size();
        }
        rows[row - 1].count += 1;
    }
    return rows;
}

std::optional<PathFit> MovementSeries::fitOf(const ChangePlaces& places, const PathFit& start) const
{
    return pathFitOf(rowsOf(places), places.shapes(), m_floor, start);
}

PathFit MovementSeries::robustStart() const
{
    std::vector<double> middles;
    for (const Interval& reading : m_readings)
        middles.push_back(reading.place());
    PathFit start;
    start.coefficients[0] = medianOf(middles);
    for (double& middle : middles)
        middle = std::abs(middle - start.coefficients[0]);
    start.sigma = std::max(m_floor, kMedianToSigma * medianOf(std::move(middles)));
    return start;
}

std::vector<PseudoReading> MovementSeries::robustReadings() const
{
    std::vector<double> away;
    std::vector<double> middles;
    for (const Interval& reading : m_readings)
        middles.push_back(reading.place());
    for (std::size_t i = 0; i < size(); ++i) {
        const auto begin = middles.begin() + static_cast<std::ptrdiff_t>(i - std::min(i, kNeighbours));
        const auto end = middles.begin() + static_cast<std::ptrdiff_t>(std::min(size(), i + kNeighbours + 1));
        away.push_back(std::abs(middles[i] - medianOf({begin, end})));
    }
    const double scale = std::max(m_floor, 2 * medianOf(away)); // generous
    std::vector<PseudoReading> robust;
    for (std::size_t i = 0; i < size(); ++i) {
        const double scatter = m_scatters[i];
        const double tame = pseudoReadingOf({away[i], away[i]}, 0, scale * scatter).tame;
        robust.push_back({tame / (scatter * scatter), middles[i], tame});
    }
    return robust;
}

PathFit MovementSeries::startAt(const MovementScreen::Solution& solution,
                                std::span<const PseudoReading> robust) const
{
    double tame = 0;
    for (const PseudoReading& reading : robust)
        tame += reading.tame;
    PathFit start;
    start.coefficients = solution.coefficients;
    start.sigma = std::max(m_floor, std::sqrt(solution.squares / std::max(1.0, tame)));
    return start;
}

std::vector<PseudoReading> MovementSeries::pseudoReadingsAt(const ChangePlaces& places,
                                                            const PathFit& fit) const
{
    std::vector<PseudoReading> pseudo;
    pseudo.reserve(size());
    for (std::size_t i = 0; i < size(); ++i) {
        const double mean = fit.coefficients[0] + fit.coefficients[1] * shapeAt(places.first, i) +
                            fit.coefficients[2] * shapeAt(places.second, i);
        pseudo.push_back(pseudoReadingOf(m_readings[i], mean, fit.sigma * m_scatters[i]));
    }
    return pseudo;
}

} // namespace rig::numbers
