#include "core/store/newest.h"

#include "core/airframe/airframe.h"
#include "core/airframe/coupling.h"
#include "core/airframe/gauge.h"
#include "core/airframe/person.h"
#include "core/airframe/surface.h"
#include "core/store/conflicts_in.h"
#include "core/store/values.h"

#include <algorithm>
#include <map>

namespace rig {

Outcome eachChild(StoreFile::Connection& connection, const ChildShape& children, const IdBytes& row,
                  const std::function<void(CellSource&)>& take)
{
    const QString sql = QStringLiteral("SELECT %1 FROM %2 WHERE %3 = ? ORDER BY %1")
                            .arg(QLatin1String{children.value.name}, QLatin1String{children.table},
                                 QLatin1String{children.owner.name});
    return connection.each(sql, {valueOf(row)}, [&](Row& cells) {
        RowCells source{cells, children.table};
        take(source);
    });
}

std::vector<std::size_t> newestAmong(const std::vector<Version>& versions)
{
    std::map<SaveOrder, std::size_t> places;
    for (std::size_t i = 0; i < versions.size(); ++i) {
        const auto [known, isFirst] = places.try_emplace(versions[i].first, i);
        if (!isFirst && versions[known->second].saved < versions[i].saved)
            known->second = i;
    }
    std::vector<std::size_t> newest;
    for (const auto& [first, place] : places)
        newest.push_back(place);
    return newest;
}

namespace {

// Calls `take` for the cells of each row, with the row's own id.
Outcome eachVersion(StoreFile::Connection& connection, const FactShape& shape, const char* where,
                    const QVariantList& values, const std::function<void(const IdBytes&, CellSource&)>& take)
{
    const QString sql = QStringLiteral("SELECT t.id, %1 FROM %2 t %3")
                            .arg(columnsSql(shape, "t"), QLatin1String{shape.table}, QLatin1String{where});
    return connection.each(sql, values, [&](Row& row) {
        const std::optional<IdBytes> id = row.bytes();
        if (!id)
            return row.refuse(std::string{shape.table} + ".id: an id of the wrong length");
        RowCells cells{row, shape.table};
        take(*id, cells);
    });
}

} // namespace

template <typename Thing>
Result<std::vector<Thing>> newest(StoreFile::Connection& connection, const char* where,
                                  const QVariantList& values)
{
    if (const Outcome decided = readDecided(connection); !decided)
        return decided.problem();
    std::vector<Thing> rows;
    std::vector<Version> versions;
    const Outcome read =
        eachVersion(connection, factShape<Thing>(), where, values, [&](const IdBytes& id, CellSource& cells) {
            if (connection.decided.isSetAside(id))
                return;
            Thing& thing = rows.emplace_back();
            hear(thing, cells);
            thing.id.bytes = connection.decided.asRead(thing.id.bytes);
            versions.push_back({firstSavedOf(thing), saveOrderOf(thing.stamp, id)});
        });
    if (!read)
        return read.problem();
    std::vector<Thing> things;
    for (const std::size_t place : newestAmong(versions)) {
        things.push_back(std::move(rows[place]));
        if (!factShape<Thing>().children)
            continue;
        if (const Outcome whole = readChildren(connection, versions[place].saved.id, things.back()); !whole)
            return whole.problem();
    }
    return things;
}

template Result<std::vector<Airframe>> newest(StoreFile::Connection&, const char*, const QVariantList&);
template Result<std::vector<Coupling>> newest(StoreFile::Connection&, const char*, const QVariantList&);
template Result<std::vector<Gauge>> newest(StoreFile::Connection&, const char*, const QVariantList&);
template Result<std::vector<Person>> newest(StoreFile::Connection&, const char*, const QVariantList&);
template Result<std::vector<Surface>> newest(StoreFile::Connection&, const char*, const QVariantList&);

} // namespace rig
