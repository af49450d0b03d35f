#include "core/airframe/name_replaced.h"
#include "core/store/newest.h"
#include "core/store/tables.h"
#include "core/store/values.h"
#include "core/store/writer.h"
#include "tests/store/through_a_document.h"
#include "tests/support/hangar.h"
#include "tests/support/laptop.h"
#include "tests/support/shape_values.h"

#include <gtest/gtest.h>
#include <map>
#include <set>

using namespace rig;
using namespace rig::test;

namespace {

constexpr int kDraws = 40;

// So that what is drawn keeps the rules that hold between two columns of a table.
template <typename Fact> void mend(Fact&, DrawnCells&) {}

void mend(GaugeCheck& check, DrawnCells&)
{
    if (check.known && problemOf(check.known->read) != IntervalProblem::None)
        check.known->read.refuses.reset();
}

void mend(GapInterval& interval)
{
    if (interval.refuses && *interval.refuses <= interval.enters)
        interval.refuses = interval.enters + Gap::micrometres(1);
}

void mend(Reading& reading, DrawnCells&)
{
    mend(reading.interval);
}

void mend(PracticeReading& reading, DrawnCells&)
{
    mend(reading.interval);
}

void mend(Gauge& gauge, DrawnCells& cells)
{
    if (gauge.set.kind() == GaugeKind::Taper) {
        gauge.set = GaugeSet::taper(Gap::micrometres(static_cast<int>(cells.drawn(1, 100))));
        return;
    }
    gauge.set = GaugeSet{gauge.set.kind(), {Gap::micrometres(50), Gap::micrometres(100)}};
}

void mend(FrozenBaseline& baseline, DrawnCells& cells)
{
    for (std::uint8_t i = 1; i <= 3; ++i)
        baseline.readings.push_back({{i, static_cast<std::uint8_t>(cells.drawn(0, 255))}});
}

void mend(SideConnected& connected, DrawnCells& cells)
{
    for (std::uint8_t i = 1; i <= 3; ++i)
        connected.persons.push_back({{i, static_cast<std::uint8_t>(cells.drawn(0, 255))}});
}

template <typename Fact> Fact drawnFact(unsigned seed)
{
    DrawnCells cells{seed};
    Fact fact;
    hear(fact, cells);
    mend(fact, cells);
    EXPECT_EQ(cells.refusals(), 0);
    return fact;
}

template <typename> struct TypesOf;
template <typename... Some> struct TypesOf<std::tuple<Some...>>
{
    using Types = testing::Types<Some...>;
};

// Name, type and whether it may be empty, of each column that the shape or the file has.
using Described = std::map<std::string, std::string>;

std::string typeOf(Storage storage)
{
    switch (storage) {
    case Storage::Id:
    case Storage::Bytes:
        return "BLOB";
    case Storage::Integer:
        return "INTEGER";
    case Storage::Real:
        return "REAL";
    case Storage::Text:
    case Storage::Word:
    case Storage::Date:
        break;
    }
    return "TEXT";
}

std::string described(const ColumnInfo& column)
{
    return typeOf(column.storage) + (column.mayBeEmpty ? "" : " NOT NULL") +
           (column.refersTo ? std::string{" of "} + column.refersTo : "");
}

Described inFile(StoreFile::Connection& connection, const QString& table)
{
    Described columns;
    must(connection.each("SELECT name, type, \"notnull\" FROM pragma_table_xinfo(?)", {table}, [&](Row& row) {
        const std::string name = row.text();
        columns[name] = row.text();
        columns[name] += row.integer() != 0 ? " NOT NULL" : "";
    }));
    must(
        connection.each("SELECT \"from\", \"table\" FROM pragma_foreign_key_list(?)", {table}, [&](Row& row) {
            const std::string name = row.text();
            columns[name] += " of " + row.text();
        }));
    return columns;
}

// `own` is what the shape itself does not describe: the id of a version, and the fact that another belongs
// to.
Described byShape(const FactShape& shape)
{
    Described columns;
    for (const ColumnInfo& column : shape.columns)
        columns[column.name] = described(column);
    if (shape.hasVersions) { // the row's own id is no member of the fact
        columns["id"] = "BLOB NOT NULL";
        columns["subject"] += std::string{" of "} + shape.table;
    }
    return columns;
}

// So that what is done for every fact stands once, and not once for each.
class OnTheTableOfAFact : public testing::Test
{
protected:
    OnTheTableOfAFact()
    {
        must(connection().run("PRAGMA foreign_keys = OFF")); // what is drawn refers to nothing
    }

    StoreFile::Connection& connection() { return store.file().connection(); }

