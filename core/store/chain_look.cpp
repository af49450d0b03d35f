#include "core/store/chain_look.h"

#include "core/store/chain.h"
#include "core/store/chain_link.h"
#include "core/store/couplings_in_doubt.h"
#include "core/store/faulty_fact.h"
#include "core/store/tables.h"
#include "core/store/values.h"

#include <algorithm>
#include <map>
#include <set>

namespace rig {

namespace {

constexpr int kAtATime = 500;
constexpr std::size_t kLinkTakes = 20; // as long as so many rows that are only looked up

class Look
{
public:
    Look(StoreFile::Connection& connection, std::stop_token stop, Progress* progress = nullptr)
        : m_connection{connection}, m_bytes{connection}, m_inDoubt{connection}, m_stop{std::move(stop)},
          m_progress{progress}
    {
    }

    Result<ChainState> result()
    {
        if (const Outcome counted = m_progress ? countRows() : Done{}; !counted)
            return counted.problem();
        if (const Outcome links = eachLink(); !links)
            return links.problem();
        for (const FactTable& table : kFactTables)
            if (table.isFact)
                if (const Outcome rows = unlinkedRows(table.name); !rows)
                    return rows.problem();
        const Result<FileEnd> end = endOf(m_connection);
        if (!end)
            return end.problem();
        m_state.end = end.value();
        const auto takenOver = m_connection.integer(QStringLiteral(
            "SELECT count(DISTINCT fact) FROM link WHERE origin IN (SELECT id FROM origin WHERE "
            "taken_over = 1)"));
        if (!takenOver)
            return takenOver.problem();
        m_state.takenOver = takenOver.value().value_or(0);
        m_state.inDoubt = m_inDoubt.found();
        return m_state;
    }

private:
    // After so many links or rows more.
    Outcome goesOn(std::size_t more)
    {
        m_done += more;
        rig::goesOn(m_progress, m_done, m_rows);
        return m_stop.stop_requested() ? Outcome{Problem{ProblemKind::Unexpected, "interrupted"}} : Done{};
    }

    Outcome countRows()
    {
        const auto count = [this](const char* table, std::size_t times) -> Outcome {
            const auto rows =
                m_connection.integer(QStringLiteral("SELECT count(*) FROM %1").arg(QLatin1String{table}));
            if (!rows)
                return rows.problem();
            m_rows += times * static_cast<std::size_t>(rows.value().value_or(0));
            return Done{};
        };
        for (const FactTable& table : kFactTables)
            if (const Outcome counted = table.isFact ? count(table.name, 1) : Done{}; !counted)
                return counted;
        return count("link", kLinkTakes);
    }

    Outcome found(ChainFault fault, const std::string& table, const IdBytes& fact)
    {
        if (++m_faultsIn[table] <= kFaultsTold)
            m_state.told.push_back(tellOf(m_connection, fault, table, fact));
        ++m_state.faults;
        if (fault == ChainFault::Torn)
            m_inDoubt.takeAll();
        if (fault == ChainFault::Missing)
            m_inDoubt.takeGone(table);
        const bool stands = fault == ChainFault::Changed || fault == ChainFault::Inserted;
        return stands ? m_inDoubt.take(table, fact) : Done{};
    }

    Outcome eachLink()
    {
        std::int64_t sequence = 0;
        std::int64_t last = 0; // row
        for (bool more = true; more;) {
            std::vector<ChainLink> some;
            const Outcome read = m_connection.each(
                QStringLiteral("SELECT rowid, %1 FROM link WHERE (sequence, rowid) > (?, ?) "
                               "ORDER BY sequence, rowid LIMIT %2")
                    .arg(QString::fromLatin1(kLinkColumns))
                    .arg(kAtATime),
                {valueOf(sequence), valueOf(last)}, [&](Row& row) {
                    last = row.integer();
                    some.push_back(linkFrom(row));
                });
            if (!read)
                return read;
            for (const ChainLink& link : some)
                if (const Outcome held = hold(link); !held)
                    return held;
            more = !some.empty();
            if (more)
                sequence = some.back().sequence;
            if (const Outcome on = goesOn(kLinkTakes * some.size()); !on)
                return on;
        }
        return Done{};
    }

    Outcome hold(const ChainLink& link)
    {
        const Result<bool> follows = standsAfterWhatItNames(link);
        if (!follows)
            return follows.problem();
        if (!follows.value())
            if (const Outcome told = found(ChainFault::Torn, link.kind, link.fact); !told)
                return told;
        remember(link);
        const Result<LinkHolds> held = whetherHolds(m_bytes, link);
        if (!held)
            return held.problem();
        if (held.value() == LinkHolds::FactGone)
            return found(ChainFault::Missing, link.kind, link.fact);
        if (held.value() == LinkHolds::FactChanged)
            return found(ChainFault::Changed, link.kind, link.fact);
        return held.value() == LinkHolds::NameReplaced ? tellReplaced(link.fact) : Done{};
    }

