#include "core/baseline/baseline.h"
#include "core/day_entry.h"
#include "core/exchange/csv.h"
#include "core/exchange/field_text.h"
#include "core/exchange/fields.h"
#include "core/exchange/review_tables.h"
#include "core/store/kind_words.h"

#include <functional>

namespace rig {

namespace {

std::string_view wordOf(Sign sign)
{
    switch (sign) {
    case Sign::FactsInDoubt:
        return "facts-in-doubt";
    case Sign::OpenQuestion:
        return "open-question";
    case Sign::Drift:
        return "drift";
    case Sign::ScatterGrew:
        return "scatter-grew";
    case Sign::Step:
        return "step";
    case Sign::StepOrDrift:
        return "step-or-drift";
    case Sign::Outside:
        return "outside";
    case Sign::OutsideBefore:
        return "outside-before";
    case Sign::OutsideExplained:
        return "outside-explained";
    case Sign::NearEdge:
        return "near-edge";
    case Sign::GapIsNoWitness:
        return "gap-is-no-witness";
    case Sign::DriftEnded:
        return "drift-ended";
    case Sign::ScatterShrank:
        return "scatter-shrank";
    case Sign::NotRead:
        return "not-read";
    case Sign::NoBand:
        return "no-band";
    case Sign::MissedRiggings:
        return "missed-riggings";
    case Sign::ThinBand:
        return "thin-band";
    case Sign::PartSeatedNeverShown:
        break;
    }
    return "part-seated-never-shown";
}

std::string_view wordOf(Says says)
{
    switch (says) {
    case Says::Outside:
        return "outside";
    case Says::Stopped:
        return "stopped";
    case Says::Asked:
        return "question-open";
    case Says::PartSeated:
        return "part-seated";
    case Says::NotSecured:
        return "not-secured";
    case Says::InDoubt:
        return "facts-in-doubt";
    case Says::CannotTell:
        return "cannot-tell";
    case Says::NoBandYet:
        return "no-band";
    case Says::Hidden:
        return "hidden";
    case Says::NotRead:
        return "not-read";
    case Says::NoGap:
        return "no-gap";
    case Says::NearEdge:
        return "near-edge";
    case Says::Moved:
        return "moved";
    case Says::Scatters:
        return "scatter-changed";
    case Says::WasOutside:
        return "was-outside";
    case Says::OutsideBefore:
        return "outside-before";
    case Says::Inside:
        break;
    }
    return "inside";
}

std::string_view wordOf(ChangeKind kind)
{
    switch (kind) {
    case ChangeKind::Step:
        return "step";
    case ChangeKind::Drift:
        return "drift";
    case ChangeKind::StepOrDrift:
        break;
    }
    return "step-or-drift";
}

// The one that is told; of a fitting that moved before the period alone the latest.
const PathChangeTold* latestOf(const FittingMovement& movement)
{
    if (const PathChangeTold* told = movement.told())
        return told;
    return movement.changes.empty() ? nullptr : &movement.changes.back();
}

std::string explainerOf(const DayShift& day)
{
    if (day.ofGauge && day.ofPerson)
        return "both";
    if (day.ofGauge)
        return "gauge";
    return day.ofPerson ? "person" : "";
}

std::string signWords(const std::vector<Sign>& signs)
{
    std::string words;
    for (const Sign sign : signs)
        words += (words.empty() ? "" : " ") + std::string{wordOf(sign)};
    return words;
}

// Nothing where there is nothing to tell.
template <typename Thing, typename Tell> std::string textIf(const Thing* thing, Tell tell)
{
    return thing ? std::string{tell(*thing)} : std::string{};
}

// Each figure with its column, so that the two cannot part.
class Figures
{
public:
    explicit Figures(const CouplingReview& one) : m_one{one}
    {
        addCoupling();
        addBands();
        addReadings();
        addMovement();
        addScatter();
        add("signs", signWords(one.signs));
    }

    const Fields& names() const { return m_names; }
    const Fields& values() const { return m_values; }

private:
    void add(const std::string& name, const std::string& value)
    {
        m_names.push_back(name);
        m_values.push_back(value);
    }
    void add(const std::string& name, int value) { add(name, std::to_string(value)); }

    void addCoupling()
    {
        add("coupling", m_one.coupling.name);
        add("circuit", circuitText(m_one.coupling));
        add("side", std::string{rig::wordOf(m_one.coupling.side)});
        add("kind", std::string{rig::wordOf(m_one.coupling.kind)});
        add("gap", yesNo(hasGap(m_one.coupling)));
        add("fitting", m_one.fitting ? std::to_string(m_one.fittingNumber) : std::string{});
        add("fitting_begins", m_one.fitting ? dayText(m_one.fitting->begins) : std::string{});
    }

    void addBand(const std::string& name, const std::optional<Band>& band)
    {
        const auto edge = [&band](double value) { return band ? decimal(value, 4) : std::string{}; };
        const Band shown = band.value_or(Band{});
        add(name + "_inner_lower_mm", edge(shown.inner.lower));
        add(name + "_inner_upper_mm", edge(shown.inner.upper));
        add(name + "_outer_lower_mm", edge(shown.outer.lower));
        add(name + "_outer_upper_mm", edge(shown.outer.upper));
        add(name + "_scatter_mm", edge(shown.scatter));
        add(name + "_readings", band ? std::to_string(shown.readings) : std::string{});
    }

