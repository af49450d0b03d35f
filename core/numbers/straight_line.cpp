#include "core/numbers/straight_line.h"

#include "core/numbers/centred.h"

#include <cmath>

namespace rig::numbers {
namespace {

bool areFiguresFinite(const StraightLine& line)
{
    return std::isfinite(line.slope) && std::isfinite(line.slopeError) && std::isfinite(line.residualSd) &&
           std::isfinite(line.F.value_or(0));
}

// The values themselves in units of 2^exponent, as if their mean were zero.
Centred aboutZero(std::span<const double> values, int exponent)
{
    Centred parts{0, {}, exponent};
    for (const double value : values)
        parts.rests.push_back(std::ldexp(value, -exponent));
    return parts;
}

// The line through what is left of x and y; the residuals are summed themselves, not as a difference of sums.
std::optional<StraightLine> fitted(const Centred& x, const Centred& y, bool throughOrigin)
{
    const double squaresX = sumOfProducts(x.rests, x.rests);
    if (!(squaresX > 0))
        return std::nullopt;
    const double slope = sumOfProducts(x.rests, y.rests) / squaresX;
    double residual = 0;
    for (std::size_t i = 0; i < x.rests.size(); ++i) {
        const double left = y.rests[i] - slope * x.rests[i];
        residual += left * left;
    }
    const double explained = slope * slope * squaresX;

    StraightLine line;
    line.throughOrigin = throughOrigin;
    line.n = static_cast<int>(x.rests.size());
    line.residualDf = line.n - (throughOrigin ? 1 : 2);
    const double residualSd = std::sqrt(residual / line.residualDf);
    if (explained + residual > 0)
        line.rSquared = explained / (explained + residual);
    if (residual > 0)
        line.F = explained / (residual / line.residualDf);
    line.residualSd = std::ldexp(residualSd, y.exponent);
    line.slope = std::ldexp(slope, y.exponent - x.exponent);
    line.slopeError = std::ldexp(residualSd / std::sqrt(squaresX), y.exponent - x.exponent);
    line.centreX = std::ldexp(x.mean, x.exponent);
    line.centreY = std::ldexp(y.mean, y.exponent);
    return line;
}

} // namespace

std::optional<StraightLine> straightLine(std::span<const double> x, std::span<const double> y,
                                         bool throughOrigin)
{
    const std::optional<int> exponentX = exponentOf(x);
    const std::optional<int> exponentY = exponentOf(y);
    if (x.size() != y.size() || x.size() < (throughOrigin ? 2 : 3) || !exponentX || !exponentY)
        return std::nullopt;
    std::optional<StraightLine> line = throughOrigin
                                           ? fitted(aboutZero(x, *exponentX), aboutZero(y, *exponentY), true)
                                           : fitted(centred(x, *exponentX), centred(y, *exponentY), false);
    if (!line)
        return std::nullopt;
    if (!throughOrigin) {
        const std::optional<LinePoint> atZero = pointOn(*line, 0);
        if (!atZero)
            return std::nullopt;
        line->intercept = atZero->fit;
        line->interceptError = atZero->fitError;
    }
    return areFiguresFinite(*line) ? line : std::nullopt;
}

std::optional<LinePoint> pointOn(const StraightLine& line, double x)
{
    const double away = x - line.centreX;
    const double atCentre = line.throughOrigin ? 0 : line.residualSd / std::sqrt(line.n);
    const double fitError = std::hypot(atCentre, line.slopeError * away);
    const LinePoint point{line.centreY + line.slope * away, fitError, std::hypot(line.residualSd, fitError)};
    const bool isFinite = std::isfinite(point.fit) && std::isfinite(point.predictionError);
    return isFinite ? std::optional{point} : std::nullopt;
}

} // namespace rig::numbers
