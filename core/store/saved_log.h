#pragma once

#include "core/airframe/ids.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace rig {

// What was saved through one connection lately, so that whoever holds facts in memory can take in just those.
// Who comes too late for that, or meets rows that were taken back, reads anew.
class SavedLog
{
public:
    struct Saved
    {
        std::string_view table; // a name of core/store/tables.h
        IdBytes id{};           // of the row; of a versioned thing: of this version
    };

    void note(std::string_view table, const IdBytes& id);
    // Rows that were noted are gone again, or some came in without being noted.
    void loseTrack();

    std::uint64_t count() const { return m_count; }
    // What was saved after `seen`, which was count() then; empty when it is no longer known one by one.
    std::optional<std::span<const Saved>> since(std::uint64_t seen) const;

private:
    std::vector<Saved> m_lately; // the last of them
    std::uint64_t m_count = 0;
};

} // namespace rig
