#include "core/demo/photos.h"

namespace rig::demo {

namespace {

struct Photographed
{
    int airframe;
    const char* coupling;
};

constexpr Photographed kPhotographed[] = {
    {0, "Left aileron"}, {0, "Right aileron"}, {0, "Elevator"}, {1, "Left aileron"}};

} // namespace

void addPhotos(Teller& teller, const PhotoDrawer& draw)
{
    for (const auto& [airframe, name] : kPhotographed) {
        const Coupling& coupling = teller.joint(airframe, name).coupling;
        for (const PhotoOf of : {PhotoOf::Locked, PhotoOf::PartSeated, PhotoOf::Empty, PhotoOf::Access}) {
            const DrawnPhoto drawn = draw(coupling, of);
            Photo photo;
            photo.coupling = coupling.id;
            photo.of = of;
            photo.day = teller.clock().now().localDay();
            photo.person = teller.person(Who::Oren);
            photo.width = drawn.width;
            photo.height = drawn.height;
            photo.note = "Drawn by the program, not a photo.";
            photo.stamp = teller.by(Who::Oren);
            teller.keep(teller.records().add(photo, drawn.image));
        }
    }
}

} // namespace rig::demo
