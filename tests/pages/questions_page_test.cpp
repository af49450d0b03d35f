// The questions page by keys: the list, the story, and the form that closes one.

#include "app/pages/questions/questions_page.h"
#include "app/widgets/choice_box.h"
#include "app/widgets/mark_row.h"
#include "app/wording/question_words.h"
#include "tests/support/clipped.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"

#include <QPlainTextEdit>
#include <QPushButton>

#include <algorithm>

using namespace rig;
using namespace rig::test;

namespace {

class QuestionsPageTest : public testing::Test
{
protected:
    QuestionsPageTest()
    {
        Airframe airframe = must(store.records().airframes()).front();
        airframe.callName = "A. Quill";
        airframe.callPhone = "0700 0";
        must(store.records().add(airframe));
        QObject::connect(&page, &QuestionsPage::leaveAsked, &page, [this] { ++left; });
        QObject::connect(&page, &Page::factsChanged, &page, [this] { ++changed; });
        QObject::connect(&page, &Page::problemArose, &page,
                         [this](const QString& sentence) { problem = sentence.toStdString(); });
    }

    QuestionId ask(QuestionKind kind, const CouplingId& coupling)
    {
        Question question;
        question.airframe = hangar.airframe;
        question.kind = kind;
        question.coupling = coupling;
        question.stamp.by = hangar.oren;
        return must(store.records().add(question));
    }

    void show(double scale = 1.0)
    {
        page.setLook(lookAt(scale));
        showAt(page, {1280, 740}, lookAt(scale));
        page.showAirframe(hangar.airframe);
        page.setFocus();
        QApplication::processEvents();
        QApplication::processEvents();
    }

    void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier)
    {
        QTest::keyClick(page.focusWidget() ? page.focusWidget() : &page, key, with);
        QApplication::processEvents();
    }

    void type(const char* text) { QTest::keyClicks(page.focusWidget(), QLatin1String(text)); }

    std::string focused() { return page.focusWidget()->objectName().toStdString(); }
    bool isShown(const char* name) { return part(page, name).isVisible(); }

    TempStore store;
    Hangar hangar{store.records()};
    QuestionsPage page{store.records()};
    int left = 0;
    int changed = 0;
    std::string problem;
};

} // namespace

TEST_F(QuestionsPageTest, SaysThatThereIsNone)
{
    show();
    EXPECT_EQ(textOf(page, "questionsMessage"), QuestionWords::none().toStdString());
    press(Qt::Key_Escape);
    EXPECT_EQ(left, 1);
}

TEST_F(QuestionsPageTest, SaysWhomToCallAndThatNoLaterReadingClosesIt)
{
    ask(QuestionKind::OutsideReading, hangar.rightAileron);
    show();
    EXPECT_EQ(textOf(page, "questionsCount"), "1 open, 0 closed");
    EXPECT_EQ(textOf(page, "questionTitle"), "Right aileron, outside its band");
    EXPECT_EQ(textOf(page, "questionState"), "open since 2 May 2026");
    const std::string call = textOf(page, "questionCall");
    EXPECT_NE(call.find("call A. Quill (0700 0)"), std::string::npos) << call;
    EXPECT_NE(call.find("Only a person entitled to decide"), std::string::npos) << call;
    EXPECT_NE(call.find("never closes it"), std::string::npos) << call;
}

TEST_F(QuestionsPageTest, GoesThroughTheListByArrowsAndOpensTheFormByEnter)
{
    ask(QuestionKind::OutsideReading, hangar.rightAileron);
    ask(QuestionKind::CannotSee, hangar.leftAileron);
    show();
    EXPECT_EQ(focused(), "question0");
    press(Qt::Key_Down);
    EXPECT_EQ(textOf(page, "questionTitle"), "Left aileron, could not be seen");
    EXPECT_FALSE(isShown("decidedBy"));
    press(Qt::Key_Return);
    EXPECT_EQ(focused(), "decidedBy");
    press(Qt::Key_Tab);
    EXPECT_EQ(focused(), "questionFound");
    press(Qt::Key_Tab);
    EXPECT_EQ(focused(), "questionDone");
    press(Qt::Key_Tab);
    EXPECT_EQ(focused(), "enteredBy");
    press(Qt::Key_Tab);
    EXPECT_EQ(focused(), "saveClosing");
    press(Qt::Key_Escape);
    EXPECT_FALSE(isShown("decidedBy"));
    EXPECT_EQ(focused(), "question1");
    EXPECT_EQ(left, 0) << "the first Esc puts the form aside";
    press(Qt::Key_Escape);
    EXPECT_EQ(left, 1);
}

