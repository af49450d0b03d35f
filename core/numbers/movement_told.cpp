#include "core/numbers/distributions.h"
#include "core/numbers/movement.h"
#include "core/numbers/student_mixture.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace rig::numbers {
namespace {

using enum MovementKind;

constexpr double kSetContent = 0.95;
constexpr double kTailOfInterval = 0.025;
constexpr double kLeastError = 1e-9;  // mm
constexpr double kLeastWeight = 1e-6; // of a way, in sums that cost a t-distribution each

double varianceAlong(const Matrix3& covariance, const Vector3& along)
{
    double variance = 0;
    for (std::size_t i = 0; i < 3; ++i)
        for (std::size_t j = 0; j < 3; ++j)
            variance += along[i] * covariance[i][j] * along[j];
    return std::max(0.0, variance);
}

Vector3 shapesAt(const MovementWay& way, double rigging)
{
    return {1, way.changes[0].shapeAt(rigging), way.changes[1].shapeAt(rigging)};
}

double alongOf(const MovementWay& way, const Vector3& along)
{
    double sum = 0;
    for (std::size_t i = 0; i < 3; ++i)
        sum += along[i] * way.coefficients[i];
    return sum;
}

Interval intervalOf(std::span<const StudentPart> parts)
{
    return {mixtureQuantile(parts, kTailOfInterval), mixtureQuantile(parts, 1 - kTailOfInterval)};
}

EstimateWithInterval estimateOf(std::span<const StudentPart> parts)
{
    return {mixtureQuantile(parts, 0.5), intervalOf(parts)};
}

std::optional<EstimateWithInterval> estimateIfAny(std::span<const StudentPart> parts)
{
    double weight = 0;
    for (const StudentPart& part : parts)
        weight += part.weight;
    return weight > 0 ? std::optional{estimateOf(parts)} : std::nullopt;
}

// Each tail directly.
double chanceBeyond(std::span<const StudentPart> parts, const Interval& band)
{
    double total = 0;
    double beyond = 0;
    for (const StudentPart& part : parts) {
        total += part.weight;
        const double error = std::max(kLeastError, part.error);
        beyond += part.weight * (studentBelow((band.lower - part.centre) / error, part.df) +
                                 studentBelow((part.centre - band.upper) / error, part.df));
    }
    return beyond / total;
}

} // namespace

double PathChange::shapeAt(double rigging) const
{
    switch (kind) {
    case Steady:
        return 0;
    case Step:
        return rigging >= at ? 1 : 0;
    case Drift:
        return std::max(0.0, rigging - at) / kRateUnit;
    }
    return 0;
}

double MovementWay::meanAt(double rigging) const
{
    return alongOf(*this, shapesAt(*this, rigging));
}

double MovementWay::errorAt(double rigging) const
{
    return std::sqrt(varianceAlong(covariance, shapesAt(*this, rigging)));
}

double KindChances::of(MovementKind kind) const
{
    switch (kind) {
    case Steady:
        return steady;
    case Step:
        return step;
    case Drift:
        return drift;
    }
    return 0;
}

MovementKind KindChances::likeliest() const
{
    if (steady >= step && steady >= drift)
        return Steady;
    return step >= drift ? Step : Drift;
}

const MovementWay& Movement::likeliestWay() const
{
    return ways.front();
}

double Movement::meanAt(double rigging) const
{
    double sum = 0;
    for (const MovementWay& way : ways)
        sum += way.chance * way.meanAt(rigging);
    return sum;
}

std::vector<double> Movement::meansAt(std::span<const double> rising) const
{
    struct Turn // from a rigging on
    {
        double at = 0;
        double rise = 0; // of the level
        double rate = 0; // added, per kRateUnit
    };
    std::vector<Turn> turns;
    double level = 0;
    for (const MovementWay& way : ways) {
        level += way.chance * way.coefficients[0];
        for (std::size_t i = 0; i < way.changes.size(); ++i) {
            const double size = way.chance * way.coefficients[i + 1];
            if (way.changes[i].kind == Step)
                turns.push_back({way.changes[i].at, size, 0});
            if (way.changes[i].kind == Drift)
                turns.push_back({way.changes[i].at, 0, size});
        }
    }
    std::ranges::sort(turns, {}, &Turn::at);
    std::vector<double> means;
    double rate = 0;
    double rateTimesAt = 0;
    auto turn = turns.begin();
    for (const double rigging : rising) {
        for (; turn != turns.end() && turn->at <= rigging; ++turn) {
            level += turn->rise;
            rate += turn->rate;
            rateTimesAt += turn->rate * turn->at;
        }
        means.push_back(level + (rate * rigging - rateTimesAt) / kRateUnit);
    }
    return means;
}

