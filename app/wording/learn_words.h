#pragma once

#include "core/airframe/coupling.h"
#include "core/lesson/photo.h"
#include "core/lesson/seating_round.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

namespace rig {

// Sentences of Know this airframe around its parts, and of looking at one coupling.
class LearnWords
{
    Q_DECLARE_TR_FUNCTIONS(LearnWords)

public:
    // The page
    static QString thisAirframe();
    static QString whoLearns();
    static QString choosePerson();
    static QString chooseWhoLearns();
    static QString noAirframe();
    static QString noCouplings();
    static QString couplings();
    static QString grantsNothing();
    static QString saveCard();
    static QString listKeys();
    static QString partCoupling(); // with their mnemonics
    static QString partPractice();
    static QString partRecall();
    static QString partSignOff();
    static QString partMeasuring();
    static QString partStudy();

    // A row of the list
    static QString notAsked();
    static QString asked(const LastRound& last); // "5 of 6 right", "a part-seated one was missed"
    static QString notPractised(CouplingKind kind);

    // One coupling
    static QString heading(const QString& coupling);
    static QString schematic();
    static QString lockedHere();
    static QString tryIt();
    static QString sliderKeys(CouplingKind kind);
    static QString whatIsSeen();
    static QStringList seenFrom(AccessSide side, AccessSide mirror); // a sentence each
    static QString withTorch();
    static QString withMirror();
    static QString access(const QString& access);
    static QString leafGoes(const QString& place);
    static QString allReadings(int locked, int partSeated);
    static QString neverShown();
    static QString gapTellsNothing();
    static QString noReadings();
    static QString photos();
    static QString photoOf(PhotoOf of);
    static QString photoNoted(PhotoOf of, const QString& note);
    static QString noPhotos();
    static QString byItself();
    static QString otherKind();
};

} // namespace rig
