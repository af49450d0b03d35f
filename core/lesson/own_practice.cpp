#include "core/lesson/own_practice.h"

#include "core/numbers/distributions.h"
#include "core/numbers/hand_offsets.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace rig {

namespace {

constexpr int kMe = 0;
constexpr int kTheOthers = 1;
constexpr double kLowTail = 0.025;

void tellRepeats(std::span<const PracticeReading> own, OwnPractice& practice)
{
    std::map<CouplingId, std::vector<double>> ofCoupling;
    double step = 0;
    for (const PracticeReading& reading : own)
        if (const std::optional<double> middle = middleOf(reading.interval)) {
            ofCoupling[reading.coupling].push_back(*middle);
            step = std::max(step, (*reading.interval.refuses - reading.interval.enters).inMillimetres());
        }
    double squares = 0;
    int df = 0;
    for (const auto& [coupling, values] : ofCoupling) {
        double mean = 0;
        for (const double value : values)
            mean += value / static_cast<double>(values.size());
        for (const double value : values)
            squares += (value - mean) * (value - mean);
        df += static_cast<int>(values.size()) - 1;
    }
    if (df < 1)
        return;
    practice.repeatSd = std::sqrt(squares / df);
    practice.limitedByStep = *practice.repeatSd < step / std::sqrt(12.0);
    practice.repeatSdInterval =
        numbers::Interval{std::sqrt(squares / numbers::chiSquareQuantile(1 - kLowTail, df)),
                          std::sqrt(squares / numbers::chiSquareQuantile(kLowTail, df))};
}

void tellOffset(std::span<const PracticeReading> own, std::span<const OthersReading> others,
                OwnPractice& practice)
{
    std::map<CouplingId, std::size_t> couplings;
    std::map<Day, int> days;
    std::vector<numbers::HandReading> all;
    const auto add = [&](CouplingId coupling, int person, const GapInterval& interval, Day day) {
        if (const std::optional<double> middle = middleOf(interval))
            all.push_back({.left = *middle,
                           .coupling = couplings.try_emplace(coupling, couplings.size()).first->second,
                           .person = person,
                           .day = days.try_emplace(day, static_cast<int>(days.size())).first->second});
    };
    for (const PracticeReading& reading : own)
        add(reading.coupling, kMe, reading.interval, reading.when.localDay());
    for (const OthersReading& reading : others)
        if (couplings.contains(reading.coupling))
            add(reading.coupling, kTheOthers, reading.interval, reading.day);
    const auto fitted = numbers::handOffsetsOf(all);
    if (!fitted || fitted->persons.state != numbers::OffsetsState::Estimated)
        return;
    const auto me = std::ranges::find(fitted->persons.levels, kMe, &numbers::HandOffset::label);
    const auto rest = std::ranges::find(fitted->persons.levels, kTheOthers, &numbers::HandOffset::label);
    if (me == fitted->persons.levels.end() || rest == fitted->persons.levels.end())
        return;
    // The two, weighted by their readings, add up to 0: so much further apart they lie than the one from all.
    const double apart = 1 + static_cast<double>(me->readings) / rest->readings;
    practice.offset = apart * me->estimate;
    practice.offsetInterval = numbers::Interval{apart * me->interval.lower, apart * me->interval.upper};
}

} // namespace

OwnPractice ownPracticeOf(std::span<const PracticeReading> own, std::span<const OthersReading> others)
{
    OwnPractice practice;
    practice.readings = static_cast<int>(std::ranges::count_if(
        own, [](const PracticeReading& reading) { return !reading.interval.isOpen(); }));
    tellRepeats(own, practice);
    tellOffset(own, others, practice);
    return practice;
}

} // namespace rig
