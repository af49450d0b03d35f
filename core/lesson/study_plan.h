#pragma once

#include "core/lesson/study.h"
#include "core/numbers/dice.h"
#include "core/numbers/measurer_study.h"

#include <span>
#include <vector>

namespace rig {

// Every coupling read by every person so many times, in a random order in which nobody reads the same
// coupling twice running where that can be helped.
std::vector<StudyPlace> studyPlanOf(StudyId study, std::span<const CouplingId> couplings,
                                    std::span<const PersonId> persons, int repeats, numbers::Dice& dice);

struct StudyResult
{
    int wanted = 0;
    int read = 0;
    bool hasOpenReading = false; // one without a greatest size: its middle is not known, and nothing is told
    numbers::MeasurerStudyResult figures; // once everything is read; mm

    bool isWhole() const { return wanted > 0 && read == wanted; }
};

// The middles of the readings that stand at the places of one study, with the coarsest of their steps
// (docs/method.md F).
StudyResult studyResultOf(std::span<const StudyPlace> places, std::span<const PracticeReading> readings);

// The first place that nobody has read; null when there is none.
const StudyPlace* nextPlace(std::span<const StudyPlace> places, std::span<const PracticeReading> readings);

} // namespace rig
