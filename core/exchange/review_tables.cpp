#include "core/exchange/review_tables.h"

#include "core/airframe/name_in.h"
#include "core/day_entry.h"
#include "core/exchange/csv.h"
#include "core/exchange/field_text.h"
#include "core/exchange/fields.h"
#include "core/exchange/reading_table.h"
#include "core/review/judged_readings.h"
#include "core/rigging/counts_as.h"
#include "core/rigging/time_known.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace rig {

namespace {

Fields verdictFields(const Judgement& judgement)
{
    return {text(judgement.verdict), text(judgement.reason), text(judgement.direction),
            significant(judgement.tail, 3)};
}

Fields bandFields(const std::optional<Band>& band)
{
    if (!band)
        return Fields(6);
    return {decimal(band->inner.lower, 4), decimal(band->inner.upper, 4), decimal(band->outer.lower, 4),
            decimal(band->outer.upper, 4), decimal(band->scatter, 4),     std::to_string(band->readings)};
}

std::string_view explainerWord(OutsideBy by)
{
    switch (by) {
    case OutsideBy::Person:
        return "person";
    case OutsideBy::Gauge:
        return "gauge";
    case OutsideBy::Both:
        return "both";
    case OutsideBy::Movement:
        return "movement";
    case OutsideBy::Nothing:
        break;
    }
    return {};
}

// From 1 on, of each coupling.
std::ptrdiff_t runOf(const CouplingReview& coupling, std::size_t story)
{
    return std::ranges::count_if(coupling.runs,
                                 [story](const OutsideRun& run) { return run.first <= story; });
}

const RiggingRecord* recordOf(const AirframeFacts& facts, const std::optional<RecordId>& id)
{
    const auto record =
        std::ranges::find_if(facts.riggingRecords, [&id](const RiggingRecord& one) { return id == one.id; });
    return record == facts.riggingRecords.end() ? nullptr : &*record;
}

// Empty where a table did not tell when.
std::string timeOf(const Reading& reading)
{
    return isTimeKnown(reading) ? timeText(reading.when) : std::string{};
}

std::string fromPaper(const AirframeFacts& facts, const std::optional<RecordId>& id)
{
    const RiggingRecord* record = recordOf(facts, id);
    return yesNo(record && record->isFromPaper());
}

// As readings.csv says it; the word of the file knows only of the reading itself.
std::string stateOf(const Reading& reading)
{
    return reading.state == SeatState::NotSecured ? std::string{wordOf(RowState::NotSecured)}
                                                  : text(reading.state);
}

// Of the rigging that a reading belongs to; nothing where nobody said.
std::string celsiusOf(const RiggingRecord* record)
{
    return record && record->celsius ? std::to_string(*record->celsius) : std::string{};
}

Fields readingFields(const AirframeFacts& facts, const JudgedReading& one)
{
    const Reading& reading = one.reading;
    Fields fields{nameIn(facts.couplings, reading.coupling),
                  dayText(reading.when.localDay()),
                  timeOf(reading),
                  one.rigging ? std::to_string(*one.rigging) : std::string{},
                  millimetres(reading.interval.enters),
                  millimetresOrNothing(reading.interval.refuses),
                  text(reading.technique),
                  nameIn(facts.gauges, reading.gauge),
                  facts.nameOf(reading.person),
                  text(reading.turn),
                  text(reading.purpose),
                  stateOf(reading)};
    append(fields, isHeldAgainstBand(reading) ? verdictFields(one.judgement) : Fields(4));
    append(fields,
           {one.score ? decimal(*one.score, 3) : std::string{}, yesNo(one.inDoubt), yesNo(one.ofBaseline),
            yesNo(one.superseded), one.supersededReason, yesNo(one.leftOut), one.leftOutReason});
    if (one.shown)
        append(fields, {text(one.shown->judgement.verdict), std::to_string(one.shown->methodVersion)});
    else
        append(fields, Fields(2));
    append(fields, {reading.note, textOf(reading.id.bytes)});
    return fields;
}

Fields outsideFields(const AirframeFacts& facts, const std::string& coupling, const OutsideStory& story)
{
    const Reading& reading = story.reading;
    Fields fields{coupling,
                  dayText(reading.when.localDay()),
                  timeOf(reading),
                  decimal(story.rigging, 2),
                  millimetres(reading.interval.enters),
                  millimetresOrNothing(reading.interval.refuses),
                  stateOf(reading),
                  nameIn(facts.gauges, reading.gauge),
                  facts.nameOf(reading.person)};
    append(fields, verdictFields(story.judgement));
    append(fields,
           {story.shown ? text(story.shown->judgement.verdict) : std::string{},
            yesNo(story.corrected.has_value()), story.corrected ? story.corrected->note : std::string{},
            std::to_string(story.afterwards.size()),
            story.question ? text(story.question->question.kind) : std::string{}});
    if (!story.question || !story.question->resolution) {
        append(fields, Fields(4));
        return fields;
    }
    const Resolution& closed = *story.question->resolution;
    append(fields, {closed.found, closed.done, facts.nameOf(closed.person), dayText(closed.day())});
    return fields;
}

} // namespace

