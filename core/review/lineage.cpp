#include "core/review/lineage.h"

#include <algorithm>
#include <set>
#include <unordered_map>

namespace rig {

Lineage::Lineage(std::span<const LineageLink> links, std::span<const LineageTie> ties)
{
    std::unordered_multimap<std::string, std::string> tied;
    for (const LineageTie& tie : ties)
        tied.emplace(tie.before, tie.hash);
    std::unordered_map<std::string, Place> known;
    for (const LineageLink& link : links) {
        std::vector<Place> parents;
        if (const auto one = known.find(link.before); one != known.end())
            parents.push_back(one->second);
        const auto [first, last] = tied.equal_range(link.before);
        for (auto tie = first; tie != last; ++tie)
            if (const auto one = known.find(tie->second); one != known.end())
                parents.push_back(one->second);
        const Place place = placeAfter(parents, link.sequence);
        known[link.hash] = place;
        m_places.emplace(link.fact, place);
    }
}

Lineage::Place Lineage::placeAfter(const std::vector<Place>& parents, std::int64_t sequence)
{
    if (parents.size() == 1 && m_ends[parents.front().run] == parents.front().sequence) {
        m_ends[parents.front().run] = sequence;
        return {parents.front().run, sequence};
    }
    m_from.push_back(parents);
    m_ends.push_back(sequence);
    return {m_from.size() - 1, sequence};
}

bool Lineage::isReached(const Place& place, const Place& from) const
{
    std::vector<Place> next{from};
    std::set<std::pair<std::size_t, std::int64_t>> seen;
    while (!next.empty()) {
        const Place at = next.back();
        next.pop_back();
        if (at.run == place.run && at.sequence >= place.sequence)
            return true;
        for (const Place& parent : m_from[at.run])
            if (parent.sequence >= place.sequence && seen.emplace(parent.run, parent.sequence).second)
                next.push_back(parent);
    }
    return false;
}

bool Lineage::stoodBefore(const IdBytes& fact, const IdBytes& later) const
{
    const auto [first, last] = m_places.equal_range(fact);
    const auto [from, to] = m_places.equal_range(later);
    return std::any_of(from, to, [&, first = first, last = last](const auto& start) {
        return std::any_of(first, last, [&](const auto& end) { return isReached(end.second, start.second); });
    });
}

bool Lineage::areApart(const IdBytes& one, const IdBytes& other) const
{
    return m_places.contains(one) && m_places.contains(other) && !stoodBefore(one, other) &&
           !stoodBefore(other, one);
}

} // namespace rig
