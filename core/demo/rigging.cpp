#include "core/demo/rigging.h"

#include "core/demo/sayings.h"
#include "core/demo/surfaces.h"
#include "core/review/record_review.h"
#include "core/rigging/joint_asks.h"

#include <algorithm>
#include <array>
#include <span>
#include <string_view>

namespace rig::demo {

namespace {

// A member who neither leads nor looks second.
Who helperOf(const RiggingPlan& plan)
{
    for (const Who who : {Who::Vale, Who::Iver, Who::Sand})
        if (who != plan.first && who != plan.second)
            return who;
    return Who::Oren;
}

// Left and right by different hands; the tail takes two.
void stateConnected(Teller& teller, RecordId record, const RiggingPlan& plan)
{
    std::vector<Coupling> couplings;
    for (const Joint* joint : teller.joints(plan.airframe))
        couplings.push_back(joint->coupling);
    for (const Side side : sidesOf(couplings)) {
        SideConnected stated;
        stated.record = record;
        stated.side = side;
        if (side != Side::Right)
            stated.persons.push_back(teller.person(plan.first));
        if (side != Side::Left)
            stated.persons.push_back(teller.person(helperOf(plan)));
        stated.stamp = teller.by(plan.first);
        teller.keep(teller.records().add(stated));
    }
}

void tickAll(Teller& teller, RecordId record, std::span<const TickKind> kinds, Who who)
{
    for (const TickKind kind : kinds) {
        teller.clock().passSeconds(60);
        RecordTick tick;
        tick.record = record;
        tick.kind = kind;
        tick.person = teller.person(who);
        tick.stamp = teller.by(who);
        teller.keep(teller.records().add(tick));
    }
}

RecordId begin(Teller& teller, const RiggingPlan& plan)
{
    teller.clock().set(plan.day, plan.hour, teller.dice().below(50));
    if (const auto left = teller.noteLeft(plan.airframe))
        tickAll(teller, *left, std::array{TickKind::NoteRead}, plan.first);
    RiggingRecord record;
    record.airframe = teller.airframe(plan.airframe);
    record.leader = teller.person(plan.first);
    record.begins = teller.clock().now();
    record.stamp = teller.by(plan.first);
    const RecordId id = teller.keep(teller.records().add(record));
    teller.began(plan.airframe, id);
    stateConnected(teller, id, plan);
    return id;
}

void look(Teller& teller, RecordId record, const Joint& joint, Turn turn, Who who)
{
    for (const CheckKind kind : asksOf(joint.coupling).look)
        answer(teller, record, joint, kind, Answer::Yes, turn, who);
}

// Wear of QX-17's left flap: +0.23 mm per 100 riggings from rigging 236 until the refit, first near the edge
// at 255.
constexpr int kWearBegins = 236;
constexpr int kWearShows = 255;
constexpr double kWearPerRigging = 0.0023;
constexpr double kNextPin = 1.200;
constexpr double kMostAnyoneAdds = 0.013;

double gapToday(Teller& teller, const Joint& joint, const RiggingPlan& plan)
{
    if (!hasGap(joint.coupling))
        return 0;
    double gap = teller.lockedGap(joint);
    const bool isWearing =
        joint.plan->airframe == 0 && joint.plan->name == says::kLeftFlap && joint.fittings.size() == 1;
    if (!isWearing)
        return gap;
    gap += kWearPerRigging * std::max(0, plan.number - kWearBegins);
    if (plan.number < kWearShows) // nobody reads it beyond the pin yet
        return std::min(gap, kNextPin - kMostAnyoneAdds - plan.shift);
    return plan.number == kWearShows ? kNextPin + kMostAnyoneAdds : gap;
}

Tool toolFor(const Joint& joint, const RiggingPlan& plan)
{
    if (plan.onlyTool)
        return *plan.onlyTool;
    // Set B lies in the trailer too until it is put aside in July 2025.
    const bool isTurnOfB = plan.number % 2 == 1 && plan.day < dayOf(2025, 7, 6);
    return joint.plan->riggingTool == Tool::SetA && isTurnOfB ? Tool::SetB : joint.plan->riggingTool;
}

struct AtCoupling
{
    Teller& teller;
    const RiggingPlan& plan;
    RecordId record;
    Joint& joint;
    double gap;

    void readAs(Who who, Turn turn, Tool tool, double gapMm, double shift)
    {
        teller.clock().passSeconds(35 + teller.dice().below(25));
        teller.read(joint, {.who = who,
                            .tool = tool,
                            .gap = gapMm,
                            .shift = shift,
                            .record = record,
                            .turn = turn,
                            .corrects = std::nullopt,
                            .note = {}});
    }

    // False when everything stops here.
    bool meet(const Surprise& surprise)
    {
        readAs(plan.first, Turn::First, surprise.tool, surprise.seen, 0);
        Question question;
        question.kind = QuestionKind::OutsideReading;
        question.record = record;
        question.reading = joint.readings.back().id;
        teller.ask(joint, question, plan.first);
        if (surprise.isPartSeated) {
            teller.clock().passSeconds(240);
            teller.read(joint, {.who = plan.first,
                                .tool = surprise.tool,
                                .gap = surprise.seen,
                                .record = record,
                                .state = SeatState::PartSeated,
                                .corrects = joint.readings.back().id,
                                .note = says::kFoundPartSeated});
        }
        if (!surprise.after)
            return false;
        teller.clock().passSeconds(600);
        teller.resolve(joint, surprise.decides, surprise.found, surprise.done);
        interrupt(teller, record, joint, InterruptionReason::QuestionClosed, plan.first);
        look(teller, record, joint, Turn::First, plan.first);
        readAs(plan.first, Turn::First, surprise.tool, *surprise.after, 0);
        return true;
    }

