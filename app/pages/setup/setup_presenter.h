#pragma once

#include "app/pages/setup/part_presenters.h"

namespace rig {

// The parts of Set up at one desk, and what the page shows of all of them together.
class SetUpPresenter
{
public:
    // Both outlive it.
    SetUpPresenter(Records& records, const Clock& clock) : desk{records, clock} {}
    SetUpPresenter(const SetUpPresenter&) = delete;
    SetUpPresenter& operator=(const SetUpPresenter&) = delete;

    // Without an airframe: what belongs to the whole file.
    Result<SetUpView> view(std::optional<AirframeId> of) const;

    SetUpDesk desk;
    AirframePresenter airframe{desk};
    CouplingsPresenter couplings{desk};
    SurfacesPresenter surfaces{desk};
    GaugesPresenter gauges{desk};
    PeoplePresenter people{desk};
    EventsPresenter events{desk};
    PhotosPresenter photos{desk};
    PaperPresenter paper{desk};
};

} // namespace rig
