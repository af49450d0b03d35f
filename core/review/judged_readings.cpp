#include "core/review/judged_readings.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace rig {

namespace {

struct Said
{
    Judgement judgement;
    std::optional<double> score;
};

// Judges each different case once: a long history repeats the same few intervals over and over.
class CouplingJudge
{
public:
    CouplingJudge(CouplingHistory history) : m_history{std::move(history)}, m_quarantine{m_history.checks} {}
    CouplingJudge(const CouplingJudge&) = delete;
    CouplingJudge& operator=(const CouplingJudge&) = delete;

    JudgedReading of(const Reading& reading)
    {
        JudgedReading one;
        one.reading = reading;
        one.inDoubt = m_quarantine.covers(reading);
        const FittingHistory* fitting = m_history.find(reading.fitting);
        one.ofBaseline = fitting && fitting->admitted.contains(reading.id) && !one.inDoubt;
        const Said& said = saidOf(reading, one.inDoubt);
        one.judgement = said.judgement;
        if (reading.state == SeatState::Locked)
            one.score = said.score;
        return one;
    }

private:
    using Case = std::tuple<FittingId, GapInterval, std::optional<GaugeId>, bool>;

    const Said& saidOf(const Reading& reading, bool inDoubt)
    {
        const Case key{reading.fitting, reading.interval, reading.gauge, inDoubt};
        const auto known = m_said.find(key);
        if (known != m_said.end())
            return known->second;
        return m_said.emplace(key, Said{judgeIn(m_history, reading), scoreIn(m_history, reading)})
            .first->second;
    }

    CouplingHistory m_history;
    QuarantineDays m_quarantine;
    std::map<Case, Said> m_said;
};

} // namespace

std::vector<JudgedReading> judgedReadings(const AirframeFacts& facts, Day last)
{
    const RiggingNumbers numbers{facts};
    std::map<CouplingId, std::vector<Reading>> byCoupling;
    std::map<ReadingId, std::string> corrected;
    for (const KeptReading& kept : facts.readings) {
        if (kept.reading.when.localDay() > last)
            continue;
        byCoupling[kept.reading.coupling].push_back(kept.reading);
        if (kept.reading.corrects)
            corrected.emplace(*kept.reading.corrects, kept.reading.note);
    }
    std::map<ReadingId, std::string> leftOut;
    for (const Exclusion& exclusion : facts.exclusions)
        leftOut.emplace(exclusion.reading, exclusion.reason);
    std::map<CouplingId, CouplingJudge> judges;
    for (const auto& [coupling, readings] : byCoupling)
        judges.try_emplace(coupling, historyOf(coupling, facts.fittings, readings, facts.exclusions,
                                               facts.frozenBaselines, facts.gauges, facts.gaugeChecks));
    std::vector<JudgedReading> judged;
    for (const KeptReading& kept : facts.readings) {
        if (kept.reading.when.localDay() > last)
            continue;
        JudgedReading one = judges.at(kept.reading.coupling).of(kept.reading);
        one.shown = kept.shown;
        one.rigging = numbers.of(kept.reading);
        const auto correction = corrected.find(kept.reading.id);
        one.superseded = correction != corrected.end();
        if (one.superseded)
            one.supersededReason = correction->second;
        const auto exclusion = leftOut.find(kept.reading.id);
        one.leftOut = exclusion != leftOut.end() && !one.ofBaseline;
        if (one.leftOut)
            one.leftOutReason = exclusion->second;
        judged.push_back(std::move(one));
    }
    std::ranges::stable_sort(judged, {}, [](const JudgedReading& one) {
        return std::tuple{one.reading.when.utcSeconds, one.reading.id};
    });
    return judged;
}

} // namespace rig
