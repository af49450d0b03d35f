#pragma once

#include "core/airframe/airframe.h"
#include "core/airframe/coupling.h"
#include "core/airframe/ids.h"
#include "core/airframe/surface.h"
#include "core/measure/gauge_set.h"
#include "core/rigging/event.h"
#include "core/rigging/joint_play.h"

#include <QString>

#include <optional>
#include <string>
#include <vector>

namespace rig {

// Text of the file as a screen shows it, and as it would be typed again.
inline QString shown(const std::string& kept)
{
    return QString::fromStdString(kept);
}

// What stands in a form, as typed. The presenter reads it; nothing typed is lost when it refuses.

struct AirframeEntry
{
    QString registration;
    QString type;
    QString serial;
    QString jurisdiction;
    QString manualReferences;
    QString annualDue; // 2026-05-02, or nothing
    QString callName;
    QString callPhone;
    QString riggingsBefore;
    QString span = {}; // metres, or nothing
    TailForm tail = TailForm::Unknown;
    QString wingPanels = {}; // or nothing

    bool operator==(const AirframeEntry&) const = default;
};

// Where a coupling stands on the plan view, as a rigger would say it.
enum class PlanSpot {
    NotGiven,
    WingRootLeft,
    WingRootRight,
    OuterWingLeft,
    OuterWingRight,
    Fuselage,
    TailBoom,
    FinFoot,
    FinTop,
};

struct CouplingEntry
{
    QString name;
    QString circuit;
    Side side = Side::None;
    QString access;
    Layout layout = Layout::Unknown;
    QString leafPlace;
    CouplingKind kind = CouplingKind::Sleeve;
    CouplingParts parts; // of a kind that does not say it itself
    PlanSpot spot = PlanSpot::NotGiven;
    QString note;
    QString planAcross = {}; // of the plan's half width and its length, in per cent; both or nothing
    QString planAlong = {};
    AccessSide seenFrom = AccessSide::Unknown;
    AccessSide mirrorFrom = AccessSide::Unknown;

    bool operator==(const CouplingEntry&) const = default;
};

struct FittingEntry
{
    QString day;
    QString reason;
    FittingKind kind = FittingKind::Other;

    bool operator==(const FittingEntry&) const = default;
};

struct GaugeEntry
{
    QString name;
    GaugeKind kind = GaugeKind::Leaves;
    QString sizes;
    QString resolution; // of a taper gauge
    QString tolerance;
    QString note;

    bool operator==(const GaugeEntry&) const = default;
};

struct GaugeCheckEntry
{
    QString day;
    QString how;
    QString found;
    bool doubted = false;
    QString doubtedFrom;      // with doubted
    QString knownGap = {};    // mm, of a stamped block; nothing: the set was not tried on one
    QString knownEnters = {}; // nothing: no leaf entered
    QString knownRefuses = {};

    bool operator==(const GaugeCheckEntry&) const = default;
};

struct PersonEntry
{
    QString name;
    QString role;
    QString phone;

    bool operator==(const PersonEntry&) const = default;
};

struct EventEntry
{
    EventKind kind = EventKind::Cleaned;
    QString day;
    std::optional<CouplingId> coupling; // empty: the whole airframe
    QString note;

    bool operator==(const EventEntry&) const = default;
};

struct PlayEntry
{
    QString day;
    std::optional<CouplingId> coupling;
    PlayFelt along = PlayFelt::NotTried;
    QString alongMm;
    PlayFelt across = PlayFelt::NotTried;
    QString acrossMm;
    std::optional<PersonId> person;
    QString note;

    bool operator==(const PlayEntry&) const = default;
};

struct SurfaceEntry
{
    QString name;
    SurfaceKind kind = SurfaceKind::Aileron;
    Side side = Side::None;
    QString senseCall;
    DeflectionUnit unit = DeflectionUnit::Degrees;
    QString measuredAt; // mm
    QString upNominal;
    QString upTolerance;
    QString downNominal;
    QString downTolerance;
    QString mostPlay;
    QString reference;

    bool operator==(const SurfaceEntry&) const = default;
};

enum class Field {
    Registration,
    AnnualDue,
    RiggingsBefore,
    Span,
    WingPanels,
    CouplingName,
    PlanAcross,
    PlanAlong,
    PhotoPicture,
    PhotoKind,
    PhotoDay,
    FittingDay,
    FittingReason,
    GaugeName,
    Sizes,
    Resolution,
    Tolerance,
    CheckDay,
    CheckHow,
    CheckFound,
    DoubtedFrom,
    KnownGap,
    KnownEnters,
    KnownRefuses,
    PersonName,
    EventKind,
    EventDay,
    EventNote,
    PlayDay,
    PlayCoupling,
    PlayAlong,
    PlayAlongMm,
    PlayAcrossMm,
    PlayPerson,
    SurfaceName,
    MeasuredAt,
    UpNominal,
    UpTolerance,
    DownNominal,
    DownTolerance,
    MostPlay,
    ManualReference,
};

// Why a field was not taken, in the words to show beside it.
struct FieldProblem
{
    Field field;
    QString sentence;
};

// What became of an entry: either problems, and nothing was kept, or the id of what is now in the file.
struct Saved
{
    std::vector<FieldProblem> problems;
    IdBytes id{};

    bool isSaved() const { return problems.empty(); }
};

} // namespace rig
