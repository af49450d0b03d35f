#include "core/store/saved_log.h"

namespace rig {

namespace {

// A rigging saves a handful of facts between two looks; an import of thousands is read anew at once.
constexpr std::size_t kMostKept = 256;

} // namespace

void SavedLog::note(std::string_view table, const IdBytes& id)
{
    if (m_lately.size() == kMostKept)
        m_lately.clear();
    m_lately.push_back({table, id});
    ++m_count;
}

void SavedLog::loseTrack()
{
    m_lately.clear();
    ++m_count;
}

std::optional<std::span<const SavedLog::Saved>> SavedLog::since(std::uint64_t seen) const
{
    const std::uint64_t missed = m_count - seen;
    if (missed > m_lately.size())
        return std::nullopt;
    return std::span{m_lately}.last(static_cast<std::size_t>(missed));
}

} // namespace rig
