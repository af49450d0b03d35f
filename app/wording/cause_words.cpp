#include "app/wording/cause_words.h"

#include "app/wording/formats.h"
#include "core/review/coupling_signs.h"
#include "core/rigging/measured_before.h"
#include "core/rigging/time_known.h"

#include <QStringList>

#include <algorithm>
#include <cmath>
#include <functional>

namespace rig {

namespace {

// An annual, a refit or a cleaning within this many days of a step explains it better than anything else.
constexpr int kDaysBeside = 21;

bool isBesideEvent(const CouplingReview& coupling, const AirframeReview& review)
{
    const Day day = coupling.movement->told()->day;
    return std::ranges::any_of(review.events, [&](const Event& event) {
        const auto apart = (day - event.day).count();
        return event.kind != EventKind::Note && event.kind != EventKind::Finding && apart >= 0 &&
               apart <= kDaysBeside && (!event.coupling || *event.coupling == coupling.coupling.id);
    });
}

bool isFound(const OutsideStory& one) { return one.foundAs().has_value(); }

// What lay outside at the rigging of the last reading and was not read before it: a second person's reading,
// or one of a table that did not tell when.
bool isBesideLast(const OutsideStory& story, const Reading& last)
{
    const bool isSameRigging =
        story.reading.record == last.record && story.reading.when.localDay() == last.when.localDay();
    const bool isBefore =
        isTimeKnown(story.reading) && isTimeKnown(last) && measuredBefore(story.reading, last);
    return story.isStanding() && isSameRigging && !isBefore;
}

} // namespace

std::vector<CauseText> CauseWords::of(const CouplingReview& coupling, const AirframeReview& review)
{
    std::vector<CauseText> causes;
    if (const DayShift* day = togetherWith(coupling, review.shifts))
        causes.push_back(together(*day));
    const bool mayDrift = coupling.has(Sign::Drift) || coupling.has(Sign::StepOrDrift);
    const bool mayStep = coupling.has(Sign::Step) || coupling.has(Sign::StepOrDrift);
    if (mayDrift)
        causes.push_back(slow(coupling));
    if (mayStep)
        causes.push_back(step(isBesideEvent(coupling, review)));
    if ((mayDrift || mayStep) && coupling.otherSideMovesToo)
        causes.push_back(bothSides());
    if (coupling.has(Sign::ScatterGrew))
        causes.push_back(scatterGrew());
    if (!std::ranges::all_of(coupling.outside, isFound))
        causes.push_back(jump(coupling));
    const auto found = std::ranges::find_if(coupling.outside.rbegin(), coupling.outside.rend(), isFound);
    if (found != coupling.outside.rend())
        causes.push_back(foundAt(*found->foundAs()));
    if (coupling.has(Sign::ScatterShrank))
        causes.push_back(scatterShrank());
    return causes;
}

QString CauseWords::cannotTellWhich()
{
    return tr("The readings cannot tell which of these it is, or whether it is one of them.");
}

QString CauseWords::whenTogether()
{
    return tr("Check the leaf set, read again with another person, and look at each joint.");
}

QString CauseWords::stiffGrease() { return tr("Stiff grease leaves plungers short."); }

QString CauseWords::sentence(const CauseText& cause)
{
    return tr("%1 Seen with such readings: %2. Look at: %3. For: %4.", "pattern, causes, places, persons")
        .arg(cause.pattern, cause.causes, cause.lookAt, cause.who);
}

CauseText CauseWords::together(const DayShift& day)
{
    return {
        tr("%1 of %2 couplings moved together that day.")
            .arg(Formats{}.count(wentTogether(day)), Formats{}.count(day.shift.scores)),
        tr("worn, burred or dirty leaves, another person's hand, stiff grease that leaves plungers short"),
        tr("the leaf set; the same couplings read again by another person; each joint, its plunger and "
           "its grease"),
        tr("the owner")};
}

CauseText CauseWords::slow(const CouplingReview& coupling)
{
    const bool grows = coupling.movement->told()->isUp();
    CauseText cause;
    cause.pattern = grows ? tr("The gap grows slowly.") : tr("The gap shrinks slowly.");
    QStringList causes;
    if (const QString worn = wear(coupling.coupling.layout, grows); !worn.isEmpty())
        causes << worn;
    causes << (grows
                   ? tr("a sleeve stop that settles back, a creeping locknut")
                   : tr("a sleeve edge that spreads, a sleeve creeping forward, dirt under the sleeve stop"));
    cause.causes = causes.join(tr(", ", "between causes"));
    cause.lookAt = grows ? tr("the ball (is it round?), the plunger nose (is it polished?), the thread")
                         : tr("the sleeve stop, cleaned first; then ball, plunger nose and thread");
    cause.who = tr("the engineer");
    return cause;
}

// A worn ball or nose lets the plunger travel on, away from the sleeve in layout A and towards it in B. Empty
// where that would move the gap the other way.
QString CauseWords::wear(Layout layout, bool grows)
{
    switch (layout) {
    case Layout::A:
        return grows ? tr("wear of the ball or the plunger nose, which lets the plunger travel on")
                     : QString{};
    case Layout::B:
        return grows ? QString{}
                     : tr("wear of the ball or the plunger nose, which lets the plunger travel on");
    case Layout::C:
    case Layout::Unknown:
        break;
    }
    return tr("wear of the ball or the plunger nose (which way it moves the gap hangs on the layout)");
}

CauseText CauseWords::scatterGrew()
{
    return {
        tr("The readings scatter more than they did."),
        tr("a tired plunger or sleeve spring, dry or hardened grease, a socket in which the ball rests at "
           "several places, several measurers"),
        tr("the feel of the springs, the grease, free play, who measured"),
        tr("the owner, then the engineer")};
}

CauseText CauseWords::scatterShrank()
{
    return {tr("The readings scatter less than they did."),
            tr("readings copied, leaves too coarse, one person who writes what is expected"),
            tr("the step of the leaves, the times of the readings, a second reading taken blind"),
            tr("the owner")};
}

CauseText CauseWords::step(bool besideEvent)
{
    if (besideEvent)
        return {tr("The readings moved by a step, beside an entry in the events."),
                tr("rod length set anew, ball, socket, sleeve or spring changed, cleaned and greased"),
                tr("what was done that day; a new fitting with its own baseline, compared with the old one"),
                tr("the engineer")};
    return {tr("The readings moved by a step and stayed there."),
            tr("a sleeve that moved, a loose locknut, a bent tab, a cracked sleeve, a part swapped"),
            tr("thread showing, the paint mark on the locknut, cracks in the sleeve"), tr("the engineer")};
}

// How many lay outside, and where the last of all readings of the period lies.
QString CauseWords::outsideAndLast(const CouplingReview& coupling)
{
    const auto outside = static_cast<int>(std::ranges::count_if(coupling.outside, std::not_fn(isFound)));
    if (!coupling.latest || !coupling.latestJudgement)
        return tr("%n reading(s) lay outside the band in this period.", nullptr, outside);
    switch (coupling.latestJudgement->verdict) {
    case Verdict::Outside:
        return outside == 1 ? tr("The last reading lay outside the band.")
                            : tr("%n reading(s) lay outside the band in this period, the last one too.",
                                 nullptr, outside);
    case Verdict::NearEdge:
    case Verdict::CannotTell:
    case Verdict::NoBandYet:
    case Verdict::Inside:
        break;
    }
    const auto isBeside = [&](const OutsideStory& story) {
        return isBesideLast(story, coupling.latest->reading);
    };
    if (std::ranges::any_of(coupling.outside, isBeside))
        return tr("%n reading(s) lay outside the band in this period, one of them at the last rigging.",
                  nullptr, outside);
    return lastLiesElsewhere(coupling.latestJudgement->verdict, outside);
}

QString CauseWords::lastLiesElsewhere(Verdict last, int outside)
{
    switch (last) {
    case Verdict::NearEdge:
        return tr("%n reading(s) lay outside the band in this period; the last reading is near the edge.",
                  nullptr, outside);
    case Verdict::CannotTell:
        return tr("%n reading(s) lay outside the band in this period; of the last reading it cannot be told "
                  "where it lies.",
                  nullptr, outside);
    case Verdict::NoBandYet:
        return tr("%n reading(s) lay outside the band in this period; for the last reading there is no band "
                  "yet.",
                  nullptr, outside);
    case Verdict::Outside:
    case Verdict::Inside:
        break;
    }
    return tr("%n reading(s) lay outside the band in this period; the last reading is inside.", nullptr,
              outside);
}

CauseText CauseWords::jump(const CouplingReview& coupling)
{
    return {
        outsideAndLast(coupling),
        tr("a part-seated ball, a sleeve not at its stop, grit or a plug of grease, a tilted or burred leaf, "
           "a "
           "figure read or written wrongly"),
        tr("what was found and done each time. Stop, leave it as it is, call. Only when the cause is found: "
           "disconnect, clean, connect, look, pull, read"),
        tr("whoever rigs, then the engineer")};
}

CauseText CauseWords::foundAt(SeatState state)
{
    const bool isSeated = state == SeatState::NotSecured;
    return {isSeated ? tr("At a rigging the joint was found not secured.")
                     : tr("At a rigging the joint was found part-seated."),
            isSeated
                ? tr("a sleeve that was not let go to its stop or stuck before it, a pin left out, haste")
                : tr("a ball that was not pushed home, stiff grease or grit before the plunger, haste"),
            tr("what was found and done each time; plunger, sleeve or pin, and their springs"),
            tr("whoever rigs, then the engineer")};
}

CauseText CauseWords::bothSides()
{
    return {tr("The same coupling on the other side moves the same way."),
            tr("wear by use, grease that has stiffened"),
            tr("plunger, grease and wear of both; the count of riggings"), tr("the engineer")};
}

} // namespace rig
