#pragma once

#include "core/airframe/airframe.h"
#include "core/airframe/coupling.h"
#include "core/airframe/surface.h"
#include "core/judgement/judgement.h"
#include "core/lesson/lesson.h"
#include "core/lesson/photo.h"
#include "core/lesson/sign_off.h"
#include "core/rigging/decision.h"
#include "core/rigging/event.h"
#include "core/rigging/record_content.h"

#include <optional>
#include <string_view>

namespace rig {

// The short word that the file holds for each kind; released words never change. A new kind makes the
// compiler point here. Outside its range each gives the empty word, which ends the search of kindFrom().

constexpr std::string_view wordOf(GaugeKind kind)
{
    switch (kind) {
    case GaugeKind::Leaves:
        return "leaves";
    case GaugeKind::Pins:
        return "pins";
    case GaugeKind::Taper:
        return "taper";
    case GaugeKind::GoNoGo:
        return "go-no-go";
    }
    return {};
}

constexpr std::string_view wordOf(Side kind)
{
    switch (kind) {
    case Side::None:
        return "none";
    case Side::Left:
        return "left";
    case Side::Right:
        return "right";
    }
    return {};
}

constexpr std::string_view wordOf(Layout kind)
{
    switch (kind) {
    case Layout::Unknown:
        return "unknown";
    case Layout::A:
        return "a";
    case Layout::B:
        return "b";
    case Layout::C:
        return "c";
    }
    return {};
}

constexpr std::string_view wordOf(CouplingKind kind)
{
    switch (kind) {
    case CouplingKind::Sleeve:
        return "sleeve";
    case CouplingKind::Pin:
        return "pin";
    case CouplingKind::SleeveAndPin:
        return "sleeve-and-pin";
    case CouplingKind::ByItself:
        return "by-itself";
    case CouplingKind::WaterBallast:
        return "water-ballast";
    case CouplingKind::Other:
        return "other";
    }
    return {};
}

constexpr std::string_view wordOf(PlayFelt kind)
{
    switch (kind) {
    case PlayFelt::NotTried:
        return "not-tried";
    case PlayFelt::None:
        return "none";
    case PlayFelt::Felt:
        return "felt";
    }
    return {};
}

constexpr std::string_view wordOf(FittingKind kind)
{
    switch (kind) {
    case FittingKind::First:
        return "first";
    case FittingKind::Refitted:
        return "refitted";
    case FittingKind::PartChanged:
        return "part-changed";
    case FittingKind::Other:
        return "other";
    }
    return {};
}

constexpr std::string_view wordOf(EventKind kind)
{
    switch (kind) {
    case EventKind::Cleaned:
        return "cleaned";
    case EventKind::Greased:
        return "greased";
    case EventKind::Refitted:
        return "refitted";
    case EventKind::PartChanged:
        return "part-changed";
    case EventKind::Annual:
        return "annual";
    case EventKind::Note:
        return "note";
    case EventKind::Derigged:
        return "derigged";
    case EventKind::Finding:
        return "finding";
    }
    return {};
}

constexpr std::string_view wordOf(RecordOrigin kind)
{
    switch (kind) {
    case RecordOrigin::Rigging:
        return "rigging";
    case RecordOrigin::ImportedTable:
        return "imported-table";
    case RecordOrigin::Recheck:
        return "recheck";
    }
    return {};
}

constexpr std::string_view wordOf(CheckKind kind)
{
    switch (kind) {
    case CheckKind::BallInSocket:
        return "ball-in-socket";
    case CheckKind::PlungerHome:
        return "plunger-home";
    case CheckKind::SleeveAtStop:
        return "sleeve-at-stop";
    case CheckKind::PinThrough:
        return "pin-through";
    case CheckKind::Engaged:
        return "engaged";
    case CheckKind::NoStep:
        return "no-step";
    case CheckKind::LineConnected:
        return "line-connected";
    case CheckKind::Connected:
        return "connected";
    case CheckKind::Pull:
        return "pull";
    case CheckKind::Secured:
        return "secured";
    }
    return {};
}

constexpr std::string_view wordOf(Answer kind)
{
    switch (kind) {
    case Answer::Yes:
        return "yes";
    case Answer::No:
        return "no";
    case Answer::CannotSee:
        return "cannot-see";
    case Answer::Felt:
        return "felt";
    }
    return {};
}

constexpr std::string_view wordOf(Turn kind)
{
    switch (kind) {
    case Turn::First:
        return "first";
    case Turn::Second:
        return "second";
    }
    return {};
}

constexpr std::string_view wordOf(Technique kind)
{
    switch (kind) {
    case Technique::Leaf:
        return "leaf";
    case Technique::Stack:
        return "stack";
    case Technique::NoLeafEnters:
        return "no-leaf-enters";
    case Technique::ThickestLoose:
        return "thickest-loose";
    case Technique::Pin:
        return "pin";
    case Technique::Taper:
        return "taper";
    case Technique::Table:
        return "table";
    case Technique::GoNoGo:
        return "go-no-go";
    }
    return {};
}

constexpr std::string_view wordOf(SeatState kind)
{
    switch (kind) {
    case SeatState::Locked:
        return "locked";
    case SeatState::PartSeated:
    case SeatState::NotSecured: // it follows from the record and has no word of its own in the file
        return "part-seated";
    }
    return {};
}

constexpr std::string_view wordOf(Purpose kind)
{
    switch (kind) {
    case Purpose::Rigging:
        return "rigging";
    case Purpose::Baseline:
        return "baseline";
    case Purpose::Demonstration:
        return "demonstration";
    }
    return {};
}

constexpr std::string_view wordOf(InterruptionReason kind)
{
    switch (kind) {
    case InterruptionReason::Asked:
        return "asked";
    case InterruptionReason::PersonChanged:
        return "person-changed";
    case InterruptionReason::Idle:
        return "idle";
    case InterruptionReason::ProgramClosed:
        return "program-closed";
    case InterruptionReason::QuestionClosed:
        return "question-closed";
    }
    return {};
}

constexpr std::string_view wordOf(Closing kind)
{
    switch (kind) {
    case Closing::Complete:
        return "complete";
    case Closing::LeftOpen:
        return "left-open";
    case Closing::Abandoned:
        return "abandoned";
    }
    return {};
}

constexpr std::string_view wordOf(Verdict kind)
{
    switch (kind) {
    case Verdict::NoBandYet:
        return "no-band-yet";
    case Verdict::Outside:
        return "outside";
    case Verdict::CannotTell:
        return "cannot-tell";
    case Verdict::NearEdge:
        return "near-edge";
    case Verdict::Inside:
        return "inside";
    }
    return {};
}

constexpr std::string_view wordOf(Reason kind)
{
    switch (kind) {
    case Reason::None:
        return "none";
    case Reason::TooFewReadings:
        return "too-few-readings";
    case Reason::ReadingsAllOpen:
        return "readings-all-open";
    case Reason::GaugeQuarantined:
        return "gauge-quarantined";
    case Reason::GapIsNoWitness:
        return "gap-is-no-witness";
    case Reason::ReachesBeyondBand:
        return "reaches-beyond-band";
    case Reason::FactsInDoubt:
        return "facts-in-doubt";
    case Reason::BallNotSeen:
        return "ball-not-seen";
    case Reason::PlungerNotSeen:
        return "plunger-not-seen";
    case Reason::SleeveNotSeen:
        return "sleeve-not-seen";
    case Reason::PinNotSeen:
        return "pin-not-seen";
    case Reason::JointNotSeen:
        return "joint-not-seen";
    }
    return {};
}

constexpr std::string_view wordOf(Direction kind)
{
    switch (kind) {
    case Direction::Neither:
        return "neither";
    case Direction::Below:
        return "below";
    case Direction::Above:
        return "above";
    }
    return {};
}

constexpr std::string_view wordOf(Witness kind)
{
    switch (kind) {
    case Witness::NeverShown:
        return "never-shown";
    case Witness::TooRare:
        return "shown-too-rarely";
    case Witness::NotKnown:
        return "not-known";
    case Witness::Good:
        return "good";
    case Witness::Weak:
        return "weak";
    case Witness::None:
        return "none";
    }
    return {};
}

constexpr std::string_view wordOf(Circuit kind)
{
    switch (kind) {
    case Circuit::Aileron:
        return "aileron";
    case Circuit::Elevator:
        return "elevator";
    case Circuit::Rudder:
        return "rudder";
    case Circuit::Flap:
        return "flap";
    case Circuit::Airbrake:
        return "airbrake";
    case Circuit::Trim:
        return "trim";
    case Circuit::WaterDump:
        return "water-dump";
    case Circuit::Other:
        return "other";
    }
    return {};
}

constexpr std::string_view wordOf(DeflectionUnit kind)
{
    switch (kind) {
    case DeflectionUnit::Degrees:
        return "degrees";
    case DeflectionUnit::Millimetres:
        return "millimetres";
    }
    return {};
}

constexpr std::string_view wordOf(SurfaceCheckKind kind)
{
    switch (kind) {
    case SurfaceCheckKind::HeldOneWay:
        return "held-one-way";
    case SurfaceCheckKind::HeldOtherWay:
        return "held-other-way";
    case SurfaceCheckKind::Sense:
        return "sense";
    case SurfaceCheckKind::FullTravel:
        return "full-travel";
    case SurfaceCheckKind::Neutral:
        return "neutral";
    case SurfaceCheckKind::FreePlay:
        return "free-play";
    case SurfaceCheckKind::Freedom:
        return "freedom";
    case SurfaceCheckKind::LocksEvenly:
        return "locks-evenly";
    case SurfaceCheckKind::EveryNotch:
        return "every-notch";
    case SurfaceCheckKind::HoldsSetting:
        return "holds-setting";
    case SurfaceCheckKind::OpensTogether:
        return "opens-together";
    case SurfaceCheckKind::CalledOneWay:
        return "called-one-way";
    case SurfaceCheckKind::CalledOtherWay:
        return "called-other-way";
    }
    return {};
}

constexpr std::string_view wordOf(Movement kind)
{
    switch (kind) {
    case Movement::Up:
        return "up";
    case Movement::Down:
        return "down";
    case Movement::Left:
        return "left";
    case Movement::Right:
        return "right";
    case Movement::Out:
        return "out";
    case Movement::In:
        return "in";
    case Movement::Opens:
        return "opens";
    case Movement::Shuts:
        return "shuts";
    case Movement::Nothing:
        return "nothing";
    }
    return {};
}

constexpr std::string_view wordOf(MeasureKind kind)
{
    switch (kind) {
    case MeasureKind::FreePlay:
        return "free-play";
    case MeasureKind::Up:
        return "up";
    case MeasureKind::Down:
        return "down";
    }
    return {};
}

constexpr std::string_view wordOf(TickKind kind)
{
    switch (kind) {
    case TickKind::SeasonCleaned:
        return "season-cleaned";
    case TickKind::SeasonGreased:
        return "season-greased";
    case TickKind::SeasonLeaves:
        return "season-leaves";
    case TickKind::SeasonRefresher:
        return "season-refresher";
    case TickKind::ToolsOut:
        return "tools-out";
    case TickKind::HatchesOn:
        return "hatches-on";
    case TickKind::NoteRead:
        return "note-read";
    }
    return {};
}

constexpr std::string_view wordOf(QuestionKind kind)
{
    switch (kind) {
    case QuestionKind::OutsideReading:
        return "outside-reading";
    case QuestionKind::AnsweredNo:
        return "answered-no";
    case QuestionKind::CannotSee:
        return "cannot-see";
    case QuestionKind::ReadingsDisagree:
        return "readings-disagree";
    case QuestionKind::SidesSwapped:
        return "sides-swapped";
    case QuestionKind::SurfaceDoubt:
        return "surface-doubt";
    case QuestionKind::GaugeQuarantined:
        return "gauge-quarantined";
    case QuestionKind::BandInDoubt:
        return "band-in-doubt";
    case QuestionKind::ShownPartSeated:
        return "shown-part-seated";
    case QuestionKind::Asked:
        return "asked";
    }
    return {};
}

constexpr std::string_view wordOf(TailForm kind)
{
    switch (kind) {
    case TailForm::Unknown:
        return "unknown";
    case TailForm::Low:
        return "low";
    case TailForm::T:
        return "t";
    case TailForm::V:
        return "v";
    }
    return {};
}

constexpr std::string_view wordOf(AccessSide kind)
{
    switch (kind) {
    case AccessSide::Unknown:
        return "unknown";
    case AccessSide::Above:
        return "above";
    case AccessSide::Below:
        return "below";
    case AccessSide::Front:
        return "front";
    case AccessSide::Rear:
        return "rear";
    case AccessSide::Left:
        return "left";
    case AccessSide::Right:
        return "right";
    }
    return {};
}

constexpr std::string_view wordOf(PhotoOf kind)
{
    switch (kind) {
    case PhotoOf::Locked:
        return "locked";
    case PhotoOf::PartSeated:
        return "part-seated";
    case PhotoOf::Empty:
        return "empty";
    case PhotoOf::Access:
        return "access";
    }
    return {};
}

constexpr std::string_view wordOf(RoundKind kind)
{
    switch (kind) {
    case RoundKind::Seating:
        return "seating";
    case RoundKind::Recall:
        return "recall";
    }
    return {};
}

constexpr std::string_view wordOf(JointState kind)
{
    switch (kind) {
    case JointState::Locked:
        return "locked";
    case JointState::PartSeated:
        return "part-seated";
    case JointState::NotSecured:
        return "not-secured";
    case JointState::NotConnected:
        return "not-connected";
    }
    return {};
}

constexpr std::string_view wordOf(SeatingCall kind)
{
    switch (kind) {
    case SeatingCall::Locked:
        return "locked";
    case SeatingCall::NotLocked:
        return "not-locked";
    case SeatingCall::CannotTell:
        return "cannot-tell";
    }
    return {};
}

constexpr std::string_view wordOf(RecallOf kind)
{
    switch (kind) {
    case RecallOf::Call:
        return "call";
    case RecallOf::Order:
        return "order";
    case RecallOf::WhomToCall:
        return "whom-to-call";
    case RecallOf::WhenToStop:
        return "when-to-stop";
    }
    return {};
}

constexpr std::string_view wordOf(SignOffKind kind)
{
    switch (kind) {
    case SignOffKind::Signed:
        return "signed";
    case SignOffKind::Withdrawn:
        return "withdrawn";
    }
    return {};
}

constexpr std::string_view wordOf(ConflictKind kind)
{
    switch (kind) {
    case ConflictKind::Closings:
        return "closings";
    case ConflictKind::Resolutions:
        return "resolutions";
    case ConflictKind::Versions:
        return "versions";
    case ConflictKind::Corrections:
        return "corrections";
    case ConflictKind::Records:
        return "records";
    case ConflictKind::Names:
        return "names";
    }
    return {};
}

constexpr std::string_view wordOf(Holds holds)
{
    switch (holds) {
    case Holds::First:
        return "first";
    case Holds::Second:
        return "second";
    case Holds::TwoThings:
        return "two-things";
    case Holds::OneThing:
        return "one-thing";
    }
    return {};
}

template <typename Kind> constexpr std::optional<Kind> kindFrom(std::string_view text)
{
    for (int i = 0;; ++i) {
        const auto kind = static_cast<Kind>(i);
        const std::string_view word = wordOf(kind);
        if (word.empty())
            return std::nullopt;
        if (word == text)
            return kind;
    }
}

} // namespace rig
