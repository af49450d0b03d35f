// Before the annual, by keys alone: what stood out before the last one, and where it is seen.

#include "app/window/main_window.h"
#include "tests/support/on_screen.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/temp_store.h"
#include "tests/support/typing.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QComboBox>
#include <QTableView>

#include <filesystem>

using namespace rig;
using namespace rig::test;

namespace {

class BeforeTheAnnualJourney : public testing::TestWithParam<Pace>
{
protected:
    BeforeTheAnnualJourney()
    {
        clock.set(dayOf(2026, 11, 2));
        window.resize(1280, 800);
        window.show();
        window.openDemo();
        window.activateWindow();
        Typist::look();
    }

    void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) { typist.press(key, with); }

    QWidget& page()
    {
        Typist::look();
        return *window.page(Moments::BeforeTheAnnual);
    }
    QString row(int index, int column)
    {
        return part<QTableView>(page(), "reviewTable")
            .model()
            ->index(index, column)
            .data(Qt::AccessibleTextRole)
            .toString();
    }

    FixedClock clock;
    ScriptedPrompts prompts;
    MainWindow window{clock, prompts};
    Typist typist{window, GetParam()};
};

INSTANTIATE_TEST_SUITE_P(Typing, BeforeTheAnnualJourney, kPaces, nameOfPace);

} // namespace

TEST_P(BeforeTheAnnualJourney, GoesFromTheDriftBeforeTheLastAnnualToItsTrend)
{
    press(Qt::Key_3, Qt::ControlModifier);
    EXPECT_EQ(textOf(page(), "annualTitle"), "Before the annual of 20 February 2027");
    EXPECT_NE(textOf(page(), "annualCounted").find("Read by 4"), std::string::npos);
    press(Qt::Key_P);
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    EXPECT_EQ(textOf(page(), "annualTitle"), "Before the annual of 20 February 2026");
    EXPECT_TRUE(row(0, 0).contains("Left flap")) << row(0, 0).toStdString();
    EXPECT_TRUE(row(0, 7).contains("the gap has been growing since about rigging"))
        << row(0, 7).toStdString();
    EXPECT_TRUE(part<QLabel>(page(), "headline").text().contains("Left flap: the gap has been growing"));
    EXPECT_TRUE(page().isVisible()) << "what chose the period opened nothing";
    EXPECT_EQ(typist.focused(), "reviewTable");
    press(Qt::Key_Return);
    Typist::look();
    QWidget& trends = *window.page(Moments::Trends);
    EXPECT_TRUE(trends.isVisible());
    EXPECT_TRUE(part<QTableView>(trends, "readingsTable").accessibleName().contains("Left flap"));
    press(Qt::Key_3, Qt::ControlModifier);
    EXPECT_EQ(textOf(page(), "annualTitle"), "Before the annual of 20 February 2026");
}

TEST_P(BeforeTheAnnualJourney, EndsInAReportThatIsSavedWithItsTables)
{
    const TempFolder folder;
    prompts.saveFiles = {folder.file("review.pdf")};
    press(Qt::Key_3, Qt::ControlModifier);
    press(Qt::Key_R);
    EXPECT_TRUE(part(page(), "reportPreview").isVisible());
    EXPECT_EQ(textOf(page(), "previewPage").rfind("Page 1 of ", 0), 0U);
    press(Qt::Key_PageDown);
    EXPECT_EQ(textOf(page(), "previewPage").rfind("Page 2 of ", 0), 0U);
    press(Qt::Key_S);
    EXPECT_NE(textOf(page(), "previewSaid").find("review-csv"), std::string::npos);
    EXPECT_TRUE(std::filesystem::exists(folder.file("review.pdf")));
    EXPECT_TRUE(std::filesystem::exists(folder.file("review-csv/outside.csv")));
    ASSERT_EQ(prompts.suggested.size(), 1U);
    EXPECT_EQ(prompts.suggested.front(), "QX-17-2026-11-02-review.pdf");
    press(Qt::Key_Escape);
    EXPECT_TRUE(part<QTableView>(page(), "reviewTable").isVisible());
}

