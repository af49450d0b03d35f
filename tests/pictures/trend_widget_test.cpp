#include "app/widgets/trend_widget.h"
#include "tests/pictures/trend_scene.h"

#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

class TrendWidgetTest : public testing::Test
{
protected:
    TrendWidgetTest()
    {
        widget.resize(900, 480);
        widget.setSeries(series, TrendAxis::ByRigging);
    }

    void press(Qt::Key key) { QTest::keyClick(&widget, key); }

    // The same layout as on the widget while everything is shown.
    QPoint placeOfReading(std::size_t index) const
    {
        const TrendPicture whole = layoutTrend(series, {TrendAxis::ByRigging, 0, 0}, widget.size(), {});
        return placeOf(series, whole, index)->center().toPoint();
    }

    void turnWheel(QPoint at, int steps)
    {
        QWheelEvent event{at,
                          widget.mapToGlobal(at),
                          {},
                          {0, 120 * steps},
                          Qt::NoButton,
                          Qt::NoModifier,
                          Qt::NoScrollPhase,
                          false};
        QCoreApplication::sendEvent(&widget, &event);
    }

    QString hovered(QPoint at)
    {
        QEvent leave{QEvent::Leave};
        QCoreApplication::sendEvent(&widget, &leave);
        QMouseEvent event{QEvent::MouseMove, at,           widget.mapToGlobal(at),
                          Qt::NoButton,      Qt::NoButton, Qt::NoModifier};
        QSignalSpy said{&widget, &TrendWidget::hoverSentence};
        QCoreApplication::sendEvent(&widget, &event);
        return said.isEmpty() ? QString{} : said.last().first().toString();
    }

    TrendSeries series = leftFlap();
    TrendWidget widget;
};

} // namespace

TEST_F(TrendWidgetTest, SaysWhatIsUnderTheCursor)
{
    const QString sentence = hovered(placeOfReading(0));
    EXPECT_TRUE(sentence.startsWith("Rigging 210, 1 April 2024")) << sentence.toStdString();
    EXPECT_TRUE(sentence.contains("T. Vale"));
    EXPECT_TRUE(sentence.endsWith("One sign only."));
}

TEST_F(TrendWidgetTest, ChoosesTheReadingThatWasClicked)
{
    QSignalSpy chosen{&widget, &TrendWidget::readingChosen};
    QTest::mouseClick(&widget, Qt::LeftButton, {}, placeOfReading(20));
    ASSERT_EQ(chosen.size(), 1);
    EXPECT_EQ(chosen[0][0].toInt(), 20);
    EXPECT_EQ(widget.chosenReading(), 20);
}

TEST_F(TrendWidgetTest, ChoosesNothingWhenItWasDragged)
{
    QSignalSpy chosen{&widget, &TrendWidget::readingChosen};
    const QPoint from = placeOfReading(20);
    QTest::mousePress(&widget, Qt::LeftButton, {}, from);
    const QPointF to = from + QPoint{60, 0};
    QMouseEvent move{QEvent::MouseMove, to, widget.mapToGlobal(to), Qt::NoButton, Qt::LeftButton,
                     Qt::NoModifier};
    QCoreApplication::sendEvent(&widget, &move);
    QTest::mouseRelease(&widget, Qt::LeftButton, {}, from + QPoint{60, 0});
    EXPECT_EQ(chosen.size(), 0);
    EXPECT_TRUE(hovered(from + QPoint{60, 0}).startsWith("Rigging 229")); // the reading came along
}

TEST_F(TrendWidgetTest, ZoomsAboutTheCursor)
{
    const QPoint at = placeOfReading(30);
    const QString before = hovered(at);
    turnWheel(at, 4);
    EXPECT_EQ(hovered(at), before);
    EXPECT_NE(hovered(placeOfReading(0)), hovered(at));
}

TEST_F(TrendWidgetTest, GoesFromReadingToReadingByKeysAlone)
{
    QSignalSpy said{&widget, &TrendWidget::hoverSentence};
    press(Qt::Key_Up);
    EXPECT_EQ(widget.chosenReading(), static_cast<int>(series.readings.size()) - 1);
    press(Qt::Key_Up);
    EXPECT_EQ(widget.chosenReading(), static_cast<int>(series.readings.size()) - 2);
    press(Qt::Key_Down);
    press(Qt::Key_Down); // there is none after the last
    EXPECT_EQ(widget.chosenReading(), static_cast<int>(series.readings.size()) - 1);
    ASSERT_GE(said.size(), 2);
    EXPECT_TRUE(said.last().first().toString().startsWith("Rigging 263"));
    EXPECT_EQ(widget.accessibleDescription(), said.last().first().toString());
}

