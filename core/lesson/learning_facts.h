#pragma once

#include "core/lesson/learning_taken_back.h"
#include "core/lesson/lesson.h"
#include "core/lesson/photo.h"
#include "core/lesson/sign_off.h"
#include "core/lesson/study.h"

#include <vector>

namespace rig {

// Everything the file knows of learning one airframe, each list in the order of saving. Photos come without
// their images.
struct LearningFacts
{
    std::vector<Photo> photos; // none that was withdrawn
    std::vector<LessonRound> rounds;
    std::vector<SeatingAnswer> seatingAnswers;
    std::vector<RecallAnswer> recallAnswers;
    std::vector<SupervisedRigging> supervisedRiggings; // none that was taken back
    std::vector<WithdrawnFact<SupervisedRigging>> supervisedTakenBack;
    std::vector<SignOff> signOffs;
    std::vector<CrossedStudy> studies;
    std::vector<StudyPlace> studyPlaces;
    std::vector<PracticeReading> practiceReadings; // none that was taken back
    std::vector<WithdrawnFact<PracticeReading>> practiceTakenBack;
    std::vector<PracticeShared> practiceShared; // of everybody in the file

    // The one that is shown; null when there is none.
    const Photo* photo(CouplingId coupling, PhotoOf of) const;
};

} // namespace rig
