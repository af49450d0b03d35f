// A finding and a question of one's own, from both pages that look back.

#include "app/pages/annual/annual_page.h"
#include "app/pages/questions/questions_presenter.h"
#include "app/pages/trends/trends_page.h"
#include "app/widgets/choice_box.h"
#include "tests/pages/trends_scene.h"
#include "tests/support/clipped.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"

#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableView>

using namespace rig;
using namespace rig::test;

namespace {

class Statements : public testing::Test
{
protected:
    Statements()
    {
        scene.baselineDay(kBaselineDay);
        scene.rig(dayOf(2026, 4, 4), 500);
        scene.rig(dayOf(2026, 4, 11), 900);
        for (Page* page : std::initializer_list<Page*>{&trends, &annual})
            QObject::connect(page, &Page::factsChanged, page, [this] { ++changed; });
    }

    void show(Page& page, double scale = 1)
    {
        page.setLook(lookAt(scale));
        showAt(page, {1280, 744}, lookAt(scale));
        page.activateWindow();
        page.showAirframe(scene.hangar.airframe);
        page.setFocus();
        QApplication::processEvents();
    }

    static void press(Page& page, Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier)
    {
        QTest::keyClick(page.focusWidget() ? page.focusWidget() : &page, key, with);
        QApplication::processEvents();
    }

    static void write(Page& page, const char* edit, const char* text)
    {
        part<QPlainTextEdit>(page, edit).setPlainText(text);
    }

    std::vector<Event> findings()
    {
        std::vector<Event> all = must(scene.store.records().events(scene.hangar.airframe));
        std::erase_if(all, [](const Event& event) { return event.kind != EventKind::Finding; });
        return all;
    }
    std::vector<QuestionStory> questions()
    {
        return must(scene.store.records().questions(scene.hangar.airframe));
    }

    TrendsScene scene;
    ScriptedPrompts prompts;
    TrendsPage trends{scene.store.records(), scene.store.clock()};
    AnnualPage annual{scene.store.records(), scene.store.clock(), prompts};
    int changed = 0;
};

} // namespace

