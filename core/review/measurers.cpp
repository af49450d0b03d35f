#include "core/review/measurers.h"

#include "core/baseline/gap_numbers.h"
#include "core/numbers/describe.h"

#include <algorithm>

namespace rig {

namespace {

constexpr double kMostScatters = 4; // one stranger says nothing of how somebody reads

std::vector<const LaterReading*> measuredIn(const AirframeReadings& all, const ReviewPeriod& period)
{
    std::vector<const LaterReading*> measured;
    for (const CouplingReadings& coupling : all.couplings)
        for (const std::vector<LaterReading>* readings : {&coupling.readings, &coupling.others})
            for (const LaterReading& one : *readings)
                if (one.score && !one.inDoubt && one.reading.gauge && !one.reading.copiedBy &&
                    period.contains(one.reading.when.localDay()))
                    measured.push_back(&one);
    return measured;
}

// About the path; empty without one.
std::optional<double> leftOf(const LaterReading& one, const SeasonReview& season)
{
    const auto fitting = season.fittings.find(one.reading.fitting);
    const numbers::Interval reading = inNumbers(one.reading.interval);
    if (!one.path || fitting == season.fittings.end() || !reading.isClosed())
        return std::nullopt;
    const double most = kMostScatters * fitting->second.movement.likeliestWay().sigma;
    return std::clamp(reading.place() - *one.path - one.day, -most, most);
}

// One row for each of `known` that measured anything.
template <typename Known, typename ValueOf>
auto rowsOf(const std::vector<Known>& known, const std::vector<const LaterReading*>& measured,
            const SeasonReview& season, const numbers::HandFactor& factor, const ValueOf& valueOf)
{
    using Who = decltype(Known::id);
    std::vector<MeasuredBy<Who>> rows;
    for (std::size_t place = 0; place < known.size(); ++place) {
        const auto label = static_cast<int>(place);
        MeasuredBy<Who> row{known[place].id, 0, {}, std::ranges::count(factor.hidden, label) > 0, {}};
        std::vector<double> own;
        for (const LaterReading* one : measured) {
            if (valueOf(*one) != row.who)
                continue;
            ++row.readings;
            if (const auto left = leftOf(*one, season))
                own.push_back(*left);
        }
        if (row.readings == 0)
            continue;
        row.spread = numbers::describe(own).sd;
        const auto level = std::ranges::find(factor.levels, label, &numbers::HandOffset::label);
        if (factor.state == numbers::OffsetsState::Estimated && level != factor.levels.end())
            row.offset = MeasuredOffset{level->estimate, level->interval.lower, level->interval.upper};
        rows.push_back(row);
    }
    return rows;
}

} // namespace

MeasurerOffsets measurerOffsetsOf(const AirframeFacts& facts, const AirframeReadings& all,
                                  const SeasonReview& season, const ReviewPeriod& period)
{
    const std::vector<const LaterReading*> measured = measuredIn(all, period);
    const numbers::HandOffsets& hands = season.hands;
    MeasurerOffsets result;
    result.persons = rowsOf(facts.persons, measured, season, hands.persons,
                            [](const LaterReading& one) { return one.reading.person; });
    result.gauges = rowsOf(facts.gauges, measured, season, hands.gauges,
                           [](const LaterReading& one) { return *one.reading.gauge; });
    result.personsState = hands.persons.state;
    result.gaugesState = hands.gauges.state;
    result.personsHiddenBehind = hands.persons.hiddenBehind;
    result.gaugesHiddenBehind = hands.gauges.hiddenBehind;
    return result;
}

} // namespace rig
