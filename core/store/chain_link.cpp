#include "core/store/chain_link.h"

#include "core/store/chain.h"
#include "core/store/every_shape.h"
#include "core/store/values.h"

namespace rig {

QByteArray bytesFrom(Row& row)
{
    const std::string_view bytes = row.bytesView();
    return {bytes.data(), static_cast<qsizetype>(bytes.size())};
}

ChainLink linkFrom(Row& row)
{
    ChainLink link;
    link.sequence = row.integer();
    link.hash = bytesFrom(row);
    link.origin = row.bytes().value_or(IdBytes{});
    link.kind = row.text();
    link.fact = row.bytes().value_or(IdBytes{});
    link.before = bytesFrom(row);
    return link;
}

Result<LinkHolds> whetherHolds(FactBytes& bytes, const ChainLink& link)
{
    const FactShape* const shape = shapeOfTable(link.kind);
    if (!shape)
        return LinkHolds::FactGone;
    const auto fact = bytes.of(shape->table, link.fact);
    const auto origin = bytes.ofOrigin(link.origin);
    if (!fact || !origin)
        return (fact ? origin : fact).problem();
    if (!fact.value())
        return LinkHolds::FactGone;
    const QByteArray now =
        hashOf({link.before, origin.value().value_or(QByteArray{}), link.sequence, *fact.value()});
    return now == link.hash ? LinkHolds::Yes : LinkHolds::FactChanged;
}

Result<bool> aLinkHolds(StoreFile::Connection& connection, const char* named, const IdBytes& id)
{
    std::vector<ChainLink> links;
    const Outcome read =
        connection.each(QStringLiteral("SELECT %1 FROM link WHERE %2 = ? ORDER BY sequence, hash")
                            .arg(QString::fromLatin1(kLinkColumns), QString::fromLatin1(named)),
                        {valueOf(id)}, [&links](Row& row) { links.push_back(linkFrom(row)); });
    if (!read)
        return read.problem();
    FactBytes bytes{connection};
    for (const ChainLink& link : links) {
        const Result<LinkHolds> held = whetherHolds(bytes, link);
        if (!held)
            return held.problem();
        if (held.value() == LinkHolds::Yes)
            return true;
    }
    return false;
}

} // namespace rig
