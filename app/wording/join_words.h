#pragma once

#include "core/clock.h"
#include "core/review/chain_state.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

#include <cstdint>
#include <string>

namespace rig {

// What is said when the facts of two files are joined, or some of one are handed on.
class JoinWords
{
    Q_DECLARE_TR_FUNCTIONS(JoinWords)

public:
    static QString kind(const std::string& table); // Readings
    static QStringList findings(const QString& file, const ChainState& chain);
    static QString lookFirst();
    static QString wholeInstead();
    static QString leftOut(const FaultyFact& fact);
    static QString undecided(const FaultyFact& ours, const FaultyFact& theirs);
    static QString nothingJoined();
    static QString onlyIn(const QString& file, std::int64_t facts);
    static QString joined(const QString& out, const FileEnd& end);
    static QString takeIn(); // in the menu
    static QString openOneFirst();
    static QString takeInTitle();
    static QString takeInYes();
    static QString nothingNew(const QString& file);
    static QString kinds(const QStringList& kinds); // Readings: 3; People: 1
    static QString kindCount(const std::string& table, std::int64_t facts);
    static QString whatIsNew(const QString& file, const QString& kinds);
    static QString readingsOf(const QStringList& couplings, Day first, Day last);
    static QString stillFound(std::int64_t faults);
    static QString conflictsArise(const QStringList& titles);
    static QString copyIsKept();
    static QString cameIn(const QString& file, std::int64_t facts, const FileEnd& end);
    static QString nothingTakenIn();
    static QString handedOn(const QString& airframe, const QString& out, const FileEnd& end);
    static QString handedOnFrom(const QString& file, const FileEnd& original);
};

} // namespace rig
