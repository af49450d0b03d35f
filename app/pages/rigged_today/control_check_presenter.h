#pragma once

#include "app/pages/rigged_today/rigged_today_view.h"
#include "core/rigging/deflection_figures.h"
#include "core/store/records.h"

#include <QString>

#include <optional>

namespace rig {

// The surface of the same kind on the other side, with what was measured on it in this record.
struct OtherSide
{
    Surface surface;
    MeasuredSurface measured;
};

// One surface of the control check: everything the panel shows, worked out from facts.
struct SurfaceSheet
{
    Surface surface;
    SurfaceProgress progress;
    MeasuredSurface measured;
    std::optional<OtherSide> other;
    // The surface that did not move as called: while its question is open nothing is tried on any.
    std::optional<Surface> reversed;
    bool didNothing = false;              // that one, instead of moving the wrong way
    std::optional<Coupling> stoppedJoint; // of its circuit, that is left as it is: nothing is tried on it

    bool isStopped() const { return progress.stop || reversed || stoppedJoint; }
    // It is the one that did not move as called.
    bool isOwn() const { return reversed && reversed->id == surface.id; }
    // Nothing is to be moved for it, though nothing was found at it.
    bool isLeftAlone() const { return stoppedJoint || (reversed && !isOwn()); }

    // What Y, N and C answer now; empty when everything was tried and when it stopped.
    std::optional<SurfaceCheckKind> asked() const { return isStopped() ? std::nullopt : progress.next; }
};

// Facts of the control check -> one surface's sheet; what the two did -> facts. Knows no widget.
class ControlCheckPresenter
{
public:
    // Both outlive it.
    ControlCheckPresenter(Records& records, const Clock& clock) : m_records{records}, m_clock{clock} {}

    // `view` has a record, and this surface.
    Result<SurfaceSheet> sheet(const RiggedTodayView& view, SurfaceId surface) const;
    // A figure as typed. Gives the sentence why it was not taken; empty: it is kept.
    Result<QString> keep(RecordId record, const Surface& surface, MeasureKind kind, DeflectionUnit unit,
                         const QString& typed, PersonId atSurface);
    Outcome addUsualSurfaces(AirframeId airframe, std::optional<PersonId> statedBy);

private:
    Records& m_records;
    const Clock& m_clock;
};

} // namespace rig
