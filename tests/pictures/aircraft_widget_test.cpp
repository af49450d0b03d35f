#include "app/blocks/laid_picture.h"
#include "app/widgets/aircraft_widget.h"
#include "app/widgets/picture_widget.h"
#include "app/widgets/trend_widget.h"
#include "tests/pictures/aircraft_scene.h"

#include <QMouseEvent>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

namespace {

class AircraftWidgetTest : public testing::Test
{
protected:
    AircraftWidgetTest()
    {
        series.airframe = AirframeId{{1}};
        widget.resize(900, 520);
        widget.setSeries(series, TrendAxis::ByRigging, std::nullopt);
    }

    AircraftSeries series = aircraftOf(54);
    AircraftWidget widget;
};

} // namespace

TEST_F(AircraftWidgetTest, GoesFromCouplingToCouplingByKeysAlone)
{
    QSignalSpy chosen{&widget, &AircraftWidget::couplingChosen};
    QTest::keyClick(&widget, Qt::Key_Down);
    QTest::keyClick(&widget, Qt::Key_Down);
    ASSERT_EQ(chosen.size(), 2);
    EXPECT_EQ(chosen.last().first().toInt(), 1);
    EXPECT_TRUE(widget.accessibleDescription().contains("Chosen: Left airbrake."));
}

TEST_F(AircraftWidgetTest, ChoosesTheCouplingWhoseNameWasClicked)
{
    const AircraftPicture picture = layoutAircraft(series, {}, {}, widget.size(), {});
    const auto flap = std::find_if(picture.names.begin(), picture.names.end(),
                                   [](const AircraftName& name) { return name.coupling == 2; });
    ASSERT_NE(flap, picture.names.end());
    QTest::mouseClick(&widget, Qt::LeftButton, {}, flap->where.center().toPoint());
    EXPECT_EQ(widget.chosenCoupling(), 2U);
}

TEST_F(AircraftWidgetTest, SaysTheReadingUnderTheCursor)
{
    const AircraftPicture picture = layoutAircraft(series, {}, {}, widget.size(), {});
    QSignalSpy said{&widget, &AircraftWidget::hoverSentence};
    const QPointF dot = picture.curves[2].dots.front();
    QMouseEvent move{QEvent::MouseMove, dot,          widget.mapToGlobal(dot),
                     Qt::NoButton,      Qt::NoButton, Qt::NoModifier};
    QCoreApplication::sendEvent(&widget, &move);
    ASSERT_FALSE(said.isEmpty());
    EXPECT_TRUE(said.last().first().toString().contains("scatters from the middle of its band"));
}

TEST_F(AircraftWidgetTest, ZoomsAndKeepsThatWhenTheSameAirframeIsReadAnew)
{
    const double whole = widget.shown().to - widget.shown().from;
    QTest::keyClick(&widget, Qt::Key_Plus);
    QTest::keyClick(&widget, Qt::Key_Plus);
    const TrendWindow near = widget.shown();
    EXPECT_LT(near.to - near.from, whole / 1.4);
    widget.setSeries(series, TrendAxis::ByRigging, 1);
    EXPECT_DOUBLE_EQ(widget.shown().from, near.from);
    series.airframe = AirframeId{{2}};
    widget.setSeries(series, TrendAxis::ByRigging, 1);
    EXPECT_DOUBLE_EQ(widget.shown().to - widget.shown().from, whole);
}

TEST(PictureWidget, IsAsHighAsItsBlockAndSaysItsPictureInWords)
{
    PictureWidget widget;
    Look large;
    large.fonts.scale = 1.5;
    widget.setLook(large);
    PictureBlock block;
    block.height = 140;
    block.lay = [](QSizeF size, const FontSizes& fonts) {
        return laidPicture(layoutShifts(aircraftOf(54).shifts, size, fonts));
    };
    widget.setPicture(block, "Shared shifts");
    EXPECT_EQ(widget.sizeHint().height(), 210);
    EXPECT_EQ(widget.accessibleName(), "Shared shifts");
    EXPECT_TRUE(widget.accessibleDescription().contains("leaf set B"));
    widget.resize(600, 210);
    EXPECT_FALSE(widget.grab().isNull());
}
