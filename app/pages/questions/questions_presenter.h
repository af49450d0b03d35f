#pragma once

#include "app/pages/questions/questions_view.h"
#include "core/review/airframe_facts.h"
#include "core/rigging/whole_inspection.h"
#include "core/store/records.h"

namespace rig {

// Facts of the file -> the questions and their stories; a named decision -> a resolution. Knows no widget.
class QuestionsPresenter
{
public:
    explicit QuestionsPresenter(Records& records) : m_records{records} {} // outlives it

    // A second person is at work in this window and is not to see what the first could not.
    void setBlind(bool isBlind);
    Result<QuestionsView> view(AirframeId airframe) const;
    // Oldest first.
    Result<std::vector<OpenQuestion>> open(AirframeId airframe) const;
    // Somebody has been at the coupling, whichever record asked: in the record that is open it starts again
    // at the look, for each person who has begun there. Kept together with the resolution or not at all.
    Result<Closed> close(AirframeId airframe, QuestionId question, const CloseEntry& entry);

private:
    Result<std::optional<RecordContent>> openContent(AirframeId airframe) const;
    Result<std::optional<InspectedBy>> inspectionOf(const QuestionStory& story,
                                                    const AirframeFacts& facts) const;
    Result<bool> mayBeClosed(const QuestionStory& story) const;
    Outcome startAgain(const RecordContent& content, CouplingId coupling, const Stamp& stamp);
    Outcome startCircuitAgain(const RecordContent& content, SurfaceId surface, const Stamp& stamp);
    Outcome startOtherSideAgain(const RecordContent& content, CouplingId coupling, const Stamp& stamp);

    Records& m_records;
};

} // namespace rig
