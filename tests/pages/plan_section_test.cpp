#include "app/pages/setup/plan_section.h"
#include "app/widgets/plan_widget.h"
#include "core/lesson/plan_view.h"
#include "tests/support/made_id.h"

#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

using namespace rig;

namespace {

struct PlanBesideTheForm
{
    PlanBesideTheForm()
    {
        for (const Side side : {Side::Left, Side::Right}) {
            Coupling& coupling = couplings.emplace_back();
            coupling.id = test::madeId<CouplingId>(static_cast<int>(couplings.size()));
            coupling.name = side == Side::Left ? "Left aileron" : "Right aileron";
            coupling.circuit = Circuit::Aileron;
            coupling.side = side;
        }
        section.resize(480, 360);
        section.display({}, couplings, couplings[0].id);
        section.show();
        plan = section.findChild<PlanWidget*>("planOfPlaces");
    }

    QPoint spotOf(std::size_t index) const { return plan->picture().spots[index].centre.toPoint(); }
    PlanPlace placeOf(std::size_t index) const
    {
        const PlanItem& item = plan->view().items[index];
        return item.place.value_or(usualPlace(item.circuit, item.side));
    }

    std::vector<Coupling> couplings;
    PlanSection section;
    PlanWidget* plan = nullptr;
};

} // namespace

TEST(PlanSection, TellsWhereKeysMovedTheCouplingOfTheForm)
{
    PlanBesideTheForm beside;
    QSignalSpy moved{&beside.section, &PlanSection::placeMoved};
    const PlanPlace before = beside.placeOf(0);
    QTest::keyClick(beside.plan, Qt::Key_Left);
    ASSERT_EQ(moved.count(), 1);
    EXPECT_EQ(moved[0][0].value<CouplingId>(), beside.couplings[0].id);
    EXPECT_NEAR(moved[0][1].value<PlanPlace>().x, before.x - 0.01, 1e-9);
}

TEST(PlanSection, MovesNoOtherCouplingThanThatOfTheForm)
{
    PlanBesideTheForm beside;
    QSignalSpy moved{&beside.section, &PlanSection::placeMoved};
    QSignalSpy pressed{&beside.section, &PlanSection::otherPressed};
    const QPoint from = beside.spotOf(1);
    QTest::mousePress(beside.plan, Qt::LeftButton, {}, from);
    QTest::mouseMove(beside.plan, from + QPoint{40, 30});
    QTest::mouseRelease(beside.plan, Qt::LeftButton, {}, from + QPoint{40, 30});
    EXPECT_EQ(moved.count(), 0);
    ASSERT_EQ(pressed.count(), 1);
    EXPECT_EQ(pressed[0][0].value<CouplingId>(), beside.couplings[1].id);
    EXPECT_EQ(beside.plan->view().chosen, 0U);
    EXPECT_FALSE(beside.plan->view().items[0].place) << "nor is the one of the form dragged along";
    EXPECT_FALSE(beside.plan->view().items[1].place);
}

TEST(PlanSection, IsMovedByHand)
{
    PlanBesideTheForm beside;
    QSignalSpy moved{&beside.section, &PlanSection::placeMoved};
    const QPoint from = beside.spotOf(0);
    QTest::mousePress(beside.plan, Qt::LeftButton, {}, from);
    QTest::mouseMove(beside.plan, from + QPoint{-30, 0});
    QTest::mouseRelease(beside.plan, Qt::LeftButton, {}, from + QPoint{-30, 0});
    ASSERT_EQ(moved.count(), 1);
    EXPECT_LT(moved[0][1].value<PlanPlace>().x, usualPlace(Circuit::Aileron, Side::Left).x);
}

TEST(PlanSection, ShowsWhatWasTypedWithoutTellingItBack)
{
    PlanBesideTheForm beside;
    QSignalSpy moved{&beside.section, &PlanSection::placeMoved};
    beside.section.setPlace(PlanPlace{-0.5, 0.6});
    EXPECT_NEAR(beside.placeOf(0).x, -0.5, 1e-9);
    beside.section.setPlace(std::nullopt);
    EXPECT_NEAR(beside.placeOf(0).x, usualPlace(Circuit::Aileron, Side::Left).x, 1e-9);
    EXPECT_EQ(moved.count(), 0);
}

TEST(PlanSection, HasNothingToMoveUntilACouplingIsChosen)
{
    PlanBesideTheForm beside;
    beside.section.display({}, beside.couplings, CouplingId{});
    QSignalSpy moved{&beside.section, &PlanSection::placeMoved};
    beside.section.setPlace(PlanPlace{0.1, 0.1});
    QTest::keyClick(beside.plan, Qt::Key_Left);
    EXPECT_EQ(moved.count(), 0);
}
