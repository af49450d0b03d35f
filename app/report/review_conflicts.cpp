#include "app/blocks/cells.h"
#include "app/report/review_parts.h"
#include "app/wording/chain_words.h"
#include "app/wording/conflict_words.h"
#include "app/wording/review_report_words.h"

#include <algorithm>
#include <iterator>

namespace rig::engineer {

namespace {

// Who said it, when, and what. Of two corrections only who and when: somebody may have yet to measure there
// without seeing what was read.
Cell sideOf(const ToldConflict& told, const FaultyFact& side)
{
    Cell cell{said(ChainWords::fact(side))};
    if (told.conflict.kind != ConflictKind::Corrections)
        cell.push_back(softly(ChainWords::says(side)));
    return cell;
}

} // namespace

std::vector<ToldConflict> conflictsOf(const Source& source)
{
    std::vector<ToldConflict> all;
    if (source.file)
        std::ranges::copy_if(source.file->conflicts, std::back_inserter(all), [&](const ToldConflict& told) {
            return concerns(told, source.facts.airframe.id);
        });
    return all;
}

void addConflicts(const Source& source, Writing& out)
{
    const std::vector<ToldConflict> all = conflictsOf(source);
    if (all.empty())
        return;
    TableBlock table;
    table.columns = {
        {ReviewReportWords::what(), 3}, {ConflictWords::side(true), 4}, {ConflictWords::side(false), 4}};
    for (const ToldConflict& told : all)
        table.rows.push_back(
            {{said(ConflictWords::title(told)), softly(ConflictWords::until(told.conflict.kind))},
             sideOf(told, told.first),
             sideOf(told, told.second)});
    addPartOf(out, ConflictWords::headingOf(all), Part::Conflicts, std::move(table),
              ConflictWords::reportIntro());
}

void addDecided(const Source& source, Writing& out)
{
    if (!source.file)
        return;
    TableBlock table;
    table.columns = {{ReviewReportWords::what(), 2.4},
                     {ConflictWords::side(true), 3},
                     {ConflictWords::side(false), 3},
                     {ConflictWords::decisionColumn(), 3.4}};
    for (const auto& [told, decision] : source.file->decided)
        if (concerns(told, source.facts.airframe.id))
            table.rows.push_back(
                {{said(ConflictWords::title(told))},
                 {said(ChainWords::fact(told.first))},
                 {said(ChainWords::fact(told.second))},
                 {said(ConflictWords::decidedBy(ConflictWords::decision(decision.kind, decision.holds),
                                                nameOf(source, std::optional{decision.person}),
                                                source.formats.day(decision.stamp.when.localDay()))),
                  softly(textOf(decision.reason))}});
    if (!table.rows.empty())
        addPartOf(out, ConflictWords::decidedHeading(), Part::Decided, std::move(table),
                  ConflictWords::decidedIntro());
}

} // namespace rig::engineer
