// Airframes, couplings, people, gauges and events as tables, into and out of a real file.

#include "core/exchange/tables_in.h"
#include "core/exchange/tables_out.h"
#include "tests/support/hangar.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace rig::test {
namespace {

const std::string kPeople = "name,role\nM. Oren,owner\nT. Vale,member\n";
const std::string kGauges = "name,sizes_mm\nA,0.05-1.00 step 0.05\n";
const std::string kReadings = "airframe,coupling,date,enters_mm,refuses_mm,person,gauge\n"
                              "QZ-1,Left aileron,2026-04-12,0.45,0.50,T. Vale,A\n"
                              "QZ-1,left AILERON,2026-04-11,0.50,0.55,M. Oren,a\n";

struct Tables
{
    std::string couplings;
    std::string people = kPeople;
    std::string gauges = kGauges;
    std::string events = "airframe,coupling,date,kind\n";
    std::string jointPlays = "airframe,coupling,date,person\n";
    std::string readings = "";
};

TablesGiven given(const Tables& tables)
{
    TablesGiven given{tables.couplings, tables.people, tables.gauges, tables.events, tables.jointPlays, {}};
    if (!tables.readings.empty())
        given.readings = tables.readings;
    return given;
}

Tables tablesOf(const Records& records)
{
    return {must(writeCouplings(records)), must(writePeople(records)),     must(writeGauges(records)),
            must(writeEvents(records)),    must(writeJointPlays(records)), must(writeReadings(records))};
}

std::string withCouplings(const std::string& rows)
{
    return "airframe,coupling,side,kind,gap,fitting_begins,fitting_reason\n" + rows;
}

class WholeTables : public testing::Test
{
protected:
    Imported import(const Tables& tables)
    {
        return must(importTables(store.records(), store.clock(), given(tables)));
    }

    void expectRefused(const Tables& tables, const BadRow& row)
    {
        const Tables before = tablesOf(store.records());
        const Imported imported = import(tables);
        ASSERT_EQ(imported.bad.size(), 1U);
        EXPECT_EQ(imported.bad[0].line, row.line);
        EXPECT_EQ(static_cast<int>(imported.bad[0].problem), static_cast<int>(row.problem));
        EXPECT_EQ(imported.bad[0].text, row.text);
        EXPECT_EQ(imported.bad[0].column, row.column);
        EXPECT_EQ(static_cast<int>(imported.bad[0].table), static_cast<int>(row.table));
        EXPECT_EQ(imported.bad[0].instead, row.instead);
        EXPECT_EQ(imported.things(), 0);
        const Tables after = tablesOf(store.records());
        EXPECT_EQ(after.couplings, before.couplings);
        EXPECT_EQ(after.people, before.people);
        EXPECT_EQ(after.gauges, before.gauges);
    }

    void expectCouplingRefused(const std::string& row, RowProblem problem, const std::string& text,
                               const std::string& column, const std::string& instead = {})
    {
        SCOPED_TRACE(row);
        expectRefused({withCouplings(row)}, {2, problem, text, column, TableKind::Couplings, instead});
    }

    void expectGaugeRefused(const std::string& row, RowProblem problem, const std::string& text,
                            const std::string& column, const std::string& instead = {})
    {
        SCOPED_TRACE(row);
        Tables tables;
        tables.couplings = "airframe,coupling\n";
        tables.gauges = "name,kind,sizes_mm,resolution_mm,tolerance_mm,check_date,check_how,quarantine_from,"
                        "known_mm,known_enters_mm,known_refuses_mm\n" +
                        row;
        expectRefused(tables, {2, problem, text, column, TableKind::Gauges, instead});
    }

    void expectEventRefused(const std::string& row, RowProblem problem, const std::string& text,
                            const std::string& column, const std::string& instead = {})
    {
        SCOPED_TRACE(row);
        Tables tables;
        tables.couplings = withCouplings("QZ-1,Left aileron,,,,2026-03-01,\n");
        tables.events = "airframe,coupling,date,kind,person\n" + row;
        expectRefused(tables, {2, problem, text, column, TableKind::Events, instead});
    }

