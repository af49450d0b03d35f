#include "core/lesson/study_plan.h"

#include <algorithm>
#include <map>

namespace rig {

namespace {

bool isSamePair(const StudyPlace& one, const StudyPlace& other)
{
    return one.coupling == other.coupling && one.person == other.person;
}

bool followsItself(const std::vector<StudyPlace>& places, std::size_t at)
{
    return (at > 0 && isSamePair(places[at - 1], places[at])) ||
           (at + 1 < places.size() && isSamePair(places[at], places[at + 1]));
}

// A pair that follows itself changes places with another, where neither then follows itself.
void keepApart(std::vector<StudyPlace>& places)
{
    for (std::size_t i = 1; i < places.size(); ++i)
        for (std::size_t other = 0; other < places.size() && isSamePair(places[i - 1], places[i]); ++other) {
            std::swap(places[i], places[other]);
            if (followsItself(places, i) || followsItself(places, other))
                std::swap(places[i], places[other]);
        }
}

} // namespace

std::vector<StudyPlace> studyPlanOf(StudyId study, std::span<const CouplingId> couplings,
                                    std::span<const PersonId> persons, int repeats, numbers::Dice& dice)
{
    std::vector<StudyPlace> places;
    for (const CouplingId coupling : couplings)
        for (const PersonId person : persons)
            for (int i = 0; i < repeats; ++i)
                places.push_back({{}, study, 0, coupling, person, {}});
    dice.shuffle(places);
    keepApart(places);
    for (std::size_t i = 0; i < places.size(); ++i)
        places[i].turn = static_cast<int>(i);
    return places;
}

StudyResult studyResultOf(std::span<const StudyPlace> places, std::span<const PracticeReading> readings)
{
    StudyResult result;
    result.wanted = static_cast<int>(places.size());
    std::map<CouplingId, int> parts;
    std::map<PersonId, int> persons;
    std::vector<numbers::StudyReading> read;
    double step = 0;
    for (const StudyPlace& place : places) {
        const auto found = std::ranges::find(readings, std::optional{place.id}, &PracticeReading::place);
        if (found == readings.end())
            continue;
        ++result.read;
        const int part = parts.try_emplace(place.coupling, static_cast<int>(parts.size())).first->second;
        const int person = persons.try_emplace(place.person, static_cast<int>(persons.size())).first->second;
        const std::optional<double> middle = middleOf(found->interval);
        if (!middle) {
            result.hasOpenReading = true;
            continue;
        }
        read.push_back({*middle, part, person});
        step = std::max(step, (*found->interval.refuses - found->interval.enters).inMillimetres());
    }
    if (result.isWhole() && !result.hasOpenReading)
        result.figures = numbers::measurerStudy(read, step);
    return result;
}

const StudyPlace* nextPlace(std::span<const StudyPlace> places, std::span<const PracticeReading> readings)
{
    const StudyPlace* next = nullptr;
    for (const StudyPlace& place : places)
        if ((!next || place.turn < next->turn) &&
            std::ranges::find(readings, std::optional{place.id}, &PracticeReading::place) == readings.end())
            next = &place;
    return next;
}

} // namespace rig
