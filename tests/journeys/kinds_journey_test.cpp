// Rigging couplings of several kinds, by keys alone: each asks its own questions, and where there is no gap
// none is asked.

#include "app/pages/rigged_today/rigged_today_page.h"
#include "tests/support/clipped.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/typing.h"
#include "tests/support/who_connected.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

using namespace rig;
using namespace rig::test;

namespace {

// The left aileron has a safety pin and no sleeve; the elevator connects by itself and has something to pull;
// the dump line of the water ballast is only looked at.
class KindsJourney : public testing::TestWithParam<Pace>
{
protected:
    KindsJourney()
    {
        Coupling left = must(store.records().couplings(hangar.airframe)).front();
        left.kind = CouplingKind::Pin;
        must(store.records().add(left));
        Coupling right = must(store.records().couplings(hangar.airframe)).back();
        right.inUse = false;
        must(store.records().add(right));
        elevator = add("Elevator", Circuit::Elevator, CouplingKind::ByItself, {false, true, false});
        dump = add("Water dump", Circuit::WaterDump, CouplingKind::WaterBallast, {false, false, false});
        Surface surface;
        surface.airframe = hangar.airframe;
        surface.name = "Trim";
        surface.kind = SurfaceKind::Trim;
        must(store.records().add(surface));
        showAt(page, {1280, 744});
        page.showAirframe(hangar.airframe);
        QObject::connect(&page, &Page::problemArose, &page,
                         [this](const QString& sentence) { problem = sentence; });
        typist.goTo("leader");
        press(Qt::Key_Down);
        press(Qt::Key_Tab);
        press(Qt::Key_Return);
        Typist::look();
        for (QCheckBox* box : page.findChildren<QCheckBox*>())
            if (box->objectName().startsWith("season"))
                box->click();
        Typist::look();
        typist.goTo("seasonNext");
        press(Qt::Key_Return);
        Typist::look();
        passWhoConnected(page, typist);
    }

    CouplingId add(const char* name, Circuit circuit, CouplingKind kind, CouplingParts parts)
    {
        Coupling coupling = aCoupling(hangar.airframe, name);
        coupling.circuit = circuit;
        coupling.kind = kind;
        coupling.parts = parts;
        coupling.riggingOrder = ++order;
        const CouplingId id = must(store.records().add(coupling));
        Fitting fitting;
        fitting.coupling = id;
        fitting.begins = dayOf(2026, 3, 1);
        must(store.records().add(fitting));
        return id;
    }

    void press(Qt::Key key) { typist.press(key); }
    void type(const QString& text) { typist.type(text); }

    std::string text(const char* label)
    {
        Typist::look();
        return part<QLabel>(page, label).text().toStdString();
    }

    bool isSeen(const char* name)
    {
        Typist::look();
        return page.findChild<QWidget*>(QLatin1String(name))->isVisible();
    }

    std::string rowDetail(const char* name)
    {
        Typist::look();
        return part<QAbstractButton>(page, name).accessibleDescription().toStdString();
    }

    RecordContent content()
    {
        Typist::look();
        return must(store.records().content(must(store.records().riggingRecords(hangar.airframe)).back().id));
    }

    // The left aileron as first person, to the next coupling.
    void rigTheAileron()
    {
        type("yyy0.5");
        press(Qt::Key_Return);
        type("yy");
        press(Qt::Key_Return);
        Typist::look();
    }

    TempStore store;
    Hangar hangar{store.records()};
    int order = 0;
    CouplingId elevator;
    CouplingId dump;
    ScriptedPrompts prompts;
    RiggedTodayPage page{store.records(), store.clock(), prompts};
    Typist typist{page, GetParam()};
    QString problem;
};

INSTANTIATE_TEST_SUITE_P(Typing, KindsJourney, kPaces, nameOfPace);

} // namespace

TEST_P(KindsJourney, EachKindIsAskedItsOwnQuestionsToACompleteClose)
{
    EXPECT_EQ(text("couplingTitle"), "Left aileron");
    EXPECT_TRUE(isSeen("tilePin"));
    EXPECT_FALSE(isSeen("tile2")) << "it has no sleeve";
    rigTheAileron();
    EXPECT_EQ(content().checks[2].kind, CheckKind::PinThrough);

    EXPECT_EQ(text("couplingTitle"), "Elevator");
    for (const char* gone : {"tile0", "tile1", "tile2", "tilePin", "leafRow", "gapStrip", "measuredWith",
                             "measureAgain", "tileSecured", "lastTwelve"})
        EXPECT_FALSE(isSeen(gone)) << gone;
    for (const char* there : {"tileEngaged", "tileNoStep", "tilePull", "noGapHere"})
        EXPECT_TRUE(isSeen(there)) << there;
    expectNothingClipped(page, 10);
    type("y");
    type("0.5");
    EXPECT_TRUE(QString::fromStdString(text("couplingNotice")).startsWith("No gap to measure here:"));
    type("fy");
    EXPECT_EQ(text("recordProgress"), "2 of 3 couplings done");
    EXPECT_EQ(rowDetail("recordRow3"), "no gap to measure · look · pull");
    press(Qt::Key_Return);

    EXPECT_EQ(text("couplingTitle"), "Water dump");
    EXPECT_FALSE(isSeen("tilePull")) << "there is nothing to pull";
    type("y");
    EXPECT_EQ(text("recordProgress"), "3 of 3 couplings done");
    press(Qt::Key_Return);

    EXPECT_EQ(text("couplingTitle"), "Left aileron") << "the second inspection begins";
    typist.goTo("measuredBy");
    press(Qt::Key_Down);
    type("yyyy");
    press(Qt::Key_Return);
    EXPECT_EQ(text("couplingNotice"), "Your own look and pull. The first result is hidden.");
    type("yyy");
    press(Qt::Key_Return);
    EXPECT_EQ(text("couplingNotice"), "Your own look. The first result is hidden.");
    type("y");
    press(Qt::Key_Return);

    EXPECT_EQ(text("surfaceTitle"), "Trim") << "the control check begins";
    typist.goTo("atSurface");
    press(Qt::Key_Down);
    typist.goTo("inCockpit");
    press(Qt::Key_Down);
    press(Qt::Key_Down);
    press(Qt::Key_Up); // what it does while the lever goes one way, and the other
    press(Qt::Key_Down);
    type("yyy");
    press(Qt::Key_Return);
    EXPECT_EQ(text("openItems"), "•  Left aileron: no band yet, the reading could not be judged")
        << "nothing is missing of what has no gap";
    for (const char* count : {"toolsCounted", "hatchesOn"}) {
        typist.goTo(count);
        press(Qt::Key_Space);
    }
    typist.goTo("closeFirst");
    press(Qt::Key_Down);
    typist.goTo("closeSecond");
    press(Qt::Key_Down);
    press(Qt::Key_Down);
    typist.goTo("closeRecord");
    press(Qt::Key_Return);
    const RecordContent now = content();
    ASSERT_TRUE(now.close);
    EXPECT_EQ(now.close->closing, Closing::Complete);
    EXPECT_EQ(std::count_if(now.readings.begin(), now.readings.end(),
                            [this](const Reading& one) { return one.coupling != hangar.leftAileron; }),
              0);
    EXPECT_TRUE(problem.isEmpty()) << problem.toStdString();
}

