#include "app/pages/rigged_today/rigging_writer.h"

#include "core/either.h"
#include "core/review/whole_check.h"
#include "core/rigging/joint_stop.h"
#include "core/rigging/rigging_flow.h"
#include "core/store/ask.h"
#include "core/store/facts_book.h"

#include <algorithm>
#include <ranges>

namespace rig {

namespace {

Question questionAbout(const Reading& reading, AirframeId airframe, QuestionKind kind)
{
    Question question;
    question.airframe = airframe;
    question.kind = kind;
    question.record = reading.record;
    question.coupling = reading.coupling;
    question.reading = reading.id;
    question.stamp = reading.stamp;
    return question;
}

template <typename Id> Outcome outcomeOf(const Result<Id>& added)
{
    return added ? Outcome{Done{}} : Outcome{added.problem()};
}

} // namespace

RiggingWriter::RiggingWriter(Records& records, const Clock& clock) : m_records{records}, m_clock{clock} {}

template <typename Answered> Outcome RiggingWriter::saveAnswer(AirframeId airframe, const Answered& check)
{
    if (const auto added = m_records.add(check); !added)
        return added.problem();
    const auto question = questionFrom(check, airframe);
    return question ? ask(m_records, *question) : Outcome{Done{}};
}

Result<ReadingNews> RiggingWriter::write(AirframeId airframe, std::span<const SessionFact> facts,
                                         const std::optional<Judgement>& shown)
{
    ReadingNews news;
    const Either one{[&](const Check& check) { return saveAnswer(airframe, check); },
                     [&](const SurfaceCheck& check) { return saveAnswer(airframe, check); },
                     [&](const Reading& reading) { return save(airframe, reading, shown, news); },
                     [&](const JointPlay& play) { return outcomeOf(m_records.add(play)); },
                     [&](const Exclusion& strike) { return outcomeOf(m_records.add(strike)); },
                     [&](const Interruption& interruption) { return outcomeOf(m_records.add(interruption)); },
                     [&](const SideConnected& connected) { return outcomeOf(m_records.add(connected)); }};
    const Outcome written = m_records.together([&]() -> Outcome {
        for (const SessionFact& fact : facts)
            if (const Outcome saved = std::visit(one, fact); !saved)
                return saved;
        return Done{};
    });
    if (!written)
        return written.problem();
    return news;
}

Outcome RiggingWriter::save(AirframeId airframe, const Reading& reading,
                            const std::optional<Judgement>& shown, ReadingNews& news)
{
    const auto added =
        m_records.add(reading, shown ? std::optional{Shown{*shown, kMethodVersion}} : std::nullopt);
    if (!added)
        return added.problem();
    Reading kept = reading;
    kept.id = added.value();
    if (shown && shown->verdict == Verdict::Outside)
        if (const Outcome asked = ask(m_records, questionAbout(kept, airframe, QuestionKind::OutsideReading));
            !asked)
            return asked;
    if (kept.state != SeatState::Locked)
        return Done{}; // as it was found: nothing to hold against anything
    // A first reading that lies where it belongs says nothing about anybody else.
    if (kept.turn == Turn::First && shown && !liesOff(shown->verdict))
        return Done{};
    return compare(airframe, kept, news);
}

Outcome RiggingWriter::compare(AirframeId airframe, const Reading& reading, ReadingNews& news)
{
    const auto asked = m_records.book().airframe(airframe);
    if (!asked)
        return asked.problem();
    const KnownAirframe& known = *asked.value();
    const auto read = m_records.book().content(*reading.record);
    if (!read)
        return read.problem();
    const RecordContent& content = *read.value();
    std::vector<Reading> before;
    for (const KeptReading& kept : known.facts().readings) {
        const bool isLater = content.record.isFromPaper() && reading.when < kept.reading.when;
        if (kept.reading.record != reading.record && !isLater)
            before.push_back(kept.reading);
    }
    news.spread = personsSpread(before, known.facts().exclusions);
    if (reading.turn == Turn::Second)
        news.pair = pairIn(content, reading.coupling, news.spread);
    const std::optional<Reading> first = givenAt(content, reading.coupling, Turn::First).last;
    news.isSameInterval = news.pair && first && first->interval == reading.interval;
    // A copied one was in sight of the first: that the two agree says nothing.
    const bool isAgreed =
        news.isSameInterval || (news.pair && news.pair->verdict == numbers::PairVerdict::Agree);
    if (reading.copiedBy && isAgreed)
        news.pair.reset();
    if (news.pair && news.pair->verdict == numbers::PairVerdict::Disagree)
        if (const Outcome told =
                ask(m_records, questionAbout(reading, airframe, QuestionKind::ReadingsDisagree));
            !told)
            return told;
    news.looksLike = swappedWith(reading, known, content);
    return news.looksLike ? ask(m_records, questionAbout(reading, airframe, QuestionKind::SidesSwapped))
                          : Outcome{Done{}};
}

std::optional<Coupling> RiggingWriter::swappedWith(const Reading& reading, const KnownAirframe& known,
                                                   const RecordContent& content)
{
    const std::vector<Coupling> couplings = known.facts().couplingsInUse();
    const auto here = std::ranges::find(couplings, reading.coupling, &Coupling::id);
    const auto other = here == couplings.end() ? std::nullopt : otherSideOf(*here, couplings);
    if (!other)
        return std::nullopt;
    const std::vector<Reading> others =
        standing(givenAt(content, other->id, reading.turn).readings, content.exclusions);
    if (others.empty() ||
        !looksSwapped(reading, known.history(reading.coupling), others.back(), known.history(other->id)))
        return std::nullopt;
    return other;
}

Result<RecordBegun> RiggingWriter::begin(const RiggedTodayView& view, PersonId leader, RecordOrigin origin,
                                         std::optional<int> celsius, const std::optional<FromPaper>& paper)
{
    const Moment now = m_clock.now();
    RecordBegun begun;
    const Outcome done = m_records.together([&]() -> Outcome {
        const auto open = m_records.openRecord(view.airframe.id);
        if (!open)
            return open.problem();
        const auto known = view.record ? std::optional{view.record->id} : std::nullopt;
        if (open.value() && open.value() != known) {
            begun = {*open.value(), true};
            return Done{};
        }
        if (open.value()) {
            RecordClose abandoned;
            abandoned.record = *open.value();
            abandoned.closing = Closing::Abandoned;
            abandoned.stamp = {leader, now};
            if (const auto closed = m_records.add(abandoned); !closed)
                return closed.problem();
        }
        RiggingRecord record;
        record.airframe = view.airframe.id;
        record.origin = origin;
        record.leader = leader;
        record.begins = paper ? paper->begins : now;
        record.stamp = {paper ? paper->enteredBy : leader, now};
        if (paper)
            record.enteredBy = paper->enteredBy;
        record.celsius = celsius;
        // Where a joint asks for the whole check, nothing is gone through as though it had stood.
        const auto asks = paper ? asksForWholeCheck(record) : Result{!view.wholeChecks.empty()};
        if (!asks)
            return asks.problem();
        if (asks.value())
            record.origin = RecordOrigin::Rigging;
        const auto added = m_records.add(record);
        if (!added)
            return added.problem();
        begun.record = added.value();
        return Done{};
    });
    if (!done)
        return done.problem();
    return begun;
}

// Of a rigging from paper by what was done and answered before its own day.
Result<bool> RiggingWriter::asksForWholeCheck(const RiggingRecord& record) const
{
    const auto facts = m_records.book().withoutReadings(record.airframe);
    if (!facts)
        return facts.problem();
    const WholeChecks checks{*facts.value(), &record};
    return std::ranges::any_of(facts.value()->couplingsInUse(), [&checks](const Coupling& coupling) {
        return checks.askedOf(coupling.id).has_value();
    });
}

Outcome RiggingWriter::noteTakenApart(AirframeId airframe, PersonId statedBy)
{
    Event event;
    event.airframe = airframe;
    event.kind = EventKind::Derigged;
    event.day = m_clock.now().localDay();
    event.person = statedBy;
    event.stamp.by = statedBy;
    return outcomeOf(m_records.add(event));
}

Outcome RiggingWriter::tick(RecordId record, TickKind kind, PersonId person)
{
    RecordTick tick;
    tick.record = record;
    tick.kind = kind;
    tick.person = person;
    tick.stamp.by = person;
    return outcomeOf(m_records.add(tick));
}

Outcome RiggingWriter::noteRead(const RiggedTodayView& view, PersonId person)
{
    return m_records.together([&]() -> Outcome {
        for (const NoteLeft& note : view.notes | std::views::take(kNotesShown))
            if (const auto ticked = tick(note.record, TickKind::NoteRead, person); !ticked)
                return ticked;
        return Done{};
    });
}

Outcome RiggingWriter::close(const RiggedTodayView& view, const RecordCloseWanted& wanted)
{
    RecordClose close;
    close.record = view.record->id;
    close.closing = view.review.mayCloseComplete() ? Closing::Complete : Closing::LeftOpen;
    close.first = wanted.first;
    close.second = wanted.second;
    close.note = wanted.note;
    close.stamp = {wanted.first, m_clock.now()};
    return m_records.together([&]() -> Outcome {
        for (const TickKind kind : wanted.counted)
            if (const Outcome ticked = tick(close.record, kind, wanted.first); !ticked)
                return ticked;
        return outcomeOf(m_records.add(close));
    });
}

Outcome RiggingWriter::resume(AirframeId airframe)
{
    if (m_records.isOpenElsewhere())
        return Done{};
    const auto open = m_records.openRecord(airframe);
    if (!open)
        return open.problem();
    if (!open.value())
        return Done{};
    const auto content = m_records.content(*open.value());
    if (!content)
        return content.problem();
    if (content.value().record.isFromPaper())
        return Done{}; // only the typing was broken off
    const auto couplings = m_records.couplings(airframe);
    if (!couplings)
        return couplings.problem();
    const auto questions = m_records.questions(airframe);
    if (!questions)
        return questions.problem();
    const auto surfaces = m_records.surfaces(airframe);
    if (!surfaces)
        return surfaces.problem();
    for (const Coupling& coupling : couplings.value()) {
        if (stopAmong(questions.value(), coupling, surfaces.value()))
            continue; // it is left as it is, and no work goes on there that could be broken off
        for (const Turn turn : {Turn::First, Turn::Second}) {
            const CouplingFlow flow = flowOf(content.value(), coupling, turn);
            if (!flow.begun || flow.isDone())
                continue;
            Interruption interruption;
            interruption.record = *open.value();
            interruption.coupling = coupling.id;
            interruption.turn = turn;
            interruption.reason = InterruptionReason::ProgramClosed;
            interruption.stamp.when = m_clock.now();
            if (const Outcome noted = outcomeOf(m_records.add(interruption)); !noted)
                return noted;
        }
    }
    return Done{};
}

} // namespace rig
