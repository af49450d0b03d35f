#include "core/review/judging.h"

namespace rig {

const Judgement& Judging::of(const Reading& reading)
{
    const Case one{reading.fitting, reading.interval, reading.gauge, isInDoubt(reading)};
    const auto known = m_judgements.find(one);
    if (known != m_judgements.end())
        return known->second;
    return m_judgements.emplace(one, judgeIn(m_history, reading)).first->second;
}

std::optional<double> Judging::scoreOf(const Reading& reading)
{
    const std::tuple one{reading.fitting, reading.interval, reading.gauge};
    const auto known = m_scores.find(one);
    if (known != m_scores.end())
        return known->second;
    return m_scores.emplace(one, scoreIn(m_history, reading)).first->second;
}

} // namespace rig
