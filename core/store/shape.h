#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/saved_before.h"
#include "core/airframe/stamp.h"
#include "core/store/fact_shape.h"
#include "core/store/leaf.h"

#include <optional>
#include <string_view>
#include <tuple>
#include <type_traits>
#include <vector>

namespace rig {

// The language in which core/store/shapes.h describes each fact once: which member stands in which column,
// what may stand there, and to what it refers. A description knows no SQL and no database. It is read by
// core/store/shapes.cpp alone, which makes a FactShape of each; everybody else includes fact_shape.h.

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
template <> inline constexpr const char* kTableOf<PhotoId> = "photo";
template <> inline constexpr const char* kTableOf<LessonRoundId> = "lesson_round";
template <> inline constexpr const char* kTableOf<StudyId> = "crossed_study";
template <> inline constexpr const char* kTableOf<StudyPlaceId> = "study_place";
template <> inline constexpr const char* kTableOf<SupervisedId> = "supervised_rigging";
template <> inline constexpr const char* kTableOf<PracticeReadingId> = "practice_reading";

template <typename Value> struct Optional : std::false_type
{
    using Inner = Value;
};
template <typename Value> struct Optional<std::optional<Value>> : std::true_type
{
    using Inner = Value;
};

// The next cell, by what is looked for in it.
template <typename Raw> std::optional<Raw> taken(CellSource& source, const ColumnInfo& column)
{
    if constexpr (std::is_same_v<Raw, IdBytes>)
        return source.takeId(column);
    else if constexpr (std::is_same_v<Raw, std::int64_t>)
        return source.takeInteger(column);
    else if constexpr (std::is_same_v<Raw, double>)
        return source.takeReal(column);
    else if constexpr (std::is_same_v<Raw, BytesView>)
        return source.takeBytes(column);
    else
        return source.takeText(column);
}

// Once for each type of member, whatever facts have such a member.
template <typename Value>
[[gnu::noinline]] void tellMember(const Value& value, const ColumnInfo& column, CellSink& sink)
{
    using Raw = typename Leaf<Value>::Raw;
    const auto& raw = Leaf<Value>::raw(value); // a day's text lives as long as this
    sink.put(column, std::optional<Raw>{raw});
}

template <typename Value>
void tellMember(const std::optional<Value>& value, const ColumnInfo& column, CellSink& sink)
{
    if (value)
        tellMember(*value, column, sink);
    else
        sink.put(column, std::optional<typename Leaf<Value>::Raw>{});
}

template <typename Value>
[[gnu::noinline]] void hearMember(Value& value, const ColumnInfo& column, CellSource& source)
{
    using Inner = typename Optional<Value>::Inner;
    const auto raw = taken<typename Leaf<Inner>::Raw>(source, column);
    if (!raw)
        return;
    if (std::optional<Inner> made = Leaf<Inner>::made(*raw))
        value = std::move(*made);
    else
        source.refuse(column, "not one of the words or days that may stand there");
}

// One member that stands in one column.
template <typename Owner, typename Value> struct Column
{
    using Inner = typename Optional<Value>::Inner;
    static constexpr int kColumns = 1;

    ColumnInfo info;
    Value Owner::*member;

    void tell(const Owner& owner, CellSink& sink) const { tellMember(owner.*member, info, sink); }
    void tellEmpty(CellSink& sink) const { sink.put(info, std::optional<typename Leaf<Inner>::Raw>{}); }
    void hear(Owner& owner, CellSource& source) const { hearMember(owner.*member, info, source); }
    void list(std::vector<ColumnInfo>& into, bool mayBeEmpty) const
    {
        into.push_back(info);
        into.back().mayBeEmpty = info.mayBeEmpty || mayBeEmpty;
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

    template <typename Owner> void tell(const Owner& owner, CellSink& sink) const
    {
        std::apply([&](const auto&... part) { (part.tell(owner, sink), ...); }, parts);
    }
    void tellEmpty(CellSink& sink) const
    {
        std::apply([&](const auto&... part) { (part.tellEmpty(sink), ...); }, parts);
    }
    template <typename Owner> void hear(Owner& owner, CellSource& source) const
    {
        std::apply([&](const auto&... part) { (part.hear(owner, source), ...); }, parts);
    }
    void list(std::vector<ColumnInfo>& into, bool mayBeEmpty) const
    {
        std::apply([&](const auto&... part) { (part.list(into, mayBeEmpty), ...); }, parts);
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

    void tell(const Owner& owner, CellSink& sink) const
    {
        if constexpr (!kOptional)
            parts.tell(owner.*member, sink);
        else if ((owner.*member).has_value())
            parts.tell(*(owner.*member), sink);
        else
            parts.tellEmpty(sink);
    }
    void tellEmpty(CellSink& sink) const { parts.tellEmpty(sink); }
    void hear(Owner& owner, CellSource& source) const
    {
        if constexpr (!kOptional)
            parts.hear(owner.*member, source);
        else if (!source.skipEmpty(kColumns))
            parts.hear((owner.*member).emplace(), source);
    }
    void list(std::vector<ColumnInfo>& into, bool mayBeEmpty) const
    {
        parts.list(into, mayBeEmpty || kOptional);
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

    void tell(const Owner& owner, CellSink& sink) const { parts.tell(shown(owner.*member), sink); }
    void hear(Owner& owner, CellSource& source) const
    {
        View view;
        parts.hear(view, source);
        owner.*member = made(view);
    }
    void list(std::vector<ColumnInfo>& into, bool mayBeEmpty) const { parts.list(into, mayBeEmpty); }
};

template <typename Owner, typename Value, typename View, typename... Parts>
constexpr Viewed<Owner, Value, View, Several<Parts...>>
viewed(Value Owner::*member, View (*shown)(const Value&), Value (*made)(const View&), Parts... parts)
{
    return {member, shown, made, several(parts...)};
}

// What a fact has many of, in a table of its own.
template <typename Fact, typename Value> struct Children
{
    ChildShape shape;
    const std::vector<Value>& (*all)(const Fact&);
    void (*give)(Fact&, std::vector<Value>);

    void tell(const Fact& fact, CellSink& sink) const
    {
        for (const Value& value : all(fact))
            sink.put(shape.value, std::optional<Raw>{Leaf<Value>::raw(value)});
    }
    Outcome hear(Fact& fact, const EachChild& eachChild) const
    {
        std::vector<Value> values;
        const Outcome heard = eachChild([&](CellSource& source) {
            if (const std::optional<Raw> raw = taken<Raw>(source, shape.value))
                if (const std::optional<Value> made = Leaf<Value>::made(*raw))
                    values.push_back(*made);
        });
        if (heard)
            give(fact, std::move(values));
        return heard;
    }

private:
    using Raw = typename Leaf<Value>::Raw;
};

// `owner` is the column and also the table of the facts that have these.
template <typename Fact, typename Value>
constexpr Children<Fact, Value> children(const char* table, const char* owner, const char* value, Range range,
                                         const std::vector<Value>& (*all)(const Fact&),
                                         void (*give)(Fact&, std::vector<Value>))
{
    return {{table,
             {owner, Storage::Id, false, owner, {}},
             {value, Leaf<Value>::kStorage, false, kTableOf<Value>, range}},
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
