#include "app/pages/setup/entry_reader.h"
#include "app/pages/setup/part_presenters.h"
#include "app/pages/setup/things_kept.h"
#include "app/widgets/step_line.h"
#include "app/wording/coupling_words.h"
#include "app/wording/formats.h"
#include "app/wording/plan_field_words.h"

#include <cmath>

namespace rig {

namespace {

struct Spot
{
    PlanSpot spot;
    PlanPlace place;
    QString (*name)();
};

// Rough places on the plan view (x -1 left wing tip to +1 right, y 0 nose to 1 tail); only a drawing.
constexpr std::array kSpots{
    Spot{PlanSpot::WingRootLeft, {-0.08, 0.36}, CouplingWords::wingRootLeft},
    Spot{PlanSpot::WingRootRight, {0.08, 0.36}, CouplingWords::wingRootRight},
    Spot{PlanSpot::OuterWingLeft, {-0.55, 0.34}, CouplingWords::outerWingLeft},
    Spot{PlanSpot::OuterWingRight, {0.55, 0.34}, CouplingWords::outerWingRight},
    Spot{PlanSpot::Fuselage, {0.0, 0.42}, CouplingWords::fuselage},
    Spot{PlanSpot::TailBoom, {0.0, 0.70}, CouplingWords::tailBoom},
    Spot{PlanSpot::FinFoot, {0.0, 0.90}, CouplingWords::finFoot},
    Spot{PlanSpot::FinTop, {0.0, 0.97}, CouplingWords::finTop},
};

double farApart(const PlanPlace& one, const PlanPlace& other)
{
    return std::hypot(one.x - other.x, one.y - other.y);
}

struct UsualJoint
{
    QString (*name)();
    Circuit circuit;
    Side side;
    PlanPlace place; // a little apart, so that the marks on the plan do not cover one another
};

// In the order of UsualCoupling.
constexpr std::array<UsualJoint, kUsualCouplings.size()> kUsualJoints{{
    {CouplingWords::leftAileron, Circuit::Aileron, Side::Left, {-0.10, 0.40}},
    {CouplingWords::rightAileron, Circuit::Aileron, Side::Right, {0.10, 0.40}},
    {CouplingWords::leftAirbrake, Circuit::Airbrake, Side::Left, {-0.10, 0.36}},
    {CouplingWords::rightAirbrake, Circuit::Airbrake, Side::Right, {0.10, 0.36}},
    {CouplingWords::leftFlap, Circuit::Flap, Side::Left, {-0.06, 0.40}},
    {CouplingWords::rightFlap, Circuit::Flap, Side::Right, {0.06, 0.40}},
    {CouplingWords::elevator, Circuit::Elevator, Side::None, {0.0, 0.96}},
    {CouplingWords::trim, Circuit::Trim, Side::None, {0.03, 0.98}},
}};

const UsualJoint& usualJoint(UsualCoupling which)
{
    return kUsualJoints[static_cast<std::size_t>(which)];
}

CouplingRow couplingRow(const KnownAirframe& known, const Coupling& coupling, Day today)
{
    const AirframeFacts& facts = known.facts();
    CouplingRow row;
    row.coupling = coupling;
    row.fittings = static_cast<int>(std::ranges::count(facts.fittings, coupling.id, &Fitting::coupling));
    row.fitting = fittingOn(today, coupling.id, facts.fittings);
    const CouplingHistory& history = known.history(coupling.id);
    const FittingHistory* now = history.on(today);
    row.hasBand = now && now->baseline.band();
    row.wasShownPartSeated = !history.partSeated.empty();
    return row;
}

constexpr int kWholePlan = 100; // per cent

void readPlan(EntryReader& reader, const CouplingEntry& entry)
{
    const bool saysAcross = !entry.planAcross.trimmed().isEmpty();
    const bool saysAlong = !entry.planAlong.trimmed().isEmpty();
    if (saysAcross && !wholeNumberIn(entry.planAcross, -kWholePlan, kWholePlan))
        reader.refuse(Field::PlanAcross, PlanFieldWords::notAcross());
    else if (!saysAcross && saysAlong)
        reader.refuse(Field::PlanAcross, PlanFieldWords::bothOrNeither());
    if (saysAlong && !wholeNumberIn(entry.planAlong, 0, kWholePlan))
        reader.refuse(Field::PlanAlong, PlanFieldWords::notAlong());
    else if (saysAcross && !saysAlong)
        reader.refuse(Field::PlanAlong, PlanFieldWords::bothOrNeither());
}

// A place finer than what was typed or chosen stays as it is while neither changes; numbers say more than a
// choice.
std::optional<PlanPlace> planPlaceIn(const CouplingEntry& entry, const std::optional<PlanPlace>& before)
{
    const PlanText was = planText(before);
    const auto across = wholeNumberIn(entry.planAcross, -kWholePlan, kWholePlan);
    const auto along = wholeNumberIn(entry.planAlong, 0, kWholePlan);
    if (across && along && (entry.planAcross != was.across || entry.planAlong != was.along))
        return PlanPlace{static_cast<double>(*across) / kWholePlan, static_cast<double>(*along) / kWholePlan};
    if (entry.spot == PlanSpot::NotGiven)
        return std::nullopt;
    return spotOf(before) == entry.spot ? before : placeOf(entry.spot);
}

} // namespace

PlanText planText(const std::optional<PlanPlace>& place)
{
    if (!place)
        return {};
    return {QString::number(std::lround(place->x * kWholePlan)),
            QString::number(std::lround(place->y * kWholePlan))};
}

PlanPlace placeOf(PlanSpot spot)
{
    const auto found = std::ranges::find(kSpots, spot, &Spot::spot);
    return found == kSpots.end() ? PlanPlace{} : found->place;
}

QString spotName(PlanSpot spot)
{
    const auto found = std::ranges::find(kSpots, spot, &Spot::spot);
    return found == kSpots.end() ? CouplingWords::placeNotGiven() : found->name();
}

PlanSpot spotOf(const std::optional<PlanPlace>& place)
{
    if (!place)
        return PlanSpot::NotGiven;
    return std::ranges::min_element(kSpots, {},
                                    [&place](const Spot& one) { return farApart(one.place, *place); })
        ->spot;
}

QString usualName(UsualCoupling which)
{
    return usualJoint(which).name();
}

CouplingEntry entryOf(const Coupling& coupling)
{
    CouplingEntry entry{shown(coupling.name),   CouplingWords::circuitOf(coupling),
                        coupling.side,          shown(coupling.access),
                        coupling.layout,        shown(coupling.leafPlace),
                        coupling.kind,          {},
                        spotOf(coupling.place), shown(coupling.note)};
    const PlanText place = planText(coupling.place);
    entry.planAcross = place.across;
    entry.planAlong = place.along;
    entry.seenFrom = coupling.seenFrom;
    entry.mirrorFrom = coupling.mirrorFrom;
    if (!isBallJoint(coupling.kind)) // of a ball joint nobody was asked
        entry.parts = partsOf(coupling);
    return entry;
}

std::vector<CouplingRow> CouplingsPresenter::view(const KnownAirframe& known) const
{
    std::vector<CouplingRow> rows;
    for (const Coupling& coupling : known.facts().couplings)
        rows.push_back(couplingRow(known, coupling, desk().today()));
    std::ranges::stable_partition(rows, [](const CouplingRow& row) { return row.coupling.inUse; });
    return rows;
}

Result<CouplingId> CouplingsPresenter::addWithFirstFitting(const Coupling& coupling)
{
    auto added = records().add(coupling);
    if (!added)
        return added;
    const Fitting first{{}, added.value(), desk().today(), FittingKind::First, {}, desk().stamp()};
    if (const auto fitting = records().add(first); !fitting)
        return fitting.problem();
    return added;
}

Result<Saved> CouplingsPresenter::save(const CouplingEntry& entry, AirframeId airframe,
                                       std::optional<CouplingId> of)
{
    const auto known = records().couplings(airframe);
    if (!known)
        return known.problem();
    Coupling coupling;
    coupling.riggingOrder = nextInOrder(known.value(), &Coupling::riggingOrder);
    if (const Coupling* before = of ? findIn(known.value(), *of) : nullptr)
        coupling = *before;
    EntryReader reader;
    reader.name(Field::CouplingName, entry.name, known.value(), coupling.id, &Coupling::name,
                CouplingWords::nameMissing(), CouplingWords::nameTaken);
    readPlan(reader, entry);
    if (reader.hasProblem())
        return reader.refusal();
    coupling.airframe = airframe;
    coupling.name = plain(entry.name);
    CouplingWords::setCircuit(coupling, entry.circuit);
    coupling.side = entry.side;
    coupling.access = plain(entry.access);
    coupling.layout = entry.layout;
    coupling.leafPlace = plain(entry.leafPlace);
    coupling.kind = entry.kind;
    coupling.parts = partsOf(entry.kind, entry.parts);
    coupling.place = planPlaceIn(entry, coupling.place);
    coupling.seenFrom = entry.seenFrom;
    coupling.mirrorFrom = entry.mirrorFrom;
    coupling.note = plain(entry.note);
    coupling.stamp = desk().stamp();
    if (of)
        return savedAs(records().add(coupling));
    IdBytes id{};
    const Outcome kept = records().together([&]() -> Outcome {
        const auto added = addWithFirstFitting(coupling);
        if (!added)
            return added.problem();
        id = added.value().bytes;
        return Done{};
    });
    if (!kept)
        return kept.problem();
    return Saved{{}, id};
}

Result<Saved> CouplingsPresenter::save(const FittingEntry& entry, AirframeId airframe, CouplingId coupling)
{
    const auto known = records().fittings(airframe);
    if (!known)
        return known.problem();
    std::optional<Day> last;
    for (const Fitting& one : known.value())
        if (one.coupling == coupling && (!last || *last < one.begins))
            last = one.begins;
    EntryReader reader;
    const auto day = reader.pastDay(Field::FittingDay, entry.day, desk().today());
    if (day && last && *day < *last)
        reader.refuse(Field::FittingDay, CouplingWords::beforeLastFitting(Formats{}.day(*last)));
    reader.needs(Field::FittingReason, entry.reason, CouplingWords::reasonMissing());
    if (reader.hasProblem())
        return reader.refusal();
    return savedAs(
        records().add(Fitting{{}, coupling, *day, entry.kind, plain(entry.reason), desk().stamp()}));
}

Outcome CouplingsPresenter::addUsual(AirframeId airframe, const std::vector<UsualCoupling>& chosen)
{
    return records().together([&]() -> Outcome {
        const auto known = records().couplings(airframe);
        if (!known)
            return known.problem();
        int order = nextInOrder(known.value(), &Coupling::riggingOrder);
        for (const UsualCoupling which : chosen) {
            const UsualJoint& one = usualJoint(which);
            Coupling coupling;
            coupling.airframe = airframe;
            coupling.name = one.name().toStdString();
            coupling.circuit = one.circuit;
            coupling.side = one.side;
            coupling.place = one.place;
            coupling.riggingOrder = order++;
            coupling.stamp = desk().stamp();
            if (const auto added = addWithFirstFitting(coupling); !added)
                return added.problem();
        }
        return Done{};
    });
}

Outcome CouplingsPresenter::move(AirframeId airframe, CouplingId coupling, int by)
{
    return moveInOrder(
        records(), [&] { return records().couplings(airframe); }, coupling, by, &Coupling::riggingOrder,
        desk().stamp());
}

Outcome CouplingsPresenter::setInUse(AirframeId airframe, CouplingId coupling, bool inUse)
{
    return putInUse(
        records(), [&] { return records().couplings(airframe); }, coupling, inUse, desk().stamp(),
        &Coupling::riggingOrder);
}

} // namespace rig
