#pragma once

#include "core/numbers/shared_shift.h"
#include "core/review/record_review.h"

#include <QCoreApplication>
#include <QString>

namespace rig {

// Every sentence of the Rigged today page.
class RiggedWords
{
    Q_DECLARE_TR_FUNCTIONS(RiggedWords)

public:
    // One letter each, as shown on the buttons.
    static QString keyYes() { return tr("Y", "key for the answer yes"); }
    static QString keyNo() { return tr("N", "key for the answer no"); }
    static QString keyCannotSee() { return tr("C", "key for the answer cannot see"); }
    static QString keyMeasureAgain() { return tr("M", "key for measure again"); }
    static QString keySecondPerson() { return tr("S", "key for second person"); }
    static QString keyCorrect() { return tr("W", "key for wrong leaf pressed"); }

    static QString answer(Answer answer);
    static QString answerWithKey(Answer answer);
    static QString answerTo(const QString& question, Answer answer)
    {
        return tr("%1: %2", "question: answer").arg(question, RiggedWords::answer(answer));
    }
    static QString question(CheckKind kind);
    static QString hint(CheckKind kind);
    static QString secureHint(Securing securing);

    // The record's list
    static QString recordHeading() { return tr("Rigging record"); }
    static QString progress(int done, int of) { return tr("%1 of %2 couplings done").arg(done).arg(of); }
    static QString secondProgress(int done, int of)
    {
        return tr("Second person: %1 of %2 done").arg(done).arg(of);
    }
    static QString waiting() { return tr("waiting"); }
    static QString lookNow() { return tr("look now"); }
    static QString measureNow() { return tr("measure now"); }
    static QString secureNow() { return tr("secure now"); }
    static QString pullNow() { return tr("pull now"); }
    static QString begunNotDone() { return tr("begun, not done"); }
    static QString interruptedMark(const QString& detail) { return tr("%1 · interrupted").arg(detail); }
    static QString outsideMark(const QString& detail) { return tr("%1 · outside").arg(detail); }
    static QString doubtedMark(const QString& detail) { return tr("%1 · a doubt was answered").arg(detail); }
    static QString readLookedPulled(const QString& interval) { return tr("%1 · look · pull").arg(interval); }
    static QString bothDone(const QString& detail) { return tr("%1 · second person").arg(detail); }
    static QString firstPersonDone() { return tr("first person done, result hidden"); }
    static QString firstPersonNotDone() { return tr("first person not done yet"); }
    static QString secondPersonDone() { return tr("own look and pull done"); }
    static QString secondInspection() { return tr("Second inspection"); }
    static QString close() { return tr("Close the record"); }
    static QString closeHint() { return tr("two names, leaves counted"); }

    // Start of a record
    static QString startTitle() { return tr("Rigged today?"); }
    static QString startSentence();
    static QString noAirframe();
    static QString noCouplings();
    static QString noPeople();
    static QString noGauges();
    static QString takenApartToday() { return tr("End of the day: it was &taken apart"); }
    static QString takenApartWhy();
    static QString sinceThen();
    static QString riggedAnew() { return tr("Taken apart and rigged &anew"); }
    static QString stoodRigged() { return tr("&Stood rigged, gone through once more"); }
    static QString chooseSinceThen();
    static QString leader() { return tr("Rigging leader"); }
    static QString choosePerson() { return tr("Choose a person"); }
    static QString chooseGauge() { return tr("Choose a leaf set or gauge"); }
    static QString begin() { return tr("Start the rigging record"); }
    static QString chooseWhoTookApart();
    static QString begunInAnotherWindow(const QString& time);
    static QString chooseLeaderFirst() { return tr("Choose who leads this rigging first."); }
    static QString leftFromAnotherDay(const QString& day);
    static QString lastRecord(const QString& day, Closing closing, const QString& first,
                              const QString& second);
    static QString closing(Closing closing);

