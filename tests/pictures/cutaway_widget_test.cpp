#include "app/widgets/cutaway_widget.h"

#include <QAccessible>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

using namespace rig;

namespace {

struct OnScreen
{
    OnScreen()
    {
        widget.setJoint({Layout::C, CouplingKind::SleeveAndPin, 0.63, 1.95});
        widget.resize(450, 300);
        widget.setPose({1, true, true});
    }
    JointState state() const { return widget.picture().state; }

    CutawayWidget widget;
};

} // namespace

TEST(CutawayWidget, MovesTheBallByKeys)
{
    OnScreen on;
    QSignalSpy changed{&on.widget, &CutawayWidget::poseChanged};
    QTest::keyClick(&on.widget, Qt::Key_Left);
    EXPECT_NEAR(*on.widget.pose().seating, 0.98, 1e-9);
    EXPECT_EQ(on.state(), JointState::PartSeated);
    QTest::keyClick(&on.widget, Qt::Key_PageUp);
    EXPECT_NEAR(*on.widget.pose().seating, 0.78, 1e-9);
    QTest::keyClick(&on.widget, Qt::Key_Home);
    EXPECT_EQ(*on.widget.pose().seating, 0);
    QTest::keyClick(&on.widget, Qt::Key_Right);
    QTest::keyClick(&on.widget, Qt::Key_PageDown);
    EXPECT_NEAR(*on.widget.pose().seating, 0.22, 1e-9);
    QTest::keyClick(&on.widget, Qt::Key_End);
    EXPECT_EQ(*on.widget.pose().seating, 1);
    EXPECT_EQ(changed.count(), 6);
}

TEST(CutawayWidget, TakesThePinOutBeforeTheBallMovesAndNeverPutsItBackByItself)
{
    OnScreen on;
    EXPECT_EQ(on.state(), JointState::Locked);
    QTest::keyClick(&on.widget, Qt::Key_Home);
    QTest::keyClick(&on.widget, Qt::Key_P); // does not go in
    QTest::keyClick(&on.widget, Qt::Key_End);
    EXPECT_EQ(on.state(), JointState::NotSecured);
    QTest::keyClick(&on.widget, Qt::Key_P);
    EXPECT_EQ(on.state(), JointState::Locked);
}

TEST(CutawayWidget, MovesSleeveAndBallByTheirLetters)
{
    OnScreen on;
    QTest::keyClick(&on.widget, Qt::Key_S);
    EXPECT_EQ(on.state(), JointState::NotSecured);
    QTest::keyClick(&on.widget, Qt::Key_S);
    EXPECT_EQ(on.state(), JointState::Locked);
    QTest::keyClick(&on.widget, Qt::Key_B);
    EXPECT_EQ(on.state(), JointState::NotConnected);
    QTest::keyClick(&on.widget, Qt::Key_B);
    EXPECT_TRUE(on.widget.pose().seating.has_value());
}

TEST(CutawayWidget, DragsTheBallByTheMouse)
{
    OnScreen on;
    const QPoint middle = on.widget.picture().ball.center().toPoint();
    QTest::mousePress(&on.widget, Qt::LeftButton, {}, middle);
    QTest::mouseMove(&on.widget, middle - QPoint{0, 12});
    QTest::mouseRelease(&on.widget, Qt::LeftButton, {}, middle - QPoint{0, 12});
    EXPECT_LT(*on.widget.pose().seating, 0.9);
    EXPECT_GT(*on.widget.pose().seating, 0);
    EXPECT_NEAR(on.widget.picture().ball.center().y(), middle.y() - 12, 1.5);
    QTest::mousePress(&on.widget, Qt::LeftButton, {}, on.widget.picture().ball.center().toPoint());
    QTest::mouseMove(&on.widget, {middle.x(), 0});
    QTest::mouseRelease(&on.widget, Qt::LeftButton, {}, {middle.x(), 0});
    EXPECT_EQ(*on.widget.pose().seating, 0);
}

TEST(CutawayWidget, IsASliderWithAValueToWhoDoesNotSeeIt)
{
    OnScreen on;
    QAccessibleInterface* heard = QAccessible::queryAccessibleInterface(&on.widget);
    ASSERT_NE(heard, nullptr);
    EXPECT_FALSE(heard->text(QAccessible::Name).isEmpty());
    EXPECT_TRUE(heard->text(QAccessible::Description).startsWith("Seated and locked."));
    ASSERT_NE(heard->valueInterface(), nullptr);
    heard->valueInterface()->setCurrentValue(500);
    EXPECT_NEAR(*on.widget.pose().seating, 0.5, 1e-9);
    EXPECT_TRUE(on.widget.accessibleDescription().startsWith("Part-seated"));
}

TEST(CutawayWidget, StillShowsAndTakesNoKeysNorMouse)
{
    OnScreen on;
    on.widget.setStill(true);
    QTest::keyClick(&on.widget, Qt::Key_Home);
    QTest::mouseClick(&on.widget, Qt::LeftButton, {}, on.widget.picture().sleeve.center().toPoint());
    EXPECT_EQ(on.state(), JointState::Locked);
    EXPECT_EQ(on.widget.focusPolicy(), Qt::NoFocus);
}