TEST_F(QuestionsPageTest, SaysEachLackInASentenceAndLosesNothingTyped)
{
    ask(QuestionKind::OutsideReading, hangar.rightAileron);
    show();
    press(Qt::Key_Return);
    EXPECT_FALSE(part<ChoiceBox>(page, "decidedBy").chosen<PersonId>()) << "nobody is filled in";
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(textOf(page, "decidedByProblem"), QuestionWords::personMissing().toStdString());
    EXPECT_EQ(textOf(page, "questionFoundProblem"), QuestionWords::foundMissing().toStdString());
    EXPECT_EQ(textOf(page, "questionDoneProblem"), QuestionWords::doneMissing().toStdString());
    EXPECT_EQ(focused(), "decidedBy");
    press(Qt::Key_Tab);
    type("grit");
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_FALSE(isShown("questionFoundProblem"));
    EXPECT_TRUE(isShown("questionDoneProblem"));
    EXPECT_EQ(part<QPlainTextEdit>(page, "questionFound").toPlainText(), "grit");
    EXPECT_EQ(changed, 0);
    EXPECT_TRUE(must(store.records().questions(hangar.airframe)).front().isOpen());
}

TEST_F(QuestionsPageTest, BringsTheFirstLackIntoViewWithItsSentence)
{
    ask(QuestionKind::OutsideReading, hangar.rightAileron);
    show(2.0);
    press(Qt::Key_Return);
    const auto expectInView = [this](const char* name) {
        const QWidget& one = part(page, name);
        EXPECT_EQ(one.visibleRegion().boundingRect(), one.rect()) << name;
    };
    press(Qt::Key_Return, Qt::ControlModifier);
    expectInView("decidedBy");
    expectInView("decidedByProblem");
    press(Qt::Key_Down); // M. Oren
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(focused(), "questionFound");
    expectInView("questionFound");
    expectInView("questionFoundProblem");
}

TEST_F(QuestionsPageTest, KeepsWhatWasTypedWhileOneLooksElsewhere)
{
    ask(QuestionKind::OutsideReading, hangar.rightAileron);
    ask(QuestionKind::CannotSee, hangar.leftAileron);
    show();
    press(Qt::Key_Return);
    press(Qt::Key_Tab);
    type("grit");
    press(Qt::Key_Escape);
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    EXPECT_EQ(part<QPlainTextEdit>(page, "questionFound").toPlainText(), "") << "of another question";
    press(Qt::Key_Escape);
    press(Qt::Key_Up);
    press(Qt::Key_Return);
    EXPECT_EQ(part<QPlainTextEdit>(page, "questionFound").toPlainText(), "grit");
}

TEST_F(QuestionsPageTest, TellsTheStoryOfAClosedOne)
{
    ask(QuestionKind::OutsideReading, hangar.rightAileron);
    show();
    press(Qt::Key_Return);
    press(Qt::Key_Down); // M. Oren
    press(Qt::Key_Tab);
    type("grit under the plunger");
    press(Qt::Key_Tab);
    type("cleaned");
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(changed, 1);
    EXPECT_EQ(problem, "");
    EXPECT_EQ(textOf(page, "closeResult"), QuestionWords::closedNow().toStdString());
    EXPECT_EQ(textOf(page, "questionsCount"), "0 open, 1 closed");
    EXPECT_EQ(textOf(page, "questionState"), "closed 2 May 2026 by M. Oren");
    EXPECT_EQ(textOf(page, "storyFound"), "grit under the plunger");
    EXPECT_EQ(textOf(page, "storyDone"), "cleaned");
    EXPECT_FALSE(isShown("openCloseForm"));
    EXPECT_FALSE(isShown("questionCall"));
    press(Qt::Key_Return);
    EXPECT_FALSE(isShown("decidedBy")) << "what is closed stays closed";
}

TEST_F(QuestionsPageTest, WhoeverComesBackComesToWhatIsOpen)
{
    ask(QuestionKind::OutsideReading, hangar.rightAileron);
    ask(QuestionKind::AnsweredNo, hangar.leftAileron);
    show();
    press(Qt::Key_Return);
    press(Qt::Key_Down);
    press(Qt::Key_Tab);
    type("grit");
    press(Qt::Key_Tab);
    type("cleaned");
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(textOf(page, "questionState").find("closed"), 0U) << "what became of it is read first";
    show();
    EXPECT_NE(textOf(page, "questionState").find("closed"), 0U);
}

TEST_F(QuestionsPageTest, KeepsTheFormWhenTheQuestionWasClosedElsewhere)
{
    const QuestionId id = ask(QuestionKind::OutsideReading, hangar.rightAileron);
    show();
    press(Qt::Key_Return);
    press(Qt::Key_Down);
    press(Qt::Key_Tab);
    type("grit");
    press(Qt::Key_Tab);
    type("cleaned");
    must(store.records().add(Resolution{{}, id, hangar.vale, "worn", "replaced", {}}));
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(textOf(page, "closeStatus"), QuestionWords::alreadyClosed().toStdString());
    EXPECT_EQ(part<QPlainTextEdit>(page, "questionDone").toPlainText(), "cleaned");
}

TEST_F(QuestionsPageTest, SaysWhereSomebodyDecidesAboutTheirOwnFinding)
{
    ask(QuestionKind::AnsweredNo, hangar.leftAileron); // by I. Oren
    show();
    press(Qt::Key_Return);
    chooseIn(page, "decidedBy", 2);
    EXPECT_FALSE(isShown("ownFinding"));
    chooseIn(page, "decidedBy", 1);
    EXPECT_NE(textOf(page, "ownFinding").find("nobody else decided"), std::string::npos);
    part<QPlainTextEdit>(page, "questionFound").setPlainText("worn");
    part<QPlainTextEdit>(page, "questionDone").setPlainText("replaced");
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_NE(textOf(page, "questionStory").find("nobody else decided"), std::string::npos);
}

