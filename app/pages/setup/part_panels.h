#pragma once

namespace rig {

class Prompts;
class SetUpPanel;
class SetUpPresenter;

// The parts of Set up that are lists. What they are made with outlives them.

// In rigging order; one of them, its fittings, or the usual ones to start from.
SetUpPanel* makeCouplingsPanel(SetUpPresenter& presenter, Prompts& prompts);
// In the order of the control check.
SetUpPanel* makeSurfacesPanel(SetUpPresenter& presenter, Prompts& prompts);
// Leaf sets, pins and taper gauges of the whole file, with their checks.
SetUpPanel* makeGaugesPanel(SetUpPresenter& presenter);
// Everybody who measures, looks, signs or is called.
SetUpPanel* makePeoplePanel(SetUpPresenter& presenter);
// What was done to the airframe or to one coupling, newest first.
SetUpPanel* makeEventsPanel(SetUpPresenter& presenter);
// A sheet for a rigging without the laptop.
SetUpPanel* makePaperPanel(SetUpPresenter& presenter, Prompts& prompts);

} // namespace rig
