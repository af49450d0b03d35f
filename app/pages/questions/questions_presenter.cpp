#include "app/pages/questions/questions_presenter.h"

#include "core/airframe/name_in.h"
#include "core/airframe/saved_before.h"
#include "core/review/blind_readings.h"
#include "core/review/comparisons.h"
#include "core/review/quarantine_effect.h"
#include "core/review/slips.h"
#include "core/rigging/circuit_hand.h"
#include "core/rigging/counts_as.h"
#include "core/rigging/joint_stop.h"
#include "core/rigging/rigging_flow.h"
#include "core/store/facts_book.h"
#include "core/store/names.h"

#include <algorithm>
#include <array>
#include <functional>
#include <map>
#include <ranges>

namespace rig {

namespace {

constexpr std::array kTurns{Turn::First, Turn::Second};

// All that was done after the coupling was left part-seated on purpose, and before the question was closed;
// what was corrected on paper was not shown again.
InspectionAsked inspectionAskedBy(const QuestionStory& story, const std::vector<KeptReading>& readings)
{
    InspectionAsked asked;
    asked.since.emplace_back(story.question);
    if (story.resolution)
        asked.until = saveOrderOf(*story.resolution);
    for (const KeptReading& kept : readings)
        if (story.question.coupling == kept.reading.coupling && wasShownPartSeated(kept.reading) &&
            !kept.reading.corrects && (!asked.until || saveOrderOf(kept.reading) < *asked.until))
            asked.since.emplace_back(kept.reading);
    return asked;
}

std::optional<Answer> answerIn(const Question& question)
{
    if (question.kind == QuestionKind::AnsweredNo)
        return Answer::No;
    if (question.kind == QuestionKind::CannotSee)
        return Answer::CannotSee;
    return question.surfaceAnswer;
}

// The reading itself and, where two disagree, the other person's last one before it.
std::vector<AskedReading> readingsOf(const Question& question, const AirframeFacts& facts)
{
    std::vector<AskedReading> asked;
    const auto about = std::ranges::find_if(
        facts.readings, [&question](const KeptReading& kept) { return question.reading == kept.reading.id; });
    if (about == facts.readings.end())
        return asked;
    const Reading& reading = about->reading;
    if (question.kind == QuestionKind::ReadingsDisagree) {
        const Reading* other = nullptr;
        for (const KeptReading& kept : facts.readings)
            if (kept.reading.record == reading.record && kept.reading.coupling == reading.coupling &&
                kept.reading.turn != reading.turn && savedBefore(kept.reading, reading))
                other = &kept.reading;
        if (other)
            asked.push_back({other->interval, facts.nameOf(other->person)});
    }
    asked.push_back({reading.interval, facts.nameOf(reading.person)});
    return asked;
}

std::optional<RowSlip> slipOf(const Question& question, const KnownAirframe& known)
{
    if (!question.coupling)
        return std::nullopt;
    const AirframeFacts& facts = known.facts();
    const auto slip =
        slipBehind(question, facts.readingsOf(*question.coupling), facts.exclusions,
                   [&known](const Reading& one) { return judgeIn(known.history(one.coupling), one); });
    if (!slip)
        return std::nullopt;
    RowSlip row{slip->slip.interval, {}, {}, slip->reason};
    if (slip->instead)
        row.instead = slip->instead->interval;
    if (slip->stamp.by)
        row.by = facts.nameOf(*slip->stamp.by);
    return row;
}

// From the check that asked: the last one before the question.
std::optional<ReadingsInDoubt> inDoubt(const Question& question, const AirframeFacts& facts)
{
    if (question.kind != QuestionKind::GaugeQuarantined)
        return std::nullopt;
    std::optional<ReadingsInDoubt> found;
    for (const GaugeCheck& check : facts.gaugeChecks)
        if (question.gauge == check.gauge && check.quarantineFrom && savedBefore(check, question))
            found = ReadingsInDoubt{*check.quarantineFrom, 0};
    if (!found)
        return std::nullopt;
    QuarantineDays days{facts.gaugeChecks};
    found->count = static_cast<int>(std::ranges::count_if(facts.readings, [&](const KeptReading& kept) {
        return kept.reading.gauge == question.gauge && kept.reading.when.localDay() >= found->from &&
               days.covers(kept.reading);
    }));
    return found;
}

// What the doubts about each gauge do to the couplings, worked out once for all questions about them.
class DoubtEffects
{
public:
    explicit DoubtEffects(const AirframeFacts& facts) : m_facts{facts} {}

