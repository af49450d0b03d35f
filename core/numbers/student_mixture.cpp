#include "core/numbers/student_mixture.h"

#include "core/numbers/distributions.h"
#include "core/numbers/interval.h"

#include <algorithm>
#include <cmath>

namespace rig::numbers {
namespace {

constexpr double kEnough = 1e-12;
constexpr int kMostNewtonSteps = 200;

double partBelow(const StudentPart& part, double x)
{
    if (!(part.error > 0))
        return x >= part.centre ? 1 : 0;
    return studentBelow((x - part.centre) / part.error, part.df);
}

} // namespace

double mixtureBelow(std::span<const StudentPart> parts, double x)
{
    double below = 0;
    double total = 0;
    for (const StudentPart& part : parts) {
        below += part.weight * partBelow(part, x);
        total += part.weight;
    }
    return below / total;
}

namespace {

double mixtureDensity(std::span<const StudentPart> parts, double x)
{
    double density = 0;
    double total = 0;
    for (const StudentPart& part : parts) {
        total += part.weight;
        if (part.error > 0)
            density += part.weight * studentDensity((x - part.centre) / part.error, part.df) / part.error;
    }
    return density / total;
}

// The least and the greatest of the parts' own quantiles, between which that of the mixture lies, and their
// mean by weight.
struct OwnQuantiles
{
    Interval range{kInfinity, -kInfinity};
    double mean = 0;
};

OwnQuantiles ownQuantilesOf(std::span<const StudentPart> parts, double p)
{
    OwnQuantiles found;
    double total = 0;
    double lastDf = 0;
    double t = 0;
    for (const StudentPart& part : parts) {
        if (part.df != lastDf)
            t = studentQuantile(p, lastDf = part.df);
        const double own = part.error > 0 ? part.centre + part.error * t : part.centre;
        found.range = {std::min(found.range.lower, own), std::max(found.range.upper, own)};
        found.mean += part.weight * own;
        total += part.weight;
    }
    found.mean = std::clamp(found.mean / total, found.range.lower, found.range.upper);
    return found;
}

} // namespace

// Newton's method within a range that each value narrows; where a step would leave the range, or is not
// shorter than half the one before, the range is halved instead.
double mixtureQuantile(std::span<const StudentPart> parts, double p)
{
    auto [range, x] = ownQuantilesOf(parts, p);
    const double enough = kEnough * range.width();
    double last = range.width();
    for (int i = 0; i < kMostNewtonSteps && range.width() > enough; ++i) {
        const double beyond = mixtureBelow(parts, x) - p;
        if (std::abs(beyond) < kEnough)
            return x;
        (beyond < 0 ? range.lower : range.upper) = x;
        const double next = x - beyond / mixtureDensity(parts, x);
        const bool isGood = next > range.lower && next < range.upper && std::abs(next - x) < 0.5 * last;
        const double halved = 0.5 * (range.lower + range.upper);
        last = isGood ? std::abs(next - x) : range.width();
        x = isGood ? next : halved;
    }
    return x;
}

} // namespace rig::numbers
