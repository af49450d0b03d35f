#pragma once

#include "core/airframe/coupling.h"
#include "core/lesson/joint_state.h"

#include <optional>
#include <vector>

namespace rig {

// A ball joint cut open, as plain numbers. The figure is schematic and has units of its own: the ball has a
// radius of 10, the rod runs along y = 0 to the right, y grows downwards, the ball at home lies at 0, 0. Only
// the gap is to scale, `unitsPerMm`, from this coupling's own readings.

struct LessonPoint
{
    double x = 0;
    double y = 0;
};

using LessonOutline = std::vector<LessonPoint>;

// What is known of the coupling that is shown. The layout is drawn as its readings say where they say another
// one than was entered.
struct CutawayJoint
{
    Layout layout = Layout::Unknown;
    CouplingKind kind = CouplingKind::Sleeve; // one of the ball joints
    std::optional<double> lockedMm;           // median of its locked readings
    std::optional<double> partSeatedMm;       // median of the part-seated ones, where any were shown
};

// Where the hand has put things. A pin goes in, and a sleeve to its stop, only as far as the joint lets it.
struct CutawayPose
{
    std::optional<double> seating = 1; // 0 widest line of the ball at the nose, 1 home; nothing: no ball
    bool sleeveForward = true;         // as far forward as it goes; otherwise drawn back
    bool pinIn = true;

    bool operator==(const CutawayPose&) const = default;
};

CutawayPose poseOf(JointState state);
CutawayPose withoutBall(CutawayPose pose);

// What the gap's figure rests on.
enum class GapGround {
    Own,        // this coupling's own readings
    Between,    // on the way between its own locked and part-seated gap: schematic
    LooksOwn,   // no ball, and yet it may read as if locked
    NeverShown, // this coupling's part-seated gap was never measured
    NoReadings, // nor was its locked one
    NoReading,  // the joint is not secured: whatever a leaf says is no reading
};

enum class GapSide { Smaller, Larger, NoDifference };

struct CutawayGap
{
    GapGround ground = GapGround::NoReadings;
    std::optional<double> mm; // the figure, where there is one to tell
    double from = 0;          // x of the two edges, in units
    double to = 0;
    double y = 0; // where a leaf would go in
    bool above = true;
    bool fromHousing = false; // the leaf goes in at the socket's edge, otherwise at the tab
};

struct CutawaySpring
{
    LessonPoint from; // the end that moves
    LessonPoint to;
};

struct CutawayRing
{
    LessonPoint centre;
    double radius = 0;
};

struct CutawaySleeve
{
    double front = 0; // x of its near edge
    double back = 0;
    double stop = 0; // x of its near edge when it is at its stop
    bool atStop = true;
    bool heldByTab = false;
    double threadShowing = 0; // units of thread left bare before it
    // Springy, inside it, where its edge alone would let the tab go: it drops behind a tab that is home, and
    // rides on one that is not. Empty where the edge holds the tab.
    LessonOutline finger;
    bool fingerRides = false;
};

// As which layout a coupling is drawn, on the screen and on paper.
struct DrawnLayout
{
    Layout layout = Layout::C;
    bool isSaid = false;        // false: nobody has said how tab and sleeve stand to each other
    bool unlikeEntered = false; // the readings lie on the other side than the layout lets expect
    GapSide partSeatedSide = GapSide::Larger; // shown, or else expected of the layout

    bool operator==(const DrawnLayout&) const = default;
};

struct Cutaway
{
    JointState state = JointState::Locked;
    DrawnLayout drawn;
    bool partSeatedShown = false;
    double unitsPerMm = 1;

    std::optional<LessonPoint> ball;
    LessonOutline housing;              // with the open mouth for the ball
    std::vector<LessonOutline> pockets; // the hollow in which the plunger moves
    LessonOutline cover;                // what stands before the witness hole until the plunger is home
    std::vector<LessonOutline> plunger; // pieces of one part; the tab is the last
    CutawayRing nose;
    LessonPoint tab; // middle of the tab
    CutawaySpring spring;
    CutawayRing hole;
    double holeClear = 1;     // share of the witness hole that is clear, 1 only when the plunger is home
    double plungerBack = 0;   // units the plunger stands back from home
    double plungerTravel = 0; // at most
    double housingEnd = 0;    // x of its edge at the rod
    double rodEnd = 0;

    bool hasSleeve = true; // false: a fixed collar in its place
    CutawaySleeve sleeve;
    bool hasPin = false;
    bool pinIn = false; // really, not only wanted
    CutawayGap gap;
};

inline constexpr double kBallRadius = 10;
inline constexpr double kNoseRadius = 3;
inline constexpr double kSocketRadius = 10.5;
inline constexpr double kRodHalf = 4;
inline constexpr double kHousingHalf = 18;
inline constexpr double kSleeveOuter = 13;
inline constexpr double kSleeveBore = 9.5;
inline constexpr double kSleeveLength = 26;
inline constexpr double kSleeveWall = 4; // its back, which meets the ring on the rod
inline constexpr double kStemHalf = 2.5;
inline constexpr double kStemLength = 12; // above the ball's top

Cutaway cutawayOf(const CutawayJoint& joint, const CutawayPose& pose);

DrawnLayout drawnLayout(const CutawayJoint& joint);
// A joint of that layout with gaps of no coupling.
CutawayJoint schematicJoint(const DrawnLayout& drawn, CouplingKind kind);

} // namespace rig