std::string reviewReadingsTable(const AirframeFacts& facts, const AirframeReview& review)
{
    std::string table =
        csvLine({"coupling",      "date",      "time",         "rigging",       "enters_mm",
                 "refuses_mm",    "technique", "gauge",        "person",        "turn",
                 "purpose",       "state",     "verdict",      "reason",        "direction",
                 "tail",          "score",     "in_doubt",     "of_baseline",   "superseded",
                 "why",           "left_out",  "left_out_why", "shown_verdict", "shown_method_version",
                 "note",          "id",        "in_period",    "struck",        "struck_why",
                 "temperature_c", "copied_by", "from_paper"});
    for (const JudgedReading& one : judgedReadings(facts, review.period.to)) {
        Fields fields = readingFields(facts, one);
        const RiggingRecord* record = recordOf(facts, one.reading.record);
        append(fields, {yesNo(review.period.contains(one.reading.when.localDay())), yesNo(one.struck),
                        one.struckReason, celsiusOf(record), nameIn(facts.persons, one.reading.copiedBy),
                        yesNo(record && record->isFromPaper())});
        table += csvLine(fields);
    }
    return table;
}

std::string reviewOutsideTable(const AirframeFacts& facts, const AirframeReview& review)
{
    std::string table = csvLine({"coupling",
                                 "date",
                                 "time",
                                 "rigging",
                                 "enters_mm",
                                 "refuses_mm",
                                 "state",
                                 "gauge",
                                 "person",
                                 "verdict",
                                 "reason",
                                 "direction",
                                 "tail",
                                 "shown_verdict",
                                 "superseded",
                                 "superseded_why",
                                 "read_afterwards",
                                 "asked",
                                 "found",
                                 "done",
                                 "decided_by",
                                 "decided",
                                 "struck",
                                 "struck_why",
                                 "copied_by",
                                 "from_paper",
                                 "beyond_mm",
                                 "explained_by",
                                 "run"});
    for (const CouplingReview& coupling : review.couplings)
        for (std::size_t i = 0; i < coupling.outside.size(); ++i) {
            const OutsideStory& story = coupling.outside[i];
            Fields fields = outsideFields(facts, coupling.coupling.name, story);
            append(fields,
                   {yesNo(story.struck.has_value()), story.struck ? story.struck->reason : std::string{},
                    nameIn(facts.persons, story.reading.copiedBy), fromPaper(facts, story.reading.record),
                    story.beyond > 0 ? decimal(story.beyond, 3) : std::string{},
                    std::string{explainerWord(story.by)}, std::to_string(runOf(coupling, i))});
            table += csvLine(fields);
        }
    return table;
}

namespace {

// Its day and its two leaves; empty where the question is about no reading.
Fields readingFields(const AirframeFacts& facts, const std::optional<ReadingId>& id)
{
    const KeptReading* kept = id ? facts.reading(*id) : nullptr;
    if (!kept)
        return Fields(3);
    const Reading& reading = kept->reading;
    return {dayText(reading.when.localDay()), millimetres(reading.interval.enters),
            millimetresOrNothing(reading.interval.refuses)};
}

} // namespace

std::string reviewQuestionsTable(const AirframeFacts& facts, const AirframeReview& review)
{
    std::string table =
        csvLine({"asked", "time", "kind", "coupling", "surface", "gauge", "answer_to", "asked_by",
                 "open_at_end", "closed", "decided_by", "found", "done", "entered_by", "from_paper", "text",
                 "reading_date", "reading_enters_mm", "reading_refuses_mm"});
    for (const QuestionStory& story : review.questions) {
        const Question& asked = story.question;
        std::string step = asked.check ? text(*asked.check) : std::string{};
        if (asked.surfaceCheck)
            step = text(*asked.surfaceCheck);
        Fields fields{dayText(asked.day()),
                      asked.onPaper ? std::string{} : timeText(asked.stamp.when), // no hour stands on a paper
                      text(asked.kind),
                      nameIn(facts.couplings, asked.coupling),
                      nameIn(facts.surfaces, asked.surface),
                      nameIn(facts.gauges, asked.gauge),
                      step,
                      nameIn(facts.persons, asked.stamp.by)};
        fields.push_back(yesNo(story.isOpenAfter(review.period.to)));
        if (story.resolution)
            append(fields,
                   {dayText(story.resolution->day()), facts.nameOf(story.resolution->person),
                    story.resolution->answered ? text(*story.resolution->answered) : story.resolution->found,
                    story.resolution->done, nameIn(facts.persons, story.resolution->stamp.by)});
        else
            append(fields, Fields(5));
        fields.push_back(fromPaper(facts, asked.record));
        fields.push_back(asked.text);
        append(fields, readingFields(facts, asked.reading));
        table += csvLine(fields);
    }
    return table;
}

