#pragma once

#include "core/airframe/ids.h"
#include "core/airframe/stamp.h"
#include "core/clock.h"

#include <optional>
#include <string>

namespace rig {

// A rigging at which somebody learned, under somebody who knows this airframe.
struct SupervisedRigging
{
    SupervisedId id; // null until saved
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

inline constexpr int kSupervisedWanted = 3; // riggings; common practice

// How far somebody had come in what is asked for before signing, as whoever signed had it on the screen.
struct AskedFor
{
    int supervised = 0;   // riggings under somebody who knows the airframe
    int notPractised = 0; // couplings
    int missed = 0;       // couplings

    bool isMet() const { return supervised >= kSupervisedWanted && notPractised == 0 && missed == 0; }
};

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
    int months = kSignedForMonths; // from the day on; then it has expired
    int monthsWithoutRigging =
        kMonthsWithoutRigging; // and after so many without a rigging of this person here
    std::string note;
    std::optional<AskedFor> askedFor; // empty: it was signed before that was kept
    Stamp stamp;
};

} // namespace rig
