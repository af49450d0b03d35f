#include "core/airframe/name_in.h"
#include "core/day_entry.h"
#include "core/exchange/csv.h"
#include "core/exchange/field_text.h"
#include "core/exchange/fields.h"
#include "core/exchange/review_tables.h"
#include "core/review/answers_review.h"
#include "core/review/layoffs.h"
#include "core/review/record_summary.h"
#include "core/rigging/connected.h"
#include "core/rigging/deflection_figures.h"
#include "core/rigging/surface_answers.h"
#include "core/rigging/time_known.h"

namespace rig {

namespace {

// A figure of a surface as it was measured.
std::string figure(Deflection value)
{
    return decimal(value.inUnits(), 3);
}

Fields begunFields(const RecordContent& content)
{
    return {dayText(content.record.begins.localDay()), timeText(content.record.begins)};
}

// When it was done: what stood on paper was, when the paper says.
Fields momentFields(const RecordContent& content, const Stamp& stamp)
{
    const Moment& when = content.record.isFromPaper() ? content.record.begins : stamp.when;
    return {dayText(when.localDay()), timeText(when)};
}

std::string namesOf(const std::vector<PersonId>& persons, const AirframeFacts& facts)
{
    std::string names;
    for (const PersonId person : persons)
        names += (names.empty() ? "" : "; ") + facts.nameOf(person);
    return names;
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
                                 "person", "date", "time", "counts", "copied_by", "from_paper"});
    for (const RecordContent& content : contentsAtTheClose(facts, review.period))
        for (const Check& check : content.checks) {
            Fields fields = begunFields(content);
            append(fields, {nameIn(facts.couplings, check.coupling), text(check.turn), text(check.kind),
                            text(check.answer), facts.nameOf(check.person), dayText(check.when.localDay()),
                            timeText(check.when), yesNo(standingOf(check, content) == AnswerStanding::Counts),
                            nameIn(facts.persons, check.copiedBy), yesNo(content.record.isFromPaper())});
            table += csvLine(fields);
        }
    return table;
}

std::string reviewControlTable(const AirframeFacts& facts, const AirframeReview& review)
{
    std::string table = csvLine({"record_date", "record_time", "surface", "tried", "answer", "at_surface",
                                 "in_cockpit", "date", "time", "counts", "seen", "from_paper"});
    for (const RecordContent& content : contentsAtTheClose(facts, review.period))
        for (const Surface& surface : facts.surfaces)
            for (const SurfaceAnswer& answer : surfaceAnswersIn(content, facts.couplings, surface)) {
                const SurfaceCheck& check = *answer.check;
                Fields fields = begunFields(content);
                append(fields, {surface.name, text(check.kind), text(check.answer),
                                facts.nameOf(check.person), facts.nameOf(check.cockpit)});
                append(fields, momentFields(content, check.stamp));
                append(fields, {yesNo(answer.counts()), check.seen ? text(*check.seen) : std::string{},
                                yesNo(content.record.isFromPaper())});
                table += csvLine(fields);
            }
    return table;
}

std::string reviewConnectedTable(const AirframeFacts& facts, const AirframeReview& review)
{
    std::string table = csvLine({"record_date", "record_time", "side", "connected_by", "stated_by", "date",
                                 "time", "counts", "from_paper"});
    for (const RecordContent& content : contentsAtTheClose(facts, review.period))
        for (const SideConnected& stated : content.connected) {
            Fields fields = begunFields(content);
            append(fields, {text(stated.side), namesOf(stated.persons, facts),
                            nameIn(facts.persons, stated.stamp.by)});
            append(fields, momentFields(content, stated.stamp));
            append(fields, {yesNo(&stated == statedFor(stated.side, content.connected)),
                            yesNo(content.record.isFromPaper())});
            table += csvLine(fields);
        }
    return table;
}

std::string reviewDeflectionsTable(const AirframeFacts& facts, const AirframeReview& review)
{
    std::string table = csvLine({"record_date", "record_time", "surface", "measured", "value", "unit",
                                 "measured_at_mm", "person", "manual_nominal", "manual_tolerance",
                                 "manual_unit", "beyond_manual", "manual_reference", "from_paper"});
    for (const RecordContent& content : contentsAtTheClose(facts, review.period))
        for (const SurfaceMeasure& measure : content.surfaceMeasures) {
            Fields fields = begunFields(content);
            append(fields, {nameIn(facts.surfaces, measure.surface), text(measure.kind),
                            figure(measure.value), text(measure.unit),
                            millimetresOrNothing(measure.measuredAt), facts.nameOf(measure.person)});
            Fields manual(5);
            for (const Surface& surface : facts.surfaces)
                if (surface.id == measure.surface)
                    manual = manualFields(surface, measure);
            append(fields, manual);
            fields.push_back(yesNo(content.record.isFromPaper()));
            table += csvLine(fields);
        }
    return table;
}

std::string reviewRiggingsTable(const AirframeFacts& facts, const AirframeReview& review)
{
    std::string table = csvLine({"date", "time", "origin", "leader", "closing", "first", "second",
                                 "temperature_c", "days_stood", "weeks_stood", "first_of_year",
                                 "after_layoff", "note", "from_paper", "entered_by", "entered_date"});
    const auto stoodBefore = stoodBeforeEach(facts.riggingRecords, facts.closings);
    for (const RiggingRecord& record : facts.riggingRecords) {
        if (!review.period.contains(record.begins.localDay()))
            continue;
        const auto close = std::ranges::find(facts.closings, record.id, &RecordClose::record);
        const bool isClosed = close != facts.closings.end();
        const StoodBefore& stood = stoodBefore.at(record.id);
        table +=
            csvLine({dayText(record.begins.localDay()),
                     isTimeKnown(record) ? timeText(record.begins) : std::string{}, text(record.origin),
                     facts.nameOf(record.leader), isClosed ? text(close->closing) : std::string{"open"},
                     isClosed ? nameIn(facts.persons, close->first) : std::string{},
                     isClosed ? nameIn(facts.persons, close->second) : std::string{},
                     record.celsius ? std::to_string(*record.celsius) : std::string{},
                     stood.since ? std::to_string(stood.days()) : std::string{},
                     stood.since ? std::to_string(stood.weeks()) : std::string{}, yesNo(stood.isFirstOfYear),
                     yesNo(stood.isAfterLayoff()), isClosed ? close->note : std::string{},
                     yesNo(record.isFromPaper()), nameIn(facts.persons, record.enteredBy),
                     record.isFromPaper() ? dayText(record.stamp.when.localDay()) : std::string{}});
    }
    return table;
}

} // namespace rig
