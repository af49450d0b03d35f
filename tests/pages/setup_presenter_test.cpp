#include "app/pages/setup/setup_presenter.h"
#include "app/wording/coupling_words.h"
#include "app/wording/day_words.h"
#include "app/wording/entry_words.h"
#include "app/wording/gauge_words.h"
#include "app/wording/plan_field_words.h"
#include "app/wording/setup_words.h"
#include "core/day_entry.h"
#include "tests/support/hangar.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

class SetUp : public testing::Test
{
protected:
    SetUpView view(std::optional<AirframeId> airframe = {}) { return must(presenter.view(airframe)); }

    AirframeId anAirframeNamed(const char* registration)
    {
        AirframeEntry entry;
        entry.registration = registration;
        const Saved saved = must(presenter.airframe.save(entry, {}));
        EXPECT_TRUE(saved.isSaved());
        return AirframeId{saved.id};
    }

    CouplingId aCouplingNamed(AirframeId airframe, const char* name)
    {
        CouplingEntry entry;
        entry.name = name;
        return CouplingId{must(presenter.couplings.save(entry, airframe, {})).id};
    }

    GaugeId aSetNamed(const char* name)
    {
        GaugeEntry entry;
        entry.name = name;
        entry.sizes = "0.05-1.00 step 0.05";
        return GaugeId{must(presenter.gauges.save(entry, {})).id};
    }

    TempStore store;
    SetUpPresenter presenter{store.records(), store.clock()};
};

testing::AssertionResult refuses(const Result<Saved>& result, Field field, const QString& sentence)
{
    const Saved saved = must(result);
    for (const FieldProblem& problem : saved.problems)
        if (problem.field == field && problem.sentence == sentence)
            return testing::AssertionSuccess();
    auto failure = testing::AssertionFailure() << "not said: " << sentence.toStdString() << "; said:";
    for (const FieldProblem& problem : saved.problems)
        failure << "\n  " << problem.sentence.toStdString();
    return failure;
}

std::vector<std::string> namesIn(const SetUpView& view)
{
    std::vector<std::string> names;
    for (const CouplingRow& row : view.couplings)
        names.push_back(row.coupling.name);
    return names;
}

} // namespace

TEST_F(SetUp, LeadsThroughAnEmptyFileOnePartAfterAnother)
{
    EXPECT_EQ(view().nextToDo(), SetUpPart::Airframe);
    const AirframeId airframe = anAirframeNamed("QX-17");
    EXPECT_EQ(view(airframe).nextToDo(), SetUpPart::Couplings);
    aCouplingNamed(airframe, "Left aileron, wing root");
    EXPECT_EQ(view(airframe).nextToDo(), SetUpPart::Gauges);
    aSetNamed("A");
    EXPECT_EQ(view(airframe).nextToDo(), SetUpPart::People);
    must(presenter.people.save(PersonEntry{"M. Oren", "owner", ""}, {}));
    EXPECT_EQ(view(airframe).nextToDo(), SetUpPart::People) << "one person cannot be the second person";
    must(presenter.people.save(PersonEntry{"T. Vale", "", ""}, {}));
    EXPECT_EQ(view(airframe).nextToDo(), SetUpPart::BaselineDay);
    EXPECT_EQ(view(airframe).stepsDone(), 4);
}

TEST_F(SetUp, IsAtItsEndOnceEveryCouplingHasABand)
{
    Hangar hangar{store.records()};
    const auto readFiveTimes = [&](CouplingId coupling, FittingId fitting) {
        for (int i = 0; i < 5; ++i) {
            Reading reading = hangar.reading(between(450, 500), store.clock().now());
            reading.coupling = coupling;
            reading.fitting = fitting;
            reading.purpose = Purpose::Baseline;
            must(store.records().add(reading, {}));
        }
    };
    readFiveTimes(hangar.leftAileron, hangar.leftFitting);
    EXPECT_EQ(view(hangar.airframe).couplingsWithBand(), 1);
    EXPECT_FALSE(view(hangar.airframe).isDone(SetUpPart::BaselineDay));
    readFiveTimes(hangar.rightAileron, hangar.rightFitting);
    EXPECT_TRUE(view(hangar.airframe).isDone(SetUpPart::BaselineDay));
    EXPECT_EQ(view(hangar.airframe).nextToDo(), std::nullopt);
}