    IdBytes kept(const std::function<Result<IdBytes>(Writer&)>& add)
    {
        return must(saved(Writer{connection(), store.ids(), store.clock().now(), FactChecking::Each}, add));
    }

    void read(const FactShape& shape, const IdBytes& id, const std::function<void(CellSource&)>& take)
    {
        const QString sql =
            QString("SELECT %1 FROM %2 t WHERE t.id = ?").arg(columnsSql(shape, "t"), shape.table);
        int rows = 0;
        must(connection().each(sql, {valueOf(id)}, [&](Row& row) {
            RowCells cells{row, shape.table};
            take(cells);
            ++rows;
        }));
        EXPECT_EQ(rows, 1);
    }

    void expectTheSame(const AnyFact& kept, const AnyFact& saved, unsigned seed)
    {
        ASSERT_EQ(written(kept), written(saved)) << "seed " << seed;
    }

    void expectTheSameOutOfADocument()
    {
        const std::string out = store.folder() / "out.rigband";
        throughADocument(connection(), out);
        EXPECT_EQ(contentOf(out), contentOf(connection()));
    }

    void expectTheColumnsOfItsTable(const FactShape& shape)
    {
        EXPECT_EQ(byShape(shape), inFile(connection(), shape.table));
        if (const std::optional<ChildShape>& children = shape.children) {
            EXPECT_EQ((Described{{children->owner.name, described(children->owner)},
                                 {children->value.name, described(children->value)}}),
                      inFile(connection(), children->table));
        }
    }

    TempStore store;
};

template <typename Fact> class EveryFact : public OnTheTableOfAFact
{
protected:
    Fact keptAndRead(Fact fact)
    {
        fact.id = {};
        const IdBytes id = kept([&fact](Writer& writer) { return writer.add(fact); });
        Fact found;
        read(factShape<Fact>(), id, [&found](CellSource& cells) { hear(found, cells); });
        if (factShape<Fact>().children)
            must(readChildren(connection(), id, found));
        EXPECT_TRUE(found.id.bytes == id);
        return found;
    }
};

// The shape of each of them.
template <typename... Some> std::vector<const FactShape*> shapesOf(std::type_identity<std::tuple<Some...>>)
{
    return {&factShape<Some>()...};
}

class RowCellsTest : public testing::Test
{
protected:
    // What is wrong with a cell that stands in this column, empty when nothing is.
    std::string problemWith(const char* sql, const ColumnInfo& column)
    {
        std::string problem;
        static_cast<void>(store.file().connection().each(sql, {}, [&](Row& row) {
            RowCells cells{row, "reading"};
            if (column.storage == Storage::Integer)
                cells.takeInteger(column);
            else if (column.storage == Storage::Id)
                cells.takeId(column);
            else
                cells.takeText(column);
            problem = row.problem();
        }));
        return problem;
    }

    TempStore store;
    const ColumnInfo number{"enters_um", Storage::Integer, false, nullptr, kGapRange};
    const ColumnInfo text{"note", Storage::Text, true, nullptr, {0, 5}};
    const ColumnInfo id{"coupling", Storage::Id, false, "coupling", {}};
};

class StrangeFile : public testing::Test
{
protected:
    // A file changed by hand: the triggers are gone.
    void change(const char* sql)
    {
        StoreFile::Connection& connection = store.file().connection();
        must(connection.run("PRAGMA ignore_check_constraints = ON"));
        for (const char* table : {"reading", "person"})
            must(connection.run(QString("DROP TRIGGER IF EXISTS %1_no_update").arg(table)));
        must(connection.run(sql));
    }

    Problem readingProblem()
    {
        const auto read = store.records().readings(hangar.airframe);
        return read ? Problem{} : read.problem();
    }

    TempStore store;
    Hangar hangar{store.records()};
};

using EveryFactType = TypesOf<Facts>::Types;
TYPED_TEST_SUITE(EveryFact, EveryFactType);

} // namespace

TYPED_TEST(EveryFact, ComesBackAsItWasSaved)
{
    for (unsigned seed = 1; seed <= kDraws && !this->HasFatalFailure(); ++seed) {
        TypeParam fact = drawnFact<TypeParam>(seed);
        const TypeParam kept = this->keptAndRead(fact);
        fact.id = kept.id;
        fact.stamp.when = this->store.clock().now();
        this->expectTheSame(kept, fact, seed);
    }
}

TYPED_TEST(EveryFact, ComesBackOutOfADocumentAsItWasSaved)
{
    for (unsigned seed = 1; seed <= kDraws; ++seed) {
        TypeParam fact = drawnFact<TypeParam>(seed);
        fact.id = {};
        this->kept([&fact](Writer& writer) { return writer.add(fact); });
    }
    this->expectTheSameOutOfADocument();
}

