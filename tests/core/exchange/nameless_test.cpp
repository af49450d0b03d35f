#include "core/exchange/nameless.h"
#include "core/exchange/tables_out.h"
#include "tests/support/hangar.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <utility>

using namespace rig;
using namespace rig::test;

namespace {

constexpr const char* kNames[] = {"Oren", "Vale", "QX-17", "Set A"};

TEST(Nameless, GivesLettersAndNumbersInTheOrderOfFirstAppearanceOverAllTables)
{
    Nameless without;
    EXPECT_EQ(without.table("airframe,coupling,date,gauge,person,note,second\r\n"
                            "QX-17,Left aileron,2026-05-02,Set A,T. Vale,with Oren,\r\n"
                            "QX-18,Left aileron,2026-05-03,,M. Oren,,T. Vale\r\n"),
              "airframe,coupling,date,gauge,person,second\r\n"
              "1,Left aileron,2026-05-02,1,A,\r\n"
              "2,Left aileron,2026-05-03,,B,A\r\n");
    EXPECT_EQ(without.table("name,role,phone\r\nM. Oren,engineer,555\r\nT. Vale,,\r\nU. Kest,,\r\n"),
              "name\r\nA\r\nB\r\nC\r\n")
        << "not in the order in which they were typed in";
    EXPECT_EQ(without.table("name,kind,sizes_mm,note\r\nSet B,leaves,0.05,\r\nSet A,leaves,0.10,\r\n"),
              "name,kind,sizes_mm\r\n1,leaves,0.10\r\n2,leaves,0.05\r\n");
}

TEST(Nameless, GoesOnAfterTheLastLetter)
{
    std::string people = "name,role,phone\r\n";
    for (int i = 0; i < 28; ++i)
        people += "P" + std::to_string(i) + ",,\r\n";
    const std::string letters = Nameless{}.table(people);
    EXPECT_TRUE(letters.ends_with("\r\nY\r\nZ\r\nAA\r\nAB\r\n")) << letters;
}

TEST(Nameless, KeepsAKindAndLeavesOutWordsThatStandInItsPlace)
{
    EXPECT_EQ(Nameless{}.table("airframe,coupling,circuit,fitting_begins,fitting_reason\r\n"
                               "QX-17,a,aileron,2026-03-01,first\r\n"
                               "QX-17,b,as Oren has it,2026-03-01,Oren took it apart\r\n"),
              "airframe,coupling,circuit,fitting_begins,fitting_reason\r\n"
              "1,a,aileron,2026-03-01,first\r\n"
              "1,b,other,2026-03-01,other\r\n");
}

TEST(Nameless, LeavesOutAColumnThatNobodyThoughtAbout)
{
    EXPECT_EQ(Nameless{}.table("date,met_with\r\n2026-05-02,T. Vale\r\n"), "date\r\n2026-05-02\r\n");
}

struct Scene
{
    Scene()
    {
        takeTwelve(store, hangar);
        const Moment now = store.clock().now();
        RiggingRecord rigging = hangar.record(now);
        const RecordId record = must(store.records().add(rigging));
        add(between(450, 500), record);
        Reading outside = add(between(900, 950), record);
        outside.state = SeatState::PartSeated;
        outside.corrects = std::exchange(outside.id, {});
        outside.note = "Oren saw it";
        must(store.records().add(outside, std::nullopt));
        Check look;
        look.record = record;
        look.coupling = hangar.leftAileron;
        look.person = hangar.vale;
        look.answer = Answer::No;
        look.when = now;
        must(store.records().add(look));
        Event finding;
        finding.airframe = hangar.airframe;
        finding.day = now.localDay();
        finding.kind = EventKind::Finding;
        finding.note = "Vale bent QX-17";
        finding.done = "Oren called";
        finding.person = hangar.vale;
        must(store.records().add(finding));
    }

    Reading add(GapInterval interval, RecordId record)
    {
        Reading reading = hangar.reading(interval, store.clock().now());
        reading.purpose = Purpose::Rigging;
        reading.record = record;
        reading.id = must(store.records().add(reading, std::nullopt));
        return reading;
    }

    TempStore store;
    Hangar hangar{store.records()};
};

TEST(Nameless, HoldsNoNameInAnyTableOfAFile)
{
    Scene scene;
    const Records& records = scene.store.records();
    Nameless without;
    for (const auto write : {writeReadings, writeCouplings, writeEvents, writePeople, writeGauges,
                             writeJointPlays, writeSignOffs, writeSupervised}) {
        const std::string named = must(write(records));
        const std::string nameless = without.table(named);
        EXPECT_EQ(std::ranges::count(named, '\n'), std::ranges::count(nameless, '\n'));
        for (const char* name : kNames)
            EXPECT_EQ(nameless.find(name), std::string::npos) << nameless;
    }
}

TEST(Counts, SayOfEachCouplingHowOftenItWasReadOutsideFoundPartSeatedAndAnsweredNo)
{
    Scene scene;
    EXPECT_EQ(must(writeCounts(scene.store.records(), scene.store.clock().now().localDay())),
              "airframe,coupling,riggings,riggings_read,readings,outside,found_part_seated,no_answers,"
              "found_not_secured\r\n"
              "QX-17,Left aileron,1,1,1,0,1,1,0\r\n"
              "QX-17,Right aileron,1,0,0,0,0,0,0\r\n");
}

} // namespace
