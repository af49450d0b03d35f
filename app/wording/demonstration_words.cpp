#include "app/wording/demonstration_words.h"

namespace rig {

QString DemonstrationWords::title() { return tr("Part-seated demonstration"); }

QString DemonstrationWords::whatFor()
{
    return tr("The joint is left part-seated on purpose, to see on which side of the band its gap then lies "
              "and how far "
              "off. Which side that is differs from coupling to coupling.");
}

QString DemonstrationWords::shown(int readings) { return tr("%n part-seated reading(s)", nullptr, readings); }
QString DemonstrationWords::neverShown() { return tr("part-seated never shown"); }

QString DemonstrationWords::cautionsHeading() { return tr("Before anything is left part-seated"); }

QString DemonstrationWords::notAFlyingDay()
{
    return tr("Not on a flying day: this glider does not fly today.");
}

QString DemonstrationWords::cockpitTagged()
{
    return tr("Tag the cockpit: the tag hangs on the controls now.");
}

QString DemonstrationWords::inspectionAfterwards()
{
    return tr(
        "Full inspection afterwards: every coupling connected anew, looked at and pulled by two people.");
}

QString DemonstrationWords::support()
{
    return tr("Support the control surface, so that nothing loads the joint.");
}

QString DemonstrationWords::riggedToday()
{
    return tr("A rigging record was begun today. If this glider may fly today, leave the demonstration for "
              "another day.");
}

QString DemonstrationWords::cautionsFirst() { return tr("First read each caution and tick it."); }

QString DemonstrationWords::owner() { return tr("Owner, who measures"); }
QString DemonstrationWords::second() { return tr("Second person, who stands by"); }
QString DemonstrationWords::ownerFirst() { return tr("First choose the owner. Nobody is filled in."); }
QString DemonstrationWords::secondFirst() { return tr("Now choose the second person, somebody else."); }

QString DemonstrationWords::readNow()
{
    return tr("Leave the joint part-seated, read the thickest leaf that enters freely, and part it again. No "
              "force: a "
              "pushed leaf opens the gap.");
}

QString DemonstrationWords::note(const QString& noted, const QString& second)
{
    if (second.isEmpty())
        return noted;
    return noted.isEmpty() ? tr("Second person: %1").arg(second)
                           : tr("%1 (second person: %2)").arg(noted, second);
}

QString DemonstrationWords::noTwoPeople() { return tr("It takes two people. Enter them first."); }

QString DemonstrationWords::kept(const QString& interval, const QString& time)
{
    return tr("Part-seated: %1, saved %2.").arg(interval, time);
}

QString DemonstrationWords::afterwards()
{
    return tr("When you are done: disconnect, clean, connect, look, pull, read, and inspect in full, with a "
              "second person's own look and pull. Only then does the tag come off.");
}

QString DemonstrationWords::gaugeInDoubt()
{
    return tr("That leaf set is in doubt since its last check. A demonstration is not read with it: choose "
              "another.");
}

QString DemonstrationWords::columnOwner() { return tr("Who"); }

QString DemonstrationWords::nothingSeen()
{
    return tr("Part-seated was never seen on this coupling. Until it is, both sides of the band count as "
              "suspect.");
}

QString DemonstrationWords::apart() { return tr("These readings stand apart: they never count for a band."); }

} // namespace rig
