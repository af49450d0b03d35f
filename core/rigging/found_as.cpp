#include "core/rigging/found_as.h"

#include "core/airframe/saved_before.h"
#include "core/rigging/counts_as.h"

#include <algorithm>

namespace rig {

namespace {

// A correction states anew what was read when the first of them was read.
const Reading& firstReadOf(const Reading& reading, std::span<const Reading> readings)
{
    const Reading* first = &reading;
    // No more than there are readings: a file that names them in a ring is none of ours.
    for (std::size_t steps = 0; steps < readings.size() && first->corrects; ++steps) {
        const auto before = std::ranges::find(readings, *first->corrects, &Reading::id);
        if (before == readings.end())
            break;
        first = &*before;
    }
    return *first;
}

bool wasOpenAt(const QuestionStory& story, const Reading& reading)
{
    return savedBefore(story.question, reading) &&
           (story.isOpen() || savedBefore(reading, *story.resolution));
}

bool isNotSecured(const Reading& reading, std::span<const QuestionStory> questions)
{
    bool saidNo = false;
    for (const QuestionStory& story : questions) {
        const Question& question = story.question;
        if (question.kind != QuestionKind::AnsweredNo || question.record != reading.record ||
            question.coupling != reading.coupling || !question.check || !wasOpenAt(story, reading))
            continue;
        if (foundAfterNo(*question.check) != SeatState::NotSecured)
            return false;
        saidNo = true;
    }
    return saidNo;
}

} // namespace

void takeHowFound(std::span<Reading> readings, std::span<const QuestionStory> questions)
{
    for (Reading& reading : readings)
        if (wasFoundNotLocked(reading))
            reading.state = isNotSecured(firstReadOf(reading, readings), questions) ? SeatState::NotSecured
                                                                                : SeatState::PartSeated;
}

} // namespace rig
