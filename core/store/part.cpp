#include "core/store/part.h"

#include "core/store/attached.h"
#include "core/store/chain.h"
#include "core/store/chain_look.h"
#include "core/store/create_file.h"
#include "core/store/every_shape.h"
#include "core/store/migrations.h"
#include "core/store/tables.h"
#include "core/store/values.h"

#include <algorithm>
#include <array>

namespace rig {

namespace {

// Facts that belong to no airframe: they come where something that comes names them, or they tell of such.
constexpr std::array<std::string_view, 7> kOfNoAirframe{
    "person", "airframe", "gauge", "gauge_check", "practice_shared", "decision", "name_replaced"};

bool isOfAnAirframe(std::string_view table)
{
    return std::ranges::find(kOfNoAirframe, table) == kOfNoAirframe.end();
}

bool isNamedBesides(const ColumnInfo& column, std::string_view table)
{
    return column.refersTo && column.refersTo == table;
}

// In one transaction of a new file, to which the whole one is attached. What comes is listed first.
class Choosing
{
public:
    explicit Choosing(StoreFile::Connection& into) : m_into{into} {}

    Outcome take(AirframeId airframe)
    {
        run(QStringLiteral("CREATE TEMP TABLE kept (id BLOB NOT NULL PRIMARY KEY)"));
        keep(QStringLiteral("SELECT id FROM theirs.airframe WHERE subject = ?"), {valueOf(airframe)});
        for (const FactTable& table : kFactTables)
            if (table.isFact && isOfAnAirframe(table.name))
                keepWhatBelongs(*shapeOfTable(table.name));
        for (std::int64_t before = -1; m_outcome && before != m_kept;) {
            before = m_kept;
            keepWhatIsNamed();
        }
        for (const FactTable& table : kFactTables)
            if (table.isFact)
                takeKept(table.name);
        run(QStringLiteral("DROP TABLE kept"));
        return m_outcome;
    }

private:
    void run(const QString& sql, const QVariantList& values = {})
    {
        if (m_outcome)
            m_outcome = m_into.run(sql, values);
    }

    void keep(const QString& select, const QVariantList& values = {})
    {
        run(QStringLiteral("INSERT OR IGNORE INTO kept ") + select, values);
        const auto kept = m_into.integer(QStringLiteral("SELECT count(*) FROM kept"));
        if (m_outcome && !kept)
            m_outcome = kept.problem();
        else if (m_outcome)
            m_kept = kept.value().value_or(0);
    }

    // Tables come after those to which they refer.
    void keepWhatBelongs(const FactShape& shape)
    {
        QStringList ways;
        for (const ColumnInfo& column : shape.columns)
            if (column.refersTo && isOfAnAirframeOrOne(column.refersTo) &&
                column.refersTo != std::string_view{shape.table})
                ways.append(QStringLiteral("%1 IN (SELECT id FROM kept)").arg(QLatin1String{column.name}));
        if (!ways.isEmpty())
            keep(QStringLiteral("SELECT id FROM theirs.%1 WHERE %2")
                     .arg(QLatin1String{shape.table}, ways.join(QStringLiteral(" OR "))));
    }

    static bool isOfAnAirframeOrOne(std::string_view table)
    {
        return table == "airframe" || isOfAnAirframe(table);
    }

    // People, gauges, the checks of those, and what was decided of what comes.
    void keepWhatIsNamed()
    {
        for (const FactTable& table : kFactTables)
            if (table.isFact)
                for (const char* named : {"person", "gauge"})
                    keepNamed(named, *shapeOfTable(table.name));
        keep(QStringLiteral("SELECT id FROM theirs.gauge_check WHERE gauge IN (SELECT id FROM kept)"));
        keep(QStringLiteral("SELECT id FROM theirs.practice_shared WHERE person IN (SELECT id FROM kept)"));
        keep(QStringLiteral("SELECT id FROM theirs.name_replaced WHERE replaced IN (SELECT id FROM kept)"));
        // Where one of two that are one and the same comes, the other one comes too.
        keep(QStringLiteral(
            "SELECT id FROM theirs.decision WHERE first IN (SELECT id FROM kept) AND second IN "
            "(SELECT id FROM kept) OR holds = 'one-thing' AND kind = 'names' AND (first IN "
            "(SELECT id FROM kept) OR second IN (SELECT id FROM kept))"));
        for (const char* side : {"first", "second"})
            for (const char* thing : {"person", "gauge"})
                keep(QStringLiteral(
                         "SELECT id FROM theirs.%1 WHERE subject IN (SELECT %2 FROM theirs.decision "
                         "WHERE id IN (SELECT id FROM kept))")
                         .arg(QLatin1String{thing}, QLatin1String{side}));
    }

    // Every version of what is named by a row that comes, or by what belongs to it.
    void keepNamed(const char* named, const FactShape& shape)
    {
        const QString select =
            QStringLiteral("SELECT id FROM theirs.%1 WHERE subject IN (SELECT %2 FROM theirs.%3 WHERE %4 IN "
                           "(SELECT id FROM kept))");
        for (const ColumnInfo& column : shape.columns)
            if (isNamedBesides(column, named))
                keep(select.arg(QLatin1String{named}, QLatin1String{column.name}, QLatin1String{shape.table},
                                QStringLiteral("id")));
        if (shape.children && isNamedBesides(shape.children->value, named))
            keep(select.arg(QLatin1String{named}, QLatin1String{shape.children->value.name},
                            QLatin1String{shape.children->table}, QLatin1String{shape.children->owner.name}));
    }

    void takeKept(const char* table)
    {
        const QString which = QStringLiteral("%1 IN (SELECT id FROM kept) ORDER BY %1");
        if (m_outcome)
            m_outcome = takeRows(m_into, table, which.arg(QStringLiteral("id")));
        for (const BelongingTable& belonging : tablesBelongingTo(table))
            if (m_outcome)
                m_outcome = takeRows(m_into, belonging.table, which.arg(valueOf(belonging.owner).toString()));
    }

    StoreFile::Connection& m_into;
    Outcome m_outcome = Done{};
    std::int64_t m_kept = 0;
};

Result<FileEnd> fill(const std::string& path, OtherFile& whole, AirframeId airframe)
{
    const auto made = createFile(path, newestSchemaVersion());
    if (!made)
        return made.problem();
    StoreFile::Connection& into = *made.value();
    const Attached attached{into, whole.connection().path};
    if (!attached.outcome())
        return attached.outcome().problem();
    Transaction transaction{into};
    if (!transaction.begun())
        return transaction.begun().problem();
    if (const Outcome taken = Choosing{into}.take(airframe); !taken)
        return taken.problem();
    if (const Outcome linked = Chain{into}.takeOver(); !linked)
        return linked.problem();
    const Result<FileEnd> end = endOf(into);
    if (!end)
        return end;
    if (end.value().facts == 0)
        return Problem{ProblemKind::NotFound, textOf(airframe.bytes)};
    if (const Outcome committed = transaction.commit(); !committed)
        return committed.problem();
    return end;
}

} // namespace

Result<HandedOn> handOn(OtherFile& whole, AirframeId airframe, const std::string& out)
{
    const Result<FileEnd> original = endOf(whole.connection());
    if (!original)
        return original.problem();
    HandedOn handed{.end = {}, .original = original.value()};
    const Outcome made = makeUnderAnotherName(out, [&](const std::string& making) -> Outcome {
        const Result<FileEnd> end = fill(making, whole, airframe);
        if (!end)
            return end.problem();
        handed.end = end.value();
        return Done{};
    });
    if (!made)
        return made.problem();
    return handed;
}

} // namespace rig
