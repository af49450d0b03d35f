#pragma once

#include "core/baseline/band.h"

#include <optional>

namespace rig {

// In the order of docs/method.md: the first that holds is shown. None of them says that anything is in order.
enum class Verdict { NoBandYet, Outside, CannotTell, NearEdge, Inside };

enum class Reason {
    None,
    TooFewReadings,    // no band yet
    ReadingsAllOpen,   // no band yet: enough readings, but every one was wider than the gauge could reach
    GaugeQuarantined,  // cannot tell
    GapIsNoWitness,    // cannot tell: locked and part-seated share gaps on this coupling
    ReachesBeyondBand, // cannot tell: the interval is too coarse or open
    FactsInDoubt,      // cannot tell: its facts were changed past this program, or nobody can tell
    // cannot tell: the look was not finished, whatever the gap says
    BallNotSeen,
    PlungerNotSeen,
    SleeveNotSeen,
    PinNotSeen,
    JointNotSeen, // of one that is no ball joint
};

enum class Direction { Neither, Below, Above };

// How far the gap alone tells locked from part-seated on this coupling (docs/method.md K).
enum class Witness {
    NeverShown, // no part-seated reading
    TooRare,    // shown, all outside, and too rarely to say more
    NotKnown, // shown, but the miss cannot be worked out: no band yet, or no part-seated reading has an upper
              // bound
    Good,
    Weak,
    None, // one that was shown lay not outside, or the miss is too large
};

struct WitnessFinding
{
    Witness witness = Witness::NeverShown;
    std::optional<double> miss; // by the model; for the tables, never told as odds (docs/method.md B)
    int shown = 0;              // part-seated readings
    int above = 0;              // of them wholly above the outer band
    int below = 0;              // of them wholly below it

    int outside() const { return above + below; }
};

struct Judgement
{
    Verdict verdict = Verdict::NoBandYet;
    Reason reason = Reason::TooFewReadings;
    Direction direction = Direction::Neither; // where it lies off, for Outside, NearEdge, ReachesBeyondBand
    double tail = 1; // how often a locked reading falls at least this far out, both sides; 1 without a band
    WitnessFinding witness;
    std::optional<Band> band; // the band it was judged against
};

// The judgement a person saw at the time: evidence, never input.
struct Shown
{
    Judgement judgement;
    int methodVersion = 0;
};

} // namespace rig