    TempStore store;
};

TEST_F(WholeTables, MakeAnEmptyFileWhole)
{
    Tables tables;
    tables.couplings = withCouplings("QZ-1,Left aileron,left,,,,\n"
                                     "QZ-1,Right aileron,right,pin,,2026-03-01,\n"
                                     "QZ-1,Right aileron,right,pin,,2026-04-02,ball replaced\n"
                                     "QZ-2,Elevator,,by-itself,no,2026-03-02,first\n");
    tables.events = "airframe,coupling,date,kind,note,person\nQZ-1,,2026-02-01,annual,,M. Oren\n"
                    "QZ-1,Left aileron,2026-02-01,Greased,thin film,\n";
    tables.readings = kReadings;
    const Imported imported = import(tables);
    ASSERT_TRUE(imported.bad.empty());
    EXPECT_EQ(imported.airframes, 2);
    EXPECT_EQ(imported.couplings, 3);
    EXPECT_EQ(imported.fittings, 4);
    EXPECT_EQ(imported.people, 2);
    EXPECT_EQ(imported.gauges, 1);
    EXPECT_EQ(imported.events, 2);
    EXPECT_EQ(imported.readings, 2);
    EXPECT_EQ(imported.records, 2);
    EXPECT_EQ(
        must(writeCouplings(store.records())),
        "airframe,coupling,circuit,side,access,seen_from,mirror_from,plan_x,plan_y,leaf_place,layout,kind,"
        "gap,to_pull,to_secure,in_use,note,fitting_begins,fitting_reason\r\n"
        "QZ-1,Left aileron,,left,,unknown,unknown,,,,unknown,sleeve,yes,yes,yes,yes,,2026-04-11,first\r\n"
        "QZ-1,Right aileron,,right,,unknown,unknown,,,,unknown,pin,yes,yes,yes,yes,,2026-03-01,first\r\n"
        "QZ-1,Right aileron,,right,,unknown,unknown,,,,unknown,pin,yes,yes,yes,yes,,2026-04-02,ball "
        "replaced\r\n"
        "QZ-2,Elevator,,none,,unknown,unknown,,,,unknown,by-itself,no,yes,no,yes,,2026-03-02,first\r\n");
}

// What the invented hangar does not hold; that one goes round in tests/file.
TEST_F(WholeTables, GoOutAndComeInToANewFileTheSame)
{
    TempStore other;
    const Hangar hangar{other.records()};
    Coupling coupling = aCoupling(hangar.airframe, "Tail \"boom\", left");
    coupling.circuit = Circuit::Other;
    coupling.otherCircuit = "other";
    coupling.kind = CouplingKind::Other;
    coupling.parts = {true, false, true};
    coupling.layout = Layout::B;
    coupling.access = " from below \r\nby the hatch; left";
    coupling.note = "Größe";
    coupling.seenFrom = AccessSide::Below;
    coupling.mirrorFrom = AccessSide::Rear;
    coupling.place = PlanPlace{-0.125, 0.7};
    coupling.inUse = false;
    const CouplingId boom = must(other.records().add(coupling));
    must(other.records().add(Fitting{{}, boom, dayOf(2026, 3, 2), FittingKind::PartChanged, {}, {}}));
    must(
        other.records().add(Fitting{{}, boom, dayOf(2026, 3, 2), FittingKind::Other, "Sleeve, \"new\"", {}}));
    Gauge block;
    block.name = "B";
    block.set = GaugeSet{GaugeKind::GoNoGo, {Gap::micrometres(455), Gap::micrometres(600)}};
    block.inUse = false;
    must(other.records().add(block));
    Gauge taper;
    taper.name = "T";
    taper.set = GaugeSet::taper(Gap::micrometres(25));
    const GaugeId taperId = must(other.records().add(taper));
    const KnownGapRead read{Gap::micrometres(500), {Gap{}, Gap::micrometres(450)}};
    must(other.records().add(
        GaugeCheck{{}, taperId, dayOf(2026, 4, 1), "block", "low", dayOf(2026, 3, 1), {}, read}));
    Event event;
    event.airframe = hangar.airframe;
    event.kind = EventKind::Derigged;
    event.day = dayOf(2026, 4, 2);
    must(other.records().add(event));
    event.stamp.by = hangar.vale;
    must(other.records().add(event));
    event.kind = EventKind::Finding;
    event.coupling = boom;
    event.person = hangar.oren;
    event.note = "worn, \"oval\"\nby 0.1 mm";
    event.done = "replaced, with a new ball";
    must(other.records().add(event));
    JointPlay play;
    play.coupling = boom;
    play.day = dayOf(2026, 4, 3);
    play.along = {PlayFelt::None, {}};
    play.across = {PlayFelt::Felt, Gap::micrometres(125)};
    play.person = hangar.oren;
    must(other.records().add(play));
    Reading reading = hangar.reading(between(450, 500), noonOf(dayOf(2026, 4, 11)));
    reading.note = "three, \"slow\"";
    must(other.records().add(reading, std::nullopt));

    const Tables out = tablesOf(other.records());
    const Imported imported = import(out);
    ASSERT_TRUE(imported.bad.empty());
    const Tables back = tablesOf(store.records());
    EXPECT_EQ(back.couplings, out.couplings);
    EXPECT_EQ(back.people, out.people);
    EXPECT_EQ(back.gauges, out.gauges);
    EXPECT_EQ(back.events, out.events);
    EXPECT_EQ(back.jointPlays, out.jointPlays);
    EXPECT_EQ(back.readings, out.readings);
}

TEST_F(WholeTables, AreLeftOutWhereTheFileSaysTheSame)
{
    Tables tables;
    tables.couplings = withCouplings("QZ-1,Left aileron,left,,,2026-03-01,\n");
    tables.gauges = "name,sizes_mm,check_date,check_found\nA,0.05; 0.10,2026-02-01,good\n"
                    "A,0.05; 0.10,2026-03-01,good\n";
    tables.events = "airframe,coupling,date,kind,person\nQZ-1,,2026-02-01,annual,M. Oren\n"
                    "QZ-1,,2026-02-01,annual,M. Oren\n";
    tables.jointPlays = "airframe,coupling,date,person,along,along_mm\nQZ-1,Left "
                        "aileron,2026-02-01,M. Oren,felt,0.1\n";
    const Imported first = import(tables);
    ASSERT_TRUE(first.bad.empty());
    EXPECT_EQ(first.thereAlready, 0);
    EXPECT_EQ(first.events, 2) << "what stands twice in a table stood twice in the file it came from";
    const Tables before = tablesOf(store.records());

    tables.couplings = withCouplings("qz-1,  LEFT aileron ,,,,2026-03-01,\n");
    tables.people = "name,role\n m. oren ,\nT. VALE,Member\n";
    const Imported again = import(tables);
    ASSERT_TRUE(again.bad.empty());
    EXPECT_EQ(again.things(), 0);
    EXPECT_EQ(again.thereAlready, 1 + 2 + 2 + 2 + 1);
    EXPECT_EQ(tablesOf(store.records()).couplings, before.couplings);
    EXPECT_EQ(tablesOf(store.records()).events, before.events);
    EXPECT_EQ(tablesOf(store.records()).people, before.people);
}

TEST_F(WholeTables, AddAFittingACheckAndAnEventToWhatIsThere)
{
    Tables tables;
    tables.couplings = withCouplings("QZ-1,Left aileron,left,,,2026-03-01,\n");
    ASSERT_TRUE(import(tables).bad.empty());
    tables.couplings = withCouplings("QZ-1,Left aileron,,,,2026-04-01,refitted\n");
    tables.gauges = "name,sizes_mm,check_date,check_found\nA,0.05-1.00 step 0.05,2026-03-01,good\n";
    tables.events = "airframe,coupling,date,kind\nQZ-1,,2026-02-01,annual\n";
    const Imported imported = import(tables);
    ASSERT_TRUE(imported.bad.empty());
    EXPECT_EQ(imported.couplings + imported.gauges, 0);
    EXPECT_EQ(imported.fittings, 1);
    EXPECT_EQ(imported.gaugeChecks, 1);
    EXPECT_EQ(imported.events, 1);
}

TEST_F(WholeTables, ChangeNothingThatIsThere)
{
    Tables tables;
    tables.couplings = withCouplings("QZ-1,Left aileron,left,,,2026-03-01,\n");
    ASSERT_TRUE(import(tables).bad.empty());
    expectCouplingRefused("QZ-1,Left Aileron,right,,,,\n", RowProblem::SaysOtherwise, "right", "side",
                          "left");
    expectCouplingRefused("QZ-1,Left aileron,left,pin,,,\n", RowProblem::SaysOtherwise, "pin", "kind",
                          "sleeve");
    expectCouplingRefused("QZ-1,Left aileron,left,,,2026-02-01,\n", RowProblem::FittingTooEarly, "2026-02-01",
                          "fitting_begins", "2026-03-01");
    Tables people = tables;
    people.people = "name,role\nT. Vale,member\nM. Oren,engineer\n";
    expectRefused(people, {3, RowProblem::SaysOtherwise, "engineer", "role", TableKind::People, "owner"});
    people.people = "name,role,phone\nM. Oren,,+44 1632 960101\n";
    expectRefused(people, {2, RowProblem::SaysMore, "+44 1632 960101", "phone", TableKind::People, ""});
    Tables gauges = tables;
    gauges.gauges = "name,sizes_mm\na,0.05; 0.10\n";
    expectRefused(gauges, {2, RowProblem::SaysOtherwise, "0.05; 0.10", "sizes_mm", TableKind::Gauges,
                           "0.05; 0.10; 0.15; 0.20; 0.25; 0.30; 0.35; 0.40; 0.45; 0.50; 0.55; 0.60; 0.65; "
                           "0.70; 0.75; 0.80; 0.85; 0.90; 0.95; 1.00"});
}

TEST_F(WholeTables, NameWhatMayStandInAColumnOfCouplings)
{
    expectCouplingRefused("QZ-1,C,lef,,,2026-03-01,\n", RowProblem::NotAWord, "lef", "side",
                          "none, left, right");
    expectCouplingRefused("QZ-1,C,,ball,,2026-03-01,\n", RowProblem::NotAWord, "ball", "kind",
                          "sleeve, pin, sleeve-and-pin, by-itself, water-ballast, other");
    expectCouplingRefused("QZ-1,C,,other,maybe,2026-03-01,\n", RowProblem::NotAWord, "maybe", "gap",
                          "yes, no");
    expectCouplingRefused("QZ-1,C,,,no,2026-03-01,\n", RowProblem::PartsDoNotFit, "no", "gap", "sleeve");
    expectCouplingRefused("QZ-1,C,,by-itself,yes,2026-03-01,\n", RowProblem::PartsDoNotFit, "yes", "gap",
                          "by-itself");
    expectCouplingRefused("QZ-1,C,,,,01/03/2026,\n", RowProblem::NotADay, "01/03/2026", "fitting_begins");
    expectCouplingRefused("QZ-1,C,,,,2036-03-01,\n", RowProblem::FutureDay, "2036-03-01", "fitting_begins");
    expectCouplingRefused("QZ-1,C,,,,,\n", RowProblem::NoFittingDay, "C", "fitting_begins");
    expectCouplingRefused(",C,,,,2026-03-01,\n", RowProblem::NoAirframe, "", "airframe");
    expectCouplingRefused("QZ-1,,,,,2026-03-01,\n", RowProblem::NoCoupling, "", "coupling");
    expectRefused({"airframe,coupling,layout,fitting_begins\nQZ-1,C,d,2026-03-01\n"},
                  {2, RowProblem::NotAWord, "d", "layout", TableKind::Couplings, "unknown, a, b, c"});
    for (const char* across : {"-1.5", "left", ""})
        expectRefused({std::string{"airframe,coupling,plan_x,plan_y,fitting_begins\nQZ-1,C,"} + across +
                       ",0.4,2026-03-01\n"},
                      {2, RowProblem::NotAPlace, across, "plan_x", TableKind::Couplings, {}});
    expectRefused({withCouplings("QZ-1,C,,,,2026-03-01,\nqz-1,c,,,,2026-03-01,\n")},
                  {3, RowProblem::FittingTwice, "2026-03-01", "fitting_begins", TableKind::Couplings, {}});
    expectRefused({"airframe,coupling,circuit\n\nQZ-1,C," + std::string(100'001, 'x') + "\n"},
                  {3, RowProblem::TooLong, std::string(100'001, 'x'), "circuit", TableKind::Couplings, {}});
}

TEST_F(WholeTables, NameWhatMayStandInAColumnOfGauges)
{
    expectGaugeRefused(",,0.05,,,,,,,,\n", RowProblem::NothingThere, "", "name");
    expectGaugeRefused("A,leaf,0.05,,,,,,,,\n", RowProblem::NotAWord, "leaf", "kind",
                       "leaves, pins, taper, go-no-go");
    expectGaugeRefused("A,,,,,,,,,,\n", RowProblem::NoSizes, "", "sizes_mm");
    expectGaugeRefused("A,pins,0.05; x,,,,,,,,\n", RowProblem::NotSizes, "x", "sizes_mm");
    expectGaugeRefused("A,,0.05; 0.05,,,,,,,,\n", RowProblem::NotSizes, "0.05; 0.05", "sizes_mm");
    expectGaugeRefused("A,,0.05,0.01,,,,,,,\n", RowProblem::ResolutionOfSizes, "0.01", "resolution_mm",
                       "leaves");
    expectGaugeRefused("A,go-no-go,0.05,,,,,,,,\n", RowProblem::NotTwoSizes, "0.05", "sizes_mm");
    expectGaugeRefused("A,taper,,,,,,,,,\n", RowProblem::NothingThere, "", "resolution_mm");
    expectGaugeRefused("A,taper,,0,,,,,,,\n", RowProblem::ZeroLength, "0", "resolution_mm");
    expectGaugeRefused("A,taper,0.05,0.05,,,,,,,\n", RowProblem::SizesOfTaper, "0.05", "sizes_mm");
    expectGaugeRefused("A,,0.05,,thin,,,,,,\n", RowProblem::NotANumber, "thin", "tolerance_mm");
    expectGaugeRefused("A,,0.05,,,,by eye,,,,\n", RowProblem::CheckWithoutDay, "by eye", "check_how");
    expectGaugeRefused("A,,0.05,,,2026-03-01,,2026-03-02,,,\n", RowProblem::DoubtAfterCheck, "2026-03-02",
                       "quarantine_from");
    expectGaugeRefused("A,,0.05,,,2036-03-01,,,,,\n", RowProblem::FutureDay, "2036-03-01", "check_date");
    expectGaugeRefused("A,,0.05,,,2026-03-01,,,,0.5,\n", RowProblem::KnownGapUnread, "", "known_mm");
    expectGaugeRefused("A,,0.05,,,2026-03-01,,,0.5,0.6,0.5\n", RowProblem::Reversed, "0.6\u20130.5",
                       "known_refuses_mm");
}

TEST_F(WholeTables, NameWhatMayStandInAColumnOfEvents)
{
    expectEventRefused("QZ-1,,2026-03-01,oiled,\n", RowProblem::NotAWord, "oiled", "kind",
                       "cleaned, greased, refitted, part-changed, annual, note, derigged, finding");
    expectEventRefused("QZ-1,,2026-03-01,,\n", RowProblem::NothingThere, "", "kind");
    expectEventRefused("QZ-1,,,note,\n", RowProblem::NoDay, "", "date");
    expectEventRefused("QZ-1,,2036-03-01,note,\n", RowProblem::FutureDay, "2036-03-01", "date");
    expectEventRefused("QZ-2,,2026-03-01,note,\n", RowProblem::UnknownAirframe, "QZ-2", "airframe");
    expectEventRefused("QZ-1,Trim,2026-03-01,note,\n", RowProblem::UnknownCoupling, "Trim", "coupling");
    expectEventRefused("QZ-1,,2026-03-01,note,Nobody\n", RowProblem::UnknownPerson, "Nobody", "person");
}

TEST_F(WholeTables, NameWhatIsWrongWithAJointPlay)
{
    Tables tables;
    tables.couplings = withCouplings("QZ-1,C,,,,2026-03-01,\n");
    const std::string header = "airframe,coupling,date,along,along_mm,across,person\n";
    tables.jointPlays = header + "QZ-1,C,2026-03-01,,,not-tried,M. Oren\n";
    expectRefused(tables, {2, RowProblem::NothingTried, "", "along", TableKind::JointPlays, {}});
    tables.jointPlays = header + "QZ-1,C,2026-03-01,none,0.1,,M. Oren\n";
    expectRefused(tables, {2, RowProblem::MeasuredUnfelt, "0.1", "along_mm", TableKind::JointPlays, "along"});
    tables.jointPlays = header + "QZ-1,Trim,2026-03-01,felt,0.1,,M. Oren\n";
    expectRefused(tables, {2, RowProblem::UnknownCoupling, "Trim", "coupling", TableKind::JointPlays, {}});
}

TEST_F(WholeTables, TellOfABadRowOnceAndNotAgainByEveryReadingThatNamesIt)
{
    Tables tables;
    tables.couplings = withCouplings("QZ-1,Left aileron,lef,,,,\n");
    tables.people = "name,role\nM. Oren,owner\nM. Oren,engineer\nT. Vale,\n";
    tables.gauges = "name,sizes_mm\nA,x\n";
    tables.events = "airframe,coupling,date,kind,person\nQZ-1,Left aileron,2026-02-01,annual,M. Oren\n";
    tables.readings = kReadings + "QZ-1,Rudder,2026-04-11,0.50,0.55,M. Oren,A\n";
    const Imported imported = import(tables);
    std::vector<std::pair<TableKind, int>> told;
    for (const BadRow& row : imported.bad)
        told.emplace_back(row.table, row.line);
    EXPECT_EQ(told, (std::vector<std::pair<TableKind, int>>{{TableKind::Couplings, 2},
                                                            {TableKind::People, 3},
                                                            {TableKind::Gauges, 2},
                                                            {TableKind::Readings, 4}}));
    EXPECT_TRUE(must(store.records().airframes()).empty());
    EXPECT_TRUE(must(store.records().persons()).empty());
}

TEST_F(WholeTables, BlameNoReadingForATableThatCouldNotBeRead)
{
    Tables tables;
    tables.couplings = "airframe;name\nQZ-1;Left aileron\n";
    tables.readings = kReadings;
    const Imported imported = import(tables);
    ASSERT_EQ(imported.bad.size(), 2U);
    EXPECT_EQ(imported.bad[0].problem, RowProblem::UnknownColumn);
    EXPECT_EQ(imported.bad[1].problem, RowProblem::MissingColumn);
}

TEST_F(WholeTables, RefuseAReadingShownToThePersonWhoTookIt)
{
    Tables tables;
    tables.couplings = withCouplings("QZ-1,Left aileron,,,,,\n");
    tables.readings = "airframe,coupling,date,enters_mm,person,second\n"
                      "QZ-1,Left aileron,2026-04-12,0.45,T. Vale,t. vale\n";
    expectRefused(tables, {2, RowProblem::SecondIsPerson, "t. vale", "second", TableKind::Readings, {}});
}

} // namespace
} // namespace rig::test

TEST_F(WholeTables, TakeAFindingOnlyWithItsNameAndBothItsSentences)
{
    Tables tables;
    tables.couplings = withCouplings("QZ-1,Left aileron,left,,,2026-03-01,\n");
    tables.events = "airframe,coupling,date,kind,note,person,done\n"
                    "QZ-1,Left aileron,2026-02-01,finding,a flat on the ball,M. Oren,replaced\n";
    const Imported whole = import(tables);
    ASSERT_TRUE(whole.bad.empty());
    EXPECT_EQ(whole.events, 1);
    tables.events = "airframe,coupling,date,kind,note,person,done\n"
                    "QZ-1,,2026-02-01,finding,,M. Oren,replaced\n"
                    "QZ-1,,2026-02-01,finding,a flat,,replaced\n"
                    "QZ-1,,2026-02-01,finding,a flat,M. Oren,\n"
                    "QZ-1,,2026-02-01,note,a flat,M. Oren,replaced\n";
    std::vector<RowProblem> problems;
    for (const BadRow& row : import(tables).bad)
        problems.push_back(row.problem);
    EXPECT_EQ(problems, (std::vector{RowProblem::NothingThere, RowProblem::NoPerson, RowProblem::NothingThere,
                                     RowProblem::DoneWithoutFinding}));
}
