#pragma once

#include "core/airframe/ids.h"

#include <cstdint>
#include <map>
#include <span>
#include <string>
#include <vector>

namespace rig {

// A link of the chain as it tells what was in the file when a fact was saved.
struct LineageLink
{
    std::int64_t sequence = 0;
    std::string hash;
    std::string before;
    IdBytes fact{};
    IdBytes origin{};
};

// One of the links of which a `before` is made, where files were joined.
struct LineageTie
{
    std::string before;
    std::string hash;
};

// Which facts were in the file when another one was saved. A link that is gone parts nothing: the next one
// stands after what its origin saved before, or else after those whose next one is gone.
class Lineage
{
public:
    // Links by rising sequence.
    Lineage(std::span<const LineageLink> links, std::span<const LineageTie> ties);

    // Whether `fact` was in the file when `later` was saved. Not of one that has no link.
    bool stoodBefore(const IdBytes& fact, const IdBytes& later) const;
    // Neither knew of the other.
    bool areApart(const IdBytes& one, const IdBytes& other) const;

private:
    // Links follow one another without a fork in a run.
    struct Place
    {
        std::size_t run = 0;
        std::int64_t sequence = 0;
    };

    struct Loose // a link after which none comes
    {
        Place place;
        std::string hash;
        IdBytes fact{};
    };

    // What is taken to stand before a link whose own one before is gone.
    void addNearest(const LineageLink& link, std::vector<Place>& parents);
    Place placeAfter(const std::vector<Place>& parents, std::int64_t sequence);
    bool isReached(const Place& place, const Place& from) const;

    std::multimap<IdBytes, Place> m_places; // a fact that was handed on has several
    std::vector<std::vector<Place>> m_from; // of each run: after which links it begins
    std::vector<std::int64_t> m_ends;       // of each run: its last link
    std::map<IdBytes, Loose> m_lastOf;      // of each origin
    std::vector<Loose> m_loose;
};

} // namespace rig
