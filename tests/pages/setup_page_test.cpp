// Set up as it is used: keys only, and every bad input answered where it stands.

#include "app/pages/setup/setup_page.h"
#include "app/widgets/choice_box.h"
#include "app/wording/coupling_words.h"
#include "app/wording/day_words.h"
#include "app/wording/gauge_words.h"
#include "app/wording/setup_words.h"
#include "core/airframe/id_source.h"
#include "tests/support/hangar.h"
#include "tests/support/scripted_prompts.h"

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

class SetUpPageTest : public testing::Test
{
protected:
    SetUpPageTest()
    {
        page.resize(1280, 744);
        page.show();
        QObject::connect(&page, &Page::problemArose, &page,
                         [this](const QString& sentence) { problem = sentence; });
        QObject::connect(&page, &Page::airframesChanged, &page, [this] { ++airframesChanged; });
    }

    void open(std::optional<AirframeId> airframe)
    {
        page.showAirframe(airframe);
        page.setFocus();
        settle();
    }

    static void settle()
    {
        for (int i = 0; i < 3; ++i)
            QCoreApplication::processEvents();
    }

    // Whatever has the focus gets the key, as at a real keyboard.
    QWidget* target() { return page.focusWidget() ? page.focusWidget() : &page; }

    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
    {
        QTest::keyClick(target(), key, modifiers);
        settle();
    }

    void goTo(SetUpPart part)
    {
        press(static_cast<Qt::Key>(Qt::Key_1 + static_cast<int>(part)), Qt::AltModifier);
    }

    void type(const char* text)
    {
        QTest::keyClicks(target(), QLatin1String(text));
        settle();
    }

    // Tab until the named field has the focus.
    void tabTo(const char* name)
    {
        for (int i = 0; i < 60 && focused() != name; ++i)
            press(Qt::Key_Tab);
        ASSERT_EQ(focused(), name);
    }

    // Replaces what stands in a field.
    void enter(const char* name, const char* text)
    {
        tabTo(name);
        QTest::keyClick(target(), Qt::Key_A, Qt::ControlModifier);
        press(Qt::Key_Delete);
        type(text);
    }

    // Opens what a button of the list opens, by Enter.
    void openBy(const char* name)
    {
        tabTo(name);
        press(Qt::Key_Return);
    }

    std::string focused() { return target()->objectName().toStdString(); }
    QLineEdit* line(const char* name) { return page.findChild<QLineEdit*>(QLatin1String(name)); }
    QPushButton* button(const char* name) { return page.findChild<QPushButton*>(QLatin1String(name)); }

    // What is said beside a field; empty while nothing is.
    std::string said(const char* field)
    {
        const auto* label = page.findChild<QLabel*>(QLatin1String(field) + QLatin1String("Problem"));
        return label->isVisible() ? label->text().toStdString() : std::string{};
    }

    std::string row(const char* list, int at)
    {
        const auto* one = page.findChild<QAbstractButton*>(QLatin1String(list) + QString::number(at));
        return one && one->isVisible() ? one->accessibleName().toStdString() : std::string{};
    }

    std::string state(SetUpPart part)
    {
        return page.findChild<QAbstractButton*>(QStringLiteral("part%1").arg(static_cast<int>(part)))
            ->accessibleDescription()
            .toStdString();
    }

    bool isShown(const char* name)
    {
        const auto* widget = page.findChild<QWidget*>(QLatin1String(name));
        return widget && widget->isVisible();
    }

    TempStore store;
    ScriptedPrompts prompts;
    SetUpPage page{store.records(), store.clock(), prompts};
    QString problem;
    int airframesChanged = 0;
};

class SetUpPageOfAHangar : public SetUpPageTest
{
protected:
    SetUpPageOfAHangar() { open(hangar.airframe); }

    Coupling moved(CouplingId coupling, int order)
    {
        for (const CouplingRow& row : view().couplings)
            if (row.coupling.id == coupling) {
                Coupling elsewhere = row.coupling;
                elsewhere.riggingOrder = order;
                return elsewhere;
            }
        return {};
    }

    int fittingsOf(CouplingId coupling)
    {
        for (const CouplingRow& row : view().couplings)
            if (row.coupling.id == coupling)
                return row.fittings;
        return 0;
    }

