#include "core/demo/surfaces.h"

#include "core/demo/sayings.h"

#include <array>

namespace rig::demo {

namespace {

struct SurfacePlan
{
    Saying name;
    SurfaceKind kind;
    Side side = Side::None;
    int hingeMm = 0; // 0: nothing is measured on it
    int upMm = 0;
    int downMm = 0;
};

constexpr int kToleranceMm = 3;
constexpr int kMostPlayMm = 2;

std::vector<SurfacePlan> plansOf(int airframe)
{
    using enum SurfaceKind;
    std::vector<SurfacePlan> plans{
        {says::kLeftAileron, Aileron, Side::Left, 120, 52, 26},
        {says::kRightAileron, Aileron, Side::Right, 120, 52, 26},
        {says::kLeftAirbrake, Airbrake, Side::Left},
        {says::kRightAirbrake, Airbrake, Side::Right},
        {says::kElevator, Elevator, Side::None, 140, 58, 48},
        {says::kRudder, Rudder, Side::None, 260, 130, 130},
        {says::kTrim, Trim, Side::None},
    };
    if (airframe == 0) {
        plans.insert(plans.begin() + 2, {says::kLeftFlap, Flap, Side::Left, 130, 20, 30});
        plans.insert(plans.begin() + 3, {says::kRightFlap, Flap, Side::Right, 130, 20, 30});
    }
    if (airframe == 2) {
        plans.push_back({says::kLeftWaterDump, WaterDump, Side::Left});
        plans.push_back({says::kRightWaterDump, WaterDump, Side::Right});
    }
    return plans;
}

Deflection millimetres(int mm)
{
    return {mm * 1000};
}

void measureSurface(Teller& teller, RecordId record, const Surface& surface, MeasureKind kind, int tenthsOfMm,
                    Who who)
{
    SurfaceMeasure measured;
    measured.record = record;
    measured.surface = surface.id;
    measured.kind = kind;
    measured.value = {tenthsOfMm * 100};
    measured.measuredAt = surface.measuredAt;
    measured.person = teller.person(who);
    measured.stamp = teller.by(who);
    teller.keep(teller.records().add(measured));
}

// Near the manual's figures, a little different from one year and surface to the next.
void measureAll(Teller& teller, RecordId record, const Surface& surface, Who who)
{
    const std::chrono::year_month_day date{teller.clock().now().localDay()};
    const int drift = (static_cast<int>(date.year()) + surface.order) % 3 * 5;
    teller.clock().passSeconds(90);
    measureSurface(teller, record, surface, MeasureKind::FreePlay, 10 + drift / 2, who);
    measureSurface(teller, record, surface, MeasureKind::Up, surface.up->nominal.thousandths / 100 + drift,
                   who);
    measureSurface(teller, record, surface, MeasureKind::Down,
                   surface.down->nominal.thousandths / 100 - drift, who);
}

} // namespace

std::vector<Surface> surfacesOf(int airframe, AirframeId id, Language language)
{
    std::vector<Surface> surfaces;
    for (const SurfacePlan& plan : plansOf(airframe)) {
        Surface surface;
        surface.airframe = id;
        surface.name = plan.name.in(language);
        surface.kind = plan.kind;
        surface.side = plan.side;
        surface.order = static_cast<int>(surfaces.size()) + 1;
        surface.unit = DeflectionUnit::Millimetres;
        if (plan.hingeMm > 0) {
            surface.measuredAt = Gap::micrometres(plan.hingeMm * 1000);
            surface.up = ManualDeflection{millimetres(plan.upMm), millimetres(kToleranceMm)};
            surface.down = ManualDeflection{millimetres(plan.downMm), millimetres(kToleranceMm)};
            surface.mostPlay = millimetres(kMostPlayMm);
            surface.manualReference = says::kManualPage.in(language);
        }
        surfaces.push_back(surface);
    }
    return surfaces;
}

void checkControls(Teller& teller, RecordId record, int airframe, Who who, Who cockpit, bool measures)
{
    constexpr int kSecondsEach = 5;
    for (const Surface& surface : teller.surfaces(airframe)) {
        for (const SurfaceCheckKind kind : checksOf(surface)) {
            if (kind != SurfaceCheckKind::CalledOtherWay && kind != SurfaceCheckKind::Sense)
                teller.clock().passSeconds(kSecondsEach); // the two calls are one breath
            SurfaceCheck check;
            check.record = record;
            check.surface = surface.id;
            check.kind = kind;
            check.answer = Answer::Yes;
            check.person = teller.person(who);
            check.cockpit = teller.person(cockpit);
            check.stamp = teller.by(who);
            if (isCall(kind))
                check.seen = expectedOf(surface).of(kind).value_or(
                    kind == SurfaceCheckKind::CalledOneWay ? Movement::Up : Movement::Down);
            teller.keep(teller.records().add(check));
        }
        if (measures && surface.up)
            measureAll(teller, record, surface, who);
    }
}

} // namespace rig::demo
