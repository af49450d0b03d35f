#include "core/review/comparisons.h"

#include "core/airframe/saved_before.h"
#include "core/baseline/gap_numbers.h"
#include "core/rigging/counts_as.h"
#include "core/rigging/rigging_flow.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <vector>

namespace rig {

namespace {

// The latest standing reading of each turn at one coupling of one record.
struct BothTurns
{
    std::optional<Reading> first;
    std::optional<Reading> second;

    void take(const Reading& reading)
    {
        std::optional<Reading>& slot = reading.turn == Turn::First ? first : second;
        if (!slot || savedBefore(*slot, reading))
            slot = reading;
    }
};

Judgement judgedAs(const Reading& reading, const CouplingHistory& history)
{
    Reading elsewhere = reading;
    elsewhere.coupling = history.coupling;
    if (const FittingHistory* fitting = history.on(reading.when.localDay()))
        elsewhere.fitting = fitting->fitting.id;
    return judgeIn(history, elsewhere);
}

} // namespace

PersonsSpread personsSpread(std::span<const Reading> readings, std::span<const Exclusion> exclusions)
{
    std::map<std::pair<RecordId, CouplingId>, BothTurns> places;
    for (const Reading& reading : standing(readings, exclusions))
        // What was copied was seen by whoever copied it: it says nothing of how far two people differ.
        if (reading.record && isLockedAtRigging(reading) && !reading.copiedBy)
            places[{*reading.record, reading.coupling}].take(reading);

    double squares = 0;
    std::vector<double> widths;
    for (const auto& [place, turns] : places) {
        if (!turns.first || !turns.second)
            continue;
        const auto first = middleOf(turns.first->interval);
        const auto second = middleOf(turns.second->interval);
        if (!first || !second)
            continue;
        squares += (*second - *first) * (*second - *first);
        widths.push_back(inNumbers(turns.second->interval).width());
    }
    const int pairs = static_cast<int>(widths.size());
    if (pairs < kPairsForOwnSpread)
        return {kUsualPersonsDeviation, 0};
    std::ranges::nth_element(widths, widths.begin() + pairs / 2);
    const double ofTheStep = widths[static_cast<std::size_t>(pairs / 2)] / std::sqrt(12.0);
    return {std::max(std::sqrt(squares / (2 * pairs)), ofTheStep), pairs};
}

std::optional<numbers::ReadingPair> pairIn(const RecordContent& content, CouplingId coupling,
                                           const PersonsSpread& spread)
{
    BothTurns turns;
    for (const Turn turn : {Turn::First, Turn::Second})
        for (const Reading& reading : standing(givenAt(content, coupling, turn).readings, content.exclusions))
            if (isLockedAtRigging(reading))
                turns.take(reading);
    if (!turns.first || !turns.second)
        return std::nullopt;
    return numbers::readingPair(inNumbers(turns.first->interval), inNumbers(turns.second->interval),
                                spread.limit());
}

std::optional<Coupling> otherSideOf(const Coupling& coupling, std::span<const Coupling> all)
{
    if (coupling.side == Side::None || (coupling.circuit == Circuit::Other && coupling.otherCircuit.empty()))
        return std::nullopt;
    std::optional<Coupling> found;
    for (const Coupling& other : all) {
        if (!other.inUse || other.circuit != coupling.circuit ||
            other.otherCircuit != coupling.otherCircuit || other.side == Side::None ||
            other.side == coupling.side)
            continue;
        if (found)
            return std::nullopt;
        found = other;
    }
    return found;
}

bool liesOff(Verdict verdict)
{
    return verdict == Verdict::Outside || verdict == Verdict::NearEdge;
}

bool looksSwapped(const Reading& one, const CouplingHistory& ofOne, const Reading& other,
                  const CouplingHistory& ofOther)
{
    return liesOff(judgeIn(ofOne, one).verdict) && liesOff(judgeIn(ofOther, other).verdict) &&
           judgedAs(one, ofOther).verdict == Verdict::Inside &&
           judgedAs(other, ofOne).verdict == Verdict::Inside;
}

std::optional<numbers::SharedShift> sharedShiftIn(const RecordContent& content, const KnownAirframe& known,
                                                  std::span<const Coupling> couplings)
{
    std::vector<double> scores;
    for (const Coupling& coupling : couplings) {
        std::vector<Reading> readings =
            standing(givenAt(content, coupling.id, Turn::First).readings, content.exclusions);
        std::erase_if(readings, [](const Reading& one) { return !isLockedAtRigging(one); });
        if (readings.empty())
            continue;
        if (const auto score = scoreIn(known.history(coupling.id), readings.back()))
            scores.push_back(*score);
    }
    return numbers::sharedShiftOf(scores);
}

} // namespace rig
