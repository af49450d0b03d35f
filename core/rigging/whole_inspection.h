#pragma once

#include "core/airframe/coupling.h"
#include "core/airframe/saved_before.h"
#include "core/rigging/record_content.h"

#include <optional>
#include <vector>

namespace rig {

// The two who went through the whole of one coupling.
struct InspectedBy
{
    PersonId first;
    PersonId second;
    Moment when; // the last answer of the two

    bool operator==(const InspectedBy&) const = default;
};

// One time that a joint was left part-seated on purpose, or that somebody asked for its inspection.
struct LeftPartSeated
{
    explicit LeftPartSeated(const Reading& shown);
    explicit LeftPartSeated(const Question& asked);

    Moment when;
    SaveOrder saved;
    bool isToldLater = false; // typed in on another day: then the moment counts, not the order of saving
};

// Of which part of the history somebody asks whether the joint was gone through.
struct InspectionAsked
{
    std::vector<LeftPartSeated> since; // after each of these
    std::optional<SaveOrder> until;    // and saved before this; empty: up to now
};

// Whether everything that is asked of this kind was done at the coupling in this record, and all of it in
// that part of the history: looked at, read locked, pulled, secured, and looked at and pulled by another
// person; nothing of it with “cannot see”. What is told later, on paper or in place of a slip, was done at
// its own moment and not when it was typed in.
std::optional<InspectedBy> whollyInspected(RecordContent content, const Coupling& coupling,
                                           const InspectionAsked& asked);

} // namespace rig
