#include "core/store/link_holds.h"

#include "core/store/chain.h"
#include "core/store/every_shape.h"
#include "core/store/values.h"

namespace rig {

namespace {

struct Told
{
    LinkContent content; // without the bytes, which are to come from what stands in the file
    IdBytes origin{};
    std::string kind;
    IdBytes fact{};
    QByteArray hash;
};

QByteArray bytesIn(Row& row)
{
    const std::string_view bytes = row.bytesView();
    return {bytes.data(), static_cast<qsizetype>(bytes.size())};
}

Result<std::vector<Told>> linksOf(StoreFile::Connection& connection, const char* named, const IdBytes& id)
{
    std::vector<Told> links;
    const Outcome read =
        connection.each(QStringLiteral("SELECT sequence, before, origin, kind, fact, hash FROM link WHERE %1 "
                                       "= ? ORDER BY sequence, hash")
                            .arg(QString::fromLatin1(named)),
                        {valueOf(id)}, [&links](Row& row) {
                            Told& link = links.emplace_back();
                            link.content.sequence = row.integer();
                            link.content.before = bytesIn(row);
                            link.origin = row.bytes().value_or(IdBytes{});
                            link.kind = row.text();
                            link.fact = row.bytes().value_or(IdBytes{});
                            link.hash = bytesIn(row);
                        });
    if (!read)
        return read.problem();
    return links;
}

Result<bool> holds(FactBytes& bytes, Told link)
{
    const FactShape* const shape = shapeOfTable(link.kind);
    if (!shape)
        return false;
    const auto fact = bytes.of(shape->table, link.fact);
    const auto origin = bytes.ofOrigin(link.origin);
    if (!fact || !origin)
        return (fact ? origin : fact).problem();
    if (!fact.value())
        return false;
    link.content.fact = *fact.value();
    link.content.origin = origin.value().value_or(QByteArray{});
    return hashOf(link.content) == link.hash;
}

} // namespace

Result<bool> aLinkHolds(StoreFile::Connection& connection, const char* named, const IdBytes& id)
{
    const auto links = linksOf(connection, named, id);
    if (!links)
        return links.problem();
    FactBytes bytes{connection};
    for (const Told& link : links.value())
        if (const Result<bool> held = holds(bytes, link); !held || held.value())
            return held;
    return false;
}

} // namespace rig
