#include "core/store/every_shape.h"

#include "core/airframe/name_replaced.h"

#include <algorithm>
#include <map>

namespace rig {

namespace {

template <typename... Fact> std::vector<const FactShape*> shapesOf(std::type_identity<std::tuple<Fact...>>)
{
    return {&factShape<Fact>()...};
}

std::map<std::string_view, std::vector<BelongingTable>> belongings()
{
    std::map<std::string_view, std::vector<BelongingTable>> all;
    for (const FactShape* shape : everyShape())
        if (const std::optional<ChildShape>& children = shape->children)
            all[shape->table].push_back({children->table, children->owner.name});
    for (const FactShape* attached : {&factShape<Shown>(), &factShape<PhotoImage>()})
        all[attached->owner].push_back({attached->table, attached->owner});
    for (auto& [table, each] : all)
        std::ranges::sort(each, {}, &BelongingTable::table);
    return all;
}

} // namespace

const std::vector<const FactShape*>& everyShape()
{
    static const std::vector<const FactShape*> all = shapesOf(std::type_identity<Facts>{});
    return all;
}

const std::vector<BelongingTable>& tablesBelongingTo(std::string_view table)
{
    static const std::map<std::string_view, std::vector<BelongingTable>> all = belongings();
    static const std::vector<BelongingTable> none;
    const auto found = all.find(table);
    return found == all.end() ? none : found->second;
}

const FactShape* shapeOfTable(std::string_view table)
{
    const auto found = std::ranges::find(
        everyShape(), table, [](const FactShape* shape) { return std::string_view{shape->table}; });
    return found == everyShape().end() ? nullptr : *found;
}

} // namespace rig
