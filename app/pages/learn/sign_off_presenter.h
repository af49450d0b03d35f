#pragma once

#include "app/pages/learn/learn_view.h"
#include "core/result.h"
#include "core/store/records.h"

#include <string>

namespace rig {

// What somebody states of a learner. Nothing is filled in by itself.
struct SupervisedEntry
{
    std::optional<RecordId> record;
    std::optional<PersonId> mentor;
    std::string note; // what somebody did there whom the record does not name
};

struct SignOffEntry
{
    SignOffKind kind = SignOffKind::Signed;
    std::optional<PersonId> signer;
    std::optional<Day> day;
    int months = kSignedForMonths;
    int monthsWithoutRigging = kMonthsWithoutRigging;
    std::string note;
    AskedFor askedFor; // as it stood on the screen
};

// Facts -> how a learner stands on one airframe; what is signed -> facts. Knows no widget.
class SignOffPresenter
{
public:
    // Both outlive it.
    SignOffPresenter(Records& records, const Clock& clock) : m_records{records}, m_clock{clock} {}

    Result<SignOffView> view(AirframeId airframe, PersonId person) const;
    // Everything asked for is there.
    Outcome add(PersonId learner, const SupervisedEntry& entry);
    Outcome takeBack(SupervisedId rigging, PersonId who, const std::string& reason);
    Outcome sign(AirframeId airframe, PersonId person, const SignOffEntry& entry);

private:
    Records& m_records;
    const Clock& m_clock;
};

} // namespace rig
