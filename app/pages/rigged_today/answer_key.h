#pragma once

#include "app/widgets/parts.h"
#include "app/wording/rigged_words.h"
#include "core/rigging/rigging_record.h"

#include <optional>

namespace rig {

// The answer that a key gives wherever something is asked; not every question takes each of them.
inline std::optional<Answer> answerBy(const QKeyEvent& event)
{
    if (isKey(event, RiggedWords::keyYes()))
        return Answer::Yes;
    if (isKey(event, RiggedWords::keyNo()))
        return Answer::No;
    if (isKey(event, RiggedWords::keyCannotSee()))
        return Answer::CannotSee;
    if (isKey(event, RiggedWords::keyFelt()))
        return Answer::Felt;
    return std::nullopt;
}

} // namespace rig
