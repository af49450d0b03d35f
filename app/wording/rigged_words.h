#pragma once

#include "core/numbers/shared_shift.h"
#include "core/review/record_review.h"
#include "core/rigging/event.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

#include <functional>
#include <span>
#include <string>

namespace rig {

// Couplings of a record: done and nothing in question, done with a question open, left as they are, all.
struct RecordCount
{
    int done = 0;
    int open = 0;
    int stopped = 0;
    int all = 0;
};

// Every sentence of the Rigged today page.
class RiggedWords
{
    Q_DECLARE_TR_FUNCTIONS(RiggedWords)

public:
    // One letter each, as shown on the buttons.
    static QString keyPerson(); // the chooser of who works
    static QString keyGauge();
    static QString withKey(const QString& what, const QString& key);
    static QString keyYes();
    static QString keyNo();
    static QString keyCannotSee();
    static QString keyFelt();
    static QString keyMeasureAgain();
    static QString keySecondPerson();
    static QString keyCorrect();
    static QString keyStrike();
    static QString keyLook();

    static QString answer(Answer answer);
    static QString answerWithKey(Answer answer);
    static QString answerTo(const QString& question, Answer answer);
    static QString question(CheckKind kind);
    static QString hint(CheckKind kind);
    static QString numbered(int number, const QString& question);
    static QString pullHint(CouplingKind kind);
    static QString secureHint(CouplingKind kind);
    static QString noGapHere();

    // The record's list
    static QString recordHeading();
    static QString progress(const RecordCount& count);
    static QString secondProgress(const RecordCount& count);
    // Where `open` of those that are done are stopped or in doubt.
    static QString secondNotBegun();      // beside the name of the place
    static QString secondNotBegunTitle(); // by itself
    static QString waiting();
    static QString lookNow();
    static QString measureNow();
    static QString secureNow();
    static QString pullNow();
    static QString begunNotDone();
    static QString interruptedMark(const QString& detail);
    static QString onceInterruptedMark(const QString& detail);
    static QString unresolvedMark(const QString& detail, const QString& standing);
    static QString readLookedPulled(const QString& interval);
    static QString readAndLooked(const QString& interval);
    static QString doneWithoutGap(const CouplingParts& parts);
    static QString bothDone(const QString& detail);
    static QString firstPersonDone();
    static QString firstPersonNotDone();
    static QString secondPersonDone(bool pulls);
    static QString secondInspection();
    static QString close();
    static QString closeHint();

    // Start of a record
    static QString startTitle();
    static QString startSentence();
    static QString noAirframe();
    static QString noCouplings();
    static QString noPeople();
    static QString noGauges();
    static QString keyNoteRead();
    static QString notesTitle();
    static QString noteLeft(const QString& day, const QString& first, const QString& second,
                            const QString& note);
    static QString moreNotes(int more);
    static QString noteRead();
    static QString noteReadWhy();
    static QString chooseWhoRead();
    static QString noteIsRead();
    static QString doneOn(EventKind kind, const QString& day);
    static QString wholeCheckOf(const QStringList& couplings, EventKind kind, const QString& day);
    static QString wholeCheckHere(EventKind kind, const QString& day);
    static QString takenApartToday();
    static QString takenApartWhy();
    static QString sinceThen();
    static QString riggedAnew();
    static QString stoodRigged();
    static QString celsius();
    static QString celsiusWhy();
    static QString celsiusRefused(const QString& typed);
    static QString chooseSinceThen();
    static QString chooseLeaderAndSinceThen();
    static QString leader();
    static QString choosePerson();
    static QString chooseGauge();
    static QString begin();
    static QString chooseWhoTookApart();
    static QString begunInAnotherWindow(const QString& time);
    static QString chooseLeaderFirst();
    static QString leftFromAnotherDay(const QString& day);
    static QString lastRecord(const QString& day, Closing closing, const QString& first,
                              const QString& second);
    static QString closing(Closing closing);

