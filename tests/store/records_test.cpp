#include "core/store/connection.h"
#include "core/store/records.h"
#include "tests/support/hangar.h"

#include <gtest/gtest.h>
#include <set>

using namespace rig;
using namespace rig::test;

namespace {

class Records_ : public testing::Test
{
protected:
    TempStore store;
    Hangar hangar{store.records()};

    Records& records() { return store.records(); }
    Moment now() { return store.clock().now(); }
    FactId lastClosing() { return must(records().closings(hangar.airframe)).back().id; }
};

using RoundTrip = Records_;
using Versions = Records_;
using Corrections = Records_;
using RecordOrder = Records_;

RecordClose closeOf(RecordId record, Closing closing)
{
    RecordClose close;
    close.record = record;
    close.closing = closing;
    return close;
}

} // namespace

TEST_F(RoundTrip, Airframe)
{
    Airframe airframe = anAirframe("QX-88");
    airframe.serial = "20T-112";
    airframe.jurisdiction = "ask your authority";
    airframe.manualReferences = "";
    airframe.annualDue = dayOf(2027, 2, 28);
    airframe.callName = "A. Quill";
    airframe.callPhone = "+44 1632 960111";
    airframe.riggingsBefore = 131;
    airframe.stamp.by = hangar.oren;
    airframe.id = must(records().add(airframe));
    store.reopen();
    const Airframe kept = must(records().airframes()).back();
    EXPECT_EQ(kept.id, airframe.id);
    EXPECT_EQ(kept.registration, "QX-88");
    EXPECT_EQ(kept.type, "Orvane 15");
    EXPECT_EQ(kept.serial, airframe.serial);
    EXPECT_EQ(kept.jurisdiction, airframe.jurisdiction);
    EXPECT_EQ(kept.manualReferences, "");
    EXPECT_EQ(kept.annualDue, airframe.annualDue);
    EXPECT_EQ(kept.callName, airframe.callName);
    EXPECT_EQ(kept.callPhone, airframe.callPhone);
    EXPECT_EQ(kept.riggingsBefore, 131);
    EXPECT_EQ(kept.stamp.by, hangar.oren);
    EXPECT_EQ(kept.stamp.when, now());
    EXPECT_EQ(kept.stamp.when.offsetSeconds, 7200);
}

TEST_F(RoundTrip, PersonWithLettersOfAllKinds)
{
    Person person = aPerson("Łucja Åström-Ñíguez");
    person.phone = "+44 1632 960199";
    must(records().add(person));
    store.reopen();
    const Person kept = must(records().persons()).back();
    EXPECT_EQ(kept.name, "Łucja Åström-Ñíguez");
    EXPECT_EQ(kept.role, "member");
    EXPECT_EQ(kept.phone, person.phone);
    EXPECT_FALSE(kept.stamp.by);
}

TEST_F(RoundTrip, GaugesOfEveryKind)
{
    Gauge pins;
    pins.name = "P";
    pins.set = GaugeSet{GaugeKind::Pins, {Gap::micrometres(850), Gap::micrometres(800)}};
    pins.tolerance = Gap::micrometres(3);
    pins.note = "in the trailer";
    pins.inUse = false;
    Gauge taper;
    taper.name = "T";
    taper.set = GaugeSet::taper(Gap::micrometres(50));
    must(records().add(pins));
    must(records().add(taper));
    store.reopen();
    const std::vector<Gauge> kept = must(records().gauges());
    ASSERT_EQ(kept.size(), 3U);
    EXPECT_EQ(kept[0].set.sizes().size(), 20U);
    EXPECT_FALSE(kept[0].tolerance);
    EXPECT_EQ(kept[1].set.kind(), GaugeKind::Pins);
    EXPECT_EQ(kept[1].set.sizes(), pins.set.sizes());
    EXPECT_EQ(kept[1].tolerance, pins.tolerance);
    EXPECT_EQ(kept[1].note, "in the trailer");
    EXPECT_FALSE(kept[1].inUse);
    EXPECT_EQ(kept[2].set.kind(), GaugeKind::Taper);
    EXPECT_EQ(kept[2].set.resolution(), Gap::micrometres(50));
}

