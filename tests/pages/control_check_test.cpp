// The control check: what the two may answer, what it opens, how figures stand beside the manual's.

#include "app/pages/rigged_today/control_check_panel.h"
#include "app/pages/rigged_today/record_list.h"
#include "app/pages/rigged_today/rigged_today_presenter.h"
#include "app/pages/rigged_today/rigging_writer.h"
#include "app/pictures/marks.h"
#include "app/wording/control_words.h"
#include "app/wording/question_words.h"
#include "app/wording/rigged_words.h"
#include "app/wording/standing_words.h"
#include "app/wording/stop_words.h"
#include "app/wording/surface_words.h"
#include "app/wording/window_words.h"
#include "core/store/ask.h"
#include "tests/support/clipped.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>

#include <algorithm>

using namespace rig;
using namespace rig::test;

namespace {

Surface anAileron(AirframeId airframe, const char* name, Side side, int order)
{
    Surface surface;
    surface.airframe = airframe;
    surface.name = name;
    surface.kind = SurfaceKind::Aileron;
    surface.side = side;
    surface.order = order;
    surface.unit = DeflectionUnit::Millimetres;
    surface.measuredAt = Gap::micrometres(120'000);
    surface.up = ManualDeflection{{50'000}, {2'000}};
    surface.down = ManualDeflection{{25'000}, {2'000}};
    surface.mostPlay = Deflection{2'000};
    surface.manualReference = "page 4-12, revision 3";
    return surface;
}

class ControlCheck : public testing::Test
{
protected:
    ControlCheck()
    {
        Airframe airframe = must(store.records().airframes()).front();
        airframe.callName = "A. Quill";
        airframe.callPhone = "0700 0";
        must(store.records().add(airframe));
        left = must(store.records().add(anAileron(hangar.airframe, "Left aileron", Side::Left, 1)));
        right = must(store.records().add(anAileron(hangar.airframe, "Right aileron", Side::Right, 2)));
        must(writer.begin(view(), hangar.oren));
    }

    RiggedTodayView view() { return must(rigged.view(hangar.airframe)); }
    RecordId record() { return view().record->id; }
    SurfaceSheet sheet(SurfaceId surface) { return must(presenter.sheet(view(), surface)); }

    void answer(SurfaceId surface, SurfaceCheckKind kind, Answer answer = Answer::Yes)
    {
        RiggingSession session = sessionOf(record(), hangar.oren, {});
        session.surface = surface;
        session.checkPeople = {hangar.vale, hangar.oren};
        write(answerSurface(session, *view().now, kind, answer, store.clock().now()));
    }

    void call(SurfaceId surface, SurfaceCheckKind way, std::optional<Movement> seen)
    {
        RiggingSession session = sessionOf(record(), hangar.oren, {});
        session.surface = surface;
        session.checkPeople = {hangar.vale, hangar.oren};
        write(callSurface(session, *view().now, {way, seen}, store.clock().now()));
    }

    void write(const SessionStep& step) { must(writer.write(hangar.airframe, step.facts, std::nullopt)); }

    QString keep(SurfaceId surface, MeasureKind kind, const char* typed,
                 DeflectionUnit unit = DeflectionUnit::Millimetres)
    {
        return must(presenter.keep(record(), sheet(surface).surface, kind, unit, typed, hangar.vale));
    }

    // The left one's, by a “no” to its look.
    void stopJoint()
    {
        RiggingSession session = sessionOf(record(), hangar.oren, {});
        session.place = {RecordPlace::Kind::Coupling, hangar.leftAileron};
        write(rig::answer(session, *view().now, CheckKind::PlungerHome, Answer::No, store.clock().now()));
    }

    std::vector<QuestionStory> questions() { return must(store.records().questions(hangar.airframe)); }

    void resolve(const Question& question)
    {
        Resolution resolution;
        resolution.question = question.id;
        resolution.person = hangar.oren;
        resolution.found = "pushrods crossed";
        resolution.done = "connected anew";
        resolution.stamp.by = hangar.oren;
        must(store.records().add(resolution));
    }

    TempStore store;
    Hangar hangar{store.records()};
    RiggedTodayPresenter rigged{store.records(), store.clock()};
    RiggingWriter writer{store.records(), store.clock()};
    ControlCheckPresenter presenter{store.records(), store.clock()};
    SurfaceId left;
    SurfaceId right;
};

class ControlCheckScreen : public ControlCheck
{
protected:
    ControlCheckScreen()
    {
        QObject::connect(&panel, &ControlCheckPanel::changed, &panel, [this] { display(); });
        QObject::connect(&panel, &ControlCheckPanel::answered, &panel,
                         [this](SurfaceCheckKind kind, Answer given) {
                             take(answerSurface(session, *view().now, kind, given, store.clock().now()));
                         });
        QObject::connect(&panel, &ControlCheckPanel::called, &panel, [this](const SurfaceCall& call) {
            take(callSurface(session, *view().now, call, store.clock().now()));
        });
        QObject::connect(&panel, &ControlCheckPanel::peopleChosen, &panel, [this](const CheckPeople& people) {
            take(chooseCheckPeople(session, *view().now, people, store.clock().now()));
        });
        QObject::connect(&panel, &ControlCheckPanel::surfaceChosen, &panel, [this](SurfaceId surface) {
            take(chooseSurface(session, *view().now, surface, store.clock().now()));
        });
        QObject::connect(&panel, &ControlCheckPanel::onwardAsked, &panel, [this] {
            wentOn = !nextSurface(session, *view().now);
            if (!wentOn)
                take(goOn(session, *view().now, store.clock().now()));
        });
        showAt(panel, {930, 690});
        display();
    }

    // As the page does: the facts are written, then the panel shows what follows.
    void take(const SessionStep& step)
    {
        write(step);
        session = step.session;
        display();
    }

    void display()
    {
        const RiggedTodayView now = view();
        session.record = now.record->id;
        session.place.kind = RecordPlace::Kind::ControlCheck;
        session = settledOn(session, &*now.now);
        panel.display(now, session, "Second inspection");
        for (int i = 0; i < 3; ++i)
            QCoreApplication::processEvents();
    }

    // The page takes the focus then.
    void choose(const char* box, int index)
    {
        chooseIn(panel, box, index);
        panel.setFocus();
    }

    void chooseTwo()
    {
        choose("atSurface", 2); // T. Vale
        choose("inCockpit", 1);
    }

    void type(const char* keys)
    {
        for (const QChar key : QString{keys}) {
            const int arrow = static_cast<int>(QStringLiteral("←↑→↓").indexOf(key));
            const int code = key == '\n' ? int{Qt::Key_Return} : arrow >= 0 ? Qt::Key_Left + arrow : 0;
            QKeyEvent press{QEvent::KeyPress, code, Qt::NoModifier, arrow >= 0 ? QString{} : QString{key}};
            panel.takeKey(&press);
        }
    }

    void measure(const char* line, const char* typed)
    {
        part<QLineEdit>(panel, line).setText(typed);
        part<QLineEdit>(panel, line).setFocus();
        type("\n");
    }

    std::vector<SurfaceCheck> answers() { return must(store.records().content(record())).surfaceChecks; }

    ControlCheckPanel panel{store.records(), store.clock()};
    RiggingSession session;
    bool wentOn = false;
};

} // namespace

TEST_F(ControlCheck, AsksOneThingAfterTheOther)
{
    EXPECT_EQ(sheet(left).asked(), SurfaceCheckKind::HeldOneWay);
    answer(left, SurfaceCheckKind::HeldOneWay);
    EXPECT_EQ(sheet(left).asked(), SurfaceCheckKind::HeldOtherWay);
    EXPECT_EQ(sheet(right).asked(), SurfaceCheckKind::HeldOneWay);
}

TEST_F(ControlCheck, KeepsWhoStoodAtTheSurfaceAndWhoSatInTheCockpit)
{
    answer(left, SurfaceCheckKind::Sense);
    const RecordContent content = must(store.records().content(record()));
    EXPECT_EQ(content.surfaceChecks.front().person, hangar.vale);
    EXPECT_EQ(content.surfaceChecks.front().cockpit, hangar.oren);
}

TEST_F(ControlCheck, AReversedSenseStopsEverySurfaceUntilANamedPersonHasSaidWhatItWas)
{
    call(left, SurfaceCheckKind::CalledOneWay, Movement::Up);
    call(left, SurfaceCheckKind::CalledOtherWay, Movement::Up);
    ASSERT_EQ(questions().size(), 1U);
    EXPECT_EQ(questions().front().question.kind, QuestionKind::SurfaceDoubt);
    EXPECT_EQ(sheet(left).progress.stop, SurfaceCheckKind::CalledOtherWay);
    EXPECT_FALSE(sheet(right).progress.stop);
    ASSERT_TRUE(sheet(right).reversed);
    EXPECT_EQ(sheet(right).reversed->id, left);
    EXPECT_FALSE(sheet(right).asked());
    EXPECT_FALSE(view().review.mayCloseComplete());

    resolve(questions().front().question);
    EXPECT_FALSE(sheet(right).reversed);
    EXPECT_FALSE(sheet(left).progress.stop);
    EXPECT_FALSE(sheet(left).progress.answers.contains(SurfaceCheckKind::CalledOneWay))
        << "both ways are called anew";
    EXPECT_FALSE(sheet(left).progress.answers.contains(SurfaceCheckKind::CalledOtherWay));
}

TEST_F(ControlCheck, AnotherNoStopsItsOwnSurfaceOnly)
{
    answer(left, SurfaceCheckKind::Freedom, Answer::No);
    EXPECT_EQ(sheet(left).progress.stop, SurfaceCheckKind::Freedom);
    EXPECT_FALSE(sheet(left).asked());
    EXPECT_TRUE(sheet(right).asked());
}

TEST_F(ControlCheck, NothingTriedOnAStoppedSurfaceStaysOnceItsQuestionIsClosed)
{
    answer(left, SurfaceCheckKind::HeldOneWay);
    answer(right, SurfaceCheckKind::HeldOneWay);
    answer(left, SurfaceCheckKind::Freedom, Answer::No);
    resolve(questions().front().question);
    EXPECT_TRUE(sheet(left).progress.answers.empty()) << "somebody has had it in hand";
    EXPECT_TRUE(sheet(right).progress.answers.contains(SurfaceCheckKind::HeldOneWay));
}

TEST_F(ControlCheck, CannotSeeOpensAQuestionAndTheOthersAreStillTried)
{
    answer(left, SurfaceCheckKind::HeldOneWay, Answer::CannotSee);
    EXPECT_EQ(questions().size(), 1U);
    EXPECT_FALSE(sheet(left).progress.stop);
    EXPECT_EQ(sheet(left).asked(), SurfaceCheckKind::HeldOtherWay);
    EXPECT_TRUE(sheet(left).progress.doubt);
}

TEST_F(ControlCheck, ASurfaceThatMovedTheWrongWayStopsTheJointsOfItsCircuitAndSaysSo)
{
    call(right, SurfaceCheckKind::CalledOneWay, Movement::Up);
    for (const CouplingId coupling : {hangar.leftAileron, hangar.rightAileron}) {
        const auto stop = view().now->find(coupling)->stop;
        ASSERT_TRUE(stop && stop->surface);
        EXPECT_EQ(stop->surface->surface, right);
        EXPECT_TRUE(stop->surface->isWrongMovement());
        RiggingSession session = sessionOf(record(), hangar.oren, {});
        session.place = {RecordPlace::Kind::Coupling, coupling};
        const CouplingSheet joint = must(rigged.sheet(view(), session));
        EXPECT_EQ(joint.stopSurface, "Right aileron");
        EXPECT_FALSE(joint.mayAnswer());
        EXPECT_FALSE(joint.isMeasuringOpen);
        EXPECT_FALSE(joint.stoppedSince);
    }
    EXPECT_EQ(StandingWords::word(view().standings.at(hangar.rightAileron)),
              "its surface moved the wrong way");
    EXPECT_EQ(StandingWords::word(view().standings.at(hangar.leftAileron)),
              "Right aileron moved the wrong way");
    const Question question = questions().front().question;
    EXPECT_EQ(QuestionWords::asked(question, "Right aileron"),
              "Right aileron, moved the wrong way in the control check");
    EXPECT_EQ(shapeOf(question), MarkShape::Diamond);
    resolve(question);
    EXPECT_FALSE(view().now->find(hangar.leftAileron)->stop);
}

TEST_F(ControlCheck, WhatCouldOnlyNotBeSeenStopsNoJointUntilItIsSeenToBeWrong)
{
    call(right, SurfaceCheckKind::CalledOneWay, std::nullopt);
    EXPECT_FALSE(view().now->find(hangar.rightAileron)->stop);
    EXPECT_EQ(StandingWords::word(view().standings.at(hangar.rightAileron)), "its surface not seen");
    EXPECT_EQ(shapeOf(questions().front().question), MarkShape::HalfDisc);
    EXPECT_EQ(QuestionWords::asked(questions().front().question, "Right aileron"),
              "Right aileron, not seen in the control check");
    call(right, SurfaceCheckKind::CalledOneWay, Movement::Nothing);
    ASSERT_EQ(questions().size(), 1U) << "asked already";
    EXPECT_TRUE(view().now->find(hangar.rightAileron)->stop);
    EXPECT_EQ(QuestionWords::asked(questions().front().question, "Right aileron"),
              "Right aileron, did not move in the control check");
}

TEST_F(ControlCheck, AnotherNoStopsTheJointsTooAndIsNoWrongMovement)
{
    answer(right, SurfaceCheckKind::Freedom, Answer::No);
    const auto stop = view().now->find(hangar.leftAileron)->stop;
    ASSERT_TRUE(stop && stop->surface);
    EXPECT_FALSE(stop->surface->isWrongMovement());
    EXPECT_FALSE(sheet(left).stoppedJoint) << "the other side is still tried";
    EXPECT_EQ(StandingWords::word(view().standings.at(hangar.rightAileron)), "“no” at its surface");
}

TEST_F(ControlCheck, NothingIsTriedOnASurfaceWhoseJointIsStopped)
{
    Surface rudder = anAileron(hangar.airframe, "Rudder", Side::None, 3);
    rudder.kind = SurfaceKind::Rudder;
    const SurfaceId other = must(store.records().add(rudder));
    stopJoint();
    ASSERT_TRUE(sheet(right).stoppedJoint);
    EXPECT_EQ(sheet(right).stoppedJoint->id, hangar.leftAileron);
    EXPECT_FALSE(sheet(right).asked());
    EXPECT_TRUE(sheet(other).asked());
    call(right, SurfaceCheckKind::CalledOneWay, Movement::Down);
    EXPECT_FALSE(sheet(right).progress.answers.contains(SurfaceCheckKind::CalledOneWay));
    call(other, SurfaceCheckKind::CalledOneWay, Movement::Left);
    EXPECT_TRUE(sheet(other).progress.answers.contains(SurfaceCheckKind::CalledOneWay));
    resolve(questions().front().question);
    EXPECT_FALSE(sheet(right).stoppedJoint);
    EXPECT_TRUE(sheet(right).asked());
}

TEST_F(ControlCheck, TheSurfaceThatHadMovedWrongIsToBeTriedAgainUntilItIs)
{
    call(right, SurfaceCheckKind::CalledOneWay, Movement::Down);
    call(right, SurfaceCheckKind::CalledOtherWay, Movement::Down);
    EXPECT_FALSE(sheet(right).progress.isToBeTriedAgain());
    resolve(questions().front().question);
    EXPECT_TRUE(sheet(right).progress.isToBeTriedAgain());
    EXPECT_FALSE(sheet(left).progress.isToBeTriedAgain()) << "nothing was tried there";
    call(right, SurfaceCheckKind::CalledOneWay, Movement::Down);
    EXPECT_TRUE(sheet(right).progress.isToBeTriedAgain());
    call(right, SurfaceCheckKind::CalledOtherWay, Movement::Up);
    EXPECT_FALSE(sheet(right).progress.isToBeTriedAgain());
}

TEST_F(ControlCheckScreen, ShowsTheStopOfTheJointAndGivesNoOrderToMoveTheControl)
{
    stopJoint();
    chooseTwo();
    type("r");
    EXPECT_TRUE(part<QWidget>(panel, "stopCard").isVisible());
    EXPECT_EQ(textOf(panel, "stopWhy"),
              (StopWords::jointFirst("Left aileron", QString::fromStdString(textOf(panel, "surfaceTitle"))) +
               QLatin1Char('\n') + StopWords::othersCanBeTried())
                  .toStdString());
    EXPECT_NE(textOf(panel, "stopCall").find("A. Quill (0700 0)"), std::string::npos);
    EXPECT_FALSE(part<QWidget>(panel, "senseCall").isVisible());
    EXPECT_FALSE(part<QWidget>(panel, "surfaceCall0").isVisible());
    EXPECT_FALSE(part<QWidget>(panel, "surfaceCall1").isVisible());
    type("y");
    EXPECT_TRUE(answers().empty());
}

TEST_F(ControlCheckScreen, TheChipOfTheSurfaceThatHadMovedWrongSaysTryAgain)
{
    call(right, SurfaceCheckKind::CalledOneWay, Movement::Up);
    resolve(questions().front().question);
    display();
    EXPECT_EQ(part<QPushButton>(panel, "surfaceChip1").text(), ControlWords::setBack("Right aileron"));
}

TEST(RecordListCount, IsGreenOnlyForThoseDoneWithNothingOpen)
{
    RiggedTodayView view;
    for (const std::uint8_t number : {std::uint8_t{1}, std::uint8_t{2}, std::uint8_t{3}}) {
        CouplingProgress one;
        one.id = CouplingId{{number}};
        one.stage = CouplingStage::FirstDone;
        view.review.couplings.push_back(one);
    }
    RecordList list;
    list.setLook(lookAt(1.0));
    list.display(view, {});
    EXPECT_EQ(textOf(list, "recordProgress"), "3 of 3 couplings done");
    EXPECT_EQ(list.findChild<QProgressBar*>()->value(), 3);
    view.review.couplings[0].stop = JointStop{};
    view.standings[CouplingId{{2}}].isUnresolved = true;
    list.display(view, {});
    EXPECT_EQ(textOf(list, "recordProgress"), "1 of 3 couplings done, 1 stopped, 1 open");
    EXPECT_EQ(list.findChild<QProgressBar*>()->value(), 1);
    EXPECT_EQ(list.findChild<QProgressBar*>()->maximum(), 3);
    RiggingSession second;
    second.turn = Turn::Second;
    second.second = PersonId{{7}};
    for (CouplingProgress& one : view.review.couplings)
        one.stage = CouplingStage::BothDone;
    list.display(view, second);
    EXPECT_EQ(textOf(list, "recordProgress"), "Second person: 1 of 3 done, 1 stopped, 1 open");
}

TEST_F(ControlCheck, RefusesADoubtfulFigureWithASentenceAndKeepsNothing)
{
    EXPECT_EQ(keep(left, MeasureKind::Up, "52.5,1"),
              SurfaceWords::refusal(EntryProblem::TwoSeparators, "52.5,1", DeflectionUnit::Millimetres));
    EXPECT_EQ(keep(left, MeasureKind::Up, ""),
              SurfaceWords::refusal(EntryProblem::Empty, "", DeflectionUnit::Millimetres));
    EXPECT_EQ(keep(left, MeasureKind::Up, "241"),
              SurfaceWords::fartherThanItTurns(Gap::micrometres(120'000)));
    EXPECT_EQ(keep(left, MeasureKind::Up, "181", DeflectionUnit::Degrees),
              SurfaceWords::refusal(EntryProblem::TooLarge, "181", DeflectionUnit::Degrees));
    EXPECT_FALSE(sheet(left).measured.up);
}

TEST_F(ControlCheck, KeepsEveryFigureAndShowsTheLatest)
{
    EXPECT_EQ(keep(left, MeasureKind::Up, "49"), QString{});
    EXPECT_EQ(keep(left, MeasureKind::Up, "51,5"), QString{});
    EXPECT_EQ(must(store.records().content(record())).surfaceMeasures.size(), 2U);
    EXPECT_EQ(sheet(left).measured.up->value, Deflection{51'500});
    EXPECT_EQ(sheet(left).measured.up->measuredAt, Gap::micrometres(120'000));
}

TEST(ControlCheckFigures, StandBesideTheManualsWithItsPageAndAreNeverJudged)
{
    const Surface aileron = anAileron({}, "Left aileron", Side::Left, 1);
    SurfaceMeasure up;
    up.kind = MeasureKind::Up;
    up.value = {54'500};
    up.measuredAt = aileron.measuredAt;
    EXPECT_EQ(
        ControlWords::besideManual(aileron, up),
        "From the manual, page 4-12, revision 3: 50 mm, plus or minus 2 mm. This is 2.5 mm more than the "
        "manual's range.");
    up.value = {47'000};
    EXPECT_TRUE(
        ControlWords::besideManual(aileron, up).endsWith("This is 1 mm less than the manual's range."));
    up.value = {52'000};
    EXPECT_TRUE(ControlWords::besideManual(aileron, up).endsWith("This lies in that range."));
    SurfaceMeasure play;
    play.kind = MeasureKind::FreePlay;
    play.value = {2'500};
    play.measuredAt = aileron.measuredAt;
    EXPECT_EQ(ControlWords::measured(play), "Measured: 2.5 mm, which is 1.19°.");
    EXPECT_TRUE(ControlWords::besideManual(aileron, play).endsWith("0.5 mm more than the manual's most."));
}

TEST(ControlCheckFigures, SayWhenTheyCannotBeComparedAndNothingWhereTheManualSaysNothing)
{
    Surface aileron = anAileron({}, "Left aileron", Side::Left, 1);
    aileron.unit = DeflectionUnit::Degrees;
    SurfaceMeasure up;
    up.kind = MeasureKind::Up;
    up.value = {54'500};
    EXPECT_TRUE(ControlWords::besideManual(aileron, up).endsWith("so the two cannot be compared."));
    aileron.up.reset();
    EXPECT_EQ(ControlWords::besideManual(aileron, up), QString{});
}

TEST_F(ControlCheckScreen, WaitsForTwoDifferentPeopleAndFillsInNobody)
{
    EXPECT_EQ(part<QComboBox>(panel, "atSurface").currentIndex(), 0);
    EXPECT_EQ(part<QComboBox>(panel, "inCockpit").currentIndex(), 0);
    type("y");
    EXPECT_TRUE(answers().empty());
    choose("atSurface", 1);
    choose("inCockpit", 1);
    EXPECT_EQ(textOf(panel, "controlNotice"), ControlWords::samePerson().toStdString());
    type("y");
    EXPECT_TRUE(answers().empty());
    choose("inCockpit", 2);
    type("y");
    EXPECT_EQ(answers().size(), 1U);
}

TEST_F(ControlCheckScreen, GoesThroughASurfaceInNineKeysAndThenOn)
{
    chooseTwo();
    EXPECT_EQ(textOf(panel, "senseCall"), "Stick to the left.");
    type("yy↑↓yyyy\n");
    EXPECT_EQ(textOf(panel, "surfaceTitle"), "Right aileron");
    type("yy↓↑yyyy");
    EXPECT_FALSE(wentOn);
    EXPECT_EQ(part<QPushButton>(panel, "nextSurface").text(), "Second inspection");
    type("\n");
    EXPECT_TRUE(wentOn);
    EXPECT_EQ(view().review.surfacesDone(), 2);
}

TEST_F(ControlCheckScreen, AlwaysSaysThatAPartSeatedJointCanPassIt)
{
    EXPECT_TRUE(part(panel, "partSeatedCanPass").isVisible());
    chooseTwo();
    type("yy↓");
    EXPECT_TRUE(part(panel, "partSeatedCanPass").isVisible());
}

TEST_F(ControlCheckScreen, SaysStopAndWhomToCall)
{
    chooseTwo();
    EXPECT_FALSE(part(panel, "stopCard").isVisible());
    type("yy↓");
    EXPECT_TRUE(part(panel, "stopCard").isVisible());
    EXPECT_EQ(textOf(panel, "stopWhy"), ControlWords::reversed("Left aileron").toStdString());
    EXPECT_EQ(textOf(panel, "stopCall"), "Leave it as it is, and call A. Quill (0700 0).");
    type("y");
    EXPECT_EQ(answers().size(), 3U) << "nothing is tried any further";
}

TEST_F(ControlCheckScreen, AnEnterTypedAheadDoesNotTakeAwayAStopThatNobodyHasRead)
{
    chooseTwo();
    type("n\n");
    EXPECT_EQ(textOf(panel, "surfaceTitle"), "Left aileron");
    EXPECT_EQ(textOf(panel, "controlNotice"), ControlWords::readTheStopFirst().toStdString());
    type("\n");
    EXPECT_EQ(textOf(panel, "surfaceTitle"), "Right aileron") << "as the button says";
}

TEST_F(ControlCheckScreen, EnterDoesNothingWhereTheWholeCheckIsStopped)
{
    chooseTwo();
    type("yy↓\n\n\n");
    EXPECT_EQ(textOf(panel, "surfaceTitle"), "Left aileron");
    EXPECT_FALSE(wentOn);
}

TEST(KeysList, NamesTheChoosersByTheKeysThatOpenThem)
{
    const QString keys = WindowWords::keysText();
    for (const QString& line : {RiggedWords::keyPerson() + ": who looks and measures. " +
                                    RiggedWords::keyGauge() + ": the leaf set",
                                ControlWords::keyAtSurface() + ": who is at the surface. " +
                                    ControlWords::keyInCockpit() + ": who"})
        EXPECT_TRUE(keys.contains(line)) << line.toStdString();
    EXPECT_FALSE(keys.contains('%')) << keys.toStdString();
}

TEST_F(ControlCheckScreen, AKeyOpensEachOfTheTwoNames)
{
    type("a");
    EXPECT_TRUE(part<QComboBox>(panel, "atSurface").view()->isVisible());
    part<QComboBox>(panel, "atSurface").hidePopup();
    type("i");
    EXPECT_TRUE(part<QComboBox>(panel, "inCockpit").view()->isVisible());
    part<QComboBox>(panel, "inCockpit").hidePopup();
}

TEST_F(ControlCheckScreen, HoldsUpBesideDownAndLeftBesideRight)
{
    chooseTwo();
    measure("measuredUp", "52");
    measure("measuredDown", "26");
    EXPECT_EQ(textOf(panel, "upOverDown"), ControlWords::ratio(2.0).toStdString());
    type("yy↑↓yyyy\n");
    EXPECT_FALSE(part(panel, "leftAndRight").isVisible());
    measure("measuredUp", "50");
    EXPECT_EQ(textOf(panel, "leftAndRight"), "Up: left 52 mm, right 50 mm, 0.98° apart.");
    measure("measuredDown", "fifty");
    EXPECT_TRUE(part(panel, "measuredDownProblem").isVisible());
    EXPECT_EQ(part<QLineEdit>(panel, "measuredDown").text(), "fifty") << "nothing typed is lost";
}

TEST_F(ControlCheckScreen, WhatIsExpectedIsNowhereOnTheScreenBeforeBothWaysAreCalled)
{
    chooseTwo();
    const auto isShownAnywhere = [this](const QString& words) {
        const auto labels = panel.findChildren<QLabel*>();
        return std::ranges::any_of(labels, [&words](const QLabel* label) {
            return label->isVisible() && label->text().contains(words);
        });
    };
    for (const char* key : {"y", "y", "↑"}) {
        EXPECT_FALSE(isShownAnywhere("xpected"));
        EXPECT_FALSE(isShownAnywhere("left aileron up"));
        type(key);
    }
    EXPECT_FALSE(isShownAnywhere("xpected"));
    type("↓");
    EXPECT_TRUE(isShownAnywhere("Stick to the right. Seen: Down. Expected: Down."));
}

TEST_F(ControlCheckScreen, ACallThatCouldNotBeSeenIsKeptAndAskedAbout)
{
    chooseTwo();
    type("yyc");
    EXPECT_EQ(answers().back().answer, Answer::CannotSee);
    EXPECT_FALSE(answers().back().seen);
    EXPECT_EQ(questions().size(), 1U);
    EXPECT_EQ(textOf(panel, "senseCall"), "Stick to the right.");
}

TEST_F(ControlCheckScreen, OffersTheWordsThatFitTheSurface)
{
    chooseTwo();
    EXPECT_EQ(part<QPushButton>(panel, "surfaceCall0_0").text(), "Up  (↑)");
    EXPECT_EQ(part<QPushButton>(panel, "surfaceCall0_2").text(), "Nothing  (N)");
    Surface rudder = sheet(left).surface;
    rudder.kind = SurfaceKind::Rudder;
    must(store.records().add(rudder));
    display();
    EXPECT_EQ(part<QPushButton>(panel, "surfaceCall0_0").text(), "Pilot's left  (←)");
    type("yy↑"); // a rudder does not go up
    EXPECT_EQ(answers().size(), 2U);
    type("←→");
    EXPECT_EQ(answers().size(), 4U);
    EXPECT_TRUE(questions().empty());
}

TEST_F(ControlCheckScreen, APlainYesOfAnEarlierVersionStaysWhatItWas)
{
    answer(left, SurfaceCheckKind::Sense);
    display();
    chooseTwo();
    EXPECT_EQ(textOf(panel, "senseCall"), "Stick left: left aileron up, right down.");
    type("yy");
    EXPECT_EQ(sheet(left).asked(), SurfaceCheckKind::FullTravel) << "nothing is called anew";
    EXPECT_FALSE(part(panel, "surfaceCall0").isVisible());
}

TEST_F(ControlCheckScreen, OfWhatTheOwnerWroteItIsAskedInWordsOnceItWasCalled)
{
    Surface own = sheet(left).surface;
    own.senseCall = "Stick to the hangar: left wing up.";
    must(store.records().add(own));
    display();
    chooseTwo();
    EXPECT_EQ(textOf(panel, "senseCall"), "Stick to the left.");
    type("yy↓");
    EXPECT_FALSE(part(panel, "stopCard").isVisible()) << "what is expected stands in words";
    type("↑");
    EXPECT_EQ(textOf(panel, "senseCall"), "Stick to the left. Seen: Down.\nStick to the right. Seen: Up.\n"
                                          "Expected: Stick to the hangar: left wing up.");
    EXPECT_EQ(sheet(left).asked(), SurfaceCheckKind::Sense);
    type("n");
    EXPECT_TRUE(part(panel, "stopCard").isVisible());
}

TEST_F(ControlCheckScreen, HoldsItsWordsAtLargeText)
{
    chooseTwo();
    measure("measuredUp", "54.5");
    type("yy↓");
    const Look look = lookAt(1.5);
    panel.setLook(look);
    showAt(panel, {900, 690}, look);
    display();
    expectNothingClipped(panel, 35);
}

TEST_F(ControlCheck, OffersTheUsualSurfacesWhereThereAreNone)
{
    for (const SurfaceId id : {left, right}) {
        Surface out = sheet(id).surface;
        out.inUse = false;
        must(store.records().add(out));
    }
    ControlCheckPanel panel{store.records(), store.clock()};
    showAt(panel, {930, 690});
    panel.display(view(), RiggingSession{}, "Second inspection");
    EXPECT_TRUE(part(panel, "noSurfaces").isVisible());
    QKeyEvent press{QEvent::KeyPress, Qt::Key_Return, Qt::NoModifier, "\r"};
    EXPECT_TRUE(panel.takeKey(&press));
    EXPECT_EQ(view().surfaces.size(), 5U) << "the ailerons are there, out of use";
}
