#include "core/lesson/plan_view.h"

#include <array>
#include <cmath>
#include <gtest/gtest.h>

using namespace rig;

namespace {

double nearest(const std::vector<PlanPoint>& marks)
{
    double least = 1e9;
    for (std::size_t i = 0; i < marks.size(); ++i)
        for (std::size_t j = i + 1; j < marks.size(); ++j)
            least = std::min(least, std::hypot(marks[i].x - marks[j].x, marks[i].y - marks[j].y));
    return least;
}

} // namespace

TEST(PlanView, DrawsWhatWasSaidOfTheAirframeAndTheUsualOtherwise)
{
    Airframe airframe;
    EXPECT_EQ(gliderOf(airframe).panels, PlanGlider{}.panels);
    EXPECT_DOUBLE_EQ(gliderOf(airframe).spanMetres, PlanGlider{}.spanMetres);
    airframe.spanCentimetres = 1830;
    airframe.tail = TailForm::V;
    airframe.wingPanels = 4;
    EXPECT_DOUBLE_EQ(gliderOf(airframe).spanMetres, 18.3);
    EXPECT_EQ(gliderOf(airframe).tail, TailForm::V);
    EXPECT_EQ(gliderOf(airframe).panels, 4);
}

TEST(PlanView, AileronStandsOutboardOfAirbrakeOutboardOfFlap)
{
    for (const Side side : {Side::Left, Side::Right}) {
        const double sign = side == Side::Left ? -1 : 1;
        const double flap = sign * usualPlace(Circuit::Flap, side).x;
        const double airbrake = sign * usualPlace(Circuit::Airbrake, side).x;
        const double aileron = sign * usualPlace(Circuit::Aileron, side).x;
        EXPECT_GT(flap, 0);
        EXPECT_GT(airbrake, flap);
        EXPECT_GT(aileron, airbrake);
    }
    EXPECT_EQ(usualPlace(Circuit::Elevator, Side::None).x, 0);
    EXPECT_GT(usualPlace(Circuit::Elevator, Side::None).y, 0.9);
}

TEST(PlanView, EveryUsualPlaceIsOnThePlan)
{
    for (const Circuit circuit : {Circuit::Aileron, Circuit::Elevator, Circuit::Rudder, Circuit::Flap,
                                  Circuit::Airbrake, Circuit::Trim, Circuit::WaterDump, Circuit::Other})
        for (const Side side : {Side::None, Side::Left, Side::Right}) {
            const PlanPlace place = usualPlace(circuit, side);
            const PlanPlace kept = withinPlan(place);
            EXPECT_EQ(place.x, kept.x);
            EXPECT_EQ(place.y, kept.y);
        }
}

TEST(PlanView, MarksNeverLieOverOneAnother)
{
    std::vector<PlanPoint> same(9, PlanPoint{100, 80});
    EXPECT_GE(nearest(pushedApart(same, 20, 300, 240)), 20);
    const std::vector<PlanPoint> row{{100, 80}, {104, 80}, {109, 82}, {200, 10}, {2, 2}, {1, 1}};
    EXPECT_GE(nearest(pushedApart(row, 20, 300, 240)), 20);
}

TEST(PlanView, MarksStayInThePicture)
{
    for (const PlanPoint& one :
         pushedApart({{0, 0}, {0, 0}, {300, 240}, {299, 239}, {150, 0}}, 20, 300, 240)) {
        EXPECT_GE(one.x, 10);
        EXPECT_LE(one.x, 290);
        EXPECT_GE(one.y, 10);
        EXPECT_LE(one.y, 230);
    }
}

TEST(PlanView, MarkThatStandsAloneStaysWhereItIs)
{
    const auto made = pushedApart({{100, 80}, {102, 80}, {220, 150}}, 20, 300, 240);
    EXPECT_EQ(made[2].x, 220);
    EXPECT_EQ(made[2].y, 150);
    EXPECT_LT(made[0].x, made[1].x);
}

TEST(PlanView, MarksOfOneWingStayOnIt)
{
    std::vector<PlanPoint> marks;
    for (int i = 0; i < 5; ++i) {
        marks.push_back({145, 100, -1e9, 140});
        marks.push_back({155, 100, 160, 1e9});
    }
    const auto made = pushedApart(marks, 20, 300, 240);
    EXPECT_GE(nearest(made), 20);
    for (std::size_t i = 0; i < made.size(); ++i)
        EXPECT_TRUE(i % 2 == 0 ? made[i].x <= 140 : made[i].x >= 160);
}

TEST(PlanView, GoesToTheNearestMarkOnItsWay)
{
    const std::vector<PlanPoint> marks{{100, 100}, {140, 104}, {200, 100}, {100, 200}, {60, 98}};
    EXPECT_EQ(nearestOn(PlanWay::Right, marks, 0), 1U);
    EXPECT_EQ(nearestOn(PlanWay::Right, marks, 1), 2U);
    EXPECT_EQ(nearestOn(PlanWay::Left, marks, 0), 4U);
    EXPECT_EQ(nearestOn(PlanWay::Down, marks, 0), 3U);
    EXPECT_EQ(nearestOn(PlanWay::Right, marks, 2), std::nullopt);
}

TEST(PlanView, WingHasAJointBetweenEachTwoPanels)
{
    for (int panels = 1; panels <= kMostPanels; ++panels) {
        const PlanOutlines made = outlinesOf({15, TailForm::T, panels});
        EXPECT_EQ(made.joints.size(), static_cast<std::size_t>(panels - 1));
        for (const auto& [front, back] : made.joints)
            EXPECT_LT(front.y, back.y);
    }
    EXPECT_EQ(outlinesOf({15, TailForm::T, 0}).joints.size(), 0U);
    EXPECT_EQ(outlinesOf({15, TailForm::T, 99}).joints.size(), 7U);
}

TEST(PlanView, EveryOutlineLiesOnThePlan)
{
    for (const TailForm tail : {TailForm::Low, TailForm::T, TailForm::V})
        for (const double span : {0.0, 13.5, 15.0, 28.0, 99.0}) {
            const PlanOutlines made = outlinesOf({span, tail, 4});
            std::vector<std::vector<PlanPlace>> all = made.tail;
            all.push_back(made.fuselage);
            all.push_back(made.wing);
            for (const auto& outline : all)
                for (const PlanPlace& one : outline) {
                    EXPECT_LE(std::abs(one.x), 1);
                    EXPECT_GE(one.y, 0);
                    EXPECT_LE(one.y, 1);
                }
            EXPECT_EQ(made.tail.size(), tail == TailForm::V ? 2U : 1U);
            EXPECT_GT(usualLength({span, tail, 2}), 0.2);
            EXPECT_LT(usualLength({span, tail, 2}), 0.8);
        }
}
