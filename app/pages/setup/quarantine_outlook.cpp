#include "app/pages/setup/quarantine_outlook.h"

#include "core/store/airframe_facts.h"

#include <algorithm>
#include <chrono>

namespace rig {

namespace {

std::vector<Reading> readingsWith(GaugeId gauge, const AirframeFacts& facts)
{
    std::vector<Reading> all;
    for (const KeptReading& kept : facts.readings)
        all.push_back(kept.reading);
    std::vector<Reading> with = standing(all, facts.exclusions);
    std::erase_if(with, [gauge](const Reading& reading) { return reading.gauge != gauge; });
    return with;
}

bool isOpen(const Question& question, const AirframeFacts& facts)
{
    return std::ranges::any_of(facts.questions, [&question](const QuestionStory& story) {
        return story.isOpen() && story.question.asksTheSameAs(question);
    });
}

DoubtedAirframe airframeRow(const AirframeFacts& facts, const QuarantineEffect& effect)
{
    DoubtedAirframe row{facts.airframe.registration, effect.marked(), {}};
    for (const CouplingInDoubt& one : effect.couplings) {
        const auto coupling = std::ranges::find(facts.couplings, one.coupling, &Coupling::id);
        row.couplings.push_back(
            {coupling->name, one, std::ranges::count(facts.fittings, one.coupling, &Fitting::coupling) > 1});
    }
    return row;
}

} // namespace

int DoubtPreview::marked() const
{
    int count = 0;
    for (const DoubtedAirframe& one : airframes)
        count += one.marked;
    return count;
}

Result<QuarantineOutlook> QuarantineOutlook::of(const Records& records, GaugeId gauge)
{
    QuarantineOutlook outlook;
    outlook.m_gauge = gauge;
    Problem problem;
    std::vector<Airframe> airframes;
    if (!take(records.airframes(), airframes, problem) ||
        !take(records.gaugeChecks(), outlook.m_checks, problem))
        return problem;
    std::erase_if(outlook.m_checks, [gauge](const GaugeCheck& check) { return check.gauge != gauge; });
    for (const Airframe& airframe : airframes) {
        auto facts = factsOf(records, airframe.id);
        if (!facts)
            return facts.problem();
        outlook.m_airframes.push_back(std::move(facts).value());
    }
    return outlook;
}

std::optional<Day> QuarantineOutlook::lastGoodCheck(Day upTo) const
{
    std::optional<Day> last;
    for (const GaugeCheck& check : m_checks)
        if (!check.quarantineFrom && check.day <= upTo && (!last || *last < check.day))
            last = check.day;
    return last;
}

DoubtProposal QuarantineOutlook::proposal(Day checked) const
{
    using Why = DoubtProposal::Why;
    DoubtProposal proposal{checked, Why::NeverRead, lastGoodCheck(checked), 0, 0};
    std::vector<std::vector<Reading>> readings;
    std::optional<Day> first;
    for (const AirframeFacts& facts : m_airframes) {
        readings.push_back(readingsWith(m_gauge, facts));
        for (const Reading& reading : readings.back())
            first = std::min(first.value_or(reading.when.localDay()), reading.when.localDay());
    }
    if (proposal.goodCheck) {
        proposal.from = std::min(*proposal.goodCheck + std::chrono::days{1}, checked);
        proposal.why = *proposal.goodCheck < checked ? Why::AfterGoodCheck : Why::OnDayOfGoodCheck;
    } else if (first && *first <= checked) {
        proposal.from = *first;
        proposal.why = Why::FirstReading;
    }
    for (const std::vector<Reading>& one : readings) {
        const auto count = std::ranges::count_if(
            one, [&proposal](const Reading& reading) { return proposal.from <= reading.when.localDay(); });
        proposal.readings += static_cast<int>(count);
        proposal.airframes += count > 0 ? 1 : 0;
    }
    return proposal;
}

DoubtPreview QuarantineOutlook::preview(Day checked, Day from) const
{
    const GaugeCheck check{{}, m_gauge, checked, {}, {}, from, {}};
    DoubtPreview preview;
    if (const auto good = lastGoodCheck(checked); good && from <= *good && from < checked)
        preview.goodCheckPassed = good;
    bool anythingToAsk = false;
    for (const AirframeFacts& facts : m_airframes) {
        const QuarantineEffect effect = effectOf(check, facts);
        if (effect.marked() > 0)
            preview.airframes.push_back(airframeRow(facts, effect));
        for (const Question& question : questionsFrom(effect, check, facts.airframe.id)) {
            anythingToAsk = true;
            if (!isOpen(question, facts))
                preview.questions.push_back(
                    {facts.airframe.registration, question.kind, facts.placeOf(question)});
        }
    }
    preview.isOpenAlready = anythingToAsk && preview.questions.empty();
    return preview;
}

std::vector<Question> QuarantineOutlook::questions(const GaugeCheck& check) const
{
    std::vector<Question> all;
    for (const AirframeFacts& facts : m_airframes)
        std::ranges::copy(questionsFrom(effectOf(check, facts), check, facts.airframe.id),
                          std::back_inserter(all));
    return all;
}

} // namespace rig
