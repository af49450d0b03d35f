#include "app/pictures/aircraft.h"
#include "app/pictures/band_bar.h"
#include "app/pictures/offsets.h"
#include "tests/pictures/aircraft_scene.h"
#include "tests/pictures/golden.h"

#include <gtest/gtest.h>

using namespace rig;
using namespace rig::test;

TEST(AircraftGolden, LooksAsAgreedByRiggingInLight)
{
    const QSize size{900, 520};
    const AircraftPicture picture = layoutAircraft(aircraftOf(54), {TrendAxis::ByRigging, 0, 0}, 2, size, {});
    expectLikeGolden(painted(picture, size, Theme::light()), "aircraft-by-rigging-light");
}

TEST(ShiftsGolden, LookAsAgreedInDark)
{
    const QSize size{600, 140};
    expectLikeGolden(painted(layoutShifts(aircraftOf(54).shifts, size, {}), size, Theme::dark()),
                     "shifts-dark");
}

TEST(OffsetsGolden, LookAsAgreedInLight)
{
    const std::vector<OffsetRow> rows{{"M. Oren", 0.008, -0.002, 0.018, 0.014, 112, false, {}},
                                      {"T. Vale", -0.012, -0.024, 0.0, 0.017, 98, false, {}},
                                      {"J. Iver", 0.041, 0.02, 0.063, 0.029, 41, true, {}},
                                      {"A. Guest", {}, {}, {}, {}, 3, false, "3 readings: too few to tell"}};
    const QSize size = QSizeF{600, heightOfOffsets(rows, {})}.toSize();
    expectLikeGolden(painted(layoutOffsets(rows, size, {}), size, Theme::light()), "offsets-light");
}

TEST(BandBarGolden, LooksAsAgreedInLight)
{
    const QSize size{280, 26};
    const BandBarView view{bandAround(1.16, 0.08, 0.11),
                           GapInterval{Gap::micrometres(1200), Gap::micrometres(1250)}, Verdict::NearEdge};
    expectLikeGolden(painted(layoutBandBar(view, size, {}), size, Theme::light()), "band-bar-light");
}