TEST_F(SetUp, KeepsEveryFieldOfAnAirframe)
{
    const AirframeEntry typed{"QX-17",
                              "Orvane 15",
                              "123",
                              "as my authority says",
                              "manual issue 4",
                              "2027-03-31",
                              "A. Quill",
                              "555 0101",
                              "231",
                              "17.5",
                              TailForm::T,
                              "4"};
    const AirframeId id{must(presenter.airframe.save(typed, {})).id};
    store.reopen();
    SetUpPresenter after{store.records(), store.clock()};
    EXPECT_EQ(entryOf(*must(after.view(id)).airframe), typed);
}

TEST_F(SetUp, ReadsTheSpanWithACommaOrAPointAndRefusesWhatIsNone)
{
    AirframeEntry entry;
    entry.registration = "QX-17";
    entry.span = "17,5";
    const AirframeId id{must(presenter.airframe.save(entry, {})).id};
    EXPECT_EQ(view(id).airframe->spanCentimetres, 1750);
    for (const char* span : {"17.555", "0.5", "61", "wide", "-15", "1.7.5"}) {
        entry.span = span;
        EXPECT_TRUE(refuses(presenter.airframe.save(entry, id), Field::Span, PlanFieldWords::notASpan(span)))
            << span;
    }
    entry.span = {};
    for (const char* panels : {"0", "9", "two", "2.5"}) {
        entry.wingPanels = panels;
        EXPECT_TRUE(
            refuses(presenter.airframe.save(entry, id), Field::WingPanels, PlanFieldWords::notPanels()))
            << panels;
    }
    EXPECT_EQ(view(id).airframe->spanCentimetres, 1750);
}

TEST_F(SetUp, PlacesACouplingByTwoNumbersOrByNeither)
{
    const AirframeId airframe = anAirframeNamed("QX-17");
    CouplingEntry entry;
    entry.name = "Left aileron";
    entry.spot = PlanSpot::WingRootLeft;
    entry.planAcross = "-12";
    EXPECT_TRUE(refuses(presenter.couplings.save(entry, airframe, {}), Field::PlanAlong,
                        PlanFieldWords::bothOrNeither()));
    entry.planAlong = "101";
    EXPECT_TRUE(
        refuses(presenter.couplings.save(entry, airframe, {}), Field::PlanAlong, PlanFieldWords::notAlong()));
    entry.planAlong = "40";
    must(presenter.couplings.save(entry, airframe, {}));
    const Coupling saved = view(airframe).couplings.front().coupling;
    EXPECT_DOUBLE_EQ(saved.place->x, -0.12);
    EXPECT_DOUBLE_EQ(saved.place->y, 0.4);
    entry = entryOf(saved);
    EXPECT_EQ(entry.planAcross, "-12");
    entry.planAcross = entry.planAlong = QString{};
    entry.spot = PlanSpot::NotGiven;
    must(presenter.couplings.save(entry, airframe, saved.id));
    EXPECT_FALSE(view(airframe).couplings.front().coupling.place);
}

TEST_F(SetUp, ChangesAnAirframeByANewVersion)
{
    const AirframeId id = anAirframeNamed("QX-17");
    AirframeEntry entry = entryOf(*view(id).airframe);
    entry.type = "Orvane 15";
    const Saved saved = must(presenter.airframe.save(entry, id));
    EXPECT_EQ(saved.id, id.bytes);
    EXPECT_EQ(must(store.records().airframes()).size(), 1u);
    EXPECT_EQ(view(id).airframe->type, "Orvane 15");
}

TEST_F(SetUp, RefusesASecondAirframeOfTheSameRegistration)
{
    anAirframeNamed("QX-17");
    AirframeEntry entry;
    entry.registration = " qx-17 ";
    EXPECT_TRUE(refuses(presenter.airframe.save(entry, {}), Field::Registration,
                        SetUpWords::registrationTaken("qx-17")));
    EXPECT_EQ(must(store.records().airframes()).size(), 1u);
}

