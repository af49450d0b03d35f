#pragma once

#include "core/result.h"
#include "core/store/columns.h"

#include <functional>
#include <optional>
#include <tuple>
#include <vector>

namespace rig {

struct Airframe;
struct Check;
struct Coupling;
struct CrossedStudy;
struct Decision;
struct Event;
struct Exclusion;
struct Fitting;
struct FrozenBaseline;
struct Gauge;
struct GaugeCheck;
struct Interruption;
struct JointPlay;
struct LearningTakenBack;
struct LessonRound;
struct NameReplaced;
struct Person;
struct Photo;
struct PhotoImage;
struct PhotoWithdrawn;
struct PracticeReading;
struct PracticeShared;
struct Question;
struct Reading;
struct RecallAnswer;
struct RecordClose;
struct RecordTick;
struct Resolution;
struct RiggingRecord;
struct SeatingAnswer;
struct Shown;
struct SideConnected;
struct SignOff;
struct StudyPlace;
struct SupervisedRigging;
struct Surface;
struct SurfaceCheck;
struct SurfaceMeasure;

// Every fact with an id of its own. What is attached to one of them is Shown or PhotoImage.
using Facts =
    std::tuple<Person, Airframe, Gauge, GaugeCheck, Coupling, Fitting, Event, RiggingRecord, Check, Reading,
               Exclusion, FrozenBaseline, Interruption, RecordClose, Surface, SurfaceCheck, SurfaceMeasure,
               RecordTick, Question, Resolution, JointPlay, SideConnected, Photo, PhotoWithdrawn, LessonRound,
               SeatingAnswer, RecallAnswer, SupervisedRigging, SignOff, CrossedStudy, StudyPlace,
               PracticeReading, PracticeShared, LearningTakenBack, Decision, NameReplaced>;

// What a fact has many of, in a table of its own: one column names the fact, one holds the value.
struct ChildShape
{
    const char* table;
    ColumnInfo owner;
    ColumnInfo value;
};

// Calls `take` with a source that stands at the cell of each child, one after the other.
using EachChild = std::function<Outcome(const std::function<void(CellSource&)>& take)>;

// The description of a kind of fact as everybody needs it who is no fact: core/store/shapes.h says it,
// shapes.cpp alone turns it into this, once for each kind. No SQL and no database; what is made of it works
// over `columns`, or is a CellSink or a CellSource.
struct FactShape
{
    const char* table;
    const char* owner; // of what is attached to a fact: the column that names that fact; else null
    bool hasVersions;  // the id of the struct then stands in `subject`, and the row has one of its own
    std::vector<ColumnInfo> columns; // in the order of tell() and hear()
    std::optional<ChildShape> children;

    // For tell() and the others below, which know what `fact` is.
    void (*tell)(const void* fact, CellSink& sink);
    void (*hear)(void* fact, CellSource& source);
    void (*tellChildren)(const void* fact, CellSink& sink); // each as one more cell
    Outcome (*hearChildren)(void* fact, const EachChild& eachChild);
};

// Of each of Facts, and of Shown and PhotoImage.
template <typename Fact> const FactShape& factShape();

template <typename Fact> void hear(Fact& fact, CellSource& source)
{
    factShape<Fact>().hear(&fact, source);
}

// Of a fact that has children. Untouched where they cannot be read.
template <typename Fact> Outcome hearChildren(Fact& fact, const EachChild& eachChild)
{
    return factShape<Fact>().hearChildren(&fact, eachChild);
}

// A fact of whichever kind, lent for telling.
class AnyFact
{
public:
    template <typename Fact> AnyFact(const Fact& fact) : m_shape{factShape<Fact>()}, m_fact{&fact} {}

    const FactShape& shape() const { return m_shape; }
    void tell(CellSink& sink) const { m_shape.tell(m_fact, sink); }
    void tellChildren(CellSink& sink) const { m_shape.tellChildren(m_fact, sink); }

private:
    const FactShape& m_shape;
    const void* m_fact;
};

} // namespace rig
