#include "app/pages/rigged_today/summary_presenter.h"

#include "app/wording/report_words.h"
#include "core/store/airframe_facts.h"
#include "core/store/ask.h"
#include "core/store/facts_book.h"

#include <QCoreApplication>

#include <algorithm>
#include <sstream>

namespace rig {

namespace {

using Typed = std::variant<GapInterval, CorrectionRefusal>;

Typed twoFigures(const std::string& first, const std::string& second)
{
    const GapEntry enters = parseGap(first);
    const GapEntry refuses = parseGap(second);
    for (const GapEntry& one : {enters, refuses})
        if (const auto* problem = std::get_if<EntryProblem>(&one))
            return CorrectionRefusal{*problem};
    const GapInterval interval{std::get<Gap>(enters), std::get<Gap>(refuses)};
    if (const IntervalProblem problem = problemOf(interval); problem != IntervalProblem::None)
        return CorrectionRefusal{problem};
    return interval;
}

Typed oneFigure(const Gauge* gauge, const std::string& figure)
{
    const GapEntry entry = parseGap(figure);
    if (const auto* problem = std::get_if<EntryProblem>(&entry))
        return CorrectionRefusal{*problem};
    if (!gauge)
        return CorrectionRefusal{NoTwoFigures{}};
    const GaugeOutcome outcome = gauge->set.enters(std::get<Gap>(entry));
    if (const auto* refusal = std::get_if<GaugeRefusal>(&outcome))
        return CorrectionRefusal{*refusal};
    return std::get<GaugeReading>(outcome).interval;
}

const SummaryReading* readingIn(const RecordSummary& summary, ReadingId id)
{
    for (const SummaryCoupling& coupling : summary.couplings)
        for (const SummaryReading& reading : coupling.readings)
            if (reading.reading.id == id)
                return &reading;
    return nullptr;
}

Question outsideQuestion(const Reading& reading, AirframeId airframe, ReadingId id)
{
    Question question;
    question.airframe = airframe;
    question.kind = QuestionKind::OutsideReading;
    question.record = reading.record;
    question.coupling = reading.coupling;
    question.reading = id;
    question.stamp = reading.stamp;
    return question;
}

} // namespace

SummaryPresenter::SummaryPresenter(Records& records, const Clock& clock) : m_records{records}, m_clock{clock}
{
}

Result<std::optional<RecordId>> SummaryPresenter::lastClosed(AirframeId airframe) const
{
    const auto known = m_records.book().airframe(airframe);
    if (!known)
        return known.problem();
    return lastClosedRecord(known.value()->facts());
}

Result<SummaryView> SummaryPresenter::view(AirframeId airframe, RecordId record) const
{
    const auto known = m_records.book().airframe(airframe);
    if (!known)
        return known.problem();
    const auto content = m_records.book().content(record);
    if (!content)
        return content.problem();
    const AirframeFacts& facts = known.value()->facts();
    const Day day = content.value()->record.begins.localDay();
    const auto people = personStandingsOn(m_records, facts, day);
    if (!people)
        return people.problem();
    return SummaryView{summaryOf(facts, *content.value(), people.value()), facts.persons};
}

Result<Typed> SummaryPresenter::intervalFrom(const SummaryReading& reading, const std::string& typed) const
{
    std::istringstream words{typed};
    std::vector<std::string> figures;
    for (std::string word; words >> word;)
        figures.push_back(word);
    if (figures.size() == 2)
        return twoFigures(figures[0], figures[1]);
    if (figures.size() > 2)
        return Typed{CorrectionRefusal{NoTwoFigures{}}};
    const auto gauges = m_records.gauges();
    if (!gauges)
        return gauges.problem();
    const auto found = std::ranges::find_if(
        gauges.value(), [&reading](const Gauge& gauge) { return gauge.id == reading.reading.gauge; });
    return oneFigure(found == gauges.value().end() ? nullptr : &*found, typed);
}

Result<Verdict> SummaryPresenter::correct(const SummaryView& view, const CorrectionWanted& wanted)
{
    const SummaryReading* wrong = readingIn(view.summary, wanted.reading);
    if (!wrong)
        return Problem{ProblemKind::NotFound, textOf(wanted.reading.bytes)};
    const AirframeId airframe = view.summary.airframe.id;
    const auto known = m_records.book().airframe(airframe);
    if (!known)
        return known.problem();
    Reading right = wrong->reading;
    right.id = {};
    right.interval = wanted.interval;
    // “No leaf enters” and “thickest still loose” say more than an interval that is typed anew.
    if (right.technique == Technique::NoLeafEnters || right.technique == Technique::ThickestLoose)
        right.technique = Technique::Leaf;
    right.corrects = wanted.reading;
    right.note = wanted.reason;
    right.stamp = {wanted.by, m_clock.now()};
    const Judgement shown = judgeIn(known.value()->history(right.coupling), right);
    const Outcome done = m_records.together([&]() -> Outcome {
        const auto added = m_records.add(right, Shown{shown, kMethodVersion});
        if (!added)
            return added.problem();
        return shown.verdict == Verdict::Outside
                   ? ask(m_records, outsideQuestion(right, airframe, added.value()))
                   : Outcome{Done{}};
    });
    if (!done)
        return done.problem();
    return shown.verdict;
}

Outcome SummaryPresenter::print(const SummaryView& view, const QString& path, Paper paper) const
{
    auto evidence = m_records.evidence();
    if (!evidence)
        return evidence.problem();
    return writeRecord(path, view.summary,
                       {paper, m_clock.now().localDay(),
                        ReportWords::program(QCoreApplication::applicationVersion()), true,
                        std::move(evidence).value()});
}

} // namespace rig
