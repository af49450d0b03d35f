#include "app/pages/setup/setup_presenter.h"
#include "core/day_entry.h"
#include "core/measure/size_list.h"
#include "core/store/names.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace rig {

namespace {

QString entryText(const std::string& text)
{
    return QString::fromStdString(text);
}

QString sizesText(const std::vector<Gap>& sizes, QChar decimalMark)
{
    return entryText(sizeListText(sizes, decimalMark == QLatin1Char(',') ? ',' : '.'));
}

// One size, without the semicolon that a list of one needs.
QString sizeText(Gap size, QChar decimalMark)
{
    return sizesText({size}, decimalMark).remove(QLatin1Char(';'));
}

// Rough places on the plan view (x -1 left wing tip to +1 right, y 0 nose to 1 tail); only a drawing.
constexpr std::array<std::pair<PlanSpot, PlanPlace>, 8> kSpots{{
    {PlanSpot::WingRootLeft, {-0.08, 0.36}},
    {PlanSpot::WingRootRight, {0.08, 0.36}},
    {PlanSpot::OuterWingLeft, {-0.55, 0.34}},
    {PlanSpot::OuterWingRight, {0.55, 0.34}},
    {PlanSpot::Fuselage, {0.0, 0.42}},
    {PlanSpot::TailBoom, {0.0, 0.70}},
    {PlanSpot::FinFoot, {0.0, 0.90}},
    {PlanSpot::FinTop, {0.0, 0.97}},
}};

double distance(const PlanPlace& one, const PlanPlace& other)
{
    return std::hypot(one.x - other.x, one.y - other.y);
}

} // namespace

AirframeEntry entryOf(const Airframe& airframe)
{
    AirframeEntry entry;
    entry.registration = entryText(airframe.registration);
    entry.type = entryText(airframe.type);
    entry.serial = entryText(airframe.serial);
    entry.jurisdiction = entryText(airframe.jurisdiction);
    entry.manualReferences = entryText(airframe.manualReferences);
    if (airframe.annualDue)
        entry.annualDue = entryText(dayText(*airframe.annualDue));
    entry.callName = entryText(airframe.callName);
    entry.callPhone = entryText(airframe.callPhone);
    entry.riggingsBefore = QString::number(airframe.riggingsBefore);
    return entry;
}

CouplingEntry entryOf(const Coupling& coupling)
{
    CouplingEntry entry;
    entry.name = entryText(coupling.name);
    entry.circuit = entryText(coupling.circuit);
    entry.side = coupling.side;
    entry.access = entryText(coupling.access);
    entry.layout = coupling.layout;
    entry.leafPlace = entryText(coupling.leafPlace);
    entry.securing = coupling.securing;
    entry.spot = spotOf(coupling.place);
    entry.note = entryText(coupling.note);
    return entry;
}

GaugeEntry entryOf(const Gauge& gauge, QChar decimalMark)
{
    GaugeEntry entry;
    entry.name = entryText(gauge.name);
    entry.kind = gauge.set.kind();
    if (entry.kind == GaugeKind::Taper)
        entry.resolution = sizeText(gauge.set.resolution(), decimalMark);
    else
        entry.sizes = sizesText(gauge.set.sizes(), decimalMark);
    if (gauge.tolerance)
        entry.tolerance = sizeText(*gauge.tolerance, decimalMark);
    entry.note = entryText(gauge.note);
    return entry;
}

PersonEntry entryOf(const Person& person)
{
    return {entryText(person.name), entryText(person.role), entryText(person.phone)};
}

PlanPlace placeOf(PlanSpot spot)
{
    const auto found = std::ranges::find(kSpots, spot, &std::pair<PlanSpot, PlanPlace>::first);
    return found == kSpots.end() ? PlanPlace{} : found->second;
}

PlanSpot spotOf(const std::optional<PlanPlace>& place)
{
    if (!place)
        return PlanSpot::NotGiven;
    return std::ranges::min_element(kSpots, {},
                                    [&place](const auto& spot) { return distance(spot.second, *place); })
        ->first;
}

GaugeEntry usualLeafSet(const std::vector<GaugeRow>& known, QChar decimalMark)
{
    constexpr int kLeaves = 20;
    GaugeEntry entry;
    std::vector<Gap> sizes;
    for (int i = 1; i <= kLeaves; ++i)
        sizes.push_back(Gap::micrometres(50 * i));
    entry.sizes = sizesText(sizes, decimalMark);
    for (char letter = 'A'; letter <= 'Z' && entry.name.isEmpty(); ++letter) {
        const std::string name{letter};
        const bool taken = std::ranges::any_of(
            known, [&name](const GaugeRow& row) { return comparable(row.gauge.name) == comparable(name); });
        if (!taken)
            entry.name = entryText(name);
    }
    return entry;
}

} // namespace rig
