#include "app/blocks/cells.h"
#include "app/report/review_parts.h"
#include "app/wording/chain_words.h"
#include "app/wording/review_report_words.h"
#include "app/wording/verdict_words.h"
#include "core/review/saved_oddly.h"

namespace rig::engineer {

namespace {

void addChain(const std::optional<ChainState>& chain, Writing& out)
{
    if (!chain)
        return addText(out, ChainWords::notLookedAt());
    if (chain->takenOver > 0)
        addText(out, ChainWords::takenOver(chain->takenOver));
    addSentences(out, ChainWords::replacedNames(*chain));
    if (chain->faults == 0)
        return addText(out,
                       chain->replacedNames.empty() ? ChainWords::noFaults() : ChainWords::noOtherFaults());
    out.blocks.emplace_back(ParagraphBlock{ChainWords::faults(chain->faults), Role::Ink, true, false});
    addText(out, ChainWords::faultsAdvice());
    addSentences(out, ChainWords::all(*chain));
}

QString whyOdd(const Source& source, const OddlySaved& odd)
{
    switch (odd.why) {
    case SavedOddly::ShownOtherwise:
        return ChainWords::shownOtherwise(VerdictWords::word(odd.one.shown->judgement.verdict),
                                          VerdictWords::word(odd.one.judgement.verdict));
    case SavedOddly::ClockSetBack:
        return ChainWords::clockSetBack(source.formats.moment(odd.one.reading.stamp.when));
    case SavedOddly::InAClosedRecord:
        break;
    }
    return ChainWords::inAClosedRecord(source.formats.moment(odd.one.reading.stamp.when));
}

// What was shown and saved against what is worked out now.
void addOddlySaved(const Source& source, Writing& out)
{
    TableBlock table;
    table.columns = {{ReviewReportWords::coupling(), 2},
                     {ReviewReportWords::when(), 1.2},
                     {ReviewReportWords::reading(), 1.4},
                     {ReviewReportWords::why(), 5}};
    for (const OddlySaved& odd : oddlySaved(source.facts, source.judged))
        if (const Reading& reading = odd.one.reading; source.review.period.contains(reading.when.localDay()))
            table.rows.push_back({{said(nameOf(source, std::optional{reading.coupling}))},
                                  {said(source.formats.day(reading.when.localDay()))},
                                  {said(source.formats.interval(reading.interval))},
                                  {said(whyOdd(source, odd))}});
    if (table.rows.empty())
        return addText(out, ChainWords::nothingOdd());
    addIntro(out, ChainWords::oddIntro());
    out.blocks.emplace_back(std::move(table));
}

} // namespace

void addFile(const Source& source, Writing& out)
{
    if (!source.file)
        return;
    addPart(out, ChainWords::heading(), Part::File);
    addText(out, ChainWords::file(source.file->end));
    addText(out, ChainWords::wholeHash(source.file->end), Role::InkSoft);
    addText(out, ChainWords::whatItMeans(), Role::InkSoft);
    addChain(source.file->chain, out);
    for (const ComparedPrint& print : source.file->prints)
        addText(out, ChainWords::print(print, source.file->chain ? source.file->chain->faults : 0));
    if (source.withAppendix)
        addOddlySaved(source, out);
}

} // namespace rig::engineer