TEST_F(RoundTrip, GaugeCheckWithAndWithoutQuarantine)
{
    GaugeCheck check;
    check.gauge = hangar.setA;
    check.day = dayOf(2026, 4, 30);
    check.how = "micrometer, at three places";
    check.found = "worn";
    check.quarantineFrom = dayOf(2026, 4, 11);
    must(records().add(check));
    check.day = dayOf(2026, 5, 1);
    check.quarantineFrom.reset();
    must(records().add(check));
    store.reopen();
    const std::vector<GaugeCheck> kept = must(records().gaugeChecks());
    ASSERT_EQ(kept.size(), 2U);
    EXPECT_EQ(kept[0].gauge, hangar.setA);
    EXPECT_EQ(kept[0].day, dayOf(2026, 4, 30));
    EXPECT_EQ(kept[0].how, check.how);
    EXPECT_EQ(kept[0].found, "worn");
    EXPECT_EQ(kept[0].quarantineFrom, dayOf(2026, 4, 11));
    EXPECT_FALSE(kept[1].quarantineFrom);
}

TEST_F(RoundTrip, CouplingInItsRiggingOrder)
{
    Coupling coupling = aCoupling(hangar.airframe, "Elevator");
    coupling.circuit = Circuit::Elevator;
    coupling.side = Side::Right;
    coupling.place = PlanPlace{-0.125, 0.95};
    coupling.access = "fin top";
    coupling.leafPlace = "from above";
    coupling.layout = Layout::B;
    coupling.kind = CouplingKind::WaterBallast;
    coupling.parts = {true, false, true};
    coupling.riggingOrder = -1;
    coupling.note = "step needed";
    coupling.inUse = false;
    must(records().add(coupling));
    store.reopen();
    const std::vector<Coupling> kept = must(records().couplings(hangar.airframe));
    ASSERT_EQ(kept.size(), 3U);
    EXPECT_EQ(kept[0].name, "Elevator");
    EXPECT_EQ(kept[0].circuit, Circuit::Elevator);
    EXPECT_EQ(kept[0].side, Side::Right);
    EXPECT_EQ(kept[0].place->x, -0.125);
    EXPECT_EQ(kept[0].place->y, 0.95);
    EXPECT_EQ(kept[0].access, "fin top");
    EXPECT_EQ(kept[0].leafPlace, "from above");
    EXPECT_EQ(kept[0].layout, Layout::B);
    EXPECT_EQ(kept[0].kind, CouplingKind::WaterBallast);
    EXPECT_EQ(kept[0].parts, (CouplingParts{true, false, true}));
    EXPECT_EQ(kept[0].note, "step needed");
    EXPECT_FALSE(kept[0].inUse);
    EXPECT_EQ(kept[1].id, hangar.leftAileron);
    EXPECT_FALSE(kept[1].place);
}

TEST_F(RoundTrip, FittingsAndEvents)
{
    Fitting fitting;
    fitting.coupling = hangar.leftAileron;
    fitting.begins = dayOf(2026, 4, 1);
    fitting.reason = "ball and plunger replaced";
    must(records().add(fitting));
    Event event;
    event.airframe = hangar.airframe;
    event.coupling = hangar.leftAileron;
    event.kind = EventKind::PartChanged;
    event.day = dayOf(2026, 4, 1);
    event.note = "engineer's decision";
    must(records().add(event));
    event.coupling.reset();
    event.kind = EventKind::Annual;
    must(records().add(event));
    store.reopen();
    const std::vector<Fitting> fittings = must(records().fittings(hangar.airframe));
    ASSERT_EQ(fittings.size(), 3U);
    EXPECT_EQ(fittings[2].coupling, hangar.leftAileron);
    EXPECT_EQ(fittings[2].begins, dayOf(2026, 4, 1));
    EXPECT_EQ(fittings[2].reason, fitting.reason);
    const std::vector<Event> events = must(records().events(hangar.airframe));
    ASSERT_EQ(events.size(), 2U);
    EXPECT_EQ(events[0].coupling, hangar.leftAileron);
    EXPECT_EQ(events[0].kind, EventKind::PartChanged);
    EXPECT_EQ(events[0].note, event.note);
    EXPECT_FALSE(events[1].coupling);
    EXPECT_EQ(events[1].kind, EventKind::Annual);
}

