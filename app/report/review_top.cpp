#include "app/blocks/cells.h"
#include "app/pictures/band_bar.h"
#include "app/pictures/marks.h"
#include "app/report/review_parts.h"
#include "app/wording/coupling_words.h"
#include "app/wording/report_words.h"
#include "app/wording/review_report_words.h"
#include "app/wording/standing_words.h"
#include "core/baseline/baseline.h"
#include "core/rigging/counts_as.h"

#include <map>
#include <set>

namespace rig::engineer {

namespace {

CellText orNotEntered(const std::string& text)
{
    return text.empty() ? softly(ReviewReportWords::notEntered()) : said(textOf(text));
}

void addFact(TableBlock& table, const QString& what, const CellText& value)
{
    table.rows.push_back({{softly(what)}, {value}});
}

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
            names << ReviewReportWords::withCount(textOf(person.name), found->second);
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

CellText bandBar(const CouplingReview& one)
{
    BandBarView view;
    view.band = one.band;
    if (one.standing.reading)
        view.reading = one.standing.reading->interval;
    view.verdict = one.standing.verdict();
    view.hasGap = hasGap(one.coupling);
    CellText cell;
    cell.picture = [view](QSizeF size, const FontSizes& fonts) {
        return laidPicture(layoutBandBar(view, size, fonts));
    };
    return cell;
}

CellText standingCell(const CouplingReview& one)
{
    CellText cell = said(StandingWords::withReading(one.standing), textRoleOf(one.standing.says));
    cell.mark = one.standing.says;
    return cell;
}

CellText figure(const QString& value, const QString& why, bool strong)
{
    return value.isEmpty() ? softly(why) : strong ? strongly(value) : said(value);
}

// Of what has no gap nothing is found in no reading.
QString nothingHere(const CouplingReview& one)
{
    return hasGap(one.coupling) ? ReviewReportWords::nothingStandsOut(one.counts.all())
                                : ReviewReportWords::noOpenQuestion();
}

Cell signCell(const CouplingReview& one)
{
    Cell cell;
    const QStringList signs = ReviewWords::signs(one);
    for (qsizetype i = 0; i < signs.size(); ++i)
        cell.push_back(i == 0 && ReviewWords::isGrave(one.signs.front()) ? strongly(signs[i])
                                                                         : said(signs[i]));
    if (cell.empty())
        cell.push_back(softly(nothingHere(one)));
    return cell;
}

std::vector<Cell> rankingRow(const Source& source, const CouplingReview& one)
{
    constexpr double kLikely = 0.5;
    const bool isLikely =
        one.movement && one.movement->forecast && one.movement->forecast->chanceOutside >= kLikely;
    const QString band = one.band ? ReviewReportWords::bandShort(source.formats.band(one.band->inner))
                                  : ReviewWords::noBand(one);
    const bool isTold = hasGap(one.coupling) || one.counts.all() > 0;
    return {{strongly(textOf(one.coupling.name)),
             softly(isTold ? ReviewReportWords::readingCount(one.counts.all())
                           : CouplingWords::kindName(one.coupling.kind))},
            {bandBar(one), standingCell(one), softly(band)},
            {figure(ReviewWords::drift(one), ReviewWords::whyNoDrift(one), one.has(Sign::Drift))},
            {figure(ReviewWords::scatter(one), ReviewWords::whyNoDrift(one), one.has(Sign::ScatterGrew))},
            {figure(ReviewWords::chance(one), ReviewWords::whyNoChance(one, source.review.period), isLikely)},
            signCell(one)};
}

} // namespace

void addTop(const Source& source, Blocks& blocks)
{
    const AirframeReview& review = source.review;
    const Airframe& airframe = review.airframe;
    addHeading(blocks, ReviewReportWords::title(), 1);
    blocks.emplace_back(ParagraphBlock{ReviewWords::title(review.period), Role::Ink, true, false});
    TableBlock table;
    table.columns = {{{}, 1.6}, {{}, 7}};
    addFact(table, ReviewReportWords::airframe(),
            strongly(ReportWords::airframe(textOf(airframe.registration), textOf(airframe.type))));
    addFact(table, ReviewReportWords::serial(), orNotEntered(airframe.serial));
    addFact(table, ReviewReportWords::jurisdiction(), orNotEntered(airframe.jurisdiction));
    addFact(table, ReviewReportWords::manuals(), orNotEntered(airframe.manualReferences));
    addFact(table, ReviewReportWords::period(),
            said(review.period.sinceAnnual
                     ? ReviewWords::period(review.period)
                     : ReviewReportWords::fromTo(review.period.from, review.period.to)));
    addFact(table, ReviewReportWords::annual(),
            review.period.annual
                ? said(ReviewReportWords::annualDue(*review.period.annual, review.riggingsToCome))
                : softly(ReviewReportWords::notEntered()));
    addFact(table, ReviewReportWords::riggings(), said(ReviewReportWords::riggingsCounted(review.counts)));
    addFact(table, ReviewReportWords::readings(),
            said(ReviewReportWords::readingsOf(review.counts.readings, inDoubtIn(review))));
    addFact(table, ReviewReportWords::measuredBy(), listed(personsOf(source), ReviewReportWords::nobody()));
    addFact(table, ReviewReportWords::measuredWith(), listed(gaugesOf(source), ReviewReportWords::nothing()));
    addFact(table, ReviewReportWords::method(), said(ReviewReportWords::methodVersion(kMethodVersion)));
    blocks.emplace_back(std::move(table));
    if (const QString closed = ReviewWords::closedToSecond(review); !closed.isEmpty())
        blocks.emplace_back(ParagraphBlock{closed, Role::Ink, true, false});
    addText(blocks, ReviewReportWords::whatThisIs());
    if (review.counts.readings == 0)
        blocks.emplace_back(ParagraphBlock{ReviewReportWords::noReadings(), Role::Ink, true, false});
}

void addRanking(const Source& source, Blocks& blocks)
{
    addHeading(blocks, ReviewReportWords::standsOut());
    bool isGrave = false;
    for (const CouplingReview& one : source.review.couplings) {
        if (one.signs.empty() || !ReviewWords::isGrave(one.signs.front()))
            continue;
        isGrave = true;
        addText(blocks,
                QStringLiteral("%1 %2").arg(ReviewWords::gravest(one), source.words.gravestFigures(one)));
    }
    if (!isGrave)
        addText(blocks, ReviewWords::nothingGrave(source.review));
    addIntro(blocks, ReviewReportWords::rankingIntro());
    TableBlock table;
    table.columns = {{ReviewReportWords::coupling(), 1.75}, {ReviewReportWords::gapAndBand(), 2.65},
                     {ReviewReportWords::drift(), 1.55},    {ReviewReportWords::scatter(), 1.3},
                     {ReviewReportWords::chance(), 1.05},   {ReviewReportWords::what(), 2.4}};
    for (const CouplingReview& one : source.review.couplings)
        table.rows.push_back(rankingRow(source, one));
    blocks.emplace_back(std::move(table));
}

} // namespace rig::engineer
