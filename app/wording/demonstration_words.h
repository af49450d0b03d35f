#pragma once

#include "core/judgement/judgement.h"

#include <QCoreApplication>
#include <QString>

namespace rig {

// Every sentence of the part-seated demonstration.
class DemonstrationWords
{
    Q_DECLARE_TR_FUNCTIONS(DemonstrationWords)

public:
    static QString title() { return tr("Part-seated demonstration"); }
    static QString whatFor();
    static QString shown(int readings);
    static QString neverShown() { return tr("part-seated never shown"); }

    // Cautions, each ticked by itself
    static QString cautionsHeading() { return tr("Before anything is left part-seated"); }
    static QString notAFlyingDay() { return tr("Not on a flying day: this glider does not fly today."); }
    static QString cockpitTagged() { return tr("Tag the cockpit: the tag hangs on the controls now."); }
    static QString inspectionAfterwards();
    static QString support() { return tr("Support the control surface, so that nothing loads the joint."); }
    static QString riggedToday();
    static QString cautionsFirst() { return tr("First read each caution and tick it."); }

    // Who, with what
    static QString owner() { return tr("Owner, who measures"); }
    static QString second() { return tr("Second person, who stands by"); }
    static QString ownerFirst() { return tr("First choose the owner. Nobody is filled in."); }
    static QString secondFirst() { return tr("Now choose the second person, somebody else."); }
    static QString readNow();
    static QString secondNote(const QString& name) { return tr("Second person: %1").arg(name); }
    static QString correctionNote(const QString& reason, const QString& name)
    {
        return tr("%1 (second person: %2)").arg(reason, name);
    }
    static QString noTwoPeople() { return tr("It takes two people. Enter them first."); }
    static QString kept(const QString& interval, const QString& time);
    static QString afterwards();
    static QString gaugeInDoubt();
    static QString columnOwner() { return tr("Who"); }

    // What it shows
    static QString seen(int readings);
    static QString nothingSeen();
    static QString witness(const WitnessFinding& finding);
    static QString apart() { return tr("These readings stand apart: they never count for a band."); }
};

} // namespace rig