TEST_F(SetUp, RefusesAnAirframeWithoutRegistrationWithAnUnreadableDayAndNoCount)
{
    AirframeEntry entry;
    entry.registration = "  ";
    entry.annualDue = "31.3.2027";
    entry.riggingsBefore = "-3";
    const auto result = presenter.airframe.save(entry, {});
    EXPECT_TRUE(refuses(result, Field::Registration, SetUpWords::registrationMissing()));
    EXPECT_TRUE(refuses(result, Field::AnnualDue, DayWords::unread("31.3.2027")));
    EXPECT_TRUE(refuses(result, Field::RiggingsBefore, SetUpWords::notACount()));
    for (const char* count : {"1.5", "many", "1 000", "9999999"}) {
        entry.riggingsBefore = count;
        EXPECT_TRUE(
            refuses(presenter.airframe.save(entry, {}), Field::RiggingsBefore, SetUpWords::notACount()))
            << count;
    }
    EXPECT_TRUE(must(store.records().airframes()).empty());
}

TEST_F(SetUp, AddsACouplingTogetherWithItsFirstFitting)
{
    const AirframeId airframe = anAirframeNamed("QX-17");
    const CouplingEntry typed{"Right aileron, wing root",
                              "aileron",
                              Side::Right,
                              "from above, mirror",
                              Layout::A,
                              "from the front",
                              CouplingKind::SleeveAndPin,
                              {},
                              PlanSpot::WingRootRight,
                              "left-hand thread",
                              "8",
                              "36",
                              AccessSide::Above,
                              AccessSide::Front};
    must(presenter.couplings.save(typed, airframe, {}));
    const SetUpView after = view(airframe);
    ASSERT_EQ(after.couplings.size(), 1u);
    EXPECT_EQ(entryOf(after.couplings.front().coupling), typed);
    ASSERT_TRUE(after.couplings.front().fitting);
    EXPECT_EQ(after.couplings.front().fitting->begins, dayOf(2026, 5, 2));
    EXPECT_EQ(after.couplings.front().fitting->kind, FittingKind::First);
    EXPECT_FALSE(after.couplings.front().hasBand);
}

TEST_F(SetUp, AddsTheUsualCouplingsLeftBeforeRight)
{
    const AirframeId airframe = anAirframeNamed("QX-17");
    must(presenter.couplings.addUsual(airframe, {kUsualCouplings.begin(), kUsualCouplings.end()}));
    const SetUpView after = view(airframe);
    EXPECT_EQ(namesIn(after),
              (std::vector<std::string>{"Left aileron, wing root", "Right aileron, wing root",
                                        "Left airbrake, wing root", "Right airbrake, wing root",
                                        "Left flap, wing root", "Right flap, wing root", "Elevator, fin top",
                                        "Trim, fin top"}));
    for (const CouplingRow& row : after.couplings)
        EXPECT_TRUE(row.fitting) << row.coupling.name;
}

TEST_F(SetUp, AddsNoneOfTheUsualCouplingsWhenOneIsRefused)
{
    const AirframeId airframe = anAirframeNamed("QX-17");
    aCouplingNamed(airframe, "Elevator, fin top");
    EXPECT_FALSE(
        presenter.couplings.addUsual(airframe, {UsualCoupling::LeftAileron, UsualCoupling::Elevator}));
    EXPECT_EQ(view(airframe).couplings.size(), 1u);
}

TEST_F(SetUp, RefusesACouplingWithoutANameAndTwoOfOneName)
{
    const AirframeId airframe = anAirframeNamed("QX-17");
    aCouplingNamed(airframe, "Elevator, fin top");
    CouplingEntry entry;
    EXPECT_TRUE(refuses(presenter.couplings.save(entry, airframe, {}), Field::CouplingName,
                        CouplingWords::nameMissing()));
    entry.name = "ELEVATOR, fin top ";
    EXPECT_TRUE(refuses(presenter.couplings.save(entry, airframe, {}), Field::CouplingName,
                        CouplingWords::nameTaken("ELEVATOR, fin top")));
    EXPECT_EQ(view(airframe).couplings.size(), 1u);
}

