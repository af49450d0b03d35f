#include "core/store/inspection.h"

#include "core/airframe/airframe.h"
#include "core/airframe/coupling.h"
#include "core/airframe/gauge.h"
#include "core/airframe/name_replaced.h"
#include "core/airframe/person.h"
#include "core/airframe/surface.h"
#include "core/baseline/admitted.h"
#include "core/day_entry.h"
#include "core/judgement/judgement.h"
#include "core/lesson/learning_taken_back.h"
#include "core/lesson/lesson.h"
#include "core/lesson/photo.h"
#include "core/lesson/sign_off.h"
#include "core/lesson/study.h"
#include "core/rigging/event.h"
#include "core/rigging/record_content.h"
#include "core/store/cells.h"
#include "core/store/connection.h"
#include "core/store/every_shape.h"
#include "core/store/tables.h"
#include "core/store/values.h"

#include <algorithm>
#include <string_view>

namespace rig {

namespace {

using TakeRow = std::function<void(const char* table, std::int64_t row, const std::string& why)>;

// Who is told of rows that are refused, and how many have been heard.
struct Listening
{
    const TakeRow& take;
    Progress* progress;
    std::size_t of = 0; // rows there are
    std::size_t heard = 0;

    void hearOne()
    {
        constexpr std::size_t kBetween = 100;
        if (++heard % kBetween == 0)
            goesOn(progress, heard, of);
    }
};

// A row as one of the functions below hears it: what it is refused for, if for anything.
template <typename Hear>
Outcome eachRefused(StoreFile::Connection& file, const QString& columns, const char* table, const Hear& hear,
                    Listening& listening)
{
    if (isStopped(listening.progress))
        return stoppedWork();
    const QString sql = QStringLiteral("SELECT t.rowid, %1 FROM %2 t").arg(columns, QLatin1String{table});
    return file.each(sql, {}, [&](const Row& row) {
        Row cells = row; // so that one that is refused does not end the reading of the others
        cells.skip(1);
        hear(cells);
        if (!cells.problem().empty())
            listening.take(table, row.raw(0).toLongLong(), cells.problem());
        listening.hearOne();
    });
}

template <typename Fact> Outcome eachRefusedOf(StoreFile::Connection& file, Listening& listening)
{
    const FactShape& shape = factShape<Fact>();
    const Outcome read = eachRefused(
        file, columnsSql(shape, "t"), shape.table, [](Row& row) { factFrom<Fact>(row); }, listening);
    if (!read || !shape.children)
        return read;
    const ChildShape& children = *shape.children;
    const auto hearChild = [&children](Row& row) {
        RowCells cells{row, children.table};
        cells.takeId(children.owner);
        if (children.value.storage == Storage::Id)
            cells.takeId(children.value);
        else
            cells.takeInteger(children.value);
    };
    const QString columns = QStringLiteral("t.%1, t.%2")
                                .arg(QLatin1String{children.owner.name}, QLatin1String{children.value.name});
    return eachRefused(file, columns, children.table, hearChild, listening);
}

template <typename... Kinds>
Outcome eachRefusedAmong(std::tuple<Kinds...>*, StoreFile::Connection& file, Listening& listening)
{
    Outcome read = Done{};
    static_cast<void>(((read = eachRefusedOf<Kinds>(file, listening), static_cast<bool>(read)) && ...));
    return read;
}

std::vector<const FactShape*> shapesAndAttached()
{
    std::vector<const FactShape*> all = everyShape();
    all.insert(all.end(), {&factShape<Shown>(), &factShape<PhotoImage>()});
    return all;
}

Result<std::size_t> rowsToHear(StoreFile::Connection& file)
{
    std::size_t all = 0;
    const auto add = [&](const char* table) -> Outcome {
        const auto rows = file.integer(QStringLiteral("SELECT count(*) FROM %1").arg(QLatin1String{table}));
        if (!rows)
            return rows.problem();
        all += static_cast<std::size_t>(rows.value().value_or(0));
        return Done{};
    };
    for (const FactShape* shape : shapesAndAttached()) {
        if (const Outcome added = add(shape->table); !added)
            return added.problem();
        if (shape->children)
            if (const Outcome added = add(shape->children->table); !added)
                return added.problem();
    }
    return all;
}

// A column that names a fact of another table.
struct Reference
{
    const char* table;
    const char* column;
    const char* named;
    bool byRow = false; // names one version and not the thing
};

bool isVersioned(std::string_view table)
{
    const FactShape* const shape = shapeOfTable(table);
    return shape && shape->hasVersions;
}

std::vector<Reference> everyReference()
{
    std::vector<Reference> references;
    const auto append = [&references](const char* table, const ColumnInfo& column) {
        if (column.refersTo)
            references.push_back({table, column.name, column.refersTo});
    };
    for (const FactShape* shape : shapesAndAttached()) {
        for (const ColumnInfo& column : shape->columns)
            append(shape->table, column);
        if (shape->owner) // named after the table of what it is attached to
            references.push_back({shape->table, shape->owner, shape->owner});
        if (shape->children) {
            references.push_back({shape->children->table, shape->children->owner.name, shape->table, true});
            append(shape->children->table, shape->children->value);
        }
    }
    return references;
}

// Of what a column names, the airframe that it belongs to; empty for what belongs to none.
QString airframeOf(const std::string_view named, const QString& id)
{
    const auto ask = [&id](const char* form) { return QString::fromLatin1(form).arg(id); };
    if (named == "airframe")
        return id;
    if (named == "coupling")
        return ask("(SELECT airframe FROM coupling WHERE subject = %1 LIMIT 1)");
    if (named == "surface")
        return ask("(SELECT airframe FROM surface WHERE subject = %1 LIMIT 1)");
    if (named == "rigging_record")
        return ask("(SELECT airframe FROM rigging_record WHERE id = %1)");
    if (named == "lesson_round")
        return ask("(SELECT airframe FROM lesson_round WHERE id = %1)");
    if (named == "crossed_study")
        return ask("(SELECT airframe FROM crossed_study WHERE id = %1)");
    if (named == "reading")
        return ask("(SELECT c.airframe FROM reading r JOIN coupling c ON c.subject = r.coupling "
                   "WHERE r.id = %1 LIMIT 1)");
    return {};
}

// Rows whose two columns name things of two airframes.
QStringList pairsApart(const FactShape& shape)
{
    QStringList owners;
    for (const ColumnInfo& column : shape.columns)
        if (column.refersTo)
            if (const QString owner = airframeOf(column.refersTo, QStringLiteral("t.") + column.name);
                !owner.isEmpty())
                owners.append(owner);
    QStringList apart;
    for (qsizetype i = 1; i < owners.size(); ++i)
        apart.append(QStringLiteral("%1 <> %2").arg(owners.front(), owners[i]));
    const std::string_view table = shape.table;
    if (table == "reading")
        apart << QStringLiteral("t.coupling <> (SELECT coupling FROM fitting WHERE id = t.fitting)")
              << QStringLiteral("t.coupling <> (SELECT coupling FROM reading WHERE id = t.corrects)");
    if (table == "question")
        apart << QStringLiteral("t.coupling <> (SELECT coupling FROM reading WHERE id = t.reading)");
    if (table == "practice_reading")
        apart << QStringLiteral("t.coupling <> (SELECT coupling FROM study_place WHERE id = t.place)");
    return apart;
}

Outcome count(StoreFile::Connection& file, const QString& sql, Finding finding, std::vector<Finding>& into,
              const QVariantList& values = {})
{
    const auto rows = file.integer(sql, values);
    if (!rows)
        return rows.problem();
    finding.rows = rows.value().value_or(0);
    if (finding.rows > 0)
        into.push_back(std::move(finding));
    return Done{};
}

Outcome findApart(StoreFile::Connection& file, std::vector<Finding>& into, Progress* progress)
{
    const std::vector<const FactShape*> shapes = shapesAndAttached();
    std::size_t asked = 0;
    for (const FactShape* shape : shapes) {
        if (!goesOn(progress, asked++, shapes.size()))
            return stoppedWork();
        if (const QStringList apart = pairsApart(*shape); !apart.isEmpty())
            if (const Outcome done =
                    count(file,
                          QStringLiteral("SELECT count(*) FROM %1 t WHERE %2")
                              .arg(QLatin1String{shape->table}, apart.join(QStringLiteral(" OR "))),
                          {FindingKind::NotTogether, shape->table, 0, {}}, into);
                !done)
                return done;
    }
    return count(file,
                 QStringLiteral("SELECT count(*) FROM baseline_reading t WHERE "
                                "(SELECT fitting FROM baseline WHERE id = t.baseline) <> "
                                "(SELECT fitting FROM reading WHERE id = t.reading)"),
                 {FindingKind::NotTogether, "baseline_reading", 0, {}}, into);
}

Outcome findIds(StoreFile::Connection& file, Moment now, std::vector<Finding>& into, Progress* progress)
{
    constexpr std::int64_t kDay = 24 * 3600;
    const std::int64_t year2101 =
        std::chrono::sys_seconds{Day{std::chrono::year{2101} / 1 / 1}}.time_since_epoch().count();
    const std::int64_t last = std::min(now.utcSeconds + kDay, year2101) * 1000;
    IdBytes from{}; // the least id of the millisecond after
    for (std::size_t i = 0; i < 6; ++i)
        from[i] = static_cast<std::uint8_t>((last + 1) >> (8 * (5 - i)));
    IdBytes greatest{};
    greatest.fill(0xff);
    std::size_t asked = 0;
    for (const FactTable& table : kFactTables) {
        if (!goesOn(progress, asked++, kFactTables.size()))
            return stoppedWork();
        if (!table.isFact)
            continue;
        const QString sql =
            QStringLiteral("SELECT count(*) FROM %1 WHERE id >= ?").arg(QLatin1String{table.name});
        for (const auto& [kind, least] :
             {std::pair{FindingKind::FutureId, from}, std::pair{FindingKind::LastId, greatest}})
            if (const Outcome done = count(file, sql, {kind, table.name, 0, {}}, into, {valueOf(least)});
                !done)
                return done;
    }
    return Done{};
}

} // namespace

Outcome eachUnreadableRow(StoreFile::Connection& file, const TakeRow& take, Progress* progress)
{
    Listening listening{take, progress};
    if (progress) {
        const auto rows = rowsToHear(file);
        if (!rows)
            return rows.problem();
        listening.of = rows.value();
    }
    if (const Outcome read = eachRefusedAmong(static_cast<Facts*>(nullptr), file, listening); !read)
        return read;
    if (const Outcome read = eachRefusedOf<Shown>(file, listening); !read)
        return read;
    return eachRefusedOf<PhotoImage>(file, listening);
}

Outcome eachPhoto(StoreFile::Connection& file,
                  const std::function<void(const Photo& photo, const PhotoImage& image)>& take,
                  Progress* progress)
{
    std::size_t all = 0;
    if (progress) {
        const auto photos = file.integer(QStringLiteral("SELECT count(*) FROM photo_image"));
        if (!photos)
            return photos.problem();
        all = static_cast<std::size_t>(photos.value().value_or(0));
    }
    std::size_t done = 0;
    const QString sql =
        QStringLiteral("SELECT %1, %2 FROM photo t JOIN photo_image i ON i.photo = t.id")
            .arg(columnsSql(factShape<Photo>(), "t"), columnsSql(factShape<PhotoImage>(), "i"));
    const Outcome read = file.each(sql, {}, [&](const Row& row) {
        if (!goesOn(progress, done++, all))
            return;
        Row cells = row;
        const auto photo = factFrom<Photo>(cells);
        const auto image = factFrom<PhotoImage>(cells);
        if (cells.problem().empty())
            take(photo, image);
    });
    return read && isStopped(progress) ? Outcome{stoppedWork()} : read;
}

Result<std::vector<long long>> LostReference::rows() const
{
    // Of a thing with versions any one will do.
    const QString sql =
        QStringLiteral("SELECT rowid FROM %1 WHERE %2 IS NOT NULL AND %2 NOT IN (SELECT %3 FROM %4)")
            .arg(QLatin1String{table}, QLatin1String{column},
                 QLatin1String{!byRow && isVersioned(named) ? "subject" : "id"}, QLatin1String{named});
    std::vector<long long> found;
    const Outcome read = file.each(sql, {}, [&found](Row& row) { found.push_back(row.integer()); });
    if (!read)
        return read.problem();
    return found;
}

Outcome eachLostReference(StoreFile::Connection& file,
                          const std::function<Outcome(const LostReference&)>& take, Progress* progress)
{
    const std::vector<Reference> references = everyReference();
    std::size_t asked = 0;
    for (const Reference& reference : references) {
        if (!goesOn(progress, asked++, references.size()))
            return stoppedWork();
        if (const Outcome done =
                take({file, reference.table, reference.column, reference.named, reference.byRow});
            !done)
            return done;
    }
    return Done{};
}

Result<std::vector<Finding>> lostReferences(StoreFile::Connection& file, Progress* progress)
{
    std::vector<Finding> found;
    const auto count = [&found](const LostReference& lost) -> Outcome {
        const auto rows = lost.rows();
        if (!rows)
            return rows.problem();
        if (!rows.value().empty())
            found.push_back({FindingKind::LostReference, lost.table,
                             static_cast<std::int64_t>(rows.value().size()), lost.named});
        return Done{};
    };
    if (const Outcome read = eachLostReference(file, count, progress); !read)
        return read.problem();
    return found;
}

Result<std::vector<Finding>> findingsIn(StoreFile::Connection& file, Moment now, Progress* progress)
{
    const Watched watched{file, progress};
    WorkInParts parts{progress, {8, 5, 2, 1}}; // as measured on a file of 100,000 readings
    std::vector<Finding> found;
    const auto take = [&found](const char* table, std::int64_t, const std::string& why) {
        if (found.empty() || found.back().table != table)
            found.push_back({FindingKind::Unreadable, table, 0, why});
        ++found.back().rows;
    };
    if (const Outcome read = eachUnreadableRow(file, take, &parts); !read)
        return read.problem();
    parts.endPart();
    const auto lost = lostReferences(file, &parts);
    if (!lost)
        return lost;
    found.insert(found.end(), lost.value().begin(), lost.value().end());
    parts.endPart();
    if (const Outcome done = findApart(file, found, &parts); !done)
        return done.problem();
    parts.endPart();
    if (const Outcome done = findIds(file, now, found, &parts); !done)
        return done.problem();
    if (!parts.endPart())
        return stoppedWork();
    return found;
}

} // namespace rig