TEST_F(RoundTrip, FindingsAndWhatSomebodyAsks)
{
    Event finding;
    finding.airframe = hangar.airframe;
    finding.coupling = hangar.leftAileron;
    finding.kind = EventKind::Finding;
    finding.day = dayOf(2026, 4, 1);
    finding.note = "a flat on the ball";
    finding.done = "nothing yet; measured again";
    finding.person = hangar.oren;
    must(records().add(finding));
    Question question;
    question.airframe = hangar.airframe;
    question.kind = QuestionKind::Asked;
    question.coupling = hangar.rightAileron;
    question.reading = must(records().add(hangar.reading(between(600, 650), now()), std::nullopt));
    question.text = "why was it read twice?";
    question.stamp.by = hangar.vale;
    must(records().add(question));
    store.reopen();
    const std::vector<Event> events = must(records().events(hangar.airframe));
    ASSERT_EQ(events.size(), 1U);
    EXPECT_EQ(events[0].kind, EventKind::Finding);
    EXPECT_EQ(events[0].note, finding.note);
    EXPECT_EQ(events[0].done, finding.done);
    EXPECT_EQ(events[0].person, hangar.oren);
    const std::vector<QuestionStory> questions = must(records().questions(hangar.airframe));
    ASSERT_EQ(questions.size(), 1U);
    EXPECT_TRUE(questions[0].isOpen());
    EXPECT_EQ(questions[0].question.kind, QuestionKind::Asked);
    EXPECT_EQ(questions[0].question.text, question.text);
    EXPECT_EQ(questions[0].question.reading, question.reading);
    EXPECT_EQ(questions[0].question.stamp.by, hangar.vale);
}

TEST_F(RoundTrip, ReadingWithWhatWasShown)
{
    Reading reading = hangar.reading(between(600, 650), now());
    reading.technique = Technique::Stack;
    reading.state = SeatState::PartSeated;
    reading.purpose = Purpose::Demonstration;
    reading.turn = Turn::Second;
    reading.note = "on trestles";
    reading.record = must(records().add(hangar.record(now())));
    Shown shown;
    shown.methodVersion = 7;
    shown.judgement = {Verdict::NearEdge,     Reason::None,
                       Direction::Above,      0.02,
                       {Witness::Weak, 0.04}, Band{{-0.5, 0.66}, {-0.55, 0.7}, 0.58, 0.02, 12, true}};
    const ReadingId id = must(records().add(reading, shown));
    store.reopen();
    const KeptReading kept = must(records().readingsOf(hangar.leftAileron)).front();
    EXPECT_EQ(kept.reading.id, id);
    EXPECT_EQ(kept.reading.coupling, hangar.leftAileron);
    EXPECT_EQ(kept.reading.fitting, hangar.leftFitting);
    EXPECT_EQ(kept.reading.record, reading.record);
    EXPECT_EQ(kept.reading.interval, between(600, 650));
    EXPECT_EQ(kept.reading.technique, Technique::Stack);
    EXPECT_EQ(kept.reading.gauge, hangar.setA);
    EXPECT_EQ(kept.reading.state, SeatState::PartSeated);
    EXPECT_EQ(kept.reading.purpose, Purpose::Demonstration);
    EXPECT_EQ(kept.reading.turn, Turn::Second);
    EXPECT_EQ(kept.reading.person, hangar.oren);
    EXPECT_EQ(kept.reading.when, now());
    EXPECT_EQ(kept.reading.when.offsetSeconds, 7200);
    EXPECT_EQ(kept.reading.note, "on trestles");
    ASSERT_TRUE(kept.shown);
    EXPECT_EQ(kept.shown->methodVersion, 7);
    const Judgement& judgement = kept.shown->judgement;
    EXPECT_EQ(judgement.verdict, Verdict::NearEdge);
    EXPECT_EQ(judgement.direction, Direction::Above);
    EXPECT_EQ(judgement.tail, 0.02);
    EXPECT_EQ(judgement.witness.witness, Witness::Weak);
    EXPECT_EQ(judgement.witness.miss, 0.04);
    EXPECT_EQ(judgement.band->inner.lower, -0.5);
    EXPECT_EQ(judgement.band->inner.upper, 0.66);
    EXPECT_EQ(judgement.band->outer.lower, -0.55);
    EXPECT_EQ(judgement.band->outer.upper, 0.7);
    EXPECT_EQ(judgement.band->median, 0.58);
    EXPECT_EQ(judgement.band->scatter, 0.02);
    EXPECT_EQ(judgement.band->readings, 12);
    EXPECT_TRUE(judgement.band->scatterAtCap);
}