    SetUpView view() { return must(SetUpPresenter{store.records(), store.clock()}.view(hangar.airframe)); }

    Hangar hangar{store.records()};
};

std::string text(const QString& sentence)
{
    return sentence.toStdString();
}

} // namespace

TEST_F(SetUpPageTest, LeadsFromAnEmptyFileToTheBaselineDayByKeysAlone)
{
    open({});
    ASSERT_EQ(focused(), "registrationField");
    EXPECT_FALSE(button("next")->isEnabled());
    type("QX-17");
    press(Qt::Key_Return);
    ASSERT_EQ(must(store.records().airframes()).size(), 1u) << "durable at once";
    EXPECT_EQ(airframesChanged, 1);
    ASSERT_EQ(focused(), "next");

    press(Qt::Key_Return); // to the couplings
    ASSERT_EQ(focused(), "usualCouplings");
    press(Qt::Key_Return);
    ASSERT_EQ(focused(), "usualAll");
    for (int i = 0; i < 4; ++i) {
        press(Qt::Key_Tab);
        press(Qt::Key_Space);
    }
    press(Qt::Key_Return);
    EXPECT_EQ(row("coupling", 3), "4  Right airbrake, wing root");
    ASSERT_EQ(focused(), "next");

    press(Qt::Key_Return); // to the leaf sets
    ASSERT_EQ(focused(), "usualSet");
    press(Qt::Key_Return);
    EXPECT_EQ(line("sizes")->text(), "0.05-1.00 step 0.05");
    press(Qt::Key_Return);
    ASSERT_EQ(focused(), "next");

    press(Qt::Key_Return); // to the people
    for (const char* name : {"M. Oren", "T. Vale"}) {
        ASSERT_EQ(focused(), "addPerson");
        press(Qt::Key_Return);
        type(name);
        press(Qt::Key_Return);
    }
    ASSERT_EQ(focused(), "next");
    EXPECT_EQ(state(SetUpPart::People), text(SetUpWords::done(SetUpWords::people(2))));
    press(Qt::Key_Return); // to the baseline day
    EXPECT_FALSE(isShown("next"));
    EXPECT_EQ(state(SetUpPart::BaselineDay), text(SetUpWords::notYetBut(SetUpWords::bands(0, 4))));
    EXPECT_TRUE(problem.isEmpty()) << problem.toStdString();
}

TEST_F(SetUpPageTest, GoesOnWhereItWasLeftHalfWay)
{
    const AirframeId airframe = must(store.records().add(anAirframe("QX-17")));
    must(store.records().add(aCoupling(airframe, "Elevator")));
    open(airframe);
    EXPECT_EQ(focused(), "usualSet");
    EXPECT_EQ(state(SetUpPart::Couplings), text(SetUpWords::done(SetUpWords::couplings(1))));
}

TEST_F(SetUpPageTest, CountsNoJointAmongThoseWithABandThatCanHaveNone)
{
    const AirframeId airframe = must(store.records().add(anAirframe("QX-17")));
    must(store.records().add(aCoupling(airframe, "Elevator")));
    Coupling byItself = aCoupling(airframe, "Rudder");
    byItself.kind = CouplingKind::ByItself;
    byItself.parts = {false, true, false};
    must(store.records().add(byItself));
    open(airframe);
    EXPECT_EQ(state(SetUpPart::BaselineDay), text(SetUpWords::notYetBut(SetUpWords::bands(0, 1))));
}

TEST_F(SetUpPageTest, ReachesEveryPartOfAnEmptyFile)
{
    open({});
    for (const SetUpPart part :
         {SetUpPart::Couplings, SetUpPart::Events, SetUpPart::BaselineDay, SetUpPart::Demonstration}) {
        goTo(part);
        EXPECT_TRUE(isShown("airframeFirst"));
        EXPECT_EQ(focused(), "toAirframe");
    }
    goTo(SetUpPart::Gauges);
    EXPECT_TRUE(isShown("usualSet"));
    goTo(SetUpPart::People);
    EXPECT_TRUE(isShown("addPerson"));
    goTo(SetUpPart::Events);
    press(Qt::Key_Return);
    EXPECT_EQ(focused(), "registrationField");
}

