#include "core/exchange/tables_in.h"
#include "core/exchange/tables_out.h"
#include "core/rigging/time_known.h"
#include "tests/support/hangar.h"

#include <gtest/gtest.h>
#include <map>

namespace rig::test {
namespace {

constexpr const char* kTableHead =
    "airframe,coupling,date,enters_mm,refuses_mm,gauge,person,state,note,repeat\n";

class ImportedTable : public testing::Test
{
protected:
    Imported import(const std::string& rows)
    {
        return must(importReadings(store.records(), store.clock(), kTableHead + rows));
    }
    std::vector<KeptReading> readings() { return must(store.records().readings(hangar.airframe)); }
    std::vector<RiggingRecord> records() { return must(store.records().riggingRecords(hangar.airframe)); }

    void expectRefused(const std::string& rows, RowProblem problem, int line, const std::string& text)
    {
        SCOPED_TRACE(rows);
        const auto readingsBefore = readings().size();
        const auto recordsBefore = records().size();
        const Imported imported = import(rows);
        ASSERT_EQ(imported.bad.size(), 1u);
        EXPECT_EQ(imported.bad[0].problem, problem);
        EXPECT_EQ(imported.bad[0].line, line);
        EXPECT_EQ(imported.bad[0].text, text);
        EXPECT_EQ(imported.readings, 0);
        EXPECT_EQ(readings().size(), readingsBefore);
        EXPECT_EQ(records().size(), recordsBefore);
    }

