#include "core/views/paper_sheet.h"

#include <algorithm>
#include <cstdint>
#include <ranges>

namespace rig {

namespace {

// Of the ten places, not the first two and not the last two: the gap has room to be another on both sides.
constexpr std::size_t kOuterPlaces = 2;

// FNV-1a, 64 bit: even over the few places, and the same on every computer.
std::uint64_t hashOf(const IdBytes& bytes)
{
    std::uint64_t hash = 14695981039346656037U;
    for (const std::uint8_t byte : bytes)
        hash = (hash ^ byte) * 1099511628211U;
    return hash ^ (hash >> 32);
}

// Where the coupling is known to read: by its band or, before there is one, by what was read last.
std::optional<double> whereItReads(const KnownAirframe& known, CouplingId coupling, Day today)
{
    if (const FittingHistory* fitting = known.history(coupling).on(today))
        if (const auto& band = fitting->baseline.band())
            return band->median;
    const auto last = known.lastLocked(coupling, 1, std::nullopt);
    if (last.empty())
        return std::nullopt;
    return last.front()->reading.interval.enters.inMillimetres();
}

} // namespace

std::vector<GaugeStep> sheetLeaves(const GaugeSet& set, double mm, CouplingId coupling)
{
    const std::vector<GaugeStep> steps = set.steps();
    const auto enters = static_cast<std::size_t>(std::ranges::count_if(
        steps, [mm](const GaugeStep& step) { return step.size.inMillimetres() <= mm; }));
    const std::size_t count = std::min(kSheetLeaves, steps.size());
    const std::size_t place = kOuterPlaces + hashOf(coupling.bytes) % (kSheetLeaves - 2 * kOuterPlaces);
    const std::size_t at = enters > 0 ? enters - 1 : 0;
    const std::size_t from = std::min(at > place ? at - place : 0, steps.size() - count);
    return {steps.begin() + static_cast<std::ptrdiff_t>(from),
            steps.begin() + static_cast<std::ptrdiff_t>(from + count)};
}

std::optional<GaugeId> gaugeUsedLast(const AirframeFacts& facts)
{
    const std::vector<Gauge> inUse = facts.gaugesInUse();
    for (const KeptReading& kept : facts.readings | std::views::reverse)
        if (kept.reading.gauge && std::ranges::find(inUse, *kept.reading.gauge, &Gauge::id) != inUse.end())
            return kept.reading.gauge;
    if (inUse.size() == 1)
        return inUse.front().id;
    return std::nullopt;
}

PaperSheet paperSheetOf(const KnownAirframe& known, std::optional<GaugeId> gauge, Day today,
                        const PersonStandings& people)
{
    const AirframeFacts& facts = known.facts();
    PaperSheet sheet;
    sheet.airframe = facts.airframe;
    sheet.surfaces = facts.surfacesInUse();
    for (const Person& person : facts.persons)
        if (const auto found = people.find(person.id); found != people.end())
            sheet.people.push_back({person.name, found->second});
    if (const Gauge* chosen = gauge ? facts.gauge(*gauge) : nullptr)
        sheet.gauge = *chosen;
    for (Coupling& coupling : facts.couplingsInUse()) {
        SheetCoupling one;
        const bool isOffered = hasGap(coupling) && sheet.gauge && !sheet.gauge->set.isEmpty() &&
                               sheet.gauge->set.kind() != GaugeKind::Taper;
        const auto reads = isOffered ? whereItReads(known, coupling.id, today) : std::nullopt;
        if (reads)
            one.leaves = sheetLeaves(sheet.gauge->set, *reads, coupling.id);
        one.coupling = std::move(coupling);
        sheet.couplings.push_back(std::move(one));
    }
    return sheet;
}

} // namespace rig