TEST_F(SetUpPageOfAHangar, GoesThroughThePartsWithUpAndDown)
{
    tabTo("part6");
    press(Qt::Key_Up);
    EXPECT_TRUE(isShown("addEvent"));
    EXPECT_EQ(focused(), "part5") << "the focus stays in the list";
    press(Qt::Key_Up);
    EXPECT_TRUE(isShown("addPerson"));
    press(Qt::Key_Return);
    EXPECT_EQ(focused(), "addPerson");
}

TEST_F(SetUpPageTest, SaysBesideTheFieldWhatIsWrongAndLosesNothingTyped)
{
    must(store.records().add(anAirframe("QX-17")));
    open({});
    type("qx-17");
    enter("riggingsBefore", "about 200");
    enter("annualDue", "31/13/2027");
    press(Qt::Key_Return);
    EXPECT_EQ(said("registrationField"), text(SetUpWords::registrationTaken("qx-17")));
    EXPECT_EQ(said("riggingsBefore"), text(SetUpWords::notACount()));
    EXPECT_EQ(said("annualDue"), text(DayWords::unread("31/13/2027")));
    EXPECT_EQ(focused(), "registrationField");
    EXPECT_EQ(line("registrationField")->text(), "qx-17");
    EXPECT_EQ(line("riggingsBefore")->text(), "about 200");
    EXPECT_EQ(line("annualDue")->text(), "31/13/2027");

    enter("registrationField", "QX-18");
    enter("riggingsBefore", "200");
    enter("annualDue", "2027-03-31");
    press(Qt::Key_Return);
    EXPECT_EQ(said("registrationField") + said("riggingsBefore") + said("annualDue"), "");
    const auto airframes = must(store.records().airframes());
    ASSERT_EQ(airframes.size(), 2u);
    EXPECT_EQ(airframes.back().annualDue, dayOf(2027, 3, 31));
    EXPECT_EQ(airframes.back().riggingsBefore, 200);
}

TEST_F(SetUpPageOfAHangar, KeepsWhatIsTypedWhileAnotherPartIsLookedAt)
{
    goTo(SetUpPart::Airframe);
    enter("serial", "123");
    goTo(SetUpPart::People);
    EXPECT_EQ(state(SetUpPart::Airframe),
              text(SetUpWords::typedNotSaved(SetUpWords::done(QStringLiteral("QX-17")))));
    press(Qt::Key_Return);
    type("J. Iver");
    press(Qt::Key_Return); // a save reads everything anew
    goTo(SetUpPart::Airframe);
    EXPECT_EQ(line("serial")->text(), "123");
    press(Qt::Key_Return);
    EXPECT_EQ(view().airframe->serial, "123");
}

TEST_F(SetUpPageOfAHangar, KeepsWhatIsTypedForEachAirframeApart)
{
    const AirframeId other = must(store.records().add(anAirframe("QX-42")));
    goTo(SetUpPart::Airframe);
    enter("serial", "of the first");
    open(other);
    EXPECT_EQ(line("serial")->text(), "");
    EXPECT_EQ(line("registrationField")->text(), "QX-42");
    open(hangar.airframe);
    EXPECT_EQ(line("serial")->text(), "of the first");
    EXPECT_EQ(line("registrationField")->text(), "QX-17");
}

TEST_F(SetUpPageOfAHangar, NeverSavesACouplingTypedForOneAirframeToAnother)
{
    const AirframeId other = must(store.records().add(anAirframe("QX-42")));
    goTo(SetUpPart::Couplings);
    openBy("addCoupling");
    type("Left flap");
    open(other);
    EXPECT_FALSE(isShown("couplingName"));
    open(hangar.airframe);
    ASSERT_TRUE(isShown("couplingName"));
    EXPECT_EQ(line("couplingName")->text(), "Left flap");
    press(Qt::Key_Return);
    EXPECT_EQ(view().couplings.size(), 3u);
    EXPECT_TRUE(must(store.records().couplings(other)).empty());
}

