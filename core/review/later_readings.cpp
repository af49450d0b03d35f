#include "core/review/later_readings.h"

#include "core/numbers/median.h"
#include "core/review/judging.h"
#include "core/rigging/counts_as.h"

#include <algorithm>
#include <set>
#include <utility>

namespace rig {

namespace {

std::vector<Reading> oldestFirst(std::vector<Reading> readings)
{
    std::ranges::sort(readings, {}, [](const Reading& one) {
        return std::pair{one.when.utcSeconds, one.id};
    });
    return readings;
}

bool isOfRigging(const Reading& reading, Day last)
{
    return isLockedAtRigging(reading) && reading.when.localDay() <= last;
}

// The last of the first person's readings in each record speaks; a table brought in has one for each day.
void partByTurn(std::vector<LaterReading> all, CouplingReadings& into)
{
    std::map<std::pair<RecordId, Day>, std::size_t> speaks;
    for (LaterReading& one : all) {
        if (one.reading.turn == Turn::Second) {
            into.others.push_back(std::move(one));
            continue;
        }
        if (one.reading.record) {
            const std::pair key{*one.reading.record, one.reading.when.localDay()};
            if (const auto earlier = speaks.find(key); earlier != speaks.end()) {
                into.others.push_back(std::exchange(into.readings[earlier->second], std::move(one)));
                continue;
            }
            speaks.emplace(key, into.readings.size());
        }
        into.readings.push_back(std::move(one));
    }
}

CouplingReadings couplingReadings(const AirframeFacts& facts, const RiggingNumbers& numbers,
                                  const Coupling& coupling, const std::vector<Reading>& readings, Day last,
                                  const HistoryOfCoupling& historyOfCoupling)
{
    CouplingReadings one;
    one.coupling = coupling;
    one.history =
        historyOfCoupling ? historyOfCoupling(coupling.id) : historyOf(coupling.id, facts, readings);
    Judging judging{one.history};
    std::vector<LaterReading> all;
    for (const Reading& reading : oldestFirst(standing(readings, facts.exclusions))) {
        if (!isOfRigging(reading, last))
            continue;
        const std::optional<int> number = numbers.of(reading);
        const std::int64_t time = wallSeconds(reading.when);
        all.push_back({reading,
                       number ? *number : numbers.between(std::span{&time, 1}).front(),
                       judging.scoreOf(reading),
                       judging.isInDoubt(reading),
                       0,
                       0,
                       0,
                       {}});
    }
    partByTurn(std::move(all), one);
    return one;
}

struct RiggingDay
{
    Moment when;
    std::vector<double> scores;
    std::vector<double> millimetres;
    std::set<GaugeId> gauges;
    std::set<PersonId> persons;
};

std::map<int, RiggingDay> riggingDays(const AirframeReadings& all, const RiggingNumbers& numbers)
{
    std::map<int, RiggingDay> days;
    for (const CouplingReadings& coupling : all.couplings)
        for (const LaterReading& one : coupling.readings) {
            const std::optional<int> number = numbers.of(one.reading);
            if (!number || !one.score)
                continue;
            const auto [day, isNew] = days.try_emplace(*number);
            RiggingDay& at = day->second;
            if (isNew || one.reading.when < at.when)
                at.when = one.reading.when;
            const FittingHistory* fitting = coupling.history.find(one.reading.fitting);
            at.scores.push_back(*one.score);
            at.millimetres.push_back(*one.score * fitting->baseline.band()->scatter);
            at.persons.insert(one.reading.person);
            if (one.reading.gauge)
                at.gauges.insert(*one.reading.gauge);
        }
    return days;
}

std::vector<DayShift> shiftsOf(const std::map<int, RiggingDay>& days)
{
    std::vector<DayShift> shifts;
    for (const auto& [number, day] : days)
        if (auto shift = numbers::sharedShiftOf(day.scores)) {
            shift->isCalled = false; // before the season is told
            shifts.push_back({number,
                              day.when,
                              *shift,
                              numbers::medianOf(day.millimetres),
                              {day.gauges.begin(), day.gauges.end()},
                              {day.persons.begin(), day.persons.end()},
                              {},
                              {}});
        }
    return shifts;
}

} // namespace

AirframeReadings readingsUntil(const AirframeFacts& facts, const RiggingNumbers& numbers, Day last,
                               const HistoryOfCoupling& historyOfCoupling)
{
    std::map<CouplingId, std::vector<Reading>> readings;
    for (const KeptReading& kept : facts.readings)
        readings[kept.reading.coupling].push_back(kept.reading);

    AirframeReadings all;
    for (const Coupling& coupling : facts.couplingsInUse())
        all.couplings.push_back(
            couplingReadings(facts, numbers, coupling, readings[coupling.id], last, historyOfCoupling));
    all.shifts = shiftsOf(riggingDays(all, numbers));
    return all;
}

} // namespace rig
