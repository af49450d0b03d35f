#include "core/review/saved_oddly.h"

#include "core/airframe/saved_before.h"
#include "core/baseline/baseline.h"

#include <algorithm>
#include <array>

namespace rig {

namespace {

// A save may end a moment after the clock was read.
constexpr std::int64_t kSecondsThatSayNothing = 60;

bool isShownOtherwise(const JudgedReading& one)
{
    // Of facts in doubt every reading is judged otherwise than before; only what was outside tells something.
    if (one.judgement.reason == Reason::FactsInDoubt &&
        (!one.shown || one.shown->judgement.verdict != Verdict::Outside))
        return false;
    return one.shown && one.shown->methodVersion == kMethodVersion && !one.isStruckThrough() &&
           one.shown->judgement.verdict != one.judgement.verdict;
}

bool isClockSetBack(const Reading& reading)
{
    return millisecondsIn(reading.id.bytes) / 1000 > reading.stamp.when.utcSeconds + kSecondsThatSayNothing;
}

} // namespace

ClosedRecords::ClosedRecords(const AirframeFacts& facts)
{
    for (const RecordClose& close : facts.closings)
        m_closings.emplace(close.record, &close);
}

bool ClosedRecords::tookIn(const Reading& reading) const
{
    if (!reading.record || reading.corrects)
        return false;
    const auto [from, to] = m_closings.equal_range(*reading.record);
    return std::any_of(from, to, [&reading](const auto& one) { return savedBefore(*one.second, reading); });
}

bool isOfTheFuture(const Stamp& stamp, Moment now)
{
    constexpr std::int64_t kDay = 24 * 3600;
    return stamp.when.utcSeconds > now.utcSeconds + kDay;
}

std::vector<OddlySaved> oddlySaved(const AirframeFacts& facts, const std::vector<JudgedReading>& judged)
{
    const ClosedRecords closed{facts};
    std::vector<OddlySaved> odd;
    for (const JudgedReading& one : judged) {
        const std::array found{std::pair{SavedOddly::ShownOtherwise, isShownOtherwise(one)},
                               std::pair{SavedOddly::ClockSetBack, isClockSetBack(one.reading)},
                               std::pair{SavedOddly::InAClosedRecord, closed.tookIn(one.reading)}};
        for (const auto& [why, isSo] : found)
            if (isSo)
                odd.push_back({why, one});
    }
    return odd;
}

} // namespace rig
