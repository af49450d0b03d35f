#pragma once

#include "core/rigging/question.h"
#include "core/rigging/reading.h"

#include <span>

namespace rig {

// How a joint was found whose gap is read after this “no”: ball and plunger were at home where only its lock
// was not, and such a gap says nothing of where a part-seated one lies.
constexpr SeatState foundAfterNo(CheckKind saidNo)
{
    switch (saidNo) {
    case CheckKind::SleeveAtStop:
    case CheckKind::PinThrough:
    case CheckKind::Secured:
        return SeatState::NotSecured;
    case CheckKind::BallInSocket:
    case CheckKind::PlungerHome:
    case CheckKind::Engaged:
    case CheckKind::NoStep:
    case CheckKind::LineConnected:
    case CheckKind::Connected:
    case CheckKind::Pull:
        break;
    }
    return SeatState::PartSeated;
}

// Gives each reading that was taken as found at a rigging what was found: not secured where each “no” that
// was open at its joint then is about the lock alone. It follows from the record and stands in no table. All
// are of one record.
void takeHowFound(std::span<Reading> readings, std::span<const QuestionStory> questions);

} // namespace rig
