#pragma once

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
    static QString openSince(const QString& day); // where it came up in an earlier rigging
    static QString tagAndPhotograph();
    static QString onPaper(const QString& day);
    static QString unlessResolved(const QString& callName, const QString& callPhone);
};

} // namespace rig
