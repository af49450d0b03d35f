#include "core/review/notes_left.h"

#include "core/airframe/saved_before.h"
#include "core/review/last_rigging.h"
#include "core/rigging/rigged_before.h"

#include <algorithm>
#include <map>

namespace rig {

namespace {

using NotesRead = std::map<RecordId, const RecordTick*>; // the first tick of each

NotesRead notesReadIn(const AirframeFacts& facts)
{
    NotesRead read;
    for (const RecordTick& tick : facts.notesRead)
        read.emplace(tick.record, &tick);
    return read;
}

const RecordTick* readingOf(const EndedRigging& rigging, const NotesRead& read)
{
    const auto found = read.find(rigging.record->id);
    return found == read.end() ? nullptr : found->second;
}

NoteLeft noteIn(const EndedRigging& rigging, const RecordTick* read, const AirframeFacts& facts)
{
    const RecordClose& close = *rigging.close;
    NoteLeft note;
    note.record = close.record;
    note.text = close.note;
    note.first = close.first ? facts.nameOf(*close.first) : std::string{};
    note.second = close.second ? facts.nameOf(*close.second) : std::string{};
    note.when = rigging.when();
    if (read) {
        note.readAt = read->stamp.when;
        note.readBy = facts.nameOf(read->person);
    }
    return note;
}

// Those with a note, the last rigging first.
std::vector<EndedRigging> noted(std::vector<EndedRigging> riggings)
{
    std::erase_if(riggings, [](const EndedRigging& one) { return one.close->note.empty(); });
    std::ranges::stable_sort(riggings, [](const EndedRigging& one, const EndedRigging& other) {
        return riggedBefore(*other.record, *one.record);
    });
    return riggings;
}

// Whoever began the record could know of it: by the file or, where there was only paper, by its being over.
bool wasOverBefore(const EndedRigging& rigging, const RiggingRecord& record)
{
    return record.isFromPaper() ? rigging.when() < record.begins : savedBefore(*rigging.close, record);
}

bool wasSavedBeforeEndOf(const RecordTick& tick, const EndedRigging& rigging)
{
    return rigging.record->isFromPaper() ? tick.stamp.when < rigging.when()
                                         : savedBefore(tick, *rigging.close);
}

} // namespace

std::vector<NoteLeft> notesUnread(const AirframeFacts& facts)
{
    const NotesRead read = notesReadIn(facts);
    std::vector<NoteLeft> notes;
    for (const EndedRigging& rigging : noted(endedRiggings(facts)))
        if (!readingOf(rigging, read))
            notes.push_back(noteIn(rigging, nullptr, facts));
    return notes;
}

std::vector<NoteLeft> notesMetBy(const RiggingRecord& record, const AirframeFacts& facts)
{
    std::vector<EndedRigging> earlier = endedRiggings(facts);
    std::erase_if(earlier, [&record](const EndedRigging& one) { return !wasOverBefore(one, record); });
    const EndedRigging* before = nullptr;
    for (const EndedRigging& one : earlier)
        if (!one.isAbandoned() && (!before || riggedBefore(*before->record, *one.record)))
            before = &one;
    const NotesRead read = notesReadIn(facts);
    std::vector<NoteLeft> notes;
    for (const EndedRigging& rigging : noted(earlier)) {
        const RecordTick* tick = readingOf(rigging, read);
        if (!(before && tick && wasSavedBeforeEndOf(*tick, *before)))
            notes.push_back(noteIn(rigging, tick, facts));
    }
    return notes;
}

} // namespace rig