TEST_F(SetUp, MovesACouplingOnePlaceInTheRiggingOrder)
{
    const AirframeId airframe = anAirframeNamed("QX-17");
    aCouplingNamed(airframe, "one");
    const CouplingId two = aCouplingNamed(airframe, "two");
    aCouplingNamed(airframe, "three");
    must(presenter.couplings.move(airframe, two, -1));
    EXPECT_EQ(namesIn(view(airframe)), (std::vector<std::string>{"two", "one", "three"}));
    must(presenter.couplings.move(airframe, two, -1));
    EXPECT_EQ(namesIn(view(airframe)), (std::vector<std::string>{"two", "one", "three"}));
    must(presenter.couplings.move(airframe, two, 1));
    must(presenter.couplings.move(airframe, two, 1));
    EXPECT_EQ(namesIn(view(airframe)), (std::vector<std::string>{"one", "three", "two"}));
}

TEST_F(SetUp, KeepsACouplingThatIsTakenOutOfUseAtTheEndOfTheList)
{
    const AirframeId airframe = anAirframeNamed("QX-17");
    const CouplingId one = aCouplingNamed(airframe, "one");
    aCouplingNamed(airframe, "two");
    must(presenter.couplings.setInUse(airframe, one, false));
    EXPECT_EQ(namesIn(view(airframe)), (std::vector<std::string>{"two", "one"}));
    EXPECT_EQ(view(airframe).couplingsInUse(), 1);
    must(presenter.couplings.setInUse(airframe, one, true));
    EXPECT_EQ(namesIn(view(airframe)), (std::vector<std::string>{"two", "one"}));
    EXPECT_EQ(view(airframe).couplingsInUse(), 2);
}

TEST_F(SetUp, EndsTheOldBaselineWithANewFitting)
{
    Hangar hangar{store.records()};
    for (int i = 0; i < 5; ++i) {
        Reading reading = hangar.reading(between(450, 500), store.clock().now());
        reading.purpose = Purpose::Baseline;
        must(store.records().add(reading, {}));
    }
    ASSERT_TRUE(view(hangar.airframe).couplings.front().hasBand);
    must(presenter.couplings.save(FittingEntry{"2026-05-02", "ball replaced", FittingKind::PartChanged},
                                  hangar.airframe, hangar.leftAileron));
    const CouplingRow after = view(hangar.airframe).couplings.front();
    EXPECT_FALSE(after.hasBand);
    EXPECT_EQ(after.fittings, 2);
    EXPECT_EQ(after.fitting->reason, "ball replaced");
    EXPECT_EQ(after.fitting->kind, FittingKind::PartChanged);
}

TEST_F(SetUp, RefusesAFittingToComeWithoutReasonOrBeforeTheLastOne)
{
    Hangar hangar{store.records()};
    const auto save = [&](const char* day, const char* reason) {
        return presenter.couplings.save(FittingEntry{day, reason, FittingKind::Other}, hangar.airframe,
                                        hangar.leftAileron);
    };
    EXPECT_TRUE(refuses(save("2026-05-03", "x"), Field::FittingDay, SetUpWords::dayToCome()));
    EXPECT_TRUE(refuses(save("2026-02-28", "x"), Field::FittingDay,
                        CouplingWords::beforeLastFitting("1 March 2026")));
    EXPECT_TRUE(refuses(save("", " "), Field::FittingDay, DayWords::missing()));
    EXPECT_TRUE(refuses(save("", " "), Field::FittingReason, CouplingWords::reasonMissing()));
    EXPECT_EQ(view(hangar.airframe).couplings.front().fittings, 1);
}

