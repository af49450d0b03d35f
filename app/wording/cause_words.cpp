#include "app/wording/cause_words.h"

#include "app/wording/formats.h"
#include "core/review/coupling_signs.h"

#include <QStringList>

#include <algorithm>
#include <cmath>

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

bool readsInsideNow(const CouplingReview& coupling)
{
    const Says says = coupling.standing.says;
    return says == Says::Moved || says == Says::Scatters || says == Says::WasOutside || says == Says::Inside;
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
    const auto isFound = [](const OutsideStory& one) { return one.foundAs().has_value(); };
    if (!std::ranges::all_of(coupling.outside, isFound))
        causes.push_back(jump(readsInsideNow(coupling)));
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

CauseText CauseWords::jump(bool afterwardsInside)
{
    return {
        afterwardsInside ? tr("Readings lay outside the band; the last one does not.")
                         : tr("The last reading lay outside the band."),
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
