#include "core/lesson/learning_facts.h"

#include <ranges>

namespace rig {

const Photo* LearningFacts::photo(CouplingId coupling, PhotoOf of) const
{
    for (const Photo& photo : photos | std::views::reverse)
        if (photo.coupling == coupling && photo.of == of)
            return &photo;
    return nullptr;
}

} // namespace rig