    std::optional<BandWithoutDoubted> of(const Question& question)
    {
        if (question.kind != QuestionKind::BandInDoubt || !question.gauge)
            return std::nullopt;
        const auto& couplings = effectsOf(*question.gauge);
        const auto one = std::ranges::find_if(couplings, [&question](const CouplingInDoubt& each) {
            return question.coupling == each.coupling;
        });
        if (one == couplings.end() || one->bands.empty())
            return std::nullopt;
        const auto change = std::ranges::find_if(one->bands, [&one](const BandChange& each) {
            return one->latest && each.fitting.id == one->latest->reading.fitting;
        });
        const BandChange& band = change == one->bands.end() ? one->bands.back() : *change;
        BandWithoutDoubted told{
            band.inDoubt, band.before.band(), band.after.band(), one->judgedOtherwise, {}, {}, {}};
        if (one->latest) {
            told.latest = one->latest->reading;
            told.before = one->latest->before;
            told.after = one->latest->after;
        }
        return told;
    }

private:
    const std::vector<CouplingInDoubt>& effectsOf(GaugeId gauge)
    {
        const auto known = m_effects.find(gauge);
        if (known != m_effects.end())
            return known->second;
        const std::vector<GaugeCheck>& all = m_facts.gaugeChecks;
        return m_effects.emplace(gauge, couplingsInDoubt(m_facts, gauge, withoutDoubtsOf(gauge, all), all))
            .first->second;
    }

