#pragma once

#include "core/judgement/judgement.h"
#include "core/measure/gap_interval.h"

#include <QCoreApplication>
#include <QString>

namespace rig {

// What is said of a judgement. No sentence here ever says that anything is in order.
class VerdictWords
{
    Q_DECLARE_TR_FUNCTIONS(VerdictWords)

public:
    static QString word(Verdict verdict);      // "Inside the band"
    static QString shortWord(Verdict verdict); // "inside", for tables and lists
    // Where the reading lies, and what makes its band weak.
    static QString sentence(const Judgement& judgement, const GapInterval& reading);
    // On asking: from how many readings the band is, how often a locked one falls that far out, and on which
    // side and how often part-seated was shown. Empty where there is nothing more.
    static QString more(const Judgement& judgement);
    // Both
    static QString explanation(const Judgement& judgement, const GapInterval& reading);
    static QString keyMore(); // one letter
    static QString showMore();
    static QString showLess();
    // What to do now. The last words are always that the gap is one sign only.
    static QString stoppedCaution();
    static QString outsideThen(const QString& day); // in place of the caution, of a day gone by
    static QString caution(Verdict verdict, const QString& callName, const QString& callPhone);
    // Of the second person's own reading.
    static QString cautionOfSecond(Verdict verdict, const QString& callName, const QString& callPhone);

private:
    static QString place(const Judgement& judgement, const QString& interval);
    static QString weakness(const Band& band);
    static QString rarity(const Judgement& judgement);
    static QString cannotTell(const Judgement& judgement, const QString& interval);
    static QString noBand(const Judgement& judgement, const QString& interval);
};

} // namespace rig
