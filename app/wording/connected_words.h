#pragma once

#include "core/rigging/rigging_session.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

namespace rig {

// Who connected each side, and whether somebody independent was there: asked, listed and on paper.
class ConnectedWords
{
    Q_DECLARE_TR_FUNCTIONS(ConnectedWords)

public:
    static QString keyNotKnown();

    // Where it is asked
    static QString place();
    static QString sentence();
    static QString question(Side side);
    static QString person(const QString& name, int number); // the key before it; from ten on there is none
    static QString notKnown();
    static QString notKnownWithKey();
    static QString spoken(Side side, const QString& answer);
    static QString notSaidYet();
    static QString severalMay();
    static QString nextSide();
    static QString goThere();
    static QString keys();
    static QString listDetail(int said, int of);

    // The second person of one joint
    static QString cannotBeSecond(const QString& name, NotSecond why);
    static QString chooseSecond();
    static QString nobodyApart();
    static QString connectedItToo(const QString& name);

    // Of the record
    static QString connectedBy(Side side, const QStringList& names);
    static QString nobodySaid(Side side);
    static QString nobodySaidAtAll();
    static QString whoIsNotKnown(Side side);
    static QString nobodyIndependent(Side side, const QString& name);
    static QString didNoSecondLook(const QString& name);
    static QString notKnownWhetherIndependent(const QString& name);
    static QString secondConnectedIt(const QString& name);
};

} // namespace rig
