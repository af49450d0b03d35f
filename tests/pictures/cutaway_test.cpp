#include "app/pictures/cutaway.h"
#include "app/wording/lesson_picture_words.h"
#include "tests/pictures/golden.h"
#include "tests/pictures/readable.h"

#include <QPainter>

#include <array>
#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

constexpr std::array kStates{JointState::Locked, JointState::PartSeated, JointState::NotSecured,
                             JointState::NotConnected};

std::vector<CutawayJoint> shownJoints()
{
    return {{Layout::C, CouplingKind::Sleeve, 0.63, 1.95},
            {Layout::C, CouplingKind::SleeveAndPin, 0.69, 0.70},
            {Layout::A, CouplingKind::Sleeve, 0.55, 0.14},
            {Layout::A, CouplingKind::SleeveAndPin, 0.55, 1.1},
            {Layout::B, CouplingKind::SleeveAndPin, 0.55, 1.5},
            {Layout::B, CouplingKind::Pin, 0.55, std::nullopt},
            {Layout::Unknown, CouplingKind::Sleeve, std::nullopt, std::nullopt}};
}

FontSizes atText(double scale)
{
    FontSizes fonts;
    fonts.scale = scale;
    return fonts;
}

QImage paintedCutaways(const std::vector<CutawayView>& views, QSize each, double scale, const Theme& theme)
{
    QImage image{each.width() * 2, each.height() * (static_cast<int>(views.size() + 1) / 2),
                 QImage::Format_RGB32};
    image.fill(theme.color(Role::Card));
    QPainter painter{&image};
    for (std::size_t i = 0; i < views.size(); ++i) {
        painter.save();
        painter.translate(static_cast<int>(i % 2) * each.width(), static_cast<int>(i / 2) * each.height());
        paint(painter, layoutCutaway(views[i], each, atText(scale)), theme);
        painter.restore();
    }
    return image;
}

std::vector<CutawayView> inEveryState(const CutawayJoint& joint)
{
    std::vector<CutawayView> views;
    for (const JointState state : kStates)
        views.push_back({joint, poseOf(state)});
    return views;
}

} // namespace

TEST(CutawayPicture, SaysNothingOfTheGapWhereItIsNotWanted)
{
    for (const CutawayJoint& joint : shownJoints()) {
        CutawayView view{joint, poseOf(JointState::Locked)};
        view.withCaption = false;
        const auto sayGap = [](const CutawayPicture& picture) {
            return std::ranges::count_if(picture.over.labels, [](const DrawnLabel& label) {
                return label.text.contains("gap") || label.text.contains("mm");
            });
        };
        EXPECT_EQ(sayGap(layoutCutaway(view, {460, 300}, FontSizes{})), 1);
        view.withGap = false;
        EXPECT_EQ(sayGap(layoutCutaway(view, {460, 300}, FontSizes{})), 0);
    }
}

TEST(CutawayPicture, CutsNoTextAndNoPartAtAnyTextSize)
{
    for (const CutawayJoint& joint : shownJoints())
        for (const JointState state : kStates)
            for (const double scale : {1.0, 1.25, 1.5})
                for (const QSizeF each : {QSizeF{300, 230}, QSizeF{450, 300}, QSizeF{900, 420}}) {
                    const QSizeF size = each * scale;
                    CutawayView view{joint, poseOf(state)};
                    for (const bool all : {true, false}) {
                        view.withLabels = view.withCaption = all;
                        const CutawayPicture picture = layoutCutaway(view, size, atText(scale));
                        expectReadable(picture.over, size);
                        for (const CutawayPart& part : picture.parts) {
                            const QRectF box = part.path.boundingRect(); // a line has no height
                            EXPECT_TRUE(box.left() >= -0.5 && box.right() <= size.width() + 0.5 &&
                                        box.top() >= -0.5 && box.bottom() <= size.height() + 0.5);
                        }
                    }
                }
}

TEST(CutawayPicture, CaptionHasRoomForAllItsLines)
{
    for (const CutawayJoint& joint : shownJoints())
        for (const JointState state : kStates)
            for (const double scale : {1.0, 1.5}) {
                const QSizeF size = QSizeF{300, 230} * scale;
                const CutawayPicture picture = layoutCutaway({joint, poseOf(state)}, size, atText(scale));
                const DrawnLabel& caption = picture.over.labels.back();
                ASSERT_TRUE(caption.wrapped);
                const QFontMetricsF metrics{fontOf(caption.pixels)};
                EXPECT_LE(metrics.boundingRect(caption.where, Qt::TextWordWrap, caption.text).height(),
                          caption.where.height() + 0.5);
            }
}

