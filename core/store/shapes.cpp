#include "core/store/shapes.h"

namespace rig {

// The one place where the descriptions are expanded, once for each fact.

namespace {

template <typename Fact> constexpr auto everyColumnOf()
{
    if constexpr (IsAttached<Fact>)
        return Shape<Fact>::columns;
    else
        return several(headOf<Fact>(), Shape<Fact>::columns);
}

template <typename Fact> inline constexpr auto kColumnsOf = everyColumnOf<Fact>();

template <typename Fact> FactShape shaped()
{
    FactShape shape{};
    shape.table = Shape<Fact>::table;
    kColumnsOf<Fact>.list(shape.columns, false);
    if constexpr (IsAttached<Fact>)
        shape.owner = Shape<Fact>::owner;
    else
        shape.hasVersions = kNamesVersions<decltype(Fact::id)>;
    shape.tell = [](const void* fact, CellSink& sink) {
        kColumnsOf<Fact>.tell(*static_cast<const Fact*>(fact), sink);
    };
    shape.hear = [](void* fact, CellSource& source) {
        kColumnsOf<Fact>.hear(*static_cast<Fact*>(fact), source);
    };
    if constexpr (HasChildren<Fact>) {
        shape.children = Shape<Fact>::children.shape;
        shape.tellChildren = [](const void* fact, CellSink& sink) {
            Shape<Fact>::children.tell(*static_cast<const Fact*>(fact), sink);
        };
        shape.hearChildren = [](void* fact, const EachChild& eachChild) {
            return Shape<Fact>::children.hear(*static_cast<Fact*>(fact), eachChild);
        };
    } else {
        shape.tellChildren = [](const void*, CellSink&) {};
        shape.hearChildren = [](void*, const EachChild&) { return Outcome{Done{}}; };
    }
    return shape;
}

} // namespace

template <typename Fact> const FactShape& factShape()
{
    static const FactShape shape = shaped<Fact>();
    return shape;
}

template const FactShape& factShape<Person>();
template const FactShape& factShape<Airframe>();
template const FactShape& factShape<Gauge>();
template const FactShape& factShape<GaugeCheck>();
template const FactShape& factShape<Coupling>();
template const FactShape& factShape<Fitting>();
template const FactShape& factShape<Event>();
template const FactShape& factShape<RiggingRecord>();
template const FactShape& factShape<Check>();
template const FactShape& factShape<Reading>();
template const FactShape& factShape<Shown>();
template const FactShape& factShape<Exclusion>();
template const FactShape& factShape<FrozenBaseline>();
template const FactShape& factShape<Interruption>();
template const FactShape& factShape<RecordClose>();
template const FactShape& factShape<Surface>();
template const FactShape& factShape<SurfaceCheck>();
template const FactShape& factShape<SurfaceMeasure>();
template const FactShape& factShape<RecordTick>();
template const FactShape& factShape<Question>();
template const FactShape& factShape<Resolution>();
template const FactShape& factShape<JointPlay>();
template const FactShape& factShape<SideConnected>();
template const FactShape& factShape<Photo>();
template const FactShape& factShape<PhotoImage>();
template const FactShape& factShape<PhotoWithdrawn>();
template const FactShape& factShape<LessonRound>();
template const FactShape& factShape<SeatingAnswer>();
template const FactShape& factShape<RecallAnswer>();
template const FactShape& factShape<SupervisedRigging>();
template const FactShape& factShape<SignOff>();
template const FactShape& factShape<CrossedStudy>();
template const FactShape& factShape<StudyPlace>();
template const FactShape& factShape<PracticeReading>();
template const FactShape& factShape<PracticeShared>();
template const FactShape& factShape<LearningTakenBack>();
template const FactShape& factShape<Decision>();
template const FactShape& factShape<NameReplaced>();

} // namespace rig
