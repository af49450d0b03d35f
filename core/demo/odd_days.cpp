#include "core/demo/sayings.h"
#include "core/demo/story.h"

namespace rig::demo {

namespace {

RiggingPlan planOf(int airframe, Day day, int hour, Who first)
{
    RiggingPlan plan;
    plan.airframe = airframe;
    plan.day = day;
    plan.hour = hour;
    plan.first = first;
    plan.second = Who::Oren;
    return plan;
}

// Nobody can see whether the ball is in the socket; the record stays open.
void mirrorIsMissing(Teller& teller)
{
    const RecordId record = beginRigging(teller, planOf(1, dayOf(2026, 5, 16), 10, Who::Sand), 0);
    Joint& aileron = teller.joint(1, says::kLeftAileron);
    answer(teller, record, aileron, CheckKind::BallInSocket, Answer::CannotSee, Turn::First, Who::Sand);
    Question question;
    question.kind = QuestionKind::CannotSee;
    question.record = record;
    question.check = CheckKind::BallInSocket;
    teller.ask(aileron, question, Who::Sand);
    teller.happen(1, EventKind::Note, says::kMirrorMissing, &aileron);
}

// Taken apart after an outlanding, put together at dusk, left overnight: nothing of it counts next morning.
void outlanding(Teller& teller)
{
    teller.happen(2, EventKind::Note, says::kOutlanding);
    const RiggingPlan evening = planOf(2, dayOf(2026, 8, 15), 20, Who::Sand);
    const RecordId record = beginRigging(teller, evening, 3);
    teller.clock().set(dayOf(2026, 8, 16), 7, 5);
    interrupt(teller, record, teller.joint(2, says::kRightAirbrake), InterruptionReason::Idle, Who::Sand);
    close(teller, record, Closing::Abandoned, Who::Sand, std::nullopt, says::kLeftOvernight);
    RiggingPlan morning = planOf(2, dayOf(2026, 8, 16), 8, Who::Sand);
    morning.secondName = Who::Vale; // who had connected the right side
    morning.note = says::kValeSignedInstead;
    rigWhole(teller, morning);
}

} // namespace

void addOddDays(Story& story)
{
    story.push_back({dayOf(2026, 5, 16), 10, mirrorIsMissing});
    story.push_back({dayOf(2026, 8, 15), 19, outlanding});
}

} // namespace rig::demo
