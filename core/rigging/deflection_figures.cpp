#include "core/rigging/deflection_figures.h"

#include "core/numbers/deflection.h"

#include <cmath>

namespace rig {

namespace {

using numbers::Travel;

Deflection deflectionOf(double units)
{
    return {static_cast<std::int32_t>(std::lround(units * 1000))};
}

} // namespace

std::optional<Deflection> inUnit(const SurfaceMeasure& measure, DeflectionUnit wanted)
{
    if (measure.unit == wanted)
        return measure.value;
    if (!measure.measuredAt)
        return std::nullopt;
    const double radius = measure.measuredAt->inMillimetres();
    const double value = measure.value.inUnits();
    const auto turned = wanted == DeflectionUnit::Degrees
                            ? numbers::degreesOf(value, radius, Travel::StraightLine)
                            : numbers::travelOf(value, radius, Travel::StraightLine);
    if (!turned)
        return std::nullopt;
    return deflectionOf(*turned);
}

Deflection beyondRange(Deflection figure, const ManualDeflection& manual)
{
    const std::int32_t apart = figure.thousandths - manual.nominal.thousandths;
    if (apart > manual.tolerance.thousandths)
        return {apart - manual.tolerance.thousandths};
    if (apart < -manual.tolerance.thousandths)
        return {apart + manual.tolerance.thousandths};
    return {};
}

MeasuredSurface measuredOn(SurfaceId surface, std::span<const SurfaceMeasure> all)
{
    MeasuredSurface measured;
    for (const SurfaceMeasure& one : all) {
        if (one.surface != surface)
            continue;
        switch (one.kind) {
        case MeasureKind::FreePlay:
            measured.play = one;
            break;
        case MeasureKind::Up:
            measured.up = one;
            break;
        case MeasureKind::Down:
            measured.down = one;
            break;
        }
    }
    return measured;
}

std::optional<double> upOverDown(const MeasuredSurface& measured)
{
    if (!measured.up || !measured.down)
        return std::nullopt;
    auto up = inUnit(*measured.up, DeflectionUnit::Degrees);
    auto down = inUnit(*measured.down, DeflectionUnit::Degrees);
    if (!up || !down) {
        if (measured.up->unit != measured.down->unit)
            return std::nullopt;
        up = measured.up->value;
        down = measured.down->value;
    }
    if (down->thousandths == 0)
        return std::nullopt;
    return up->inUnits() / down->inUnits();
}

std::optional<Deflection> differenceInDegrees(const std::optional<SurfaceMeasure>& first,
                                              const std::optional<SurfaceMeasure>& second)
{
    const auto one = first ? inUnit(*first, DeflectionUnit::Degrees) : std::nullopt;
    const auto other = second ? inUnit(*second, DeflectionUnit::Degrees) : std::nullopt;
    if (!one || !other)
        return std::nullopt;
    return Deflection{one->thousandths - other->thousandths};
}

} // namespace rig
