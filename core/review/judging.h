#pragma once

#include "core/review/coupling_history.h"

namespace rig {

// Judges and scores many readings of one coupling. `history` outlives it.
class Judging
{
public:
    explicit Judging(const CouplingHistory& history) : m_history{history}, m_quarantine{history.checks} {}

    Judgement of(const Reading& reading) const { return judgeIn(m_history, reading); }
    std::optional<double> scoreOf(const Reading& reading) const { return scoreIn(m_history, reading); }
    bool isInDoubt(const Reading& reading) { return m_quarantine.covers(reading); }

private:
    const CouplingHistory& m_history;
    QuarantineDays m_quarantine;
};

} // namespace rig