TEST_F(SetUpPageOfAHangar, TakesAFurtherAirframeAndShowsIt)
{
    goTo(SetUpPart::Airframe);
    openBy("furtherAirframe");
    ASSERT_EQ(focused(), "registrationField");
    EXPECT_EQ(line("registrationField")->text(), "");
    press(Qt::Key_Escape);
    EXPECT_EQ(line("registrationField")->text(), "QX-17");
    openBy("furtherAirframe");
    type("QX-42");
    press(Qt::Key_Return);
    EXPECT_EQ(must(store.records().airframes()).size(), 2u);
    EXPECT_EQ(airframesChanged, 1);
    EXPECT_EQ(line("registrationField")->text(), "QX-42");
    EXPECT_EQ(state(SetUpPart::Couplings), text(SetUpWords::notYet()));
}

TEST_F(SetUpPageOfAHangar, ChangesACouplingFromTheList)
{
    goTo(SetUpPart::Couplings);
    ASSERT_EQ(focused(), "coupling0");
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    ASSERT_EQ(focused(), "couplingName");
    tabTo("layout");
    press(Qt::Key_Down);
    tabTo("leafPlace");
    type("from the front");
    press(Qt::Key_Return);
    EXPECT_EQ(focused(), "coupling1");
    const Coupling after = view().couplings.at(1).coupling;
    EXPECT_EQ(after.layout, Layout::A);
    EXPECT_EQ(after.leafPlace, "from the front");
}

TEST_F(SetUpPageOfAHangar, SaysInOnePlainSentenceWhatEachLayoutMeans)
{
    goTo(SetUpPart::Couplings);
    press(Qt::Key_Return);
    tabTo("layout");
    for (const Layout one : {Layout::Unknown, Layout::A, Layout::B, Layout::C}) {
        bool isSaid = false;
        for (const QLabel* label : page.findChildren<QLabel*>())
            isSaid = isSaid || (label->isVisible() && label->text() == CouplingWords::layoutSentence(one));
        EXPECT_TRUE(isSaid) << static_cast<int>(one);
        press(Qt::Key_Down);
    }
}

TEST_F(SetUpPageOfAHangar, MovesACouplingWithAltAndArrows)
{
    goTo(SetUpPart::Couplings);
    press(Qt::Key_Down, Qt::AltModifier);
    EXPECT_EQ(row("coupling", 0), "1  Right aileron");
    EXPECT_EQ(row("coupling", 1), "2  Left aileron");
    EXPECT_EQ(focused(), "coupling1") << "the coupling keeps the focus";
    press(Qt::Key_Up, Qt::AltModifier);
    EXPECT_EQ(row("coupling", 0), "1  Left aileron");
    EXPECT_EQ(view().couplings.front().coupling.id, hangar.leftAileron);
}

TEST_F(SetUpPageOfAHangar, AsksBeforeACouplingIsTakenOutOfUse)
{
    goTo(SetUpPart::Couplings);
    prompts.confirmations = {false, true};
    openBy("takeOutOfUse");
    EXPECT_EQ(view().couplingsInUse(), 2) << "turned away";
    EXPECT_EQ(prompts.asked.back(), text(CouplingWords::takeOutQuestion()));
    press(Qt::Key_Return);
    EXPECT_EQ(view().couplingsInUse(), 1);
    EXPECT_EQ(view().couplings.size(), 2u) << "its history stays";
}

TEST_F(SetUpPageOfAHangar, StartsANewFittingOnlyWithADayThatHasComeAndAReason)
{
    goTo(SetUpPart::Couplings);
    openBy("newFitting");
    ASSERT_EQ(focused(), "fittingDay");
    enter("fittingDay", "2026-05-03");
    press(Qt::Key_Return);
    EXPECT_EQ(said("fittingDay"), text(SetUpWords::dayToCome()));
    EXPECT_EQ(said("fittingReason"), text(CouplingWords::reasonMissing()));
    EXPECT_EQ(focused(), "fittingDay");
    enter("fittingDay", "2026-05-01");
    part<QComboBox>(page, "fittingKind").setFocus();
    press(Qt::Key_Up); // from something else
    enter("fittingReason", "ball replaced");
    press(Qt::Key_Return);
    EXPECT_EQ(view().couplings.front().fitting->begins, dayOf(2026, 5, 1));
    EXPECT_EQ(view().couplings.front().fitting->kind, FittingKind::PartChanged);
    EXPECT_EQ(view().couplings.front().fittings, 2);
}

