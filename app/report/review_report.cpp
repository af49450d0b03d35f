#include "app/report/review_report.h"

#include "app/blocks/cells.h"
#include "app/report/pdf_file.h"
#include "app/report/review_parts.h"
#include "app/wording/report_words.h"
#include "app/wording/review_report_words.h"
#include "core/day_entry.h"

#include <algorithm>

namespace rig {

namespace engineer {

QString nameOf(const Source& source, const std::optional<PersonId>& person)
{
    return person ? textOf(source.facts.nameOf(*person)) : QString{};
}

QString nameOf(const Source& source, const std::optional<GaugeId>& gauge)
{
    const Gauge* known = gauge ? source.facts.gauge(*gauge) : nullptr;
    return known ? textOf(known->name) : QString{};
}

QString nameOf(const Source& source, const std::optional<CouplingId>& coupling)
{
    const auto& all = source.facts.couplings;
    const auto found = coupling ? std::ranges::find(all, *coupling, &Coupling::id) : all.end();
    return found == all.end() ? QString{} : textOf(found->name);
}

void addHeading(Blocks& blocks, const QString& text, int rank)
{
    blocks.emplace_back(HeadingBlock{text, rank});
}

void addText(Blocks& blocks, const QString& text, Role role)
{
    blocks.emplace_back(ParagraphBlock{text, role, false, false});
}

void addIntro(Blocks& blocks, const QString& text)
{
    blocks.emplace_back(ParagraphBlock{text, Role::InkSoft, false, true});
}

void addSentences(Blocks& blocks, const QStringList& sentences)
{
    for (const QString& sentence : sentences)
        addText(blocks, sentence);
}

void addTable(Blocks& blocks, TableBlock table, const QString& otherwise)
{
    if (table.rows.empty())
        addText(blocks, otherwise);
    else
        blocks.emplace_back(std::move(table));
}

} // namespace engineer

std::vector<Block> reviewBlocks(const AirframeFacts& facts, const AirframeReview& review)
{
    const engineer::Source source{
        facts,    review, ReviewWords{facts}, RiggingNumbers{facts}, judgedReadings(facts, review.period.to),
        Formats{}};
    engineer::Blocks blocks;
    engineer::addTop(source, blocks);
    engineer::addRanking(source, blocks);
    engineer::addOpenQuestions(source, blocks);
    engineer::addOutside(source, blocks);
    engineer::addCouplings(source, blocks);
    engineer::addShared(source, blocks);
    engineer::addMeasurers(source, blocks);
    engineer::addAnswers(source, blocks);
    engineer::addGauges(source, blocks);
    engineer::addFittings(source, blocks);
    engineer::addEvents(source, blocks);
    engineer::addClosedQuestions(source, blocks);
    engineer::addRest(source, blocks);
    engineer::addByHand(blocks);
    return blocks;
}

PageFlow layoutReview(const AirframeFacts& facts, const AirframeReview& review, const Printing& printing)
{
    const PageFrame frame{
        ReportWords::airframe(textOf(review.airframe.registration), textOf(review.airframe.type)),
        ReviewReportWords::running(review.period), ReportWords::caution(),
        ReportWords::printed(printing.day, printing.program)};
    return layoutPages(frame, reviewBlocks(facts, review), printing.paper);
}

Outcome writeReview(const QString& path, const AirframeFacts& facts, const AirframeReview& review,
                    const Printing& printing)
{
    return writePdf(path, layoutReview(facts, review, printing), ReviewReportWords::running(review.period),
                    printing.program);
}

QString reviewFileName(const AirframeReview& review)
{
    return ReviewReportWords::fileName(textOf(review.airframe.registration),
                                       textOf(dayText(review.period.to)));
}

} // namespace rig
