#pragma once

#include <QCoreApplication>
#include <QString>

namespace rig {

// Every sentence of the part-seated demonstration.
class DemonstrationWords
{
    Q_DECLARE_TR_FUNCTIONS(DemonstrationWords)

public:
    static QString title();
    static QString whatFor();
    static QString shown(int readings);
    static QString neverShown();

    // Cautions, each ticked by itself
    static QString cautionsHeading();
    static QString notAFlyingDay();
    static QString cockpitTagged();
    static QString inspectionAfterwards();
    static QString support();
    static QString riggedToday();
    static QString cautionsFirst();

    // Who, with what
    static QString owner();
    static QString second();
    static QString ownerFirst();
    static QString secondFirst();
    static QString readNow();
    // What was noted with a reading, and who stood by; either may be empty.
    static QString note(const QString& noted, const QString& second);
    static QString noTwoPeople();
    static QString kept(const QString& interval, const QString& time);
    static QString afterwards();
    static QString gaugeInDoubt();
    static QString columnOwner();

    // What it shows
    static QString nothingSeen();
    static QString apart();
};

} // namespace rig
