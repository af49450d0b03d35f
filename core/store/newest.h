#pragma once

#include "core/store/cells.h"
#include "core/store/connection.h"
#include "core/store/shapes.h"

#include <map>
#include <vector>

namespace rig {

// What stands in the table beside the fact's own: the sizes of a gauge, the readings of a baseline.
template <typename Fact>
Outcome readChildren(StoreFile::Connection& connection, const IdBytes& row, Fact& fact)
{
    constexpr auto& children = Shape<Fact>::children;
    const QString sql = QStringLiteral("SELECT %1 FROM %2 WHERE %3 = ? ORDER BY %1")
                            .arg(QLatin1String{children.value.name}, QLatin1String{children.table},
                                 QLatin1String{children.owner.name});
    std::remove_cvref_t<decltype(children.all(fact))> values;
    const Outcome read = connection.each(sql, {valueOf(row)}, [&](Row& cells) {
        RowCells source{cells, children.table};
        if (const auto value = children.hear(source))
            values.push_back(*value);
    });
    if (!read)
        return read;
    children.give(fact, std::move(values));
    return Done{};
}

// The newest version of each thing, in the order in which they were first told of.
template <typename Thing>
Result<std::vector<Thing>> newest(StoreFile::Connection& connection, const char* where = "",
                                  const QVariantList& values = {})
{
    struct Version
    {
        SaveOrder saved;
        Thing thing;
    };
    std::map<IdBytes, Version> versions; // by the first one
    const QString sql =
        QStringLiteral("SELECT t.id, %1 FROM %2 t %3")
            .arg(columnsSql<Thing>("t"), QLatin1String{Shape<Thing>::table}, QLatin1String{where});
    const Outcome read = connection.each(sql, values, [&](Row& row) {
        const std::optional<IdBytes> id = row.bytes();
        if (!id)
            return row.refuse(std::string{Shape<Thing>::table} + ".id: an id of the wrong length");
        Version version{{}, factFrom<Thing>(row)};
        version.saved = saveOrderOf(version.thing.stamp, *id);
        const auto [known, isFirst] = versions.try_emplace(version.thing.id.bytes, version);
        if (!isFirst && known->second.saved < version.saved)
            known->second = std::move(version);
    });
    if (!read)
        return read.problem();
    std::vector<Thing> things;
    for (auto& [first, version] : versions) {
        if constexpr (HasChildren<Thing>)
            if (const Outcome whole = readChildren(connection, version.saved.id, version.thing); !whole)
                return whole.problem();
        things.push_back(std::move(version.thing));
    }
    std::ranges::sort(things, {}, [](const Thing& thing) { return firstSavedOf(thing); });
    return things;
}

} // namespace rig
