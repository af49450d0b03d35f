#pragma once

#include "app/pages/learn/learn_view.h"
#include "core/result.h"
#include "core/review/known_airframe.h"
#include "core/store/records.h"

#include <functional>
#include <string>

namespace rig {

// Facts -> who learns what and how far; what was answered -> facts, each saved at once. Knows no widget.
class LessonPresenter
{
public:
    // Both outlive it.
    LessonPresenter(Records& records, const Clock& clock) : m_records{records}, m_clock{clock} {}

    Day today() const { return m_clock.now().localDay(); }

    Result<LearnView> view(AirframeId airframe, std::optional<PersonId> person) const;
    // NotFound for a coupling that is not this airframe's.
    Result<CouplingFacts> coupling(AirframeId airframe, CouplingId coupling) const;
    // As which layout each ball joint is drawn.
    Result<std::map<CouplingId, DrawnLayout>> drawnLayouts(AirframeId airframe) const;
    Result<PracticeView> practice(AirframeId airframe, PersonId person) const;
    // `asked` says a task in words, as its answer will hold it.
    Result<RecallView>
    recall(AirframeId airframe, PersonId person,
           const std::function<std::string(const RecallView&, const RecallTask&)>& asked) const;

    // Of one coupling, or of all. NotFound where nothing can be asked.
    Result<LessonRoundId> beginPractice(AirframeId airframe, PersonId person,
                                        std::optional<CouplingId> coupling);
    Result<LessonRoundId> beginRecall(AirframeId airframe, PersonId person, int asks);

    // What was said of the task that stands in `shown`.
    Result<SeatingAnswer> answer(const PracticeView& shown, SeatingCall said, bool sure);
    Outcome answer(const RecallView& shown, const std::string& asked, const std::string& expected,
                   const std::string& said, bool sure);

private:
    Result<LessonRoundId> begin(LessonRound round);

    Records& m_records;
    const Clock& m_clock;
};

} // namespace rig
