#include "core/store/records.h"
#include "tests/support/hangar.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

constexpr std::int64_t kDay = 86400;

class Refused : public testing::Test
{
protected:
    TempStore store;
    Hangar hangar{store.records()};

    Records& records() { return store.records(); }
    Moment now() { return store.clock().now(); }
    Reading good() { return hangar.reading(between(450, 500), now()); }

    template <typename T> static void expect(const Result<T>& result)
    {
        ASSERT_FALSE(result);
        EXPECT_EQ(result.problem().kind, ProblemKind::FactRefused) << describe(result.problem());
        EXPECT_FALSE(result.problem().detail.empty());
    }
    void expectReading(const Reading& reading)
    {
        expect(records().add(reading, std::nullopt));
        EXPECT_TRUE(must(records().readings(hangar.airframe)).empty());
    }
};

} // namespace

TEST_F(Refused, ReadingThatNoLeafCanGive)
{
    for (const GapInterval& interval :
         {between(600, 550), between(600, 600), between(-50, 50), between(9000, 10'001),
          GapInterval{Gap::micrometres(10'001), std::nullopt}}) {
        Reading reading = good();
        reading.interval = interval;
        expectReading(reading);
    }
}

TEST_F(Refused, ReadingMoreThanADayAhead)
{
    Reading reading = good();
    reading.when.utcSeconds += kDay + 1;
    expectReading(reading);
    reading.when.utcSeconds -= 1; // a clock set wrong by hours must not stop the work
    must(records().add(reading, std::nullopt));
}

TEST_F(Refused, ReadingWithoutItsCouplingFittingPersonGaugeOrRecord)
{
    Reading reading = good();
    reading.coupling = CouplingId{};
    expectReading(reading);
    reading = good();
    reading.fitting = FittingId{};
    expectReading(reading);
    reading = good();
    reading.fitting = hangar.rightFitting;
    expectReading(reading);
    reading = good();
    reading.person = PersonId{};
    expectReading(reading);
    reading = good();
    reading.gauge = GaugeId{};
    expectReading(reading);
    reading = good();
    reading.record = RecordId{};
    expectReading(reading);
}

TEST_F(Refused, ReadingInARecordOfAnotherAirframe)
{
    RiggingRecord record = hangar.record(now());
    record.airframe = must(records().add(anAirframe("QX-42")));
    Reading reading = good();
    reading.record = must(records().add(record));
    expectReading(reading);
}

TEST_F(Refused, ReadingSavedTwice)
{
    Reading reading = good();
    reading.id = must(records().add(reading, std::nullopt));
    expect(records().add(reading, std::nullopt));
    EXPECT_EQ(must(records().readings(hangar.airframe)).size(), 1U);
}

TEST_F(Refused, CorrectionWithoutReasonOfAnotherCouplingOrASecondTime)
{
    const ReadingId wrong = must(records().add(good(), std::nullopt));
    Reading correction = good();
    correction.corrects = wrong;
    expect(records().add(correction, std::nullopt));
    correction.note = "wrong leaf";
    correction.coupling = hangar.rightAileron;
    correction.fitting = hangar.rightFitting;
    expect(records().add(correction, std::nullopt));
    correction = good();
    correction.corrects = wrong;
    correction.note = "wrong leaf";
    must(records().add(correction, std::nullopt));
    expect(records().add(correction, std::nullopt));
}

TEST_F(Refused, GaugeThatCanMeasureNothing)
{
    Gauge gauge = aLeafSet("D");
    gauge.set = GaugeSet{GaugeKind::Leaves, {}};
    expect(records().add(gauge));
    gauge.set = GaugeSet{GaugeKind::Pins, {Gap{}}};
    expect(records().add(gauge));
    gauge.set = GaugeSet::taper(Gap{});
    expect(records().add(gauge));
    EXPECT_EQ(must(records().gauges()).size(), 1U);
}

TEST_F(Refused, NamesThatAreEmptyOrTaken)
{
    expect(records().add(anAirframe(" ")));
    expect(records().add(anAirframe("qx-17 ")));
    expect(records().add(aPerson("")));
    expect(records().add(aPerson("m. oren")));
    expect(records().add(aLeafSet("a")));
    expect(records().add(aCoupling(hangar.airframe, "LEFT  AILERON")));
    must(records().add(aCoupling(must(records().add(anAirframe("QX-42"))), "Left aileron")));
}

TEST_F(Refused, SamePersonTwice)
{
    RecordClose close;
    close.record = must(records().add(hangar.record(now())));
    close.first = hangar.oren;
    close.second = hangar.oren;
    expect(records().add(close));
    FrozenBaseline baseline;
    baseline.fitting = hangar.leftFitting;
    baseline.readings = {must(records().add(good(), std::nullopt))};
    baseline.first = hangar.vale;
    baseline.second = hangar.vale;
    expect(records().add(baseline));
    EXPECT_TRUE(must(records().frozenBaselines(hangar.airframe)).empty());
}

TEST_F(Refused, CompleteCloseWithOneName)
{
    RecordClose close;
    close.record = must(records().add(hangar.record(now())));
    close.closing = Closing::Complete;
    close.first = hangar.oren;
    expect(records().add(close));
}

TEST_F(Refused, SecondCloseOfARecord)
{
    RecordClose close;
    close.record = must(records().add(hangar.record(now())));
    must(records().add(close));
    expect(records().add(close));
}

TEST_F(Refused, BaselineOfNothingOfAnotherFittingOrTwiceTheSame)
{
    FrozenBaseline baseline;
    baseline.fitting = hangar.rightFitting;
    baseline.first = hangar.oren;
    baseline.second = hangar.vale;
    expect(records().add(baseline));
    const ReadingId reading = must(records().add(good(), std::nullopt));
    baseline.readings = {reading};
    expect(records().add(baseline));
    baseline.fitting = hangar.leftFitting;
    baseline.readings = {reading, reading};
    expect(records().add(baseline));
}

TEST_F(Refused, ExclusionByNobodyOrWithoutReason)
{
    Exclusion exclusion;
    exclusion.reading = must(records().add(good(), std::nullopt));
    exclusion.reason = "leaf tilted";
    expect(records().add(exclusion));
    exclusion.stamp.by = hangar.oren;
    exclusion.reason = "  ";
    expect(records().add(exclusion));
}

TEST_F(Refused, AFindingOfNobodyOrOfHalfTheWords)
{
    Event finding;
    finding.airframe = hangar.airframe;
    finding.kind = EventKind::Finding;
    finding.day = dayOf(2026, 4, 1);
    finding.note = "a flat on the ball";
    finding.done = "replaced";
    expect(records().add(finding));
    finding.person = hangar.oren;
    for (std::string Event::*words : {&Event::note, &Event::done}) {
        Event lacking = finding;
        lacking.*words = " ";
        expect(records().add(lacking));
    }
    must(records().add(finding));
    finding.kind = EventKind::Note;
    expect(records().add(finding));
}

TEST_F(Refused, AQuestionOfNobodyOrWithoutWords)
{
    Question question;
    question.airframe = hangar.airframe;
    question.kind = QuestionKind::Asked;
    question.text = "who read this?";
    expect(records().add(question));
    question.stamp.by = hangar.oren;
    question.text.clear();
    expect(records().add(question));
    question.text = "who read this?";
    must(records().add(question));
    question.kind = QuestionKind::OutsideReading;
    expect(records().add(question));
}

TEST_F(Refused, FactsAboutSomethingThatIsNotThere)
{
    Fitting fitting;
    expect(records().add(fitting));
    Event event;
    expect(records().add(event));
    event.airframe = must(records().add(anAirframe("QX-42")));
    event.coupling = hangar.leftAileron; // of QX-17
    expect(records().add(event));
    expect(records().add(GaugeCheck{}));
    expect(records().add(RiggingRecord{}));
    expect(records().add(Check{}));
    expect(records().add(Interruption{}));
    expect(records().add(RecordClose{}));
    Person person = aPerson("R. Sand");
    person.id.bytes[3] = 1; // a later version of nobody
    expect(records().add(person));
    person = aPerson("R. Sand");
    person.stamp.by = PersonId{person.id};
    person.stamp.by->bytes[3] = 1;
    expect(records().add(person));
}

TEST_F(Refused, TakesTheWholeOfATogetherWithIt)
{
    const Outcome done = records().together([&]() -> Outcome {
        must(records().add(good(), std::nullopt));
        Reading bad = good();
        bad.interval = between(600, 500);
        if (const auto added = records().add(bad, std::nullopt); !added)
            return added.problem();
        return Done{};
    });
    ASSERT_FALSE(done);
    EXPECT_TRUE(must(records().readings(hangar.airframe)).empty());
}

TEST_F(Refused, TakesTheWholeOfATogetherWithItEvenWhenOverlooked)
{
    const Outcome done = records().together([&]() -> Outcome {
        must(records().add(good(), std::nullopt));
        Reading bad = good();
        bad.interval = between(600, 500);
        static_cast<void>(records().add(bad, std::nullopt));
        return Done{};
    });
    ASSERT_FALSE(done);
    EXPECT_TRUE(must(records().readings(hangar.airframe)).empty());
}

TEST_F(Refused, ControlCheckByOnePersonAlone)
{
    Surface elevator;
    elevator.airframe = hangar.airframe;
    elevator.name = "Elevator";
    elevator.id = must(records().add(elevator));
    const RecordId record = must(records().add(hangar.record(now())));
    const SurfaceCheck check{{},          record,      elevator.id, SurfaceCheckKind::Sense,
                             Answer::Yes, hangar.oren, hangar.oren, {}};
    expect(records().add(check));
}

TEST_F(Refused, CallWithoutWhatWasSeenAndAnyOtherAnswerWithIt)
{
    Surface elevator;
    elevator.airframe = hangar.airframe;
    elevator.name = "Elevator";
    elevator.id = must(records().add(elevator));
    const RecordId record = must(records().add(hangar.record(now())));
    SurfaceCheck check{{},          record,      elevator.id, SurfaceCheckKind::CalledOneWay,
                       Answer::Yes, hangar.oren, hangar.vale, {}};
    expect(records().add(check));
    check.seen = Movement::Up;
    must(records().add(check));
    check.answer = Answer::CannotSee;
    expect(records().add(check));
    check.answer = Answer::Yes;
    check.kind = SurfaceCheckKind::Freedom;
    expect(records().add(check));
}

TEST_F(Refused, WhoConnectedWithOnePersonTwiceOrInAClosedRecord)
{
    const RecordId record = must(records().add(hangar.record(now())));
    expect(records().add(SideConnected{{}, record, Side::Left, {hangar.oren, hangar.oren}, {}}));
    must(records().add(SideConnected{{}, record, Side::Left, {hangar.oren}, {}}));
    RecordClose close;
    close.record = record;
    must(records().add(close));
    expect(records().add(SideConnected{{}, record, Side::Left, {hangar.vale}, {}}));
}

TEST_F(Refused, DeflectionFromNoPageOfTheManual)
{
    Surface surface;
    surface.airframe = hangar.airframe;
    surface.name = "Elevator";
    surface.up = ManualDeflection{{25'000}, {1'000}};
    expect(records().add(surface));
    surface.manualReference = "page 3-12, revision 4";
    must(records().add(surface));
}

TEST_F(Refused, AnswerInAClosedRecord)
{
    const RecordId record = must(records().add(hangar.record(now())));
    RecordClose close;
    close.record = record;
    must(records().add(close));
    Check check;
    check.record = record;
    check.coupling = hangar.leftAileron;
    check.person = hangar.oren;
    check.when = now();
    expect(records().add(check));
    expect(records().add(RecordTick{{}, record, TickKind::ToolsOut, hangar.oren, {}}));
}

TEST_F(Refused, JointPlayThatNobodyTriedOrThatWasMeasuredAndNotFelt)
{
    JointPlay play;
    play.coupling = hangar.leftAileron;
    play.day = dayOf(2026, 5, 2);
    play.person = hangar.oren;
    expect(records().add(play));
    play.along = {PlayFelt::None, Gap::micrometres(100)};
    expect(records().add(play));
    play.along = {PlayFelt::Felt, Gap::micrometres(0)};
    expect(records().add(play));
    play.along = {PlayFelt::Felt, Gap::micrometres(100)};
    must(records().add(play));
    play.record = must(records().add(hangar.record(now())));
    must(records().add(play));
    RecordClose close;
    close.record = *play.record;
    must(records().add(close));
    expect(records().add(play));
}

TEST_F(Refused, JointPlayOfADayToCome)
{
    JointPlay play;
    play.coupling = hangar.leftAileron;
    play.along = {PlayFelt::Felt, {}};
    play.person = hangar.oren;
    play.day = now().localDay() + std::chrono::days{2};
    expect(records().add(play));
    play.day = now().localDay();
    must(records().add(play));
}

TEST_F(Refused, FurtherReadingInAClosedRecordButNotTheCorrectionOfOne)
{
    const RecordId record = must(records().add(hangar.record(now())));
    Reading reading = good();
    reading.record = record;
    const ReadingId wrong = must(records().add(reading, std::nullopt));
    RecordClose close;
    close.record = record;
    must(records().add(close));
    expect(records().add(reading, std::nullopt));

    Reading right = reading;
    right.interval = between(500, 550);
    right.corrects = wrong;
    right.note = "the leaf was read wrong";
    must(records().add(right, std::nullopt));
    EXPECT_EQ(must(records().content(record)).readings.size(), 2U);
}

TEST_F(Refused, CorrectionInAnotherRecordThanTheReadings)
{
    Reading reading = good();
    reading.record = must(records().add(hangar.record(now())));
    const ReadingId wrong = must(records().add(reading, std::nullopt));
    Reading right = reading;
    right.corrects = wrong;
    right.note = "the leaf was read wrong";
    right.record = must(records().add(hangar.record(now())));
    expect(records().add(right, std::nullopt));
    right.record.reset();
    expect(records().add(right, std::nullopt));
}

TEST_F(Refused, QuestionClosedTwiceOrWithoutWhatWasFound)
{
    Question question;
    question.airframe = hangar.airframe;
    question.kind = QuestionKind::OutsideReading;
    question.coupling = hangar.leftAileron;
    const QuestionId id = must(records().add(question));
    expect(records().add(Resolution{{}, id, hangar.oren, " ", "sleeve moved back", {}}));
    expect(records().add(Resolution{{}, id, hangar.oren, "sleeve moved", "", {}}));
    must(records().add(Resolution{{}, id, hangar.oren, "sleeve moved", "sleeve moved back", {}}));
    expect(records().add(Resolution{{}, id, hangar.vale, "nothing", "nothing", {}}));
}

TEST_F(Refused, QuestionAboutACouplingOfAnotherAirframe)
{
    Question question;
    question.airframe = must(records().add(anAirframe("QX-42")));
    question.coupling = hangar.leftAileron;
    expect(records().add(question));
}
