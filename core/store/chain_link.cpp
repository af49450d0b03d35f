#include "core/store/chain_link.h"

#include "core/store/chain.h"
#include "core/store/every_shape.h"
#include "core/store/values.h"

#include <QCryptographicHash>

#include <algorithm>

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

namespace {

// Of nothing but a person; and what changes after it was replaced is changed.
Result<bool> readsAsReplaced(StoreFile::Connection& connection, const ChainLink& link, const QByteArray& fact)
{
    if (link.kind != factShape<Person>().table)
        return false;
    const auto told =
        connection.integer(QStringLiteral("SELECT 1 FROM name_replaced WHERE replaced = ? AND reads = ?"),
                           {valueOf(link.fact), QString::fromStdString(digestOf(fact))});
    if (!told)
        return told.problem();
    return told.value().has_value();
}

} // namespace

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
    // Also where the link holds: in a part that was handed on since, whose chain began anew.
    const auto isReplaced = readsAsReplaced(bytes.connection(), link, *fact.value());
    if (!isReplaced)
        return isReplaced.problem();
    if (isReplaced.value())
        return LinkHolds::NameReplaced;
    const QByteArray now =
        hashOf({link.before, origin.value().value_or(QByteArray{}), link.sequence, *fact.value()});
    return now == link.hash ? LinkHolds::Yes : LinkHolds::FactChanged;
}

Result<SaveOrder> whenReplaced(StoreFile::Connection& connection, const IdBytes& person)
{
    FactBytes bytes{connection};
    const auto fact = bytes.of(factShape<Person>().table, person);
    if (!fact)
        return fact.problem();
    SaveOrder last;
    // One who gave the same letters twice gave them when they gave them last.
    const Outcome read = connection.each(
        QStringLiteral("SELECT id, stated_at FROM name_replaced WHERE replaced = ? AND reads = ?"),
        {valueOf(person), QString::fromStdString(digestOf(fact.value().value_or(QByteArray{})))},
        [&last](Row& row) {
            const IdBytes id = row.bytes().value_or(IdBytes{});
            last = std::max(last, saveOrderOf(Stamp{{}, Moment{row.integer(), 0}}, id));
        });
    if (!read)
        return read.problem();
    return last;
}

std::string digestOf(const QByteArray& bytes)
{
    return QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex().toStdString();
}

Result<LinkHolds> howALinkHolds(StoreFile::Connection& connection, const char* named, const IdBytes& id)
{
    std::vector<ChainLink> links;
    const Outcome read =
        connection.each(QStringLiteral("SELECT %1 FROM link WHERE %2 = ? ORDER BY sequence, hash")
                            .arg(QString::fromLatin1(kLinkColumns), QString::fromLatin1(named)),
                        {valueOf(id)}, [&links](Row& row) { links.push_back(linkFrom(row)); });
    if (!read)
        return read.problem();
    FactBytes bytes{connection};
    LinkHolds best = LinkHolds::FactGone;
    for (const ChainLink& link : links) {
        const Result<LinkHolds> held = whetherHolds(bytes, link);
        if (!held)
            return held.problem();
        best = std::min(best, held.value());
    }
    return best;
}

} // namespace rig
