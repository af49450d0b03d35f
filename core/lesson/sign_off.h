#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/stamp.h"
#include "core/clock.h"

#include <string>

namespace rig {

// A rigging at which somebody learned, under somebody who knows this airframe.
struct SupervisedRigging
{
    FactId id; // null until saved
    RecordId record;
    PersonId learner;
    PersonId mentor;
    std::string note;
    Stamp stamp;
};

enum class SignOffKind { Signed, Withdrawn };

// Common practice; whoever signs may choose others.
inline constexpr int kSignedForMonths = 12;
inline constexpr int kMonthsWithoutRigging = 3;

// What the person responsible for an airframe states of somebody. Of several the one saved last counts. It
// informs and grants nothing.
struct SignOff
{
    FactId id; // null until saved
    AirframeId airframe;
    PersonId person;
    PersonId signer;
    SignOffKind kind = SignOffKind::Signed;
    Day day;
    int months = kSignedForMonths;                    // from the day on; then it has expired
    int monthsWithoutRigging = kMonthsWithoutRigging; // and after so many without a rigging of this person
    std::string note;
    Stamp stamp;
};

} // namespace rig
