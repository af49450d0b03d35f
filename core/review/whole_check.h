#pragma once

#include "core/airframe/saved_before.h"
#include "core/review/airframe_facts.h"

#include <optional>
#include <vector>

namespace rig {

// What was done to a joint so that it asks for the whole check at the next rigging: cleaned, greased, set up
// again, or with another part. A control check can pass on it and the joint let go flights later.
bool asksForWholeCheck(EventKind kind);

// What still asks for the whole check, looked through once for all couplings.
class WholeChecks
{
public:
    // Asked now or, where a record is given, at that rigging: by what was done before it, and not answered by
    // any rigging before it. The facts outlive this.
    explicit WholeChecks(const AirframeFacts& facts, const RiggingRecord* record = nullptr);

    // The last such event of this coupling, or of the whole airframe, since which no rigging was closed with
    // all steps done.
    std::optional<Event> askedOf(CouplingId coupling) const;

private:
    bool isAnswered(const Event& event) const;

    std::vector<const Event*> m_events; // that ask for it, the last one first
    std::optional<Day> m_lastDay;       // of the riggings that were closed with all steps done
    std::optional<SaveOrder> m_last;    // of those of that day that were no paper: when the last one began
};

} // namespace rig
