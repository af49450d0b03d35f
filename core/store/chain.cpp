#include "core/store/chain.h"

#include "core/store/chain_link.h"
#include "core/store/tables.h"
#include "core/store/values.h"

#include <QCryptographicHash>
#include <QStringList>
#include <QtEndian>

#include <algorithm>

namespace rig {

namespace {

constexpr qsizetype kHashBytes = 32;

// Nothing stood before the first fact.
QByteArray nothing()
{
    return QByteArray(kHashBytes, '\0');
}

std::int64_t highest(std::span<const ChainTip> tips)
{
    std::int64_t sequence = 0;
    for (const ChainTip& tip : tips)
        sequence = std::max(sequence, tip.sequence);
    return sequence;
}

QString everyFactSql(const QStringList& tables)
{
    QStringList each;
    for (const FactTable& table : kFactTables)
        if (const QString name = QString::fromLatin1(table.name); table.isFact && tables.contains(name))
            each.append(QStringLiteral("SELECT '%1' AS kind, id FROM %1").arg(name));
    return each.join(QStringLiteral(" UNION ALL ")) + QStringLiteral(" ORDER BY id");
}

std::string_view tableNamed(const std::string& name)
{
    return std::ranges::find(kFactTables, name, &FactTable::name)->name;
}

} // namespace

QByteArray endHash(std::span<const ChainTip> tips)
{
    if (tips.empty())
        return nothing();
    if (tips.size() == 1)
        return tips.front().hash;
    std::vector<QByteArray> hashes;
    for (const ChainTip& tip : tips)
        hashes.push_back(tip.hash);
    std::ranges::sort(hashes);
    QCryptographicHash all{QCryptographicHash::Sha256};
    for (const QByteArray& hash : hashes)
        all.addData(hash);
    return all.result();
}

QByteArray hashOf(const LinkContent& link)
{
    QCryptographicHash hash{QCryptographicHash::Sha256};
    hash.addData(link.before);
    hash.addData(link.origin);
    const auto sequence = qToBigEndian(static_cast<qint64>(link.sequence));
    hash.addData(QByteArray::fromRawData(reinterpret_cast<const char*>(&sequence), sizeof sequence));
    hash.addData(link.fact);
    return hash.result();
}

Result<std::vector<ChainTip>> readTips(StoreFile::Connection& connection)
{
    qlonglong last = 0;
    qlonglong count = 0;
    const Outcome counted = connection.each(
        QStringLiteral("SELECT coalesce(max(sequence), 0), count(*) FROM link"), {}, [&](Row& row) {
            last = row.integer();
            count = row.integer();
        });
    if (!counted)
        return counted.problem();
    // Each link has one before it: as many links as the last one's number stand in one row.
    const QString sql =
        count == last ? QStringLiteral("SELECT sequence, hash FROM link WHERE sequence = ?")
                      : QStringLiteral("SELECT sequence, hash FROM link WHERE ? > 0 AND NOT EXISTS (SELECT 1 "
                                       "FROM link AS next WHERE next.sequence = link.sequence + 1 AND "
                                       "next.before = link.hash) AND NOT EXISTS (SELECT 1 FROM tie WHERE "
                                       "tie.hash = link.hash) ORDER BY hash");
    std::vector<ChainTip> tips;
    const Outcome read = connection.each(sql, {last}, [&tips](Row& row) {
        ChainTip& tip = tips.emplace_back();
        tip.sequence = row.integer();
        tip.hash = bytesFrom(row);
    });
    if (!read)
        return read.problem();
    return tips;
}

Outcome Chain::catchUp()
{
    const auto version = m_connection.integer(QStringLiteral("PRAGMA data_version"));
    if (!version)
        return version.problem();
    if (m_dataVersion != version.value().value_or(0))
        m_tips.reset();
    m_dataVersion = version.value().value_or(0);
    return Done{};
}

void Chain::forget()
{
    m_tips.reset();
    m_origin.reset();
}

Outcome Chain::beginOrigin(const IdBytes& origin, Moment now, bool takenOver)
{
    const Outcome begun = m_connection.run(
        QStringLiteral("INSERT INTO origin (id, begun_at, begun_offset, taken_over) VALUES (?, ?, ?, ?)"),
        {valueOf(origin), valueOf(std::int64_t{now.utcSeconds}), valueOf(std::int64_t{now.offsetSeconds}),
         takenOver ? 1 : 0});
    if (!begun)
        return begun;
    const auto bytes = m_bytes.ofOrigin(origin);
    if (!bytes)
        return bytes.problem();
    m_originBytes = bytes.value().value_or(QByteArray{});
    m_origin = origin;
    return Done{};
}

Outcome Chain::tie(const QByteArray& before)
{
    for (const ChainTip& tip : *m_tips) {
        const Outcome tied =
            m_connection.run(QStringLiteral("INSERT INTO tie (before, sequence, hash) VALUES (?, ?, ?)"),
                             {before, valueOf(tip.sequence), tip.hash});
        if (!tied)
            return tied;
    }
    return Done{};
}

Outcome Chain::link(std::string_view table, const IdBytes& fact)
{
    LinkContent content{
        .before = endHash(*m_tips), .origin = m_originBytes, .sequence = highest(*m_tips) + 1, .fact = {}};
    if (m_tips->size() > 1)
        if (const Outcome tied = tie(content.before); !tied)
            return tied;
    const auto bytes = m_bytes.of(table, fact);
    if (!bytes)
        return bytes.problem();
    if (!bytes.value())
        return Problem{ProblemKind::Unexpected, "what was just saved is not in the file"};
    content.fact = *bytes.value();
    ChainTip tip{content.sequence, hashOf(content)};
    const Outcome linked = m_connection.run(
        QStringLiteral(
            "INSERT INTO link (sequence, origin, kind, fact, before, hash) VALUES (?, ?, ?, ?, ?, ?)"),
        {valueOf(tip.sequence), valueOf(*m_origin), valueOf(table), valueOf(fact), content.before, tip.hash});
    m_tips->assign(1, std::move(tip));
    return linked;
}

Outcome Chain::linkEach(std::span<const SavedLog::Saved> facts)
{
    for (const SavedLog::Saved& fact : facts)
        if (const Outcome linked = link(fact.table, fact.id); !linked)
            return linked;
    return Done{};
}

Outcome Chain::append(std::span<const SavedLog::Saved> facts, Moment now,
                      const std::function<IdBytes()>& newOrigin)
{
    if (!m_tips) {
        auto tips = readTips(m_connection);
        if (!tips)
            return tips.problem();
        m_tips = std::move(tips).value();
    }
    if (!m_origin)
        if (const Outcome begun = beginOrigin(newOrigin(), now, false); !begun)
            return begun;
    return linkEach(facts);
}

Outcome Chain::takeOver()
{
    QStringList tables;
    Outcome read =
        m_connection.each(QStringLiteral("SELECT name FROM sqlite_schema WHERE type = 'table'"), {},
                          [&tables](Row& row) { tables.append(QString::fromStdString(row.text())); });
    if (!read)
        return read;
    std::vector<SavedLog::Saved> facts;
    read = m_connection.each(everyFactSql(tables), {}, [&facts](Row& row) {
        const std::string_view table = tableNamed(row.text());
        if (const auto id = row.bytes())
            facts.push_back({table, *id});
    });
    if (!read || facts.empty())
        return read;
    if (const Outcome begun = beginOrigin(facts.front().id, {}, true); !begun)
        return begun;
    m_tips.emplace();
    return linkEach(facts);
}

} // namespace rig
