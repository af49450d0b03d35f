#include "core/review/baseline_sheet.h"

#include "core/airframe/saved_before.h"
#include "core/baseline/unlike_others.h"
#include "core/rigging/counts_as.h"

#include <algorithm>
#include <set>

namespace rig {

namespace {

BaselineStage baselineStage(const FittingHistory* fitting)
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
        if (one.fitting == fitting && (!newest || savedBefore(*newest, one)))
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
    if (reading.second)
        row.second = facts.nameOf(*reading.second);
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

bool needsReadings(const BaselineCouplingRow& row)
{
    return row.stage == BaselineStage::NoBand || row.stage == BaselineStage::Thin;
}

// Nobody and nothing is guessed.
void chooseWhereToBegin(BaselineDayView& view)
{
    const auto needs = std::ranges::find_if(view.couplings, needsReadings);
    if (needs != view.couplings.end())
        view.firstCoupling = needs->id;
    else if (!view.couplings.empty())
        view.firstCoupling = view.couplings.front().id;
    if (view.gauges.size() == 1)
        view.onlyGauge = view.gauges.front().gauge.id;
}

// What both sheets say of a coupling; without a fitting that holds they have none.
void describe(ReadingSheet& sheet, const Coupling& coupling, const CouplingHistory& history,
              const FittingHistory* fitting)
{
    sheet.coupling = coupling;
    sheet.partSeated = history.partSeated;
    if (!fitting)
        return;
    sheet.fitting = fitting->fitting;
    sheet.band = fitting->baseline.band();
}

} // namespace

BaselineDayView baselineDayOf(const KnownAirframe& known, Day today)
{
    const AirframeFacts& facts = known.facts();
    BaselineDayView view;
    view.airframe = facts.airframe;
    view.persons = facts.persons;
    for (const Gauge& gauge : facts.gaugesInUse())
        view.gauges.push_back({gauge, isQuarantined(gauge.id, today, facts.gaugeChecks)});
    for (const Coupling& coupling : facts.couplingsInUse()) {
        if (!hasGap(coupling)) {
            view.withoutGap.push_back(coupling.name);
            continue;
        }
        const CouplingHistory& history = known.history(coupling.id);
        const FittingHistory* fitting = history.on(today);
        view.couplings.push_back({coupling.id, coupling.name, baselineStage(fitting),
                                  fitting ? fitting->baseline.readings() : 0,
                                  static_cast<int>(history.partSeated.size())});
    }
    chooseWhereToBegin(view);
    return view;
}

BaselineSheet baselineSheetOf(const KnownAirframe& known, const Coupling& coupling, Day today)
{
    const AirframeFacts& facts = known.facts();
    const CouplingHistory& history = known.history(coupling.id);
    const FittingHistory* fitting = history.on(today);
    BaselineSheet sheet;
    describe(sheet, coupling, history, fitting);
    sheet.stage = baselineStage(fitting);
    sheet.obstacle = obstacleOf(fitting);
    if (!fitting)
        return sheet;
    sheet.frozen = frozenIn(facts, fitting->fitting.id);
    sheet.admitted = fitting->baseline.readings();
    sheet.doubted = history.doubtedVersionOf(*fitting);
    const std::vector<Reading> all = facts.readingsOf(coupling.id);
    for (const Reading& reading : all) {
        if (reading.fitting != fitting->fitting.id || !countsAs(reading.purpose).band)
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

DemonstrationSheet demonstrationSheetOf(const KnownAirframe& known, const Coupling& coupling,
                                        std::optional<GaugeId> gauge, Day today)
{
    const AirframeFacts& facts = known.facts();
    const CouplingHistory& history = known.history(coupling.id);
    const FittingHistory* fitting = history.on(today);
    DemonstrationSheet sheet;
    describe(sheet, coupling, history, fitting);
    sheet.riggedToday = std::ranges::any_of(facts.riggingRecords, [today](const RiggingRecord& record) {
        return record.origin == RecordOrigin::Rigging && record.begins.localDay() == today;
    });
    const std::vector<Reading> all = facts.readingsOf(coupling.id);
    for (const Reading& reading : all)
        if (reading.state == SeatState::PartSeated)
            sheet.readings.push_back(readingRow(reading, facts, all));
    const Gauge* used = gauge ? facts.gauge(*gauge) : nullptr;
    sheet.witness = findWitness(fitting ? fitting->baseline : Baseline{}, history.shownPartSeated(),
                                used ? used->set.steps() : std::vector<GaugeStep>{});
    return sheet;
}

} // namespace rig
