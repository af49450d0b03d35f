#include "app/report/plan_block.h"

#include "app/blocks/cells.h"
#include "app/blocks/laid_picture.h"
#include "app/pictures/plan_view.h"

namespace rig {

PictureBlock planBlock(const Airframe& airframe, std::span<const Coupling> couplings, double height,
                       std::span<const PlanStanding> standings)
{
    PlanView view;
    view.glider = gliderOf(airframe);
    view.withOrder = standings.empty();
    for (const Coupling& coupling : couplings) {
        PlanItem& item = view.items.emplace_back(planItemOf(coupling, printedName(coupling.name)));
        item.order = static_cast<int>(view.items.size());
        if (view.withOrder)
            continue;
        const PlanStanding& standing = standings[view.items.size() - 1];
        item.mark = shapeOf(standing.says);
        item.role = shapeRoleOf(standing.says);
        item.word = standing.word;
    }
    PictureBlock block;
    block.height = height;
    block.lay = [view = std::move(view)](QSizeF size, const FontSizes& fonts) {
        return laidPicture(layoutPlan(view, size, fonts));
    };
    return block;
}

} // namespace rig
