#include "tests/demo/demo_file.h"
#include "tests/support/hangar.h"

using namespace rig;
using namespace rig::test;

namespace {

class DrawnDemo : public testing::Test
{
protected:
    DrawnDemo()
    {
        must(buildDemo(store.file(), demo::Language::English, [](const Coupling&, PhotoOf of) {
            return DrawnPhoto{{{"drawn " + std::to_string(static_cast<int>(of))}}, 640, 480};
        }));
        for (const Airframe& airframe : must(store.records().airframes()))
            airframes.push_back(airframe);
    }

    TempStore store;
    std::vector<Airframe> airframes;
};

} // namespace

TEST_F(DrawnDemo, FourCouplingsHaveAPhotoOfEachStateAndOfTheirPlace)
{
    std::map<CouplingId, std::vector<Photo>> photos;
    for (const Airframe& airframe : airframes)
        for (const Photo& photo : must(store.records().learning(airframe.id)).photos)
            photos[photo.coupling].push_back(photo);
    EXPECT_EQ(photos.size(), 4U);
    for (const auto& [coupling, of] : photos) {
        ASSERT_EQ(of.size(), 4U);
        for (const Photo& photo : of) {
            EXPECT_EQ(photo.note, "Drawn by the program, not a photo.");
            EXPECT_EQ(must(store.records().image(photo.id)).jpeg.bytes,
                      "drawn " + std::to_string(static_cast<int>(photo.of)));
        }
    }
}

TEST_F(DrawnDemo, IsOtherwiseTheSameAsWithoutPhotos)
{
    TempStore without;
    must(buildDemo(without.file(), demo::Language::English));
    for (const Airframe& airframe : airframes) {
        EXPECT_TRUE(must(without.records().learning(airframe.id)).photos.empty());
        const auto one = must(store.records().readings(airframe.id));
        const auto other = must(without.records().readings(airframe.id));
        ASSERT_EQ(one.size(), other.size());
        for (std::size_t i = 0; i < one.size(); ++i)
            EXPECT_EQ(one[i].reading.id, other[i].reading.id);
    }
}

TEST_F(DrawnDemo, EveryCouplingStandsOnThePlanAndIsSeenFromSomewhere)
{
    const std::map<std::string, int> spans{{"QX-17", 1500}, {"QX-42", 1800}, {"QX-88", 2000}};
    for (const Airframe& airframe : airframes) {
        EXPECT_EQ(airframe.spanCentimetres, spans.at(airframe.registration));
        EXPECT_EQ(airframe.tail, TailForm::T);
        EXPECT_TRUE(airframe.wingPanels);
        for (const Coupling& coupling : must(store.records().couplings(airframe.id))) {
            ASSERT_TRUE(coupling.place) << coupling.name;
            const double sign = coupling.side == Side::Left ? -1 : 1;
            EXPECT_GE(sign * coupling.place->x, 0) << coupling.name;
            EXPECT_NE(coupling.seenFrom, AccessSide::Unknown) << coupling.name;
            const bool isMirrorTold = coupling.access.find("mirror") != std::string::npos;
            EXPECT_TRUE(!isMirrorTold || coupling.mirrorFrom != AccessSide::Unknown) << coupling.name;
        }
    }
}
