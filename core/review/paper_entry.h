#pragma once

#include "core/review/airframe_facts.h"

#include <optional>

namespace rig {

// Whether a rigging of that moment can be taken in from paper.
struct PaperMoment
{
    enum class Finding {
        Possible,
        ToCome,             // later than now
        BeforeFirstFitting, // every joint begins with a refit, the first of them on the day `first`
        RiggedThatDay,      // `other` stands in the record already: it may be the same
    };

    Finding finding = Finding::Possible;
    Day first{};
    const RiggingRecord* other = nullptr; // belongs to the facts
};

PaperMoment paperMomentOf(const AirframeFacts& facts, Moment begins, Moment now);

} // namespace rig
