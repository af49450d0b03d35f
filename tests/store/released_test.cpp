#include "core/store/connection.h"
#include "core/store/migrations.h"
#include "tests/support/hangar.h"

#include <filesystem>
#include <gtest/gtest.h>
#include <map>

using namespace rig;
using namespace rig::test;
namespace fs = std::filesystem;

namespace {

// One fact of every kind, and each word that a later layout has to understand.
class Telling
{
public:
    explicit Telling(TempStore& store) : m_store{store}, m_hangar{store.records()} {}

    void tell()
    {
        tellCouplings();
        tellSetUp();
        tellBaseline();
        tellDemonstrations();
        tellRecord();
    }

private:
    Records& records() { return m_store.records(); }
    Moment now() { return m_store.clock().now(); }

    void tellCouplings()
    {
        int order = 2;
        for (int i = 0; i <= static_cast<int>(Circuit::Other); ++i) {
            Coupling coupling = aCoupling(m_hangar.airframe, "Joint " + std::to_string(i));
            coupling.circuit = static_cast<Circuit>(i);
            if (coupling.circuit == Circuit::Other)
                coupling.otherCircuit = "mixer, front";
            coupling.riggingOrder = ++order;
            m_other = must(records().add(coupling));
        }
        for (const FittingKind kind : {FittingKind::First, FittingKind::PartChanged})
            fit(kind);
    }

    void fit(FittingKind kind)
    {
        Fitting fitting;
        fitting.coupling = m_other;
        fitting.begins = dayOf(2026, 3, 2);
        fitting.kind = kind;
        fitting.reason = kind == FittingKind::First ? "" : "ball and plunger replaced";
        must(records().add(fitting));
    }

    void tellSetUp()
    {
        Surface surface;
        surface.airframe = m_hangar.airframe;
        surface.name = "Left aileron";
        surface.kind = SurfaceKind::Aileron;
        surface.side = Side::Left;
        surface.up = ManualDeflection{{24'000}, {1'000}};
        surface.manualReference = "manual, page 4-2";
        m_surface = must(records().add(surface));
        GaugeCheck check;
        check.gauge = m_hangar.setA;
        check.day = dayOf(2026, 4, 1);
        check.how = "micrometer";
        check.found = "as marked";
        must(records().add(check));
        Event event;
        event.airframe = m_hangar.airframe;
        event.day = dayOf(2026, 4, 2);
        event.kind = EventKind::Derigged;
        event.person = m_hangar.oren;
        event.stamp.by = m_hangar.oren;
        must(records().add(event));
        event.kind = EventKind::Finding;
        event.note = "a flat on the ball";
        event.done = "turned by a quarter";
        must(records().add(event));
        Question asked;
        asked.airframe = m_hangar.airframe;
        asked.kind = QuestionKind::Asked;
        asked.text = "is there another ball of this kind?";
        asked.stamp.by = m_hangar.vale;
        must(records().add(asked));
    }

    void tellBaseline()
    {
        FrozenBaseline baseline;
        baseline.fitting = m_hangar.leftFitting;
        baseline.first = m_hangar.oren;
        baseline.second = m_hangar.vale;
        for (int i = 0; i < 6; ++i) {
            Reading reading = m_hangar.reading(between(450, 500), now());
            reading.purpose = Purpose::Baseline;
            baseline.readings.push_back(must(records().add(reading, std::nullopt)));
        }
        Exclusion exclusion;
        exclusion.reading = baseline.readings.back();
        exclusion.reason = "leaf held at an angle";
        exclusion.stamp.by = m_hangar.vale;
        must(records().add(exclusion));
        baseline.readings.pop_back();
        must(records().add(baseline));
    }

    void tellDemonstrations()
    {
        for (const char* note : {"", "wrong edge"}) {
            Reading reading = m_hangar.reading(between(800, 850), now());
            reading.state = SeatState::PartSeated;
            reading.purpose = Purpose::Demonstration;
            reading.second = m_hangar.vale;
            reading.note = note;
            must(records().add(reading, std::nullopt));
        }
    }

