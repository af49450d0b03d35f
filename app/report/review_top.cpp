#include "app/blocks/cells.h"
#include "app/report/review_parts.h"
#include "app/wording/chain_words.h"
#include "app/wording/report_words.h"
#include "app/wording/review_report_words.h"
#include "core/rigging/counts_as.h"

#include <map>

namespace rig::engineer {

namespace {

// Those who read at riggings of the period, with how often, in the order of the file.
QStringList personsOf(const Source& source)
{
    std::map<PersonId, int> counts;
    for (const JudgedReading& one : source.judged)
        if (isLockedAtRigging(one.reading) && !one.isStruckThrough() &&
            source.review.period.contains(one.reading.when.localDay()))
            ++counts[one.reading.person];
    QStringList names;
    for (const Person& person : source.facts.persons)
        if (const auto found = counts.find(person.id); found != counts.end())
            names << ReviewReportWords::withCount(printedName(person.name), found->second);
    return names;
}

QStringList gaugesOf(const Source& source)
{
    QStringList names;
    for (const GaugeReview& one : source.review.gauges)
        if (one.readings > 0)
            names << ReviewReportWords::withCount(source.words.gauge(one.gauge), one.readings);
    return names;
}

CellText listed(const QStringList& names, const QString& none)
{
    return names.isEmpty() ? softly(none) : said(ReviewReportWords::list(names));
}

int inDoubtIn(const AirframeReview& review)
{
    int inDoubt = 0;
    for (const CouplingReview& one : review.couplings)
        inDoubt += one.inDoubt;
    return inDoubt;
}

// Two beside each other; what was not entered stands in a line of its own.
class TopFacts
{
public:
    void add(const QString& what, CellText value)
    {
        if (m_table.rows.empty() || m_table.rows.back().size() > 2)
            m_table.rows.emplace_back();
        m_table.rows.back().push_back({softly(what)});
        m_table.rows.back().push_back({std::move(value)});
    }

    void addEntered(const QString& what, const std::string& value)
    {
        if (value.empty())
            m_missing << what;
        else
            add(what, said(textOf(value)));
    }

    void addMissing(const QString& what) { m_missing << what; }

    void write(Writing& out)
    {
        if (m_table.rows.back().size() == 2)
            m_table.rows.back().resize(4);
        m_table.columns = {{{}, 1.4}, {{}, 3.3}, {{}, 1.4}, {{}, 3.3}};
        m_table.isTight = true;
        out.blocks.emplace_back(std::move(m_table));
        if (!m_missing.isEmpty())
            addText(out, ReviewReportWords::notEntered(m_missing), Role::InkSoft);
    }

private:
    TableBlock m_table;
    QStringList m_missing;
};

} // namespace

void addTop(const Source& source, Writing& out)
{
    const AirframeReview& review = source.review;
    const Airframe& airframe = review.airframe;
    out.blocks.emplace_back(HeadingBlock{ReviewReportWords::title(), 1});
    out.blocks.emplace_back(ParagraphBlock{ReviewWords::title(review.period), Role::Ink, true, false});
    TopFacts facts;
    facts.add(
        ReviewReportWords::airframe(),
        strongly(ReportWords::airframe(printedName(airframe.registration), printedName(airframe.type))));
    facts.add(ReviewReportWords::period(),
              said(review.period.sinceAnnual
                       ? ReviewWords::period(review.period)
                       : ReviewReportWords::fromTo(review.period.from, review.period.to)));
    facts.addEntered(ReviewReportWords::serial(), airframe.serial);
    if (review.period.annual)
        facts.add(ReviewReportWords::annual(),
                  said(ReviewReportWords::annualDue(*review.period.annual, review.riggingsToCome)));
    else
        facts.addMissing(ReviewReportWords::annual());
    facts.addEntered(ReviewReportWords::manuals(), airframe.manualReferences);
    facts.addEntered(ReviewReportWords::jurisdiction(), airframe.jurisdiction);
    facts.add(ReviewReportWords::riggings(), said(ReviewReportWords::riggingsCounted(review.counts)));
    facts.add(ReviewReportWords::readings(),
              said(ReviewReportWords::readingsOf(review.counts.readings, inDoubtIn(review))));
    facts.add(ReviewReportWords::measuredBy(), listed(personsOf(source), ReviewReportWords::nobody()));
    facts.add(ReviewReportWords::measuredWith(), listed(gaugesOf(source), ReviewReportWords::nothing()));
    facts.write(out);
    if (source.file && source.file->hasFaults())
        out.blocks.emplace_back(
            ParagraphBlock{ChainWords::faults(source.file->chain->faults), Role::Ink, true, false});
    if (const QString closed = ReviewWords::closedToSecond(review.closedToSecond); !closed.isEmpty())
        out.blocks.emplace_back(ParagraphBlock{closed, Role::Ink, true, false});
    addText(out, ReviewReportWords::whatThisIs());
    if (review.counts.readings == 0)
        out.blocks.emplace_back(ParagraphBlock{ReviewReportWords::noReadings(), Role::Ink, true, false});
}

} // namespace rig::engineer
