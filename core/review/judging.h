#pragma once

#include "core/review/coupling_history.h"

#include <map>
#include <tuple>

namespace rig {

// Judges and scores many readings of one coupling, each different case once. `history` outlives it.
class Judging
{
public:
    explicit Judging(const CouplingHistory& history) : m_history{history}, m_quarantine{history.checks} {}

    Judgement of(const Reading& reading) const { return judgeIn(m_history, reading); }
    std::optional<double> scoreOf(const Reading& reading); // empty without a band
    bool isInDoubt(const Reading& reading) { return m_quarantine.covers(reading); }

private:
    const CouplingHistory& m_history;
    QuarantineDays m_quarantine;
    std::map<std::tuple<FittingId, GapInterval, std::optional<GaugeId>>, std::optional<double>> m_scores;
};

} // namespace rig
