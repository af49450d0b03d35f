#pragma once

#include "core/review/chain_state.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

#include <cstdint>
#include <string>

namespace rig {

// How much two files hold that were joined, in numbers of facts.
struct JoinTally
{
    std::int64_t onlyOurs = 0;
    std::int64_t onlyTheirs = 0;
    std::int64_t all = 0;
    FileEnd end;
};

// What is said when the facts of two files are joined, or some of one are handed on.
class JoinWords
{
    Q_DECLARE_TR_FUNCTIONS(JoinWords)

public:
    static QString kind(const std::string& table); // Readings
    static QString fact(const FaultyFact& fact); // Readings, QX-17, Left aileron, saved on 2 May 2026 by …
    static QStringList findings(const QString& file, const ChainState& chain);
    static QString lookFirst();
    static QString leftOut(const FaultyFact& fact);
    static QString undecided(const FaultyFact& ours, const FaultyFact& theirs);
    static QString nothingJoined();
    static QString onlyIn(const QString& file, std::int64_t facts);
    static QString joined(const QString& out, const JoinTally& tally);
};

} // namespace rig