    bool first()
    {
        look(teller, record, joint, Turn::First, plan.first);
        if (joint.plan->name == plan.interruptedAt) {
            interrupt(teller, record, joint, InterruptionReason::Asked, plan.first);
            teller.clock().passSeconds(900);
            look(teller, record, joint, Turn::First, plan.first);
        }
        const CouplingParts parts = partsOf(joint.coupling);
        if (plan.surprise && joint.plan->name == plan.surprise->coupling) {
            if (!meet(*plan.surprise))
                return false;
        } else if (parts.gap) {
            readAs(plan.first, Turn::First, toolFor(joint, plan), gap, plan.shift);
        }
        if (parts.pull)
            answer(teller, record, joint, CheckKind::Pull, Answer::Yes, Turn::First, plan.first);
        if (parts.securing)
            answer(teller, record, joint, CheckKind::Secured, Answer::Yes, Turn::First, plan.first);
        return true;
    }

    void second(bool alsoReads)
    {
        look(teller, record, joint, Turn::Second, plan.second);
        const CouplingParts parts = partsOf(joint.coupling);
        if (alsoReads && parts.gap)
            readAs(plan.second, Turn::Second, toolFor(joint, plan),
                   gap + 0.003 * teller.dice().normalWithin(2), plan.shift + plan.secondShift);
        if (parts.pull)
            answer(teller, record, joint, CheckKind::Pull, Answer::Yes, Turn::Second, plan.second);
    }
};

bool firstPerson(Teller& teller, const RiggingPlan& plan, RecordId record, std::vector<AtCoupling>& places)
{
    for (Joint* joint : teller.joints(plan.airframe))
        places.push_back({teller, plan, record, *joint, gapToday(teller, *joint, plan)});
    return std::ranges::all_of(places, [](AtCoupling& place) { return place.first(); });
}

} // namespace

void answer(Teller& teller, RecordId record, const Joint& joint, CheckKind kind, Answer answer, Turn turn,
            Who who)
{
    constexpr int kWithoutDice = 12; // the throws are those of the gaps
    teller.clock().passSeconds(hasGap(joint.coupling) ? 8 + teller.dice().below(10) : kWithoutDice);
    Check check;
    check.record = record;
    check.coupling = joint.coupling.id;
    check.kind = kind;
    check.answer = answer;
    check.turn = turn;
    check.person = teller.person(who);
    check.when = teller.clock().now();
    check.stamp = teller.by(who);
    teller.keep(teller.records().add(check));
}

void interrupt(Teller& teller, RecordId record, const Joint& joint, InterruptionReason reason, Who who)
{
    Interruption interruption;
    interruption.record = record;
    interruption.coupling = joint.coupling.id;
    interruption.reason = reason;
    interruption.stamp = teller.by(who);
    teller.keep(teller.records().add(interruption));
}

void close(Teller& teller, RecordId record, Closing closing, std::optional<Who> first,
           std::optional<Who> second, const Saying& note)
{
    static constexpr std::array kCounted{TickKind::ToolsOut, TickKind::HatchesOn};
    teller.clock().passSeconds(180);
    if (first && closing != Closing::Abandoned)
        tickAll(teller, record, kCounted, *first);
    else
        teller.clock().passSeconds(120);
    RecordClose close;
    close.record = record;
    close.closing = closing;
    if (first)
        close.first = teller.person(*first);
    if (second)
        close.second = teller.person(*second);
    close.note = teller.told(note);
    close.stamp = teller.by(first.value_or(Who::Oren));
    teller.keep(teller.records().add(close));
    if (!close.note.empty())
        teller.leaveNote(record);
}

void rigWhole(Teller& teller, const RiggingPlan& plan)
{
    const bool isFirst = teller.isFirstOfSeason(plan.airframe);
    const RecordId record = begin(teller, plan);
    if (isFirst)
        tickAll(teller, record, seasonTicks(), plan.first);
    if (plan.controlsFirst)
        checkControls(teller, record, plan.airframe, plan.second, plan.first, isFirst);
    std::vector<AtCoupling> places;
    if (!firstPerson(teller, plan, record, places))
        return close(teller, record, Closing::LeftOpen, plan.first, plan.second, plan.surprise->note);
    int order = 0;
    for (AtCoupling& place : places)
        place.second(order++ < plan.secondReads);
    // Those tried before say nothing any more: hands were on every joint since.
    checkControls(teller, record, plan.airframe, plan.second, plan.first, isFirst && !plan.controlsFirst);
    close(teller, record, Closing::Complete, plan.first, plan.secondName.value_or(plan.second),
          plan.surprise ? plan.surprise->note : plan.note);
}

RecordId beginRigging(Teller& teller, const RiggingPlan& plan, int couplings)
{
    const RecordId record = begin(teller, plan);
    for (Joint* joint : teller.joints(plan.airframe))
        if (couplings-- > 0)
            AtCoupling{teller, plan, record, *joint, gapToday(teller, *joint, plan)}.first();
    return record;
}

} // namespace rig::demo
