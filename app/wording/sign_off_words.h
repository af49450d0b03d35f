#pragma once

#include "core/lesson/sign_off_standing.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

namespace rig {

// How somebody stands on one airframe, in words: it informs, and stops nothing.
class SignOffWords
{
    Q_DECLARE_TR_FUNCTIONS(SignOffWords)

public:
    static QString standing(const SignOffStanding& standing);
    static QString named(const QString& person, const SignOffStanding& standing);
    // What was asked for and not met when it was signed; empty where all was, or nobody kept it.
    static QString notMet(const SignOff& signOff);
    static QString notMet(const AskedFor& asked);
    static QString why(); // it is said, and what it is not
    // Of several persons, each with how they stand.
    static QString onThatDay(const QStringList& persons);
    static QString today(const QStringList& persons);
};

} // namespace rig
