#pragma once

#include "core/review/record_summary.h"
#include "core/store/airframe_facts.h"
#include "tests/support/hangar.h"

namespace rig::test {

// A rigging of the small hangar in a real file, told step by step. Every step a minute after the one before.
// The left aileron has a band around 0.5 mm; `shown` is what was shown then, whatever the band says now.
class ToldRecord
{
public:
    ToldRecord()
    {
        store.clock().passMinutes(24 * 60);
        for (int i = 0; i < 12; ++i) {
            Reading reading = hangar.reading(i % 3 ? between(500, 550) : between(450, 500), now());
            reading.purpose = Purpose::Baseline;
            baseline.push_back(must(store.records().add(reading, std::nullopt)));
        }
        record = must(store.records().add(hangar.record(now())));
    }

    Moment now()
    {
        store.clock().passMinutes(1);
        return store.clock().now();
    }

    void answer(CheckKind kind, Answer answer, Turn turn = Turn::First)
    {
        Check check;
        check.record = record;
        check.coupling = hangar.leftAileron;
        check.kind = kind;
        check.answer = answer;
        check.turn = turn;
        check.person = turn == Turn::First ? hangar.oren : hangar.vale;
        check.when = now();
        must(store.records().add(check));
    }

    void lookAndPull(Turn turn)
    {
        for (const CheckKind kind :
             {CheckKind::BallInSocket, CheckKind::PlungerHome, CheckKind::SleeveAtStop, CheckKind::Pull})
            answer(kind, Answer::Yes, turn);
        if (turn == Turn::First)
            answer(CheckKind::Secured, Answer::Yes);
    }

    ReadingId read(int entersUm, Verdict shown, std::optional<ReadingId> corrects = {},
                   SeatState state = SeatState::Locked)
    {
        Reading reading = hangar.reading(between(entersUm, entersUm + 50), now());
        reading.record = record;
        reading.corrects = corrects;
        reading.state = state;
        reading.note = corrects ? "the wrong leaf was pressed" : "";
        Shown kept;
        kept.judgement.verdict = shown;
        kept.judgement.band = Band{{0.44, 0.56}, {0.42, 0.58}, 0.5, 0.02, 12, false};
        return must(store.records().add(reading, kept));
    }

    void strike(ReadingId slip)
    {
        must(store.records().add(Exclusion{{}, slip, "read on the wrong joint", {hangar.oren, now()}}));
    }

    void leaveOutTheBaseline()
    {
        for (const ReadingId id : baseline)
            must(store.records().add(Exclusion{{}, id, "read on the wrong joint", {hangar.oren, now()}}));
    }

    void interrupt()
    {
        Interruption one;
        one.record = record;
        one.coupling = hangar.leftAileron;
        one.stamp.when = now();
        must(store.records().add(one));
    }

    SurfaceId addSurface(const std::string& name, SurfaceKind kind)
    {
        Surface surface;
        surface.airframe = hangar.airframe;
        surface.name = name;
        surface.kind = kind;
        return must(store.records().add(surface));
    }

    void trySurface(SurfaceId surface, SurfaceKind kind)
    {
        Surface tried;
        tried.kind = kind;
        for (const SurfaceCheckKind one : checksOf(tried))
            tryOnly(surface, one);
    }

    void tryOnly(SurfaceId surface, SurfaceCheckKind kind)
    {
        SurfaceCheck check;
        check.record = record;
        check.surface = surface;
        check.kind = kind;
        check.answer = Answer::Yes;
        check.person = hangar.vale;
        check.cockpit = hangar.oren;
        check.stamp.when = now();
        if (isCall(kind))
            check.seen = kind == SurfaceCheckKind::CalledOneWay ? Movement::Up : Movement::Down;
        must(store.records().add(check));
    }

    void connect(Side side, std::vector<PersonId> persons)
    {
        must(store.records().add(SideConnected{{}, record, side, std::move(persons), {hangar.oren, now()}}));
    }

    QuestionId ask(QuestionKind kind, ReadingId about)
    {
        Question question;
        question.airframe = hangar.airframe;
        question.kind = kind;
        question.record = record;
        question.coupling = hangar.leftAileron;
        question.reading = about;
        question.stamp.when = now();
        return must(store.records().add(question));
    }

    void resolve(QuestionId question)
    {
        Resolution resolution;
        resolution.question = question;
        resolution.person = hangar.vale;
        resolution.found = "grit under the sleeve";
        resolution.done = "cleaned and put together again";
        resolution.stamp.when = now();
        must(store.records().add(resolution));
    }

    void close(Closing closing = Closing::LeftOpen)
    {
        RecordClose close;
        close.record = record;
        close.closing = closing;
        close.first = hangar.oren;
        close.second = hangar.vale;
        close.note = "wind from the north";
        close.stamp = {hangar.oren, now()};
        must(store.records().add(close));
    }

    RecordSummary summary()
    {
        return summaryOf(must(factsOf(store.records(), hangar.airframe)),
                         must(store.records().content(record)));
    }

    TempStore store;
    Hangar hangar{store.records()};
    std::vector<ReadingId> baseline; // of the left aileron
    RecordId record;
};

} // namespace rig::test
