#pragma once

#include "core/review/airframe_facts.h"
#include "core/review/quarantine_effect.h"
#include "core/store/records.h"

#include <optional>
#include <string>
#include <vector>

namespace rig {

// From which day a gauge is in doubt, if nobody knows better.
struct DoubtProposal
{
    enum class Why { AfterGoodCheck, OnDayOfGoodCheck, FirstReading, NeverRead };

    Day from{};
    Why why = Why::NeverRead;
    std::optional<Day> goodCheck;
    int readings = 0; // taken with it from that day on
    int airframes = 0;
};

struct DoubtedCoupling
{
    std::string name;
    CouplingInDoubt effect;
    bool hasManyFittings = false;
};

struct DoubtedAirframe
{
    std::string registration;
    int marked = 0;
    std::vector<DoubtedCoupling> couplings;
};

struct DoubtQuestion
{
    std::string registration;
    QuestionKind kind = QuestionKind::GaugeQuarantined;
    std::string place; // name of the gauge or the coupling
};

// What saving a check that doubts a gauge will do.
struct DoubtPreview
{
    std::vector<DoubtedAirframe> airframes; // with readings that come in doubt
    std::vector<DoubtQuestion> questions;   // that it opens
    bool isOpenAlready = false;             // there is something to ask, and all of it is open
    std::optional<Day> goodCheckPassed;     // the last good check, when the doubt goes back beyond it

    int marked() const;
};

// The facts of all airframes, read once while the check of a gauge is filled in.
class QuarantineOutlook
{
public:
    static Result<QuarantineOutlook> of(const Records& records, GaugeId gauge);

    // `checked` is the day of the check.
    DoubtProposal proposal(Day checked) const;
    DoubtPreview preview(Day checked, Day from) const;
    // Asked by a check that is not in the file yet: of each airframe with readings in doubt, and of each
    // coupling of which a verdict changes with the band.
    std::vector<Question> questions(const GaugeCheck& check) const;

private:
    std::optional<Day> lastGoodCheck(Day upTo) const;

    GaugeId m_gauge;
    std::vector<AirframeFacts> m_airframes;
    std::vector<GaugeCheck> m_checks; // of this gauge
};

} // namespace rig
