#include "app/pages/setup/setup_presenter.h"

#include "app/pages/setup/in_order.h"
#include "app/wording/coupling_words.h"
#include "core/review/coupling_history.h"
#include "core/store/airframe_facts.h"

#include <algorithm>

namespace rig {

namespace {

CouplingRow rowOf(const AirframeFacts& facts, const Coupling& coupling, Day today)
{
    CouplingRow row;
    row.coupling = coupling;
    row.fittings = static_cast<int>(std::ranges::count(facts.fittings, coupling.id, &Fitting::coupling));
    row.fitting = fittingOn(today, coupling.id, facts.fittings);
    const CouplingHistory history =
        historyOf(coupling.id, facts.fittings, facts.readingsOf(coupling.id), facts.exclusions,
                  facts.frozenBaselines, facts.gauges, facts.gaugeChecks);
    const FittingHistory* now = history.on(today);
    row.hasBand = now && now->baseline.band();
    row.wasShownPartSeated = !history.partSeated.empty();
    return row;
}

std::vector<EventRow> eventRows(const AirframeFacts& facts)
{
    std::vector<EventRow> rows;
    for (const Event& event : facts.events) {
        EventRow row{event, {}};
        if (event.coupling)
            if (const auto known = std::ranges::find(facts.couplings, *event.coupling, &Coupling::id);
                known != facts.couplings.end())
                row.coupling = known->name;
        rows.push_back(std::move(row));
    }
    std::ranges::sort(rows, [](const EventRow& one, const EventRow& other) {
        return one.event.day != other.event.day ? one.event.day > other.event.day
                                                : other.event.id < one.event.id;
    });
    return rows;
}

// The first day of a doubt that no later check has ended; empty when there is none.
std::optional<Day> doubtedSince(const GaugeRow& row, Day today)
{
    std::vector<GaugeCheck> good;
    std::ranges::copy_if(row.checks, std::back_inserter(good),
                         [](const GaugeCheck& check) { return !check.quarantineFrom; });
    std::optional<Day> since;
    for (const GaugeCheck& bad : row.checks) {
        if (!bad.quarantineFrom || (since && *since <= *bad.quarantineFrom))
            continue;
        good.push_back(bad);
        if (isQuarantined(row.gauge.id, today, good))
            since = bad.quarantineFrom;
        good.pop_back();
    }
    return since;
}

std::vector<GaugeRow> gaugeRows(const std::vector<Gauge>& gauges, const std::vector<GaugeCheck>& checks,
                                Day today)
{
    std::vector<GaugeRow> rows;
    for (const Gauge& gauge : gauges) {
        GaugeRow row{gauge, {}, {}};
        std::ranges::copy_if(checks, std::back_inserter(row.checks),
                             [&gauge](const GaugeCheck& check) { return check.gauge == gauge.id; });
        std::ranges::sort(row.checks, [](const GaugeCheck& one, const GaugeCheck& other) {
            return one.day != other.day ? one.day > other.day : other.id < one.id;
        });
        row.doubtedSince = doubtedSince(row, today);
        rows.push_back(std::move(row));
    }
    std::ranges::stable_partition(rows, [](const GaugeRow& row) { return row.gauge.inUse; });
    return rows;
}

struct Usual
{
    QString name;
    QString circuit;
    Side side;
    PlanPlace place; // a little apart, so that the marks on the plan do not cover one another
};

Usual usual(UsualCoupling which)
{
    switch (which) {
    case UsualCoupling::LeftAileron:
        return {CouplingWords::leftAileron(), CouplingWords::circuitAileron(), Side::Left, {-0.10, 0.40}};
    case UsualCoupling::RightAileron:
        return {CouplingWords::rightAileron(), CouplingWords::circuitAileron(), Side::Right, {0.10, 0.40}};
    case UsualCoupling::LeftAirbrake:
        return {CouplingWords::leftAirbrake(), CouplingWords::circuitAirbrake(), Side::Left, {-0.10, 0.36}};
    case UsualCoupling::RightAirbrake:
        return {CouplingWords::rightAirbrake(), CouplingWords::circuitAirbrake(), Side::Right, {0.10, 0.36}};
    case UsualCoupling::LeftFlap:
        return {CouplingWords::leftFlap(), CouplingWords::circuitFlap(), Side::Left, {-0.06, 0.40}};
    case UsualCoupling::RightFlap:
        return {CouplingWords::rightFlap(), CouplingWords::circuitFlap(), Side::Right, {0.06, 0.40}};
    case UsualCoupling::Elevator:
        return {CouplingWords::elevator(), CouplingWords::circuitElevator(), Side::None, {0.0, 0.96}};
    case UsualCoupling::Trim:
        break;
    }
    return {CouplingWords::trim(), CouplingWords::circuitTrim(), Side::None, {0.03, 0.98}};
}

} // namespace

QString usualName(UsualCoupling which)
{
    return usual(which).name;
}

Result<SetUpView> SetUpPresenter::view(std::optional<AirframeId> airframe) const
{
    SetUpView view;
    view.today = today();
    Problem problem;
    std::vector<Gauge> gauges;
    std::vector<GaugeCheck> checks;
    if (!take(m_records.persons(), view.persons, problem) || !take(m_records.gauges(), gauges, problem) ||
        !take(m_records.gaugeChecks(), checks, problem))
        return problem;
    view.gauges = gaugeRows(gauges, checks, view.today);
    if (!airframe)
        return view;
    const auto known = factsOf(m_records, *airframe);
    if (!known)
        return known.problem();
    const AirframeFacts& facts = known.value();
    view.airframe = facts.airframe;
    for (const Coupling& coupling : facts.couplings)
        view.couplings.push_back(rowOf(facts, coupling, view.today));
    std::ranges::stable_partition(view.couplings, [](const CouplingRow& row) { return row.coupling.inUse; });
    view.surfaces = facts.surfaces;
    std::ranges::stable_partition(view.surfaces, &Surface::inUse);
    view.events = eventRows(facts);
    return view;
}

Result<CouplingId> SetUpPresenter::addWithFirstFitting(const Coupling& coupling)
{
    auto added = m_records.add(coupling);
    if (!added)
        return added;
    const Fitting first{{}, added.value(), today(), CouplingWords::firstFitting().toStdString(), stamp()};
    if (const auto fitting = m_records.add(first); !fitting)
        return fitting.problem();
    return added;
}

Outcome SetUpPresenter::addUsual(AirframeId airframe, const std::vector<UsualCoupling>& chosen)
{
    return m_records.together([&]() -> Outcome {
        const auto known = m_records.couplings(airframe);
        if (!known)
            return known.problem();
        int order = nextInOrder(known.value(), &Coupling::riggingOrder);
        for (const UsualCoupling which : chosen) {
            const Usual one = usual(which);
            Coupling coupling;
            coupling.airframe = airframe;
            coupling.name = one.name.toStdString();
            coupling.circuit = one.circuit.toStdString();
            coupling.side = one.side;
            coupling.place = one.place;
            coupling.riggingOrder = order++;
            coupling.stamp = stamp();
            if (const auto added = addWithFirstFitting(coupling); !added)
                return added.problem();
        }
        return Done{};
    });
}

Outcome SetUpPresenter::move(AirframeId airframe, CouplingId coupling, int by)
{
    return m_records.together([&]() -> Outcome {
        auto known = m_records.couplings(airframe);
        if (!known)
            return known.problem();
        for (Coupling& one : renumbered(std::move(known).value(), coupling, by, &Coupling::riggingOrder)) {
            one.stamp = stamp();
            if (const auto kept = m_records.add(one); !kept)
                return kept.problem();
        }
        return Done{};
    });
}

Outcome SetUpPresenter::setInUse(AirframeId airframe, CouplingId coupling, bool inUse)
{
    return m_records.together([&]() -> Outcome {
        const auto known = m_records.couplings(airframe);
        if (!known)
            return known.problem();
        const auto here = std::ranges::find(known.value(), coupling, &Coupling::id);
        if (here == known.value().end())
            return Problem{ProblemKind::NotFound, "no such coupling"};
        Coupling changed = *here;
        changed.inUse = inUse;
        changed.stamp = stamp();
        if (inUse)
            changed.riggingOrder = nextInOrder(known.value(), &Coupling::riggingOrder);
        const auto kept = m_records.add(changed);
        return kept ? Outcome{Done{}} : Outcome{kept.problem()};
    });
}

Outcome SetUpPresenter::setInUse(GaugeId gauge, bool inUse)
{
    return m_records.together([&]() -> Outcome {
        const auto known = m_records.gauges();
        if (!known)
            return known.problem();
        const auto here = std::ranges::find(known.value(), gauge, &Gauge::id);
        if (here == known.value().end())
            return Problem{ProblemKind::NotFound, "no such gauge"};
        Gauge changed = *here;
        changed.inUse = inUse;
        changed.stamp = stamp();
        const auto kept = m_records.add(changed);
        return kept ? Outcome{Done{}} : Outcome{kept.problem()};
    });
}

} // namespace rig
