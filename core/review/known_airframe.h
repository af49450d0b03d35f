#pragma once

#include "core/review/airframe_facts.h"
#include "core/review/coupling_history.h"
#include "core/review/review_period.h"

#include <cstddef>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <vector>

namespace rig {

struct AirframeReview;
struct SeasonUntil;

// The facts of one airframe and what is made of them: each made when it is first asked for, then held.
class KnownAirframe
{
public:
    explicit KnownAirframe(AirframeFacts facts);
    ~KnownAirframe();
    KnownAirframe(const KnownAirframe&) = delete; // it points into itself
    KnownAirframe& operator=(const KnownAirframe&) = delete;

    const AirframeFacts& facts() const { return m_facts; }

    // Everything needed to judge a reading of this coupling. Without fittings for one that is not this
    // airframe's.
    const CouplingHistory& history(CouplingId coupling) const;

    // Those of one coupling, superseded ones among them; oldest first.
    std::vector<const KeptReading*> readingsOf(CouplingId coupling) const;
    // Another reading took its place.
    bool isSuperseded(ReadingId reading) const { return m_superseded.contains(reading); }
    // The last ones of a coupling that stand, are locked, are of no such record and were measured by then;
    // oldest first.
    std::vector<const KeptReading*> lastLocked(CouplingId coupling, std::size_t most,
                                               std::optional<RecordId> without,
                                               std::optional<Moment> until = {}) const;

    // What one period says; the last one asked for is held. Another one that ends on the same day costs
    // little more.
    const AirframeReview& review(const ReviewPeriod& period) const;

    // Takes in a reading that was just saved.
    void take(KeptReading reading);
    // For putting a list anew. Histories are made again from what stands there then.
    AirframeFacts& changeWhatIsJudged();
    // The same for lists that no history is made of: persons, couplings, surfaces, events, records, closings,
    // questions.
    AirframeFacts& changeTheRest();

private:
    struct HeldReview;

    const SeasonUntil& season(Day last) const;
    void forgetReviews();
    void index();
    void makeRoomAt(std::size_t place);

    AirframeFacts m_facts;
    std::map<CouplingId, std::vector<std::size_t>> m_readings; // places in m_facts.readings
    std::set<ReadingId> m_superseded;
    mutable std::map<CouplingId, CouplingHistory> m_histories;
    mutable std::vector<SeasonUntil> m_seasons; // the latest asked for last
    mutable std::unique_ptr<HeldReview> m_review;
};

// The latest record that nobody closed; null when there is none. An imported table is no open work.
const RiggingRecord* openRecordIn(const AirframeFacts& facts);

} // namespace rig
