#include "core/review/notes_left.h"

#include "core/airframe/saved_before.h"

#include <algorithm>

namespace rig {

namespace {

const RecordTick* readingOf(const RecordClose& close, const AirframeFacts& facts)
{
    const auto found = std::ranges::find(facts.notesRead, close.record, &RecordTick::record);
    return found == facts.notesRead.end() ? nullptr : &*found;
}

NoteLeft noteIn(const RecordClose& close, const RecordTick* read, const AirframeFacts& facts)
{
    NoteLeft note;
    note.record = close.record;
    note.text = close.note;
    note.first = close.first ? facts.nameOf(*close.first) : std::string{};
    note.second = close.second ? facts.nameOf(*close.second) : std::string{};
    note.when = close.stamp.when;
    if (read) {
        note.readAt = read->stamp.when;
        note.readBy = facts.nameOf(read->person);
    }
    return note;
}

// Closings with a note, the newest first.
std::vector<const RecordClose*> noted(const AirframeFacts& facts)
{
    std::vector<const RecordClose*> closings;
    for (const RecordClose& close : facts.closings)
        if (!close.note.empty())
            closings.push_back(&close);
    std::ranges::stable_sort(
        closings, [](const RecordClose* one, const RecordClose* other) { return savedBefore(*other, *one); });
    return closings;
}

} // namespace

std::vector<NoteLeft> notesUnread(const AirframeFacts& facts)
{
    std::vector<NoteLeft> notes;
    for (const RecordClose* close : noted(facts))
        if (!readingOf(*close, facts))
            notes.push_back(noteIn(*close, nullptr, facts));
    return notes;
}

std::vector<NoteLeft> notesMetBy(const RiggingRecord& record, const AirframeFacts& facts)
{
    const RecordClose* before = nullptr;
    for (const RecordClose& close : facts.closings)
        if (savedBefore(close, record) && close.closing != Closing::Abandoned &&
            (!before || savedBefore(*before, close)))
            before = &close;
    std::vector<NoteLeft> notes;
    for (const RecordClose* close : noted(facts)) {
        const RecordTick* read = readingOf(*close, facts);
        const bool wasReadBefore = before && read && savedBefore(*read, *before);
        if (savedBefore(*close, record) && !wasReadBefore)
            notes.push_back(noteIn(*close, read, facts));
    }
    return notes;
}

} // namespace rig
