#include "app/widgets/plan_widget.h"

#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

using namespace rig;

namespace {

struct PlanOnScreen
{
    PlanOnScreen()
    {
        PlanView view;
        const auto add = [&](const char* name, Circuit circuit, Side side) {
            PlanItem item;
            item.name = QLatin1String(name);
            item.circuit = circuit;
            item.side = side;
            view.items.push_back(item);
        };
        add("Left aileron", Circuit::Aileron, Side::Left);
        add("Left flap", Circuit::Flap, Side::Left);
        add("Right flap", Circuit::Flap, Side::Right);
        add("Elevator", Circuit::Elevator, Side::None);
        view.chosen = 0;
        widget.resize(420, 300);
        widget.setView(view);
    }
    std::size_t chosen() const { return *widget.view().chosen; }

    PlanWidget widget;
};

} // namespace

TEST(PlanWidget, ArrowKeysGoToTheNearestCouplingInTheirDirection)
{
    PlanOnScreen on;
    QSignalSpy chosen{&on.widget, &PlanWidget::couplingChosen};
    QTest::keyClick(&on.widget, Qt::Key_Right);
    EXPECT_EQ(on.chosen(), 1U);
    QTest::keyClick(&on.widget, Qt::Key_Right);
    EXPECT_EQ(on.chosen(), 2U);
    QTest::keyClick(&on.widget, Qt::Key_Down);
    EXPECT_EQ(on.chosen(), 3U);
    QTest::keyClick(&on.widget, Qt::Key_Down); // nothing further
    EXPECT_EQ(on.chosen(), 3U);
    EXPECT_EQ(chosen.count(), 3);
}

TEST(PlanWidget, EveryCouplingIsReachedByTheKeysAlone)
{
    PlanOnScreen on;
    std::vector<bool> seen(4, false);
    std::vector<std::size_t> waiting{0};
    while (!waiting.empty()) {
        const std::size_t from = waiting.back();
        waiting.pop_back();
        if (seen[from])
            continue;
        seen[from] = true;
        for (const int key : {Qt::Key_Left, Qt::Key_Right, Qt::Key_Up, Qt::Key_Down}) {
            PlanView view = on.widget.view();
            view.chosen = from;
            on.widget.setView(view);
            QTest::keyClick(&on.widget, static_cast<Qt::Key>(key));
            waiting.push_back(on.chosen());
        }
    }
    EXPECT_EQ(std::ranges::count(seen, true), 4);
}

TEST(PlanWidget, InEditModeKeysMoveTheChosenCouplingsPlace)
{
    PlanOnScreen on;
    on.widget.setEditing(true);
    const PlanPlace before = usualPlace(Circuit::Aileron, Side::Left);
    QSignalSpy moved{&on.widget, &PlanWidget::placeMoved};
    QTest::keyClick(&on.widget, Qt::Key_Left);
    QTest::keyClick(&on.widget, Qt::Key_Down, Qt::ShiftModifier);
    ASSERT_EQ(moved.count(), 2);
    EXPECT_EQ(moved[1][0].toInt(), 0);
    const PlanPlace after = *on.widget.view().items[0].place;
    EXPECT_NEAR(after.x, before.x - 0.01, 1e-9);
    EXPECT_NEAR(after.y, before.y + 0.05, 1e-9);
    for (int i = 0; i < 60; ++i)
        QTest::keyClick(&on.widget, Qt::Key_Left, Qt::ShiftModifier);
    EXPECT_EQ(on.widget.view().items[0].place->x, -1);
}

TEST(PlanWidget, DragMovesAPlaceOnlyInEditMode)
{
    PlanOnScreen on;
    const auto drag = [&] {
        const QPoint from = on.widget.picture().spots[3].centre.toPoint();
        QTest::mousePress(&on.widget, Qt::LeftButton, {}, from);
        QTest::mouseMove(&on.widget, from - QPoint{60, 40});
        QTest::mouseRelease(&on.widget, Qt::LeftButton, {}, from - QPoint{60, 40});
    };
    QSignalSpy moved{&on.widget, &PlanWidget::placeMoved};
    drag();
    EXPECT_EQ(on.chosen(), 3U);
    EXPECT_EQ(moved.count(), 0);
    on.widget.setEditing(true);
    drag();
    ASSERT_EQ(moved.count(), 1);
    EXPECT_LT(on.widget.view().items[3].place->x, -0.1);
}

TEST(PlanWidget, SaysWhatIsChosenFirst)
{
    PlanOnScreen on;
    EXPECT_FALSE(on.widget.accessibleName().isEmpty());
    EXPECT_TRUE(on.widget.accessibleDescription().startsWith("Chosen: Left aileron."));
    QTest::mouseClick(&on.widget, Qt::LeftButton, {}, on.widget.picture().spots[3].centre.toPoint());
    EXPECT_TRUE(on.widget.accessibleDescription().startsWith("Chosen: Elevator."));
}
