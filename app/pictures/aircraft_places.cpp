#include "app/pictures/aircraft_layout.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace rig {

namespace aircraft {

QPointF placeOf(const AircraftPicture& picture, const Scale& across, const AircraftPoint& point)
{
    return {across.at(along(picture.window.axis, point.when, point.rigging)),
            yOf(picture, std::clamp(point.score, picture.scoreAtBottom, picture.scoreAtTop))};
}

Stretch between(const std::vector<AircraftPoint>& points, TrendAxis axis, double from, double to)
{
    const auto place = [axis](const AircraftPoint& point) { return along(axis, point.when, point.rigging); };
    const auto begin = std::partition_point(points.begin(), points.end(),
                                            [&](const AircraftPoint& point) { return place(point) < from; });
    const auto end = std::partition_point(begin, points.end(),
                                          [&](const AircraftPoint& point) { return place(point) <= to; });
    return {static_cast<std::size_t>(begin - points.begin()), static_cast<std::size_t>(end - points.begin())};
}

namespace {

constexpr double kDay = 86400;

struct Ends
{
    double first = std::numeric_limits<double>::max();
    double last = std::numeric_limits<double>::lowest();
    double leastApart = std::numeric_limits<double>::max();
    double before = std::numeric_limits<double>::max(); // no place is right of it

    void add(double place)
    {
        first = std::min(first, place);
        last = std::max(last, place);
        if (place > before)
            leastApart = std::min(leastApart, place - before);
        before = place;
    }
};

} // namespace

} // namespace aircraft

AxisReach reachOf(const AircraftSeries& series, TrendAxis axis)
{
    aircraft::Ends ends;
    for (const AircraftCoupling& coupling : series.couplings) {
        ends.before = aircraft::Ends{}.before;
        for (const AircraftPoint& point : coupling.points)
            ends.add(along(axis, point.when, point.rigging));
    }
    ends.before = aircraft::Ends{}.before;
    for (const ShiftDay& shift : series.shifts)
        ends.add(along(axis, shift.when, shift.rigging));
    AxisReach reach;
    reach.isEmpty = ends.first > ends.last;
    if (reach.isEmpty) {
        reach.whole = {axis, 0, 1};
        return reach;
    }
    reach.first = ends.first;
    reach.last = ends.last;
    const bool isOnePlace = ends.leastApart == std::numeric_limits<double>::max();
    reach.narrowest = narrowestOf(axis, isOnePlace ? 0 : ends.leastApart);
    const double least = axis == TrendAxis::ByRigging ? 0.8 : 2 * aircraft::kDay;
    const double margin = std::max(least, (reach.last - reach.first) * 0.01);
    reach.whole = {axis, reach.first - margin, reach.last + margin};
    return reach;
}

std::optional<AircraftSpot> pointAt(const AircraftSeries& series, const AircraftPicture& picture,
                                    std::optional<std::size_t> chosenCoupling, QPointF point)
{
    constexpr double kNear = 12; // pixels: a cursor's own width
    std::optional<AircraftSpot> nearest;
    if (picture.window.isWhole() || !picture.plot.adjusted(-kNear, -kNear, kNear, kNear).contains(point))
        return nearest;
    const Scale across = aircraft::acrossOf(picture);
    double least = kNear;
    for (std::size_t c = 0; c < series.couplings.size(); ++c) {
        const std::vector<AircraftPoint>& points = series.couplings[c].points;
        const aircraft::Stretch near = aircraft::between(
            points, picture.window.axis, std::max(picture.window.from, across.valueAt(point.x() - kNear)),
            std::min(picture.window.to, across.valueAt(point.x() + kNear)));
        for (std::size_t i = near.begin; i < near.end; ++i) {
            const QPointF by = aircraft::placeOf(picture, across, points[i]) - point;
            const double far = std::hypot(by.x(), by.y()) - (chosenCoupling == c ? 1 : 0);
            if (far >= least)
                continue;
            least = far;
            nearest = AircraftSpot{c, i};
        }
    }
    return nearest;
}

std::optional<std::size_t> shiftAt(const AircraftSeries& series, const AircraftPicture& picture,
                                   QPointF point)
{
    constexpr double kNear = 6;
    std::optional<std::size_t> nearest;
    if (!picture.shiftLane.contains(point))
        return nearest;
    const Scale across = aircraft::acrossOf(picture);
    double least = kNear;
    for (std::size_t i = 0; i < series.shifts.size(); ++i) {
        const ShiftDay& shift = series.shifts[i];
        const double x = across.at(along(picture.window.axis, shift.when, shift.rigging));
        if (const double far = std::abs(x - point.x()); far < least) {
            least = far;
            nearest = i;
        }
    }
    return nearest;
}

} // namespace rig
