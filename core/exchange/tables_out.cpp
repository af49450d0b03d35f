#include "core/exchange/tables_out.h"

#include "core/day_entry.h"
#include "core/exchange/csv.h"
#include "core/exchange/field_text.h"
#include "core/exchange/fields.h"
#include "core/exchange/reading_table.h"
#include "core/exchange/row_key.h"
#include "core/exchange/table_columns.h"
#include "core/rigging/counts_as.h"
#include "core/rigging/time_known.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <vector>

namespace rig {

namespace {

template <typename SomeId> std::string nameOf(const std::map<SomeId, std::string>& names, SomeId id)
{
    const auto at = names.find(id);
    return at == names.end() ? std::string{} : at->second;
}

template <typename Thing> auto namesById(const std::vector<Thing>& things, std::string Thing::*name)
{
    std::map<decltype(Thing::id), std::string> names;
    for (const Thing& thing : things)
        names.emplace(thing.id, thing.*name);
    return names;
}

struct Names
{
    std::vector<Airframe> airframes;
    std::map<PersonId, std::string> people;
    std::map<GaugeId, std::string> gauges;
};

Result<Names> namesIn(const Records& records)
{
    Problem problem;
    Names names;
    std::vector<Person> people;
    std::vector<Gauge> gauges;
    const bool read = take(records.airframes(), names.airframes, problem) &&
                      take(records.persons(), people, problem) && take(records.gauges(), gauges, problem);
    if (!read)
        return problem;
    names.people = namesById(people, &Person::name);
    names.gauges = namesById(gauges, &Gauge::name);
    return names;
}

// A reading as it goes out: where it does not stand, why.
struct RowOut
{
    Reading reading;
    std::optional<RowAside> aside;
    std::string why;
};

std::vector<RowOut> rowsOf(const std::vector<KeptReading>& kept, const std::vector<Exclusion>& exclusions)
{
    std::map<ReadingId, std::string> corrected;
    for (const KeptReading& one : kept)
        if (one.reading.corrects)
            corrected.emplace(*one.reading.corrects, one.reading.note);
    std::vector<RowOut> rows;
    for (const KeptReading& one : kept) {
        RowOut row{one.reading, {}, {}};
        if (const Exclusion* strike = strikeOf(one.reading, exclusions)) {
            row.aside = RowAside::Struck;
            row.why = strike->reason;
        } else if (const auto why = corrected.find(one.reading.id); why != corrected.end()) {
            row.aside = RowAside::Corrected;
            row.why = why->second;
        }
        rows.push_back(std::move(row));
    }
    std::ranges::stable_sort(rows, {}, [](const RowOut& row) { return row.reading.when.localDay(); });
    return rows;
}

using PaperRecords = std::set<RecordId>;

Outcome readPaperRecords(const Records& records, AirframeId airframe, PaperRecords& paper)
{
    const auto riggings = records.riggingRecords(airframe);
    if (!riggings)
        return riggings.problem();
    for (const RiggingRecord& record : riggings.value())
        if (record.isFromPaper())
            paper.insert(record.id);
    return Done{};
}

// When the riggings began to which locked readings belong, where that is known.
using RiggingTimes = std::map<RecordId, std::string>;

Outcome readRiggingTimes(const Records& records, AirframeId airframe, RiggingTimes& times)
{
    const auto riggings = records.riggingRecords(airframe);
    if (!riggings)
        return riggings.problem();
    for (const RiggingRecord& record : riggings.value())
        if (isTimeKnown(record))
            times.emplace(record.id, timeText(record.begins));
    return Done{};
}

std::string riggingTimeOf(const Reading& reading, const RiggingTimes& times)
{
    const bool isOfARigging = reading.record && rowStateOf(reading) == RowState::Locked;
    const auto found = isOfARigging ? times.find(*reading.record) : times.end();
    return found == times.end() ? std::string{} : found->second;
}

std::string isFrom(const PaperRecords& paper, const std::optional<RecordId>& record)
{
    return yesNo(record && paper.contains(*record));
}

Outcome appendReadings(const Records& records, const Names& names, const Airframe& airframe,
                       std::string& table)
{
    Problem problem;
    std::vector<Coupling> couplings;
    std::vector<KeptReading> kept;
    std::vector<Exclusion> exclusions;
    if (!take(records.couplings(airframe.id), couplings, problem) ||
        !take(records.readings(airframe.id), kept, problem) ||
        !take(records.exclusions(airframe.id), exclusions, problem))
        return problem;
    PaperRecords paper;
    RiggingTimes times;
    for (const Outcome& read :
         {readPaperRecords(records, airframe.id, paper), readRiggingTimes(records, airframe.id, times)})
        if (!read)
            return read;
    const auto couplingNames = namesById(couplings, &Coupling::name);
    RowCounts seen;
    for (const RowOut& row : rowsOf(kept, exclusions)) {
        const Reading& reading = row.reading;
        const int repeat = row.aside ? 1 : ++seen[keyOf(reading)];
        const std::string gauge = reading.gauge ? nameOf(names.gauges, *reading.gauge) : std::string{};
        table += csvLine(
            {airframe.registration, nameOf(couplingNames, reading.coupling), dayText(reading.when.localDay()),
             millimetres(reading.interval.enters), millimetresOrNothing(reading.interval.refuses), gauge,
             nameOf(names.people, reading.person), text(rowStateOf(reading)), reading.ownNote(),
             repeat == 1 ? std::string{} : std::to_string(repeat),
             reading.second ? nameOf(names.people, *reading.second) : std::string{},
             row.aside ? std::string{wordOf(*row.aside)} : std::string{}, row.why,
             reading.copiedBy ? nameOf(names.people, *reading.copiedBy) : std::string{},
             isFrom(paper, reading.record), isTimeKnown(reading) ? timeText(reading.when) : std::string{},
             riggingTimeOf(reading, times)});
    }
    return Done{};
}

Outcome appendCouplings(const Records& records, const Airframe& airframe, std::string& table)
{
    Problem problem;
    std::vector<Coupling> couplings;
    std::vector<Fitting> fittings;
    if (!take(records.couplings(airframe.id), couplings, problem) ||
        !take(records.fittings(airframe.id), fittings, problem))
        return problem;
    for (const Coupling& coupling : couplings) {
        Fields own = columnsOf(airframe.registration, coupling);
        const std::size_t width = own.size();
        bool written = false;
        for (const Fitting& fitting : fittings) {
            if (fitting.coupling != coupling.id)
                continue;
            own.resize(width);
            append(own, columnsOf(fitting));
            table += csvLine(own);
            written = true;
        }
        own.resize(width + 2);
        if (!written)
            table += csvLine(own);
    }
    return Done{};
}

} // namespace

Result<std::string> writeReadings(const Records& records)
{
    const auto names = namesIn(records);
    if (!names)
        return names.problem();
    std::string table = csvLine(readingColumns());
    for (const Airframe& airframe : names.value().airframes)
        if (const Outcome done = appendReadings(records, names.value(), airframe, table); !done)
            return done.problem();
    return table;
}

Result<std::string> writeCouplings(const Records& records)
{
    const auto airframes = records.airframes();
    if (!airframes)
        return airframes.problem();
    std::string table = csvLine(couplingColumns());
    for (const Airframe& airframe : airframes.value())
        if (const Outcome done = appendCouplings(records, airframe, table); !done)
            return done.problem();
    return table;
}

Result<std::string> writeEvents(const Records& records)
{
    const auto names = namesIn(records);
    if (!names)
        return names.problem();
    std::string table = csvLine(eventColumns());
    for (const Airframe& airframe : names.value().airframes) {
        Problem problem;
        std::vector<Coupling> couplings;
        std::vector<Event> events;
        if (!take(records.couplings(airframe.id), couplings, problem) ||
            !take(records.events(airframe.id), events, problem))
            return problem;
        const auto couplingNames = namesById(couplings, &Coupling::name);
        for (const Event& event : events)
            table += csvLine(
                {airframe.registration, nameOf(couplingNames, event.coupling.value_or(CouplingId{})),
                 dayText(event.day), text(event.kind), event.note,
                 nameOf(names.value().people, event.person.value_or(event.stamp.by.value_or(PersonId{}))),
                 event.done});
    }
    return table;
}

Result<std::string> writeJointPlays(const Records& records)
{
    const auto names = namesIn(records);
    if (!names)
        return names.problem();
    std::string table = csvLine(jointPlayColumns());
    for (const Airframe& airframe : names.value().airframes) {
        Problem problem;
        std::vector<Coupling> couplings;
        std::vector<JointPlay> plays;
        if (!take(records.couplings(airframe.id), couplings, problem) ||
            !take(records.jointPlays(airframe.id), plays, problem))
            return problem;
        PaperRecords paper;
        if (const Outcome read = readPaperRecords(records, airframe.id, paper); !read)
            return read.problem();
        const auto couplingNames = namesById(couplings, &Coupling::name);
        for (const JointPlay& play : plays)
            table +=
                csvLine({airframe.registration, nameOf(couplingNames, play.coupling), dayText(play.day),
                         text(play.along.felt), millimetresOrNothing(play.along.measured),
                         text(play.across.felt), millimetresOrNothing(play.across.measured),
                         nameOf(names.value().people, play.person), play.note, isFrom(paper, play.record)});
    }
    return table;
}

Result<std::string> writeSignOffs(const Records& records)
{
    const auto names = namesIn(records);
    if (!names)
        return names.problem();
    const auto& people = names.value().people;
    std::string table =
        csvLine({"airframe", "person", "signer", "state", "date", "months", "months_without_rigging", "note",
                 "asked_supervised", "asked_not_practised", "asked_missed"});
    for (const Airframe& airframe : names.value().airframes) {
        const auto learning = records.learning(airframe.id);
        if (!learning)
            return learning.problem();
        for (const SignOff& one : learning.value().signOffs) {
            const auto asked = [&one](int AskedFor::*what) {
                return one.askedFor ? std::to_string((*one.askedFor).*what) : std::string{};
            };
            table +=
                csvLine({airframe.registration, nameOf(people, one.person), nameOf(people, one.signer),
                         text(one.kind), dayText(one.day), std::to_string(one.months),
                         std::to_string(one.monthsWithoutRigging), one.note, asked(&AskedFor::supervised),
                         asked(&AskedFor::notPractised), asked(&AskedFor::missed)});
        }
    }
    return table;
}

Result<std::string> writeSupervised(const Records& records)
{
    const auto names = namesIn(records);
    if (!names)
        return names.problem();
    const auto& people = names.value().people;
    std::string table = csvLine({"airframe", "date", "learner", "mentor", "note", "taken_back_by", "why"});
    for (const Airframe& airframe : names.value().airframes) {
        Problem problem;
        LearningFacts learning;
        std::vector<RiggingRecord> riggings;
        if (!take(records.learning(airframe.id), learning, problem) ||
            !take(records.riggingRecords(airframe.id), riggings, problem))
            return problem;
        const auto write = [&](const SupervisedRigging& one, const std::string& who, const std::string& why) {
            const auto rigging = std::ranges::find(riggings, one.record, &RiggingRecord::id);
            const std::string day =
                rigging == riggings.end() ? std::string{} : dayText(rigging->begins.localDay());
            table += csvLine({airframe.registration, day, nameOf(people, one.learner),
                              nameOf(people, one.mentor), one.note, who, why});
        };
        for (const SupervisedRigging& one : learning.supervisedRiggings)
            write(one, {}, {});
        for (const auto& [one, back] : learning.supervisedTakenBack)
            write(one, nameOf(people, back.person), back.reason);
    }
    return table;
}

Result<std::string> writePeople(const Records& records)
{
    const auto people = records.persons();
    if (!people)
        return people.problem();
    std::string table = csvLine(personColumns());
    for (const Person& person : people.value())
        table += csvLine(columnsOf(person));
    return table;
}

Result<std::string> writeGauges(const Records& records)
{
    Problem problem;
    std::vector<Gauge> gauges;
    std::vector<GaugeCheck> checks;
    if (!take(records.gauges(), gauges, problem) || !take(records.gaugeChecks(), checks, problem))
        return problem;
    std::string table = csvLine(gaugeColumns());
    for (const Gauge& gauge : gauges) {
        std::vector<Fields> found;
        for (const GaugeCheck& check : checks)
            if (check.gauge == gauge.id)
                found.push_back(columnsOf(check));
        if (found.empty())
            found.emplace_back(gaugeColumns().size() - columnsOf(gauge).size());
        for (const auto& check : found) {
            Fields line = columnsOf(gauge);
            append(line, check);
            table += csvLine(line);
        }
    }
    return table;
}

} // namespace rig