    // Once, however many versions of the person there are; also that there had been other letters before.
    Outcome tellReplaced(const IdBytes& person)
    {
        const auto fact = m_bytes.of("person", person);
        if (!fact)
            return fact.problem();
        const std::string reads = digestOf(fact.value().value_or(QByteArray{}));
        std::map<IdBytes, ReplacedName> each; // with the newest name of who did it
        const Outcome read = m_connection.each(
            QStringLiteral("SELECT n.id, p.name, b.name, n.stated_at, n.stated_offset, n.reads FROM "
                           "name_replaced n JOIN person p ON p.id = n.replaced LEFT JOIN person b ON "
                           "b.subject = n.person WHERE n.replaced = ? ORDER BY n.id, b.id"),
            {valueOf(person)}, [&each, &reads](Row& row) {
                ReplacedName& one = each[row.bytes().value_or(IdBytes{})];
                one.name = row.text();
                one.by = row.text();
                one.when.utcSeconds = row.integer();
                one.when.offsetSeconds = static_cast<std::int32_t>(row.integer());
                one.holds = row.text() == reads;
            });
        for (const auto& [id, one] : each)
            if (std::ranges::find(m_state.replacedNames, one) == m_state.replacedNames.end())
                m_state.replacedNames.push_back(one);
        return read;
    }

    Result<bool> standsAfterWhatItNames(const ChainLink& link)
    {
        if (link.sequence == 1)
            return link.before == endHash({});
        if (link.sequence == m_sequence + 1 ? m_hashes.contains(link.before)
                                            : link.sequence == m_sequence && m_earlier.contains(link.before))
            return true;
        return isTied(link);
    }

    // Whether `before` is made of several links that are all there, the last of them just before this one.
    Result<bool> isTied(const ChainLink& link)
    {
        std::vector<ChainTip> tips;
        Outcome read = m_connection.each(QStringLiteral("SELECT sequence, hash FROM tie WHERE before = ?"),
                                         {link.before}, [&tips](Row& row) {
                                             ChainTip& tip = tips.emplace_back();
                                             tip.sequence = row.integer();
                                             tip.hash = bytesFrom(row);
                                         });
        if (!read)
            return read.problem();
        std::int64_t highest = 0;
        bool allThere = tips.size() > 1 && endHash(tips) == link.before;
        for (const ChainTip& tip : tips) {
            const auto there =
                m_connection.integer(QStringLiteral("SELECT 1 FROM link WHERE sequence = ? AND hash = ?"),
                                     {valueOf(tip.sequence), tip.hash});
            if (!there)
                return there.problem();
            allThere = allThere && there.value();
            highest = std::max(highest, tip.sequence);
        }
        return allThere && highest + 1 == link.sequence;
    }

    void remember(const ChainLink& link)
    {
        if (link.sequence != m_sequence) {
            m_earlier = link.sequence == m_sequence + 1 ? std::move(m_hashes) : std::set<QByteArray>{};
            m_hashes.clear();
            m_sequence = link.sequence;
        }
        m_hashes.insert(link.hash);
    }

    Outcome unlinkedRows(const char* table)
    {
        QByteArray last;
        for (bool more = true; more;) {
            std::vector<IdBytes> unlinked;
            std::size_t rows = 0;
            more = false;
            const Outcome read = m_connection.each(
                QStringLiteral("SELECT id, EXISTS (SELECT 1 FROM link WHERE fact = id) FROM %1 WHERE id > ? "
                               "ORDER BY id LIMIT %2")
                    .arg(QString::fromLatin1(table))
                    .arg(kAtATime),
                {last}, [&](Row& row) {
                    more = true;
                    ++rows;
                    last = bytesFrom(row);
                    if (row.integer() == 0)
                        unlinked.push_back(idFrom(last));
                });
            if (!read)
                return read;
            for (const IdBytes& id : unlinked)
                if (const Outcome told = found(ChainFault::Inserted, table, id); !told)
                    return told;
            if (const Outcome on = goesOn(rows); !on)
                return on;
        }
        return Done{};
    }

    static IdBytes idFrom(const QByteArray& bytes)
    {
        IdBytes id{};
        std::copy_n(bytes.begin(), std::min<std::size_t>(id.size(), static_cast<std::size_t>(bytes.size())),
                    id.begin());
        return id;
    }