    // One coupling
    static QString measuredBy() { return tr("Measured by"); }
    static QString lookedBy() { return tr("Second person"); }
    static QString gauge() { return tr("Measured with"); }
    static QString lockedGap() { return tr("Locked gap, mm"); }
    static QString thickestThatEnters() { return tr("Thickest leaf that enters freely"); }
    static QString valueRead() { return tr("Value read on the taper gauge, mm"); }
    static QString lookFirst();
    static QString readNow();
    static QString choosePersonFirst();
    static QString chooseSecondFirst();
    static QString chooseGaugeFirst();
    static QString alreadyRead();
    static QString interval(const QString& interval, Technique technique);
    static QString gaugeChecked(const QString& name, const QString& day)
    {
        return tr("Set %1, last checked %2.").arg(name, day);
    }
    static QString gaugeOverdue(const QString& name, const QString& day)
    {
        return tr("Set %1 is overdue a check: last checked %2.").arg(name, day);
    }
    static QString gaugeNeverChecked(const QString& name)
    {
        return tr("Set %1, no check recorded.").arg(name);
    }
    static QString saving() { return tr("saving …"); }
    static QString savedAt(const QString& time) { return tr("saved %1").arg(time); }
    static QString notSaved() { return tr("not saved"); }
    static QString measureAgain() { return tr("Measure again  (%1)").arg(keyMeasureAgain()); }
    static QString measureAgainHint()
    {
        return tr("Measure again: a further reading stands beside the first.");
    }
    static QString correct() { return tr("Wrong leaf  (%1)").arg(keyCorrect()); }
    static QString correctTitle() { return tr("Wrong leaf pressed"); }
    static QString correctQuestion();
    static QString correctNow();
    static QString nextCoupling() { return tr("Next coupling  (Enter)"); }
    static QString goToSecond() { return tr("Second inspection  (Enter)"); }
    static QString goToClose() { return tr("To the close  (Enter)"); }
    static QString secondHere() { return tr("Second person  (%1)").arg(keySecondPerson()); }
    static QString firstHere() { return tr("First person  (%1)").arg(keySecondPerson()); }
    static QString escHint() { return tr("Esc interrupts."); }
    static QString interruptedAt(const QString& time)
    {
        return tr("Interrupted at %1. This coupling starts again from the look.").arg(time);
    }
    static QString lastTwelve() { return tr("Last twelve readings"); }
    static QString secondBlind() { return tr("Your own look and pull. The first result is hidden."); }
    static QString secondOptional();
    static QString secondMustDiffer();
    static QString doubtHere();

    // First rigging of the season
    static QString seasonTitle() { return tr("First rigging of the season"); }
    static QString seasonSentence();
    static QString seasonDetail(int left);
    static QString seasonNext() { return tr("To the couplings  (Enter)"); }
    static QString tick(TickKind kind);

    // Two persons, two sides
    static QString otherHandsSuggested(const QString& who, const QString& otherSide);
    static QString readingsAgree(const QString& smallest, const QString& limit);
    static QString readingsDisagree(const QString& smallest, const QString& limit, int pairs);
    static QString readingsUnresolved(const QString& limit);
    static QString sharedShift(const numbers::SharedShift& shift);
    static QString looksSwapped(const QString& otherSide);

    // The close
    static QString closeTitle() { return tr("Close the rigging record"); }
    static QString openHeading() { return tr("Still open"); }
    static QString listedHeading() { return tr("Stays in the record"); }
    static QString nothingOpen();
    static QString openItem(const OpenItem& item, const QString& name);
    static QString twoNames();
    static QString firstName() { return tr("Rigging leader"); }
    static QString secondName() { return tr("Second person"); }
    static QString namesMustDiffer();
    static QString namesMissing();
    static QString toolsMissing();
    static QString closeComplete() { return tr("Close the record, all steps done"); }
    static QString closeLeftOpen() { return tr("Close with the open items listed"); }
    static QString noteLabel() { return tr("Note"); }
    static QString noteHint() { return tr("What the next person ought to know"); }
    static QString cautionLast();
};

} // namespace rig
