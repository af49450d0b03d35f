#pragma once

#include "app/report/page_flow.h"
#include "app/report/printing.h"
#include "core/airframe/airframe.h"
#include "core/airframe/coupling.h"
#include "core/lesson/cutaway.h"
#include "core/result.h"

#include <map>
#include <span>
#include <vector>

namespace rig {

// What an airframe's card is made of. No reading comes into it, so that no band and no gap can stand on it;
// of them only which layout each joint is drawn as.
struct CardSource
{
    Airframe airframe;
    std::vector<Coupling> couplings;           // in use, in the order of rigging
    std::map<CouplingId, DrawnLayout> drawn{}; // where one is missing: as it was entered
};

// A card to fold and to keep in the glider: where the couplings are, from where they are seen, what locked
// looks like, whom to call. Its paper is A5, whatever the printing says.
std::vector<Block> cardBlocks(const CardSource& source);
PageFlow cardOf(const CardSource& source, const Printing& printing);
Outcome writeCard(const QString& path, const CardSource& source, const Printing& printing);

// QX-17-card.pdf
QString cardFileName(const CardSource& source);

} // namespace rig