    void addBands()
    {
        const bool isMeasured = hasGap(m_one.coupling); // without a gap a zero would read like a lack
        add("baseline_readings", isMeasured ? std::to_string(m_one.baselineReadings) : std::string{});
        add("frozen", isMeasured ? yesNo(m_one.isFrozen) : std::string{});
        addBand("band", m_one.band);
        addBand("band_with_doubted", m_one.bandWithDoubted);
        addBand("first_band", m_one.firstBand);
        add("witness", isMeasured ? std::string{rig::wordOf(m_one.witness.witness)} : std::string{});
        add("witness_miss", m_one.witness.miss ? significant(*m_one.witness.miss, 3) : std::string{});
        add("part_seated_readings", isMeasured ? std::to_string(m_one.partSeated.size()) : std::string{});
    }

    void addReadings()
    {
        const CouplingStanding& standing = m_one.standing;
        add("standing", std::string{wordOf(standing.says)});
        const auto* said = standing.reading ? &*standing.reading : nullptr;
        add("standing_date", said ? dayText(said->when.localDay()) : std::string{});
        add("standing_enters_mm", said ? millimetres(said->interval.enters) : std::string{});
        add("standing_refuses_mm", said ? millimetresOrNothing(said->interval.refuses) : std::string{});
        add("standing_verdict",
            standing.judgement ? std::string{rig::wordOf(standing.judgement->verdict)} : std::string{});
        addCounts();
        add("open_questions", static_cast<int>(m_one.openQuestions.size()));
        add("outside_stories", static_cast<int>(m_one.outside.size()));
    }

    // What was read of one that has no gap any more is told; where nothing was, nothing is missing either.
    void addCounts()
    {
        const VerdictCounts& counts = m_one.counts;
        const bool isTold = hasGap(m_one.coupling) || counts.all() > 0;
        const auto tell = [this, isTold](const char* name, int value) {
            add(name, isTold ? std::to_string(value) : std::string{});
        };
        tell("readings", counts.all());
        tell("inside", counts.inside);
        tell("near_edge", counts.nearEdge);
        tell("outside", counts.outside);
        tell("cannot_tell", counts.cannotTell);
        tell("no_band", counts.noBand);
        tell("in_doubt", m_one.inDoubt);
        tell("riggings_missed", m_one.riggingsMissed);
    }

    // The figures of one change; nothing of a path that is told to be steady, or not known.
    void addMovement()
    {
        const FittingMovement* moved = m_one.movement && m_one.movement->path ? &*m_one.movement : nullptr;
        const PathChangeTold* change = moved ? latestOf(*moved) : nullptr;
        const auto tell = [this, change](const char* name, auto PathChangeTold::*figure) {
            add(name, change ? decimal(change->*figure, 2) : std::string{});
        };
        add("movement_kind",
            change ? std::string{wordOf(change->kind)} : textIf(moved, [](const auto&) { return "steady"; }));
        add("movement_chance", change ? significant(change->chance, 3) : textIf(moved, [](const auto& one) {
                return significant(one.path->first.moved(), 3);
            }));
        tell("movement_at_rigging", &PathChangeTold::at);
        tell("movement_at_lower", &PathChangeTold::atLower);
        tell("movement_at_upper", &PathChangeTold::atUpper);
        addEstimate("step_mm", "step_lower_mm", "step_upper_mm",
                    change && change->step ? &*change->step : nullptr);
        addEstimate("drift_mm_per_100", "drift_lower_mm", "drift_upper_mm",
                    change && change->rate ? &*change->rate : nullptr);
        addFlag();
        const bool isKnown = moved && moved->excursion;
        add("largest_excursion_mm", isKnown ? decimal(*moved->excursion, 4) : std::string{});
        addForecast(moved && moved->forecast ? &*moved->forecast : nullptr);
    }

    void addEstimate(const char* name, const char* lower, const char* upper,
                     const numbers::EstimateWithInterval* estimate)
    {
        using One = numbers::EstimateWithInterval;
        add(name, textIf(estimate, [](const One& one) { return decimal(one.estimate, 4); }));
        add(lower, textIf(estimate, [](const One& one) { return decimal(one.interval.lower, 4); }));
        add(upper, textIf(estimate, [](const One& one) { return decimal(one.interval.upper, 4); }));
    }

    void addFlag()
    {
        const auto* moved = m_one.movement ? &*m_one.movement : nullptr;
        const DriftFlag* flag = moved && moved->flag ? &*moved->flag : nullptr;
        add("movement_flag_rigging", textIf(flag, [moved](const DriftFlag& one) {
                return decimal(moved->readings[one.signal].rigging, 2);
            }));
    }