std::string reviewGaugesTable(const AirframeFacts& facts, const AirframeReview& review)
{
    std::string table =
        csvLine({"gauge", "kind", "tolerance_mm", "in_use", "readings", "in_doubt", "in_quarantine_at_end",
                 "check_date", "check_how", "check_found", "quarantine_from", "checked_by", "known_mm",
                 "known_enters_mm", "known_refuses_mm"});
    for (const GaugeReview& one : review.gauges) {
        const Fields own{
            one.gauge.name,          text(one.gauge.set.kind()),   millimetresOrNothing(one.gauge.tolerance),
            yesNo(one.gauge.inUse),  std::to_string(one.readings), std::to_string(one.inDoubt),
            yesNo(one.isQuarantined)};
        std::vector<Fields> checks;
        for (const GaugeCheck& check : facts.gaugeChecks)
            if (check.gauge == one.gauge.id && check.day <= review.period.to)
                checks.push_back(
                    {dayText(check.day), check.how, check.found, dayOrNothing(check.quarantineFrom),
                     nameIn(facts.persons, check.stamp.by),
                     check.known ? millimetres(check.known->width) : std::string{},
                     check.known ? millimetres(check.known->read.enters) : std::string{},
                     check.known ? millimetresOrNothing(check.known->read.refuses) : std::string{}});
        if (checks.empty())
            checks.emplace_back(8);
        for (const Fields& check : checks) {
            Fields line = own;
            append(line, check);
            table += csvLine(line);
        }
    }
    return table;
}

std::string reviewFittingsTable(const AirframeFacts& facts, const AirframeReview& review)
{
    std::string table =
        csvLine({"coupling", "begins", "reason", "entered_by", "in_period", "inner_lower_mm",
                 "inner_upper_mm", "outer_lower_mm", "outer_upper_mm", "scatter_mm", "baseline_readings"});
    std::map<CouplingId, CouplingHistory> histories;
    for (const Coupling& coupling : facts.couplings)
        histories.emplace(coupling.id, historyOf(coupling.id, facts, facts.readingsOf(coupling.id)));
    for (const Coupling& coupling : facts.couplings)
        for (const FittingHistory& one : histories.at(coupling.id).fittings) {
            if (one.fitting.begins > review.period.to)
                continue;
            Fields fields{coupling.name, dayText(one.fitting.begins), reasonText(one.fitting),
                          nameIn(facts.persons, one.fitting.stamp.by),
                          yesNo(review.period.contains(one.fitting.begins))};
            append(fields, bandFields(one.baseline.band()));
            table += csvLine(fields);
        }
    return table;
}

std::string reviewEventsTable(const AirframeFacts& facts, const AirframeReview& review)
{
    std::string table = csvLine({"date", "coupling", "kind", "note", "entered_by", "done"});
    for (const Event& event : review.events)
        table += csvLine({dayText(event.day), nameIn(facts.couplings, event.coupling), text(event.kind),
                          event.note, nameIn(facts.persons, event.stamp.by), event.done});
    return table;
}

std::string reviewJointPlayTable(const AirframeFacts& facts, const AirframeReview& review)
{
    std::string table = csvLine({"date", "coupling", "along", "along_mm", "across", "across_mm", "person",
                                 "note", "entered_by", "from_paper"});
    for (const JointPlay& play : review.jointPlays)
        table += csvLine({dayText(play.day), nameIn(facts.couplings, play.coupling), text(play.along.felt),
                          millimetresOrNothing(play.along.measured), text(play.across.felt),
                          millimetresOrNothing(play.across.measured), facts.nameOf(play.person), play.note,
                          nameIn(facts.persons, play.stamp.by), fromPaper(facts, play.record)});
    return table;
}

std::vector<NamedTable> reviewTables(const AirframeFacts& facts, const AirframeReview& review,
                                     Progress* progress)
{
    using OfBoth = std::string (*)(const AirframeFacts&, const AirframeReview&);
    constexpr std::pair<const char*, OfBoth> kTables[] = {
        {"period.csv",
         [](const AirframeFacts&, const AirframeReview& one) { return reviewPeriodTable(one); }},
        {"couplings.csv",
         [](const AirframeFacts&, const AirframeReview& one) { return reviewCouplingsTable(one); }},
        {"readings.csv", reviewReadingsTable},
        {"outside.csv", reviewOutsideTable},
        {"questions.csv", reviewQuestionsTable},
        {"shifts.csv", reviewShiftsTable},
        {"measurers.csv", reviewMeasurersTable},
        {"gauges.csv", reviewGaugesTable},
        {"fittings.csv", reviewFittingsTable},
        {"events.csv", reviewEventsTable},
        {"riggings.csv", reviewRiggingsTable},
        {"connected.csv", reviewConnectedTable},
        {"looks.csv", reviewLooksTable},
        {"control_checks.csv", reviewControlTable},
        {"deflections.csv", reviewDeflectionsTable},
        {"joint_play.csv", reviewJointPlayTable}};
    std::vector<NamedTable> tables;
    for (const auto& [name, table] : kTables) {
        if (!goesOn(progress, tables.size(), std::size(kTables)))
            return tables;
        tables.push_back({name, table(facts, review)});
    }
    return tables;
}

} // namespace rig
