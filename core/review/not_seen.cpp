#include "core/review/not_seen.h"

namespace rig {

namespace {

std::optional<Reason> reasonFor(CheckKind notSeen)
{
    switch (notSeen) {
    case CheckKind::BallInSocket:
        return Reason::BallNotSeen;
    case CheckKind::PlungerHome:
        return Reason::PlungerNotSeen;
    case CheckKind::SleeveAtStop:
        return Reason::SleeveNotSeen;
    case CheckKind::PinThrough:
        return Reason::PinNotSeen;
    case CheckKind::Engaged:
    case CheckKind::NoStep:
    case CheckKind::LineConnected:
    case CheckKind::Connected:
        return Reason::JointNotSeen;
    case CheckKind::Pull:
    case CheckKind::Secured:
        break;
    }
    return std::nullopt;
}

} // namespace

Judgement withoutSight(Judgement judgement, std::optional<CheckKind> notSeen)
{
    const auto reason = notSeen ? reasonFor(*notSeen) : std::nullopt;
    if (!reason || judgement.verdict == Verdict::Outside || judgement.verdict == Verdict::NoBandYet)
        return judgement;
    judgement.verdict = Verdict::CannotTell;
    judgement.reason = *reason;
    judgement.direction = Direction::Neither;
    return judgement;
}

} // namespace rig
