#include "app/pages/learn/measuring_presenter.h"

#include "core/review/taught_joint.h"
#include "core/store/facts_book.h"

#include <algorithm>
#include <random>
#include <ranges>

namespace rig {

namespace {

std::vector<Coupling> withAGap(std::vector<Coupling> couplings)
{
    std::erase_if(couplings, [](const Coupling& coupling) { return !hasGap(coupling); });
    return couplings;
}

// What others read locked at each coupling of the fitting that holds.
std::vector<OthersReading> othersOf(const KnownAirframe& known, PersonId person, Day today)
{
    std::vector<OthersReading> others;
    for (const Coupling& coupling : known.facts().couplings)
        for (const Reading* reading : statedLockedOf(known, coupling.id, today).locked)
            if (reading->person != person)
                others.push_back({coupling.id, reading->person, reading->interval, reading->when.localDay()});
    return others;
}

} // namespace

Result<MeasuringView> MeasuringPresenter::measuring(AirframeId airframe, PersonId person) const
{
    const Day today = m_clock.now().localDay();
    const auto known = m_records.book().toldOpenly(airframe, today);
    if (!known)
        return known.problem();
    const auto learning = m_records.book().learning(airframe);
    if (!learning)
        return learning.problem();
    const AirframeFacts& facts = known.value()->facts();
    MeasuringView view;
    view.person = person;
    view.gauges = facts.gaugesInUse();
    view.couplings = withAGap(facts.couplingsInUse());
    const auto isOwn = [person](const PracticeReading& reading) {
        return reading.person == person && !reading.place;
    };
    std::ranges::copy_if(learning.value()->practiceReadings, std::back_inserter(view.readings), isOwn);
    std::ranges::copy_if(learning.value()->practiceTakenBack, std::back_inserter(view.takenBack), isOwn,
                         &WithdrawnFact<PracticeReading>::fact);
    view.own = ownPracticeOf(view.readings, othersOf(*known.value(), person, today));
    const auto shared = learning.value()->practiceShared | std::views::reverse;
    const auto said = std::ranges::find(shared, person, &PracticeShared::person);
    view.isShared = said != shared.end() && said->isShared;
    return view;
}

Result<StudyView> MeasuringPresenter::study(AirframeId airframe) const
{
    const auto rest = m_records.book().withoutReadings(airframe);
    if (!rest)
        return rest.problem();
    const auto learning = m_records.book().learning(airframe);
    if (!learning)
        return learning.problem();
    StudyView view;
    view.persons = rest.value()->persons;
    view.gauges = rest.value()->gaugesInUse();
    view.couplings = withAGap(rest.value()->couplingsInUse());
    if (learning.value()->studies.empty())
        return view;
    view.study = learning.value()->studies.back();
    for (const StudyPlace& place : learning.value()->studyPlaces)
        if (place.study == view.study->id)
            view.places.push_back(place);
    view.result = studyResultOf(view.places, learning.value()->practiceReadings);
    const auto isOfStudy = [&view](const PracticeReading& reading) {
        return reading.place &&
               std::ranges::find(view.places, *reading.place, &StudyPlace::id) != view.places.end();
    };
    for (const PracticeReading& reading : learning.value()->practiceReadings)
        if (isOfStudy(reading))
            view.last = reading;
    std::ranges::copy_if(learning.value()->practiceTakenBack, std::back_inserter(view.takenBack), isOfStudy,
                         &WithdrawnFact<PracticeReading>::fact);
    if (const StudyPlace* next = nextPlace(view.places, learning.value()->practiceReadings))
        view.next = *next;
    return view;
}

Outcome MeasuringPresenter::keep(PracticeReading reading)
{
    reading.when = m_clock.now();
    reading.stamp.by = reading.person;
    const auto added = m_records.add(reading);
    return added ? Outcome{Done{}} : Outcome{added.problem()};
}

Outcome MeasuringPresenter::keep(PersonId person, CouplingId coupling, GaugeId gauge,
                                 const GaugeReading& reading)
{
    return keep(
        PracticeReading{{}, coupling, person, reading.interval, reading.technique, gauge, {}, {}, {}});
}

Outcome MeasuringPresenter::keep(const StudyPlace& place, GaugeId gauge, const GaugeReading& reading)
{
    return keep(PracticeReading{
        {}, place.coupling, place.person, reading.interval, reading.technique, gauge, {}, place.id, {}});
}

Outcome MeasuringPresenter::takeBack(const PracticeReading& reading, const std::string& reason)
{
    const auto added =
        m_records.add(LearningTakenBack{{}, {}, reading.id, reading.person, reason, {reading.person, {}}});
    return added ? Outcome{Done{}} : Outcome{added.problem()};
}

Outcome MeasuringPresenter::share(PersonId person, bool isShared)
{
    const auto added = m_records.add(PracticeShared{{}, person, isShared, {person, {}}});
    return added ? Outcome{Done{}} : Outcome{added.problem()};
}

Outcome MeasuringPresenter::begin(AirframeId airframe, PersonId by, const std::vector<CouplingId>& couplings,
                                  const std::vector<PersonId>& persons, int repeats)
{
    return m_records.together([&]() -> Outcome {
        const auto study = m_records.add(CrossedStudy{{}, airframe, repeats, {}, {by, {}}});
        if (!study)
            return study.problem();
        numbers::Dice dice{std::random_device{}()};
        for (StudyPlace place : studyPlanOf(study.value(), couplings, persons, repeats, dice)) {
            place.stamp.by = by;
            if (const auto added = m_records.add(place); !added)
                return added.problem();
        }
        return Done{};
    });
}

} // namespace rig
