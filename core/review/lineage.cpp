#include "core/review/lineage.h"

#include <algorithm>
#include <set>
#include <unordered_map>
#include <unordered_set>

namespace rig {

namespace {

// The hashes after which a link comes.
std::unordered_set<std::string> followed(std::span<const LineageLink> links, std::span<const LineageTie> ties)
{
    std::unordered_set<std::string> hashes;
    for (const LineageLink& link : links)
        hashes.insert(link.before);
    const std::unordered_set<std::string> befores = hashes;
    for (const LineageTie& tie : ties)
        if (befores.contains(tie.before))
            hashes.insert(tie.hash);
    return hashes;
}

} // namespace

Lineage::Lineage(std::span<const LineageLink> links, std::span<const LineageTie> ties)
{
    std::unordered_multimap<std::string, std::string> tied;
    for (const LineageTie& tie : ties)
        tied.emplace(tie.before, tie.hash);
    const std::unordered_set<std::string> hasNext = followed(links, ties);
    std::unordered_map<std::string, Place> known;
    for (const LineageLink& link : links) {
        std::vector<Place> parents;
        if (const auto one = known.find(link.before); one != known.end())
            parents.push_back(one->second);
        const auto [first, last] = tied.equal_range(link.before);
        for (auto tie = first; tie != last; ++tie)
            if (const auto one = known.find(tie->second); one != known.end())
                parents.push_back(one->second);
        const auto named = std::max<std::size_t>(1, tied.count(link.before));
        if (link.sequence > 1 && parents.size() < named)
            addNearest(link, parents);
        const Place place = placeAfter(parents, link.sequence);
        known[link.hash] = place;
        m_places.emplace(link.fact, place);
        m_lastOf[link.origin] = {place, link.hash, link.fact};
        if (!hasNext.contains(link.hash))
            m_loose.push_back({place, link.hash, link.fact});
    }
}

void Lineage::addNearest(const LineageLink& link, std::vector<Place>& parents)
{
    const auto take = [&](const auto& isBefore) {
        const auto from =
            std::ranges::stable_partition(m_loose, [&](const Loose& one) { return !isBefore(one); });
        for (const Loose& one : from)
            parents.push_back(one.place);
        const bool found = !from.empty();
        m_loose.erase(from.begin(), m_loose.end());
        return found;
    };
    if (const auto own = m_lastOf.find(link.origin); own != m_lastOf.end()) {
        if (take([&](const Loose& one) { return one.hash == own->second.hash; }))
            return;
        if (own->second.place.sequence < link.sequence)
            parents.push_back(own->second.place);
    }
    take([&](const Loose& one) { return one.place.sequence < link.sequence && one.fact < link.fact; });
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