TEST_F(RoundTrip, ReadingWithoutUpperBoundGaugeOrBand)
{
    Reading reading = hangar.reading({Gap::micrometres(1000), std::nullopt}, now());
    reading.technique = Technique::ThickestLoose;
    reading.gauge.reset();
    Shown shown;
    shown.judgement.reason = Reason::ReadingsAllOpen;
    shown.judgement.witness.witness = Witness::NotKnown;
    must(records().add(reading, shown));
    must(records().add(hangar.reading({Gap{}, Gap::micrometres(50)}, now()), std::nullopt));
    store.reopen();
    const std::vector<KeptReading> kept = must(records().readings(hangar.airframe));
    ASSERT_EQ(kept.size(), 2U);
    EXPECT_TRUE(kept[0].reading.interval.isOpen());
    EXPECT_FALSE(kept[0].reading.gauge);
    EXPECT_FALSE(kept[0].reading.record);
    EXPECT_EQ(kept[0].shown->judgement.reason, Reason::ReadingsAllOpen);
    EXPECT_EQ(kept[0].shown->judgement.witness.witness, Witness::NotKnown);
    EXPECT_FALSE(kept[0].shown->judgement.witness.miss);
    EXPECT_FALSE(kept[0].shown->judgement.band);
    EXPECT_EQ(kept[1].reading.interval.enters, Gap{});
    EXPECT_FALSE(kept[1].shown);
}

TEST_F(RoundTrip, FrozenBaselineAndExclusion)
{
    FrozenBaseline baseline;
    baseline.fitting = hangar.leftFitting;
    for (int i = 0; i < 3; ++i)
        baseline.readings.push_back(
            must(records().add(hangar.reading(between(450, 500), now()), std::nullopt)));
    baseline.first = hangar.oren;
    baseline.second = hangar.vale;
    const BaselineId id = must(records().add(baseline));
    Exclusion exclusion;
    exclusion.reading = baseline.readings[1];
    exclusion.reason = "leaf tilted";
    exclusion.stamp.by = hangar.vale;
    must(records().add(exclusion));
    store.reopen();
    const std::vector<FrozenBaseline> frozen = must(records().frozenBaselines(hangar.airframe));
    ASSERT_EQ(frozen.size(), 1U);
    EXPECT_EQ(frozen[0].id, id);
    EXPECT_EQ(frozen[0].fitting, hangar.leftFitting);
    EXPECT_EQ(frozen[0].readings, baseline.readings);
    EXPECT_EQ(frozen[0].first, hangar.oren);
    EXPECT_EQ(frozen[0].second, hangar.vale);
    const std::vector<Exclusion> excluded = must(records().exclusions(hangar.airframe));
    ASSERT_EQ(excluded.size(), 1U);
    EXPECT_EQ(excluded[0].reading, baseline.readings[1]);
    EXPECT_EQ(excluded[0].reason, "leaf tilted");
    EXPECT_EQ(excluded[0].stamp.by, hangar.vale);
}

