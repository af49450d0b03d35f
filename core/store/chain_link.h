#pragma once

#include "core/airframe/saved_before.h"
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

enum class LinkHolds {
    Yes,
    NameReplaced, // of a person, on request: it reads as it was told to read since then
    FactChanged,
    FactGone,
};

// Of a version of a person whose name was replaced: when it was given the letters that it has now.
Result<SaveOrder> whenReplaced(StoreFile::Connection& connection, const IdBytes& person);

// SHA-256 (FIPS 180-4), 64 hexadecimal digits.
std::string digestOf(const QByteArray& bytes);

// Works the link out anew from what stands in the file of `bytes`.
Result<LinkHolds> whetherHolds(FactBytes& bytes, const ChainLink& link);

// The best that a link, whose `named` (“fact” or “origin”) has this id, tells of what stands in the file.
Result<LinkHolds> howALinkHolds(StoreFile::Connection& connection, const char* named, const IdBytes& id);

} // namespace rig