TEST_P(BeforeTheAnnualJourney, GoesFromAHeadlineToTrendsAndBackToTheSamePlace)
{
    press(Qt::Key_3, Qt::ControlModifier);
    press(Qt::Key_P);
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    Typist::look();
    window.activateWindow(); // a list that opened and closed within one turn keeps that to itself, offscreen
    press(Qt::Key_S);
    Typist::look();
    const QString headline = typist.focused();
    EXPECT_TRUE(headline.startsWith("headline-")) << headline.toStdString();
    press(Qt::Key_Return);
    Typist::look();
    QWidget& trends = *window.page(Moments::Trends);
    EXPECT_TRUE(trends.isVisible());
    EXPECT_EQ(textOf(trends, "couplingTitle"), "Left flap");
    EXPECT_NE(textOf(trends, "lookingBack").find("20 February 2025"), std::string::npos) << "the same period";
    press(Qt::Key_Escape);
    EXPECT_TRUE(page().isVisible());
    EXPECT_EQ(typist.focused(), headline);
    EXPECT_EQ(textOf(page(), "annualTitle"), "Before the annual of 20 February 2026");
}

TEST_P(BeforeTheAnnualJourney, GoesFromAReadingOutsideToItAndBackByAltAndLeft)
{
    press(Qt::Key_3, Qt::ControlModifier);
    press(Qt::Key_O);
    Typist::look();
    const QString outside = typist.focused();
    ASSERT_TRUE(outside.startsWith("outsidePanel-")) << outside.toStdString();
    const auto& link = part<QAbstractButton>(page(), outside.toLatin1());
    const QString title = link.accessibleName();
    press(Qt::Key_Return);
    Typist::look();
    QWidget& trends = *window.page(Moments::Trends);
    EXPECT_TRUE(title.startsWith(QString::fromStdString(textOf(trends, "couplingTitle"))));
    const QString hover = part<QLabel>(trends, "hoverSentence").text();
    EXPECT_TRUE(hover.contains("outside") || hover.contains("part-seated")) << hover.toStdString();
    press(Qt::Key_Left, Qt::AltModifier);
    EXPECT_TRUE(page().isVisible());
    EXPECT_EQ(typist.focused(), outside);
}

TEST_P(BeforeTheAnnualJourney, NotesAFindingAndAsksWhereItIsReadAndComesBack)
{
    press(Qt::Key_3, Qt::ControlModifier);
    press(Qt::Key_S);
    press(Qt::Key_Return);
    press(Qt::Key_F);
    Typist::look();
    EXPECT_EQ(typist.focused(), "statementPerson");
    press(Qt::Key_Down);
    press(Qt::Key_Tab);
    typist.type("a flat on the ball");
    press(Qt::Key_Tab);
    typist.type("turned by a quarter");
    press(Qt::Key_Return, Qt::ControlModifier);
    Typist::look();
    QWidget& trends = *window.page(Moments::Trends);
    EXPECT_NE(textOf(trends, "statementKept").find("Kept: what"), std::string::npos);
    press(Qt::Key_Q);
    press(Qt::Key_Down);
    press(Qt::Key_Tab);
    typist.type("is there a spare ball?");
    press(Qt::Key_Return, Qt::ControlModifier);
    Typist::look();
    EXPECT_NE(textOf(trends, "statementKept").find("Open now"), std::string::npos);
    EXPECT_NE(textOf(window, "questionBarText").find("a question in words"), std::string::npos);
    press(Qt::Key_Escape);
    EXPECT_TRUE(page().isVisible());
    bool isTold = false;
    for (const QLabel* label : page().findChildren<QLabel*>())
        isTold = isTold || label->text().contains("found: a flat on the ball; done: turned by a quarter");
    EXPECT_TRUE(isTold);
}
