#pragma once

#include "app/pages/setup/setup_desk.h"
#include "core/review/baseline_sheet.h"

#include <optional>
#include <string>

namespace rig {

// Supersedes a reading, for a reason.
struct Correction
{
    ReadingId of;
    std::string reason;
};

// Facts -> what baseline day and the part-seated demonstration show; what was read -> facts, each saved at
// once. Knows no widget.
class BaselineDayPresenter
{
public:
    // Both outlive it.
    BaselineDayPresenter(Records& records, const Clock& clock) : m_desk{records, clock} {}

    Result<BaselineDayView> view(AirframeId airframe) const;
    Result<BaselineSheet> sheet(AirframeId airframe, CouplingId coupling) const;
    // `gauge` is the one in use: how far the gap tells the two states apart depends on it.
    Result<DemonstrationSheet> demonstration(AirframeId airframe, CouplingId coupling,
                                             std::optional<GaugeId> gauge) const;

    // The sheet has a fitting and is not frozen; whoever calls asked that the coupling was confirmed locked
    // by other means than the gap. `person` states it; a correction keeps who measured.
    Result<ReadingId> keep(const BaselineSheet& sheet, PersonId person, GaugeId gauge,
                           const GaugeReading& taken, const std::optional<Correction>& correction);
    Outcome exclude(ReadingId reading, PersonId by, const std::string& reason);
    // The sheet has no obstacle; the two differ.
    Outcome freeze(const BaselineSheet& sheet, PersonId first, PersonId second);

    // Part-seated on purpose, while `second`, another than `person`, stood by. The sheet has a fitting. Opens
    // the question that only the whole inspection afterwards lets somebody close.
    Result<ReadingId> keep(const DemonstrationSheet& sheet, PersonId person, GaugeId gauge,
                           const GaugeReading& taken, PersonId second,
                           const std::optional<Correction>& correction = {});

private:
    template <typename Sheet, typename Make>
    Result<Sheet> sheetOf(AirframeId airframe, CouplingId coupling, Make make) const;

    SetUpDesk m_desk;
};

} // namespace rig