    void tellRecord()
    {
        const RecordId record = must(records().add(m_hangar.record(now())));
        Check check{{},         record,      m_hangar.leftAileron, CheckKind::BallInSocket,
                    Answer::No, Turn::First, m_hangar.oren,        now(),
                    {}};
        must(records().add(check));
        Question question = *questionFrom(check, m_hangar.airframe);
        Resolution resolution;
        resolution.question = must(records().add(question));
        resolution.person = m_hangar.vale;
        resolution.found = "the lamp was out";
        resolution.done = "a new lamp; looked again";
        must(records().add(resolution));
        must(records().add(Interruption{
            {}, record, m_hangar.leftAileron, Turn::First, InterruptionReason::QuestionClosed, {}}));
        tellReadings(record);
        must(records().add(SurfaceCheck{
            {}, record, m_surface, SurfaceCheckKind::Sense, Answer::Yes, m_hangar.oren, m_hangar.vale, {}}));
        SurfaceCheck call{{},         record,        m_surface,     SurfaceCheckKind::CalledOneWay,
                          Answer::No, m_hangar.oren, m_hangar.vale, {}};
        call.seen = Movement::Nothing;
        must(records().add(call));
        must(records().add(SurfaceMeasure{{},
                                          record,
                                          m_surface,
                                          MeasureKind::Up,
                                          DeflectionUnit::Degrees,
                                          {23'500},
                                          {},
                                          m_hangar.oren,
                                          {}}));
        must(records().add(RecordTick{{}, record, TickKind::ToolsOut, m_hangar.oren, {}}));
        must(records().add(SideConnected{{}, record, Side::Left, {m_hangar.oren, m_hangar.vale}, {}}));
        must(records().add(SideConnected{{}, record, Side::Right, {}, {}}));
        RecordClose close;
        close.record = record;
        close.first = m_hangar.oren;
        close.second = m_hangar.vale;
        must(records().add(close));
        tellLearning(record);
    }

    void tellLearning(RecordId record)
    {
        must(records().add(
            SupervisedRigging{{}, record, m_hangar.vale, m_hangar.oren, "first", {m_hangar.oren, {}}}));
        SignOff signOff;
        signOff.airframe = m_hangar.airframe;
        signOff.person = m_hangar.vale;
        signOff.signer = m_hangar.oren;
        signOff.day = now().localDay();
        must(records().add(signOff));
        CrossedStudy study;
        study.airframe = m_hangar.airframe;
        StudyPlace place;
        place.study = must(records().add(study));
        place.coupling = m_hangar.leftAileron;
        place.person = m_hangar.oren;
        PracticeReading reading{
            {}, place.coupling, place.person, between(450, 500), Technique::Leaf, m_hangar.setA, now(), {},
            {}};
        must(records().add(reading));
        reading.place = must(records().add(place));
        must(records().add(reading));
    }

    void tellReadings(RecordId record)
    {
        Reading reading = m_hangar.reading(between(450, 500), now());
        reading.record = record;
        reading.corrects = must(records().add(reading, std::nullopt));
        reading.interval = between(500, 550);
        reading.note = "wrong leaf";
        Shown shown;
        shown.methodVersion = 1;
        shown.judgement.verdict = Verdict::NearEdge;
        shown.judgement.band = Band{{0.43, 0.50}, {0.41, 0.52}, 0.47, 0.016, 12, false};
        must(records().add(reading, shown));
    }

    TempStore& m_store;
    Hangar m_hangar;
    CouplingId m_other;
    SurfaceId m_surface;
};

// A released file as this program opens it.
class Released
{
public:
    explicit Released(const char* name)
    {
        fs::copy_file(fs::path{RIG_TEST_DATA} / "released" / name, m_folder.file("old.rigband"));
        m_file = must(StoreFile::open(m_folder.file("old.rigband"), OpenAs::Existing, m_clock));
        m_records = std::make_unique<Records>(*m_file, m_ids, m_clock);
    }

