#include "app/blocks/cells.h"
#include "app/report/review_parts.h"
#include "app/wording/review_report_words.h"
#include "app/wording/trends_page_words.h"
#include "core/rigging/counts_as.h"

namespace rig::engineer {

namespace {

constexpr std::size_t kShown = 40; // rows of one coupling; the rest stands in the tables

// Why a reading is told apart from the ordinary ones; empty for those.
QString whyListed(const JudgedReading& one)
{
    if (one.superseded)
        return ReviewReportWords::superseded(textOf(one.supersededReason));
    if (one.struck)
        return ReviewReportWords::struck(textOf(one.struckReason));
    if (one.leftOut)
        return ReviewReportWords::leftOut(textOf(one.leftOutReason));
    return isLockedAtRigging(one.reading) && one.judgement.verdict == Verdict::NearEdge
               ? ReviewReportWords::side(one.judgement.direction)
               : QString{};
}

std::vector<Cell> listedRow(const Source& source, const JudgedReading& one, const QString& name,
                            const QString& why)
{
    CellText interval = said(source.formats.interval(one.reading.interval));
    interval.struck = one.isStruckThrough();
    Cell reasons{said(why)};
    for (const QString& note : noteOf(one.reading))
        reasons.push_back(softly(note));
    return {{said(name)},
            {said(source.formats.day(one.reading.when.localDay()))},
            {one.rigging ? said(source.formats.count(*one.rigging)) : CellText{}},
            {interval},
            {said(ReviewReportWords::with(nameOf(source, one.reading.person),
                                          nameOf(source, one.reading.gauge)))},
            reasons};
}

// Those of one coupling; what is too many for a page is told by its number.
void addRowsOf(const Source& source, const Coupling& coupling, TableBlock& table)
{
    std::vector<std::vector<Cell>> rows;
    for (const JudgedReading& one : source.judged) {
        if (one.reading.coupling != coupling.id ||
            !source.review.period.contains(one.reading.when.localDay()))
            continue;
        if (const QString why = whyListed(one); !why.isEmpty())
            rows.push_back(listedRow(source, one, printedName(coupling.name), why));
    }
    const std::size_t all = rows.size();
    if (all > kShown) {
        rows.erase(rows.begin(), rows.end() - static_cast<std::ptrdiff_t>(kShown));
        rows.front().back().push_back(
            softly(ReviewReportWords::nearEdgeShort(static_cast<int>(kShown), static_cast<int>(all))));
    }
    for (std::vector<Cell>& row : rows)
        table.rows.push_back(std::move(row));
}

} // namespace

void addListed(const Source& source, Writing& out)
{
    TableBlock table;
    table.columns = {{ReviewReportWords::coupling(), 1.8},  {ReviewReportWords::when(), 1.9},
                     {TrendsPageWords::riggingNumber(), 1}, {ReviewReportWords::reading(), 1.6},
                     {ReviewReportWords::measuredBy(), 2},  {ReviewReportWords::why(), 3.2}};
    for (const CouplingReview& one : source.review.couplings)
        addRowsOf(source, one.coupling, table);
    addPartOf(out, ReviewReportWords::nearEdge(), Part::Listed, std::move(table));
}

} // namespace rig::engineer
