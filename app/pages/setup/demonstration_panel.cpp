#include "app/pages/setup/demonstration_panel.h"

namespace rig {

DemonstrationPanel::DemonstrationPanel(Records&, const Clock&, Prompts&, QWidget* parent) : QWidget{parent} {}

void DemonstrationPanel::showAirframe(std::optional<AirframeId>) {}

void DemonstrationPanel::setLook(const Look&) {}

bool DemonstrationPanel::takeKey(QKeyEvent*)
{
    return false;
}

} // namespace rig