TEST_F(SetUpPageOfAHangar, StartsTheFittingOfTheCouplingItWasAskedForWhateverMovedSince)
{
    goTo(SetUpPart::Couplings);
    openBy("newFitting"); // of the left aileron
    enter("fittingReason", "ball replaced");
    must(store.records().add(moved(hangar.leftAileron, 9)));
    page.showAirframe(hangar.airframe); // the right one is the first now
    press(Qt::Key_Return);
    EXPECT_EQ(fittingsOf(hangar.leftAileron), 2);
    EXPECT_EQ(fittingsOf(hangar.rightAileron), 1);
}

TEST_F(SetUpPageOfAHangar, TakesTheCouplingOutOfUseThatWasAskedAbout)
{
    goTo(SetUpPart::Couplings);
    prompts.confirmations = {true};
    prompts.meanwhile = [this] { // a second window moves the left aileron to the end
        must(store.records().add(moved(hangar.leftAileron, 9)));
        page.showAirframe(hangar.airframe);
    };
    openBy("takeOutOfUse");
    for (const CouplingRow& row : view().couplings)
        EXPECT_EQ(row.coupling.inUse, row.coupling.id == hangar.rightAileron) << row.coupling.name;
}

TEST_F(SetUpPageOfAHangar, RefusesAnUnnamedAndATwiceNamedCoupling)
{
    goTo(SetUpPart::Couplings);
    openBy("addCoupling");
    press(Qt::Key_Return);
    EXPECT_EQ(said("couplingName"), text(CouplingWords::nameMissing()));
    type("left AILERON");
    press(Qt::Key_Return);
    EXPECT_EQ(said("couplingName"), text(CouplingWords::nameTaken("left AILERON")));
    EXPECT_EQ(focused(), "couplingName");
    press(Qt::Key_Escape);
    EXPECT_EQ(focused(), "coupling0");
    EXPECT_EQ(view().couplings.size(), 2u);
}

TEST_F(SetUpPageOfAHangar, TakesNoTextThatIsTooLongOrHoldsWhatNobodySees)
{
    goTo(SetUpPart::Couplings);
    openBy("addCoupling");
    auto* name = page.findChild<QLineEdit*>("couplingName");
    for (const QString& typed : {QString{201, QLatin1Char('x')}, QStringLiteral("Rudder \u202E60.0"),
                                 QStringLiteral("Rud\u200Bder")}) {
        name->setText(typed);
        press(Qt::Key_Return);
        EXPECT_EQ(said("couplingName"),
                  text(typed.size() > 200 ? SetUpWords::tooLong(200) : SetUpWords::invisible()));
        EXPECT_EQ(name->text(), typed) << "nothing typed is touched";
        EXPECT_EQ(view().couplings.size(), 2u);
    }
    name->setText(QString{200, QLatin1Char('x')});
    press(Qt::Key_Return);
    EXPECT_EQ(view().couplings.size(), 3u);
}

TEST_F(SetUpPageOfAHangar, AsksForATickAmongTheUsualCouplings)
{
    goTo(SetUpPart::Couplings);
    openBy("usualCouplings");
    press(Qt::Key_Return);
    EXPECT_EQ(view().couplings.size(), 2u);
    EXPECT_TRUE(isShown("usual0"));
}

TEST_F(SetUpPageOfAHangar, RefusesASetWithoutLeavesAndDoubtfulSizes)
{
    goTo(SetUpPart::Gauges);
    openBy("addGauge");
    type("C");
    press(Qt::Key_Return);
    EXPECT_EQ(said("sizes"), text(GaugeWords::refused({SizeListProblem::Empty, {}, {}, {}}, {})));
    EXPECT_EQ(focused(), "sizes");
    type("0,05, 0,10");
    press(Qt::Key_Return);
    EXPECT_EQ(said("sizes"), text(GaugeWords::refused({SizeListProblem::CommaOrSeparator, {}, {}, {}}, {})));
    EXPECT_EQ(line("sizes")->text(), "0,05, 0,10");
    enter("sizes", "0,05; 0,10");
    enter("tolerance", "1.234,5");
    press(Qt::Key_Return);
    EXPECT_EQ(said("sizes"), "");
    EXPECT_NE(said("tolerance"), "");
    EXPECT_EQ(focused(), "tolerance");
    enter("tolerance", "0,005");
    press(Qt::Key_Return);
    ASSERT_EQ(view().gauges.size(), 2u);
    EXPECT_EQ(view().gauges.back().gauge.set.sizes().size(), 2u);
    EXPECT_EQ(view().gauges.back().gauge.tolerance, Gap::micrometres(5));
}

