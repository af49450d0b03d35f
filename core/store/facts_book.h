#pragma once

#include "core/lesson/learning_facts.h"
#include "core/result.h"
#include "core/review/known_airframe.h"
#include "core/rigging/record_content.h"
#include "core/store/saved_log.h"

#include <cstdint>
#include <map>
#include <optional>
#include <tuple>
#include <utility>

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

    // The same without the readings, unless they are held already: they are most of a file, and a page is
    // painted sooner that does not need them. Stays where it is until either is called again.
    Result<const AirframeFacts*> withoutReadings(AirframeId airframe);

    // What may be told on any page but the first person's own: without their readings of the open record
    // where the second person has yet to work without seeing them; `closedToSecond` of its facts names the
    // couplings. `today`, where it is given, leaves alone a record from another day, which nobody goes on
    // with, but for one from paper. Stays where it is until it or airframe() is called again.
    Result<const KnownAirframe*> toldOpenly(AirframeId airframe, std::optional<Day> today = {});

    // The second person is at the page of this window, though nothing is answered yet: from then on
    // toldOpenly() keeps back all that the first has found.
    void setBlind(bool isBlind);

    // What the file knows of learning this airframe. Stays where it is until it is called again.
    Result<const LearningFacts*> learning(AirframeId airframe);

    // Moves on whenever another window or program has written into the file, and when what one of them had
    // changed before is found behind the window; nothing saved here moves it.
    Result<std::int64_t> writesElsewhere() const;

    // A record of the airframe asked for last, as it was when first asked for since; read then and held.
    Result<const RecordContent*> content(RecordId record);

private:
    Outcome bringUpToDate(AirframeId airframe);
    // Whether what is held is of this airframe and nothing was saved since, here or elsewhere.
    Result<bool> isUpToDate(AirframeId airframe);
    Outcome read(AirframeId airframe);
    Outcome bringRestUpToDate(AirframeId airframe);
    Outcome takeIn(std::span<const SavedLog::Saved> saved);
    Outcome readAgain(std::string_view table);
    // Nothing that belongs to learning was saved here since.
    bool isLearningUpToDate() const;
    void drop();

    const Records& m_records;
    StoreFile& m_file;
    std::optional<KnownAirframe> m_known;
    std::optional<AirframeFacts> m_rest;               // without readings, while m_known is not there
    std::map<RecordId, RecordContent> m_contents;      // of records of m_known
    std::optional<KnownAirframe> m_openly;             // m_known without what is closed to the second person
    std::pair<std::uint64_t, std::int64_t> m_openlyOf; // m_seen and m_writesElsewhere when that was made
    bool m_isBlind = false;
    std::optional<LearningFacts> m_learning;
    std::pair<AirframeId, std::int64_t> m_learningOf; // and writes elsewhere then
    std::uint64_t m_learningSeen = 0;                 // of SavedLog
    std::int64_t m_writesElsewhere = 0;               // PRAGMA data_version when they were read
    std::uint64_t m_seen = 0;                         // of SavedLog
};

} // namespace rig
