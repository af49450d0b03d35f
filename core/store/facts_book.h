#pragma once

#include "core/result.h"
#include "core/review/known_airframe.h"
#include "core/rigging/record_content.h"
#include "core/store/saved_log.h"

#include <cstdint>
#include <map>
#include <optional>

namespace rig {

class Records;
class StoreFile;

// Facts are read once and held: those of the airframe that was asked for last. What was saved here since is
// taken in fact by fact; when another window wrote, everything is read anew. Each Records lends its own, so
// that nothing can be saved past it.
class FactsBook
{
public:
    // Both outlive it.
    FactsBook(const Records& records, StoreFile& file);

    // As the file is now, within a transaction too. What this and content() hand out stays as it is and where
    // it is until airframe() is called again, whatever is saved meanwhile. NotFound when the file has no such
    // airframe.
    Result<const KnownAirframe*> airframe(AirframeId airframe);

    // A record of the airframe asked for last, as it was when first asked for since; read then and held.
    Result<const RecordContent*> content(RecordId record);

private:
    Outcome bringUpToDate(AirframeId airframe);
    Outcome read(AirframeId airframe);
    Outcome takeIn(std::span<const SavedLog::Saved> saved);
    Outcome readAgain(std::string_view table);
    void drop();

    const Records& m_records;
    StoreFile& m_file;
    std::optional<KnownAirframe> m_known;
    std::map<RecordId, RecordContent> m_contents; // of records of m_known
    std::int64_t m_writesElsewhere = 0;           // PRAGMA data_version when m_known was read
    std::uint64_t m_seen = 0;                     // of SavedLog
};

} // namespace rig
