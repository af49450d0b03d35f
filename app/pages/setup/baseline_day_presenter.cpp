#include "app/pages/setup/baseline_day_presenter.h"

#include "app/pages/setup/things_kept.h"
#include "core/baseline/unlike_others.h"

#include <algorithm>
#include <set>

namespace rig {

namespace {

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

std::vector<GapInterval> admittedIntervals(const BaselineSheet& sheet)
{
    std::vector<GapInterval> intervals;
    for (const BaselineReadingRow& row : sheet.readings)
        if (row.admitted)
            intervals.push_back(row.reading.interval);
    return intervals;
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

// What was pressed, of the coupling and the fitting that the sheet shows.
Reading readingFrom(const ReadingSheet& sheet, PersonId person, GaugeId gauge, const GaugeReading& taken,
                    Moment now)
{
    Reading reading;
    reading.coupling = sheet.coupling.id;
    reading.fitting = sheet.fitting->id;
    reading.interval = taken.interval;
    reading.technique = taken.technique;
    reading.gauge = gauge;
    reading.person = person;
    reading.when = now;
    reading.stamp = {person, now};
    return reading;
}

void makeCorrection(Reading& reading, const ReadingSheet& sheet, ReadingId wrong, const std::string& note)
{
    reading.corrects = wrong;
    reading.note = note;
    for (const BaselineReadingRow& row : sheet.readings)
        if (row.reading.id == wrong)
            reading.person = row.reading.person; // who measured stays; who corrects it states it
}

template <typename IdType> Outcome doneWith(const Result<IdType>& added)
{
    return added ? Outcome{Done{}} : Outcome{added.problem()};
}

} // namespace

Result<BaselineDayView> BaselineDayPresenter::view(AirframeId airframe) const
{
    const auto known = m_desk.known(airframe);
    if (!known)
        return known.problem();
    const AirframeFacts& facts = known.value()->facts();
    const Day today = m_desk.today();
    BaselineDayView view;
    view.airframe = facts.airframe;
    view.persons = facts.persons;
    for (const Gauge& gauge : facts.gaugesInUse())
        view.gauges.push_back({gauge, isQuarantined(gauge.id, today, facts.gaugeChecks)});
    for (const Coupling& coupling : facts.couplingsInUse()) {
        const CouplingHistory& history = known.value()->history(coupling.id);
        const FittingHistory* fitting = history.on(today);
        view.couplings.push_back({coupling.id, coupling.name, stageOf(fitting),
                                  fitting ? fitting->baseline.readings() : 0,
                                  static_cast<int>(history.partSeated.size())});
    }
    chooseTheUsual(view, facts);
    return view;
}

// What both sheets say of a coupling; `fill` adds what is theirs. Without a fitting it gets none.
template <typename Sheet, typename Fill>
Result<Sheet> BaselineDayPresenter::sheetOf(AirframeId airframe, CouplingId coupling, Fill fill) const
{
    const auto known = m_desk.known(airframe);
    if (!known)
        return known.problem();
    const AirframeFacts& facts = known.value()->facts();
    const Coupling* found = findIn(facts.couplings, coupling);
    if (!found)
        return Problem{ProblemKind::NotFound, textOf(coupling.bytes)};
    const CouplingHistory& history = known.value()->history(coupling);
    const FittingHistory* fitting = history.on(m_desk.today());
    Sheet sheet;
    sheet.coupling = *found;
    sheet.partSeated = history.partSeated;
    if (fitting) {
        sheet.fitting = fitting->fitting;
        sheet.band = fitting->baseline.band();
    }
    fill(sheet, facts, history, fitting);
    return sheet;
}

Result<BaselineSheet> BaselineDayPresenter::sheet(AirframeId airframe, CouplingId coupling) const
{
    return sheetOf<BaselineSheet>(airframe, coupling,
                                  [coupling](BaselineSheet& sheet, const AirframeFacts& facts,
                                             const CouplingHistory& history, const FittingHistory* fitting) {
                                      sheet.stage = stageOf(fitting);
                                      sheet.obstacle = obstacleOf(fitting);
                                      if (!fitting)
                                          return;
                                      sheet.frozen = frozenIn(facts, fitting->fitting.id);
                                      sheet.admitted = fitting->baseline.readings();
                                      sheet.doubted = history.doubtedVersionOf(*fitting);
                                      const std::vector<Reading> all = facts.readingsOf(coupling);
                                      for (const Reading& reading : all) {
                                          if (reading.fitting != fitting->fitting.id ||
                                              reading.purpose != Purpose::Baseline)
                                              continue;
                                          BaselineReadingRow row = readingRow(reading, facts, all);
                                          row.admitted = fitting->admitted.contains(reading.id) &&
                                                         !fitting->inDoubt.contains(reading.id);
                                          sheet.readings.push_back(std::move(row));
                                      }
                                      countSpread(sheet);
                                      if (sheet.frozen)
                                          return;
                                      const std::vector<GapInterval> admitted = admittedIntervals(sheet);
                                      sheet.narrowing = narrowingOf(admitted);
                                      markUnlike(sheet, unlikeOthers(admitted));
                                  });
}

Result<DemonstrationSheet> BaselineDayPresenter::demonstration(AirframeId airframe, CouplingId coupling,
                                                               std::optional<GaugeId> gauge) const
{
    return sheetOf<DemonstrationSheet>(
        airframe, coupling,
        [&](DemonstrationSheet& sheet, const AirframeFacts& facts, const CouplingHistory&,
            const FittingHistory* fitting) {
            sheet.riggedToday =
                std::ranges::any_of(facts.riggingRecords, [this](const RiggingRecord& record) {
                    return record.origin == RecordOrigin::Rigging &&
                           record.begins.localDay() == m_desk.today();
                });
            const std::vector<Reading> all = facts.readingsOf(coupling);
            for (const Reading& reading : all)
                if (reading.state == SeatState::PartSeated)
                    sheet.readings.push_back(readingRow(reading, facts, all));
            const Gauge* used = gauge ? facts.gauge(*gauge) : nullptr;
            if (fitting)
                sheet.witness = findWitness(fitting->baseline, sheet.partSeated,
                                            used ? used->set.steps() : std::vector<GaugeStep>{});
        });
}

Result<ReadingId> BaselineDayPresenter::keep(const BaselineSheet& sheet, PersonId person, GaugeId gauge,
                                             const GaugeReading& taken,
                                             const std::optional<Correction>& correction)
{
    Reading reading = readingFrom(sheet, person, gauge, taken, m_desk.now());
    reading.purpose = Purpose::Baseline;
    if (correction)
        makeCorrection(reading, sheet, correction->of, correction->reason);
    return m_desk.records().add(reading, std::nullopt);
}

Result<ReadingId> BaselineDayPresenter::keep(const DemonstrationSheet& sheet, PersonId person, GaugeId gauge,
                                             const GaugeReading& taken, const std::string& note,
                                             std::optional<ReadingId> corrects)
{
    Reading reading = readingFrom(sheet, person, gauge, taken, m_desk.now());
    reading.state = SeatState::PartSeated;
    reading.purpose = Purpose::Demonstration;
    reading.note = note;
    if (corrects)
        makeCorrection(reading, sheet, *corrects, note);
    return m_desk.records().add(reading, std::nullopt);
}

Outcome BaselineDayPresenter::exclude(ReadingId reading, PersonId by, const std::string& reason)
{
    Exclusion exclusion;
    exclusion.reading = reading;
    exclusion.reason = reason;
    exclusion.stamp = {by, m_desk.now()};
    return doneWith(m_desk.records().add(exclusion));
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
    baseline.stamp = {first, m_desk.now()};
    return doneWith(m_desk.records().add(baseline));
}

} // namespace rig