    StoreFile& file() { return *m_file; }
    Records& records() { return *m_records; }

private:
    TempFolder m_folder;
    FixedClock m_clock;
    IdSource m_ids{1};
    std::unique_ptr<StoreFile> m_file;
    std::unique_ptr<Records> m_records;
};

} // namespace

// Run once by hand before a release with a new layout, with --gtest_also_run_disabled_tests; the file is then
// kept.
TEST(ReleasedFile, DISABLED_WritesTheFileThatIsKeptForLater)
{
    TempStore store;
    Telling{store}.tell();
    store.close();
    const std::string name = "v" + std::to_string(newestSchemaVersion()) + ".rigband";
    fs::copy_file(store.path(), fs::path{RIG_TEST_DATA} / "released" / name);
}

TEST(ReleasedFile, OfTheFirstLayoutOpensAndHoldsWhatWasSaved)
{
    Released old{"v1.rigband"};
    EXPECT_EQ(old.file().schemaVersion(), newestSchemaVersion());
    const std::vector<Airframe> airframes = must(old.records().airframes());
    ASSERT_EQ(airframes.size(), 1U);
    EXPECT_EQ(airframes[0].registration, "QX-17");
    const std::vector<KeptReading> readings = must(old.records().readings(airframes[0].id));
    ASSERT_EQ(readings.size(), 2U);
    EXPECT_EQ(readings[0].reading.interval, between(450, 500));
    EXPECT_EQ(readings[1].reading.note, "wrong leaf");
    EXPECT_EQ(readings[1].shown->judgement.verdict, Verdict::NearEdge);
    EXPECT_EQ(must(old.records().closings(airframes[0].id)).size(), 1U);
    EXPECT_EQ(must(old.records().persons()).size(), 2U);
}

// Written by the last program with the second layout; its words were "airbrake", "Flap", " elevator " and so
// on.
TEST(ReleasedFile, OfTheSecondLayoutHasItsWordsTurnedIntoKindsAndLosesNoOther)
{
    Released old{"v2.rigband"};
    const AirframeId airframe = must(old.records().airframes()).front().id;
    std::vector<std::pair<Circuit, std::string>> circuits;
    for (const Coupling& coupling : must(old.records().couplings(airframe)))
        circuits.push_back({coupling.circuit, coupling.otherCircuit});
    using enum Circuit;
    EXPECT_EQ(circuits, (std::vector<std::pair<Circuit, std::string>>{{Aileron, ""},
                                                                      {Aileron, ""},
                                                                      {Airbrake, ""},
                                                                      {Flap, ""},
                                                                      {Elevator, ""},
                                                                      {Trim, ""},
                                                                      {Rudder, ""},
                                                                      {WaterDump, ""},
                                                                      {Other, "mixer, front"}}));
    std::vector<std::pair<FittingKind, std::string>> fittings;
    for (const Fitting& fitting : must(old.records().fittings(airframe)))
        fittings.push_back({fitting.kind, fitting.reason});
    EXPECT_EQ(fittings, (std::vector<std::pair<FittingKind, std::string>>{
                            {FittingKind::First, ""},
                            {FittingKind::First, ""},
                            {FittingKind::First, ""},
                            {FittingKind::Other, "ball and plunger replaced"}}));
}

TEST(ReleasedFile, OfTheSecondLayoutNamesTheSecondPersonOfADemonstration)
{
    Released old{"v2.rigband"};
    const AirframeId airframe = must(old.records().airframes()).front().id;
    const PersonId vale = must(old.records().persons()).back().id;
    std::vector<std::pair<bool, std::string>> shown; // whether by Vale, and the note that is left
    for (const KeptReading& kept : must(old.records().readings(airframe))) {
        if (kept.reading.purpose != Purpose::Demonstration)
            continue;
        EXPECT_TRUE(!kept.reading.second || kept.reading.second == vale);
        shown.push_back({kept.reading.second.has_value(), kept.reading.note});
    }
    EXPECT_EQ(shown, (std::vector<std::pair<bool, std::string>>{{true, ""},
                                                                {true, "wrong edge"},
                                                                {false, "Second person: Z. Nobody"},
                                                                {false, "ball seen proud"}}));
}

TEST(ReleasedFile, OfTheSecondLayoutKeepsWhatWasClosedAndTakesFurtherWork)
{
    Released old{"v2.rigband"};
    const AirframeId airframe = must(old.records().airframes()).front().id;
    const std::vector<QuestionStory> questions = must(old.records().questions(airframe));
    ASSERT_EQ(questions.size(), 1U);
    EXPECT_EQ(questions[0].resolution->found, "the lamp was out");
    EXPECT_EQ(must(old.records().closings(airframe)).size(), 1U);
    EXPECT_FALSE(must(old.records().events(airframe)).front().person) << "nobody was asked";
    EXPECT_EQ(must(old.records().frozenBaselines(airframe)).front().readings.size(), 5U);
    Event event;
    event.airframe = airframe;
    event.kind = EventKind::Derigged;
    event.person = must(old.records().persons()).front().id;
    must(old.records().add(event));
    EXPECT_EQ(must(old.file().danglingReferences()), 0);
    EXPECT_FALSE(old.file().connection().run("UPDATE reading SET note = 'x'")) << "the triggers are back";
    EXPECT_FALSE(old.file().connection().run("UPDATE coupling SET note = 'x'"));
    EXPECT_FALSE(old.file().connection().run("UPDATE fitting SET reason = 'x'"));
    EXPECT_FALSE(old.file().connection().run("DELETE FROM resolution"));
}

// Written by the last program with the third layout, which had no answer for what was felt.
TEST(ReleasedFile, OfTheThirdLayoutKeepsItsAnswersAndTakesWhatWasFelt)
{
    Released old{"v3.rigband"};
    EXPECT_EQ(old.file().schemaVersion(), newestSchemaVersion());
    const AirframeId airframe = must(old.records().airframes()).front().id;
    const RiggingRecord record = must(old.records().riggingRecords(airframe)).front();
    const RecordContent content = must(old.records().content(record.id));
    ASSERT_EQ(content.checks.size(), 1U);
    EXPECT_EQ(content.checks[0].answer, Answer::No);
    ASSERT_EQ(content.surfaceChecks.size(), 1U);
    EXPECT_EQ(content.surfaceChecks[0].answer, Answer::Yes);
    EXPECT_EQ(content.readings.size(), 2U);
    RiggingRecord next;
    next.airframe = airframe;
    next.leader = record.leader;
    next.begins = record.begins;
    Check felt = content.checks[0];
    felt.id = {};
    felt.record = must(old.records().add(next));
    felt.answer = Answer::Felt;
    must(old.records().add(felt));
    EXPECT_EQ(must(old.records().content(felt.record)).checks[0].answer, Answer::Felt);
    EXPECT_EQ(must(old.file().danglingReferences()), 0);
    EXPECT_FALSE(old.file().connection().run("UPDATE answer SET answer = 'yes'")) << "the triggers are back";
    EXPECT_FALSE(old.file().connection().run("DELETE FROM surface_answer"));
}

// The file of the third layout brought to the fourth by its migration, with two joints secured otherwise
// since.
TEST(ReleasedFile, OfTheFourthLayoutHasItsSecuringAsTheKindOfItsBallJoints)
{
    Released old{"v4.rigband"};
    EXPECT_EQ(old.file().schemaVersion(), newestSchemaVersion());
    const AirframeId airframe = must(old.records().airframes()).front().id;
    std::map<std::string, CouplingKind> kinds;
    for (const Coupling& coupling : must(old.records().couplings(airframe))) {
        kinds[coupling.name] = coupling.kind;
        EXPECT_TRUE(hasGap(coupling)) << coupling.name;
        EXPECT_EQ(partsOf(coupling), (CouplingParts{true, true, true})) << coupling.name;
    }
    ASSERT_EQ(kinds.size(), 10U);
    EXPECT_EQ(kinds["Left aileron"], CouplingKind::Sleeve);
    EXPECT_EQ(kinds["Joint 0"], CouplingKind::Pin);
    EXPECT_EQ(kinds["Joint 1"], CouplingKind::SleeveAndPin);
    EXPECT_EQ(kinds["Joint 2"], CouplingKind::Sleeve);

    Coupling elevator = must(old.records().couplings(airframe)).front();
    elevator.id = {};
    elevator.name = "Elevator, connects by itself";
    elevator.kind = CouplingKind::ByItself;
    elevator.parts = {false, true, false};
    JointPlay play;
    play.coupling = must(old.records().add(elevator));
    play.day = dayOf(2026, 5, 2);
    play.across = {PlayFelt::Felt, {}};
    play.person = must(old.records().persons()).front().id;
    must(old.records().add(play));
    EXPECT_EQ(must(old.records().jointPlays(airframe)).size(), 1U);
    EXPECT_EQ(must(old.file().danglingReferences()), 0);
    EXPECT_FALSE(old.file().connection().run("UPDATE coupling SET kind = 'pin'")) << "the triggers stand";
    EXPECT_FALSE(old.file().connection().run("DELETE FROM joint_play"));
}

// Written by the last program with the eighth layout, which knew no findings and no questions in words.
TEST(ReleasedFile, OfTheEighthLayoutKeepsItsEventsAndQuestionsAndTakesFindings)
{
    Released old{"v8.rigband"};
    EXPECT_EQ(old.file().schemaVersion(), newestSchemaVersion());
    const AirframeId airframe = must(old.records().airframes()).front().id;
    const std::vector<Event> events = must(old.records().events(airframe));
    ASSERT_EQ(events.size(), 1U);
    EXPECT_EQ(events[0].kind, EventKind::Derigged);
    EXPECT_TRUE(events[0].done.empty());
    const std::vector<QuestionStory> questions = must(old.records().questions(airframe));
    ASSERT_EQ(questions.size(), 1U);
    EXPECT_EQ(questions[0].resolution->found, "the lamp was out");
    EXPECT_TRUE(questions[0].question.text.empty());
    Event finding = events[0];
    finding.id = {};
    finding.kind = EventKind::Finding;
    finding.note = "a flat on the ball";
    finding.done = "replaced";
    must(old.records().add(finding));
    Question asked;
    asked.airframe = airframe;
    asked.kind = QuestionKind::Asked;
    asked.text = "since when?";
    asked.stamp.by = finding.person;
    must(old.records().add(asked));
    EXPECT_EQ(must(old.records().events(airframe)).back().done, "replaced");
    EXPECT_EQ(must(old.records().questions(airframe)).back().question.text, "since when?");
    EXPECT_EQ(must(old.file().danglingReferences()), 0);
    EXPECT_FALSE(old.file().connection().run("UPDATE event SET done = 'x'")) << "the triggers stand";
    EXPECT_FALSE(old.file().connection().run("DELETE FROM question"));
}

// Written by the last program with the tenth layout, in which nothing of what somebody learnt could be taken
// back.
TEST(ReleasedFile, OfTheTenthLayoutKeepsWhatWasLearntAndLetsItBeTakenBack)
{
    Released old{"v10.rigband"};
    EXPECT_EQ(old.file().schemaVersion(), newestSchemaVersion());
    const AirframeId airframe = must(old.records().airframes()).front().id;
    const LearningFacts known = must(old.records().learning(airframe));
    ASSERT_EQ(known.signOffs.size(), 1U);
    EXPECT_FALSE(known.signOffs[0].askedFor) << "nobody kept it";
    ASSERT_EQ(known.supervisedRiggings.size(), 1U);
    ASSERT_EQ(known.practiceReadings.size(), 2U);
    LearningTakenBack back;
    back.supervised = known.supervisedRiggings[0].id;
    back.person = known.supervisedRiggings[0].mentor;
    back.reason = "another rigging";
    must(old.records().add(back));
    back.supervised.reset();
    back.practice = known.practiceReadings[1].id;
    back.person = known.practiceReadings[1].person;
    must(old.records().add(back));
    EXPECT_TRUE(must(old.records().learning(airframe)).supervisedRiggings.empty());
    EXPECT_EQ(must(old.records().learning(airframe)).practiceReadings.size(), 1U);
    EXPECT_EQ(must(old.file().danglingReferences()), 0);
    EXPECT_FALSE(old.file().connection().run("UPDATE sign_off SET asked_missed = 0")) << "the triggers stand";
    EXPECT_FALSE(old.file().connection().run("DELETE FROM learning_taken_back"));
}

// Those that have a chain since they were written: it still holds, and goes on where it ended.
TEST(ReleasedFile, WithAChainKeepsIt)
{
    for (const char* name : {"v13.rigband", "v14.rigband"}) {
        SCOPED_TRACE(name);
        Released old{name};
        EXPECT_EQ(old.file().schemaVersion(), newestSchemaVersion());
        const auto lookAt = [&old] { return must(old.file().lookAtChain()); };
        const ChainState before = lookAt();
        EXPECT_EQ(before.faults, 0);
        EXPECT_GT(before.end.facts, 20);
        const AirframeId airframe = must(old.records().airframes()).front().id;
        Event event = must(old.records().events(airframe)).front();
        event.id = {};
        must(old.records().add(event));
        const ChainState after = lookAt();
        EXPECT_EQ(after.faults, 0);
        EXPECT_EQ(after.end.facts, before.end.facts + 1);
        EXPECT_EQ(must(old.file().danglingReferences()), 0);
    }
}
