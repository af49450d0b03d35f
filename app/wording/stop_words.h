#pragma once

#include "core/rigging/joint_stop.h"

#include <QCoreApplication>
#include <QString>

namespace rig {

// What the card of a stop says of one that is not simply of now: it was a slip, or it stands on a paper.
class StopWords
{
    Q_DECLARE_TR_FUNCTIONS(StopWords)

public:
    // A reading outside that was a slip. `instead` is empty where it was struck.
    struct Slip
    {
        QString slip;
        QString instead;
        QString by;
        QString reason;
    };
    static QString slip(const QString& coupling, const Slip& slip);
    static QString afterwards(const Slip& slip); // where the reading was told before
    static QString stays();
    // What was found at a surface of the joint's circuit.
    static QString surface(const QString& coupling, const QString& surface, const SurfaceStop& stop);
    // The control is not moved for it: another joint's stop comes first.
    static QString jointFirst(const QString& coupling, const QString& surface);
    static QString othersCanBeTried();
    static QString openSince(const QString& day); // where it came up in an earlier rigging
    static QString tagAndPhotograph();
    // How one gets out where the “no” itself was pressed by mistake.
    static QString slipOfTheKey();
    static QString onPaper(const QString& day);
    static QString unlessResolved(const QString& callName, const QString& callPhone);
};

} // namespace rig