    const AirframeFacts& m_facts;
    std::map<GaugeId, std::vector<CouplingInDoubt>> m_effects;
};

std::vector<CloseLack> lacksOf(const CloseEntry& entry, const QuestionStory& story, bool isInspected)
{
    if (!story.isOpen())
        return {CloseLack::AlreadyClosed};
    if (!isInspected)
        return {CloseLack::Inspection};
    std::vector<CloseLack> lacks;
    if (!entry.decidedBy)
        lacks.push_back(CloseLack::Person);
    if (isBlank(entry.found))
        lacks.push_back(CloseLack::Found);
    if (isBlank(entry.done))
        lacks.push_back(CloseLack::Done);
    return lacks;
}

void sortRows(std::vector<QuestionRow>& rows)
{
    std::ranges::stable_sort(rows, [](const QuestionRow& a, const QuestionRow& b) {
        if (a.story.isOpen() != b.story.isOpen())
            return a.story.isOpen();
        if (a.story.isOpen() && a.story.question.gravity() != b.story.question.gravity())
            return a.story.question.gravity() > b.story.question.gravity();
        return a.story.isOpen() ? savedBefore(a.story.question, b.story.question)
                                : savedBefore(*b.story.resolution, *a.story.resolution);
    });
}

} // namespace

const QuestionRow* QuestionsView::find(QuestionId id) const
{
    const auto found =
        std::ranges::find_if(rows, [&id](const QuestionRow& row) { return row.story.question.id == id; });
    return found == rows.end() ? nullptr : &*found;
}

Result<std::optional<RecordContent>> QuestionsPresenter::openContent(AirframeId airframe) const
{
    const auto open = m_records.openRecord(airframe);
    if (!open)
        return open.problem();
    if (!open.value())
        return std::optional<RecordContent>{};
    const auto content = m_records.content(*open.value());
    if (!content)
        return content.problem();
    return std::optional{content.value()};
}

void QuestionsPresenter::setBlind(bool isBlind)
{
    m_records.book().setBlind(isBlind);
}

Result<QuestionsView> QuestionsPresenter::view(AirframeId airframe) const
{
    // A question tells no reading that the second person is not to see yet.
    const auto known = m_records.book().toldOpenly(airframe);
    if (!known)
        return known.problem();
    const auto open = openContent(airframe);
    if (!open)
        return open.problem();
    const AirframeFacts& facts = known.value()->facts();
    QuestionsView view;
    view.airframe = facts.airframe;
    view.persons = facts.persons;
    for (const CouplingId coupling : facts.closedToSecond)
        view.closedToSecond.push_back(nameIn(facts.couplings, coupling));
    DoubtEffects effects{facts};
    for (const QuestionStory& story : facts.questions) {
        const Question& question = story.question;
        view.openCount += story.isOpen() ? 1 : 0;
        QuestionRow row;
        row.story = story;
        row.place = facts.placeOf(question);
        row.answer = answerIn(question);
        row.called = question.surfaceSeen;
        row.readings = readingsOf(question, facts);
        if (question.coupling || question.surface)
            row.foundBy = finderOf(question, question.coupling ? facts.readingsOf(*question.coupling)
                                                               : std::vector<Reading>{});
        row.slip = slipOf(question, *known.value());
        if (const Gauge* gauge = question.gauge ? facts.gauge(*question.gauge) : nullptr)
            row.gauge = *gauge;
        row.inDoubt = inDoubt(question, facts);
        row.band = effects.of(question);
        row.statedBy = question.stamp.by ? facts.nameOf(*question.stamp.by) : std::string{};
        for (const RiggingRecord& record : facts.riggingRecords)
            if (question.record == record.id)
                row.record = record;
        if (question.kind == QuestionKind::ShownPartSeated) {
            const auto inspected = inspectionOf(story, facts);
            if (!inspected)
                return inspected.problem();
            row.waitsForInspection = story.isOpen() && !inspected.value();
            if (const auto& by = inspected.value())
                row.inspected = RowInspection{facts.nameOf(by->first), facts.nameOf(by->second), by->when};
        }
        row.ofOpenRecord = open.value() && question.record == open.value()->record.id;
        row.startsAgain = story.isOpen() && open.value() && question.isAtTheJoint();
        if (const auto& resolution = story.resolution) {
            row.decidedBy = facts.nameOf(resolution->person);
            row.enteredBy = resolution->stamp.by ? facts.nameOf(*resolution->stamp.by) : std::string{};
        }
        view.rows.push_back(std::move(row));
    }
    sortRows(view.rows);
    return view;
}

// The last one, in whichever record.
Result<std::optional<InspectedBy>> QuestionsPresenter::inspectionOf(const QuestionStory& story,
                                                                    const AirframeFacts& facts) const
{
    const auto coupling = std::ranges::find(facts.couplings, *story.question.coupling, &Coupling::id);
    if (coupling == facts.couplings.end())
        return std::optional<InspectedBy>{};
    const InspectionAsked asked = inspectionAskedBy(story, facts.readings);
    const auto isOverBefore = [&](const RiggingRecord& record) {
        const auto close = std::ranges::find(facts.closings, record.id, &RecordClose::record);
        return close != facts.closings.end() && savedBefore(*close, story.question);
    };
    for (const RiggingRecord& record : facts.riggingRecords | std::views::reverse) {
        if (record.origin == RecordOrigin::ImportedTable || isOverBefore(record))
            continue;
        const auto content = m_records.book().content(record.id);
        if (!content)
            return content.problem();
        if (const auto by = whollyInspected(*content.value(), *coupling, asked))
            return by;
    }
    return std::optional<InspectedBy>{};
}

Result<std::vector<OpenQuestion>> QuestionsPresenter::open(AirframeId airframe) const
{
    const auto rest = m_records.book().withoutReadings(airframe);
    if (!rest)
        return rest.problem();
    std::vector<OpenQuestion> open;
    if (openAmong(rest.value()->questions).empty())
        return open; // readings are not read for it
    const auto known = openRecordIn(*rest.value()) ? m_records.book().toldOpenly(airframe)
                                                   : Result<const KnownAirframe*>{nullptr};
    if (!known)
        return known.problem();
    const AirframeFacts& facts = known.value() ? known.value()->facts() : *rest.value();
    for (const QuestionStory& story : openAmong(facts.questions))
        open.push_back({story.question, facts.placeOf(story.question)});
    std::ranges::stable_sort(open, std::greater{},
                             [](const OpenQuestion& one) { return one.question.gravity(); });
    return open;
}

Outcome QuestionsPresenter::startAgain(const RecordContent& content, CouplingId coupling, const Stamp& stamp)
{
    for (const Turn turn : kTurns) {
        if (!givenAt(content, coupling, turn).begun)
            continue;
        const auto added = m_records.add(
            Interruption{{}, content.record.id, coupling, turn, InterruptionReason::QuestionClosed, stamp});
        if (!added)
            return added.problem();
    }
    return Done{};
}

// Where sides were swapped, somebody has been at both.
Outcome QuestionsPresenter::startOtherSideAgain(const RecordContent& content, CouplingId coupling,
                                                const Stamp& stamp)
{
    const auto couplings = m_records.couplings(content.record.airframe);
    if (!couplings)
        return couplings.problem();
    const auto one = std::ranges::find(couplings.value(), coupling, &Coupling::id);
    const auto other = one != couplings.value().end() ? otherSideOf(*one, couplings.value()) : std::nullopt;
    return other ? startAgain(content, other->id, stamp) : Outcome{Done{}};
}

// What made a surface move otherwise than expected was found at a joint of its circuit, left or right.
Outcome QuestionsPresenter::startCircuitAgain(const RecordContent& content, SurfaceId id, const Stamp& stamp)
{
    const auto couplings = m_records.couplings(content.record.airframe);
    if (!couplings)
        return couplings.problem();
    const auto surfaces = m_records.surfaces(content.record.airframe);
    if (!surfaces)
        return surfaces.problem();
    const auto surface = std::ranges::find(surfaces.value(), id, &Surface::id);
    if (surface == surfaces.value().end())
        return Done{};
    for (const Coupling& coupling : couplings.value())
        if (coupling.inUse && mayMove(coupling.circuit, surface->kind))
            if (const Outcome again = startAgain(content, coupling.id, stamp); !again)
                return again;
    return Done{};
}

// Only what was shown part-seated waits for anything but a name.
Result<bool> QuestionsPresenter::mayBeClosed(const QuestionStory& story) const
{
    if (story.question.kind != QuestionKind::ShownPartSeated)
        return true;
    const auto known = m_records.book().airframe(story.question.airframe);
    if (!known)
        return known.problem();
    const auto inspected = inspectionOf(story, known.value()->facts());
    if (!inspected)
        return inspected.problem();
    return inspected.value().has_value();
}

Result<Closed> QuestionsPresenter::close(AirframeId airframe, QuestionId id, const CloseEntry& entry)
{
    Closed closed;
    const Outcome kept = m_records.together([&]() -> Outcome {
        const auto stories = m_records.questions(airframe);
        if (!stories)
            return stories.problem();
        const auto story = std::ranges::find_if(
            stories.value(), [&id](const QuestionStory& one) { return one.question.id == id; });
        if (story == stories.value().end())
            return Problem{ProblemKind::NotFound, textOf(id.bytes)};
        const auto isInspected = mayBeClosed(*story);
        if (!isInspected)
            return isInspected.problem();
        closed.lacks = lacksOf(entry, *story, isInspected.value());
        if (!closed.isClosed())
            return Done{};
        const Stamp stamp{entry.enteredBy, {}};
        const auto added =
            m_records.add(Resolution{{}, id, *entry.decidedBy, entry.found, entry.done, stamp});
        if (!added)
            return added.problem();
        const auto content = openContent(airframe);
        if (!content)
            return content.problem();
        if (!content.value())
            return Done{};
        if (story->question.isWrongMovement())
            return startCircuitAgain(*content.value(), *story->question.surface, stamp);
        if (!story->question.isAtTheJoint())
            return Done{};
        closed.startsAgain = true;
        const Outcome again = startAgain(*content.value(), *story->question.coupling, stamp);
        if (!again || story->question.kind != QuestionKind::SidesSwapped)
            return again;
        return startOtherSideAgain(*content.value(), *story->question.coupling, stamp);
    });
    if (!kept)
        return kept.problem();
    return closed;
}

} // namespace rig
