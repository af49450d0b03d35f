#include "app/pages/learn/sign_off_presenter.h"

#include "core/review/last_rigging.h"
#include "core/review/person_riggings.h"
#include "core/store/airframe_facts.h"
#include "core/store/facts_book.h"

#include <algorithm>
#include <ranges>

namespace rig {

namespace {

Outcome keptOutcome(const Result<FactId>& added)
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
    const auto parts = m_records.partsInRiggings(airframe, Day{});
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
    for (const SupervisedRigging& one : learning.supervisedRiggings) {
        const auto record = std::ranges::find(facts.riggingRecords, one.record, &RiggingRecord::id);
        if (one.learner == person && record != facts.riggingRecords.end())
            view.supervised.push_back({one, record->begins.localDay()});
    }
    for (const EndedRigging& ended : endedRiggings(facts)) {
        const RecordId id = ended.record->id;
        const bool isTold = std::ranges::any_of(
            view.supervised, [id](const SupervisedRow& row) { return row.rigging.record == id; });
        if (!ended.isAbandoned() && !isTold && ended.record->origin == RecordOrigin::Rigging)
            view.riggings.push_back({id, ended.record->begins.localDay(), peopleOf(ended)});
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

Outcome SignOffPresenter::sign(AirframeId airframe, PersonId person, const SignOffEntry& entry)
{
    return keptOutcome(m_records.add(SignOff{{},
                                             airframe,
                                             person,
                                             *entry.signer,
                                             entry.kind,
                                             *entry.day,
                                             entry.months,
                                             entry.monthsWithoutRigging,
                                             entry.note,
                                             {*entry.signer, {}}}));
}

} // namespace rig
