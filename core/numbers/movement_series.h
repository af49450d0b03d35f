#pragma once

#include "core/numbers/movement_screen.h"

#include <optional>
#include <span>
#include <vector>

namespace rig::numbers {

// Up to two changes, the first before the second; Steady for none.
struct ChangePlaces
{
    ChangePlace first;
    ChangePlace second;

    std::size_t shapes() const
    {
        if (first.kind == MovementKind::Steady)
            return 0;
        return second.kind == MovementKind::Steady ? 1 : 2;
    }
};

// The readings of one fitting in order, ready to be fitted with changes anywhere.
class MovementSeries
{
public:
    // Baseline first, then riggings that rise; none open both ways.
    explicit MovementSeries(std::span<const SeriesReading> readings);

    std::size_t size() const { return m_readings.size(); }
    std::size_t baseline() const { return m_baseline; }
    const std::vector<double>& riggings() const { return m_riggings; }
    double medianWidth() const { return m_medianWidth; }
    double logCount() const { return m_logCount; }

    // The first place a change of the kind may have, and the one behind its last. `before` is the number of
    // readings that are no rigging or lie before an earlier change.
    std::size_t firstPlace(MovementKind kind, std::size_t before) const;
    std::size_t endPlace(MovementKind kind) const;
    // The first place a second change may have behind a first.
    std::size_t secondFrom(ChangePlace first, MovementKind kind) const;

    std::optional<PathFit> fitOf(const ChangePlaces& places, const PathFit& start) const;
    // The median and its scatter.
    PathFit robustStart() const;
    // Each reading with weight 0 to 1 by how far it lies from its neighbours' median: a movement keeps its
    // weight, a single stranger loses it.
    std::vector<PseudoReading> robustReadings() const;
    // Where a screen of those leads.
    PathFit startAt(const MovementScreen::Solution& solution, std::span<const PseudoReading> robust) const;
    std::vector<PseudoReading> pseudoReadingsAt(const ChangePlaces& places, const PathFit& fit) const;

private:
    double shapeAt(ChangePlace place, std::size_t reading) const;
    std::vector<PathReading> rowsOf(const ChangePlaces& places) const;

    std::vector<Interval> m_readings;
    std::vector<double> m_scatters; // in the fitting's own
    std::vector<double> m_riggings;
    std::vector<std::size_t> m_distinct; // which of the distinct readings each is
    std::size_t m_distinctCount = 0;
    std::size_t m_baseline = 0;
    double m_medianWidth = 0;
    double m_floor = 0;
    double m_logCount = 0;
};

} // namespace rig::numbers
