// Every page of the demonstration has room for its words, in the sizes of window and text that people use.

#include "app/pages/prompts.h"
#include "app/window/main_window.h"
#include "tests/support/clipped.h"
#include "tests/support/on_screen.h"
#include "tests/support/temp_store.h"
#include "tests/support/typing.h"
#include "tests/support/who_connected.h"

#include <QAbstractButton>
#include <QMenu>
#include <QPushButton>

using namespace rig;
using namespace rig::test;

namespace {

struct Room
{
    const char* name;
    QSize window;
    double text;
};

class EveryPage : public testing::TestWithParam<Room>
{
protected:
    EveryPage()
    {
        clock.set(dayOf(2026, 11, 2));
        window.setLook(lookAt(GetParam().text));
        window.resize(GetParam().window);
        window.show();
        window.openDemo();
        window.activateWindow();
        Typist::look();
    }

    void expectRoom(const std::string& where, int atLeast)
    {
        Typist::look();
        SCOPED_TRACE(where);
        EXPECT_EQ(window.size(), GetParam().window) << "it needs a larger window";
        expectNothingClipped(window, atLeast);
    }

    void click(const char* name)
    {
        Typist::look();
        part<QAbstractButton>(window, name).click();
    }

    QList<QAction*> airframes()
    {
        return part<QPushButton>(window, "registration").findChild<QMenu*>()->actions();
    }

    FixedClock clock;
    WindowPrompts prompts;
    MainWindow window{clock, prompts};
    Typist typist{window};
};

INSTANTIATE_TEST_SUITE_P(HasRoom, EveryPage,
                         testing::Values(Room{"AtTheUsualSize", {1280, 800}, 1},
                                         Room{"InASmallWindow", {1024, 740}, 1},
                                         Room{"AtLargeText", {1280, 800}, 1.5}),
                         [](const auto& room) { return std::string{room.param.name}; });

} // namespace

TEST_P(EveryPage, OfEveryAirframeHoldsItsWords)
{
    ASSERT_EQ(airframes().size(), 3);
    for (qsizetype i = 0; i < airframes().size(); ++i) {
        airframes().at(i)->trigger();
        SCOPED_TRACE(i);
        window.showMoment(Moments::RiggedToday);
        expectRoom("before a record", 15);
        window.showMoment(Moments::Trends);
        expectRoom("trends", 18);
        typist.type("a");
        expectRoom("trends of all couplings", 14);
        typist.type("a");
        window.showMoment(Moments::BeforeTheAnnual);
        expectRoom("before the annual", 30);
        window.showMoment(Moments::KnowThisAirframe);
        expectRoom("know", 8);
        window.showQuestions();
        expectRoom("questions", 12);
    }
}

TEST_P(EveryPage, OfTheWelcomeHoldsItsWords)
{
    MainWindow empty{clock, prompts};
    empty.setLook(lookAt(GetParam().text));
    empty.resize(GetParam().window);
    empty.show();
    Typist::look();
    EXPECT_EQ(empty.size(), GetParam().window) << "it needs a larger window";
    expectNothingClipped(empty, 6);
}

TEST_P(EveryPage, OfARiggingHoldsItsWords)
{
    typist.goTo("leader");
    typist.press(Qt::Key_Down);
    click("riggedAnew");
    click("begin");
    expectRoom("who connected", 20);
    typist.type("12");
    passWhoConnected(window, typist);
    expectRoom("the look", 30);
    typist.goTo("measuredWith");
    typist.press(Qt::Key_Down);
    typist.type("yyy");
    expectRoom("measuring", 40);
    typist.type("0.45\n");
    expectRoom("inside", 30);
    typist.type("x");
    expectRoom("why it is struck", 34);
    typist.press(Qt::Key_Escape);
    typist.type("yy\nyyy0.95\n");
    expectRoom("outside", 30);
    typist.type("n");
    expectRoom("a no", 30);
    typist.type("s");
    expectRoom("the second person", 30);
    typist.type("s");
    click("recordRow10");
    expectRoom("the control check", 30);
    click("recordRow11");
    expectRoom("the close", 20);
}

TEST_P(EveryPage, OfSettingUpHoldsItsWords)
{
    window.showMoment(Moments::SetUp);
    int parts = 0;
    for (int i = 0; window.findChild<QAbstractButton*>(QStringLiteral("part%1").arg(i)); ++i, ++parts) {
        click(("part" + std::to_string(i)).c_str());
        expectRoom("part " + std::to_string(i), 12);
    }
    EXPECT_EQ(parts, 8);
}

TEST_P(EveryPage, OfTheReportHoldsItsWords)
{
    window.showMoment(Moments::BeforeTheAnnual);
    click("annualReport");
    expectRoom("the report before it is written", 15);
}
