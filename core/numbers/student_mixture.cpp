#include "core/numbers/student_mixture.h"

#include "core/numbers/distributions.h"
#include "core/numbers/interval.h"

#include <algorithm>
#include <cmath>

namespace rig::numbers {
namespace {

constexpr double kEnough = 1e-12;
constexpr int kMostHalvedEnds = 200;

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

double mixtureQuantile(std::span<const StudentPart> parts, double p)
{
    // The quantile lies between the least and the greatest of the parts' own.
    Interval range{kInfinity, -kInfinity};
    double lastDf = 0;
    double t = 0;
    for (const StudentPart& part : parts) {
        if (part.df != lastDf)
            t = studentQuantile(p, lastDf = part.df);
        const double own = part.error > 0 ? part.centre + part.error * t : part.centre;
        range = {std::min(range.lower, own), std::max(range.upper, own)};
    }
    // False position that halves the end which stays (the Illinois method, Dowell & Jarratt 1971, BIT 11,
    // from memory); `lastSide` is the end that moved last.
    double low = mixtureBelow(parts, range.lower) - p;
    double high = mixtureBelow(parts, range.upper) - p;
    const double enough = kEnough * range.width();
    int lastSide = 0;
    for (int i = 0; i < kMostHalvedEnds && range.width() > enough && low < 0 && high > 0; ++i) {
        const double between = range.lower - low * range.width() / (high - low);
        const bool isInside = between > range.lower && between < range.upper;
        const double x = isInside ? between : 0.5 * (range.lower + range.upper);
        const double found = mixtureBelow(parts, x) - p;
        if (std::abs(found) < kEnough)
            return x;
        if (found < 0) {
            high *= lastSide == -1 ? 0.5 : 1;
            range.lower = x;
            low = found;
            lastSide = -1;
        } else {
            low *= lastSide == 1 ? 0.5 : 1;
            range.upper = x;
            high = found;
            lastSide = 1;
        }
    }
    if (low >= 0)
        return range.lower;
    return high <= 0 ? range.upper : 0.5 * (range.lower + range.upper);
}

} // namespace rig::numbers