    void addForecast(const AnnualForecast* forecast)
    {
        using One = AnnualForecast;
        add("annual", textIf(forecast, [](const One& one) { return dayText(one.day); }));
        add("riggings_to_come", textIf(forecast, [](const One& one) { return decimal(one.riggings, 1); }));
        add("chance_reading_outside",
            textIf(forecast, [](const One& one) { return significant(one.chanceOutside, 3); }));
        add("chance_mean_outside",
            textIf(forecast, [](const One& one) { return significant(one.chanceMeanOutside, 3); }));
    }

    void addScatter()
    {
        using One = ScatterNow;
        const One* scatter = m_one.movement && m_one.movement->scatter ? &*m_one.movement->scatter : nullptr;
        add("scatter_now_mm", textIf(scatter, [](const One& one) { return decimal(one.now, 4); }));
        add("scatter_before_mm", textIf(scatter, [](const One& one) { return decimal(one.before, 4); }));
        add("scatter_chance_larger",
            textIf(scatter, [](const One& one) { return significant(one.chanceGrown, 3); }));
    }

    const CouplingReview& m_one;
    Fields m_names;
    Fields m_values;
};

template <typename Who>
void appendMeasurers(std::string& table, const std::string& kind, const std::vector<MeasuredBy<Who>>& rows,
                     const std::function<std::string(Who)>& nameOf)
{
    for (const MeasuredBy<Who>& row : rows) {
        Fields fields{kind, nameOf(row.who), std::to_string(row.readings)};
        if (row.offset)
            append(fields, {decimal(row.offset->estimate, 4), decimal(row.offset->lower, 4),
                            decimal(row.offset->upper, 4)});
        else
            append(fields, Fields(3));
        fields.push_back(row.spread ? decimal(*row.spread, 4) : std::string{});
        table += csvLine(fields);
    }
}

} // namespace

std::string reviewCouplingsTable(const AirframeReview& review)
{
    std::string table = csvLine(Figures{CouplingReview{}}.names());
    for (const CouplingReview& one : review.couplings)
        table += csvLine(Figures{one}.values());
    return table;
}

std::string reviewMeasurersTable(const AirframeFacts& facts, const AirframeReview& review)
{
    std::string table =
        csvLine({"kind", "name", "readings", "offset_mm", "offset_lower_mm", "offset_upper_mm", "spread_mm"});
    appendMeasurers<PersonId>(table, "person", review.measurers.persons,
                              [&facts](PersonId id) { return facts.nameOf(id); });
    appendMeasurers<GaugeId>(table, "gauge", review.measurers.gauges, [&facts](GaugeId id) {
        const Gauge* gauge = facts.gauge(id);
        return gauge ? gauge->name : std::string{};
    });
    return table;
}

std::string reviewShiftsTable(const AirframeFacts& facts, const AirframeReview& review)
{
    std::string table = csvLine({"date", "rigging", "couplings", "median_score", "median_mm", "z", "p",
                                 "same_sign_share", "called", "explained_by", "gauges", "persons"});
    for (const DayShift& day : review.shifts) {
        std::string gauges;
        for (const GaugeId id : day.gauges)
            if (const Gauge* gauge = facts.gauge(id))
                gauges += (gauges.empty() ? "" : "; ") + gauge->name;
        std::string persons;
        for (const PersonId id : day.persons)
            persons += (persons.empty() ? "" : "; ") + facts.nameOf(id);
        table += csvLine({dayText(day.when.localDay()), std::to_string(day.rigging),
                          std::to_string(day.shift.scores), decimal(day.shift.median, 3),
                          decimal(day.millimetres, 4), decimal(day.shift.z, 3), significant(day.shift.p, 3),
                          decimal(day.shift.sameSignShare, 3), yesNo(day.shift.isCalled), explainerOf(day),
                          gauges, persons});
    }
    return table;
}

std::string reviewPeriodTable(const AirframeReview& review)
{
    const RiggingCounts& counts = review.counts;
    std::string table = csvLine({"what", "value"});
    const std::vector<Fields> rows{
        {"registration", review.airframe.registration},
        {"type", review.airframe.type},
        {"serial", review.airframe.serial},
        {"jurisdiction", review.airframe.jurisdiction},
        {"manual_references", review.airframe.manualReferences},
        {"from", dayText(review.period.from)},
        {"to", dayText(review.period.to)},
        {"annual", dayOrNothing(review.period.annual)},
        {"method_version", std::to_string(kMethodVersion)},
        {"riggings", std::to_string(counts.riggings)},
        {"last_rigging", std::to_string(counts.lastNumber)},
        {"records_abandoned", std::to_string(counts.abandoned)},
        {"records_left_open", std::to_string(counts.leftOpen)},
        {"records_not_closed", std::to_string(counts.stillOpen)},
        {"rechecks", std::to_string(counts.rechecks)},
        {"records_from_paper", std::to_string(counts.fromPaper.size())},
        {"readings", std::to_string(counts.readings)},
        {"riggings_to_come", review.riggingsToCome ? decimal(*review.riggingsToCome, 1) : std::string{}}};
    for (const Fields& row : rows)
        table += csvLine(row);
    return table;
}

} // namespace rig
