#pragma once

#include "core/review/airframe_facts.h"

#include <optional>
#include <string>
#include <vector>

namespace rig {

// What whoever closed a rigging wanted the next person to know.
struct NoteLeft
{
    RecordId record;
    std::string text;
    std::string first; // the two names of the close; empty where nobody is known
    std::string second;
    Moment when;
    std::optional<Moment> readAt; // noted as read by somebody
    std::string readBy;
};

// So many are shown at a time; what is not shown is not noted as read either.
inline constexpr std::size_t kNotesShown = 3;

// Those that nobody has noted as read, the newest first.
std::vector<NoteLeft> notesUnread(const AirframeFacts& facts);
// Those that whoever began this record met: not read before, or read since the record before it was closed.
std::vector<NoteLeft> notesMetBy(const RiggingRecord& record, const AirframeFacts& facts);

} // namespace rig