TYPED_TEST(EveryFact, HasTheColumnsOfItsTable)
{
    this->expectTheColumnsOfItsTable(factShape<TypeParam>());
}

TEST(Shapes, OfWhatWasShownHasTheColumnsOfItsTableAndComesBack)
{
    TempStore store;
    const Hangar hangar{store.records()};
    Described shape = byShape(factShape<Shown>());
    shape[factShape<Shown>().owner] = "BLOB NOT NULL of reading";
    EXPECT_EQ(shape, inFile(store.file().connection(), "shown"));
    for (unsigned seed = 1; seed <= kDraws; ++seed) {
        const Shown shown = drawnFact<Shown>(seed);
        const ReadingId id =
            must(store.records().add(hangar.reading(between(450, 500), store.clock().now()), shown));
        ASSERT_EQ(written(*must(store.records().reading(id)).shown), written(shown)) << "seed " << seed;
    }
}

TEST(Shapes, ThereIsOneForEveryTableOfFacts)
{
    std::set<std::string> described{factShape<Shown>().table, factShape<PhotoImage>().table};
    for (const FactShape* shape : shapesOf(std::type_identity<Facts>{})) {
        EXPECT_TRUE(described.insert(shape->table).second);
        if (shape->children) {
            EXPECT_TRUE(described.insert(shape->children->table).second);
        }
    }
    std::set<std::string> tables;
    for (const FactTable& table : kFactTables)
        tables.insert(table.name);
    EXPECT_EQ(described, tables);
}

TEST(Shapes, NoTwoColumnsOfAFactHaveOneName)
{
    for (const FactShape* shape : shapesOf(std::type_identity<Facts>{})) {
        std::set<std::string> names;
        for (const ColumnInfo& column : shape->columns)
            EXPECT_TRUE(names.insert(column.name).second) << shape->table << '.' << column.name;
    }
}

