#include "app/pictures/hatch_view.h"
#include "tests/pictures/golden.h"
#include "tests/pictures/readable.h"

#include <QPainter>

#include <array>
#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

const CutawayJoint kOverTab{Layout::C, CouplingKind::Sleeve, 0.63, 1.95};
const CutawayJoint kTabBelow{Layout::B, CouplingKind::SleeveAndPin, 0.55, 1.5};

FontSizes hatchText(double scale)
{
    FontSizes fonts;
    fonts.scale = scale;
    return fonts;
}

HatchPicture laidHatch(const CutawayJoint& joint, JointState state, const HatchSight& sight)
{
    HatchPictureView view{joint, poseOf(state), sight};
    return layoutHatch(view, {420, 220}, {});
}

QImage paintedHatches(const std::vector<HatchPictureView>& views, QSize each, double scale,
                      const Theme& theme)
{
    QImage image{each.width() * 2, each.height() * (static_cast<int>(views.size() + 1) / 2),
                 QImage::Format_RGB32};
    image.fill(theme.color(Role::Card));
    QPainter painter{&image};
    for (std::size_t i = 0; i < views.size(); ++i) {
        painter.save();
        painter.translate(static_cast<int>(i % 2) * each.width(), static_cast<int>(i / 2) * each.height());
        paint(painter, layoutHatch(views[i], each, hatchText(scale)), theme);
        painter.restore();
    }
    return image;
}

} // namespace

TEST(HatchPicture, CutsNoTextFromAnySideAtAnyTextSize)
{
    for (const CutawayJoint& joint : {kOverTab, kTabBelow})
        for (const AccessSide side : kAccessSides)
            for (const std::optional<AccessSide> mirror :
                 {std::optional<AccessSide>{}, std::optional{usualMirror(side)}})
                for (const bool torch : {false, true})
                    for (const double scale : {1.0, 1.25, 1.5})
                        for (const QSizeF each : {QSizeF{420, 220}, QSizeF{260, 280}, QSizeF{900, 300}}) {
                            const HatchPictureView view{
                                joint, poseOf(JointState::PartSeated), {side, mirror, torch}};
                            const HatchPicture picture = layoutHatch(view, each * scale, hatchText(scale));
                            expectReadable(picture.over, each * scale);
                            for (const HatchOpening& opening : picture.openings) {
                                const QRectF box{opening.centre.x() - opening.radius,
                                                 opening.centre.y() - opening.radius, 2 * opening.radius,
                                                 2 * opening.radius};
                                EXPECT_TRUE(QRectF({}, each * scale).contains(box));
                                EXPECT_GT(opening.radius, 20);
                                for (const DrawnLabel& label : picture.over.labels)
                                    EXPECT_FALSE(label.where.intersects(box)) << label.text.toStdString();
                            }
                        }
}

TEST(HatchPicture, ListedWordsHaveRoomForAllTheirLines)
{
    const HatchPictureView view{kTabBelow, {}, {AccessSide::Above, std::nullopt, false}};
    for (const QSizeF size : {QSizeF{630, 330}, QSizeF{390, 420}}) {
        const HatchPicture picture = layoutHatch(view, size, hatchText(1.5));
        for (const DrawnLabel& label : picture.over.labels) {
            if (label.wrapped) {
                const QFontMetricsF metrics{fontOf(label.pixels)};
                EXPECT_LE(metrics.boundingRect(label.where, Qt::TextWordWrap, label.text).height(),
                          label.where.height() + 0.5);
            }
        }
    }
}

TEST(HatchPicture, InTheDarkABallDoesNotShow)
{
    const auto parts = [](JointState state, bool torch) {
        return laidHatch(kOverTab, state, {AccessSide::Above, std::nullopt, torch}).openings[0].parts.size();
    };
    EXPECT_GT(parts(JointState::Locked, true), parts(JointState::Locked, false) + 1);
}

TEST(HatchPicture, MirrorIsDarkWithoutALight)
{
    const HatchPicture dark =
        laidHatch(kTabBelow, JointState::Locked, {AccessSide::Above, AccessSide::Below, false});
    ASSERT_EQ(dark.openings.size(), 2U);
    EXPECT_TRUE(dark.openings[1].isMirror);
    EXPECT_TRUE(dark.openings[1].parts.empty());
    const HatchPicture lit =
        laidHatch(kTabBelow, JointState::Locked, {AccessSide::Above, AccessSide::Below, true});
    EXPECT_FALSE(lit.openings[1].parts.empty());
}

TEST(HatchPicture, TellsInWordsWhatIsSeenAndWhatStaysHidden)
{
    EXPECT_EQ(
        laidHatch(kOverTab, JointState::PartSeated, {AccessSide::Above, std::nullopt, false})
            .inWords.toStdString(),
        "Seen from above. Without a torch. The tab does not stand at its place. The sleeve is not at its "
        "stop. Thread shows. In view: tab, front edge of the sleeve, rod before the sleeve and place of the "
        "leaf. "
        "Dark without a torch: mouth of the socket and plunger nose. Hidden from here: witness hole.");
}

TEST(HatchPicture, NamesTheStateOnlyWhenAsked)
{
    HatchPictureView view{kOverTab, poseOf(JointState::PartSeated), {}};
    EXPECT_FALSE(layoutHatch(view, {420, 220}, {}).inWords.contains("Part-seated"));
    view.namesState = true;
    EXPECT_TRUE(layoutHatch(view, {420, 220}, {}).inWords.startsWith("Part-seated."));
}

TEST(HatchGolden, FromAboveInEveryState)
{
    std::vector<HatchPictureView> views;
    for (const JointState state :
         {JointState::Locked, JointState::PartSeated, JointState::NotSecured, JointState::NotConnected})
        views.push_back({kOverTab, poseOf(state), {AccessSide::Above, std::nullopt, true}});
    expectLikeGolden(paintedHatches(views, {420, 220}, 1, Theme::light()), "hatch-above-light");
}

TEST(HatchGolden, FromEverySideWithAMirrorInLargeText)
{
    std::vector<HatchPictureView> views;
    for (const AccessSide side : kAccessSides)
        views.push_back(
            {kTabBelow, poseOf(JointState::PartSeated), {side, usualMirror(side), side != AccessSide::Rear}});
    expectLikeGolden(paintedHatches(views, {690, 330}, 1.5, Theme::dark()), "hatch-sides-large-dark");
}
