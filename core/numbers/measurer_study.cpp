#include "core/numbers/measurer_study.h"

#include "core/numbers/centred.h"
#include "core/numbers/distributions.h"
#include "core/numbers/reading_pair.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>
#include <tuple>
#include <vector>

namespace rig::numbers {
namespace {

// Readings sorted by part, person and value, in equal blocks.
struct StudyDesign
{
    StudyStatus status = StudyStatus::Ok;
    std::size_t parts = 0;
    std::size_t persons = 0;
    std::size_t repeats = 0;
    std::vector<double> values;
};

StudyStatus designStatus(const StudyDesign& design, std::span<const StudyReading> sorted,
                         const std::set<int>& parts, const std::set<int>& persons)
{
    if (design.parts < 2)
        return StudyStatus::TooFewParts;
    if (design.persons < 2)
        return StudyStatus::TooFewPersons;
    if (sorted.size() != design.parts * design.persons * design.repeats)
        return StudyStatus::Unbalanced;
    auto reading = sorted.begin();
    for (const int part : parts)
        for (const int person : persons)
            for (std::size_t repeat = 0; repeat < design.repeats; ++repeat, ++reading)
                if (reading->part != part || reading->person != person)
                    return StudyStatus::Unbalanced;
    return design.repeats < 2 ? StudyStatus::TooFewRepeats : StudyStatus::Ok;
}

StudyDesign designOf(std::span<const StudyReading> readings)
{
    std::vector<StudyReading> sorted{readings.begin(), readings.end()};
    std::ranges::sort(sorted, {}, [](const StudyReading& reading) {
        return std::tuple{reading.part, reading.person, reading.value};
    });
    StudyDesign design;
    std::set<int> parts;
    std::set<int> persons;
    for (const StudyReading& reading : sorted) {
        parts.insert(reading.part);
        persons.insert(reading.person);
        design.values.push_back(reading.value);
    }
    design.parts = parts.size();
    design.persons = persons.size();
    if (!sorted.empty())
        design.repeats = sorted.size() / (design.parts * design.persons);
    design.status = designStatus(design, sorted, parts, persons);
    return design;
}

struct SumsOfSquares
{
    double parts = 0;
    double persons = 0;
    double interaction = 0;
    double repeats = 0;
};

// `rests` in the design's order, about their mean.
SumsOfSquares sumsOfSquares(const StudyDesign& design, std::span<const double> rests)
{
    const auto repeats = static_cast<double>(design.repeats);
    std::vector<double> part(design.parts, 0.0); // means
    std::vector<double> person(design.persons, 0.0);
    std::vector<double> cell;
    SumsOfSquares sums;
    for (std::size_t i = 0; i < design.parts * design.persons; ++i) {
        const auto block = rests.subspan(i * design.repeats, design.repeats);
        const double mean = sumOf(block) / repeats;
        cell.push_back(mean);
        part[i / design.persons] += mean / static_cast<double>(design.persons);
        person[i % design.persons] += mean / static_cast<double>(design.parts);
        for (const double rest : block)
            sums.repeats += (rest - mean) * (rest - mean);
    }
    for (std::size_t i = 0; i < cell.size(); ++i) {
        const double left = cell[i] - part[i / design.persons] - person[i % design.persons];
        sums.interaction += repeats * left * left;
    }
    sums.parts = repeats * static_cast<double>(design.persons) * sumOfProducts(part, part);
    sums.persons = repeats * static_cast<double>(design.parts) * sumOfProducts(person, person);
    return sums;
}

StudyRow rowOf(double sumOfSquares, std::size_t df)
{
    return {static_cast<int>(df), sumOfSquares / static_cast<double>(df)};
}

// The table and what follows from it, in the units of the sums.
MeasurerStudy studyOf(const StudyDesign& design, const SumsOfSquares& sums)
{
    const auto parts = static_cast<double>(design.parts);
    const auto persons = static_cast<double>(design.persons);
    const auto repeats = static_cast<double>(design.repeats);
    MeasurerStudy study;
    study.parts = rowOf(sums.parts, design.parts - 1);
    study.persons = rowOf(sums.persons, design.persons - 1);
    study.interaction = rowOf(sums.interaction, (design.parts - 1) * (design.persons - 1));
    study.repeats = rowOf(sums.repeats, design.parts * design.persons * (design.repeats - 1));

    const double error = study.repeats.meanSquare;
    const double interaction = study.interaction.meanSquare;
    study.repeatVariance = error;
    study.interactionVariance = std::max(0.0, (interaction - error) / repeats);
    study.personVariance = std::max(0.0, (study.persons.meanSquare - interaction) / (parts * repeats));
    study.partVariance = std::max(0.0, (study.parts.meanSquare - interaction) / (persons * repeats));
    if (error > 0 && std::isfinite(interaction / error)) {
        study.interactionF = interaction / error;
        study.interactionP = fisherAbove(*study.interactionF, study.interaction.df, study.repeats.df);
    }
    return study;
}

void addDeviations(MeasurerStudy& study, double step)
{
    const double betweenPersons = study.interactionVariance + study.personVariance;
    const double stepSd = step / (2 * std::numbers::sqrt3); // step / sqrt(12)
    study.repeatSd = std::sqrt(study.repeatVariance);
    study.reproducedSd = std::sqrt(study.repeatVariance + betweenPersons);
    study.limitedByStep = study.repeatSd < stepSd;
    const double repeatSd = std::max(study.repeatSd, stepSd);
    study.repeatLimit = kDifferenceFactor * repeatSd;
    study.reproducedLimit = kDifferenceFactor * std::hypot(repeatSd, std::sqrt(betweenPersons));
}

// From units of 2^exponent to those of the readings. False when a figure does not fit.
bool rescale(MeasurerStudy& study, int exponent)
{
    bool fits = true;
    const auto scale = [&fits](double& figure, int by) {
        figure = std::ldexp(figure, by);
        fits = fits && std::isfinite(figure);
    };
    for (StudyRow* row : {&study.parts, &study.persons, &study.interaction, &study.repeats})
        scale(row->meanSquare, 2 * exponent);
    for (double* variance :
         {&study.partVariance, &study.personVariance, &study.interactionVariance, &study.repeatVariance})
        scale(*variance, 2 * exponent);
    for (double* length : {&study.repeatSd, &study.reproducedSd, &study.repeatLimit, &study.reproducedLimit})
        scale(*length, exponent);
    return fits;
}

bool hasFiniteValue(const StudyReading& reading)
{
    return std::isfinite(reading.value);
}

} // namespace

MeasurerStudyResult measurerStudy(std::span<const StudyReading> readings, double step)
{
    if (!std::ranges::all_of(readings, hasFiniteValue) || !(step >= 0) || !std::isfinite(step))
        return {StudyStatus::NotANumber, {}};
    const StudyDesign design = designOf(readings);
    if (design.status != StudyStatus::Ok)
        return {design.status, {}};
    const std::optional<Centred> all = centred(design.values);
    if (!all)
        return {StudyStatus::NotANumber, {}};
    MeasurerStudy study = studyOf(design, sumsOfSquares(design, all->rests));
    addDeviations(study, std::ldexp(step, -all->exponent));
    if (!rescale(study, all->exponent))
        return {StudyStatus::OutOfRange, {}};
    return {StudyStatus::Ok, study};
}

std::optional<double> limitForMeans(double repeatLimit, double reproducedLimit, int n1, int n2)
{
    if (!(repeatLimit >= 0) || !(repeatLimit <= reproducedLimit) || !std::isfinite(reproducedLimit) ||
        n1 < 1 || n2 < 1)
        return std::nullopt;
    if (reproducedLimit == 0)
        return 0;
    const double kept = 1 - 0.5 / n1 - 0.5 / n2; // the share of r^2 that averaging takes out
    const double ratio = repeatLimit / reproducedLimit;
    return reproducedLimit * std::sqrt(1 - ratio * ratio * kept);
}

} // namespace rig::numbers
