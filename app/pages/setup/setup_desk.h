#pragma once

#include "core/store/facts_book.h"
#include "core/store/records.h"

#include <optional>

namespace rig {

// What the presenters of Set up share: the file, the clock, and who states what is saved. Facts are asked
// for here and nowhere else.
class SetUpDesk
{
public:
    // Both outlive it.
    SetUpDesk(Records& records, const Clock& clock) : m_records{records}, m_clock{clock} {}

    Records& records() const { return m_records; }
    Moment now() const { return m_clock.now(); }
    Day today() const { return now().localDay(); }

    // From now on; empty: nobody was named.
    void setStatedBy(std::optional<PersonId> person) { m_statedBy = person; }
    std::optional<PersonId> statedBy() const { return m_statedBy; }
    Stamp stamp() const { return {m_statedBy, {}}; }

    // Stays as it is until it is asked again.
    Result<const KnownAirframe*> known(AirframeId airframe) const
    {
        return m_records.book().airframe(airframe);
    }
    // The same without what the second person is not to see yet. Ask it first.
    Result<const KnownAirframe*> toldOpenly(AirframeId airframe) const
    {
        return m_records.book().toldOpenly(airframe, today());
    }

private:
    Records& m_records;
    const Clock& m_clock;
    std::optional<PersonId> m_statedBy;
};

} // namespace rig
