#pragma once

#include "core/airframe/airframe.h"
#include "core/airframe/coupling.h"
#include "core/airframe/gauge.h"
#include "core/airframe/name_replaced.h"
#include "core/airframe/person.h"
#include "core/airframe/surface.h"
#include "core/baseline/admitted.h"
#include "core/judgement/judgement.h"
#include "core/lesson/learning_taken_back.h"
#include "core/lesson/lesson.h"
#include "core/lesson/photo.h"
#include "core/lesson/sign_off.h"
#include "core/lesson/study.h"
#include "core/rigging/decision.h"
#include "core/rigging/event.h"
#include "core/rigging/record_content.h"
#include "core/store/shape.h"

namespace rig {

// Every fact, described once. A new member is a new line here and a column in a migration; a test holds these
// against the tables of the file.

template <> struct Shape<Person>
{
    static constexpr const char* table = "person";
    static constexpr auto columns = several(column("name", &Person::name, kName),
                                            column("role", &Person::role), column("phone", &Person::phone));
};

template <> struct Shape<Airframe>
{
    static constexpr const char* table = "airframe";
    static constexpr auto columns = several(
        column("registration", &Airframe::registration, kName), column("type", &Airframe::type),
        column("serial", &Airframe::serial), column("jurisdiction", &Airframe::jurisdiction),
        column("manual_refs", &Airframe::manualReferences), column("annual_due", &Airframe::annualDue),
        column("call_name", &Airframe::callName), column("call_phone", &Airframe::callPhone),
        column("riggings_before", &Airframe::riggingsBefore, kCount),
        column("span_cm", &Airframe::spanCentimetres, kSpan), column("tail", &Airframe::tail),
        column("wing_panels", &Airframe::wingPanels, kWingPanels));
};

// A taper gauge has a resolution and no sizes, every other one sizes and no resolution.
struct GaugeSetColumns
{
    GaugeKind kind = GaugeKind::Leaves;
    std::optional<Gap> resolution;
};

template <> struct Shape<Gauge>
{
    static constexpr const char* table = "gauge";
    static constexpr auto columns = several(
        column("name", &Gauge::name, kName),
        viewed(
            &Gauge::set,
            +[](const GaugeSet& set) {
                const bool taper = set.kind() == GaugeKind::Taper;
                return GaugeSetColumns{set.kind(), taper ? std::optional{set.resolution()} : std::nullopt};
            },
            +[](const GaugeSetColumns& set) {
                return set.kind == GaugeKind::Taper ? GaugeSet::taper(set.resolution.value_or(Gap{}))
                                                    : GaugeSet{set.kind, {}};
            },
            column("kind", &GaugeSetColumns::kind),
            column("resolution_um", &GaugeSetColumns::resolution, kSize)),
        column("tolerance_um", &Gauge::tolerance), column("note", &Gauge::note),
        column("in_use", &Gauge::inUse));
    static constexpr auto children = rig::children<Gauge, Gap>(
        "gauge_size", "gauge", "size_um", kSize,
        +[](const Gauge& gauge) -> const std::vector<Gap>& { return gauge.set.sizes(); },
        +[](Gauge& gauge, std::vector<Gap> sizes) {
            if (gauge.set.kind() != GaugeKind::Taper)
                gauge.set = GaugeSet{gauge.set.kind(), std::move(sizes)};
        });
};

template <> struct Shape<GaugeCheck>
{
    static constexpr const char* table = "gauge_check";
    static constexpr auto columns = several(
        column("gauge", &GaugeCheck::gauge), column("day", &GaugeCheck::day), column("how", &GaugeCheck::how),
        column("found", &GaugeCheck::found), column("quarantine_from", &GaugeCheck::quarantineFrom),
        nested(&GaugeCheck::known, column("known_um", &KnownGapRead::width, kSize),
               nested(&KnownGapRead::read, column("known_enters_um", &GapInterval::enters),
                      column("known_refuses_um", &GapInterval::refuses))));
};

template <> struct Shape<Coupling>
{
    static constexpr const char* table = "coupling";
    static constexpr auto columns = several(
        column("airframe", &Coupling::airframe), column("name", &Coupling::name, kName),
        column("circuit_kind", &Coupling::circuit), column("circuit", &Coupling::otherCircuit),
        column("side", &Coupling::side),
        nested(&Coupling::place, column("plan_x", &PlanPlace::x), column("plan_y", &PlanPlace::y)),
        column("access", &Coupling::access), column("seen_from", &Coupling::seenFrom),
        column("mirror_from", &Coupling::mirrorFrom), column("leaf_place", &Coupling::leafPlace),
        column("layout", &Coupling::layout), column("kind", &Coupling::kind),
        nested(&Coupling::parts, column("has_gap", &CouplingParts::gap),
               column("has_pull", &CouplingParts::pull), column("has_securing", &CouplingParts::securing)),
        column("rigging_order", &Coupling::riggingOrder, kOrder), column("note", &Coupling::note),
        column("in_use", &Coupling::inUse));
};

template <> struct Shape<Fitting>
{
    static constexpr const char* table = "fitting";
    static constexpr auto columns =
        several(column("coupling", &Fitting::coupling), column("begins", &Fitting::begins),
                column("kind", &Fitting::kind), column("reason", &Fitting::reason));
};

template <> struct Shape<Event>
{
    static constexpr const char* table = "event";
    static constexpr auto columns =
        several(column("airframe", &Event::airframe), column("coupling", &Event::coupling),
                column("kind", &Event::kind), column("day", &Event::day), column("note", &Event::note),
                column("person", &Event::person), column("done", &Event::done));
};

template <> struct Shape<RiggingRecord>
{
    static constexpr const char* table = "rigging_record";
    static constexpr auto columns =
        several(column("airframe", &RiggingRecord::airframe), column("origin", &RiggingRecord::origin),
                column("leader", &RiggingRecord::leader),
                moment("begins_at", "begins_offset", &RiggingRecord::begins),
                column("celsius", &RiggingRecord::celsius, kCelsius),

                column("entered_by", &RiggingRecord::enteredBy));
};

template <> struct Shape<Check>
{
    static constexpr const char* table = "answer";
    static constexpr auto columns = several(
        column("record", &Check::record), column("coupling", &Check::coupling), column("kind", &Check::kind),
        column("answer", &Check::answer), column("turn", &Check::turn), column("person", &Check::person),
        moment("answered_at", "answered_offset", &Check::when), column("copied_by", &Check::copiedBy));
};

template <> struct Shape<Reading>
{
    static constexpr const char* table = "reading";
    static constexpr auto columns =
        several(column("coupling", &Reading::coupling), column("fitting", &Reading::fitting),
                column("record", &Reading::record),
                nested(&Reading::interval, column("enters_um", &GapInterval::enters),
                       column("refuses_um", &GapInterval::refuses)),
                column("technique", &Reading::technique), column("gauge", &Reading::gauge),
                column("state", &Reading::state), column("purpose", &Reading::purpose),
                column("turn", &Reading::turn), column("person", &Reading::person),
                column("second", &Reading::second), moment("measured_at", "measured_offset", &Reading::when),
                column("note", &Reading::note), column("corrects", &Reading::corrects),
                column("copied_by", &Reading::copiedBy));
};

// Attached to a reading. How many part-seated readings a witness was reckoned from is not kept.
template <> struct Shape<Shown>
{
    static constexpr const char* table = "shown";
    static constexpr const char* owner = "reading";
    static constexpr auto columns = several(
        column("method", &Shown::methodVersion, kCount),
        nested(&Shown::judgement, column("verdict", &Judgement::verdict),
               column("reason", &Judgement::reason), column("direction", &Judgement::direction),
               column("tail", &Judgement::tail),
               nested(&Judgement::witness, column("witness", &WitnessFinding::witness),
                      column("miss", &WitnessFinding::miss)),
               nested(&Judgement::band,
                      nested(&Band::inner, column("inner_lower", &BandEdges::lower),
                             column("inner_upper", &BandEdges::upper)),
                      nested(&Band::outer, column("outer_lower", &BandEdges::lower),
                             column("outer_upper", &BandEdges::upper)),
                      column("median", &Band::median), column("scatter", &Band::scatter),
                      column("readings", &Band::readings, kCount), column("at_cap", &Band::scatterAtCap))));
};

template <> struct Shape<Exclusion>
{
    static constexpr const char* table = "exclusion";
    static constexpr auto columns =
        several(column("reading", &Exclusion::reading), column("reason", &Exclusion::reason, kSomeText));
};

template <> struct Shape<FrozenBaseline>
{
    static constexpr const char* table = "baseline";
    static constexpr auto columns =
        several(column("fitting", &FrozenBaseline::fitting), column("first", &FrozenBaseline::first),
                column("second", &FrozenBaseline::second));
    static constexpr auto children = rig::children<FrozenBaseline, ReadingId>(
        "baseline_reading", "baseline", "reading", {},
        +[](const FrozenBaseline& baseline) -> const std::vector<ReadingId>& { return baseline.readings; },
        +[](FrozenBaseline& baseline, std::vector<ReadingId> readings) {
            baseline.readings = std::move(readings);
        });
};

template <> struct Shape<Interruption>
{
    static constexpr const char* table = "interruption";
    static constexpr auto columns =
        several(column("record", &Interruption::record), column("coupling", &Interruption::coupling),
                column("turn", &Interruption::turn), column("reason", &Interruption::reason));
};

template <> struct Shape<RecordClose>
{
    static constexpr const char* table = "closing";
    static constexpr auto columns =
        several(column("record", &RecordClose::record), column("closing", &RecordClose::closing),
                column("first", &RecordClose::first), column("second", &RecordClose::second),
                column("note", &RecordClose::note));
};

template <> struct Shape<JointPlay>
{
    static constexpr const char* table = "joint_play";
    static constexpr auto columns =
        several(column("coupling", &JointPlay::coupling), column("record", &JointPlay::record),
                column("day", &JointPlay::day),
                nested(&JointPlay::along, column("along", &PlayFound::felt),
                       column("along_um", &PlayFound::measured, kSize)),
                nested(&JointPlay::across, column("across", &PlayFound::felt),
                       column("across_um", &PlayFound::measured, kSize)),
                column("person", &JointPlay::person), column("note", &JointPlay::note));
};

template <> struct Shape<Surface>
{
    static constexpr const char* table = "surface";
    static constexpr auto columns =
        several(column("airframe", &Surface::airframe), column("name", &Surface::name, kName),
                column("kind", &Surface::kind), column("side", &Surface::side),
                column("check_order", &Surface::order, kOrder), column("sense_call", &Surface::senseCall),
                column("unit", &Surface::unit), column("measured_at_um", &Surface::measuredAt, kDistance),
                nested(&Surface::up, column("up_nominal", &ManualDeflection::nominal),
                       column("up_tolerance", &ManualDeflection::tolerance)),
                nested(&Surface::down, column("down_nominal", &ManualDeflection::nominal),
                       column("down_tolerance", &ManualDeflection::tolerance)),
                column("most_play", &Surface::mostPlay),
                column("manual_reference", &Surface::manualReference), column("in_use", &Surface::inUse));
};

template <> struct Shape<SurfaceCheck>
{
    static constexpr const char* table = "surface_answer";
    static constexpr auto columns =
        several(column("record", &SurfaceCheck::record), column("surface", &SurfaceCheck::surface),
                column("kind", &SurfaceCheck::kind), column("answer", &SurfaceCheck::answer),
                column("person", &SurfaceCheck::person), column("cockpit", &SurfaceCheck::cockpit),
                column("seen", &SurfaceCheck::seen));
};

template <> struct Shape<SurfaceMeasure>
{
    static constexpr const char* table = "surface_measure";
    static constexpr auto columns =
        several(column("record", &SurfaceMeasure::record), column("surface", &SurfaceMeasure::surface),
                column("kind", &SurfaceMeasure::kind), column("unit", &SurfaceMeasure::unit),
                column("value", &SurfaceMeasure::value),
                column("measured_at_um", &SurfaceMeasure::measuredAt, kDistance),
                column("person", &SurfaceMeasure::person));
};

template <> struct Shape<RecordTick>
{
    static constexpr const char* table = "tick";
    static constexpr auto columns =
        several(column("record", &RecordTick::record), column("kind", &RecordTick::kind),
                column("person", &RecordTick::person));
};

template <> struct Shape<SideConnected>
{
    static constexpr const char* table = "connected";
    static constexpr auto columns =
        several(column("record", &SideConnected::record), column("side", &SideConnected::side));
    static constexpr auto children = rig::children<SideConnected, PersonId>(
        "connected_person", "connected", "person", {},
        +[](const SideConnected& connected) -> const std::vector<PersonId>& { return connected.persons; },
        +[](SideConnected& connected, std::vector<PersonId> persons) {
            connected.persons = std::move(persons);
        });
};

template <> struct Shape<Question>
{
    static constexpr const char* table = "question";
    static constexpr auto columns =
        several(column("airframe", &Question::airframe), column("kind", &Question::kind),
                column("record", &Question::record), column("coupling", &Question::coupling),
                column("surface", &Question::surface), column("reading", &Question::reading),
                column("gauge", &Question::gauge), column("check_kind", &Question::check),
                column("surface_check", &Question::surfaceCheck), column("text", &Question::text));
};

template <> struct Shape<Resolution>
{
    static constexpr const char* table = "resolution";
    static constexpr auto columns =
        several(column("question", &Resolution::question), column("person", &Resolution::person),
                column("found", &Resolution::found, kSomeText), column("done", &Resolution::done, kSomeText));
};

template <> struct Shape<Photo>
{
    static constexpr const char* table = "photo";
    static constexpr auto columns =
        several(column("coupling", &Photo::coupling), column("shows", &Photo::of), column("day", &Photo::day),
                column("person", &Photo::person), column("width", &Photo::width, kPixels),
                column("height", &Photo::height, kPixels), column("note", &Photo::note));
};

template <> struct Shape<PhotoImage>
{
    static constexpr const char* table = "photo_image";
    static constexpr const char* owner = "photo";
    static constexpr auto columns = several(column("jpeg", &PhotoImage::jpeg));
};

template <> struct Shape<PhotoWithdrawn>
{
    static constexpr const char* table = "photo_withdrawn";
    static constexpr auto columns =
        several(column("photo", &PhotoWithdrawn::photo), column("person", &PhotoWithdrawn::person),
                column("reason", &PhotoWithdrawn::reason, kSomeText));
};

template <> struct Shape<LessonRound>
{
    static constexpr const char* table = "lesson_round";
    static constexpr auto columns =
        several(column("airframe", &LessonRound::airframe), column("person", &LessonRound::person),
                column("kind", &LessonRound::kind), column("coupling", &LessonRound::coupling),
                column("asks", &LessonRound::asks, kCount));
};

template <> struct Shape<SeatingAnswer>
{
    static constexpr const char* table = "seating_answer";
    static constexpr auto columns =
        several(column("round", &SeatingAnswer::round), column("coupling", &SeatingAnswer::coupling),
                column("shown", &SeatingAnswer::shown), column("gap_um", &SeatingAnswer::gap),
                column("mirror", &SeatingAnswer::mirror), column("torch", &SeatingAnswer::torch),
                column("expected", &SeatingAnswer::expected), column("said", &SeatingAnswer::said),
                column("sure", &SeatingAnswer::sure));
};

template <> struct Shape<RecallAnswer>
{
    static constexpr const char* table = "recall_answer";
    static constexpr auto columns =
        several(column("round", &RecallAnswer::round), column("recalls", &RecallAnswer::of),
                column("coupling", &RecallAnswer::coupling), column("surface", &RecallAnswer::surface),
                column("asked", &RecallAnswer::asked), column("expected", &RecallAnswer::expected),
                column("said", &RecallAnswer::said), column("sure", &RecallAnswer::sure));
};

template <> struct Shape<SupervisedRigging>
{
    static constexpr const char* table = "supervised_rigging";
    static constexpr auto columns =
        several(column("record", &SupervisedRigging::record), column("learner", &SupervisedRigging::learner),
                column("mentor", &SupervisedRigging::mentor), column("note", &SupervisedRigging::note));
};

template <> struct Shape<SignOff>
{
    static constexpr const char* table = "sign_off";
    static constexpr auto columns =
        several(column("airframe", &SignOff::airframe), column("person", &SignOff::person),
                column("signer", &SignOff::signer), column("kind", &SignOff::kind),
                column("day", &SignOff::day), column("months", &SignOff::months, kMonths),
                column("months_without_rigging", &SignOff::monthsWithoutRigging, kMonths),
                column("note", &SignOff::note),
                nested(&SignOff::askedFor, column("asked_supervised", &AskedFor::supervised, kCount),
                       column("asked_not_practised", &AskedFor::notPractised, kCount),
                       column("asked_missed", &AskedFor::missed, kCount)));
};

template <> struct Shape<CrossedStudy>
{
    static constexpr const char* table = "crossed_study";
    static constexpr auto columns =
        several(column("airframe", &CrossedStudy::airframe),
                column("repeats", &CrossedStudy::repeats, kRepeats), column("note", &CrossedStudy::note));
};

template <> struct Shape<StudyPlace>
{
    static constexpr const char* table = "study_place";
    static constexpr auto columns =
        several(column("study", &StudyPlace::study), column("turn", &StudyPlace::turn, kCount),
                column("coupling", &StudyPlace::coupling), column("person", &StudyPlace::person));
};

template <> struct Shape<PracticeReading>
{
    static constexpr const char* table = "practice_reading";
    static constexpr auto columns =
        several(column("coupling", &PracticeReading::coupling), column("person", &PracticeReading::person),
                nested(&PracticeReading::interval, column("enters_um", &GapInterval::enters),
                       column("refuses_um", &GapInterval::refuses)),
                column("technique", &PracticeReading::technique), column("gauge", &PracticeReading::gauge),
                moment("measured_at", "measured_offset", &PracticeReading::when),
                column("place", &PracticeReading::place));
};

template <> struct Shape<PracticeShared>
{
    static constexpr const char* table = "practice_shared";
    static constexpr auto columns =
        several(column("person", &PracticeShared::person), column("shared", &PracticeShared::isShared));
};

template <> struct Shape<LearningTakenBack>
{
    static constexpr const char* table = "learning_taken_back";
    static constexpr auto columns = several(column("supervised", &LearningTakenBack::supervised),
                                            column("practice", &LearningTakenBack::practice),
                                            column("person", &LearningTakenBack::person),
                                            column("reason", &LearningTakenBack::reason, kSomeText));
};

template <> struct Shape<Decision>
{
    static constexpr const char* table = "decision";
    static constexpr auto columns =
        several(column("kind", &Decision::kind), column("first", &Decision::first),
                column("second", &Decision::second), column("holds", &Decision::holds),
                column("person", &Decision::person), column("reason", &Decision::reason, kSomeText));
};

template <> struct Shape<NameReplaced>
{
    static constexpr const char* table = "name_replaced";
    static constexpr auto columns =
        several(column("replaced", &NameReplaced::replaced), column("reads", &NameReplaced::reads, kSomeText),
                column("person", &NameReplaced::person));
};

} // namespace rig