TEST_F(TrendWidgetTest, FollowsTheChosenReadingWhenItIsOutOfSight)
{
    for (int i = 0; i < 12; ++i)
        press(Qt::Key_Plus);
    press(Qt::Key_Home);
    press(Qt::Key_Up); // the newest, at the other end
    const TrendPicture near = layoutTrend(series, widget.shown(), widget.size(), {});
    EXPECT_TRUE(placeOf(series, near, series.readings.size() - 1));
    press(Qt::Key_0);
    EXPECT_TRUE(placeOf(series, layoutTrend(series, widget.shown(), widget.size(), {}), 0));
}

TEST_F(TrendWidgetTest, KeepsTheSameReadingsInSightOnTheOtherAxis)
{
    for (int i = 0; i < 6; ++i)
        press(Qt::Key_Plus);
    press(Qt::Key_End);
    widget.setAxis(TrendAxis::ByDate);
    EXPECT_EQ(widget.shown().axis, TrendAxis::ByDate);
    const TrendPicture picture = layoutTrend(series, widget.shown(), widget.size(), {});
    EXPECT_TRUE(placeOf(series, picture, series.readings.size() - 1));
    EXPECT_FALSE(placeOf(series, picture, 0));
}

TEST_F(TrendWidgetTest, KeepsZoomAndChoiceWhenTheSameCouplingIsReadAnew)
{
    series.coupling = CouplingId{{7}};
    widget.setSeries(series, TrendAxis::ByRigging);
    press(Qt::Key_Plus);
    press(Qt::Key_Plus);
    widget.chooseReading(30);
    const TrendWindow near = widget.shown();
    series.readings.erase(series.readings.begin() + 3);
    widget.setSeries(series, TrendAxis::ByRigging);
    EXPECT_EQ(widget.chosenReading(), 29) << "the same reading, one place earlier";
    EXPECT_DOUBLE_EQ(widget.shown().from, near.from);
    EXPECT_DOUBLE_EQ(widget.shown().to, near.to);
}

TEST_F(TrendWidgetTest, ShowsTheWholeOfAnotherCoupling)
{
    series.coupling = CouplingId{{7}};
    widget.setSeries(series, TrendAxis::ByRigging);
    const TrendWindow whole = widget.shown();
    press(Qt::Key_Plus);
    widget.chooseReading(30);
    series.coupling = CouplingId{{8}};
    widget.setSeries(series, TrendAxis::ByRigging);
    EXPECT_EQ(widget.chosenReading(), -1);
    EXPECT_DOUBLE_EQ(widget.shown().from, whole.from);
}

TEST_F(TrendWidgetTest, LeavesKeysOfThePageToThePage)
{
    QKeyEvent event{QEvent::KeyPress, Qt::Key_1, Qt::ControlModifier, "1"};
    QCoreApplication::sendEvent(&widget, &event);
    EXPECT_FALSE(event.isAccepted());
}

TEST_F(TrendWidgetTest, IsNamedAndDescribedForThoseWhoDoNotSeeIt)
{
    EXPECT_EQ(widget.accessibleName(), "Left flap, wing root");
    EXPECT_TRUE(widget.accessibleDescription().contains("58 reading"));
    widget.setSmall(series, 40);
    EXPECT_TRUE(widget.accessibleDescription().contains("40 reading"));
    EXPECT_EQ(widget.focusPolicy(), Qt::NoFocus);
}

TEST_F(TrendWidgetTest, BearsAnEmptyHistory)
{
    widget.setSeries({}, TrendAxis::ByDate);
    for (const Qt::Key key :
         {Qt::Key_Up, Qt::Key_Down, Qt::Key_Home, Qt::Key_End, Qt::Key_Plus, Qt::Key_Left})
        press(key);
    turnWheel({200, 200}, 1);
    QTest::mouseClick(&widget, Qt::LeftButton, {}, {200, 200});
    EXPECT_EQ(widget.chosenReading(), -1);
    EXPECT_TRUE(widget.accessibleDescription().contains("No readings yet"));
}