TEST_F(SetUpPageOfAHangar, AsksATaperGaugeForItsResolutionAndNotForSizes)
{
    goTo(SetUpPart::Gauges);
    openBy("addGauge");
    type("T");
    tabTo("gaugeKind");
    press(Qt::Key_End);
    press(Qt::Key_Up); // before the go/no-go block
    EXPECT_FALSE(isShown("sizes"));
    enter("resolution", "0.05");
    press(Qt::Key_Return);
    EXPECT_EQ(view().gauges.back().gauge.set.kind(), GaugeKind::Taper);
    EXPECT_EQ(row("gauge", 1), text(GaugeWords::line("T", GaugeWords::kindName(GaugeKind::Taper))));
}

TEST_F(SetUpPageOfAHangar, NotesThatALeafSetIsInDoubtFromADay)
{
    goTo(SetUpPart::Gauges);
    openBy("noteCheck");
    enter("checkDay", "2026-05-03");
    press(Qt::Key_Return);
    EXPECT_EQ(said("checkDay"), text(SetUpWords::dayToCome()));
    EXPECT_EQ(said("checkHow"), text(GaugeWords::howMissing()));
    EXPECT_EQ(said("checkFound"), text(GaugeWords::foundMissing()));
    enter("checkDay", "2026-05-02");
    enter("checkHow", "micrometer");
    enter("checkFound", "worn tips");
    EXPECT_FALSE(isShown("doubtedFrom"));
    tabTo("checkUsable");
    press(Qt::Key_Down); // in doubt
    ASSERT_TRUE(isShown("doubtedFrom"));
    enter("doubtedFrom", "2026-04-10");
    press(Qt::Key_Return);
    EXPECT_EQ(view().gauges.front().doubtedSince, dayOf(2026, 4, 10));
    const auto* rowOfA = page.findChild<QAbstractButton*>("gauge0");
    EXPECT_EQ(rowOfA->accessibleDescription(), GaugeWords::doubtedSince("10 April 2026"));
}

TEST_F(SetUpPageOfAHangar, RefusesTheSamePersonTwice)
{
    goTo(SetUpPart::People);
    press(Qt::Key_Return);
    type("m. oren");
    press(Qt::Key_Return);
    EXPECT_EQ(said("personName"), text(SetUpWords::nameTaken("m. oren")));
    EXPECT_EQ(line("personName")->text(), "m. oren");
    EXPECT_EQ(view().persons.size(), 2u);
}

TEST_F(SetUpPageOfAHangar, RefusesAnEventToComeAndRemindsOfTheFitting)
{
    goTo(SetUpPart::Events);
    press(Qt::Key_Return);
    ASSERT_EQ(focused(), "eventKind");
    EXPECT_FALSE(isShown("startFittingToo"));
    press(Qt::Key_Down);
    press(Qt::Key_Down); // refitted
    EXPECT_TRUE(isShown("startFittingToo"));
    enter("eventDay", "2026-06-01");
    press(Qt::Key_Return);
    EXPECT_EQ(said("eventDay"), text(SetUpWords::dayToCome()));
    enter("eventDay", "2026-05-01");
    press(Qt::Key_Return);
    ASSERT_EQ(view().events.size(), 1u);
    EXPECT_EQ(view().events.front().event.kind, EventKind::Refitted);
    EXPECT_EQ(row("event", 0), text(SetUpWords::eventLine("1 May 2026", SetUpWords::kind(EventKind::Refitted),
                                                          SetUpWords::wholeAirframe())));
}

