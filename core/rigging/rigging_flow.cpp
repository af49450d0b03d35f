#include "core/rigging/rigging_flow.h"

#include "core/airframe/saved_before.h"

#include <algorithm>
#include <set>

namespace rig {

namespace {

bool isDoubt(const std::optional<Answer>& answer)
{
    return answer && *answer != Answer::Yes;
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

void decideNext(CouplingFlow& flow, Turn turn)
{
    const auto asking = [&flow](Step step, CheckKind kind) {
        flow.next = step;
        flow.ask = kind;
    };
    if (!flow.ballInSocket || *flow.ballInSocket != Answer::Yes)
        return asking(Step::Look, CheckKind::BallInSocket);
    if (!flow.plungerHome)
        return asking(Step::Look, CheckKind::PlungerHome);
    if (!flow.sleeveAtStop)
        return asking(Step::Look, CheckKind::SleeveAtStop);
    if (turn == Turn::First && flow.readings.empty()) {
        flow.next = Step::Measure;
        return;
    }
    if (!flow.pull)
        return asking(Step::Pull, CheckKind::Pull);
    if (turn == Turn::First && !flow.secured)
        return asking(Step::Secure, CheckKind::Secured);
    flow.next = Step::Done;
}

} // namespace

bool CouplingFlow::hasDoubt() const
{
    return isDoubt(ballInSocket) || isDoubt(plungerHome) || isDoubt(sleeveAtStop) || isDoubt(pull) ||
           isDoubt(secured);
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
    std::set<ReadingId>
        earlier; // a correction of what was read before the break says nothing of what came after
    for (const Reading& reading : content.readings) {
        if (reading.coupling != coupling || reading.turn != turn)
            continue;
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

bool everDoubted(const RecordContent& content, CouplingId coupling)
{
    return std::ranges::any_of(content.checks, [coupling](const Check& check) {
        return check.coupling == coupling && check.answer != Answer::Yes;
    });
}

} // namespace rig
