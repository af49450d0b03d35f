#pragma once

#include "core/judgement/judgement.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

namespace rig {

// What is said of part-seated readings: on which side and how often they were shown, never odds of one going
// unseen.
class WitnessWords
{
    Q_DECLARE_TR_FUNCTIONS(WitnessWords)

public:
    // Beside a verdict: what was shown, and that this does not say it always would.
    static QStringList besideVerdict(const WitnessFinding& finding);
    // "Part-seated was seen 4 times here, each time above the band."; empty where it is not known how often
    static QString shown(const WitnessFinding& finding);
    // How far the gap tells, as a level
    static QString level(const WitnessFinding& finding);
    // For the report: how many might lie not outside, as far as so few can tell; empty without a band
    static QString bound(const WitnessFinding& finding);

private:
    static QString once(const WitnessFinding& finding);
};

} // namespace rig
