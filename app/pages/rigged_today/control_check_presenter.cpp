#include "app/pages/rigged_today/control_check_presenter.h"

#include "app/pages/usual_surfaces.h"
#include "app/wording/surface_words.h"
#include "core/measure/gap_entry.h"
#include "core/store/facts_book.h"

#include <algorithm>

namespace rig {

namespace {

constexpr std::int32_t kHalfATurn = 180'000;
constexpr std::int32_t kAMetre = 1'000'000;

std::optional<OtherSide> otherSideOf(const RiggedTodayView& view, const RecordContent& content,
                                     const Surface& surface)
{
    if (surface.side == Side::None)
        return std::nullopt;
    for (const Surface& one : view.surfaces)
        if (one.kind == surface.kind && one.side != surface.side && one.side != Side::None)
            return OtherSide{one, measuredOn(one.id, content.surfaceMeasures)};
    return std::nullopt;
}

const Surface* find(const RiggedTodayView& view, SurfaceId surface)
{
    const auto found = std::ranges::find(view.surfaces, surface, &Surface::id);
    return found == view.surfaces.end() ? nullptr : &*found;
}

} // namespace

Result<SurfaceSheet> ControlCheckPresenter::sheet(const RiggedTodayView& view, SurfaceId id) const
{
    const Surface* surface = find(view, id);
    if (!surface)
        return Problem{ProblemKind::NotFound, textOf(id.bytes)};
    const auto known = m_records.book().content(view.record->id);
    if (!known)
        return known.problem();
    const RecordContent& content = *known.value();
    SurfaceSheet sheet;
    sheet.surface = *surface;
    sheet.measured = measuredOn(id, content.surfaceMeasures);
    sheet.other = otherSideOf(view, content, *surface);
    for (const SurfaceNow& one : view.now ? view.now->surfaces : std::vector<SurfaceNow>{})
        for (const Coupling& coupling : view.couplings)
            if (one.id == id && one.stoppedJoint == coupling.id)
                sheet.stoppedJoint = coupling;
    for (const SurfaceProgress& progress : view.review.surfaces) {
        if (progress.id == id)
            sheet.progress = progress;
        const Surface* one = find(view, progress.id);
        if (one && progress.stop && isOfSense(*progress.stop)) {
            const auto seen = progress.seen.find(*progress.stop);
            sheet.reversed = *one;
            sheet.didNothing = seen != progress.seen.end() && seen->second == Movement::Nothing;
        }
    }
    return sheet;
}

Result<QString> ControlCheckPresenter::keep(RecordId record, const Surface& surface, MeasureKind kind,
                                            DeflectionUnit unit, const QString& typed, PersonId atSurface)
{
    const FigureEntry entry =
        parseFigure(typed.toStdString(), unit == DeflectionUnit::Degrees ? kHalfATurn : kAMetre);
    if (const auto* problem = std::get_if<EntryProblem>(&entry))
        return SurfaceWords::refusal(*problem, typed, unit);
    SurfaceMeasure measure;
    measure.record = record;
    measure.surface = surface.id;
    measure.kind = kind;
    measure.unit = unit;
    measure.value = {*std::get_if<std::int32_t>(&entry)};
    measure.measuredAt = surface.measuredAt;
    measure.person = atSurface;
    measure.stamp = {atSurface, m_clock.now()};
    if (unit == DeflectionUnit::Millimetres && measure.measuredAt &&
        !inUnit(measure, DeflectionUnit::Degrees))
        return SurfaceWords::fartherThanItTurns(*measure.measuredAt);
    if (const auto added = m_records.add(measure); !added)
        return added.problem();
    return QString{};
}

Outcome ControlCheckPresenter::addUsualSurfaces(AirframeId airframe, std::optional<PersonId> statedBy)
{
    const auto added = rig::addUsualSurfaces(m_records, airframe, statedBy);
    return added ? Outcome{Done{}} : Outcome{added.problem()};
}

} // namespace rig
