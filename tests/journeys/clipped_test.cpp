// Every page of the demonstration has room for its words, in the sizes of window and text that people use.

#include "app/pages/prompts.h"
#include "app/window/main_window.h"
#include "app/wording/language.h"
#include "app/wording/rigged_words.h"
#include "app/wording/wide_words.h"
#include "tests/support/clipped.h"
#include "tests/support/on_screen.h"
#include "tests/support/temp_store.h"
#include "tests/support/typing.h"
#include "tests/support/who_connected.h"

#include <QAbstractButton>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMouseEvent>
#include <QPushButton>
#include <QTest>

#include <algorithm>

using namespace rig;
using namespace rig::test;

namespace {

struct Room
{
    const char* name;
    QSize window;
    double text;
    const char* language = "en";

    friend std::ostream& operator<<(std::ostream& out, const Room& room) { return out << room.name; }
};

// English, German and French, or what is wider than any of them.
class Spoken
{
public:
    explicit Spoken(const QString& language) : m_speech{language}
    {
        if (language == QStringLiteral("wide"))
            QCoreApplication::installTranslator(&m_wide);
    }
    ~Spoken() { QCoreApplication::removeTranslator(&m_wide); }

private:
    Speech m_speech;
    WideWords m_wide;
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

    Spoken spoken{GetParam().language};
    FixedClock clock;
    WindowPrompts prompts;
    MainWindow window{clock, prompts};
    Typist typist{window};
};

INSTANTIATE_TEST_SUITE_P(
    HasRoom, EveryPage,
    testing::Values(Room{"AtTheUsualSize", {1280, 800}, 1}, Room{"InASmallWindow", {1024, 740}, 1},
                    Room{"InALowWindow", {1366, 700}, 1}, Room{"InALargeWindow", {1920, 1080}, 1},
                    Room{"AtLargeText", {1280, 800}, 1.5}, Room{"InGerman", {1280, 800}, 1, "de"},
                    Room{"InGermanAtLargeText", {1280, 800}, 1.5, "de"},
                    Room{"InFrench", {1280, 800}, 1, "fr"},
                    Room{"InFrenchAtLargeText", {1280, 800}, 1.5, "fr"},
                    Room{"InWiderWords", {1280, 800}, 1, "wide"}),
    [](const auto& room) { return std::string{room.param.name}; });

// Pages of which every part has to be reached in the largest text in a small window too.
class LargestText : public EveryPage
{
protected:
    void expectReach(const std::string& where, int atLeast)
    {
        expectRoom(where, atLeast);
        for (const std::string& one : beyondReachOn(window))
            ADD_FAILURE() << where << ": " << one;
    }
};

INSTANTIATE_TEST_SUITE_P(HasRoom, LargestText,
                         testing::Values(Room{"AtOneAndAHalf", {1280, 800}, 1.5},
                                         Room{"AtOneAndAHalfInASmallWindow", {1024, 740}, 1.5},
                                         Room{"AtTwice", {1280, 800}, 2},
                                         Room{"AtTwiceInASmallWindow", {1024, 740}, 2}),
                         [](const auto& room) { return std::string{room.param.name}; });

// What is long in the largest text.
class LargestReading : public EveryPage
{
protected:
    int topOnWindow(const QWidget& one) { return one.mapTo(&window, QPoint{}).y(); }

    // The highest part that is seen of the buttons that always stay in sight.
    int topOfFoot()
    {
        int top = window.height();
        for (const char* name : {"correct", "strike", "measureAgain", "play", "turn", "next"}) {
            const auto& button = part<QPushButton>(window, name);
            if (const QRect seen = button.visibleRegion().boundingRect(); !seen.isEmpty())
                top = std::min(top, topOnWindow(button) + seen.top());
        }
        return top;
    }
};

INSTANTIATE_TEST_SUITE_P(IsRead, LargestReading,
                         testing::Values(Room{"InEnglish", {1280, 800}, 2},
                                         Room{"InGerman", {1280, 800}, 2, "de"},
                                         Room{"InFrench", {1280, 800}, 2, "fr"},
                                         Room{"InASmallWindow", {1024, 740}, 2}),
                         [](const auto& room) { return std::string{room.param.name}; });

} // namespace

