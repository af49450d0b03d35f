#include "app/wording/stop_words.h"

namespace rig {

QString StopWords::slip(const QString& coupling, const Slip& slip)
{
    return tr("%1: %2 lay outside the band. %3", "coupling, reading, what became of it")
        .arg(coupling, slip.slip, afterwards(slip));
}

QString StopWords::afterwards(const Slip& slip)
{
    return slip.instead.isEmpty()
               ? tr("It was struck by %1: “%2”.", "person, reason").arg(slip.by, slip.reason)
               : tr("It was corrected to %1 by %2: “%3”.", "reading, person, reason")
                     .arg(slip.instead, slip.by, slip.reason);
}

QString StopWords::stays()
{
    return tr("The stop stays until a named person has said what was found and done (Ctrl+6).");
}

QString StopWords::surface(const QString& coupling, const QString& surface, const SurfaceStop& stop)
{
    if (!stop.isWrongMovement())
        return tr("%1: in the control check “no” was answered at %2, and nobody has said yet what it was.")
            .arg(coupling, surface);
    return stop.didNothing
               ? tr("%1: in the control check %2 did not move, and nobody has said yet what it was.")
                     .arg(coupling, surface)
               : tr("%1: in the control check %2 moved the wrong way, and nobody has said yet what it was.")
                     .arg(coupling, surface);
}

QString StopWords::jointFirst(const QString& coupling, const QString& surface)
{
    return tr("The joint %1 is stopped. Do not move the controls for %2 until its question is closed "
              "(Ctrl+6).")
        .arg(coupling, surface);
}

QString StopWords::othersCanBeTried() { return tr("Other surfaces can be tried."); }

QString StopWords::openSince(const QString& day) { return tr("Open since %1.").arg(day); }
QString StopWords::tagAndPhotograph() { return tr("Tag the cockpit. Photograph the joint as found."); }

QString StopWords::slipOfTheKey()
{
    return tr(
        "Was the “no” a slip of the key? Close its question (Ctrl+6) with a name and “slip of the key” as "
        "what was found. The joint then starts again from the look.");
}

QString StopWords::onPaper(const QString& day)
{
    return tr("Found on %1, as the paper says. Say in the questions (Ctrl+6) who resolved it, what was found "
              "and what was done.")
        .arg(day);
}

QString StopWords::unlessResolved(const QString& callName, const QString& callPhone)
{
    const QString whom = callName.isEmpty() ? tr("a person entitled to decide") : callName;
    return callPhone.isEmpty()
               ? tr("If nobody has resolved it, the stop holds today too: leave it as it is, and call %1.")
                     .arg(whom)
               : tr("If nobody has resolved it, the stop holds today too: leave it as it is, and call %1 "
                    "(%2).")
                     .arg(whom, callPhone);
}

} // namespace rig