TEST_F(SetUp, KeepsAPlaceFinerThanTheChoices)
{
    const AirframeId airframe = anAirframeNamed("QX-17");
    must(presenter.couplings.addUsual(airframe, {UsualCoupling::LeftAileron}));
    const Coupling before = view(airframe).couplings.front().coupling;
    CouplingEntry entry = entryOf(before);
    EXPECT_EQ(entry.spot, PlanSpot::WingRootLeft);
    entry.access = "from above";
    must(presenter.couplings.save(entry, airframe, before.id));
    const Coupling after = view(airframe).couplings.front().coupling;
    EXPECT_EQ(after.access, "from above");
    EXPECT_DOUBLE_EQ(after.place->x, before.place->x);
    entry.spot = PlanSpot::FinTop;
    must(presenter.couplings.save(entry, airframe, before.id));
    EXPECT_DOUBLE_EQ(view(airframe).couplings.front().coupling.place->y, placeOf(PlanSpot::FinTop).y);
}

TEST_F(SetUp, KeepsALeafSetAndShowsItAsItWasTyped)
{
    const GaugeEntry typed{"A", GaugeKind::Leaves, "0.05-1.00 step 0.05", "", "0.005", "blue case"};
    const GaugeId id{must(presenter.gauges.save(typed, {})).id};
    ASSERT_EQ(view().gauges.size(), 1u);
    const Gauge gauge = view().gauges.front().gauge;
    EXPECT_EQ(gauge.id, id);
    EXPECT_EQ(gauge.set.sizes().size(), 20u);
    EXPECT_EQ(entryOf(gauge, '.'), typed);
    EXPECT_EQ(entryOf(gauge, ',').sizes, "0,05-1,00 step 0,05");
}

TEST_F(SetUp, KeepsATaperGaugeByItsResolution)
{
    must(presenter.gauges.save(GaugeEntry{"T", GaugeKind::Taper, "", "0,05", "", ""}, {}));
    EXPECT_EQ(view().gauges.front().gauge.set.resolution(), Gap::micrometres(50));
    EXPECT_FALSE(view().gauges.front().gauge.tolerance);
}

TEST_F(SetUp, RefusesASetThatCanMeasureNothing)
{
    const auto save = [this](GaugeKind kind, const char* sizes, const char* resolution) {
        return presenter.gauges.save(GaugeEntry{"A", kind, sizes, resolution, "", ""}, {});
    };
    const QString empty = GaugeWords::refused({SizeListProblem::Empty, {}, {}, {}}, {});
    EXPECT_TRUE(refuses(save(GaugeKind::Leaves, "", ""), Field::Sizes, empty));
    EXPECT_TRUE(refuses(save(GaugeKind::Pins, " ", ""), Field::Sizes, empty));
    EXPECT_TRUE(refuses(save(GaugeKind::Taper, "", ""), Field::Resolution,
                        EntryWords::refusal(EntryProblem::Empty, {})));
    EXPECT_TRUE(refuses(save(GaugeKind::Taper, "", "0"), Field::Resolution, GaugeWords::resolutionZero()));
    EXPECT_TRUE(view().gauges.empty());
}

TEST_F(SetUp, RefusesDoubtfulSizesNamesAndTolerances)
{
    aSetNamed("A");
    const auto result =
        presenter.gauges.save(GaugeEntry{"a", GaugeKind::Leaves, "0,05, 0,10", "", "5 um", ""}, {});
    EXPECT_TRUE(refuses(result, Field::GaugeName, GaugeWords::nameTaken("a")));
    EXPECT_TRUE(refuses(result, Field::Sizes,
                        GaugeWords::refused({SizeListProblem::CommaOrSeparator, {}, {}, {}}, {})));
    EXPECT_TRUE(refuses(result, Field::Tolerance, EntryWords::refusal(EntryProblem::NotANumber, "5 um")));
    EXPECT_EQ(view().gauges.size(), 1u);
}

TEST_F(SetUp, OffersTheUsualLeafSetUnderAFreeLetter)
{
    EXPECT_EQ(usualLeafSet(view().gauges, '.').name, "A");
    aSetNamed("a");
    const GaugeEntry usual = usualLeafSet(view().gauges, '.');
    EXPECT_EQ(usual.name, "B");
    must(presenter.gauges.save(usual, {}));
    EXPECT_EQ(view().gauges.back().gauge.set.sizes(), must(store.records().gauges()).front().set.sizes());
}

