#include "app/pages/setup/baseline_day_presenter.h"

#include "core/baseline/unlike_others.h"
#include "core/store/airframe_facts.h"

#include <algorithm>
#include <set>

namespace rig {

namespace {

CouplingHistory historyIn(const AirframeFacts& facts, CouplingId coupling)
{
    return historyOf(coupling, facts.fittings, facts.readingsOf(coupling), facts.exclusions,
                     facts.frozenBaselines, facts.gauges, facts.gaugeChecks);
}

BaselineStage stageOf(const FittingHistory* fitting)
{
    if (!fitting)
        return BaselineStage::NoFitting;
    if (fitting->isFrozen)
        return BaselineStage::Frozen;
    const auto& band = fitting->baseline.band();
    if (!band)
        return BaselineStage::NoBand;
    return band->isThin() ? BaselineStage::Thin : BaselineStage::Enough;
}

FreezeObstacle obstacleOf(const FittingHistory* fitting)
{
    if (!fitting)
        return FreezeObstacle::TooFewReadings;
    if (fitting->isFrozen)
        return FreezeObstacle::AlreadyFrozen;
    if (fitting->baseline.readings() < kReadingsToFreeze)
        return FreezeObstacle::TooFewReadings;
    const auto& band = fitting->baseline.band();
    if (!band || band->readings < kReadingsToFreeze)
        return FreezeObstacle::NoBand;
    return band->scatterAtCap ? FreezeObstacle::ScatterAtCap : FreezeObstacle::None;
}

std::optional<FrozenBy> frozenIn(const AirframeFacts& facts, FittingId fitting)
{
    const FrozenBaseline* newest = nullptr;
    for (const FrozenBaseline& one : facts.frozenBaselines)
        if (one.fitting == fitting && (!newest || newest->id < one.id))
            newest = &one;
    if (!newest)
        return std::nullopt;
    return FrozenBy{facts.nameOf(newest->first), facts.nameOf(newest->second), newest->stamp.when};
}

BaselineReadingRow readingRow(const Reading& reading, const AirframeFacts& facts,
                              std::span<const Reading> all)
{
    BaselineReadingRow row;
    row.reading = reading;
    row.person = facts.nameOf(reading.person);
    if (reading.gauge)
        if (const Gauge* gauge = facts.gauge(*reading.gauge))
            row.gauge = gauge->name;
    if (reading.gauge)
        if (const GaugeCheck* bad = doubtOn(*reading.gauge, reading.when.localDay(), facts.gaugeChecks))
            row.inDoubtFrom = bad->quarantineFrom;
    for (const Reading& other : all)
        if (other.corrects == reading.id)
            row.correctedBy = other.note;
    for (const Exclusion& exclusion : facts.exclusions) {
        if (exclusion.reading != reading.id)
            continue;
        row.excluded = exclusion.reason;
        if (exclusion.stamp.by)
            row.excludedBy = facts.nameOf(*exclusion.stamp.by);
    }
    return row;
}

// Who took the readings that count, with what, when: a baseline by one person on one day says less.
void countSpread(BaselineSheet& sheet)
{
    std::set<PersonId> people;
    std::set<GaugeId> gauges;
    std::set<Day> days;
    for (const BaselineReadingRow& row : sheet.readings) {
        if (!row.admitted)
            continue;
        people.insert(row.reading.person);
        days.insert(row.reading.when.localDay());
        if (row.reading.gauge)
            gauges.insert(*row.reading.gauge);
    }
    sheet.people = static_cast<int>(people.size());
    sheet.gauges = static_cast<int>(gauges.size());
    sheet.days = static_cast<int>(days.size());
}

Result<Coupling> couplingIn(const AirframeFacts& facts, CouplingId coupling)
{
    const auto found = std::ranges::find(facts.couplings, coupling, &Coupling::id);
    if (found == facts.couplings.end())
        return Problem{ProblemKind::NotFound, textOf(coupling.bytes)};
    return *found;
}

std::vector<GapInterval> admittedIntervals(const BaselineSheet& sheet)
{
    std::vector<GapInterval> intervals;
    for (const BaselineReadingRow& row : sheet.readings)
        if (row.admitted)
            intervals.push_back(row.reading.interval);
    return intervals;
}

// The wrong figure is another's: who measured, and with what, stays.
void takeFromWrong(Reading& reading, const std::vector<BaselineReadingRow>& rows)
{
    for (const BaselineReadingRow& row : rows)
        if (row.reading.id == reading.corrects) {
            reading.person = row.reading.person;
            reading.gauge = row.reading.gauge ? row.reading.gauge : reading.gauge;
        }
}

void markUnlike(BaselineSheet& sheet, const std::set<GapInterval>& unlike)
{
    for (BaselineReadingRow& row : sheet.readings)
        row.unlike = row.admitted && unlike.contains(row.reading.interval);
    // One stranger alone can make the scatter wild; it is what to look at first.
    const bool atLast =
        sheet.obstacle == FreezeObstacle::None || sheet.obstacle == FreezeObstacle::ScatterAtCap;
    if (!unlike.empty() && atLast)
        sheet.obstacle = FreezeObstacle::Outlier;
}

const Reading* lastBaselineReading(const AirframeFacts& facts)
{
    const Reading* last = nullptr;
    for (const KeptReading& kept : facts.readings)
        if (kept.reading.purpose == Purpose::Baseline && (!last || last->when <= kept.reading.when))
            last = &kept.reading;
    return last;
}

bool needsReadings(const BaselineCouplingRow& row)
{
    return row.stage == BaselineStage::NoBand || row.stage == BaselineStage::Thin;
}

// Nobody and nothing is guessed: it is what was used last, or there is no other.
void chooseTheUsual(BaselineDayView& view, const AirframeFacts& facts)
{
    const auto needs = std::ranges::find_if(view.couplings, needsReadings);
    if (needs != view.couplings.end())
        view.firstCoupling = needs->id;
    else if (!view.couplings.empty())
        view.firstCoupling = view.couplings.front().id;
    if (view.persons.size() == 1)
        view.usualPerson = view.persons.front().id;
    if (view.gauges.size() == 1)
        view.usualGauge = view.gauges.front().gauge.id;
    const Reading* last = lastBaselineReading(facts);
    if (!last)
        return;
    view.usualPerson = last->person;
    const auto isLast = [last](const BaselineGaugeRow& row) { return row.gauge.id == last->gauge; };
    if (std::ranges::any_of(view.gauges, isLast))
        view.usualGauge = last->gauge;
}

} // namespace

Result<BaselineDayView> BaselineDayPresenter::view(AirframeId airframe) const
{
    const auto known = factsOf(m_records, airframe);
    if (!known)
        return known.problem();
    const AirframeFacts& facts = known.value();
    const Day today = m_clock.now().localDay();
    BaselineDayView view;
    view.airframe = facts.airframe;
    view.persons = facts.persons;
    for (const Gauge& gauge : facts.gaugesInUse())
        view.gauges.push_back({gauge, isQuarantined(gauge.id, today, facts.gaugeChecks)});
    for (const Coupling& coupling : facts.couplingsInUse()) {
        const CouplingHistory history = historyIn(facts, coupling.id);
        const FittingHistory* fitting = history.on(today);
        view.couplings.push_back({coupling.id, coupling.name, stageOf(fitting),
                                  fitting ? fitting->baseline.readings() : 0,
                                  static_cast<int>(history.partSeated.size())});
    }
    chooseTheUsual(view, facts);
    return view;
}

Result<BaselineSheet> BaselineDayPresenter::sheet(AirframeId airframe, CouplingId coupling) const
{
    const auto known = factsOf(m_records, airframe);
    if (!known)
        return known.problem();
    const AirframeFacts& facts = known.value();
    auto found = couplingIn(facts, coupling);
    if (!found)
        return found.problem();
    BaselineSheet sheet;
    sheet.coupling = std::move(found).value();
    const CouplingHistory history = historyIn(facts, coupling);
    sheet.partSeated = history.partSeated;
    const FittingHistory* fitting = history.on(m_clock.now().localDay());
    sheet.stage = stageOf(fitting);
    sheet.obstacle = obstacleOf(fitting);
    if (!fitting)
        return sheet;

    sheet.fitting = fitting->fitting;
    sheet.band = fitting->baseline.band();
    sheet.frozen = frozenIn(facts, fitting->fitting.id);
    sheet.admitted = fitting->baseline.readings();
    sheet.doubted = history.doubtedVersionOf(*fitting);
    const std::vector<Reading> all = facts.readingsOf(coupling);
    for (const Reading& reading : all) {
        if (reading.fitting != fitting->fitting.id || reading.purpose != Purpose::Baseline)
            continue;
        BaselineReadingRow row = readingRow(reading, facts, all);
        row.admitted = fitting->admitted.contains(reading.id) && !fitting->inDoubt.contains(reading.id);
        sheet.readings.push_back(std::move(row));
    }
    countSpread(sheet);
    if (sheet.frozen)
        return sheet;
    const std::vector<GapInterval> admitted = admittedIntervals(sheet);
    sheet.narrowing = narrowingOf(admitted);
    markUnlike(sheet, unlikeOthers(admitted));
    return sheet;
}

Result<DemonstrationSheet> BaselineDayPresenter::demonstration(AirframeId airframe, CouplingId coupling,
                                                               std::optional<GaugeId> gauge) const
{
    const auto known = factsOf(m_records, airframe);
    if (!known)
        return known.problem();
    const AirframeFacts& facts = known.value();
    auto found = couplingIn(facts, coupling);
    if (!found)
        return found.problem();
    DemonstrationSheet sheet;
    sheet.coupling = std::move(found).value();
    const Day today = m_clock.now().localDay();
    sheet.riggedToday = std::ranges::any_of(facts.riggingRecords, [today](const RiggingRecord& record) {
        return record.origin == RecordOrigin::Rigging && record.begins.localDay() == today;
    });
    const std::vector<Reading> all = facts.readingsOf(coupling);
    for (const Reading& reading : all)
        if (reading.state == SeatState::PartSeated)
            sheet.readings.push_back(readingRow(reading, facts, all));
    const CouplingHistory history = historyIn(facts, coupling);
    sheet.partSeated = history.partSeated;
    const FittingHistory* fitting = history.on(today);
    if (!fitting)
        return sheet;
    sheet.fitting = fitting->fitting;
    sheet.band = fitting->baseline.band();
    const Gauge* used = gauge ? facts.gauge(*gauge) : nullptr;
    sheet.witness =
        findWitness(fitting->baseline, sheet.partSeated, used ? used->set.steps() : std::vector<GaugeStep>{});
    return sheet;
}

Result<ReadingId> BaselineDayPresenter::keep(const BaselineSheet& sheet, PersonId person, GaugeId gauge,
                                             const GaugeReading& taken,
                                             const std::optional<Correction>& correction)
{
    Reading reading;
    reading.coupling = sheet.coupling.id;
    reading.fitting = sheet.fitting->id;
    reading.interval = taken.interval;
    reading.technique = taken.technique;
    reading.gauge = gauge;
    reading.purpose = Purpose::Baseline;
    reading.person = person;
    reading.when = m_clock.now();
    reading.stamp = {person, reading.when};
    if (correction) {
        reading.corrects = correction->of;
        reading.note = correction->reason;
        takeFromWrong(reading, sheet.readings);
    }
    return m_records.add(reading, std::nullopt);
}

Outcome BaselineDayPresenter::exclude(ReadingId reading, PersonId by, const std::string& reason)
{
    Exclusion exclusion;
    exclusion.reading = reading;
    exclusion.reason = reason;
    exclusion.stamp = {by, m_clock.now()};
    const auto added = m_records.add(exclusion);
    if (!added)
        return added.problem();
    return Done{};
}

Outcome BaselineDayPresenter::freeze(const BaselineSheet& sheet, PersonId first, PersonId second)
{
    FrozenBaseline baseline;
    baseline.fitting = sheet.fitting->id;
    for (const BaselineReadingRow& row : sheet.readings)
        if (row.admitted)
            baseline.readings.push_back(row.reading.id);
    baseline.first = first;
    baseline.second = second;
    baseline.stamp = {first, m_clock.now()};
    const auto added = m_records.add(baseline);
    if (!added)
        return added.problem();
    return Done{};
}

Result<ReadingId> BaselineDayPresenter::keep(const DemonstrationSheet& sheet, PersonId person, GaugeId gauge,
                                             const GaugeReading& taken, const std::string& note,
                                             std::optional<ReadingId> corrects)
{
    Reading reading;
    reading.coupling = sheet.coupling.id;
    reading.fitting = sheet.fitting->id;
    reading.interval = taken.interval;
    reading.technique = taken.technique;
    reading.gauge = gauge;
    reading.state = SeatState::PartSeated;
    reading.purpose = Purpose::Demonstration;
    reading.person = person;
    reading.when = m_clock.now();
    reading.note = note;
    reading.corrects = corrects;
    reading.stamp = {person, reading.when};
    takeFromWrong(reading, sheet.readings);
    return m_records.add(reading, std::nullopt);
}

} // namespace rig
