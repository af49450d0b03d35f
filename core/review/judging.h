#pragma once

#include "core/review/coupling_history.h"

#include <map>
#include <tuple>

namespace rig {

// Judges and scores each different case once: a long history repeats the same few intervals over and over.
// `history` outlives it.
class Judging
{
public:
    explicit Judging(const CouplingHistory& history) : m_history{history}, m_quarantine{history.checks} {}

    const Judgement& of(const Reading& reading);
    std::optional<double> scoreOf(const Reading& reading); // empty without a band
    bool isInDoubt(const Reading& reading) { return m_quarantine.covers(reading); }

private:
    using Case = std::tuple<FittingId, GapInterval, std::optional<GaugeId>, bool>;

    const CouplingHistory& m_history;
    QuarantineDays m_quarantine;
    std::map<Case, Judgement> m_judgements;
    std::map<std::tuple<FittingId, GapInterval, std::optional<GaugeId>>, std::optional<double>> m_scores;
};

} // namespace rig