TEST_F(SetUp, SaysSinceWhenALeafSetIsInDoubt)
{
    const GaugeId set = aSetNamed("B");
    const auto note = [&](const char* day, bool doubted, const char* from) {
        EXPECT_TRUE(
            must(presenter.gauges.save(GaugeCheckEntry{day, "micrometer", "worn tips", doubted, from}, set))
                .isSaved());
    };
    note("2026-03-01", true, "2026-01-10");
    EXPECT_EQ(view().gauges.front().doubtedSince, dayOf(2026, 1, 10));
    note("2026-03-20", false, "");
    EXPECT_EQ(view().gauges.front().doubtedSince, std::nullopt);
    note("2026-05-01", true, "2026-04-15");
    EXPECT_EQ(view().gauges.front().doubtedSince, dayOf(2026, 4, 15));
    ASSERT_EQ(view().gauges.front().checks.size(), 3u);
    EXPECT_EQ(view().gauges.front().checks.front().day, dayOf(2026, 5, 1));
}

TEST_F(SetUp, AsksAboutEveryAirframeThatWasReadWithAGaugeInDoubt)
{
    const Hangar hangar{store.records()};
    anAirframeNamed("QX-42"); // never read with it
    const auto doubtFrom = [&](const char* from, const GaugeId& gauge) {
        must(presenter.gauges.save(GaugeCheckEntry{"2026-05-02", "micrometer", "worn", true, from}, gauge));
        return must(store.records().questions(hangar.airframe));
    };
    must(store.records().add(hangar.reading(between(500, 550), noonOf(dayOf(2026, 4, 20))), std::nullopt));
    EXPECT_TRUE(doubtFrom("2026-05-01", hangar.setA).empty()) << "nothing was read with it since that day";
    EXPECT_TRUE(doubtFrom("2026-04-01", aSetNamed("B")).empty()) << "nothing was ever read with it";

    presenter.desk.setStatedBy(hangar.vale);
    const auto asked = doubtFrom("2026-04-20", hangar.setA);
    ASSERT_EQ(asked.size(), 1U);
    EXPECT_EQ(asked.front().question.kind, QuestionKind::GaugeQuarantined);
    EXPECT_EQ(asked.front().question.gauge, hangar.setA);
    EXPECT_EQ(asked.front().question.stamp.by, hangar.vale);
    EXPECT_EQ(doubtFrom("2026-04-19", hangar.setA).size(), 1U) << "the same is open already";
    EXPECT_TRUE(must(store.records().questions(must(store.records().airframes()).back().id)).empty());
}

TEST_F(SetUp, AsksNothingAfterACheckThatFoundAGaugeUsable)
{
    const Hangar hangar{store.records()};
    must(store.records().add(hangar.reading(between(500, 550), noonOf(dayOf(2026, 4, 20))), std::nullopt));
    must(presenter.gauges.save(GaugeCheckEntry{"2026-05-02", "micrometer", "as marked", false, ""},
                               hangar.setA));
    EXPECT_TRUE(must(store.records().questions(hangar.airframe)).empty());
}

TEST_F(SetUp, RefusesACheckToComeOrWithoutAFindingOrWithADoubtAfterIt)
{
    const GaugeId set = aSetNamed("B");
    const auto save = [&](const char* day, const char* how, const char* found, const char* from) {
        return presenter.gauges.save(GaugeCheckEntry{day, how, found, true, from}, set);
    };
    EXPECT_TRUE(
        refuses(save("2026-05-03", "x", "y", "2026-05-01"), Field::CheckDay, SetUpWords::dayToCome()));
    EXPECT_TRUE(refuses(save("2026-05-01", "", "", "2026-05-01"), Field::CheckHow, GaugeWords::howMissing()));
    EXPECT_TRUE(
        refuses(save("2026-05-01", "", "", "2026-05-01"), Field::CheckFound, GaugeWords::foundMissing()));
    EXPECT_TRUE(
        refuses(save("2026-05-01", "x", "y", "2026-05-02"), Field::DoubtedFrom, GaugeWords::afterCheck()));
    EXPECT_TRUE(
        refuses(save("2026-05-01", "x", "y", "2026-05-09"), Field::DoubtedFrom, SetUpWords::dayToCome()));
    EXPECT_TRUE(refuses(save("2026-05-01", "x", "y", ""), Field::DoubtedFrom, DayWords::missing()));
    EXPECT_TRUE(view().gauges.front().checks.empty());
}

