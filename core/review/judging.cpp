#include "core/review/judging.h"

namespace rig {

std::optional<double> Judging::scoreOf(const Reading& reading)
{
    const std::tuple one{reading.fitting, reading.interval, reading.gauge};
    const auto known = m_scores.find(one);
    if (known != m_scores.end())
        return known->second;
    return m_scores.emplace(one, scoreIn(m_history, reading)).first->second;
}

} // namespace rig
