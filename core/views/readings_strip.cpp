#include "core/views/readings_strip.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace rig {

namespace {

constexpr double kLeastStrip = 1.0; // mm
constexpr double kStripStep = 0.1;
constexpr double kNowhere = std::numeric_limits<double>::infinity();

double upperEnd(const GapInterval& reading)
{
    return reading.refuses ? reading.refuses->inMillimetres() : kNowhere;
}

std::vector<GapInterval> notLocked(const ReadingsStripView& view)
{
    std::vector<GapInterval> all = view.partSeated;
    all.insert(all.end(), view.asFound.begin(), view.asFound.end());
    return all;
}

EmptyStretch reachOf(const std::vector<GapInterval>& readings)
{
    EmptyStretch reach{kNowhere, -kNowhere};
    for (const GapInterval& one : readings) {
        reach.from = std::min(reach.from, one.enters.inMillimetres());
        reach.to = std::max(reach.to, upperEnd(one));
    }
    return reach;
}

} // namespace

std::vector<EmptyStretch> emptyBetween(const ReadingsStripView& view)
{
    const std::vector<GapInterval> others = notLocked(view);
    if (view.locked.empty() || others.empty())
        return {};
    const EmptyStretch locked = reachOf(view.locked);
    double below = -kNowhere;
    double above = kNowhere;
    for (const GapInterval& one : others) {
        const double from = one.enters.inMillimetres();
        const double to = upperEnd(one);
        if (to <= locked.from)
            below = std::max(below, to);
        else if (from >= locked.to)
            above = std::min(above, from);
        else
            return {};
    }
    std::vector<EmptyStretch> found;
    if (below > -kNowhere && below < locked.from)
        found.push_back({below, locked.from});
    if (above < kNowhere && above > locked.to)
        found.push_back({locked.to, above});
    std::erase_if(found, [&view](const EmptyStretch& one) {
        const auto reachesInto = [&one](const GapInterval& seen) {
            return seen.enters.inMillimetres() < one.to && upperEnd(seen) > one.from;
        };
        return std::ranges::any_of(view.earlier, reachesInto) ||
               std::ranges::any_of(view.notSecured, reachesInto);
    });
    return found;
}

double drawnAt(const GapInterval& reading)
{
    const double from = reading.enters.inMillimetres();
    return reading.refuses ? (from + reading.refuses->inMillimetres()) / 2 : from;
}

double stripEnd(const ReadingsStripView& view)
{
    double most = view.band ? view.band->outer.upper : 0;
    const std::vector<GapInterval> others = notLocked(view);
    for (const auto* readings : {&view.locked, &others, &view.notSecured})
        for (const GapInterval& one : *readings)
            most = std::max(most, one.refuses ? upperEnd(one) : one.enters.inMillimetres());
    const double whole = std::ceil((most + kStripStep) / kStripStep - 1e-9) * kStripStep;
    return std::clamp(whole, kLeastStrip, kWidestStrip);
}

bool isOffStrip(const GapInterval& reading, double end)
{
    return drawnAt(reading) > end;
}

} // namespace rig