TEST_F(SetUp, RefusesAPersonWithoutANameAndTwoOfOneName)
{
    must(presenter.people.save(PersonEntry{"M. Oren", "", ""}, {}));
    EXPECT_TRUE(refuses(presenter.people.save(PersonEntry{" ", "", ""}, {}), Field::PersonName,
                        SetUpWords::nameMissing()));
    EXPECT_TRUE(refuses(presenter.people.save(PersonEntry{"m. oren", "", ""}, {}), Field::PersonName,
                        SetUpWords::nameTaken("m. oren")));
    EXPECT_EQ(view().persons.size(), 1u);
}

TEST_F(SetUp, ChangesAPersonUnderTheirOwnName)
{
    const PersonId id{must(presenter.people.save(PersonEntry{"M. Oren", "", ""}, {})).id};
    EXPECT_TRUE(must(presenter.people.save(PersonEntry{"M. Oren", "owner", "555 0102"}, id)).isSaved());
    ASSERT_EQ(view().persons.size(), 1u);
    EXPECT_EQ(entryOf(view().persons.front()), (PersonEntry{"M. Oren", "owner", "555 0102"}));
}

TEST_F(SetUp, ListsEventsNewestFirstWithTheirCoupling)
{
    Hangar hangar{store.records()};
    must(presenter.events.save(EventEntry{EventKind::Cleaned, "2026-03-01", {}, ""}, hangar.airframe));
    must(presenter.events.save(EventEntry{EventKind::Greased, "2026-04-01", hangar.leftAileron, "thin"},
                               hangar.airframe));
    const SetUpView after = view(hangar.airframe);
    ASSERT_EQ(after.events.size(), 2u);
    EXPECT_EQ(after.events.front().event.kind, EventKind::Greased);
    EXPECT_EQ(after.events.front().coupling, after.couplings.front().coupling.name);
    EXPECT_EQ(after.events.back().coupling, "");
}

TEST_F(SetUp, RefusesAnEventToComeAndANoteWithoutWords)
{
    const AirframeId airframe = anAirframeNamed("QX-17");
    EXPECT_TRUE(refuses(presenter.events.save(EventEntry{EventKind::Annual, "2026-05-03", {}, ""}, airframe),
                        Field::EventDay, SetUpWords::dayToCome()));
    EXPECT_TRUE(refuses(presenter.events.save(EventEntry{EventKind::Note, "2026-05-02", {}, " "}, airframe),
                        Field::EventNote, SetUpWords::noteMissing()));
    EXPECT_TRUE(view(airframe).events.empty());
}

TEST_F(SetUp, RefusesTakenApartByNobody)
{
    const PersonId oren{must(presenter.people.save(PersonEntry{"M. Oren", "", ""}, {})).id};
    const AirframeId airframe = anAirframeNamed("QX-17");
    const EventEntry apart{EventKind::Derigged, "2026-05-02", {}, ""};
    EXPECT_TRUE(
        refuses(presenter.events.save(apart, airframe), Field::EventKind, SetUpWords::whoTookApartMissing()));
    EXPECT_TRUE(view(airframe).events.empty());
    presenter.desk.setStatedBy(oren);
    must(presenter.events.save(apart, airframe));
    EXPECT_EQ(view(airframe).events.front().event.person, oren);
}

TEST_F(SetUp, KeepsWhoStatedAChange)
{
    const PersonId oren{must(presenter.people.save(PersonEntry{"M. Oren", "", ""}, {})).id};
    EXPECT_EQ(view().persons.front().stamp.by, std::nullopt);
    presenter.desk.setStatedBy(oren);
    const AirframeId airframe = anAirframeNamed("QX-17");
    EXPECT_EQ(view(airframe).airframe->stamp.by, oren);
}
