#pragma once

#include "core/lesson/recall_round.h"
#include "core/lesson/seating_round.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

namespace rig {

// Sentences of practice rounds: states to call, and what is asked in words.
class PracticeWords
{
    Q_DECLARE_TR_FUNCTIONS(PracticeWords)

public:
    // Begin
    static QString title();
    static QString what();
    static QString practiseOne(const QString& coupling);
    static QString practiseAll();
    static QString keyOne();
    static QString keyAll();
    static QString noneToPractise();
    static QString refreshDue();
    static QString roundDone(int right, int asked);
    static QString tally(int right, int asked);
    static QString missedPartSeated(int count);
    static QString missedNotSecured(int count);
    static QString missedEmpty(int count);

    // A question
    static QString question(int number, int of);
    static QString ask(const QString& coupling);
    static QStringList lookedWith(const LookedWith& with, AccessSide side); // a sentence each
    static QString call(SeatingCall call);
    static QString choice(const QString& text, int number); // with its key
    static QString howSure();
    static QString sure();
    static QString notSure();
    static QString keySure();
    static QString keyNotSure();
    static QString next();
    static QString keys();

    // The answer
    static QString stateWas(JointState state);
    static QString right();
    static QString wrong();
    static QString rightNotSure();
    static QString missedPartSeated();
    static QString missedNotSecured();
    static QString missedEmpty();
    static QString sureButWrong();
    static QString reason(const SeatingAnswer& answer);
    static QString cannotTell(const SeatingAnswer& answer);

    // In words
    static QString recallTitle();
    static QString recallWhat();
    static QString beginRecall();
    static QString keyBegin();
    static QString nothingToRecall();
    static QString askCall(const QString& surface, const QString& command);
    static QString askOrder(const QString& coupling);
    static QString askWhom();
    static QString askStop(StopCase what);
    static QString act(StopAct act);
    static QString expected(const QString& choice);
    static QString whyAct(StopCase what);

private:
    static QString youLook(AccessSide side);
};

} // namespace rig
