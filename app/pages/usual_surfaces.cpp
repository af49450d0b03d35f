#include "app/pages/usual_surfaces.h"

#include "app/wording/surface_words.h"
#include "core/store/names.h"

#include <algorithm>

namespace rig {

namespace {

struct UsualSurface
{
    QString name;
    SurfaceKind kind;
    Side side = Side::None;
};

std::vector<UsualSurface> usualOnes(bool withFlaps)
{
    std::vector<UsualSurface> all{{SurfaceWords::leftAileron(), SurfaceKind::Aileron, Side::Left},
                                  {SurfaceWords::rightAileron(), SurfaceKind::Aileron, Side::Right}};
    if (withFlaps) {
        all.push_back({SurfaceWords::leftFlap(), SurfaceKind::Flap, Side::Left});
        all.push_back({SurfaceWords::rightFlap(), SurfaceKind::Flap, Side::Right});
    }
    all.push_back({SurfaceWords::leftAirbrake(), SurfaceKind::Airbrake, Side::Left});
    all.push_back({SurfaceWords::rightAirbrake(), SurfaceKind::Airbrake, Side::Right});
    all.push_back({SurfaceWords::elevator(), SurfaceKind::Elevator});
    all.push_back({SurfaceWords::rudder(), SurfaceKind::Rudder});
    all.push_back({SurfaceWords::trim(), SurfaceKind::Trim});
    return all;
}

bool isOfAFlap(const Coupling& coupling)
{
    return coupling.inUse && coupling.circuit == Circuit::Flap;
}

} // namespace

std::vector<Surface> usualSurfaces(AirframeId airframe, const std::vector<Coupling>& couplings,
                                   const std::vector<Surface>& known)
{
    int order = 0;
    for (const Surface& one : known)
        order = std::max(order, one.order);
    std::vector<Surface> surfaces;
    for (const UsualSurface& usual : usualOnes(std::ranges::any_of(couplings, isOfAFlap))) {
        const std::string name = usual.name.toStdString();
        const bool isThere = std::ranges::any_of(
            known, [&name](const Surface& one) { return comparable(one.name) == comparable(name); });
        if (isThere)
            continue;
        Surface surface;
        surface.airframe = airframe;
        surface.name = name;
        surface.kind = usual.kind;
        surface.side = usual.side;
        surface.order = ++order;
        surfaces.push_back(surface);
    }
    return surfaces;
}

Result<int> addUsualSurfaces(Records& records, AirframeId airframe, std::optional<PersonId> statedBy)
{
    int added = 0;
    const Outcome done = records.together([&]() -> Outcome {
        const auto couplings = records.couplings(airframe);
        if (!couplings)
            return couplings.problem();
        const auto known = records.surfaces(airframe);
        if (!known)
            return known.problem();
        for (Surface& surface : usualSurfaces(airframe, couplings.value(), known.value())) {
            surface.stamp.by = statedBy;
            if (const auto kept = records.add(surface); !kept)
                return kept.problem();
            ++added;
        }
        return Done{};
    });
    if (!done)
        return done.problem();
    return added;
}

} // namespace rig
