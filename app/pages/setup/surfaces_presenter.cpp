#include "app/pages/setup/entry_reader.h"
#include "app/pages/setup/part_presenters.h"
#include "app/pages/setup/things_kept.h"
#include "app/pages/usual_surfaces.h"
#include "app/wording/surface_words.h"
#include "core/measure/gap_entry.h"

#include <algorithm>

namespace rig {

namespace {

constexpr std::int32_t kMostDegrees = 180'000;
constexpr std::int32_t kMostMillimetres = 1'000'000;

// Empty when nothing was typed, and after a refusal.
std::optional<Deflection> figure(EntryReader& reader, Field field, const QString& typed, DeflectionUnit unit)
{
    if (typed.trimmed().isEmpty())
        return std::nullopt;
    const std::int32_t most = unit == DeflectionUnit::Degrees ? kMostDegrees : kMostMillimetres;
    const FigureEntry entry = parseFigure(plain(typed), most);
    if (const auto* thousandths = std::get_if<std::int32_t>(&entry))
        return Deflection{*thousandths};
    reader.refuse(field, SurfaceWords::refusal(*std::get_if<EntryProblem>(&entry), typed, unit));
    return std::nullopt;
}

struct DirectionFields
{
    Field nominal;
    Field tolerance;
};

std::optional<ManualDeflection> direction(EntryReader& reader, const DirectionFields& fields,
                                          const QString& nominal, const QString& tolerance,
                                          DeflectionUnit unit)
{
    const auto middle = figure(reader, fields.nominal, nominal, unit);
    const auto around = figure(reader, fields.tolerance, tolerance, unit);
    if (nominal.trimmed().isEmpty() && !tolerance.trimmed().isEmpty())
        reader.refuse(fields.nominal, SurfaceWords::nominalMissing());
    if (!nominal.trimmed().isEmpty() && tolerance.trimmed().isEmpty())
        reader.refuse(fields.tolerance, SurfaceWords::toleranceMissing());
    if (!middle || !around)
        return std::nullopt;
    return ManualDeflection{*middle, *around};
}

// A figure is worth what its source is: a page and a revision both have a number.
void readReference(EntryReader& reader, const SurfaceEntry& entry)
{
    const bool isNeeded =
        std::ranges::any_of(std::array{entry.upNominal, entry.downNominal, entry.mostPlay},
                            [](const QString& typed) { return !typed.trimmed().isEmpty(); });
    if (!isNeeded)
        return;
    const QString reference = entry.reference.trimmed();
    if (reference.isEmpty())
        reader.refuse(Field::ManualReference, SurfaceWords::referenceMissing());
    else if (std::ranges::none_of(reference, [](QChar c) { return c.isDigit(); }))
        reader.refuse(Field::ManualReference, SurfaceWords::referenceLacksPage());
}

void readFigures(EntryReader& reader, const SurfaceEntry& entry, Surface& surface)
{
    const auto at = figure(reader, Field::MeasuredAt, entry.measuredAt, DeflectionUnit::Millimetres);
    if (at && *at == Deflection{})
        reader.refuse(Field::MeasuredAt, SurfaceWords::distanceZero());
    surface.measuredAt = at ? std::optional{Gap::micrometres(at->thousandths)} : std::nullopt;
    surface.up = direction(reader, {Field::UpNominal, Field::UpTolerance}, entry.upNominal, entry.upTolerance,
                           entry.unit);
    surface.down = direction(reader, {Field::DownNominal, Field::DownTolerance}, entry.downNominal,
                             entry.downTolerance, entry.unit);
    surface.mostPlay = figure(reader, Field::MostPlay, entry.mostPlay, entry.unit);
    readReference(reader, entry);
}

} // namespace

SurfaceEntry entryOf(const Surface& surface)
{
    const auto text = [](const std::optional<Deflection>& figure) {
        return figure ? SurfaceWords::number(*figure) : QString{};
    };
    SurfaceEntry entry;
    entry.name = shown(surface.name);
    entry.kind = surface.kind;
    entry.side = surface.side;
    entry.senseCall = shown(surface.senseCall);
    entry.unit = surface.unit;
    if (surface.measuredAt)
        entry.measuredAt = text(Deflection{surface.measuredAt->inMicrometres()});
    if (surface.up) {
        entry.upNominal = text(surface.up->nominal);
        entry.upTolerance = text(surface.up->tolerance);
    }
    if (surface.down) {
        entry.downNominal = text(surface.down->nominal);
        entry.downTolerance = text(surface.down->tolerance);
    }
    entry.mostPlay = text(surface.mostPlay);
    entry.reference = shown(surface.manualReference);
    return entry;
}

std::vector<Surface> SurfacesPresenter::view(const AirframeFacts& facts) const
{
    std::vector<Surface> surfaces = facts.surfaces;
    std::ranges::stable_partition(surfaces, &Surface::inUse);
    return surfaces;
}

Result<Saved> SurfacesPresenter::save(const SurfaceEntry& entry, AirframeId airframe,
                                      std::optional<SurfaceId> of)
{
    const auto known = records().surfaces(airframe);
    if (!known)
        return known.problem();
    Surface surface;
    surface.order = nextInOrder(known.value(), &Surface::order);
    if (const Surface* before = of ? findIn(known.value(), *of) : nullptr)
        surface = *before;
    EntryReader reader;
    reader.name(Field::SurfaceName, entry.name, known.value(), surface.id, &Surface::name,
                SurfaceWords::nameMissing(), SurfaceWords::nameTaken);
    readFigures(reader, entry, surface);
    if (reader.hasProblem())
        return reader.refusal();
    surface.airframe = airframe;
    surface.name = plain(entry.name);
    surface.kind = entry.kind;
    surface.side = entry.side;
    surface.senseCall = plain(entry.senseCall);
    surface.unit = entry.unit;
    surface.manualReference = plain(entry.reference);
    surface.stamp = desk().stamp();
    return savedAs(records().add(surface));
}

Result<int> SurfacesPresenter::addUsual(AirframeId airframe)
{
    return addUsualSurfaces(records(), airframe, desk().statedBy());
}

Outcome SurfacesPresenter::move(AirframeId airframe, SurfaceId surface, int by)
{
    return moveInOrder(
        records(), [&] { return records().surfaces(airframe); }, surface, by, &Surface::order,
        desk().stamp());
}

Outcome SurfacesPresenter::setInUse(AirframeId airframe, SurfaceId surface, bool inUse)
{
    return putInUse(
        records(), [&] { return records().surfaces(airframe); }, surface, inUse, desk().stamp(),
        &Surface::order);
}

} // namespace rig
