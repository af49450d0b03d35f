#include "core/review/measurers.h"

#include "core/numbers/median.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace rig {

namespace {

struct Measured
{
    const LaterReading* reading = nullptr;
    int rigging = 0;
};

std::vector<Measured> measuredIn(const AirframeReadings& all, const ReviewPeriod& period)
{
    std::vector<Measured> measured;
    for (const CouplingReadings& coupling : all.couplings)
        for (const std::vector<LaterReading>* readings : {&coupling.readings, &coupling.others})
            for (const LaterReading& one : *readings)
                if (one.score && !one.inDoubt && one.reading.gauge && !one.reading.copiedBy &&
                    period.contains(one.reading.when.localDay()))
                    measured.push_back({&one, static_cast<int>(std::floor(one.rigging))});
    return measured;
}

double medianScatter(const AirframeReadings& all, const ReviewPeriod& period)
{
    std::vector<double> scatters;
    for (const CouplingReadings& coupling : all.couplings)
        if (const FittingHistory* fitting = coupling.history.on(period.to))
            if (fitting->baseline.band())
                scatters.push_back(fitting->baseline.band()->scatter);
    return numbers::medianOf(scatters);
}

// Small numbers for ids, in the order of the file.
template <typename Known> auto labelsById(const std::vector<Known>& known)
{
    std::map<decltype(Known::id), int> labels;
    for (const Known& one : known)
        labels.emplace(one.id, static_cast<int>(labels.size()));
    return labels;
}

std::vector<numbers::LabelledScore> labelled(const AirframeFacts& facts,
                                             const std::vector<Measured>& measured)
{
    const auto persons = labelsById(facts.persons);
    const auto gauges = labelsById(facts.gauges);
    std::vector<numbers::LabelledScore> scores;
    for (const Measured& one : measured)
        scores.push_back({*one.reading->score, persons.at(one.reading->reading.person),
                          gauges.at(*one.reading->reading.gauge), one.rigging});
    return scores;
}

std::optional<double> deviationOf(const std::vector<double>& values)
{
    if (values.size() < 2)
        return std::nullopt;
    double mean = 0;
    for (const double value : values)
        mean += value / static_cast<double>(values.size());
    double squares = 0;
    for (const double value : values)
        squares += (value - mean) * (value - mean);
    return std::sqrt(squares / static_cast<double>(values.size() - 1));
}

// One row for each of `known` that measured anything.
template <typename Known, typename ValueOf>
auto rowsOf(const std::vector<Known>& known, const std::vector<Measured>& measured,
            const numbers::FactorOffsets& factor, double scatter, const ValueOf& valueOf)
{
    using Who = decltype(Known::id);
    std::vector<MeasuredBy<Who>> rows;
    for (std::size_t label = 0; label < known.size(); ++label) {
        std::vector<double> own;
        for (const Measured& one : measured)
            if (valueOf(*one.reading) == known[label].id)
                own.push_back(*one.reading->score - one.reading->shared);
        if (own.empty())
            continue;
        MeasuredBy<Who> row{known[label].id, static_cast<int>(own.size()), {}, {}};
        if (const auto deviation = deviationOf(own))
            row.spread = *deviation * scatter;
        const auto level =
            std::ranges::find(factor.levels, static_cast<int>(label), &numbers::LevelOffset::label);
        if (factor.state == numbers::OffsetsState::Estimated && level != factor.levels.end())
            row.offset = MeasuredOffset{level->estimate * scatter, level->interval.lower * scatter,
                                        level->interval.upper * scatter};
        rows.push_back(row);
    }
    return rows;
}

} // namespace

MeasurerOffsets measurerOffsetsOf(const AirframeFacts& facts, const AirframeReadings& all,
                                  const ReviewPeriod& period)
{
    const std::vector<Measured> measured = measuredIn(all, period);
    const auto found = numbers::offsetsOf(labelled(facts, measured));
    const numbers::Offsets offsets = found.value_or(numbers::Offsets{});
    MeasurerOffsets result;
    result.scatter = medianScatter(all, period);
    result.persons = rowsOf(facts.persons, measured, offsets.persons, result.scatter,
                            [](const LaterReading& one) { return one.reading.person; });
    result.gauges = rowsOf(facts.gauges, measured, offsets.leafSets, result.scatter,
                           [](const LaterReading& one) { return *one.reading.gauge; });
    result.personsState = offsets.persons.state;
    result.gaugesState = offsets.leafSets.state;
    result.personsHiddenBehind = offsets.persons.hiddenBehind;
    result.gaugesHiddenBehind = offsets.leafSets.hiddenBehind;
    return result;
}

} // namespace rig