TEST_F(RoundTrip, WholeRiggingRecord)
{
    RiggingRecord record = hangar.record(now());
    const RecordId id = must(records().add(record));
    Check check;
    check.record = id;
    check.coupling = hangar.rightAileron;
    check.kind = CheckKind::SleeveAtStop;
    check.answer = Answer::CannotSee;
    check.turn = Turn::Second;
    check.person = hangar.vale;
    check.when = now();
    must(records().add(check));
    Interruption interruption;
    interruption.record = id;
    interruption.coupling = hangar.rightAileron;
    interruption.turn = Turn::Second;
    interruption.reason = InterruptionReason::PersonChanged;
    must(records().add(interruption));
    Reading reading = hangar.reading(between(450, 500), now());
    reading.record = id;
    must(records().add(reading, std::nullopt));
    RecordClose close = closeOf(id, Closing::LeftOpen);
    close.first = hangar.oren;
    close.second = hangar.vale;
    close.note = "mirror missing";
    must(records().add(close));
    store.reopen();

    const RecordContent content = must(records().content(id));
    EXPECT_EQ(content.record.leader, hangar.oren);
    EXPECT_EQ(content.record.airframe, hangar.airframe);
    EXPECT_EQ(content.record.origin, RecordOrigin::Rigging);
    EXPECT_EQ(content.record.begins, now());
    ASSERT_EQ(content.checks.size(), 1U);
    EXPECT_EQ(content.checks[0].coupling, hangar.rightAileron);
    EXPECT_EQ(content.checks[0].kind, CheckKind::SleeveAtStop);
    EXPECT_EQ(content.checks[0].answer, Answer::CannotSee);
    EXPECT_EQ(content.checks[0].turn, Turn::Second);
    EXPECT_EQ(content.checks[0].person, hangar.vale);
    EXPECT_EQ(content.checks[0].when, now());
    ASSERT_EQ(content.interruptions.size(), 1U);
    EXPECT_EQ(content.interruptions[0].reason, InterruptionReason::PersonChanged);
    EXPECT_EQ(content.interruptions[0].turn, Turn::Second);
    ASSERT_EQ(content.readings.size(), 1U);
    EXPECT_EQ(content.readings[0].record, id);
    ASSERT_TRUE(content.close);
    EXPECT_EQ(content.close->closing, Closing::LeftOpen);
    EXPECT_EQ(content.close->first, hangar.oren);
    EXPECT_EQ(content.close->second, hangar.vale);
    EXPECT_EQ(content.close->note, "mirror missing");
    EXPECT_EQ(content.close->id, lastClosing());
}

