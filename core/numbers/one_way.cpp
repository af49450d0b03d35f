#include "core/numbers/one_way.h"

#include "core/numbers/centred.h"

#include <cmath>

namespace rig::numbers {
namespace {

struct GroupSquares
{
    double between = 0;
    double within = 0;
};

// Each group from its own mean, so that far-apart groups cost no digits; in units of 2^(2 exponent).
GroupSquares groupSquares(std::span<const std::vector<double>> groups, const Centred& all)
{
    GroupSquares sums;
    std::size_t first = 0;
    for (const std::vector<double>& group : groups) {
        const Centred own = centred(group, all.exponent);
        sums.within += sumOfProducts(own.rests, own.rests);
        // The group's mean less the grand mean, without the leading digits both share.
        const auto count = static_cast<double>(group.size());
        const double away = sumOf(std::span{all.rests}.subspan(first, group.size())) / count;
        sums.between += count * away * away;
        first += group.size();
    }
    return sums;
}

} // namespace

std::optional<OneWay> oneWay(std::span<const std::vector<double>> groups)
{
    std::vector<double> values;
    for (const std::vector<double>& group : groups) {
        if (group.empty())
            return std::nullopt;
        values.insert(values.end(), group.begin(), group.end());
    }
    const std::optional<Centred> all = centred(values);
    if (!all || groups.size() < 2 || values.size() == groups.size())
        return std::nullopt;

    const auto [between, within] = groupSquares(groups, *all);
    OneWay result;
    result.dfBetween = static_cast<int>(groups.size()) - 1;
    result.dfWithin = static_cast<int>(values.size() - groups.size());
    const double msBetween = between / result.dfBetween;
    const double msWithin = within / result.dfWithin;
    result.msBetween = std::ldexp(msBetween, 2 * all->exponent);
    result.msWithin = std::ldexp(msWithin, 2 * all->exponent);
    result.residualSd = std::ldexp(std::sqrt(msWithin), all->exponent);
    if (within > 0)
        result.F = msBetween / msWithin;
    if (between + within > 0)
        result.rSquared = between / (between + within);
    const bool isFinite = std::isfinite(result.msBetween) && std::isfinite(result.msWithin) &&
                          std::isfinite(result.F.value_or(0));
    return isFinite ? std::optional{result} : std::nullopt;
}

} // namespace rig::numbers