TEST_P(LargestReading, KeepsTheHeadOfItsVerdictInViewAboveASmallFoot)
{
    typist.goTo("leader");
    typist.press(Qt::Key_Down);
    click("riggedAnew");
    click("begin");
    passWhoConnected(window, typist);
    typist.goTo("measuredWith");
    typist.press(Qt::Key_Down);
    typist.type(QString{RiggedWords::keyYes()}.repeated(3) + "0.45\n");
    Typist::look();
    const auto& word = part<QWidget>(window, "verdictWord");
    ASSERT_TRUE(word.isVisible());
    EXPECT_EQ(word.visibleRegion().boundingRect(), word.rect());
    const auto& figure = part<QWidget>(window, "verdictExplanation");
    EXPECT_EQ(figure.visibleRegion().boundingRect().top(), 0) << "the figure begins the sentence";
    EXPECT_GE(figure.visibleRegion().boundingRect().height(), figure.fontMetrics().height());
    const auto& next = part<QWidget>(window, "next");
    EXPECT_EQ(next.visibleRegion().boundingRect(), next.rect());
    EXPECT_LE(window.height() - topOfFoot(), window.height() / 3);
    typist.type(RiggedWords::keyYes());
    Typist::look();
    const QWidget& answer = *part<QWidget>(window, "tileSecured").findChild<QPushButton*>();
    EXPECT_EQ(answer.visibleRegion().boundingRect(), answer.rect()) << "whoever answers goes on below";
}

TEST_P(LargestText, OfTheQuestionsHoldsItsWords)
{
    window.showQuestions();
    expectReach("questions", 12);
    click("openCloseForm");
    expectReach("closing one", 12);
}

TEST_P(LargestText, OfARiggingHoldsItsWords)
{
    typist.goTo("leader");
    typist.press(Qt::Key_Down);
    click("riggedAnew");
    click("begin");
    expectReach("who connected", 12);
    passWhoConnected(window, typist);
    typist.goTo("measuredWith");
    typist.press(Qt::Key_Down);
    expectReach("the look", 12);
    typist.type("yyy0.45\n");
    expectReach("inside", 12);
    typist.type("yy\nyyy0.95\n");
    expectReach("outside", 12);
    click("recordRow10");
    expectReach("the control check", 12);
    click("recordRow11");
    expectReach("the close", 12);
}

TEST_P(LargestText, OfKnowThisAirframeHoldsItsWords)
{
    window.showMoment(Moments::KnowThisAirframe);
    auto& who = part<QComboBox>(window, "whoLearns");
    who.setCurrentIndex(4);
    emit who.activated(4);
    for (int i = 0; i < 6; ++i) {
        click(("learnPart" + std::to_string(i)).c_str());
        expectReach("part " + std::to_string(i), 12);
        if (i != 1 && i != 2)
            continue;
        typist.type(i == 1 ? "o" : "b");
        expectReach("asked in part " + std::to_string(i), 12);
        typist.type("1s");
        expectReach("told in part " + std::to_string(i), 12);
    }
}

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

TEST_P(EveryPage, OfARiggingKeepsNameVerdictAndTheNextPressInView)
{
    typist.goTo("leader");
    typist.press(Qt::Key_Down);
    click("riggedAnew");
    click("begin");
    const auto expectInView = [this](const QWidget& one, const char* when) {
        Typist::look();
        EXPECT_EQ(one.visibleRegion().boundingRect(), one.rect())
            << when << ": " << one.objectName().toStdString();
    };
    for (const char* asked : {"connected1_0", "connected2_0"}) {
        expectInView(part<QWidget>(window, asked), "who connected");
        expectInView(part<QWidget>(window, "connectedNext"), "who connected");
        typist.type("1\n");
    }
    passWhoConnected(window, typist);
    typist.goTo("measuredWith");
    typist.press(Qt::Key_Down);
    const auto firstAnswer = [this](const char* tile) -> const QWidget& {
        return *part<QWidget>(window, tile).findChild<QPushButton*>();
    };
    expectInView(firstAnswer("tile0"), "the look");
    typist.type("yyy");
    expectInView(part<QWidget>(window, "couplingTitle"), "measuring");
    expectInView(part<QWidget>(window, "leafRow"), "measuring");
    typist.type("0.45\n");
    for (const char* name : {"couplingTitle", "verdictWord", "verdictExplanation", "verdictCaution"})
        expectInView(part<QWidget>(window, name), "read");
    expectInView(firstAnswer("tilePull"), "read");
    typist.type("y");
    expectInView(firstAnswer("tileSecured"), "pulled");
    typist.type("y\nyyy0.95\n");
    expectInView(part<QWidget>(window, "couplingTitle"), "outside");
    expectInView(part<QWidget>(window, "stopCard"), "outside");
    expectInView(part<QWidget>(window, "next"), "outside");
}