TEST_F(QuestionsPageTest, CutsNoLineOfTheListAtAnySizeOfText)
{
    ask(QuestionKind::ReadingsDisagree, hangar.rightAileron);
    for (const double scale : {1.0, 1.5, 2.0}) {
        show(scale);
        const auto& row = part<MarkRow>(page, "question0");
        const Look look = lookAt(scale);
        const auto high = [&](const QString& text, const QFont& font) {
            const int room = row.width() - static_cast<int>(38 * scale) - 8;
            return QFontMetrics{font}.boundingRect(0, 0, room, 9999, Qt::TextWordWrap, text).height();
        };
        EXPECT_GE(row.height(), high(row.accessibleName(), fontOf(look.fonts.body(), Weight::SemiBold)) +
                                    high(row.accessibleDescription(), fontOf(look.fonts.small())))
            << scale;
    }
}

TEST_F(QuestionsPageTest, ClipsNothingAtLargeText)
{
    ask(QuestionKind::ReadingsDisagree, hangar.rightAileron);
    for (const double scale : {1.0, 1.5}) {
        show(scale);
        expectNothingClipped(page, 8);
        press(Qt::Key_Return);
        press(Qt::Key_Return, Qt::ControlModifier);
        expectNothingClipped(page, 20);
        press(Qt::Key_Escape);
    }
}

TEST(ChoiceBoxTest, CutsALongNameOnlyWhereItMayAndShowsItWholeInItsList)
{
    ChoiceBox box{"Who"};
    Person person;
    person.name = "Wilhelmine Constantia Hollerbrook no. 17";
    box.fill("Choose a person", std::vector{person});
    const int whole = box.minimumSizeHint().width();
    EXPECT_GE(whole, box.fontMetrics().horizontalAdvance(QString::fromStdString(person.name)));
    box.setNarrows();
    EXPECT_LT(box.minimumSizeHint().width(), whole / 2);
    box.resize(box.minimumSizeHint());
    box.show();
    box.showPopup();
    EXPECT_GE(box.view()->width(), box.fontMetrics().horizontalAdvance(QString::fromStdString(person.name)));
    box.hidePopup();
}

TEST(ChoiceBoxTest, LeavesLettersPageKeysAndTheWheelToThePage)
{
    ChoiceBox box{"who"};
    box.begin("Choose a person");
    box.add("C. Reed", PersonId{{1}});
    for (const Qt::Key key : {Qt::Key_C, Qt::Key_PageDown, Qt::Key_PageUp})
        QTest::keyClick(&box, key);
    QWheelEvent wheel{{5, 5}, {5, 5}, {}, {0, -120}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false};
    QCoreApplication::sendEvent(&box, &wheel);
    EXPECT_FALSE(box.chosen<PersonId>());
    QTest::keyClick(&box, Qt::Key_Down);
    EXPECT_TRUE(box.chosen<PersonId>());
}

TEST_F(QuestionsPageTest, IsHalfDoneWhileWordsStandThereThatNobodySaved)
{
    const QuestionId first = ask(QuestionKind::OutsideReading, hangar.rightAileron);
    ask(QuestionKind::CannotSee, hangar.leftAileron);
    show();
    EXPECT_TRUE(page.leftUndone().isEmpty());
    press(Qt::Key_Return);
    part(page, "questionFound").setFocus();
    EXPECT_TRUE(page.leftUndone().isEmpty()) << "nothing is typed yet";
    type("a burr");
    EXPECT_NE(page.leftUndone(), QString{});
    press(Qt::Key_Escape); // puts it aside
    EXPECT_NE(page.leftUndone(), QString{});
    press(Qt::Key_Down);
    press(Qt::Key_Return); // the form is the other question's now
    ASSERT_EQ(page.typedAside().size(), 2U);
    EXPECT_EQ(page.typedAside().front().about, "Right aileron, outside its band");
    EXPECT_EQ(page.typedAside().front().text, "a burr");
    press(Qt::Key_Escape);
    press(Qt::Key_Up);
    press(Qt::Key_Return);
    part(page, "questionDone").setFocus();
    type("dressed");
    part<ChoiceBox>(page, "decidedBy").choose(std::optional{hangar.oren});
    press(Qt::Key_Return, Qt::ControlModifier);
    const auto all = must(store.records().questions(hangar.airframe));
    const auto closed =
        std::ranges::find_if(all, [&](const QuestionStory& one) { return one.question.id == first; });
    ASSERT_FALSE(closed->isOpen());
    EXPECT_TRUE(page.leftUndone().isEmpty()) << "it is saved";
    EXPECT_TRUE(page.typedAside().empty());
    EXPECT_TRUE(part<QPlainTextEdit>(page, "questionFound").toPlainText().isEmpty());
}
