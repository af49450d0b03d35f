#include "core/rigging/rigging_flow.h"

#include "core/airframe/saved_before.h"
#include "core/rigging/counts_as.h"

#include <algorithm>
#include <ranges>
#include <set>

namespace rig {

namespace {

bool isDoubt(const std::optional<Answer>& answer)
{
    return answer && !countsAsYes(*answer);
}

const Interruption* lastInterruption(const RecordContent& content, CouplingId coupling, Turn turn)
{
    const Interruption* last = nullptr;
    for (const Interruption& one : content.interruptions)
        if (one.coupling == coupling && one.turn == turn && (!last || savedBefore(*last, one)))
            last = &one;
    return last;
}

std::optional<Answer>& slotOf(CouplingFlow& flow, CheckKind kind)
{
    switch (kind) {
    case CheckKind::BallInSocket:
        return flow.ballInSocket;
    case CheckKind::PlungerHome:
        return flow.plungerHome;
    case CheckKind::SleeveAtStop:
        return flow.sleeveAtStop;
    case CheckKind::Pull:
        return flow.pull;
    case CheckKind::Secured:
        break;
    }
    return flow.secured;
}

// The step that a “no” was answered in: nothing is asked after it.
std::optional<Step> stoppedAt(const CouplingFlow& flow)
{
    for (const auto& look : {flow.ballInSocket, flow.plungerHome, flow.sleeveAtStop})
        if (look == Answer::No)
            return Step::Look;
    if (flow.pull == Answer::No)
        return Step::Pull;
    return flow.secured == Answer::No ? std::optional{Step::Secure} : std::nullopt;
}

void decideNext(CouplingFlow& flow, Turn turn)
{
    const auto asking = [&flow](Step step, CheckKind kind) {
        flow.next = step;
        flow.ask = kind;
    };
    if (const auto stopped = stoppedAt(flow)) {
        flow.next = *stopped;
        return;
    }
    if (!flow.ballInSocket || !countsAsYes(*flow.ballInSocket))
        return asking(Step::Look, CheckKind::BallInSocket);
    if (!flow.plungerHome)
        return asking(Step::Look, CheckKind::PlungerHome);
    if (!flow.sleeveAtStop)
        return asking(Step::Look, CheckKind::SleeveAtStop);
    const auto isLocked = [](const Reading& reading) { return reading.state == SeatState::Locked; };
    if (turn == Turn::First && std::ranges::none_of(flow.readings, isLocked)) {
        flow.next = Step::Measure;
        return;
    }
    if (!flow.pull)
        return asking(Step::Pull, CheckKind::Pull);
    if (turn == Turn::First && !flow.secured)
        return asking(Step::Secure, CheckKind::Secured);
    flow.next = Step::Done;
    flow.ask = flow.notSeen();
}

// Readings of one person at one coupling, newest first, held against the strikes of the record.
class Slips
{
public:
    explicit Slips(std::span<const Exclusion> exclusions) : m_exclusions{exclusions} {}

    // What a struck one had taken the place of was a slip too: it does not come back.
    bool take(const Reading& reading, std::vector<StruckReading>& struck)
    {
        const Exclusion* strike = strikeOf(reading, m_exclusions);
        if (strike)
            struck.push_back({reading, *strike});
        const bool isGone = strike || m_gone.contains(reading.id);
        if (isGone && reading.corrects)
            m_gone.insert(*reading.corrects);
        return isGone;
    }

private:
    std::span<const Exclusion> m_exclusions;
    std::set<ReadingId> m_gone;
};

// In time order, without the slips; those that were struck go into the flow.
std::vector<Reading> readingsAt(const RecordContent& content, CouplingId coupling, Turn turn,
                                CouplingFlow& flow)
{
    std::vector<Reading> readings;
    Slips slips{content.exclusions};
    for (const Reading& reading : content.readings | std::views::reverse)
        if (reading.coupling == coupling && reading.turn == turn && !slips.take(reading, flow.struck))
            readings.push_back(reading);
    std::ranges::reverse(readings);
    std::ranges::reverse(flow.struck);
    return readings;
}

} // namespace

bool CouplingFlow::hasDoubt() const
{
    return isDoubt(ballInSocket) || isDoubt(plungerHome) || isDoubt(sleeveAtStop) || isDoubt(pull) ||
           isDoubt(secured);
}

bool CouplingFlow::mayMeasure() const
{
    return ballInSocket && countsAsYes(*ballInSocket) && plungerHome && sleeveAtStop && !stoppedAt(*this);
}

std::optional<CheckKind> CouplingFlow::notSeen() const
{
    for (const CheckKind kind : {CheckKind::BallInSocket, CheckKind::PlungerHome, CheckKind::SleeveAtStop,
                                 CheckKind::Pull, CheckKind::Secured})
        if (answerOf(*this, kind) == Answer::CannotSee)
            return kind;
    return std::nullopt;
}

std::optional<Answer> answerOf(const CouplingFlow& flow, CheckKind kind)
{
    CouplingFlow copy = flow;
    return slotOf(copy, kind);
}

CouplingFlow flowOf(const RecordContent& content, CouplingId coupling, Turn turn)
{
    CouplingFlow flow;
    const Interruption* since = lastInterruption(content, coupling, turn);
    flow.interrupted = since != nullptr;
    for (const Check& check : content.checks) {
        if (check.coupling != coupling || check.turn != turn || (since && savedBefore(check, *since)))
            continue;
        slotOf(flow, check.kind) = check.answer;
        flow.begun = true;
    }
    // A correction of what was read before the break says nothing of what came after.
    std::set<ReadingId> earlier;
    for (const Reading& reading : readingsAt(content, coupling, turn, flow)) {
        flow.last = reading;
        if ((since && savedBefore(reading, *since)) ||
            (reading.corrects && earlier.contains(*reading.corrects))) {
            earlier.insert(reading.id);
            continue;
        }
        flow.readings.push_back(reading);
        flow.begun = true;
    }
    decideNext(flow, turn);
    return flow;
}

bool everSaidNo(const RecordContent& content, CouplingId coupling)
{
    return std::ranges::any_of(content.checks, [coupling](const Check& check) {
        return check.coupling == coupling && check.answer == Answer::No;
    });
}

} // namespace rig
