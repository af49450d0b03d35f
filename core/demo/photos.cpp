#include "core/demo/photos.h"

#include "core/demo/sayings.h"

#include <algorithm>
#include <array>

namespace rig::demo {

namespace {

struct Photographed
{
    const char* airframe;
    Saying coupling;
};

constexpr std::array kPhotographed{
    Photographed{"QX-17", says::kLeftAileron}, Photographed{"QX-17", says::kRightAileron},
    Photographed{"QX-17", says::kElevator}, Photographed{"QX-42", says::kLeftAileron}};
constexpr std::array kEachOf{PhotoOf::Locked, PhotoOf::PartSeated, PhotoOf::Empty, PhotoOf::Access};

// The one that the story made under this name.
template <typename Thing>
Result<Thing> named(const Result<std::vector<Thing>>& all, std::string Thing::*name,
                    const std::string& wanted)
{
    if (!all)
        return all.problem();
    const auto found = std::ranges::find(all.value(), wanted, name);
    if (found == all.value().end())
        return Problem{ProblemKind::NotFound, wanted};
    return *found;
}

Outcome photograph(Records& records, const Coupling& coupling, Photo photo, const PhotoDrawer& draw)
{
    for (const PhotoOf of : kEachOf) {
        const DrawnPhoto drawn = draw(coupling, of);
        photo.coupling = coupling.id;
        photo.of = of;
        photo.width = drawn.width;
        photo.height = drawn.height;
        if (const auto added = records.add(photo, drawn.image); !added)
            return added.problem();
    }
    return Done{};
}

} // namespace

Outcome addPhotos(Records& records, Language language, Day day, const PhotoDrawer& draw)
{
    const auto owner = named(records.persons(), &Person::name, "M. Oren");
    if (!owner)
        return owner.problem();
    Photo photo;
    photo.day = day;
    photo.person = owner.value().id;
    photo.note = says::kDrawn.in(language);
    photo.stamp.by = owner.value().id;
    for (const Photographed& one : kPhotographed) {
        const auto airframe = named(records.airframes(), &Airframe::registration, one.airframe);
        if (!airframe)
            return airframe.problem();
        const auto coupling =
            named(records.couplings(airframe.value().id), &Coupling::name, one.coupling.in(language));
        if (!coupling)
            return coupling.problem();
        if (const Outcome kept = photograph(records, coupling.value(), photo, draw); !kept)
            return kept;
    }
    return Done{};
}

} // namespace rig::demo
