#pragma once

#include "app/pages/rigged_today/rigged_today_view.h"
#include "core/review/comparisons.h"
#include "core/review/known_airframe.h"
#include "core/store/records.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace rig {

// What a reading that was just kept says together with others.
struct ReadingNews
{
    std::optional<numbers::ReadingPair> pair; // against the first person's
    bool isSameInterval = false;              // as the first person's
    PersonsSpread spread;                     // what the pair was held against
    std::optional<Coupling> looksLike;        // the other side, when the two look swapped
};

struct RecordBegun
{
    RecordId record;
    bool byAnotherWindow = false; // it was there already: nothing was written
};

// A rigging that stood on paper: when it was, and who types it in now.
struct FromPaper
{
    Moment begins;
    PersonId enteredBy;
};

struct RecordCloseWanted
{
    PersonId first;
    PersonId second;
    std::string note;
    std::vector<TickKind> counted; // the ticks of the close
};

// What was done while rigging -> facts. Knows no widget, and nothing of what the screen shows now.
class RiggingWriter
{
public:
    // Both outlive it.
    RiggingWriter(Records& records, const Clock& clock);

    // All of them or none. `shown` is the verdict that was on the screen for the reading among them. A “no”,
    // a “cannot see”, an outside reading, a disagreement with the first person and a suspected swap each open
    // a question.
    Result<ReadingNews> write(AirframeId airframe, std::span<const SessionFact> facts,
                              const std::optional<Judgement>& shown);

    // Starts a record; one left from another day is closed as abandoned with it. One that was begun elsewhere
    // since `view` was read is gone on with. `origin` is Rigging, or Recheck when the airframe was not taken
    // apart since the last one.
    Result<RecordBegun> begin(const RiggedTodayView& view, PersonId leader,
                              RecordOrigin origin = RecordOrigin::Rigging, std::optional<int> celsius = {},
                              const std::optional<FromPaper>& paper = {});
    // Notes that the airframe was taken apart today.
    Outcome noteTakenApart(AirframeId airframe, PersonId statedBy);
    Outcome tick(RecordId record, TickKind kind, PersonId person);
    // The newest note that `view` shows, and every one before it. `view` has one.
    Outcome noteRead(const RiggedTodayView& view, PersonId person);
    // `view` has a record.
    Outcome close(const RiggedTodayView& view, const RecordCloseWanted& wanted);
    // Couplings left half-way when the program went down start again from the look, but for those that are
    // stopped. Nothing while another window has the file open: what is half done may be its work.
    Outcome resume(AirframeId airframe);

private:
    Outcome save(AirframeId airframe, const Reading& reading, const std::optional<Judgement>& shown,
                 ReadingNews& news);
    Result<bool> asksForWholeCheck(const RiggingRecord& record) const;
    template <typename Answered> Outcome saveAnswer(AirframeId airframe, const Answered& check);
    Outcome compare(AirframeId airframe, const Reading& reading, ReadingNews& news);
    static std::optional<Coupling> swappedWith(const Reading& reading, const KnownAirframe& known,
                                               const RecordContent& content);

    Records& m_records;
    const Clock& m_clock;
};

} // namespace rig
