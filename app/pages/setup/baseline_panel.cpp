#include "app/pages/setup/baseline_panel.h"

namespace rig {

BaselinePanel::BaselinePanel(Records&, const Clock&, Prompts&, QWidget* parent) : QWidget{parent} {}

void BaselinePanel::showAirframe(std::optional<AirframeId>) {}

void BaselinePanel::setLook(const Look&) {}

bool BaselinePanel::takeKey(QKeyEvent*)
{
    return false;
}

} // namespace rig