    TempStore store;
    Hangar hangar{store.records()};
};

TEST_F(ImportedTable, StandsInTheFileAfterwardsAsItStoodOnPaper)
{
    const Imported imported = import("qx-17, left  AILERON ,2026-04-11,0.45,0.50,a,m. oren,,cold morning,\n"
                                     "QX-17,Right aileron,2026-04-11,0.60,,,T. Vale,part-seated,,\n");
    EXPECT_TRUE(imported.bad.empty());
    EXPECT_EQ(imported.readings, 2);
    store.reopen();
    const auto kept = readings();
    ASSERT_EQ(kept.size(), 2u);
    const Reading& locked = kept[0].reading;
    EXPECT_EQ(locked.coupling, hangar.leftAileron);
    EXPECT_EQ(locked.fitting, hangar.leftFitting);
    EXPECT_EQ(locked.interval, between(450, 500));
    EXPECT_EQ(locked.technique, Technique::Table);
    EXPECT_EQ(locked.gauge, hangar.setA);
    EXPECT_EQ(locked.person, hangar.oren);
    EXPECT_EQ(locked.state, SeatState::Locked);
    EXPECT_EQ(locked.purpose, Purpose::Rigging);
    EXPECT_EQ(locked.when, noonOf(dayOf(2026, 4, 11)));
    EXPECT_EQ(locked.note, "cold morning");
    EXPECT_FALSE(kept[0].shown);
    const Reading& shown = kept[1].reading;
    EXPECT_EQ(shown.interval, (GapInterval{Gap::micrometres(600), std::nullopt}));
    EXPECT_EQ(shown.state, SeatState::PartSeated);
    EXPECT_FALSE(shown.gauge);
    EXPECT_FALSE(shown.record);
}

TEST_F(ImportedTable, TellsARiggingOfADayThatHasOneAndLeavesItToAPerson)
{
    const RecordId here = must(store.records().add(hangar.record(noonOf(dayOf(2026, 4, 11)))));
    const Imported imported = import("QX-17,Left aileron,2026-04-11,0.45,0.50,,T. Vale,,,\n"
                                     "QX-17,Right aileron,2026-04-11,0.60,0.65,,M. Oren,,,\n"
                                     "QX-17,Right aileron,2026-04-12,0.60,0.65,,M. Oren,,,\n");
    EXPECT_EQ(imported.records, 2);
    EXPECT_EQ(imported.sameDay, 1);
    EXPECT_EQ(imported.sameDays, std::set<Day>{dayOf(2026, 4, 11)});
    const auto open = must(store.records().openConflicts());
    ASSERT_EQ(open.size(), 1u);
    EXPECT_EQ(open[0].conflict.kind, ConflictKind::Records);
    EXPECT_EQ(open[0].conflict.first, here.bytes);

    const Imported more = import("QX-17,Left aileron,2026-04-11,0.50,0.55,,T. Vale,,,\n");
    EXPECT_EQ(more.sameDay, 0) << "it belongs to the rigging that came before";
    EXPECT_EQ(must(store.records().openConflicts()).size(), 1u);

    Decision decision;
    decision.kind = ConflictKind::Records;
    decision.first.bytes = open[0].conflict.first;
    decision.second.bytes = open[0].conflict.second;
    decision.holds = Holds::OneThing;
    decision.person = hangar.oren;
    decision.reason = "typed into the table from the same sheet";
    decision.stamp.by = hangar.oren;
    must(store.records().add(decision));
    EXPECT_TRUE(must(store.records().openConflicts()).empty());
}

TEST_F(ImportedTable, IsNoConflictOnADayOfItsOwnAndNeitherAreTwoRiggingsWrittenHere)
{
    must(store.records().add(hangar.record(noonOf(dayOf(2026, 4, 12)))));
    must(store.records().add(hangar.record(noonOf(dayOf(2026, 4, 12)))));
    const Imported imported = import("QX-17,Left aileron,2026-04-11,0.45,0.50,,T. Vale,,,\n");
    EXPECT_EQ(imported.sameDay, 0);
    EXPECT_TRUE(must(store.records().openConflicts()).empty());
}

TEST_F(ImportedTable, MakesOneRiggingOfEachDayLedByTheFirstPersonNamed)
{
    const Imported imported = import("QX-17,Left aileron,2026-04-11,0.45,0.50,,T. Vale,baseline,,\n"
                                     "QX-17,Left aileron,2026-04-11,0.45,0.50,,T. Vale,,,\n"
                                     "QX-17,Right aileron,2026-04-11,0.60,0.65,,M. Oren,,,\n"
                                     "QX-17,Right aileron,2026-04-12,0.60,0.65,,M. Oren,,,\n");
    EXPECT_EQ(imported.records, 2);
    const auto riggings = records();
    ASSERT_EQ(riggings.size(), 2u);
    EXPECT_EQ(riggings[0].origin, RecordOrigin::ImportedTable);
    EXPECT_EQ(riggings[0].leader, hangar.vale);
    EXPECT_EQ(riggings[0].begins, noonOf(dayOf(2026, 4, 11)));
    EXPECT_EQ(riggings[1].leader, hangar.oren);
    const auto kept = readings();
    ASSERT_EQ(kept.size(), 4u);
    EXPECT_FALSE(kept[0].reading.record);
    EXPECT_EQ(kept[0].reading.purpose, Purpose::Baseline);
    EXPECT_EQ(kept[1].reading.record, riggings[0].id);
    EXPECT_EQ(kept[2].reading.record, riggings[0].id);
    EXPECT_EQ(kept[3].reading.record, riggings[1].id);
}

TEST_F(ImportedTable, KeepsTwoRiggingsOfADayApartWhereItTellsWhenTheyBegan)
{
    const std::string rows = "airframe,coupling,date,enters_mm,refuses_mm,person,time,rigging\n"
                             "QX-17,Left aileron,2026-04-11,0.45,0.50,T. Vale,9:55,09:40\n"
                             "QX-17,Right aileron,2026-04-11,0.60,0.65,T. Vale,,09:40\n"
                             "QX-17,Left aileron,2026-04-11,0.50,0.55,M. Oren,12:00,12:00\n"
                             "QX-17,Right aileron,2026-04-11,0.65,0.70,M. Oren,,12:00\n";
    const Imported imported = must(importReadings(store.records(), store.clock(), rows));
    EXPECT_TRUE(imported.bad.empty());
    EXPECT_EQ(imported.records, 2);
    EXPECT_EQ(imported.sameDay, 0);
    const auto riggings = records();
    ASSERT_EQ(riggings.size(), 2u);
    EXPECT_EQ(riggings[0].leader, hangar.vale);
    EXPECT_EQ(riggings[1].leader, hangar.oren);
    std::map<int, Reading> kept; // by what entered
    for (const KeptReading& one : readings())
        kept[one.reading.interval.enters.inMicrometres()] = one.reading;
    ASSERT_EQ(kept.size(), 4u);
    EXPECT_EQ(kept[450].record, riggings[0].id);
    EXPECT_EQ(kept[600].record, riggings[0].id);
    EXPECT_EQ(kept[500].record, riggings[1].id);
    EXPECT_EQ(kept[650].record, riggings[1].id);
    EXPECT_TRUE(isTimeKnown(kept[450]));
    EXPECT_FALSE(isTimeKnown(kept[600])) << "when it was read was not told";
    EXPECT_TRUE(isTimeKnown(kept[500])) << "also where it was noon";
    EXPECT_TRUE(must(store.records().openConflicts()).empty());

    const Imported more = must(importReadings(store.records(), store.clock(),
                                              "airframe,coupling,date,enters_mm,refuses_mm,person,rigging\n"
                                              "QX-17,Left aileron,2026-04-11,0.40,0.45,T. Vale,09:40\n"));
    EXPECT_EQ(more.records, 0) << "it belongs to the one that is there";
}

TEST_F(ImportedTable, LeavesARiggingWhoseTimeIsNotToldToAPersonWhereAnotherOfThatDayIs)
{
    const std::string head = "airframe,coupling,date,enters_mm,refuses_mm,person,rigging\n";
    must(importReadings(store.records(), store.clock(),
                        head + "QX-17,Left aileron,2026-04-11,0.45,0.50,T. Vale,09:40\n"));
    const Imported imported = must(importReadings(
        store.records(), store.clock(), head + "QX-17,Right aileron,2026-04-11,0.60,0.65,T. Vale,\n"));
    EXPECT_EQ(imported.records, 1);
    EXPECT_EQ(imported.sameDays, std::set<Day>{dayOf(2026, 4, 11)});
    EXPECT_EQ(must(store.records().openConflicts()).size(), 1u);
}

TEST_F(ImportedTable, RefusesATimeThatIsNone)
{
    for (const char* time : {"25:00", "9:60", "9.40", "940", "9:4", "noon", "9:40:1", "09:40:", ":40"}) {
        const Imported imported =
            must(importReadings(store.records(), store.clock(),
                                std::string{"airframe,coupling,date,enters_mm,person,time\nQX-17,Left "
                                            "aileron,2026-04-11,0.45,T. Vale,"} +
                                    time + '\n'));
        ASSERT_EQ(imported.bad.size(), 1u) << time;
        EXPECT_EQ(imported.bad[0].problem, RowProblem::NotATime);
        EXPECT_EQ(imported.bad[0].column, "time");
    }
}

TEST_F(ImportedTable, CountsARiggingOnceWhenItComesInTwoTables)
{
    EXPECT_EQ(import("QX-17,Left aileron,2026-04-11,0.45,0.50,,T. Vale,,,\n").records, 1);
    EXPECT_EQ(import("QX-17,Right aileron,2026-04-11,0.60,0.65,,T. Vale,,,\n").records, 0);
    EXPECT_EQ(records().size(), 1u);
    EXPECT_EQ(readings().size(), 2u);
}

TEST_F(ImportedTable, LeavesNothingBehindWhenSomebodyStopsIt)
{
    class StopsAtTheSecondRow : public Progress
    {
        void told(std::size_t done, std::size_t of) override
        {
            EXPECT_EQ(of, 2U);
            if (done == 1)
                stop();
        }
    } progress;
    const std::string rows = std::string{kTableHead} +
                             "QX-17,Left aileron,2026-04-11,0.45,0.50,,M. Oren,,,\n"
                             "QX-17,Right aileron,2026-04-11,0.60,0.65,,M. Oren,,,\n";
    TablesGiven given;
    given.readings = rows;
    EXPECT_FALSE(importTables(store.records(), store.clock(), given, &progress));
    EXPECT_TRUE(progress.isStopped());
    EXPECT_TRUE(readings().empty());
    EXPECT_TRUE(records().empty());
    EXPECT_EQ(must(importTables(store.records(), store.clock(), given)).readings, 2);
}

TEST_F(ImportedTable, LeavesNothingBehindWhenOneRowIsBad)
{
    expectRefused("QX-17,Left aileron,2026-04-11,0.45,0.50,,T. Vale,,,\n"
                  "QX-17,Left aileron,2026-04-12,0.55,0.50,,T. Vale,,,\n"
                  "QX-17,Left aileron,2026-04-13,0.45,0.50,,T. Vale,,,\n",
                  RowProblem::Reversed, 3, "0.55\u20130.50");
}

TEST_F(ImportedTable, RefusesWhatIsNotInTheFileOrNotYetOnTheCalendar)
{
    expectRefused("QX-42,Left aileron,2026-04-11,0.45,0.50,,T. Vale,,,\n", RowProblem::UnknownAirframe, 2,
                  "QX-42");
    expectRefused("QX-17,Rudder,2026-04-11,0.45,0.50,,T. Vale,,,\n", RowProblem::UnknownCoupling, 2,
                  "Rudder");
    expectRefused("QX-17,Left aileron,2026-04-11,0.45,0.50,,L. Marsh,,,\n", RowProblem::UnknownPerson, 2,
                  "L. Marsh");
    expectRefused("QX-17,Left aileron,2026-04-11,0.45,0.50,Z,T. Vale,,,\n", RowProblem::UnknownGauge, 2, "Z");
    expectRefused("QX-17,Left aileron,2026-05-03,0.45,0.50,,T. Vale,,,\n", RowProblem::FutureDay, 2,
                  "2026-05-03");
    must(store.records().add(aCoupling(hangar.airframe, "Trim")));
    expectRefused("QX-17,Trim,2026-04-11,0.45,0.50,,T. Vale,,,\n", RowProblem::NoFitting, 2, "Trim");
    Coupling elevator = aCoupling(hangar.airframe, "Elevator");
    elevator.kind = CouplingKind::ByItself;
    must(store.records().add(elevator));
    expectRefused("QX-17,Elevator,2026-04-11,0.45,0.50,,T. Vale,,,\n", RowProblem::NothingToMeasure, 2,
                  "Elevator");
}

TEST_F(ImportedTable, TakesTheFittingThatHeldOnTheDay)
{
    Fitting second;
    second.coupling = hangar.leftAileron;
    second.begins = dayOf(2026, 4, 10);
    second.reason = "ball replaced";
    const FittingId secondId = must(store.records().add(second));
    const Imported imported = import("QX-17,Left aileron,2026-05-02,0.45,0.50,,T. Vale,,today,\n"
                                     "QX-17,Left aileron,2026-04-09,0.45,0.50,,T. Vale,,,\n"
                                     "QX-17,Left aileron,2019-06-01,0.45,0.50,,T. Vale,,before the file,\n");
    EXPECT_TRUE(imported.bad.empty());
    std::map<Day, FittingId> fittings;
    for (const KeptReading& kept : readings())
        fittings[kept.reading.when.localDay()] = kept.reading.fitting;
    EXPECT_EQ(fittings[dayOf(2026, 5, 2)], secondId);
    EXPECT_EQ(fittings[dayOf(2026, 4, 9)], hangar.leftFitting);
    EXPECT_EQ(fittings[dayOf(2019, 6, 1)], hangar.leftFitting);
}

TEST_F(ImportedTable, IsRefusedTheSecondTime)
{
    const std::string rows = "QX-17,Left aileron,2026-04-11,0.45,0.50,,T. Vale,,,\n"
                             "QX-17,Left aileron,2026-04-11,0.45,0.50,,T. Vale,,again,2\n";
    EXPECT_EQ(import(rows).readings, 2);
    const Imported twice = import(rows);
    ASSERT_EQ(twice.bad.size(), 2u);
    EXPECT_EQ(twice.bad[0].problem, RowProblem::AlreadyInFile);
    EXPECT_EQ(twice.bad[1].problem, RowProblem::AlreadyInFile);
    EXPECT_EQ(readings().size(), 2u);
    EXPECT_EQ(records().size(), 1u);
}

TEST_F(ImportedTable, RefusesAReadingThatTheProgramKeptItselfThatDay)
{
    must(store.records().add(hangar.reading(between(450, 500), store.clock().now()), std::nullopt));
    expectRefused("QX-17,Left aileron,2026-05-02,0.45,0.50,A,M. Oren,locked,,\n", RowProblem::AlreadyInFile,
                  2, "Left aileron");
}

TEST_F(ImportedTable, DoesNotBringBackAReadingThatWasCorrectedSince)
{
    const std::string row = "QX-17,Left aileron,2026-04-11,0.45,0.50,A,M. Oren,baseline,,\n";
    EXPECT_EQ(import(row).readings, 1);
    Reading correction = readings().at(0).reading;
    correction.corrects = correction.id;
    correction.id = {};
    correction.interval = between(550, 600);
    correction.note = "written down wrongly";
    must(store.records().add(correction, std::nullopt));
    expectRefused(row, RowProblem::AlreadyInFile, 2, "Left aileron");
}

TEST_F(ImportedTable, TakesTheSameFiguresWithTwoGaugesAsTwoReadings)
{
    const std::string begin = "QX-17,Left aileron,2026-04-11,0.45,0.50,";
    EXPECT_EQ(import(begin + "A,M. Oren,locked,,\n" + begin + ",M. Oren,locked,,\n").readings, 2);
}

TEST_F(ImportedTable, RefusesTheSameReadingTwiceUnlessItIsNumbered)
{
    const std::string row = "QX-17,Left aileron,2026-04-11,0.45,0.50,,T. Vale,baseline,,";
    expectRefused(row + "\n" + row + "\n", RowProblem::TwiceInTable, 3, "Left aileron");
    expectRefused(row + "\n" + row + "3\n", RowProblem::RepeatSkips, 3, "Left aileron");
    EXPECT_EQ(import(row + "\n" + row + "2\n" + row + "3\n").readings, 3);
    EXPECT_EQ(import(row + "4\n").readings, 1);
    EXPECT_EQ(readings().size(), 4u);
}

TEST_F(ImportedTable, NamesTheBadRowsInTheOrderOfTheirLines)
{
    const Imported imported = import("QX-17,Rudder,2026-04-11,0.45,0.50,Z,Nobody,,,\n"
                                     "QX-17,Left aileron,soon,0.45,0.50,,T. Vale,,,\n"
                                     "QX-42,Left aileron,2026-04-11,0.45,0.50,,T. Vale,,,\n");
    std::vector<int> lines;
    for (const BadRow& row : imported.bad)
        lines.push_back(row.line);
    EXPECT_EQ(lines, (std::vector{2, 2, 2, 3, 4}));
}

TEST_F(ImportedTable, PassesOverWhatWasFoundNotSecuredAndCountsIt)
{
    RiggingRecord rigging = hangar.record(store.clock().now());
    Question saidNo;
    saidNo.airframe = hangar.airframe;
    saidNo.kind = QuestionKind::AnsweredNo;
    saidNo.record = must(store.records().add(rigging));
    saidNo.coupling = hangar.leftAileron;
    saidNo.check = CheckKind::SleeveAtStop;
    must(store.records().add(saidNo));
    Reading found = hangar.reading(between(450, 500), store.clock().now());
    found.record = saidNo.record;
    found.state = SeatState::PartSeated;
    must(store.records().add(found, std::nullopt));
    const std::string out = must(writeReadings(store.records()));
    EXPECT_NE(out.find(",not-secured,"), std::string::npos) << out;

    TempStore other;
    Hangar there{other.records()};
    const Imported imported = must(importReadings(other.records(), other.clock(), out));
    EXPECT_TRUE(imported.bad.empty());
    EXPECT_EQ(imported.notSecured, 1);
    EXPECT_TRUE(must(other.records().readings(there.airframe)).empty());
}

TEST_F(ImportedTable, NamesWhoStoodByWhileACouplingWasShownPartSeated)
{
    const std::string header = "airframe,coupling,date,enters_mm,refuses_mm,person,state,second\n";
    const std::string row = "QX-17,Left aileron,2026-04-11,0.80,0.85,M. Oren,part-seated,";
    const Imported unknown = must(importReadings(store.records(), store.clock(), header + row + "Nobody\n"));
    ASSERT_EQ(unknown.bad.size(), 1u);
    EXPECT_EQ(unknown.bad[0].problem, RowProblem::UnknownPerson);
    EXPECT_EQ(unknown.bad[0].column, "second");
    must(importReadings(store.records(), store.clock(), header + row + "T. Vale\n"));
    ASSERT_EQ(readings().size(), 1u);
    EXPECT_EQ(readings()[0].reading.second, hangar.vale);
    EXPECT_NE(must(writeReadings(store.records())).find("part-seated,,,T. Vale,,,,no,,\r\n"),
              std::string::npos);
}

TEST_F(ImportedTable, GoesOutAndComesBackTheSameIntoAFileWithoutReadings)
{
    import("QX-17,Left aileron,2026-04-11,0.45,0.50,A,T. Vale,baseline,\"three, \"\"slow\"\"\",\n"
           "QX-17,Left aileron,2026-04-11,0.45,0.50,A,T. Vale,baseline,,2\n"
           "QX-17,Right aileron,2026-04-12,,0.05,A,M. Oren,,,\n"
           "QX-17,Right aileron,2026-04-12,1.255,,,M. Oren,part-seated,Größe,\n");
    const std::string table = must(writeReadings(store.records()));
    EXPECT_NE(table.find("QX-17,Right aileron,2026-04-12,1.255,,,M. Oren,part-seated,Größe,,,,,,no,,\r\n"),
              std::string::npos)
        << table;

    TempStore other;
    const Hangar otherHangar{other.records()};
    const Imported imported = must(importReadings(other.records(), other.clock(), table));
    EXPECT_TRUE(imported.bad.empty());
    EXPECT_EQ(imported.readings, 4);
    EXPECT_EQ(must(writeReadings(other.records())), table);
}

TEST_F(ImportedTable, WithTimesGoesOutAndComesBackTheSame)
{
    const RecordId first = must(store.records().add(hangar.record(noonOf(dayOf(2026, 4, 11)))));
    Moment later = noonOf(dayOf(2026, 4, 11));
    later.utcSeconds += 4 * 3600 + 127;
    const RecordId second = must(store.records().add(hangar.record(later)));
    for (const auto& [record, when] : {std::pair{first, noonOf(dayOf(2026, 4, 11))}, {second, later}}) {
        Reading reading = hangar.reading(between(450, 500), when);
        reading.record = record;
        must(store.records().add(reading, std::nullopt));
    }
    const std::string table = must(writeReadings(store.records()));
    EXPECT_NE(table.find(",no,12:00:00,12:00:00\r\n"), std::string::npos) << table;
    EXPECT_NE(table.find(",2,,,,,no,16:02:07,16:02:07\r\n"), std::string::npos) << table;

    TempStore other;
    const Hangar otherHangar{other.records()};
    const Imported imported = must(importReadings(other.records(), other.clock(), table));
    EXPECT_TRUE(imported.bad.empty());
    EXPECT_EQ(imported.records, 2);
    EXPECT_TRUE(must(other.records().openConflicts()).empty());
    EXPECT_EQ(must(writeReadings(other.records())), table);
}

TEST_F(ImportedTable, CannotComeIntoTheFileItWasWrittenFrom)
{
    import("QX-17,Left aileron,2026-04-11,0.45,0.50,A,T. Vale,,,\n");
    const Imported again =
        must(importReadings(store.records(), store.clock(), must(writeReadings(store.records()))));
    ASSERT_EQ(again.bad.size(), 1u);
    EXPECT_EQ(again.bad[0].problem, RowProblem::AlreadyInFile);
}

TEST_F(ImportedTable, IsWrittenWithWhatWasCorrectedSetAside)
{
    Reading wrong = hangar.reading(between(450, 500), noonOf(dayOf(2026, 4, 11)));
    wrong.purpose = Purpose::Baseline;
    wrong.id = must(store.records().add(wrong, std::nullopt));
    Reading right = wrong;
    right.corrects = wrong.id;
    right.id = {};
    right.interval = between(550, 600);
    right.note = "written down wrongly";
    must(store.records().add(right, std::nullopt));
    const std::string table = must(writeReadings(store.records()));
    EXPECT_NE(table.find("0.45,0.50,A,M. Oren,baseline,,,,corrected,written down wrongly"), std::string::npos)
        << table;
    EXPECT_NE(table.find("0.55,0.60,A,M. Oren,baseline,,,,,,,no,12:00:00,\r\n"), std::string::npos) << table;
}

TEST_F(ImportedTable, HasTheOtherTablesBesideIt)
{
    const std::string couplings = must(writeCouplings(store.records()));
    EXPECT_NE(
        couplings.find(
            "QX-17,Left "
            "aileron,aileron,left,,unknown,unknown,,,,unknown,sleeve,yes,yes,yes,yes,,2026-03-01,first\r\n"),
        std::string::npos)
        << couplings;
    Event event;
    event.airframe = hangar.airframe;
    event.coupling = hangar.leftAileron;
    event.kind = EventKind::Greased;
    event.day = dayOf(2026, 4, 1);
    event.note = "ball, socket";
    event.stamp.by = hangar.vale;
    must(store.records().add(event));
    const std::string events = must(writeEvents(store.records()));
    EXPECT_NE(events.find("QX-17,Left aileron,2026-04-01,greased,\"ball, socket\",T. Vale,\r\n"),
              std::string::npos)
        << events;
    const std::string people = must(writePeople(store.records()));
    EXPECT_NE(people.find("T. Vale,member,\r\n"), std::string::npos) << people;
    const std::string gauges = must(writeGauges(store.records()));
    EXPECT_NE(gauges.find("A,leaves,\"0.05; 0.10; 0.15;"), std::string::npos) << gauges;
}

// What was corrected or struck goes out with its reason, and comes in as what it is: no reading.
TEST_F(ImportedTable, PassesOverWhatWasStruckAndWhatWasCorrected)
{
    const RecordId record = must(store.records().add(hangar.record(store.clock().now())));
    const auto read = [&](int entersUm, std::optional<ReadingId> corrects) {
        Reading reading = hangar.reading(between(entersUm, entersUm + 50), store.clock().now());
        reading.record = record;
        reading.corrects = corrects;
        reading.note = corrects ? "Wrong leaf" : "";
        return must(store.records().add(reading, std::nullopt));
    };
    read(500, read(450, {}));
    Exclusion strike;
    strike.reading = read(600, {});
    strike.reason = "Wrong coupling";
    strike.stamp.by = hangar.oren;
    must(store.records().add(strike));
    const std::string table = must(writeReadings(store.records()));
    EXPECT_NE(table.find("0.45,0.50,A,M. Oren,locked,,,,corrected,Wrong leaf"), std::string::npos) << table;
    EXPECT_NE(table.find("0.50,0.55,A,M. Oren,locked,,"), std::string::npos)
        << "what was wrong with the other one is no note of this one: " << table;
    EXPECT_NE(table.find("0.60,0.65,A,M. Oren,locked,,,,struck,Wrong coupling"), std::string::npos) << table;

    TempStore other;
    const Hangar there{other.records()};
    const Imported imported = must(importReadings(other.records(), other.clock(), table));
    EXPECT_TRUE(imported.bad.empty());
    EXPECT_EQ(imported.readings, 1);
    EXPECT_EQ(imported.setAside, 2);
    const auto kept = must(other.records().readings(there.airframe));
    ASSERT_EQ(kept.size(), 1U);
    EXPECT_EQ(kept.front().reading.interval, between(500, 550));
}

TEST_F(ImportedTable, RefusesAWordItDoesNotKnowInSetAside)
{
    const Imported imported = must(importReadings(store.records(), store.clock(),
                                                  "airframe,coupling,date,enters_mm,person,set_aside\n"
                                                  "QX-17,Left aileron,2026-04-11,0.45,M. Oren,perhaps\n"));
    ASSERT_EQ(imported.bad.size(), 1U);
    EXPECT_EQ(imported.bad[0].problem, RowProblem::UnknownAside);
    EXPECT_EQ(imported.readings, 0);
}

} // namespace
} // namespace rig::test