TEST_P(EveryPage, OfARiggingTakesAQuickSecondPressOnlyWhereTheFirstWas)
{
    typist.goTo("leader");
    typist.press(Qt::Key_Down);
    click("riggedAnew");
    click("begin");
    passWhoConnected(window, typist);
    typist.goTo("measuredWith");
    typist.press(Qt::Key_Down);
    typist.type("yy");
    // The look folds at this press; whatever comes under the finger must not take the second half of it.
    const auto answers = part<QWidget>(window, "tile2").findChildren<QPushButton*>();
    QTest::mouseClick(answers.front(), Qt::LeftButton);
    Typist::look();
    QPushButton* leaf = nullptr;
    for (QPushButton* one : part<QWidget>(window, "leafRow").findChildren<QPushButton*>("leaf"))
        if (one->isVisible() && one->isEnabled())
            leaf = one;
    ASSERT_TRUE(leaf);
    const QPointF at = leaf->rect().center();
    QMouseEvent second{QEvent::MouseButtonDblClick,
                       at,
                       leaf->mapToGlobal(at),
                       Qt::LeftButton,
                       Qt::LeftButton,
                       Qt::NoModifier};
    QApplication::sendEvent(leaf, &second); // as a window does: the press here was the second of two
    QTest::mouseRelease(leaf, Qt::LeftButton);
    Typist::look();
    EXPECT_FALSE(part<QWidget>(window, "verdictWord").isVisible()) << "nothing was read";
    QTest::mouseClick(leaf, Qt::LeftButton);
    Typist::look();
    EXPECT_TRUE(part<QWidget>(window, "verdictWord").isVisible());
}

TEST_P(EveryPage, OfSettingUpHoldsItsWords)
{
    window.showMoment(Moments::SetUp);
    int parts = 0;
    for (int i = 0; window.findChild<QAbstractButton*>(QStringLiteral("part%1").arg(i)); ++i, ++parts) {
        click(("part" + std::to_string(i)).c_str());
        expectRoom("part " + std::to_string(i), 12);
    }
    EXPECT_EQ(parts, 9);
}

TEST_P(EveryPage, OfTypingInFromPaperHoldsItsWords)
{
    window.showMoment(Moments::SetUp);
    click("part8");
    part<QPushButton>(*window.page(Moments::SetUp), "enterFromPaper").click();
    expectRoom("the head of the sheet", 12);
    part<QLineEdit>(window, "paperDay").setText("2026-04-03");
    part<QLineEdit>(window, "paperTime").setText("09:30");
    for (const char* box : {"paperFirst", "paperTypist"})
        part<QComboBox>(window, box).setCurrentIndex(1);
    part<QComboBox>(window, "paperSecond").setCurrentIndex(2);
    click("paperApart");
    click("paperBegin");
    Typist::look();
    if (part<QWidget>(window, "seasonNext").isVisible())
        click("seasonNext");
    expectRoom("the first to type", 20);
    ASSERT_TRUE(part<QWidget>(window, "paperBanner").isVisible())
        << part<QLabel>(window, "paperRefused").text().toStdString();
    typist.type("s");
    expectRoom("the second to type", 20);
}

TEST_P(EveryPage, OfTheReportHoldsItsWords)
{
    window.showMoment(Moments::BeforeTheAnnual);
    click("annualReport");
    expectRoom("the report before it is written", 15);
}