TEST_P(KindsJourney, ANoStopsOneThatConnectsByItselfAtOnceAndNothingIsMeasuredThere)
{
    rigTheAileron();
    type("yn");
    EXPECT_TRUE(
        QString::fromStdString(text("stopWhy")).contains("the parts do not meet all round, or are not flush"))
        << text("stopWhy");
    EXPECT_FALSE(isSeen("leafRow"));
    EXPECT_FALSE(isSeen("measureAgain"));
    type("y");
    type("m");
    const RecordContent now = content();
    EXPECT_EQ(now.questions.size(), 1U);
    EXPECT_EQ(now.questions.front().question.check, CheckKind::NoStep);
    EXPECT_EQ(std::count_if(now.checks.begin(), now.checks.end(),
                            [this](const Check& one) { return one.coupling == elevator; }),
              2)
        << "nothing else is asked";
}

TEST_P(KindsJourney, JointPlayIsKeptFromItsOwnCardAndNoKeyInItAnswersAQuestion)
{
    type("p");
    EXPECT_TRUE(isSeen("jointPlayCard"));
    EXPECT_EQ(typist.focused(), "playAlong");
    expectNothingClipped(page, 10);
    press(Qt::Key_Down);
    press(Qt::Key_Down); // felt
    type("y");
    EXPECT_TRUE(content().checks.empty()) << "the look waits behind it";
    typist.tabTo("playAlongMm");
    type("nothing");
    press(Qt::Key_Return);
    EXPECT_TRUE(isSeen("playProblem"));
    EXPECT_TRUE(content().jointPlays.empty());
    typist.tabTo("playAlongMm");
    for (int i = 0; i < 7; ++i)
        press(Qt::Key_Backspace);
    type("0,15");
    typist.tabTo("playNote");
    type("dial gauge");
    press(Qt::Key_Return);
    const RecordContent now = content();
    ASSERT_EQ(now.jointPlays.size(), 1U);
    const JointPlay& play = now.jointPlays.front();
    EXPECT_EQ(play.coupling, hangar.leftAileron);
    EXPECT_EQ(play.person, hangar.oren);
    EXPECT_EQ(play.along, (PlayFound{PlayFelt::Felt, Gap::micrometres(150)}));
    EXPECT_EQ(play.across.felt, PlayFelt::NotTried);
    EXPECT_EQ(play.note, "dial gauge");
    EXPECT_FALSE(isSeen("jointPlayCard"));
    EXPECT_TRUE(QString::fromStdString(text("jointPlays"))
                    .endsWith("If there is a limit, it is in the manual. Refer any play to the engineer."));
    EXPECT_EQ(text("couplingTitle"), "Left aileron");
    EXPECT_TRUE(now.checks.empty());

    type("p");
    press(Qt::Key_Escape);
    EXPECT_FALSE(isSeen("jointPlayCard"));
    EXPECT_TRUE(content().interruptions.empty()) << "Esc closed the card and nothing else";
    type("yyy");
    EXPECT_EQ(content().checks.size(), 3U) << "the keys are the look's again";
}

TEST_P(KindsJourney, HasRoomForItsWordsInTheSizesThatPeopleUse)
{
    struct Room
    {
        QSize window;
        double text;
    };
    for (const Room& room : {Room{{1280, 744}, 1.0}, Room{{1024, 684}, 1.0}, Room{{1280, 744}, 1.5}}) {
        SCOPED_TRACE(std::to_string(room.window.width()) + " at " + std::to_string(room.text));
        page.setLook(lookAt(room.text));
        showAt(page, room.window, lookAt(room.text));
        for (int at = 0; at < 3; ++at) {
            Typist::look();
            SCOPED_TRACE(text("couplingTitle"));
            expectNothingClipped(page, 10);
            type("p");
            Typist::look();
            EXPECT_TRUE(isSeen("jointPlayCard"));
            expectNothingClipped(page, 10);
            press(Qt::Key_Escape);
            press(Qt::Key_PageDown);
        }
        for (int at = 0; at < 3; ++at)
            press(Qt::Key_PageUp);
    }
}