    // One coupling
    static QString measuredBy();
    static QString lookedBy();
    static QString lookedAtBy();
    static QString chooseWhoLooksFirst();
    static QString secondLooksBlind();
    static QString gauge();
    static QString lockedGap();
    static QString thickestThatEnters();
    static QString valueRead();
    static QString lookFirst();
    static QString readNow();
    static QString choosePersonFirst();
    static QString chooseSecondFirst();
    static QString chooseGaugeFirst();
    static QString figureNotTaken();
    static QString alreadyRead();
    static QString interval(const QString& interval, Technique technique);
    static QString gaugeChecked(const QString& name, const QString& day);
    static QString gaugeOverdue(const QString& name, const QString& day);
    static QString gaugeNeverChecked(const QString& name);
    static QString saving();
    static QString savedAt(const QString& time);
    static QString notSaved();
    static QString measureAgain();
    static QString measureAgainHint();
    static QString measureAsFound();
    static QString asFoundHint(SeatState kept); // as what
    static QString saidNo(const QString& coupling, CheckKind kind);
    static QString readOutside(const QString& coupling);
    static QString isStopped(const QString& coupling);
    static QString readTheStopFirst();
    static QString stoppedHere();
    static QString stoppedHereMeasure();
    static QString stopHere();
    static QString stopFor(const QString& standing);
    static QString correct();
    static QString correctTitle();
    struct KeptFigure
    {
        QString interval;
        QString time;
        QString person;
    };
    static QString correctQuestion(const KeptFigure& wrong);
    static QString correctNow();
    static QString strike();
    static QString strikeTitle();
    static QString strikeQuestion(const QString& interval, const QString& time);
    static QString struck(const QString& interval, const QString& time, const QString& by,
                          const QString& reason);
    static QString nextCoupling();
    static QString goToSecond();
    static QString goToClose();
    static QString secondHere();
    static QString firstHere();
    static QString escHint();
    static QString escHintOnPaper();
    static QString interruptedAt(const QString& time);
    static QString interruptedHere(); // for whoever comes back to it
    static QString begunElsewhere();
    static QString halfDoneElsewhere(); // before anything is pressed
    // The same of a paper, where another person is chosen.
    static QString askedAfresh(const QString& person);
    static QString halfAnsweredForAnother(const QString& person);
    static QString keptFromBefore(const QString& reading);
    static QString changedInAnotherWindow();
    static QString othersWorked(const QStringList& couplings);
    static QString typedAheadIsLost();
    static QString correctedBeforeTheBreak(const QString& interval);
    static QString movement(const QString& sign);
    static QString lastTwelve();
    static QString secondBlind();
    static QString secondOptional(bool isHidden);
    static QString passedOver(const QStringList& couplings); // stopped ones
    // Why the first person's turn is not shown; half way, where the first person's work waits too.
    static QString keptBack(const QString& coupling);
    static QString secondIsHalfWay(const QString& coupling);
    static QString notSeenHere(CheckKind kind);
    static QString looked(CheckKind kind, Answer answer); // once it is seen or felt
    static QString showLook();
    static QString foldLook();

    // First rigging of the season
    // `isNotKnown`: whether it is the first of the season
    static QString seasonTitle(bool isNotKnown);
    static QString seasonNotKnown(int riggingsBefore);
    static QString seasonSentence(bool isFirstOfYear);
    static QString afterLayoff(int weeks, const QString& since);
    static QString seasonDetail(int left);
    static QString seasonNext();
    static QString tick(TickKind kind);

    // Two persons, two sides
    static QString otherHandsSuggested(const QString& who, const QString& otherSide);
    static QString readingsAgree(const QString& smallest, const QString& limit);
    static QString readingsAreSame();
    static QString readingsDisagree(const QString& smallest, const QString& limit, int pairs);
    static QString readingsUnresolved(const QString& limit);
    static QString sharedShift(const numbers::SharedShift& shift);
    static QString looksSwapped(const QString& otherSide);

    // The close
    static QString closeTitle();
    static QString openHeading();
    static QString listedHeading();
    static QString nothingOpen(bool everythingEverywhere);
    static QString notSeen(const QString& coupling, CheckKind kind);
    static QString openItem(const OpenItem& item, const QString& name);
    // Line by line; what is the same of several stands in one. `named`: a name as it is written there.
    static QStringList openLines(std::span<const OpenItem> items,
                                 const std::function<QString(const std::string&)>& named);
    static QString ledByAnother(const QString& leader);
    static QString twoNames();
    static QString firstName();
    static QString secondName();
    static QString namesMustDiffer();
    static QString namesMissing();
    static QString toolsMissing();
    static QString closeComplete();
    static QString closeLeftOpen();
    static QString noteLabel();
    static QString noteHint();
    static QString cautionLast();
};

} // namespace rig
