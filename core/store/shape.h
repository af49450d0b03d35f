#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/saved_before.h"
#include "core/airframe/stamp.h"
#include "core/store/leaf.h"

#include <optional>
#include <string>
#include <string_view>
#include <tuple>
#include <type_traits>
#include <vector>

namespace rig {

// The language in which core/store/shapes.h describes each fact once: which member stands in which column,
// what may stand there, and to what it refers. A description knows no SQL and no database. What is made of it
// tells or hears cells:
//
//     tell(fact, sink)    calls sink.put(column, optional<Raw>) for every column in order
//     hear(fact, source)  asks source.take<Raw>(column) for every column in order
//     forEachColumn<Fact>(visit)
//
// Another database, another check or a string of canonical bytes is one more sink.

struct ColumnInfo
{
    const char* name;
    Storage storage;
    bool mayBeEmpty;
    const char* refersTo; // the table whose ids stand here; null when it is no id of another fact
    Range range;
    std::string_view (*word)(int) = nullptr; // of a Word, each that may stand here; empty beyond the last
};

// The table in which the facts with such an id stand; null where the kind of fact is not known.
template <typename SomeId> inline constexpr const char* kTableOf = nullptr;
template <> inline constexpr const char* kTableOf<AirframeId> = "airframe";
template <> inline constexpr const char* kTableOf<CouplingId> = "coupling";
template <> inline constexpr const char* kTableOf<FittingId> = "fitting";
template <> inline constexpr const char* kTableOf<PersonId> = "person";
template <> inline constexpr const char* kTableOf<GaugeId> = "gauge";
template <> inline constexpr const char* kTableOf<RecordId> = "rigging_record";
template <> inline constexpr const char* kTableOf<ReadingId> = "reading";
template <> inline constexpr const char* kTableOf<SurfaceId> = "surface";
template <> inline constexpr const char* kTableOf<QuestionId> = "question";
template <> inline constexpr const char* kTableOf<BaselineId> = "baseline";

template <typename Value> struct Optional : std::false_type
{
    using Inner = Value;
};
template <typename Value> struct Optional<std::optional<Value>> : std::true_type
{
    using Inner = Value;
};

// One member that stands in one column.
template <typename Owner, typename Value> struct Column
{
    using Inner = typename Optional<Value>::Inner;
    using Raw = typename Leaf<Inner>::Raw;
    static constexpr int kColumns = 1;

    ColumnInfo info;
    Value Owner::*member;

    template <typename Sink> void tell(const Owner& owner, Sink& sink) const
    {
        const Value& value = owner.*member;
        if constexpr (Optional<Value>::value)
            sink.put(info, value ? std::optional<Raw>{Leaf<Inner>::raw(*value)} : std::optional<Raw>{});
        else
            sink.put(info, std::optional<Raw>{Leaf<Inner>::raw(value)});
    }
    template <typename Sink> void tellEmpty(Sink& sink) const { sink.put(info, std::optional<Raw>{}); }
    template <typename Source> void hear(Owner& owner, Source& source) const
    {
        std::optional<Raw> raw = source.template take<Raw>(info);
        if (!raw)
            return;
        if (std::optional<Inner> made = Leaf<Inner>::made(std::move(*raw)))
            owner.*member = std::move(*made);
        else
            source.refuse(info, "not one of the words or days that may stand there");
    }
    template <typename Visit> void visit(Visit&& visit, bool mayBeEmpty) const
    {
        ColumnInfo shown = info;
        shown.mayBeEmpty = info.mayBeEmpty || mayBeEmpty;
        visit(shown);
    }
};

template <typename Owner, typename Value>
constexpr Column<Owner, Value> column(const char* name, Value Owner::*member, Range range)
{
    using Inner = typename Optional<Value>::Inner;
    ColumnInfo info{name, Leaf<Inner>::kStorage, Optional<Value>::value, kTableOf<Inner>, range};
    if constexpr (std::is_enum_v<Inner>)
        info.word = [](int i) { return wordOf(static_cast<Inner>(i)); };
    return {info, member};
}

template <typename Owner, typename Value>
constexpr Column<Owner, Value> column(const char* name, Value Owner::*member)
{
    return column(name, member, Leaf<typename Optional<Value>::Inner>::kRange);
}

// Several columns one after the other, of the same owner.
template <typename... Parts> struct Several
{
    static constexpr int kColumns = (0 + ... + Parts::kColumns);

    std::tuple<Parts...> parts;

    template <typename Owner, typename Sink> void tell(const Owner& owner, Sink& sink) const
    {
        std::apply([&](const auto&... part) { (part.tell(owner, sink), ...); }, parts);
    }
    template <typename Sink> void tellEmpty(Sink& sink) const
    {
        std::apply([&](const auto&... part) { (part.tellEmpty(sink), ...); }, parts);
    }
    template <typename Owner, typename Source> void hear(Owner& owner, Source& source) const
    {
        std::apply([&](const auto&... part) { (part.hear(owner, source), ...); }, parts);
    }
    template <typename Visit> void visit(Visit&& visit, bool mayBeEmpty) const
    {
        std::apply([&](const auto&... part) { (part.visit(visit, mayBeEmpty), ...); }, parts);
    }
};

template <typename... Parts> constexpr Several<Parts...> several(Parts... parts)
{
    return {{parts...}};
}

// A member whose own members stand in columns. Of an optional one they are all empty or all there.
template <typename Owner, typename Value, typename Parts> struct Nested
{
    static constexpr int kColumns = Parts::kColumns;
    static constexpr bool kOptional = Optional<Value>::value;

    Value Owner::*member;
    Parts parts;

    template <typename Sink> void tell(const Owner& owner, Sink& sink) const
    {
        if constexpr (!kOptional)
            parts.tell(owner.*member, sink);
        else if ((owner.*member).has_value())
            parts.tell(*(owner.*member), sink);
        else
            parts.tellEmpty(sink);
    }
    template <typename Sink> void tellEmpty(Sink& sink) const { parts.tellEmpty(sink); }
    template <typename Source> void hear(Owner& owner, Source& source) const
    {
        if constexpr (!kOptional)
            parts.hear(owner.*member, source);
        else if (!source.skipEmpty(kColumns))
            parts.hear((owner.*member).emplace(), source);
    }
    template <typename Visit> void visit(Visit&& visit, bool mayBeEmpty) const
    {
        parts.visit(visit, mayBeEmpty || kOptional);
    }
};

template <typename Owner, typename Value, typename... Parts>
constexpr Nested<Owner, Value, Several<Parts...>> nested(Value Owner::*member, Parts... parts)
{
    return {member, several(parts...)};
}

template <typename Owner> constexpr auto moment(const char* at, const char* offset, Moment Owner::*member)
{
    return nested(member, column(at, &Moment::utcSeconds, kAnyTime),
                  column(offset, &Moment::offsetSeconds, kOffset));
}

// A member that shows itself as another struct, whose members stand in the columns.
template <typename Owner, typename Value, typename View, typename Parts> struct Viewed
{
    static constexpr int kColumns = Parts::kColumns;

    Value Owner::*member;
    View (*shown)(const Value&);
    Value (*made)(const View&);
    Parts parts;

    template <typename Sink> void tell(const Owner& owner, Sink& sink) const
    {
        parts.tell(shown(owner.*member), sink);
    }
    template <typename Source> void hear(Owner& owner, Source& source) const
    {
        View view;
        parts.hear(view, source);
        owner.*member = made(view);
    }
    template <typename Visit> void visit(Visit&& visit, bool mayBeEmpty) const
    {
        parts.visit(visit, mayBeEmpty);
    }
};

template <typename Owner, typename Value, typename View, typename... Parts>
constexpr Viewed<Owner, Value, View, Several<Parts...>>
viewed(Value Owner::*member, View (*shown)(const Value&), Value (*made)(const View&), Parts... parts)
{
    return {member, shown, made, several(parts...)};
}

// What a fact has many of, in a table of its own: one column names the fact, one holds the value.
template <typename Fact, typename Value> struct Children
{
    const char* table;
    ColumnInfo owner;
    ColumnInfo value;
    const std::vector<Value>& (*all)(const Fact&);
    void (*give)(Fact&, std::vector<Value>);

    static auto raw(const Value& value) { return Leaf<Value>::raw(value); }
    // One value from a source that stands at its cell.
    template <typename Source> std::optional<Value> hear(Source& source) const
    {
        auto taken = source.template take<typename Leaf<Value>::Raw>(value);
        return taken ? Leaf<Value>::made(std::move(*taken)) : std::nullopt;
    }
};

template <typename Fact, typename Value>
constexpr Children<Fact, Value> children(const char* table, const char* owner, const char* value, Range range,
                                         const std::vector<Value>& (*all)(const Fact&),
                                         void (*give)(Fact&, std::vector<Value>))
{
    return {table,
            {owner, Storage::Id, false, kTableOf<decltype(Fact::id)>, {}},
            {value, Leaf<Value>::kStorage, false, kTableOf<Value>, range},
            all,
            give};
}

// Specialised for each fact in core/store/shapes.h: `table`, `columns`, and `children` where it has any.
template <typename Fact> struct Shape;

// What stands before the columns of its own in every fact. Of a thing with versions `subject` is the struct's
// id; the version's own id is no member of it.
template <typename Fact> constexpr auto headOf()
{
    const char* const id = kNamesVersions<decltype(Fact::id)> ? "subject" : "id";
    return several(Column<Fact, decltype(Fact::id)>{{id, Storage::Id, false, nullptr, {}}, &Fact::id},
                   nested(&Fact::stamp, column("stated_by", &Stamp::by),
                          moment("stated_at", "stated_offset", &Stamp::when)));
}

template <typename Fact> inline constexpr auto kHeadOf = headOf<Fact>();

template <typename Fact>
constexpr int kColumnsOf = decltype(kHeadOf<Fact>)::kColumns + decltype(Shape<Fact>::columns)::kColumns;

template <typename Fact, typename Sink> void tell(const Fact& fact, Sink& sink)
{
    kHeadOf<Fact>.tell(fact, sink);
    Shape<Fact>::columns.tell(fact, sink);
}

template <typename Fact, typename Source> void hear(Fact& fact, Source& source)
{
    kHeadOf<Fact>.hear(fact, source);
    Shape<Fact>::columns.hear(fact, source);
}

// Calls visit(const ColumnInfo&) for each, in the order of tell() and hear().
template <typename Fact, typename Visit> void forEachColumn(Visit&& visit)
{
    kHeadOf<Fact>.visit(visit, false);
    Shape<Fact>::columns.visit(visit, false);
}

// What belongs to a fact of another table and has no id of its own: `owner` is the column that names that
// fact.
template <typename Fact>
concept IsAttached = requires
{
    Shape<Fact>::owner;
};

template <typename Fact>
concept HasChildren = requires
{
    Shape<Fact>::children;
};

} // namespace rig
