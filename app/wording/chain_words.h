#pragma once

#include "core/review/chain_state.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

namespace rig {

// What is said of the chain of a file: how far it has come, what does not stand as it was saved, and where
// earlier prints stand.
class ChainWords
{
    Q_DECLARE_TR_FUNCTIONS(ChainWords)

public:
    static QString end(const FileEnd& end); // 1,506 facts, end ABCDE-FG234
    static QString file(const FileEnd& end);
    static QString wholeHash(const FileEnd& end);
    static QString whatItMeans();

    static QString faults(std::int64_t count);
    static QString faultsHeading();
    static QString faultsAdvice();
    static QString copiesKey(); // on the screen: where the copies are
    static QString noFaults();
    static QString noOtherFaults();               // but for names that were replaced
    static QString lastSaved(const Moment& when); // UTC
    static QString takenOver(std::int64_t facts);
    static QString takenOverAdvice();
    static QString barOf(const ChainState& state); // empty where there is nothing to say
    static QString notLookedAt();
    static QString fact(const FaultyFact& fact); // which it is: reading · QX-17 · Left aileron · saved on …
    static QString says(const FaultyFact& fact);
    static QString fault(const FaultyFact& fact);
    static QString andMore(std::int64_t count);
    // What is said of all of them, one sentence for each.
    static QStringList all(const ChainState& state);
    // Which is no fault; nothing where there is none.
    static QStringList replacedNames(const ChainState& state);

    // Facts that do not stand as they were saved make no print one that still holds.
    static QString print(const ComparedPrint& print, std::int64_t faultsNow);
    static QString printHint();
    static QString noShortForm(const QString& typed);

    static QString oddIntro();
    static QString nothingOdd();
    static QString shownOtherwise(const QString& shown, const QString& now);
    static QString clockSetBack(const QString& saved);
    static QString inAClosedRecord(const QString& saved);
    static QString inTheFuture(const QString& saved);
    static QString odd(const FaultyFact& fact, const QString& why);

    static QString heading();
    static QString show();
    static QString showHint();
    static QString leave();
    static QString leaveHint();
};

} // namespace rig