// Two members of one type that changed places would come back as they were saved: here their columns are
// named.
TEST(Shapes, NameEachMemberByItsColumn)
{
    const auto id = []<typename SomeId>(SomeId, int number) {
        SomeId made;
        made.bytes[15] = static_cast<std::uint8_t>(number);
        return made;
    };
    const auto has = [](const std::string& told, std::initializer_list<const char*> lines) {
        for (const char* line : lines)
            EXPECT_NE(told.find(std::string{line} + '\n'), std::string::npos) << line << "\n" << told;
    };
    constexpr const char* kNumber = "=00000000-0000-0000-0000-00000000000";
    const auto named = [&](const std::string& told, std::initializer_list<std::pair<const char*, int>> ids) {
        for (const auto& [name, number] : ids)
            has(told, {(std::string{name} + kNumber + std::to_string(number)).c_str()});
    };
    Airframe airframe;
    airframe.registration = "a", airframe.type = "b", airframe.serial = "c", airframe.jurisdiction = "d";
    airframe.manualReferences = "e", airframe.callName = "f", airframe.callPhone = "g";
    airframe.spanCentimetres = 1500, airframe.wingPanels = 2;
    has(written(airframe), {"registration=a", "type=b", "serial=c", "jurisdiction=d", "manual_refs=e",
                            "call_name=f", "call_phone=g", "span_cm=1500", "wing_panels=2"});
    Person person;
    person.name = "a", person.role = "b", person.phone = "c";
    has(written(person), {"name=a", "role=b", "phone=c"});
    Coupling coupling;
    coupling.name = "a", coupling.otherCircuit = "b", coupling.access = "c", coupling.leafPlace = "d";
    coupling.note = "e", coupling.place = PlanPlace{0.25, 0.5};
    has(written(coupling), {"name=a", "circuit_kind=other", "circuit=b", "access=c", "leaf_place=d", "note=e",
                            "plan_x=0.25", "plan_y=0.5"});
    coupling.seenFrom = AccessSide::Above, coupling.mirrorFrom = AccessSide::Rear;
    has(written(coupling), {"seen_from=above", "mirror_from=rear"});
    SeatingAnswer answer;
    answer.expected = SeatingCall::NotLocked, answer.said = SeatingCall::CannotTell, answer.torch = true;
    has(written(answer), {"expected=not-locked", "said=cannot-tell", "torch=1", "mirror=0", "sure=0"});
    RecallAnswer recall;
    recall.asked = "a", recall.expected = "b", recall.said = "c";
    has(written(recall), {"asked=a", "expected=b", "said=c"});
    SupervisedRigging supervised;
    supervised.learner = id(PersonId{}, 1), supervised.mentor = id(PersonId{}, 2);
    named(written(supervised), {{"learner", 1}, {"mentor", 2}});
    SignOff signOff;
    signOff.person = id(PersonId{}, 1), signOff.signer = id(PersonId{}, 2);
    named(written(signOff), {{"person", 1}, {"signer", 2}});
    has(written(signOff), {"months=12", "months_without_rigging=3"});
    signOff.askedFor = AskedFor{1, 2, 4};
    has(written(signOff), {"asked_supervised=1", "asked_not_practised=2", "asked_missed=4"});
    LearningTakenBack back;
    back.practice = id(PracticeReadingId{}, 1), back.person = id(PersonId{}, 2), back.reason = "a";
    named(written(back), {{"practice", 1}, {"person", 2}});
    has(written(back), {"reason=a"});
    GaugeCheck check;
    check.how = "a", check.found = "b", check.day = dayOf(2026, 5, 1),
    check.quarantineFrom = dayOf(2026, 4, 1);
    has(written(check), {"how=a", "found=b", "day=2026-05-01", "quarantine_from=2026-04-01"});
    Reading reading;
    reading.interval = between(450, 500), reading.person = id(PersonId{}, 1),
    reading.second = id(PersonId{}, 2);
    reading.stamp.by = id(PersonId{}, 3), reading.when = {60, 3600}, reading.stamp.when = {61, 7200};
    reading.id = id(ReadingId{}, 4), reading.corrects = id(ReadingId{}, 5);
    has(written(reading), {"enters_um=450", "refuses_um=500", "measured_at=60", "measured_offset=3600",
                           "stated_at=61", "stated_offset=7200"});
    named(written(reading), {{"person", 1}, {"second", 2}, {"stated_by", 3}, {"id", 4}, {"corrects", 5}});
    RecordClose close;
    close.first = id(PersonId{}, 1), close.second = id(PersonId{}, 2);
    named(written(close), {{"first", 1}, {"second", 2}});
    FrozenBaseline baseline;
    baseline.first = id(PersonId{}, 1), baseline.second = id(PersonId{}, 2);
    named(written(baseline), {{"first", 1}, {"second", 2}});
    SurfaceCheck surfaceCheck;
    surfaceCheck.person = id(PersonId{}, 1), surfaceCheck.cockpit = id(PersonId{}, 2);
    named(written(surfaceCheck), {{"person", 1}, {"cockpit", 2}});
    Surface surface;
    surface.name = "a", surface.senseCall = "b", surface.manualReference = "c";
    surface.up = ManualDeflection{{1}, {2}}, surface.down = ManualDeflection{{3}, {4}},
    surface.mostPlay = Deflection{5};
    has(written(surface), {"name=a", "sense_call=b", "manual_reference=c", "up_nominal=1", "up_tolerance=2",
                           "down_nominal=3", "down_tolerance=4", "most_play=5"});
    Resolution resolution;
    resolution.found = "a", resolution.done = "b";
    has(written(resolution), {"found=a", "done=b"});
    Shown shown;
    shown.judgement.tail = 0.5, shown.judgement.witness.miss = 0.25;
    shown.judgement.band = Band{{1, 2}, {3, 4}, 5, 6, 7, true};
    has(written(shown), {"tail=0.5", "miss=0.25", "inner_lower=1", "inner_upper=2", "outer_lower=3",
                         "outer_upper=4", "median=5", "scatter=6", "readings=7", "at_cap=1"});
}

TEST_F(RowCellsTest, RefuseWhatIsNotOfTheTypeOfItsColumnAndNameIt)
{
    EXPECT_EQ(problemWith("SELECT 450", number), "");
    EXPECT_EQ(problemWith("SELECT '0.45'", number), "reading.enters_um: not of the type of its column");
    EXPECT_EQ(problemWith("SELECT 0.45", number), "reading.enters_um: not of the type of its column");
    EXPECT_EQ(problemWith("SELECT NULL", number), "reading.enters_um: empty");
    EXPECT_EQ(problemWith("SELECT 12", text), "reading.note: not of the type of its column");
    EXPECT_EQ(problemWith("SELECT NULL", text), "");
    EXPECT_EQ(problemWith("SELECT 'abc'", id), "reading.coupling: not of the type of its column");
    EXPECT_EQ(problemWith("SELECT x'0102'", id), "reading.coupling: an id of the wrong length");
}

