#pragma once

#include "core/review/airframe_facts.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

namespace rig {

// Free play felt at a joint: a record of its own, never told with the gap and never judged.
class JointPlayWords
{
    Q_DECLARE_TR_FUNCTIONS(JointPlayWords)

public:
    explicit JointPlayWords(const AirframeFacts& facts) : m_facts{facts} {}

    // Of one coupling up to a day, newest first; only the last few, and how many there are before.
    QStringList latest(CouplingId coupling, Day to) const;
    QString sentence(const JointPlay& play) const;
    QString withCoupling(const JointPlay& play) const;
    static QString sentence(const JointPlay& play, const QString& person);
    static QString found(const JointPlay& play); // "joint play: along the rod no play, sideways play"
    static QString feltWithFigure(const QString& felt, const QString& millimetres);
    static QString manualHasTheLimit();

    static QString heading();
    static QString open();
    static QString openWithKey();
    static QString key();
    static QString how();
    static QString along();
    static QString across();
    static QString felt(PlayFelt felt);
    static QString measured();
    static QString measuredAlong();
    static QString measuredAcross();
    static QString day();
    static QString where();
    static QString person();
    static QString choosePerson();
    static QString chooseCoupling();
    static QString note();
    static QString noteHint();
    static QString keep();
    static QString close();
    static QString tryOne();
    static QString refusal(PlayProblem problem); // empty where there is none

private:
    const AirframeFacts& m_facts;
};

} // namespace rig