    StoreFile::Connection& m_connection;
    FactBytes m_bytes;
    CouplingsInDoubt m_inDoubt;
    std::stop_token m_stop;
    Progress* m_progress;
    std::size_t m_done = 0;
    std::size_t m_rows = 0; // all there are, a link for as many as it takes
    ChainState m_state;
    std::map<std::string, std::int64_t> m_faultsIn; // by table
    std::int64_t m_sequence = 0;
    std::set<QByteArray> m_hashes;  // of the links of that sequence
    std::set<QByteArray> m_earlier; // and of the one before it
};

// The ends of copies that were joined: what each tie is made of, and what stands at the end now.
Result<std::vector<std::vector<ChainTip>>> joinedEnds(StoreFile::Connection& connection)
{
    std::map<QByteArray, std::vector<ChainTip>> tied;
    const Outcome read =
        connection.each(QStringLiteral("SELECT before, sequence, hash FROM tie"), {}, [&tied](Row& row) {
            std::vector<ChainTip>& tips = tied[bytesFrom(row)];
            const std::int64_t sequence = row.integer();
            tips.push_back({sequence, bytesFrom(row)});
        });
    if (!read)
        return read.problem();
    auto now = readTips(connection);
    if (!now)
        return now.problem();
    std::vector<std::vector<ChainTip>> ends{std::move(now).value()};
    for (auto& [before, tips] : tied)
        ends.push_back(std::move(tips));
    return ends;
}

// Some of these ends, which is how the file ended while only those copies had been joined; empty where none
// of them has this short form. The last of them.
std::optional<ChainTip> partOfJoined(std::span<const ChainTip> tips, const std::string& form)
{
    constexpr std::size_t kMostTried = 10; // copies joined without a save between: some 1,000 hashes
    if (tips.size() > kMostTried)
        return std::nullopt;
    for (unsigned which = 1; which + 1 < 1U << tips.size(); ++which) {
        std::vector<ChainTip> some;
        for (std::size_t i = 0; i < tips.size(); ++i)
            if (which >> i & 1U)
                some.push_back(tips[i]);
        if (shortForm(endHash(some).toHex().toStdString()) == form)
            return *std::ranges::max_element(some, {}, &ChainTip::sequence);
    }
    return std::nullopt;
}

// Where it was printed between two joinings, which leave nothing of that end in the file: from what was
// joined it can be worked out, as long as none of those copies was written to before it came once more.
Result<std::optional<PrintPlace>> placeBetweenJoinings(StoreFile::Connection& connection,
                                                       const std::string& form)
{
    const auto ends = joinedEnds(connection);
    if (!ends)
        return ends.problem();
    std::optional<PrintPlace> place;
    for (const std::vector<ChainTip>& tips : ends.value()) {
        const auto last = partOfJoined(tips, form);
        if (!last)
            continue;
        place = PrintPlace{last->sequence, 0};
        const Outcome read =
            connection.each(QStringLiteral("SELECT fact FROM link WHERE sequence = ? AND hash = ?"),
                            {valueOf(last->sequence), last->hash}, [&place](Row& row) {
                                if (const auto fact = row.bytes())
                                    place->savedMilliseconds = millisecondsIn(*fact);
                            });
        if (!read)
            return read.problem();
        break;
    }
    return place;
}

} // namespace

Result<FileEnd> endOf(StoreFile::Connection& connection)
{
    const auto tips = readTips(connection);
    if (!tips)
        return tips.problem();
    // One that was handed on and came back has several links.
    const auto facts = connection.integer(QStringLiteral("SELECT count(DISTINCT fact) FROM link"));
    if (!facts)
        return facts.problem();
    return FileEnd{facts.value().value_or(0), endHash(tips.value()).toHex().toStdString()};
}

Result<ChainState> lookAtChain(StoreFile::Connection& connection, const std::stop_token& stop)
{
    return Look{connection, stop}.result();
}

Result<ChainState> lookAtChain(StoreFile::Connection& connection, Progress* progress)
{
    return Look{connection, stopOf(progress), progress}.result();
}

Result<std::optional<PrintPlace>> placeOfPrint(StoreFile::Connection& connection, const std::string& form)
{
    std::optional<PrintPlace> place;
    const auto look = [&](Row& row) {
        const std::int64_t sequence = row.integer();
        const std::optional<IdBytes> fact = row.bytes();
        if (shortForm(bytesFrom(row).toHex().toStdString()) == form)
            place = PrintPlace{sequence, fact ? millisecondsIn(*fact) : 0};
    };
    // The end after a fact, and the end of several copies just after they were joined.
    for (const char* sql : {"SELECT sequence, fact, hash FROM link",
                            "SELECT tie.sequence, link.fact, tie.before FROM tie LEFT JOIN link ON "
                            "link.sequence = tie.sequence AND link.hash = tie.hash ORDER BY tie.sequence"})
        if (const Outcome read = connection.each(QString::fromLatin1(sql), {}, look); !read)
            return read.problem();
    if (!place) {
        const Result<FileEnd> end = endOf(connection);
        if (!end)
            return end.problem();
        if (shortForm(end.value().hash) == form)
            place = PrintPlace{end.value().facts, 0};
    }
    return place ? Result<std::optional<PrintPlace>>{place} : placeBetweenJoinings(connection, form);
}

Result<std::optional<Moment>> lastSaved(StoreFile::Connection& connection)
{
    const auto tips = readTips(connection);
    if (!tips)
        return tips.problem();
    std::int64_t last = 0;
    const auto take = [&last](Row& row) {
        if (const auto fact = row.bytes())
            last = std::max(last, millisecondsIn(*fact));
    };
    for (const ChainTip& tip : tips.value())
        if (const Outcome read =
                connection.each(QStringLiteral("SELECT fact FROM link WHERE sequence = ? AND hash = ?"),
                                {valueOf(tip.sequence), tip.hash}, take);
            !read)
            return read.problem();
    return last > 0 ? std::optional{Moment{last / 1000, 0}} : std::nullopt;
}

} // namespace rig