TEST_F(SetUpPageOfAHangar, KeepsTheNameOfWhoEnters)
{
    const auto* who = page.findChild<QComboBox*>("statedBy");
    EXPECT_EQ(who->currentText(), SetUpWords::nobodyNamed()) << "nobody is filled in";
    page.findChild<QWidget*>("statedBy")->setFocus();
    press(Qt::Key_Down);
    goTo(SetUpPart::People);
    press(Qt::Key_Return);
    type("J. Iver");
    press(Qt::Key_Return);
    EXPECT_EQ(view().persons.back().stamp.by, hangar.oren);
}

TEST_F(SetUpPageOfAHangar, SaysWhenTheFileCannotBeWrittenAndKeepsWhatIsTyped)
{
    // Another window is in the middle of a write.
    const auto file = must(StoreFile::open(store.path(), OpenAs::Existing, store.clock()));
    IdSource ids{7};
    Records other{*file, ids, store.clock()};
    goTo(SetUpPart::People);
    press(Qt::Key_Return);
    type("J. Iver");
    const Outcome held = other.together([this]() -> Outcome {
        press(Qt::Key_Return);
        return Done{};
    });
    EXPECT_TRUE(held);
    EXPECT_FALSE(problem.isEmpty());
    EXPECT_EQ(line("personName")->text(), "J. Iver");
    press(Qt::Key_Return);
    EXPECT_EQ(view().persons.size(), 3u);
}

TEST_F(SetUpPageOfAHangar, TakesTheKeysOfTheBaselineDayAsSoonAsItIsOpened)
{
    Reading before = hangar.reading(between(500, 550), store.clock().now());
    before.purpose = Purpose::Baseline;
    must(store.records().add(before, std::nullopt));
    goTo(SetUpPart::BaselineDay);
    QTest::keyClick(&part(page, "baselinePerson"), Qt::Key_Down);
    type("yy0.45");
    press(Qt::Key_Return);
    const auto kept = must(store.records().readings(hangar.airframe));
    ASSERT_EQ(kept.size(), 2U);
    EXPECT_EQ(kept.back().reading.coupling, hangar.leftAileron);
    EXPECT_EQ(kept.back().reading.person, hangar.oren);
    EXPECT_EQ(kept.back().reading.gauge, hangar.setA);
}

TEST_F(SetUpPageOfAHangar, GivesEveryControlANameAndClipsNoneAtLargeText)
{
    Look look;
    look.fonts.scale = 1.5;
    page.setStyleSheet(styleSheetFor(look.theme, look.fonts));
    page.setLook(look);
    int looked = 0;
    const auto check = [&](const std::string& where) {
        settle();
        for (const QAbstractButton* one : page.findChildren<QAbstractButton*>()) {
            if (!one->isVisible() || one->inherits("rig::MarkRow"))
                continue;
            ++looked;
            EXPECT_FALSE(one->text().isEmpty() && one->accessibleName().isEmpty()) << where;
            EXPECT_GE(one->width(), one->sizeHint().width()) << where << ": " << one->text().toStdString();
            EXPECT_GE(one->height(), one->sizeHint().height()) << where << ": " << one->text().toStdString();
        }
        for (const QLabel* one : page.findChildren<QLabel*>()) {
            if (!one->isVisible() || one->text().isEmpty())
                continue;
            const int needed = one->wordWrap() ? one->heightForWidth(one->width()) : one->sizeHint().height();
            EXPECT_GE(one->height(), needed) << where << ": " << one->text().toStdString();
        }
        for (const QLineEdit* one : page.findChildren<QLineEdit*>())
            EXPECT_FALSE(one->accessibleName().isEmpty()) << where << one->objectName().toStdString();
    };
    for (const SetUpPart part : {SetUpPart::Airframe, SetUpPart::Couplings, SetUpPart::Surfaces,
                                 SetUpPart::Gauges, SetUpPart::People, SetUpPart::Events}) {
        goTo(part);
        check("part " + std::to_string(static_cast<int>(part)));
        for (const char* opens : {"changeCoupling", "newFitting", "usualCouplings", "changeGauge",
                                  "noteCheck", "changePerson", "addSurface", "addEvent", "furtherAirframe"}) {
            if (!isShown(opens))
                continue;
            button(opens)->click();
            check(opens);
            press(Qt::Key_Escape);
        }
    }
    EXPECT_GT(looked, 40);
}