TEST_F(Statements, AFindingIsKeptWithItsCouplingDayAndPersonAndThenSaid)
{
    show(trends);
    press(trends, Qt::Key_F);
    EXPECT_EQ(part<QLineEdit>(trends, "statementDay").text(), "2026-11-01");
    EXPECT_EQ(part<ChoiceBox>(trends, "statementWhere").chosen<CouplingId>(), scene.hangar.leftAileron);
    EXPECT_FALSE(part<ChoiceBox>(trends, "statementPerson").chosen<PersonId>()) << "nobody is filled in";
    part<ChoiceBox>(trends, "statementPerson").choose(std::optional{scene.hangar.vale});
    part<QLineEdit>(trends, "statementDay").setText("2026-10-30");
    write(trends, "statementSaid", "a flat on the ball");
    write(trends, "statementDone", "turned by a quarter");
    press(trends, Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(findings().size(), 1U);
    const Event kept = findings().front();
    EXPECT_EQ(kept.coupling, scene.hangar.leftAileron);
    EXPECT_EQ(kept.day, dayOf(2026, 10, 30));
    EXPECT_EQ(kept.person, scene.hangar.vale);
    EXPECT_EQ(kept.note, "a flat on the ball");
    EXPECT_EQ(kept.done, "turned by a quarter");
    EXPECT_EQ(textOf(trends, "statementKept"), "Kept: what T. Vale found on Left aileron, 30 October 2026.");
    EXPECT_TRUE(part(trends, "statementKept").isVisible());
    EXPECT_TRUE(part(trends, "chart").isVisible());
    EXPECT_EQ(changed, 1);
}

TEST_F(Statements, WhatIsLackingIsSaidBesideItsFieldAndNothingTypedIsLost)
{
    show(trends);
    press(trends, Qt::Key_F);
    part<QLineEdit>(trends, "statementDay").setText("30/10");
    write(trends, "statementSaid", "a flat on the ball");
    press(trends, Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(findings().empty());
    EXPECT_NE(textOf(trends, "statementPersonProblem").find("Choose who found it"), std::string::npos);
    EXPECT_NE(textOf(trends, "statementDayProblem").find("2026-05-31"), std::string::npos);
    EXPECT_NE(textOf(trends, "statementDoneProblem").find("Say what was done"), std::string::npos);
    EXPECT_EQ(textOf(trends, "statementSaidProblem"), "");
    EXPECT_EQ(part<QPlainTextEdit>(trends, "statementSaid").toPlainText(), "a flat on the ball");
    part<QLineEdit>(trends, "statementDay").setText("2027-01-01");
    press(trends, Qt::Key_Return, Qt::ControlModifier);
    EXPECT_NE(textOf(trends, "statementDayProblem").find("lies ahead"), std::string::npos);
}

TEST_F(Statements, WhatIsTypedStaysWhilePutAsideAndWhileAnotherWindowWrites)
{
    show(annual);
    press(annual, Qt::Key_F);
    write(annual, "statementSaid", "a flat on the ball");
    scene.rig(dayOf(2026, 5, 4), 500);
    annual.catchUp();
    QApplication::processEvents();
    EXPECT_TRUE(part(annual, "statementSaid").isVisible());
    EXPECT_EQ(part<QPlainTextEdit>(annual, "statementSaid").toPlainText(), "a flat on the ball");
    EXPECT_FALSE(annual.leftUndone().isEmpty());
    press(annual, Qt::Key_Escape);
    EXPECT_TRUE(part(annual, "reviewTable").hasFocus());
    press(annual, Qt::Key_F);
    EXPECT_EQ(part<QPlainTextEdit>(annual, "statementSaid").toPlainText(), "a flat on the ball");
}

TEST_F(Statements, AFindingOfTheWholeAirframeNamesNoCoupling)
{
    show(annual);
    press(annual, Qt::Key_F);
    auto& where = part<ChoiceBox>(annual, "statementWhere");
    where.setCurrentIndex(0);
    EXPECT_EQ(where.currentText(), "The whole airframe");
    part<ChoiceBox>(annual, "statementPerson").choose(std::optional{scene.hangar.oren});
    write(annual, "statementSaid", "grit in every socket");
    write(annual, "statementDone", "cleaned");
    press(annual, Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(findings().size(), 1U);
    EXPECT_FALSE(findings().front().coupling);
    EXPECT_NE(textOf(annual, "statementKept").find("on the airframe"), std::string::npos);
}

TEST_F(Statements, AQuestionIsAskedAboutTheReadingInView)
{
    show(annual);
    press(annual, Qt::Key_O);
    press(annual, Qt::Key_Q);
    EXPECT_NE(textOf(annual, "statementReading").find("11 April 2026"), std::string::npos);
    EXPECT_FALSE(part(annual, "statementDay").isVisible());
    part<ChoiceBox>(annual, "statementPerson").choose(std::optional{scene.hangar.vale});
    write(annual, "statementSaid", "was the leaf held straight?");
    press(annual, Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(questions().size(), 1U);
    const Question asked = questions().front().question;
    EXPECT_EQ(asked.kind, QuestionKind::Asked);
    EXPECT_EQ(asked.coupling, scene.hangar.leftAileron);
    EXPECT_EQ(asked.reading,
              must(scene.store.records().readingsOf(scene.hangar.leftAileron)).back().reading.id);
    EXPECT_EQ(asked.stamp.by, scene.hangar.vale);
    EXPECT_EQ(asked.text, "was the leaf held straight?");
    const auto view = must(QuestionsPresenter{scene.store.records()}.view(scene.hangar.airframe));
    EXPECT_EQ(view.openCount, 1);
    EXPECT_EQ(view.rows.front().statedBy, "T. Vale");
}

TEST_F(Statements, AQuestionDropsTheReadingWhenItIsAskedAboutAnotherCoupling)
{
    show(trends);
    trends.visit(scene.hangar.leftAileron,
                 must(scene.store.records().readingsOf(scene.hangar.leftAileron)).back().reading.id);
    press(trends, Qt::Key_Q);
    EXPECT_TRUE(part(trends, "statementReading").isVisible());
    auto& where = part<ChoiceBox>(trends, "statementWhere");
    where.choose(std::optional{scene.hangar.rightAileron});
    emit where.activated(where.currentIndex());
    EXPECT_FALSE(part(trends, "statementReading").isVisible());
    part<ChoiceBox>(trends, "statementPerson").choose(std::optional{scene.hangar.oren});
    write(trends, "statementSaid", "never read?");
    press(trends, Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(questions().size(), 1U);
    EXPECT_EQ(questions().front().question.coupling, scene.hangar.rightAileron);
    EXPECT_FALSE(questions().front().question.reading);
}

TEST_F(Statements, HaveRoomAtEveryTextSize)
{
    for (const double scale : {1.0, 1.5})
        for (Page* page : std::initializer_list<Page*>{&trends, &annual}) {
            SCOPED_TRACE(scale);
            show(*page, scale);
            for (const Qt::Key key : {Qt::Key_F, Qt::Key_Q}) {
                press(*page, key);
                press(*page, Qt::Key_Return, Qt::ControlModifier);
                expectNothingClipped(*page, 8);
                press(*page, Qt::Key_Escape);
            }
        }
}
