#include "core/review/taught_joint.h"

#include "core/numbers/median.h"
#include "core/rigging/counts_as.h"

#include <limits>

namespace rig {

namespace {

std::optional<double> medianMm(const std::vector<Gap>& gaps)
{
    std::vector<double> values;
    for (const Gap gap : gaps)
        values.push_back(gap.inMillimetres());
    return values.empty() ? std::nullopt : std::optional{numbers::medianOf(values)};
}

Gap middleGap(const GapInterval& interval)
{
    const std::optional<double> mm = middleOf(interval);
    return mm ? Gap::micrometres(static_cast<std::int32_t>(*mm * 1000)) : interval.enters;
}

} // namespace

StatedLocked statedLockedOf(const KnownAirframe& known, CouplingId coupling, Day day)
{
    StatedLocked stated;
    const CouplingHistory& history = known.history(coupling);
    const FittingHistory* fitting = history.on(day);
    for (const KeptReading* kept : known.lastLocked(coupling, std::numeric_limits<std::size_t>::max(), {})) {
        const Reading& reading = kept->reading;
        if (!fitting || reading.fitting != fitting->fitting.id)
            stated.earlier.push_back(&reading);
        else if (isHeldAgainstBand(reading))
            (judgeIn(history, reading).verdict == Verdict::Outside ? stated.outside : stated.locked)
                .push_back(&reading);
    }
    return stated;
}

PracticeJoint practiceJointOf(const KnownAirframe& known, CouplingId coupling, Day day)
{
    PracticeJoint joint{coupling, {}, {}};
    for (const Reading* reading : statedLockedOf(known, coupling, day).locked)
        joint.locked.push_back(middleGap(reading->interval));
    for (const GapInterval& shown : known.history(coupling).partSeated)
        joint.partSeated.push_back(middleGap(shown));
    return joint;
}

CutawayJoint taughtJointOf(const KnownAirframe& known, const Coupling& coupling, Day day)
{
    const PracticeJoint joint = practiceJointOf(known, coupling.id, day);
    return {coupling.layout, coupling.kind, medianMm(joint.locked), medianMm(joint.partSeated)};
}

std::map<CouplingId, DrawnLayout> drawnLayoutsOf(const KnownAirframe& known, Day day)
{
    std::map<CouplingId, DrawnLayout> drawn;
    for (const Coupling& one : known.facts().couplingsInUse())
        if (isBallJoint(one.kind))
            drawn.emplace(one.id, drawnLayout(taughtJointOf(known, one, day)));
    return drawn;
}

} // namespace rig
