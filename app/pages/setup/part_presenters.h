#pragma once

#include "app/pages/setup/photo_rows.h"
#include "app/pages/setup/quarantine_outlook.h"
#include "app/pages/setup/setup_desk.h"
#include "app/pages/setup/setup_entries.h"
#include "app/pages/setup/setup_view.h"
#include "app/report/page_flow.h"
#include "core/views/paper_sheet.h"

#include <array>
#include <optional>
#include <vector>

namespace rig {

// One small presenter a part of Set up: facts -> its rows; what was typed -> facts, or the sentences why not.
// None knows a widget. In every save() `of` names what is changed; empty: something new. A change is a new
// version, the old one stays.
class PartPresenter
{
public:
    // `desk` outlives it.
    explicit PartPresenter(const SetUpDesk& desk) : m_desk{desk} {}

protected:
    Records& records() const { return m_desk.records(); }
    const SetUpDesk& desk() const { return m_desk; }

private:
    const SetUpDesk& m_desk;
};

class AirframePresenter : public PartPresenter
{
public:
    using PartPresenter::PartPresenter;

    Airframe view(const AirframeFacts& facts) const { return facts.airframe; }
    Result<Saved> save(const AirframeEntry& entry, std::optional<AirframeId> of);
};

// Couplings that most sailplanes have; a start for the list, left before right.
enum class UsualCoupling {
    LeftAileron,
    RightAileron,
    LeftAirbrake,
    RightAirbrake,
    LeftFlap,
    RightFlap,
    Elevator,
    Trim,
};

inline constexpr std::array<UsualCoupling, 8> kUsualCouplings{
    UsualCoupling::LeftAileron,   UsualCoupling::RightAileron, UsualCoupling::LeftAirbrake,
    UsualCoupling::RightAirbrake, UsualCoupling::LeftFlap,     UsualCoupling::RightFlap,
    UsualCoupling::Elevator,      UsualCoupling::Trim};

QString usualName(UsualCoupling which);

class CouplingsPresenter : public PartPresenter
{
public:
    using PartPresenter::PartPresenter;

    std::vector<CouplingRow> view(const KnownAirframe& known) const;
    // A new coupling is saved together with its first fitting.
    Result<Saved> save(const CouplingEntry& entry, AirframeId airframe, std::optional<CouplingId> of);
    Result<Saved> save(const FittingEntry& entry, AirframeId airframe, CouplingId coupling);
    // All of them with their first fittings, or none.
    Outcome addUsual(AirframeId airframe, const std::vector<UsualCoupling>& chosen);
    // One place earlier (-1) or later (+1) in the rigging order; nothing happens at the ends.
    Outcome move(AirframeId airframe, CouplingId coupling, int by);
    Outcome setInUse(AirframeId airframe, CouplingId coupling, bool inUse);

private:
    Result<CouplingId> addWithFirstFitting(const Coupling& coupling);
};

class SurfacesPresenter : public PartPresenter
{
public:
    using PartPresenter::PartPresenter;

    std::vector<Surface> view(const AirframeFacts& facts) const;
    Result<Saved> save(const SurfaceEntry& entry, AirframeId airframe, std::optional<SurfaceId> of);
    // How many were added; those that are there already are left alone.
    Result<int> addUsual(AirframeId airframe);
    Outcome move(AirframeId airframe, SurfaceId surface, int by); // in the order of the control check
    Outcome setInUse(AirframeId airframe, SurfaceId surface, bool inUse);
};

class GaugesPresenter : public PartPresenter
{
public:
    using PartPresenter::PartPresenter;

    Result<std::vector<GaugeRow>> view() const; // of the whole file
    Result<Saved> save(const GaugeEntry& entry, std::optional<GaugeId> of);
    // A check that doubts a gauge asks its questions in the same transaction.
    Result<Saved> save(const GaugeCheckEntry& entry, GaugeId gauge);
    // What a doubt about it would do, while its check is being filled in.
    Result<QuarantineOutlook> outlook(GaugeId gauge) const;
    Outcome setInUse(GaugeId gauge, bool inUse);
};

class PeoplePresenter : public PartPresenter
{
public:
    using PartPresenter::PartPresenter;

    Result<std::vector<Person>> view() const { return records().persons(); } // of the whole file
    Result<Saved> save(const PersonEntry& entry, std::optional<PersonId> of);
};

class EventsPresenter : public PartPresenter
{
public:
    using PartPresenter::PartPresenter;

    std::vector<EventRow> view(const AirframeFacts& facts) const;
    std::vector<PlayRow> plays(const AirframeFacts& facts) const;
    Result<Saved> save(const EventEntry& entry, AirframeId airframe);
    // Felt on a day that was no rigging, by a named person.
    Result<Saved> save(const PlayEntry& entry);
};

class PhotosPresenter : public PartPresenter
{
public:
    using PartPresenter::PartPresenter;

    // Of one coupling, none that was withdrawn; the newest first.
    Result<std::vector<PhotoRow>> view(AirframeId airframe, CouplingId coupling) const;
    Result<PhotoImage> image(PhotoId photo) const;
    // Both by whoever states what is saved here.
    Result<Saved> save(const PhotoEntry& entry, CouplingId coupling);
    Result<Saved> withdraw(PhotoId photo, const QString& reason);
};

class PaperPresenter : public PartPresenter
{
public:
    using PartPresenter::PartPresenter;

    // Of today, with the leaves of that gauge; empty: with none.
    Result<PaperSheet> sheet(AirframeId airframe, std::optional<GaugeId> gauge) const;
    Outcome save(const PaperSheet& sheet, const QString& path, Paper paper) const;
};

// What a form shows of something that is in the file.
AirframeEntry entryOf(const Airframe& airframe);
CouplingEntry entryOf(const Coupling& coupling);
GaugeEntry entryOf(const Gauge& gauge, QChar decimalMark);
PersonEntry entryOf(const Person& person);
SurfaceEntry entryOf(const Surface& surface);

PlanPlace placeOf(PlanSpot spot); // not for NotGiven
QString spotName(PlanSpot spot);
PlanSpot spotOf(const std::optional<PlanPlace>& place);

// A place as its two numbers are typed; both empty where there is none.
struct PlanText
{
    QString across;
    QString along;
};
PlanText planText(const std::optional<PlanPlace>& place);

// 20 leaves from 0.05 to 1.00 mm, under the first letter that no other set has.
GaugeEntry usualLeafSet(const std::vector<GaugeRow>& known, QChar decimalMark);

} // namespace rig
