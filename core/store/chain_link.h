#pragma once

#include "core/store/fact_bytes.h"

namespace rig {

// A row of the table `link`, see docs/store.md, “The chain”.
struct ChainLink
{
    std::int64_t sequence = 0;
    QByteArray hash;
    IdBytes origin{};
    std::string kind; // a table
    IdBytes fact{};
    QByteArray before;
};

// For linkFrom(), in this order.
inline constexpr const char* kLinkColumns = "sequence, hash, origin, kind, fact, before";
ChainLink linkFrom(Row& row);
QByteArray bytesFrom(Row& row); // the next cell

enum class LinkHolds { Yes, FactGone, FactChanged };

// Works the link out anew from what stands in the file of `bytes`.
Result<LinkHolds> whetherHolds(FactBytes& bytes, const ChainLink& link);

// Whether a link, whose `named` (“fact” or “origin”) has this id, tells of what stands in the file as it was
// saved.
Result<bool> aLinkHolds(StoreFile::Connection& connection, const char* named, const IdBytes& id);

} // namespace rig
