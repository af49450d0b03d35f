#include "core/airframe/name_in.h"
#include "core/day_entry.h"
#include "core/exchange/csv.h"
#include "core/exchange/field_text.h"
#include "core/exchange/fields.h"
#include "core/exchange/review_tables.h"
#include "core/review/layoffs.h"
#include "core/review/record_summary.h"
#include "core/rigging/circuit_hand.h"
#include "core/rigging/deflection_figures.h"

namespace rig {

namespace {

// A figure of a surface as it was measured.
std::string figure(Deflection value)
{
    return decimal(value.inUnits(), 3);
}

std::vector<const RecordContent*> contentsIn(const AirframeFacts& facts, const AirframeReview& review)
{
    std::vector<const RecordContent*> contents;
    for (const RecordContent& content : facts.contents)
        if (review.period.contains(content.record.begins.localDay()))
            contents.push_back(&content);
    return contents;
}

Fields begunFields(const RecordContent& content)
{
    return {dayText(content.record.begins.localDay()), timeText(content.record.begins)};
}

const ManualDeflection* manualOf(const Surface& surface, MeasureKind kind)
{
    const auto& manual = kind == MeasureKind::Up ? surface.up : surface.down;
    return kind != MeasureKind::FreePlay && manual ? &*manual : nullptr;
}

// What the manual says, and how far the figure lies beyond it; nothing where it says nothing.
Fields manualFields(const Surface& surface, const SurfaceMeasure& measure)
{
    const auto inItsUnit = inUnit(measure, surface.unit);
    const std::string unit = text(surface.unit);
    if (const ManualDeflection* manual = manualOf(surface, measure.kind))
        return {figure(manual->nominal), figure(manual->tolerance), unit,
                inItsUnit ? figure(beyondRange(*inItsUnit, *manual)) : std::string{},
                surface.manualReference};
    if (measure.kind == MeasureKind::FreePlay && surface.mostPlay)
        return {figure(*surface.mostPlay), std::string{}, unit, std::string{}, surface.manualReference};
    return Fields(5);
}

} // namespace

std::string reviewLooksTable(const AirframeFacts& facts, const AirframeReview& review)
{
    std::string table = csvLine({"record_date", "record_time", "coupling", "turn", "question", "answer",
                                 "person", "date", "time", "counts"});
    for (const RecordContent* content : contentsIn(facts, review))
        for (const Check& check : content->checks) {
            Fields fields = begunFields(*content);
            append(fields, {nameIn(facts.couplings, std::optional{check.coupling}), text(check.turn),
                            text(check.kind), text(check.answer), facts.nameOf(check.person),
                            dayText(check.when.localDay()), timeText(check.when),
                            yesNo(standingOf(check, *content) == AnswerStanding::Counts)});
            table += csvLine(fields);
        }
    return table;
}

std::string reviewControlTable(const AirframeFacts& facts, const AirframeReview& review)
{
    std::string table = csvLine({"record_date", "record_time", "surface", "tried", "answer", "at_surface",
                                 "in_cockpit", "date", "time", "counts"});
    for (const RecordContent* content : contentsIn(facts, review))
        for (std::size_t i = 0; i < content->surfaceChecks.size(); ++i) {
            const SurfaceCheck& check = content->surfaceChecks[i];
            bool counts = true;
            for (std::size_t later = i + 1; later < content->surfaceChecks.size(); ++later)
                counts = counts && (content->surfaceChecks[later].surface != check.surface ||
                                    content->surfaceChecks[later].kind != check.kind);
            for (const Surface& surface : facts.surfaces)
                if (surface.id == check.surface)
                    if (const auto hand = lastHandOn(*content, facts.couplings, surface))
                        counts = counts && hand->saved < saveOrderOf(check);
            Fields fields = begunFields(*content);
            append(fields, {nameIn(facts.surfaces, std::optional{check.surface}), text(check.kind),
                            text(check.answer), facts.nameOf(check.person), facts.nameOf(check.cockpit),
                            dayText(check.stamp.when.localDay()), timeText(check.stamp.when), yesNo(counts)});
            table += csvLine(fields);
        }
    return table;
}

std::string reviewDeflectionsTable(const AirframeFacts& facts, const AirframeReview& review)
{
    std::string table = csvLine({"record_date", "record_time", "surface", "measured", "value", "unit",
                                 "measured_at_mm", "person", "manual_nominal", "manual_tolerance",
                                 "manual_unit", "beyond_manual", "manual_reference"});
    for (const RecordContent* content : contentsIn(facts, review))
        for (const SurfaceMeasure& measure : content->surfaceMeasures) {
            Fields fields = begunFields(*content);
            append(fields, {nameIn(facts.surfaces, std::optional{measure.surface}), text(measure.kind),
                            figure(measure.value), text(measure.unit),
                            millimetresOrNothing(measure.measuredAt), facts.nameOf(measure.person)});
            Fields manual(5);
            for (const Surface& surface : facts.surfaces)
                if (surface.id == measure.surface)
                    manual = manualFields(surface, measure);
            append(fields, manual);
            table += csvLine(fields);
        }
    return table;
}

std::string reviewRiggingsTable(const AirframeFacts& facts, const AirframeReview& review)
{
    std::string table =
        csvLine({"date", "time", "origin", "leader", "closing", "first", "second", "temperature_c",
                 "days_stood", "weeks_stood", "first_of_year", "after_layoff", "note"});
    const auto stoodBefore = stoodBeforeEach(facts.riggingRecords, facts.closings);
    for (const RiggingRecord& record : facts.riggingRecords) {
        if (!review.period.contains(record.begins.localDay()))
            continue;
        const auto close = std::ranges::find(facts.closings, record.id, &RecordClose::record);
        const bool isClosed = close != facts.closings.end();
        const StoodBefore& stood = stoodBefore.at(record.id);
        table +=
            csvLine({dayText(record.begins.localDay()), timeText(record.begins), text(record.origin),
                     facts.nameOf(record.leader), isClosed ? text(close->closing) : std::string{"open"},
                     isClosed ? nameIn(facts.persons, close->first) : std::string{},
                     isClosed ? nameIn(facts.persons, close->second) : std::string{},
                     record.celsius ? std::to_string(*record.celsius) : std::string{},
                     stood.since ? std::to_string(stood.days()) : std::string{},
                     stood.since ? std::to_string(stood.weeks()) : std::string{}, yesNo(stood.isFirstOfYear),
                     yesNo(stood.isAfterLayoff()), isClosed ? close->note : std::string{}});
    }
    return table;
}

} // namespace rig
