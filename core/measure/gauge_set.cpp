#include "core/measure/gauge_set.h"

#include <algorithm>

namespace rig {

GaugeSet::GaugeSet(GaugeKind kind, std::vector<Gap> sizes) : m_kind{kind}, m_sizes{std::move(sizes)}
{
    std::ranges::sort(m_sizes);
    const auto repeats = std::ranges::unique(m_sizes);
    m_sizes.erase(repeats.begin(), repeats.end());
}

GaugeSet GaugeSet::taper(Gap resolution)
{
    GaugeSet set;
    set.m_kind = GaugeKind::Taper;
    set.m_resolution = resolution;
    return set;
}

std::vector<GaugeStep> GaugeSet::steps() const
{
    std::vector<GaugeStep> all;
    for (const Gap size : m_sizes)
        all.push_back({size, Gap{}});
    if (m_kind == GaugeKind::GoNoGo)
        all.resize(std::min<std::size_t>(all.size(), 1));
    if (m_kind != GaugeKind::Leaves || m_sizes.size() < 2)
        return all;
    const Gap thickest = m_sizes.back();
    for (const Gap second : m_sizes) {
        if (second == thickest)
            break; // a set holds each leaf once
        all.push_back({thickest + second, second});
    }
    return all;
}

GaugeOutcome GaugeSet::enters(Gap size) const
{
    if (m_kind == GaugeKind::Taper) {
        // Whole micrometres outwards, so that the interval never claims more than the gauge resolves.
        const std::int32_t half = (m_resolution.inMicrometres() + 1) / 2;
        if (half <= 0)
            return GaugeRefusal{GaugeProblem::NoSizes, {}, {}};
        const std::int32_t um = size.inMicrometres();
        return GaugeReading{{Gap::micrometres(std::max(0, um - half)), Gap::micrometres(um + half)},
                            Technique::Taper};
    }
    const std::vector<GaugeStep> all = steps();
    if (all.empty())
        return GaugeRefusal{GaugeProblem::NoSizes, {}, {}};
    const auto at = std::ranges::lower_bound(all, size, {}, &GaugeStep::size);
    if (at == all.end() || at->size != size) {
        GaugeRefusal refusal{GaugeProblem::NotASize, {}, {}};
        if (at != all.begin())
            refusal.below = std::prev(at)->size;
        if (at != all.end())
            refusal.above = at->size;
        return refusal;
    }
    if (m_kind == GaugeKind::GoNoGo && m_sizes.size() > 1)
        return GaugeReading{{m_sizes.front(), m_sizes.back()}, Technique::GoNoGo};
    const auto next = std::next(at);
    if (next == all.end())
        return GaugeRefusal{GaugeProblem::NoNextSize, at->size, {}};
    const Gap refuses = next->isStacked() ? next->size + kStackFilm : next->size;
    const Technique technique = m_kind == GaugeKind::Pins              ? Technique::Pin
                                : at->isStacked() || next->isStacked() ? Technique::Stack
                                                                       : Technique::Leaf;
    return GaugeReading{{at->size, refuses}, technique};
}

GaugeOutcome GaugeSet::noLeafEnters() const
{
    if (m_sizes.empty())
        return GaugeRefusal{GaugeProblem::NoSizes, {}, {}};
    return GaugeReading{{Gap{}, m_sizes.front()}, Technique::NoLeafEnters};
}

GaugeOutcome GaugeSet::thickestLoose() const
{
    if (m_sizes.empty())
        return GaugeRefusal{GaugeProblem::NoSizes, {}, {}};
    return GaugeReading{{m_sizes.back(), std::nullopt}, Technique::ThickestLoose};
}

} // namespace rig
