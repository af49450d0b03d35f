#include "app/pictures/trend_window.h"

#include <algorithm>

namespace rig {

namespace {

TrendWindow kept(TrendWindow window, const AxisReach& reach)
{
    const double width = window.to - window.from;
    const double leastFrom = std::min(reach.whole.from, reach.first - width / 2);
    const double mostFrom = std::max(reach.whole.to, reach.last + width / 2) - width;
    window.from = std::clamp(window.from, leastFrom, std::max(leastFrom, mostFrom));
    window.to = window.from + width;
    return window;
}

} // namespace

double narrowestOf(TrendAxis axis, double leastApart)
{
    return std::max(leastApart, axis == TrendAxis::ByRigging ? 2.0 : 2 * 86400.0);
}

TrendWindow zoomed(const AxisReach& reach, const TrendWindow& drawn, double factor, double about)
{
    const TrendWindow& whole = reach.whole;
    if (reach.isEmpty || drawn.isWhole() || factor <= 0)
        return whole;
    const double width = drawn.to - drawn.from;
    const double wanted = std::max(width / factor, std::min(reach.narrowest, whole.to - whole.from));
    if (wanted >= whole.to - whole.from)
        return whole;
    const double place = drawn.from + about * width;
    return kept({drawn.axis, place - about * wanted, place + (1 - about) * wanted}, reach);
}

TrendWindow panned(const AxisReach& reach, const TrendWindow& drawn, double share)
{
    if (reach.isEmpty || drawn.isWhole())
        return reach.whole;
    const double by = share * (drawn.to - drawn.from);
    return kept({drawn.axis, drawn.from + by, drawn.to + by}, reach);
}

} // namespace rig