TEST_F(RoundTrip, SurfaceWithWhatTheManualSays)
{
    Surface surface;
    surface.airframe = hangar.airframe;
    surface.name = "Left aileron";
    surface.kind = SurfaceKind::Aileron;
    surface.side = Side::Left;
    surface.order = 3;
    surface.senseCall = "Stick left: left up.";
    surface.unit = DeflectionUnit::Millimetres;
    surface.measuredAt = Gap::micrometres(120'000);
    surface.up = ManualDeflection{{42'000}, {2'500}};
    surface.mostPlay = Deflection{1'500};
    surface.manualReference = "page 3-12, revision 4";
    surface.id = must(records().add(surface));
    store.reopen();
    const Surface kept = must(records().surfaces(hangar.airframe)).back();
    EXPECT_EQ(kept.id, surface.id);
    EXPECT_EQ(kept.name, surface.name);
    EXPECT_EQ(kept.kind, SurfaceKind::Aileron);
    EXPECT_EQ(kept.side, Side::Left);
    EXPECT_EQ(kept.order, 3);
    EXPECT_EQ(kept.senseCall, surface.senseCall);
    EXPECT_EQ(kept.unit, DeflectionUnit::Millimetres);
    EXPECT_EQ(kept.measuredAt, surface.measuredAt);
    ASSERT_TRUE(kept.up);
    EXPECT_EQ(kept.up->nominal, Deflection{42'000});
    EXPECT_EQ(kept.up->tolerance, Deflection{2'500});
    EXPECT_FALSE(kept.down);
    EXPECT_EQ(kept.mostPlay, surface.mostPlay);
    EXPECT_EQ(kept.manualReference, surface.manualReference);
    EXPECT_TRUE(kept.inUse);
}

TEST_F(RoundTrip, JointPlayOfARiggingAndOfAnyOtherDay)
{
    const RecordId record = must(records().add(hangar.record(now())));
    JointPlay play;
    play.coupling = hangar.leftAileron;
    play.record = record;
    play.day = dayOf(2026, 5, 2);
    play.along = {PlayFelt::Felt, Gap::micrometres(150)};
    play.across = {PlayFelt::None, {}};
    play.person = hangar.vale;
    play.note = "dial gauge";
    must(records().add(play));
    JointPlay earlier = play;
    earlier.record.reset();
    earlier.day = dayOf(2026, 4, 1);
    earlier.along = {PlayFelt::NotTried, {}};
    must(records().add(earlier));
    store.reopen();
    const std::vector<JointPlay> kept = must(records().jointPlays(hangar.airframe));
    ASSERT_EQ(kept.size(), 2U);
    EXPECT_EQ(kept[0].day, earlier.day) << "by day";
    EXPECT_EQ(kept[0].along, earlier.along);
    EXPECT_FALSE(kept[0].record);
    EXPECT_EQ(kept[1].along, play.along);
    EXPECT_EQ(kept[1].across, play.across);
    EXPECT_EQ(kept[1].person, hangar.vale);
    EXPECT_EQ(kept[1].note, "dial gauge");
    ASSERT_EQ(must(records().content(record)).jointPlays.size(), 1U);
}

TEST_F(RoundTrip, ControlCheckTicksAndQuestionsOfARecord)
{
    Surface elevator;
    elevator.airframe = hangar.airframe;
    elevator.name = "Elevator";
    elevator.kind = SurfaceKind::Elevator;
    elevator.id = must(records().add(elevator));
    const RecordId record = must(records().add(hangar.record(now())));
    const SurfaceCheck sense{{},         record,      elevator.id, SurfaceCheckKind::Sense,
                             Answer::No, hangar.oren, hangar.vale, {}};
    must(records().add(sense));
    SurfaceCheck call = sense;
    call.kind = SurfaceCheckKind::CalledOtherWay;
    call.answer = Answer::Yes;
    call.seen = Movement::Down;
    must(records().add(call));
    must(records().add(SurfaceMeasure{{},
                                      record,
                                      elevator.id,
                                      MeasureKind::FreePlay,
                                      DeflectionUnit::Millimetres,
                                      {1'200},
                                      Gap::micrometres(95'000),
                                      hangar.oren,
                                      {}}));
    must(records().add(RecordTick{{}, record, TickKind::SeasonGreased, hangar.vale, {}}));
    must(records().add(SideConnected{{}, record, Side::Left, {}, {}}));
    must(records().add(SideConnected{{}, record, Side::Right, {hangar.vale, hangar.oren}, {}}));
    const QuestionId question = must(records().add(*questionFrom(sense, hangar.airframe)));
    store.reopen();
    RecordContent content = must(records().content(record));
    ASSERT_EQ(content.surfaceChecks.size(), 2U);
    EXPECT_FALSE(content.surfaceChecks[0].seen);
    EXPECT_EQ(content.surfaceChecks[1].kind, SurfaceCheckKind::CalledOtherWay);
    EXPECT_EQ(content.surfaceChecks[1].seen, Movement::Down);
    EXPECT_EQ(content.surfaceChecks[0].kind, SurfaceCheckKind::Sense);
    EXPECT_EQ(content.surfaceChecks[0].answer, Answer::No);
    EXPECT_EQ(content.surfaceChecks[0].person, hangar.oren);
    EXPECT_EQ(content.surfaceChecks[0].cockpit, hangar.vale);
    ASSERT_EQ(content.surfaceMeasures.size(), 1U);
    EXPECT_EQ(content.surfaceMeasures[0].value, Deflection{1'200});
    EXPECT_EQ(content.surfaceMeasures[0].measuredAt, Gap::micrometres(95'000));
    ASSERT_EQ(content.connected.size(), 2U);
    EXPECT_EQ(content.connected[0].side, Side::Left);
    EXPECT_TRUE(content.connected[0].persons.empty());
    EXPECT_EQ(content.connected[1].side, Side::Right);
    EXPECT_EQ(std::set(content.connected[1].persons.begin(), content.connected[1].persons.end()),
              (std::set{hangar.oren, hangar.vale}));
    ASSERT_EQ(content.ticks.size(), 1U);
    EXPECT_EQ(content.ticks[0].kind, TickKind::SeasonGreased);
    ASSERT_EQ(content.questions.size(), 1U);
    EXPECT_TRUE(content.questions[0].isOpen());
    EXPECT_EQ(content.questions[0].question.kind, QuestionKind::SurfaceDoubt);
    EXPECT_EQ(content.questions[0].question.surfaceCheck, SurfaceCheckKind::Sense);
    EXPECT_FALSE(content.questions[0].question.coupling);

    must(records().add(Resolution{{}, question, hangar.vale, "crossed", "crossed back, checked anew", {}}));
    store.reopen();
    const QuestionStory story = must(records().questions(hangar.airframe)).front();
    ASSERT_FALSE(story.isOpen());
    EXPECT_EQ(story.resolution->question, question);
    EXPECT_EQ(story.resolution->person, hangar.vale);
    EXPECT_EQ(story.resolution->found, "crossed");
    EXPECT_EQ(story.resolution->done, "crossed back, checked anew");
}

TEST_F(Versions, NewerOneHoldsAndTheIdStays)
{
    Person person = must(records().persons()).front();
    person.phone = "+44 1632 960123";
    store.clock().passMinutes(1);
    EXPECT_EQ(must(records().add(person)), hangar.oren);
    store.reopen();
    const std::vector<Person> persons = must(records().persons());
    ASSERT_EQ(persons.size(), 2U);
    EXPECT_EQ(persons[0].id, hangar.oren);
    EXPECT_EQ(persons[0].phone, person.phone);
    EXPECT_EQ(persons[0].stamp.when, now());
    EXPECT_EQ(must(store.file().connection().integer(QStringLiteral("SELECT count(*) FROM person"))), 3)
        << "the older version stays in the file";
}

TEST_F(Versions, GaugeMayChangeItsSizes)
{
    Gauge gauge = must(records().gauges()).front();
    gauge.set = GaugeSet{GaugeKind::Leaves, {Gap::micrometres(100)}};
    must(records().add(gauge));
    gauge.inUse = false;
    must(records().add(gauge));
    const std::vector<Gauge> gauges = must(records().gauges());
    ASSERT_EQ(gauges.size(), 1U);
    EXPECT_EQ(gauges[0].set.sizes().size(), 1U);
    EXPECT_FALSE(gauges[0].inUse);
}

TEST_F(Versions, ReadingsStayWithACouplingThatWasRenamed)
{
    must(records().add(hangar.reading(between(450, 500), now()), std::nullopt));
    Coupling coupling = must(records().couplings(hangar.airframe)).front();
    coupling.name = "Left aileron, wing root";
    must(records().add(coupling));
    EXPECT_EQ(must(records().couplings(hangar.airframe)).front().name, coupling.name);
    EXPECT_EQ(must(records().readings(hangar.airframe)).size(), 1U);
    EXPECT_EQ(must(records().fittings(hangar.airframe)).size(), 2U);
}

TEST_F(Corrections, StandBesideWhatTheyCorrect)
{
    const ReadingId wrong = must(records().add(hangar.reading(between(600, 650), now()), std::nullopt));
    Reading right = hangar.reading(between(450, 500), now());
    right.corrects = wrong;
    right.note = "pressed the wrong leaf";
    const ReadingId corrected = must(records().add(right, std::nullopt));
    const std::vector<KeptReading> kept = must(records().readings(hangar.airframe));
    ASSERT_EQ(kept.size(), 2U);
    EXPECT_EQ(kept[1].reading.corrects, wrong);
    std::vector<Reading> all{kept[0].reading, kept[1].reading};
    ASSERT_EQ(standing(all, {}).size(), 1U);
    EXPECT_EQ(standing(all, {}).front().id, corrected);
}

TEST_F(RecordOrder, ReadingsComeOldestFirstWhateverTheOrderOfEntry)
{
    Moment earlier = now();
    earlier.utcSeconds -= 86400;
    must(records().add(hangar.reading(between(450, 500), now()), std::nullopt));
    const ReadingId late = must(records().add(hangar.reading(between(500, 550), earlier), std::nullopt));
    EXPECT_EQ(must(records().readings(hangar.airframe)).front().reading.id, late);
    EXPECT_EQ(must(records().readingsOf(hangar.leftAileron)).front().reading.id, late);
}

TEST_F(RecordOrder, IdsRiseInTheOrderOfSavingAlsoWhenTheClockWasSetBack)
{
    const RecordId record = must(records().add(hangar.record(now())));
    Check check;
    check.record = record;
    check.coupling = hangar.leftAileron;
    check.answer = Answer::Yes;
    check.person = hangar.oren;
    const CheckId before = must(records().add(check));
    store.clock().passMinutes(-90);
    store.reopen();
    Interruption interruption;
    interruption.record = record;
    interruption.coupling = hangar.leftAileron;
    const FactId interrupted = must(records().add(interruption));
    EXPECT_LT(before.bytes, interrupted.bytes);
}

TEST_F(RecordOrder, OpenRecordIsTheLatestThatNobodyClosed)
{
    EXPECT_FALSE(must(records().openRecord(hangar.airframe)));
    const RecordId first = must(records().add(hangar.record(now())));
    store.clock().passMinutes(60);
    const RecordId second = must(records().add(hangar.record(now())));
    EXPECT_EQ(must(records().openRecord(hangar.airframe)), second);
    must(records().add(closeOf(second, Closing::LeftOpen)));
    EXPECT_EQ(must(records().openRecord(hangar.airframe)), first);
    must(records().add(closeOf(first, Closing::Abandoned)));
    EXPECT_FALSE(must(records().openRecord(hangar.airframe)));
}

TEST_F(RecordOrder, ImportedTableIsNoOpenRecord)
{
    RiggingRecord record = hangar.record(now());
    record.origin = RecordOrigin::ImportedTable;
    must(records().add(record));
    EXPECT_FALSE(must(records().openRecord(hangar.airframe)));
    EXPECT_EQ(must(records().riggingRecords(hangar.airframe)).front().origin, RecordOrigin::ImportedTable);
}

TEST_F(RecordOrder, RecordThatIsNotThereIsNotFound)
{
    EXPECT_EQ(records().content(RecordId{}).problem().kind, ProblemKind::NotFound);
}
