#pragma once

#include "app/pages/setup/setup_entries.h"
#include "app/wording/day_words.h"
#include "app/wording/entry_words.h"
#include "app/wording/setup_words.h"
#include "core/result.h"
#include "core/store/names.h"

#include <algorithm>

namespace rig {

// What every save() of Set up shares: reading typed fields and collecting what is wrong with them.

inline std::string plain(const QString& typed)
{
    return typed.trimmed().toStdString();
}

// Collects what is wrong while the fields are read one after another.
class EntryReader
{
public:
    void refuse(Field field, const QString& sentence) { m_problems.push_back({field, sentence}); }

    void needs(Field field, const QString& typed, const QString& sentence)
    {
        if (isBlank(typed.toStdString()))
            refuse(field, sentence);
    }

    // There has to be one, and no other thing of the list may bear it. `taken` makes the sentence.
    template <typename Thing, typename ThingId, typename Taken>
    void name(Field field, const QString& typed, const std::vector<Thing>& known, const ThingId& own,
              std::string Thing::*name, const QString& missing, Taken taken)
    {
        needs(field, typed, missing);
        const bool isTaken = std::ranges::any_of(known, [&](const Thing& thing) {
            return thing.id != own && comparable(thing.*name) == comparable(typed.toStdString());
        });
        if (isTaken)
            refuse(field, taken(typed.trimmed()));
    }

    // Empty when nothing can be read; that is refused unless nothing was typed and `mayBeEmpty`.
    std::optional<Day> day(Field field, const QString& typed, bool mayBeEmpty = false)
    {
        if (typed.trimmed().isEmpty()) {
            if (!mayBeEmpty)
                refuse(field, DayWords::missing());
            return std::nullopt;
        }
        const auto read = readDay(typed);
        if (!read)
            refuse(field, DayWords::unread(typed));
        return read;
    }

    std::optional<Day> pastDay(Field field, const QString& typed, Day today)
    {
        const auto read = day(field, typed);
        if (read && *read > today)
            refuse(field, SetUpWords::dayToCome());
        return read;
    }

    std::optional<Gap> length(Field field, const QString& typed)
    {
        const GapEntry entry = parseGap(plain(typed));
        if (const auto* gap = std::get_if<Gap>(&entry))
            return *gap;
        refuse(field, EntryWords::refusal(*std::get_if<EntryProblem>(&entry), typed));
        return std::nullopt;
    }

    bool hasProblem() const { return !m_problems.empty(); }
    Saved refusal() { return {std::move(m_problems), {}}; }

private:
    std::vector<FieldProblem> m_problems;
};

template <typename IdType> Result<Saved> savedAs(const Result<IdType>& added)
{
    if (!added)
        return added.problem();
    return Saved{{}, added.value().bytes};
}

} // namespace rig
