#include "core/numbers/describe.h"

#include "core/numbers/centred.h"

#include <cmath>

namespace rig::numbers {

Description describe(std::span<const double> values)
{
    Description description;
    description.n = static_cast<int>(values.size());
    const std::optional<Centred> parts = centred(values);
    if (!parts)
        return description;
    description.mean = std::ldexp(parts->mean, parts->exponent);

    const std::span<const double> rests = parts->rests;
    const double squares = sumOfProducts(rests, rests);
    if (description.n >= 2) {
        const double sd = std::ldexp(std::sqrt(squares / (description.n - 1)), parts->exponent);
        if (std::isfinite(sd))
            description.sd = sd;
    }
    if (squares > 0) {
        const std::size_t pairs = rests.size() - 1;
        description.lag1Autocorrelation = sumOfProducts(rests.first(pairs), rests.last(pairs)) / squares;
    }
    return description;
}

} // namespace rig::numbers
