// The program goes down at every step of a coupling, without a chance to tidy up, and is opened again.

#include "app/pages/rigged_today/rigged_today_page.h"
#include "core/airframe/id_source.h"
#include "tests/support/hangar.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/sleeve_joint.h"
#include "tests/support/typing.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QProcess>

#include <array>
#include <gtest/gtest.h>
#include <iostream>

using namespace rig;
using namespace rig::test;

namespace {

// What is pressed at the first coupling, one thing after another, and the step that comes next after it.
struct Pressed
{
    const char* keys; // '\n' is Enter
    Step next;
    int checks;
    int readings;
};
constexpr std::array kPressed{
    Pressed{"", Step::Look, 0, 0},     Pressed{"y", Step::Look, 1, 0},     Pressed{"y", Step::Look, 2, 0},
    Pressed{"y", Step::Measure, 3, 0}, Pressed{"0.5\n", Step::Pull, 3, 1}, Pressed{"y", Step::Secure, 4, 1},
    Pressed{"y", Step::Done, 5, 1},
};

RecordContent contentOf(Records& records, AirframeId airframe)
{
    return must(records.content(must(records.riggingRecords(airframe)).back().id));
}

class KilledRigging : public testing::TestWithParam<int>
{
protected:
    KilledRigging() { must(store.records().add(hangar.record(store.clock().now()))); }

    TempStore store;
    Hangar hangar{store.records()};
};

} // namespace

// The other process: works on the file it is told, as far as it is told, and waits to be killed.
TEST(KilledRigger, DISABLED_WorksUntilKilled)
{
    FixedClock clock;
    IdSource ids{4};
    auto file = must(StoreFile::open(qgetenv("RIG_FILE").toStdString(), OpenAs::Existing, clock));
    Records records{*file, ids, clock};
    ScriptedPrompts prompts;
    RiggedTodayPage page{records, clock, prompts};
    page.show();
    page.showAirframe(must(records.airframes()).front().id);
    Typist typist{page};
    typist.goTo("measuredBy");
    typist.press(Qt::Key_Down);
    for (int i = 0; i <= qEnvironmentVariableIntValue("RIG_STEPS"); ++i)
        typist.type(kPressed[static_cast<std::size_t>(i)].keys);
    std::cout << "at work" << std::endl;
    std::cin.get();
}

TEST_P(KilledRigging, KeepsWhatWasSaidAndStartsTheCouplingAgainAtTheLook)
{
    store.close();
    QProcess other;
    QProcessEnvironment surroundings = QProcessEnvironment::systemEnvironment();
    surroundings.insert("RIG_FILE", QString::fromStdString(store.path()));
    surroundings.insert("RIG_STEPS", QString::number(GetParam()));
    for (const char* share : {"GTEST_TOTAL_SHARDS", "GTEST_SHARD_INDEX"})
        surroundings.remove(share); // of this run, not of the other program
    other.setProcessEnvironment(surroundings);
    other.start(QCoreApplication::applicationFilePath(),
                {"--gtest_also_run_disabled_tests", "--gtest_filter=KilledRigger.*"});
    QByteArray said;
    while (!said.contains("at work") && other.waitForReadyRead(30'000))
        said += other.readAllStandardOutput();
    ASSERT_TRUE(said.contains("at work")) << said.toStdString();
    other.kill();
    other.waitForFinished();

    store.reopen();
    const Pressed& last = kPressed[static_cast<std::size_t>(GetParam())];
    const RecordContent kept = contentOf(store.records(), hangar.airframe);
    EXPECT_EQ(kept.checks.size(), static_cast<std::size_t>(last.checks))
        << "what the screen said is in the file";
    EXPECT_EQ(kept.readings.size(), static_cast<std::size_t>(last.readings));
    EXPECT_EQ(flowOfSleeve(kept, hangar.leftAileron, Turn::First).next, last.next);

    ScriptedPrompts prompts;
    RiggedTodayPage page{store.records(), store.clock(), prompts};
    page.showAirframe(hangar.airframe);
    const RecordContent now = contentOf(store.records(), hangar.airframe);
    const CouplingFlow flow = flowOfSleeve(now, hangar.leftAileron, Turn::First);
    const bool wasHalfWay = last.checks > 0 && last.next != Step::Done;
    EXPECT_EQ(flow.interrupted, wasHalfWay);
    EXPECT_EQ(flow.next, last.next == Step::Done ? Step::Done : Step::Look);
    if (wasHalfWay) {
        EXPECT_EQ(flow.ask, CheckKind::BallInSocket);
        EXPECT_EQ(now.interruptions.back().reason, InterruptionReason::ProgramClosed);
        EXPECT_TRUE(flow.readings.empty()) << "it has to be read anew; the old reading stays in the file";
    }
}

INSTANTIATE_TEST_SUITE_P(EveryStep, KilledRigging, testing::Range(0, static_cast<int>(kPressed.size())));
