#include "app/calc/fields.h"

#include <cmath>

namespace rig::calc {

Output pairOf(const numbers::Interval& interval)
{
    const auto bound = [](double value) { return std::isfinite(value) ? Output(value) : Output(nullptr); };
    return Output::array({bound(interval.lower), bound(interval.upper)});
}

Output orNull(const std::optional<double>& figure)
{
    return figure ? Output(*figure) : Output(nullptr);
}

const char* nameOf(numbers::ReadingsStatus status)
{
    using numbers::ReadingsStatus;
    switch (status) {
    case ReadingsStatus::Ok:
        return "OK";
    case ReadingsStatus::NoReadings:
        return "NO_READINGS";
    case ReadingsStatus::NotANumber:
        return "NOT_A_NUMBER";
    case ReadingsStatus::ReversedBounds:
        return "REVERSED_BOUNDS";
    case ReadingsStatus::NoLowerBound:
        return "NO_LOWER_BOUND";
    case ReadingsStatus::NoUpperBound:
        return "NO_UPPER_BOUND";
    }
    return "";
}

std::optional<numbers::IntervalPosterior> posteriorOf(CaseInput& input, const char* name,
                                                      const numbers::SigmaPrior& prior)
{
    const numbers::IntervalSet readings = numbers::intervalSetOf(input.readings(name));
    if (readings.status != numbers::ReadingsStatus::Ok)
        input.fail(std::string{"\""} + name + "\" has no band: " + nameOf(readings.status));
    return posteriorOf(input, readings, prior);
}

std::optional<numbers::IntervalPosterior> posteriorOf(CaseInput& input, const numbers::IntervalSet& readings,
                                                      const numbers::SigmaPrior& prior)
{
    if (!numbers::sigmaRangeOf(readings, prior))
        input.fail("nu0 must not be negative, s0 must be above 0, and smin above 0 and below smax");
    if (!input.isGood())
        return std::nullopt;
    std::optional<numbers::IntervalPosterior> posterior = numbers::IntervalPosterior::of(readings, prior);
    if (!posterior)
        input.fail("the figures are too large or too small to compute with");
    return posterior;
}

} // namespace rig::calc