bool isMovementTold(const Movement& movement, bool chartIsBeyond)
{
    return movement.first.moved() >= (chartIsBeyond ? kMovedWithChart : kMovedAlone);
}

std::optional<MovementPlace> placeOf(const Movement& movement, MovementKind kind, std::size_t change)
{
    std::map<double, double> chances; // by rigging
    double total = 0;
    for (const MovementWay& way : movement.ways) {
        if (way.changes[change].kind != kind || kind == Steady)
            continue;
        chances[way.changes[change].at] += way.chance;
        total += way.chance;
    }
    if (!(total > 0))
        return std::nullopt;
    std::vector<std::pair<double, double>> byChance; // chance, rigging
    for (const auto& [rigging, chance] : chances)
        byChance.emplace_back(chance, rigging);
    std::ranges::stable_sort(byChance, std::ranges::greater{}, &std::pair<double, double>::first);
    MovementPlace place{byChance.front().second, {}};
    double held = 0;
    for (std::size_t i = 0; i < byChance.size() && held < kSetContent * total; ++i) {
        held += byChance[i].first;
        place.set.push_back(byChance[i].second);
    }
    std::ranges::sort(place.set);
    return place;
}

std::optional<EstimateWithInterval> sizeOf(const Movement& movement, MovementKind kind, std::size_t change)
{
    std::vector<StudentPart> parts;
    double total = 0;
    for (const MovementWay& way : movement.ways)
        total += way.changes[change].kind == kind ? way.chance : 0;
    for (const MovementWay& way : movement.ways)
        if (kind != Steady && way.changes[change].kind == kind && way.chance >= kLeastWeight * total)
            parts.push_back({way.chance / total, way.coefficients[change + 1],
                             std::sqrt(std::max(0.0, way.covariance[change + 1][change + 1])), way.df});
    return estimateIfAny(parts);
}

std::optional<EstimateWithInterval> rateNowOf(const Movement& movement)
{
    std::vector<StudentPart> parts;
    for (const MovementWay& way : movement.ways) {
        const Vector3 along{0, way.changes[0].kind == Drift ? 1.0 : 0.0,
                            way.changes[1].kind == Drift ? 1.0 : 0.0};
        if (along != Vector3{})
            parts.push_back(
                {way.chance, alongOf(way, along), std::sqrt(varianceAlong(way.covariance, along)), way.df});
    }
    return estimateIfAny(parts);
}

namespace {

struct ForecastParts
{
    std::vector<StudentPart> means;
    std::vector<StudentPart> readings;
};

ForecastParts forecastPartsOf(const Movement& movement, double rigging)
{
    ForecastParts parts;
    for (const MovementWay& way : movement.ways) {
        if (way.chance < kLeastWeight)
            break;
        const double mean = way.meanAt(rigging);
        const double error = way.errorAt(rigging);
        parts.means.push_back({way.chance, mean, error, way.df});
        parts.readings.push_back({way.chance, mean, std::hypot(error, way.sigma), way.df});
    }
    return parts;
}

} // namespace

MovementForecast forecastOf(const Movement& movement, double rigging, const Interval& band)
{
    const auto [means, readings] = forecastPartsOf(movement, rigging);
    return {estimateOf(means), estimateOf(readings), chanceBeyond(readings, band), chanceBeyond(means, band)};
}

ForecastPlace forecastPlaceOf(const Movement& movement, double rigging)
{
    const auto [means, readings] = forecastPartsOf(movement, rigging);
    return {mixtureQuantile(means, 0.5), intervalOf(readings)};
}

} // namespace rig::numbers
