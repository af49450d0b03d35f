#include "core/exchange/tables_out.h"
#include "tests/support/hangar.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

TEST(LearningOut, SaysWhoWasSignedOffAndWhoLearnedUnderWhom)
{
    TempStore store;
    const Hangar hangar{store.records()};
    const RecordId record = must(store.records().add(hangar.record(store.clock().now())));
    RecordClose close;
    close.record = record;
    must(store.records().add(close));
    const SupervisedRigging rigging{{}, record, hangar.vale, hangar.oren, "first, \"wet\"", {}};
    LearningTakenBack back;
    back.supervised = must(store.records().add(rigging));
    back.person = hangar.oren;
    back.reason = "told twice";
    must(store.records().add(back));
    must(store.records().add(rigging));
    SignOff one;
    one.airframe = hangar.airframe;
    one.person = hangar.vale;
    one.signer = hangar.oren;
    one.day = store.clock().now().localDay();
    one.askedFor = AskedFor{1, 2, 0};
    must(store.records().add(one));
    one.askedFor.reset();
    one.kind = SignOffKind::Withdrawn;
    one.note = "moved away";
    must(store.records().add(one));
    EXPECT_EQ(must(writeSupervised(store.records())),
              "airframe,date,learner,mentor,note,taken_back_by,why\r\n"
              "QX-17,2026-05-02,T. Vale,M. Oren,\"first, \"\"wet\"\"\",,\r\n"
              "QX-17,2026-05-02,T. Vale,M. Oren,\"first, \"\"wet\"\"\",M. Oren,told twice\r\n");
    EXPECT_EQ(must(writeSignOffs(store.records())),
              "airframe,person,signer,state,date,months,months_without_rigging,note,"
              "asked_supervised,asked_not_practised,asked_missed\r\n"
              "QX-17,T. Vale,M. Oren,signed,2026-05-02,12,3,,1,2,0\r\n"
              "QX-17,T. Vale,M. Oren,withdrawn,2026-05-02,12,3,moved away,,,\r\n");
}

TEST(LearningOut, NeverSaysWhatSomebodyReadForPractice)
{
    TempStore store;
    const Hangar hangar{store.records()};
    PracticeReading reading;
    reading.coupling = hangar.leftAileron;
    reading.person = hangar.vale;
    reading.interval = between(4'450, 4'550);
    reading.gauge = hangar.setA;
    reading.when = store.clock().now();
    must(store.records().add(reading));
    for (const auto write : {writeReadings, writeCouplings, writeEvents, writeJointPlays, writePeople,
                             writeGauges, writeSignOffs, writeSupervised})
        EXPECT_EQ(must(write(store.records())).find("4.45"), std::string::npos);
}
