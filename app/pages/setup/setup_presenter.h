#pragma once

#include "app/pages/setup/quarantine_outlook.h"
#include "app/pages/setup/setup_entries.h"
#include "app/pages/setup/setup_view.h"
#include "core/store/records.h"

#include <optional>
#include <vector>

namespace rig {

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

// Facts of the file -> what Set up shows; what was typed -> facts, or the sentence why not. Knows no widget.
class SetUpPresenter
{
public:
    // Both outlive it.
    SetUpPresenter(Records& records, const Clock& clock) : m_records{records}, m_clock{clock} {}

    // Who states what is saved from now on; empty: nobody was named.
    void setStatedBy(std::optional<PersonId> person) { m_statedBy = person; }

    Moment now() const { return m_clock.now(); }
    Result<SetUpView> view(std::optional<AirframeId> airframe) const;

    // `of` names what is changed; empty: something new. A change is a new version, the old one stays.
    Result<Saved> save(const AirframeEntry& entry, std::optional<AirframeId> of);
    // A new coupling is saved together with its first fitting.
    Result<Saved> save(const CouplingEntry& entry, AirframeId airframe, std::optional<CouplingId> of);
    Result<Saved> save(const FittingEntry& entry, AirframeId airframe, CouplingId coupling);
    Result<Saved> save(const GaugeEntry& entry, std::optional<GaugeId> of);
    // A check that doubts a gauge asks its questions in the same transaction.
    Result<Saved> save(const GaugeCheckEntry& entry, GaugeId gauge);
    // What a doubt about it would do, while its check is being filled in.
    Result<QuarantineOutlook> outlook(GaugeId gauge) const;
    Result<Saved> save(const PersonEntry& entry, std::optional<PersonId> of);
    Result<Saved> save(const EventEntry& entry, AirframeId airframe);
    Result<Saved> save(const SurfaceEntry& entry, AirframeId airframe, std::optional<SurfaceId> of);

    // All of them with their first fittings, or none.
    Outcome addUsual(AirframeId airframe, const std::vector<UsualCoupling>& chosen);
    // One place earlier (-1) or later (+1) in the rigging order; nothing happens at the ends.
    Outcome move(AirframeId airframe, CouplingId coupling, int by);
    Outcome setInUse(AirframeId airframe, CouplingId coupling, bool inUse);
    Outcome setInUse(GaugeId gauge, bool inUse);

    // How many were added; those that are there already are left alone.
    Result<int> addUsualSurfaces(AirframeId airframe);
    Outcome move(AirframeId airframe, SurfaceId surface, int by); // in the order of the control check
    Outcome setInUse(AirframeId airframe, SurfaceId surface, bool inUse);

private:
    Day today() const { return m_clock.now().localDay(); }
    Stamp stamp() const { return {m_statedBy, {}}; }
    Result<CouplingId> addWithFirstFitting(const Coupling& coupling);

    Records& m_records;
    const Clock& m_clock;
    std::optional<PersonId> m_statedBy;
};

// What a form shows of something that is in the file.
AirframeEntry entryOf(const Airframe& airframe);
CouplingEntry entryOf(const Coupling& coupling);
GaugeEntry entryOf(const Gauge& gauge, QChar decimalMark);
PersonEntry entryOf(const Person& person);
SurfaceEntry entryOf(const Surface& surface);

QString usualName(UsualCoupling which);

PlanPlace placeOf(PlanSpot spot); // not for NotGiven
PlanSpot spotOf(const std::optional<PlanPlace>& place);

// 20 leaves from 0.05 to 1.00 mm, under the first letter that no other set has.
GaugeEntry usualLeafSet(const std::vector<GaugeRow>& known, QChar decimalMark);

} // namespace rig
