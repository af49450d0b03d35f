#include "core/rigging/rigging_flow.h"

#include "core/airframe/saved_before.h"
#include "core/rigging/counts_as.h"

#include <algorithm>
#include <ranges>
#include <set>

namespace rig {

namespace {

const Interruption* lastInterruption(const RecordContent& content, CouplingId coupling, Turn turn)
{
    const Interruption* last = nullptr;
    for (const Interruption& one : content.interruptions)
        if (one.coupling == coupling && one.turn == turn && (!last || savedBefore(*last, one)))
            last = &one;
    return last;
}

// The step that a “no” was answered in: nothing is asked after it.
std::optional<Step> stoppedAt(const CouplingFlow& flow)
{
    for (const auto& [kind, answer] : flow.answers) { // in the order of doing
        if (answer != Answer::No)
            continue;
        if (isLook(kind))
            return Step::Look;
        return kind == CheckKind::Pull ? Step::Pull : Step::Secure;
    }
    return std::nullopt;
}

// The part of the look that is asked next; empty once it is done.
std::optional<CheckKind> nextLook(const CouplingFlow& flow)
{
    for (const CheckKind kind : flow.asks.look) {
        const auto answer = answerOf(flow, kind);
        // An empty socket can show a normal gap: nothing goes on before the ball was seen.
        if (!answer || (kind == CheckKind::BallInSocket && !countsAsYes(*answer)))
            return kind;
    }
    return std::nullopt;
}

void decideNext(CouplingFlow& flow, Turn turn)
{
    const auto asking = [&flow](Step step, CheckKind kind) {
        flow.next = step;
        flow.ask = kind;
    };
    const auto isOpen = [&flow, turn](CheckKind kind) {
        return flow.asks.has(kind, turn) && !flow.answers.contains(kind);
    };
    if (const auto stopped = stoppedAt(flow)) {
        flow.next = *stopped;
        return;
    }
    if (const auto look = nextLook(flow))
        return asking(Step::Look, *look);
    const auto isLocked = [](const Reading& reading) { return reading.state == SeatState::Locked; };
    if (turn == Turn::First && flow.asks.parts.gap && std::ranges::none_of(flow.readings, isLocked)) {
        flow.next = Step::Measure;
        return;
    }
    if (isOpen(CheckKind::Pull))
        return asking(Step::Pull, CheckKind::Pull);
    if (isOpen(CheckKind::Secured))
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
    return std::ranges::any_of(answers, [](const auto& one) { return !countsAsYes(one.second); });
}

bool CouplingFlow::isPartlyOfAnother(PersonId person) const
{
    return std::ranges::any_of(givenBy, [person](const auto& one) { return one.second != person; }) ||
           std::ranges::any_of(readings, [person](const Reading& one) { return one.person != person; });
}

bool CouplingFlow::isOfSeveral() const
{
    return std::ranges::any_of(givenBy,
                               [this](const auto& one) { return one.second != givenBy.begin()->second; });
}

bool CouplingFlow::mayMeasure() const
{
    return asks.parts.gap && !stoppedAt(*this) && !nextLook(*this);
}

std::optional<CheckKind> CouplingFlow::notSeen() const
{
    for (const auto& [kind, answer] : answers)
        if (answer == Answer::CannotSee)
            return kind;
    return std::nullopt;
}

std::optional<Answer> answerOf(const CouplingFlow& flow, CheckKind kind)
{
    const auto found = flow.answers.find(kind);
    return found == flow.answers.end() ? std::nullopt : std::optional{found->second};
}

bool isSeen(const CouplingFlow& flow, CheckKind kind)
{
    const auto answer = answerOf(flow, kind);
    return answer && countsAsYes(*answer);
}

CouplingFlow givenAt(const RecordContent& content, CouplingId coupling, Turn turn)
{
    CouplingFlow flow;
    const Interruption* since = lastInterruption(content, coupling, turn);
    flow.interrupted = since != nullptr;
    if (since)
        flow.since = since->id;
    for (const Check& check : content.checks) {
        if (check.coupling != coupling || check.turn != turn || (since && savedBefore(check, *since)))
            continue;
        flow.answers[check.kind] = check.answer;
        flow.givenBy[check.kind] = check.person;
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
    return flow;
}

CouplingFlow flowOf(const RecordContent& content, const Coupling& coupling, Turn turn)
{
    CouplingFlow flow = givenAt(content, coupling.id, turn);
    flow.asks = asksOf(coupling);
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