TEST(CutawayPicture, StandsStillWhileTheBallMoves)
{
    for (const CutawayJoint& joint : shownJoints()) {
        const CutawayPicture home = layoutCutaway({joint, {1, true, false}}, {450, 300}, {});
        double last = home.ballAwayY - 1;
        for (int i = 0; i <= 20; ++i) {
            const CutawayPicture one = layoutCutaway({joint, {i / 20.0, true, false}}, {450, 300}, {});
            EXPECT_NEAR(one.ball.width(), home.ball.width(), 1e-6);
            EXPECT_NEAR(one.ballHomeY, home.ballHomeY, 1e-6);
            EXPECT_NEAR(one.seatingAt(one.ball.center().y()), i / 20.0, 1e-6);
            EXPECT_GT(one.ball.center().y(), last);
            last = one.ball.center().y();
        }
    }
}

TEST(CutawayPicture, SaysItsStateByWordShapeAndColour)
{
    for (const JointState state : kStates) {
        const CutawayPicture picture = layoutCutaway({shownJoints()[0], poseOf(state)}, {450, 300}, {});
        ASSERT_EQ(picture.over.marks.size(), 1U);
        EXPECT_EQ(picture.over.marks[0].shape, shapeOf(state));
        EXPECT_EQ(picture.over.labels[0].role, textRoleOf(state));
        EXPECT_TRUE(picture.over.labels[0].strong);
        for (const JointState other : kStates)
            EXPECT_EQ(shapeOf(state) == shapeOf(other), state == other);
    }
}

TEST(CutawayPicture, TellsInWordsWhatItShows)
{
    const auto words = [](const CutawayJoint& joint, JointState state) {
        return layoutCutaway({joint, poseOf(state)}, {450, 300}, {}).inWords.toStdString();
    };
    const CutawayJoint seen{Layout::C, CouplingKind::Sleeve, 0.63, 1.95};
    EXPECT_EQ(
        words(seen, JointState::PartSeated),
        "Part-seated: can let go in flight. Ball too high: it holds the plunger back. The tab keeps the "
        "sleeve from its stop, and thread shows. Witness hole hidden. In this drawing the leaf goes between "
        "the edge of the socket and the sleeve. Gap 1.95 mm, the middle of its part-seated readings. "
        "Schematic: only the gap is to scale, from this coupling’s own readings.");
    EXPECT_NE(words(seen, JointState::NotConnected).find("The gap may still read 0.63 mm, as if locked."),
              std::string::npos);
    const CutawayJoint never{Layout::B, CouplingKind::Sleeve, 0.63, std::nullopt};
    EXPECT_NE(words(never, JointState::PartSeated).find("was never measured: it is unknown"),
              std::string::npos);
}

TEST(CutawayPicture, SaysWhereTheLeafGoesAsItIsDrawn)
{
    const auto said = [](Layout layout, CouplingKind kind, double partSeated) {
        return LessonPictureWords::leafGoes(cutawayOf({layout, kind, 0.6, partSeated}, {})).toStdString();
    };
    for (const Layout layout : {Layout::A, Layout::B})
        EXPECT_NE(
            said(layout, CouplingKind::Sleeve, layout == Layout::A ? 0.2 : 1.5).find("tab and the sleeve"),
            std::string::npos);
    EXPECT_NE(said(Layout::C, CouplingKind::Sleeve, 1.5).find("edge of the socket"), std::string::npos);
    EXPECT_NE(said(Layout::B, CouplingKind::Pin, 1.5).find("collar"), std::string::npos);
}

TEST(CutawayPicture, DrawsTheGapWithItsFigureInMillimetres)
{
    EXPECT_TRUE(
        says(layoutCutaway({shownJoints()[0], poseOf(JointState::Locked)}, {450, 300}, {}).over, "0.63 mm"));
    EXPECT_TRUE(says(layoutCutaway({shownJoints()[5], poseOf(JointState::PartSeated)}, {450, 300}, {}).over,
                     "never measured"));
}

TEST(CutawayGolden, SleeveThatRidesOverItsTab)
{
    expectLikeGolden(paintedCutaways(inEveryState(shownJoints()[0]), {450, 300}, 1, Theme::light()),
                     "cutaway-c-light");
}

TEST(CutawayGolden, TabThatMovesAwayFromTheSleeve)
{
    expectLikeGolden(paintedCutaways(inEveryState(shownJoints()[2]), {450, 300}, 1, Theme::dark()),
                     "cutaway-a-dark");
}

TEST(CutawayGolden, TabThatMovesTowardsTheSleeveInLargeText)
{
    expectLikeGolden(paintedCutaways(inEveryState(shownJoints()[4]), {675, 450}, 1.5, Theme::light()),
                     "cutaway-b-large");
}
