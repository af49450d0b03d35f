#include "app/bench/draws.h"

#include "core/numbers/distributions.h"

#include <cmath>

namespace rig::bench {

double Draws::uniform()
{
    return (static_cast<double>(m_engine() >> 11) + 0.5) * 0x1p-53;
}

double Draws::normal()
{
    return numbers::normalQuantile(uniform());
}

numbers::Interval readingOf(double gap, const ReadingKind& kind)
{
    if (kind.step <= 0)
        return {gap, gap};
    const double cell = std::floor(gap / kind.step);
    return {cell * kind.step, (cell + 1) * kind.step};
}

std::vector<numbers::Interval> readingsOf(int count, double mean, double sigma, const ReadingKind& kind,
                                          Draws& draws)
{
    std::vector<numbers::Interval> readings;
    for (int i = 0; i < count; ++i)
        readings.push_back(readingOf(mean + sigma * draws.normal(), kind));
    return readings;
}

} // namespace rig::bench
