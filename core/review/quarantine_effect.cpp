#include "core/review/quarantine_effect.h"

#include "core/review/judging.h"
#include "core/rigging/counts_as.h"
#include "core/rigging/measured_before.h"

#include <algorithm>
#include <map>

namespace rig {

namespace {

// One coupling, judged with what was known before and with what is known after.
class Comparison
{
public:
    Comparison(const AirframeFacts& facts, CouplingId coupling, std::span<const Reading> readings,
               std::span<const GaugeCheck> before, std::span<const GaugeCheck> after)
        : m_facts{facts}, m_readings{readings}, m_before{historyOf(coupling, facts, readings, before)},
          m_after{historyOf(coupling, facts, readings, after)}
    {
    }

    void compare(CouplingInDoubt& into, GaugeId gauge)
    {
        std::set<FittingId> changed;
        for (std::size_t i = 0; i < m_after.fittings.size(); ++i) {
            const FittingHistory& before = m_before.fittings[i];
            const FittingHistory& after = m_after.fittings[i];
            if (before.inDoubt == after.inDoubt)
                continue;
            into.bands.push_back(
                {after.fitting,
                 static_cast<int>(after.inDoubt.size()) - static_cast<int>(before.inDoubt.size()),
                 before.baseline, after.baseline});
            changed.insert(after.fitting.id);
        }
        if (!changed.empty())
            compareVerdicts(into, gauge, changed);
    }

private:
    void compareVerdicts(CouplingInDoubt& into, GaugeId gauge, const std::set<FittingId>& changed)
    {
        std::set<ReadingId> excluded;
        for (const Exclusion& exclusion : m_facts.exclusions)
            excluded.insert(exclusion.reading);
        Judging before{m_before};
        Judging after{m_after};
        for (const Reading& reading : standing(m_readings, m_facts.exclusions)) {
            if (!isHeldAgainstBand(reading) || reading.gauge == gauge || !changed.contains(reading.fitting) ||
                excluded.contains(reading.id) || m_after.find(reading.fitting)->admitted.contains(reading.id))
                continue;
            const VerdictChange change{reading, before.of(reading).verdict, after.of(reading).verdict};
            if (change.before == change.after)
                continue;
            ++into.judgedOtherwise;
            if (!into.latest || measuredBefore(into.latest->reading, reading))
                into.latest = change;
        }
    }

    const AirframeFacts& m_facts;
    std::span<const Reading> m_readings;
    CouplingHistory m_before;
    CouplingHistory m_after;
};

int comeInDoubt(std::span<const Reading> readings, GaugeId gauge, QuarantineDays& before,
                QuarantineDays& after)
{
    return static_cast<int>(std::ranges::count_if(readings, [&](const Reading& reading) {
        return reading.gauge == gauge && after.covers(reading) && !before.covers(reading);
    }));
}

// Later than any check of its day, as it will be once it is saved.
GaugeCheck asSaved(GaugeCheck check)
{
    check.id.bytes.fill(0xff);
    return check;
}

} // namespace

std::vector<CouplingInDoubt> couplingsInDoubt(const AirframeFacts& facts, GaugeId gauge,
                                              std::span<const GaugeCheck> before,
                                              std::span<const GaugeCheck> after)
{
    std::map<CouplingId, std::vector<Reading>> readings;
    for (const KeptReading& kept : facts.readings)
        readings[kept.reading.coupling].push_back(kept.reading);
    QuarantineDays daysBefore{before};
    QuarantineDays daysAfter{after};
    std::vector<CouplingInDoubt> found;
    for (const Coupling& coupling : facts.couplings) {
        const std::vector<Reading>& all = readings[coupling.id];
        CouplingInDoubt one;
        one.coupling = coupling.id;
        // A frozen list may name readings that were corrected since; they too leave the band.
        const bool any = comeInDoubt(all, gauge, daysBefore, daysAfter) > 0;
        if (!any)
            continue;
        one.readings = comeInDoubt(standing(all, facts.exclusions), gauge, daysBefore, daysAfter);
        Comparison{facts, coupling.id, all, before, after}.compare(one, gauge);
        found.push_back(std::move(one));
    }
    return found;
}

int QuarantineEffect::marked() const
{
    int count = 0;
    for (const CouplingInDoubt& one : couplings)
        count += one.readings;
    return count;
}

QuarantineEffect effectOf(const GaugeCheck& check, const AirframeFacts& facts)
{
    QuarantineEffect effect;
    if (!check.quarantineFrom)
        return effect;
    std::vector<GaugeCheck> after = facts.gaugeChecks;
    after.push_back(asSaved(check));
    QuarantineDays days{after};
    for (const KeptReading& kept : facts.readings)
        effect.covered += kept.reading.gauge == check.gauge &&
                                  *check.quarantineFrom <= kept.reading.when.localDay() &&
                                  days.covers(kept.reading)
                              ? 1
                              : 0;
    effect.couplings = couplingsInDoubt(facts, check.gauge, facts.gaugeChecks, after);
    return effect;
}

std::vector<Question> questionsFrom(const QuarantineEffect& effect, const GaugeCheck& check,
                                    AirframeId airframe)
{
    std::vector<Question> questions;
    Question question;
    question.airframe = airframe;
    question.gauge = check.gauge;
    question.stamp = check.stamp;
    if (effect.covered > 0) {
        question.kind = QuestionKind::GaugeQuarantined;
        questions.push_back(question);
    }
    for (const CouplingInDoubt& one : effect.couplings) {
        if (!one.latest)
            continue;
        question.kind = QuestionKind::BandInDoubt;
        question.coupling = one.coupling;
        question.reading = one.latest->reading.id;
        questions.push_back(question);
    }
    return questions;
}

std::vector<GaugeCheck> withoutDoubtsOf(GaugeId gauge, std::span<const GaugeCheck> checks)
{
    std::vector<GaugeCheck> others;
    std::ranges::copy_if(checks, std::back_inserter(others), [gauge](const GaugeCheck& check) {
        return check.gauge != gauge || !check.quarantineFrom;
    });
    return others;
}

} // namespace rig
