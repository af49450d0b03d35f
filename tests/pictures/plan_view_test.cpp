#include "app/pictures/plan_view.h"
#include "tests/pictures/golden.h"
#include "tests/pictures/readable.h"

#include <QPainter>

#include <array>
#include <cmath>
#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

PlanItem planItem(const char* name, Circuit circuit, Side side, int order,
                  MarkShape mark = MarkShape::DiscTick, Role role = Role::Inside, const char* word = "inside")
{
    PlanItem item;
    item.name = QLatin1String(name);
    item.circuit = circuit;
    item.side = side;
    item.order = order;
    item.mark = mark;
    item.role = role;
    item.word = QLatin1String(word);
    return item;
}

PlanView fifteenMetres()
{
    PlanView view;
    view.items = {
        planItem("Left aileron", Circuit::Aileron, Side::Left, 1, MarkShape::Triangle, Role::NearEdge,
                 "near edge"),
        planItem("Left airbrake", Circuit::Airbrake, Side::Left, 2),
        planItem("Left flap", Circuit::Flap, Side::Left, 3),
        planItem("Right aileron", Circuit::Aileron, Side::Right, 4),
        planItem("Right airbrake", Circuit::Airbrake, Side::Right, 5, MarkShape::Diamond, Role::Outside,
                 "outside"),
        planItem("Right flap", Circuit::Flap, Side::Right, 6),
        planItem("Elevator", Circuit::Elevator, Side::None, 7),
        planItem("Trim", Circuit::Trim, Side::None, 8, MarkShape::DashedRing, Role::Unknown, "no band yet")};
    view.items[6].kind = CouplingKind::ByItself;
    view.chosen = 3;
    return view;
}

FontSizes planText(double scale)
{
    FontSizes fonts;
    fonts.scale = scale;
    return fonts;
}

QImage paintedPlans(const std::vector<PlanView>& views, QSize each, double scale, const Theme& theme)
{
    QImage image{each.width() * static_cast<int>(views.size()), each.height(), QImage::Format_RGB32};
    image.fill(theme.color(Role::Card));
    QPainter painter{&image};
    for (std::size_t i = 0; i < views.size(); ++i) {
        painter.save();
        painter.translate(static_cast<int>(i) * each.width(), 0);
        paint(painter, layoutPlan(views[i], each, planText(scale)), theme);
        painter.restore();
    }
    return image;
}

} // namespace

TEST(PlanPicture, MarksNeverCoverOneAnotherNorLeaveThePicture)
{
    for (const QSizeF size : {QSizeF{284, 240}, QSizeF{480, 300}, QSizeF{900, 500}})
        for (const double scale : {1.0, 1.25, 1.5})
            for (const bool withOrder : {false, true}) {
                PlanView view = fifteenMetres();
                view.withOrder = withOrder;
                for (PlanItem& one : view.items)
                    one.place = PlanPlace{0.1, 0.4};
                const PlanPicture picture = layoutPlan(view, size * scale, planText(scale));
                expectReadable(picture.over, size * scale);
                for (std::size_t i = 0; i < picture.spots.size(); ++i) {
                    const PlanMarkSpot& one = picture.spots[i];
                    EXPECT_GE(one.centre.x(), one.radius);
                    EXPECT_LE(one.centre.x(), size.width() * scale - one.radius);
                    for (std::size_t j = i + 1; j < picture.spots.size(); ++j) {
                        const QPointF away = one.centre - picture.spots[j].centre;
                        EXPECT_GE(std::hypot(away.x(), away.y()), 2 * one.radius);
                    }
                }
            }
}

TEST(PlanPicture, FindsTheCouplingUnderAPoint)
{
    const PlanPicture picture = layoutPlan(fifteenMetres(), {480, 300}, {});
    for (std::size_t i = 0; i < picture.spots.size(); ++i)
        EXPECT_EQ(picture.itemAt(picture.spots[i].centre + QPointF{3, -3}), i);
    EXPECT_EQ(picture.itemAt({2, 2}), std::nullopt);
}

TEST(PlanPicture, PointAndPlaceAreTheSame)
{
    PlanView view = fifteenMetres();
    view.items = {view.items[0]};
    view.items[0].place = PlanPlace{-0.4, 0.6};
    const PlanPicture picture = layoutPlan(view, {480, 300}, {});
    const PlanPlace place = picture.placeAt(picture.spots[0].centre);
    EXPECT_NEAR(place.x, -0.4, 1e-9);
    EXPECT_NEAR(place.y, 0.6, 1e-9);
    EXPECT_EQ(picture.placeAt({-500, 5000}).x, -1);
}

TEST(PlanPicture, SaysLeftAndRightByALetterToo)
{
    const PlanPicture picture = layoutPlan(fifteenMetres(), {480, 300}, {});
    EXPECT_TRUE(says(picture.over, "L"));
    EXPECT_TRUE(says(picture.over, "R"));
}

TEST(PlanPicture, TellsInWordsWhatItShows)
{
    PlanView view = fifteenMetres();
    view.items = {view.items[0], view.items[3], view.items[6]};
    view.items[1].inUse = false;
    view.chosen = 0;
    view.withOrder = true;
    EXPECT_EQ(
        layoutPlan(view, {480, 300}, {}).inWords.toStdString(),
        "Chosen: Left aileron (number 1, near edge). The airframe from above, nose up. Left: Left aileron "
        "(number 1, near edge). Right: Right aileron (not in use). In the middle: Elevator (number 7, "
        "connects by itself, inside).");
}

TEST(PlanGolden, FifteenMetresWithAndWithoutItsOrder)
{
    PlanView ordered = fifteenMetres();
    ordered.withOrder = true;
    expectLikeGolden(paintedPlans({fifteenMetres(), ordered}, {420, 300}, 1, Theme::light()), "plan-light");
}

TEST(PlanGolden, OtherTailsAndPanelsInLargeText)
{
    PlanView vee = fifteenMetres();
    vee.glider = {26, TailForm::V, 6};
    PlanView low = fifteenMetres();
    low.glider = {18, TailForm::Low, 3};
    low.items[5].inUse = false;
    expectLikeGolden(paintedPlans({vee, low}, {480, 390}, 1.5, Theme::dark()), "plan-large-dark");
}
