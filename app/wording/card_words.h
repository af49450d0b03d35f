#pragma once

#include "core/airframe/coupling.h"
#include "core/lesson/joint_state.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

namespace rig {

// The card of an airframe: where its couplings are and what locked looks like. It holds no figure.
class CardWords
{
    Q_DECLARE_TR_FUNCTIONS(CardWords)

public:
    static QString title();
    static QString fileName(const QString& registration);
    static QString whatThisIs();
    static QString plan(bool hasSquare); // below it
    static QString callTitle();
    static QString call(const QString& callName); // the number stands below it
    static QString foot();                        // of every page

    static QString inOrder();
    static QString side(Side side);                                  // a word; empty in the middle
    static QString seenFrom(AccessSide side, AccessSide mirrorFrom); // empty where nobody said either
    static QString holds(CouplingKind kind);                         // what holds it

    static QString lockedTitle();
    static QString lockedHow();
    static QString layout(Layout layout, const QStringList& couplings); // above a picture
    static QStringList locked(CouplingKind kind);                       // what is seen, one by one
    static QString state(JointState state);                             // a sentence
    static QString layoutNotSaid(const QStringList& couplings);
    static QString unlikeEntered(const QStringList& couplings);

    static QString cautionsTitle();
    static QStringList cautions();
};

} // namespace rig
