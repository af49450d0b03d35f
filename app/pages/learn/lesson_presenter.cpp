#include "app/pages/learn/lesson_presenter.h"

#include "app/pages/learn/lesson_pictures.h"
#include "core/review/person_riggings.h"
#include "core/review/taught_joint.h"
#include "core/rigging/counts_as.h"
#include "core/store/facts_book.h"

#include <algorithm>
#include <set>

namespace rig {

namespace {

template <typename Things, typename Keep> auto chosenOf(const Things& things, Keep keep)
{
    Things chosen;
    std::ranges::copy_if(things, std::back_inserter(chosen), keep);
    return chosen;
}

bool canBePractised(const Coupling& coupling)
{
    return isBallJoint(coupling.kind);
}

SeatingTally tallyOf(std::span<const SeatingAnswer> answers)
{
    SeatingTally tally;
    for (const SeatingAnswer& answer : answers) {
        ++tally.asked;
        tally.right += isRight(answer);
        tally.missedPartSeated += isMissed(answer, JointState::PartSeated);
        tally.missedNotSecured += isMissed(answer, JointState::NotSecured);
        tally.missedEmpty += isMissed(answer, JointState::NotConnected);
    }
    return tally;
}

// Until somebody signed and said otherwise.
int monthsWithoutRigging(const LearningFacts& learning, PersonId person)
{
    for (auto one = learning.signOffs.rbegin(); one != learning.signOffs.rend(); ++one)
        if (one->person == person)
            return one->monthsWithoutRigging;
    return kMonthsWithoutRigging;
}

} // namespace

Result<LearnView> LessonPresenter::view(AirframeId airframe, std::optional<PersonId> person) const
{
    const auto rest = m_records.book().withoutReadings(airframe);
    if (!rest)
        return rest.problem();
    LearnView view{rest.value()->airframe, rest.value()->persons, {}};
    const auto learning = m_records.book().learning(airframe);
    if (!learning)
        return learning.problem();
    std::map<CouplingId, LastRound> last;
    if (person)
        last = lastRoundsOf(*person, learning.value()->rounds, learning.value()->seatingAnswers);
    for (const Coupling& coupling : rest.value()->couplingsInUse()) {
        const auto found = last.find(coupling.id);
        view.rows.push_back({coupling, found == last.end() ? std::nullopt : std::optional{found->second}});
    }
    return view;
}

Result<CouplingFacts> LessonPresenter::coupling(AirframeId airframe, CouplingId coupling) const
{
    const auto known = m_records.book().toldOpenly(airframe, today());
    if (!known)
        return known.problem();
    const auto learning = m_records.book().learning(airframe);
    if (!learning)
        return learning.problem();
    const std::vector<Coupling>& all = known.value()->facts().couplings;
    const auto found = std::ranges::find(all, coupling, &Coupling::id);
    if (found == all.end())
        return Problem{ProblemKind::NotFound, textOf(coupling.bytes)};
    const CouplingHistory& history = known.value()->history(coupling);
    const FittingHistory* fitting = history.on(today());
    CouplingFacts facts;
    facts.coupling = *found;
    for (const KeptReading* kept : known.value()->readingsOf(coupling)) {
        const Reading& reading = kept->reading;
        if (known.value()->isSuperseded(reading.id) || strikeOf(reading, known.value()->facts().exclusions))
            continue;
        if (wasShownPartSeated(reading))
            facts.strip.partSeated.push_back(reading.interval);
        else if (reading.state == SeatState::NotSecured)
            facts.strip.notSecured.push_back(reading.interval);
        else if (reading.state == SeatState::PartSeated)
            facts.strip.asFound.push_back(reading.interval);
    }
    const StatedLocked stated = statedLockedOf(*known.value(), coupling, today());
    for (const auto& [from, into] :
         {std::pair{&stated.locked, &facts.strip.locked}, std::pair{&stated.outside, &facts.strip.asFound},
          std::pair{&stated.earlier, &facts.strip.earlier}})
        for (const Reading* reading : *from)
            into->push_back(reading->interval);
    if (fitting) {
        facts.strip.band = fitting->baseline.band();
        facts.gapTellsNothing = std::ranges::any_of(
            fitting->witness, [](const auto& one) { return one.second.witness == Witness::None; });
    }
    facts.joint = taughtJointOf(*known.value(), *found, today());
    for (std::size_t i = 0; i < facts.photos.size(); ++i)
        facts.photos[i] = learning.value()->photo(coupling, static_cast<PhotoOf>(i));
    return facts;
}

Result<std::map<CouplingId, DrawnLayout>> LessonPresenter::drawnLayouts(AirframeId airframe) const
{
    const auto known = m_records.book().toldOpenly(airframe, today());
    if (!known)
        return known.problem();
    return drawnLayoutsOf(*known.value(), today());
}

Result<PracticeView> LessonPresenter::practice(AirframeId airframe, PersonId person) const
{
    const auto known = m_records.book().toldOpenly(airframe, today());
    if (!known)
        return known.problem();
    const auto learning = m_records.book().learning(airframe);
    if (!learning)
        return learning.problem();
    const AirframeFacts& facts = known.value()->facts();
    PracticeView view;
    view.person = person;
    view.couplings = chosenOf(facts.couplingsInUse(), canBePractised);
    const std::vector<SeatingAnswer> answers =
        answersOf(person, learning.value()->rounds, learning.value()->seatingAnswers);
    view.tally = tallyOf(answers);
    view.refreshIsDue = isRefreshDue(lastRiggingOf(person, riggingDaysOf(facts, {})), today(),
                                     monthsWithoutRigging(*learning.value(), person));
    const LessonRound* round = lastRoundOf(person, RoundKind::Seating, learning.value()->rounds);
    if (!round)
        return view;
    view.round = *round;
    view.ofRound = chosenOf(answers, [&](const SeatingAnswer& answer) { return answer.round == round->id; });
    std::vector<PracticeJoint> asked;
    for (const Coupling& coupling : view.couplings) {
        view.joints.emplace(coupling.id, taughtJointOf(*known.value(), coupling, today()));
        if (!round->coupling || *round->coupling == coupling.id)
            asked.push_back(practiceJointOf(*known.value(), coupling.id, today()));
    }
    const auto tells = [&view](CouplingId coupling, JointState state, const LookedWith& with) {
        const Coupling& looked = *view.find(coupling);
        const bool lacksMirror = looked.mirrorFrom != AccessSide::Unknown && !with.mirror;
        return !(state == JointState::Locked && lacksMirror) &&
               tellable(view.joints.at(coupling), poseOf(state), sightOf(looked, with));
    };
    if (static_cast<int>(view.ofRound.size()) < round->asks && !asked.empty())
        view.task = nextTask(asked, answers, *round, view.refreshIsDue, today(), tells);
    return view;
}

Result<RecallView>
LessonPresenter::recall(AirframeId airframe, PersonId person,
                        const std::function<std::string(const RecallView&, const RecallTask&)>& asked) const
{
    const auto rest = m_records.book().withoutReadings(airframe);
    if (!rest)
        return rest.problem();
    RecallView view;
    view.person = person;
    view.couplings = rest.value()->couplingsInUse();
    view.surfaces = rest.value()->surfacesInUse();
    std::vector<RecallTask> tasks =
        recallTasksOf({rest.value()->airframe, view.couplings, view.surfaces, rest.value()->persons});
    view.canBeAsked = !tasks.empty();
    const auto learning = m_records.book().learning(airframe);
    if (!learning)
        return learning.problem();
    std::set<LessonRoundId> own;
    for (const LessonRound& round : learning.value()->rounds)
        if (round.person == person && round.kind == RoundKind::Recall)
            own.insert(round.id);
    const std::vector<RecallAnswer> answers = chosenOf(
        learning.value()->recallAnswers, [&](const RecallAnswer& one) { return own.contains(one.round); });
    view.asked = static_cast<int>(answers.size());
    for (const RecallAnswer& answer : answers)
        view.right += isRight(answer);
    const LessonRound* round = lastRoundOf(person, RoundKind::Recall, learning.value()->rounds);
    if (!round)
        return view;
    view.round = *round;
    view.ofRound = chosenOf(answers, [&](const RecallAnswer& answer) { return answer.round == round->id; });
    view.tasks = recallRoundOf(std::move(tasks), answers, *round,
                               [&](const RecallTask& task) { return asked(view, task); });
    return view;
}

Result<LessonRoundId> LessonPresenter::begin(LessonRound round)
{
    round.stamp.by = round.person;
    return m_records.add(round);
}

Result<LessonRoundId> LessonPresenter::beginPractice(AirframeId airframe, PersonId person,
                                                     std::optional<CouplingId> coupling)
{
    return begin({{},
                  airframe,
                  person,
                  RoundKind::Seating,
                  coupling,
                  coupling ? kAskedOfOneCoupling : kAskedOfAll,
                  {}});
}

Result<LessonRoundId> LessonPresenter::beginRecall(AirframeId airframe, PersonId person, int asks)
{
    return begin({{}, airframe, person, RoundKind::Recall, {}, asks, {}});
}

Result<SeatingAnswer> LessonPresenter::answer(const PracticeView& shown, SeatingCall said, bool sure)
{
    const SeatingTask& task = *shown.task;
    const SeatingAnswer answer{{},
                               shown.round->id,
                               task.coupling,
                               task.state,
                               task.gap,
                               task.view.mirror,
                               task.view.torch,
                               task.expected,
                               said,
                               sure,
                               {shown.person, {}}};
    const auto added = m_records.add(answer);
    return added ? Result<SeatingAnswer>{answer} : added.problem();
}

Outcome LessonPresenter::answer(const RecallView& shown, const std::string& asked,
                                const std::string& expected, const std::string& said, bool sure)
{
    const RecallTask& task = *shown.task();
    const auto added = m_records.add(RecallAnswer{{},
                                                  shown.round->id,
                                                  task.of,
                                                  task.coupling,
                                                  task.surface,
                                                  asked,
                                                  expected,
                                                  said,
                                                  sure,
                                                  {shown.person, {}}});
    return added ? Outcome{Done{}} : Outcome{added.problem()};
}

} // namespace rig
