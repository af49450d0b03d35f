#pragma once

#include "core/lesson/sign_off_standing.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

#include <optional>

namespace rig {

// Sentences of supervised riggings and of signing for somebody on Know this airframe. It informs and grants
// nothing.
class SigningWords
{
    Q_DECLARE_TR_FUNCTIONS(SigningWords)

public:
    static QString title(const QString& person);
    static QString standing(const SignOffStanding& standing);
    static QString lastRigging(const QString& day);
    static QString noRigging();

    // What is asked for
    static QString askedFor();
    static QString supervisedCount(int count, int of);
    static QString allPractised();
    static QString notPractised(const QStringList& couplings);
    static QString missed(const QStringList& couplings);
    static QString whoSignsDecides();

    // Supervised riggings
    static QString supervised();
    static QString noneSupervised();
    static QString supervisedRow(const QString& day, const QString& mentor, const QString& note);
    static QString addSupervised();
    static QString rigging();
    static QString chooseRigging();
    static QString riggingLine(const QString& day, const QStringList& people);
    static QString mentor();
    static QString chooseMentor();
    static QString supervisedNote();
    static QString note();
    static QString keep();
    static QString noRiggings();
    static QString riggingMissing();
    static QString mentorMissing();
    static QString supervisedKept();

    static QString notNamed(const QStringList& people);
    static QString wereThere();
    static QString wereThereMissing(const QStringList& people);
    static QString rowNotNamed(const QString& row, const QStringList& people);

    // Taking back
    static QString toTakeBack();
    static QString chooseToTakeBack();
    static QString takenBackBy();
    static QString chooseWhoTakesBack();
    static QString takeBack();
    static QString toTakeBackMissing();
    static QString whoTakesBackMissing();
    static QString takeBackTitle();
    static QString whyTakenBack(const QString& what);
    static QStringList takenBackFor(); // answers that one press gives
    static QString takenBackNow();
    static QString takenBack(const QString& what, const QString& who, const QString& why);

    // Signing
    static QString sign(const QString& person);
    static QString signer();
    static QString chooseSigner();
    static QString day();
    static QString months();
    static QString monthsWithoutRigging();
    static QString commonPractice();
    static QString signIt();
    static QString withdrawIt();
    static QString signerMissing();
    static QString dayMissing();
    static QString dayToCome();
    static QString whyMissing();
    static QString signedNow(const QString& day);
    static QString withdrawnNow();
    // What is asked for and not met; `lastRigging`: the day, where it lies too long ago. Empty: all is met.
    static QString notMet(const AskedFor& asked, const std::optional<QString>& lastRigging);
    static QString signAllTheSame();
    static QString signAllTheSameMissing();
    static QString history();
    static QString historyRow(const SignOff& signOff, const QString& signer);
};

} // namespace rig
