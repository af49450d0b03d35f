#pragma once

#include "core/review/conflicts.h"

#include <QCoreApplication>
#include <QString>

#include <span>

namespace rig {

// What is said of two facts that were saved apart and stand against each other.
class ConflictWords
{
    Q_DECLARE_TR_FUNCTIONS(ConflictWords)

public:
    static QString title(const ToldConflict& told);
    static QString leftUndone();             // asked before a reason that is typed is left
    static QString until(ConflictKind kind); // what holds until somebody decides
    static QString side(bool first);
    static QString decision(ConflictKind kind, Holds holds);
    static QString bar(std::span<const ToldConflict> open);
    static QString show();
    static QString showHint();
    static QString leave();
    static QString leaveHint();
    static QString heading();
    static QString headingOf(std::span<const ToldConflict> open); // of what stands in a report
    static QString none();
    static QString count(int open);
    static QString listKeys();
    static QString person();
    static QString choosePerson();
    static QString personMissing();
    static QString reason();
    static QString reasonHint();
    static QString reasonMissing();
    static QString decided();
    static QString renameHint();
    // On paper.
    static QString reportIntro();
    static QString decisionColumn();
    static QString decidedHeading();
    static QString decidedIntro();
    static QString decidedBy(const QString& decision, const QString& person, const QString& day);
    static QString inThisRecord(const ToldConflict& told);
};

} // namespace rig
