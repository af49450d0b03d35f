#include "core/review/known_airframe.h"

#include "core/airframe/saved_before.h"
#include "core/review/airframe_review.h"
#include "core/rigging/counts_as.h"
#include "core/rigging/measured_before.h"

#include <algorithm>

namespace rig {

namespace {

// Each holds all readings: today's, and those up to another day beside it.
constexpr std::size_t kMostSeasons = 2;

// In the order of AirframeFacts::readings.
bool isEarlier(const KeptReading& one, const KeptReading& other)
{
    return measuredBefore(one.reading, other.reading);
}

} // namespace

struct KnownAirframe::HeldReview
{
    ReviewPeriod period;
    AirframeReview review;
};

KnownAirframe::KnownAirframe(AirframeFacts facts) : m_facts{std::move(facts)}
{
    index();
}

KnownAirframe::~KnownAirframe() = default;

void KnownAirframe::index()
{
    m_readings.clear();
    m_superseded.clear();
    for (std::size_t i = 0; i < m_facts.readings.size(); ++i) {
        const Reading& reading = m_facts.readings[i].reading;
        m_readings[reading.coupling].push_back(i);
        if (reading.corrects)
            m_superseded.insert(*reading.corrects);
    }
}

const CouplingHistory& KnownAirframe::history(CouplingId coupling) const
{
    const auto held = m_histories.find(coupling);
    if (held != m_histories.end())
        return held->second;
    std::vector<Reading> readings;
    for (const KeptReading* kept : readingsOf(coupling))
        readings.push_back(kept->reading);
    return m_histories.emplace(coupling, historyOf(coupling, m_facts, readings)).first->second;
}

std::vector<const KeptReading*> KnownAirframe::readingsOf(CouplingId coupling) const
{
    std::vector<const KeptReading*> readings;
    const auto found = m_readings.find(coupling);
    if (found == m_readings.end())
        return readings;
    readings.reserve(found->second.size());
    for (const std::size_t place : found->second)
        readings.push_back(&m_facts.readings[place]);
    return readings;
}

std::vector<const KeptReading*> KnownAirframe::lastLocked(CouplingId coupling, std::size_t most,
                                                          std::optional<RecordId> without,
                                                          std::optional<Moment> until) const
{
    std::vector<const KeptReading*> last;
    const auto found = m_readings.find(coupling);
    if (found == m_readings.end())
        return last;
    for (auto place = found->second.rbegin(); place != found->second.rend() && last.size() < most; ++place) {
        const Reading& reading = m_facts.readings[*place].reading;
        const bool isLeftOut = (without && reading.record == without) || (until && *until < reading.when);
        if (!isLeftOut && reading.state == SeatState::Locked && !isSuperseded(reading.id) &&
            !strikeOf(reading, m_facts.exclusions))
            last.push_back(&m_facts.readings[*place]);
    }
    std::ranges::reverse(last);
    return last;
}

void KnownAirframe::take(KeptReading reading)
{
    forgetReviews();
    const auto history = m_histories.find(reading.reading.coupling);
    if (history != m_histories.end() && !staysTheSameWith(history->second, reading.reading))
        m_histories.erase(history);
    const auto after = std::ranges::upper_bound(m_facts.readings, reading, isEarlier);
    const auto taken = m_facts.readings.insert(after, std::move(reading));
    const auto place = static_cast<std::size_t>(taken - m_facts.readings.begin());
    if (place + 1 < m_facts.readings.size())
        makeRoomAt(place); // it was measured earlier than others
    std::vector<std::size_t>& own = m_readings[taken->reading.coupling];
    own.insert(std::ranges::lower_bound(own, place), place);
    if (taken->reading.corrects)
        m_superseded.insert(*taken->reading.corrects);
}

void KnownAirframe::makeRoomAt(std::size_t place)
{
    for (auto& [coupling, places] : m_readings)
        for (auto later = std::ranges::lower_bound(places, place); later != places.end(); ++later)
            ++*later;
}

const SeasonUntil& KnownAirframe::season(Day last) const
{
    const auto held = std::ranges::find(m_seasons, last, &SeasonUntil::last);
    if (held != m_seasons.end())
        return *held;
    if (m_seasons.size() == kMostSeasons)
        m_seasons.erase(m_seasons.begin());
    m_seasons.push_back(seasonUntil(m_facts, last, [this](CouplingId one) { return history(one); }));
    return m_seasons.back();
}

void KnownAirframe::forgetReviews()
{
    m_review.reset();
    m_seasons.clear();
}

const AirframeReview& KnownAirframe::review(const ReviewPeriod& period) const
{
    if (!m_review || m_review->period != period)
        m_review = std::make_unique<HeldReview>(
            HeldReview{period, airframeReviewOf(m_facts, period, season(period.to))});
    return m_review->review;
}

const RiggingRecord* openRecordIn(const AirframeFacts& facts)
{
    std::vector<RecordId> closed;
    for (const RecordClose& close : facts.closings)
        closed.push_back(close.record);
    std::ranges::sort(closed);
    const RiggingRecord* open = nullptr;
    for (const RiggingRecord& record : facts.riggingRecords)
        if (record.origin != RecordOrigin::ImportedTable && !std::ranges::binary_search(closed, record.id) &&
            (!open || savedBefore(*open, record)))
            open = &record;
    return open;
}

AirframeFacts& KnownAirframe::changeTheRest()
{
    forgetReviews();
    return m_facts;
}

AirframeFacts& KnownAirframe::changeWhatIsJudged()
{
    forgetReviews();
    m_histories.clear();
    return m_facts;
}

} // namespace rig