TEST_F(RowCellsTest, RefuseWhatLiesOutOfTheRangeOfItsColumn)
{
    EXPECT_EQ(problemWith("SELECT 4294967746", number), "reading.enters_um: out of its range");
    EXPECT_EQ(problemWith("SELECT -1", number), "reading.enters_um: out of its range");
    EXPECT_EQ(problemWith("SELECT 10000", number), "");
    EXPECT_EQ(problemWith("SELECT 'abcde'", text), "");
    EXPECT_EQ(problemWith("SELECT 'abcdef'", text), "reading.note: out of its range");
}

// 2^32 + 450 micrometres must not become 0.45 mm.
TEST_F(StrangeFile, FigureThatNoGapHasIsNotCutToOne)
{
    must(store.records().add(hangar.reading(between(450, 500), store.clock().now()), std::nullopt));
    change("UPDATE reading SET enters_um = 4294967746, refuses_um = NULL");
    EXPECT_EQ(readingProblem().kind, ProblemKind::DamagedFile);
    EXPECT_EQ(readingProblem().detail, "reading.enters_um: out of its range");
}

TEST_F(StrangeFile, WordThatNoKindHasIsNamed)
{
    must(store.records().add(hangar.reading(between(450, 500), store.clock().now()), std::nullopt));
    change("UPDATE reading SET technique = 'guessed'");
    EXPECT_EQ(readingProblem().kind, ProblemKind::DamagedFile);
    EXPECT_NE(readingProblem().detail.find("reading.technique"), std::string::npos);
}

TEST_F(StrangeFile, HalfOfABandIsNoBand)
{
    Shown shown;
    shown.judgement.band = Band{{0.43, 0.50}, {0.41, 0.52}, 0.47, 0.016, 12, false};
    must(store.records().add(hangar.reading(between(450, 500), store.clock().now()), shown));
    must(store.file().connection().run("DROP TRIGGER shown_no_update"));
    change("UPDATE shown SET outer_upper = NULL");
    EXPECT_EQ(readingProblem().detail, "shown.outer_upper: empty");
}

TEST_F(StrangeFile, NameWithoutAnEndIsRefused)
{
    change("UPDATE person SET name = printf('%.*c', 100001, 'x')");
    const auto read = store.records().persons();
    ASSERT_FALSE(read);
    EXPECT_EQ(read.problem().detail, "person.name: out of its range");
}

TEST_F(StrangeFile, WhatNobodySeesInANameTurnsNoFigureAndStaysInTheFile)
{
    change("UPDATE person SET name = 'Oren' || char(8238) || '0.60'");
    const auto read = store.records().persons();
    ASSERT_TRUE(read);
    EXPECT_EQ(read.value().front().name, "Oren\uFFFD0.60");
}

TEST(Shapes, RefuseAFactBeforeItIsSavedAndNameTheMember)
{
    TempStore store;
    const Hangar hangar{store.records()};
    const auto refusalOf = [](const auto& added) {
        return added ? std::string{}
                     : (added.problem().kind == ProblemKind::FactRefused ? added.problem().detail : "?");
    };
    Airframe airframe = anAirframe("QX-88");
    airframe.riggingsBefore = -1;
    EXPECT_EQ(refusalOf(store.records().add(airframe)), "airframe.riggings_before: out of its range");
    Airframe turned = anAirframe("QX\u202E88");
    EXPECT_EQ(refusalOf(store.records().add(turned)), "airframe.registration: out of its range");
    Gauge gauge = aLeafSet("B");
    gauge.tolerance = Gap::micrometres(-1);
    EXPECT_EQ(refusalOf(store.records().add(gauge)), "gauge.tolerance_um: out of its range");
    gauge.tolerance.reset();
    gauge.set = GaugeSet{GaugeKind::Leaves, {Gap::micrometres(20'000)}};
    EXPECT_EQ(refusalOf(store.records().add(gauge)), "gauge.size_um: out of its range");
    Person person = aPerson(std::string(100'001, 'x'));
    EXPECT_EQ(refusalOf(store.records().add(person)), "person.name: out of its range");
    Reading reading = hangar.reading(between(450, 500), store.clock().now());
    reading.technique = static_cast<Technique>(99);
    EXPECT_EQ(refusalOf(store.records().add(reading, std::nullopt)), "reading.technique: out of its range");
    Shown shown;
    shown.judgement.tail = std::nan("");
    reading.technique = Technique::Leaf;
    EXPECT_EQ(refusalOf(store.records().add(reading, shown)), "shown.tail: out of its range");
    EXPECT_TRUE(must(store.records().readings(hangar.airframe)).empty());
    Event event;
    event.airframe = hangar.airframe;
    event.person = PersonId{{1}};
    EXPECT_NE(refusalOf(store.records().add(event)).find("no such person"), std::string::npos);
}
