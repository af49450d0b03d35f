#pragma once

#include "app/pictures/aircraft.h"
#include "tests/pictures/trend_scene.h"

#include <algorithm>
#include <array>

namespace rig::test {

inline Verdict verdictOfScore(double score)
{
    if (std::abs(score) > 3)
        return Verdict::Outside;
    return std::abs(score) > 1.96 ? Verdict::NearEdge : Verdict::Inside;
}

// The invented glider: eight couplings over `riggings` days; the left flap opens from the middle on, and on
// three days everything reads high because of a worn leaf set.
inline AircraftSeries aircraftOf(int riggings)
{
    AircraftSeries series;
    Dice dice;
    constexpr std::array kNames = {"Left aileron",   "Left airbrake", "Left flap", "Right aileron",
                                   "Right airbrake", "Right flap",    "Elevator",  "Trim"};
    const auto when = [riggings](int i) {
        Moment moment = at(2024, 4, 1);
        moment.utcSeconds += static_cast<std::int64_t>(i) * 540 * 86400 / riggings;
        return moment;
    };
    const auto isWorn = [riggings](int i) { return i >= riggings * 7 / 10 && i < riggings * 7 / 10 + 3; };
    std::vector<std::vector<double>> days(static_cast<std::size_t>(riggings));
    for (std::size_t c = 0; c < kNames.size(); ++c) {
        AircraftCoupling coupling;
        coupling.name = kNames[c];
        coupling.side = c < 3 ? Side::Left : c < 6 ? Side::Right : Side::None;
        for (int i = 0; i < riggings; ++i) {
            const double late = std::max(0.0, i - riggings * 0.5) / riggings;
            const double score = dice.bell(0.8) + (c == 2 ? late * 5 : 0) + (isWorn(i) ? 1.6 : 0);
            coupling.points.push_back({when(i), 210.0 + i, score, verdictOfScore(score), isWorn(i)});
            days[static_cast<std::size_t>(i)].push_back(score);
        }
        series.couplings.push_back(std::move(coupling));
    }
    for (int i = 0; i < riggings; ++i) {
        std::vector<double>& day = days[static_cast<std::size_t>(i)];
        std::sort(day.begin(), day.end());
        ShiftDay shift{when(i),   210.0 + i, (day[3] + day[4]) / 2, static_cast<int>(day.size()),
                       isWorn(i), ""};
        shift.cause = isWorn(i) ? "leaf set B, before its check" : "";
        series.shifts.push_back(shift);
    }
    return series;
}

} // namespace rig::test
