#include "app/pages/learn/sign_off_presenter.h"

#include "core/airframe/saved_before.h"
#include "core/review/last_rigging.h"
#include "core/review/person_riggings.h"
#include "core/store/airframe_facts.h"
#include "core/store/facts_book.h"

#include <algorithm>
#include <ranges>

namespace rig {

namespace {

template <typename SomeId> Outcome keptOutcome(const Result<SomeId>& added)
{
    return added ? Outcome{Done{}} : Outcome{added.problem()};
}

std::vector<PersonId> peopleOf(const EndedRigging& ended)
{
    std::vector<PersonId> people{ended.record->leader};
    for (const std::optional<PersonId>& one : {ended.close->first, ended.close->second})
        if (one && std::ranges::find(people, *one) == people.end())
            people.push_back(*one);
    return people;
}

std::vector<PersonId> namedIn(RecordId record, const std::vector<PartInRigging>& named)
{
    std::vector<PersonId> people;
    for (const PartInRigging& one : named)
        if (one.record == record)
            people.push_back(one.person);
    return people;
}

std::vector<PersonId> notNamed(const SupervisedRigging& rigging, const std::vector<PartInRigging>& named)
{
    std::vector<PersonId> missing{rigging.learner, rigging.mentor};
    const std::vector<PersonId> people = namedIn(rigging.record, named);
    std::erase_if(missing,
                  [&people](PersonId person) { return std::ranges::find(people, person) != people.end(); });
    return missing;
}

// In the order in which they were told.
std::vector<SupervisedRow> supervisedOf(PersonId person, const AirframeFacts& facts,
                                        const LearningFacts& learning,
                                        const std::vector<PartInRigging>& named)
{
    std::vector<SupervisedRow> rows;
    const auto add = [&](const SupervisedRigging& one, const std::optional<LearningTakenBack>& back) {
        const auto record = std::ranges::find(facts.riggingRecords, one.record, &RiggingRecord::id);
        if (one.learner == person && record != facts.riggingRecords.end())
            rows.push_back({one, record->begins.localDay(), notNamed(one, named), back});
    };
    for (const SupervisedRigging& one : learning.supervisedRiggings)
        add(one, {});
    for (const auto& [one, back] : learning.supervisedTakenBack)
        add(one, back);
    std::ranges::sort(rows, savedBefore, &SupervisedRow::rigging);
    return rows;
}

} // namespace

Result<SignOffView> SignOffPresenter::view(AirframeId airframe, PersonId person) const
{
    const auto rest = m_records.book().withoutReadings(airframe);
    if (!rest)
        return rest.problem();
    const auto read = m_records.book().learning(airframe);
    if (!read)
        return read.problem();
    const AirframeFacts& facts = *rest.value();
    const LearningFacts& learning = *read.value();
    SignOffView view;
    view.person = person;
    view.persons = facts.persons;
    view.couplings = facts.couplingsInUse();
    view.today = m_clock.now().localDay();
    const auto parts = m_records.partsInRiggings(airframe);
    if (!parts)
        return parts.problem();
    view.lastRigging = lastRiggingOf(person, riggingDaysOf(facts, parts.value()));
    const auto standings = personStandingsOn(m_records, facts, view.today);
    if (!standings)
        return standings.problem();
    if (const auto found = standings.value().find(person); found != standings.value().end())
        view.standing = found->second;
    std::vector<CouplingId> practised;
    for (const Coupling& coupling : view.couplings)
        if (isBallJoint(coupling.kind))
            practised.push_back(coupling.id);
    view.progress =
        progressOf(person, practised, learning.supervisedRiggings, learning.rounds, learning.seatingAnswers);
    const auto named = m_records.namedInRiggings(airframe);
    if (!named)
        return named.problem();
    view.supervised = supervisedOf(person, facts, learning, named.value());
    for (const EndedRigging& ended : endedRiggings(facts)) {
        const RecordId id = ended.record->id;
        const bool isTold = std::ranges::any_of(view.supervised, [id](const SupervisedRow& row) {
            return row.rigging.record == id && !row.back;
        });
        if (!ended.isAbandoned() && !isTold && ended.record->origin == RecordOrigin::Rigging)
            view.riggings.push_back(
                {id, ended.record->begins.localDay(), peopleOf(ended), namedIn(id, named.value())});
    }
    std::ranges::stable_sort(view.riggings, std::ranges::greater{}, &RiggingChoice::day);
    for (const SignOff& signOff : learning.signOffs | std::views::reverse)
        if (signOff.person == person)
            view.history.push_back(signOff);
    return view;
}

Outcome SignOffPresenter::add(PersonId learner, const SupervisedEntry& entry)
{
    return keptOutcome(m_records.add(
        SupervisedRigging{{}, *entry.record, learner, *entry.mentor, entry.note, {*entry.mentor, {}}}));
}

Outcome SignOffPresenter::takeBack(SupervisedId rigging, PersonId who, const std::string& reason)
{
    return keptOutcome(m_records.add(LearningTakenBack{{}, rigging, {}, who, reason, {who, {}}}));
}

Outcome SignOffPresenter::sign(AirframeId airframe, PersonId person, const SignOffEntry& entry)
{
    return keptOutcome(m_records.add(
        SignOff{{},
                airframe,
                person,
                *entry.signer,
                entry.kind,
                *entry.day,
                entry.months,
                entry.monthsWithoutRigging,
                entry.note,
                entry.kind == SignOffKind::Signed ? std::optional{entry.askedFor} : std::nullopt,
                {*entry.signer, {}}}));
}

} // namespace rig
