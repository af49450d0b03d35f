#include "app/pages/setup/setup_presenter.h"

namespace rig {

Result<SetUpView> SetUpPresenter::view(std::optional<AirframeId> of) const
{
    SetUpView view;
    view.today = desk.today();
    Problem problem;
    if (!take(people.view(), view.persons, problem) || !take(gauges.view(), view.gauges, problem))
        return problem;
    if (!of)
        return view;
    const auto openly = desk.toldOpenly(*of);
    if (!openly)
        return openly.problem();
    view.plays = events.plays(openly.value()->facts());
    const auto known = desk.known(*of);
    if (!known)
        return known.problem();
    const AirframeFacts& facts = known.value()->facts();
    view.airframe = airframe.view(facts);
    view.couplings = couplings.view(*known.value());
    view.surfaces = surfaces.view(facts);
    view.events = events.view(facts);
    view.gaugeUsedLast = gaugeUsedLast(facts);
    return view;
}

} // namespace rig
