#pragma once

#include "core/baseline/band.h"
#include "core/clock.h"
#include "core/judgement/judgement.h"
#include "core/measure/gauge_set.h"
#include "core/review/coupling_history.h"
#include "core/rigging/question.h"

#include <QCoreApplication>
#include <QString>
#include <QStringList>

#include <optional>

namespace rig {

// Sentences about readings in doubt, wherever they are met: at the check that doubts a gauge, beside a band,
// in a list of readings, in a question.
class DoubtWords
{
    Q_DECLARE_TR_FUNCTIONS(DoubtWords)

public:
    // "leaf set B", in the middle of a sentence.
    static QString gauge(GaugeKind kind, const QString& name);
    static QString reading(const QString& gauge, Day from);
    static QString readingWithNote(const QString& note, const QString& doubt);

    // The other version of a band, beside the one without the readings in doubt.
    struct Left
    {
        int readings = 0;
        QString gauges;
        bool hasBand = false;     // without them
        std::optional<Band> with; // the band that they would make with the others
    };
    static QString otherVersion(const Left& left);
    static QString otherVersion(const DoubtedVersion& version, bool hasBand);
    static QString gauges(const std::vector<Gauge>& gauges);
    static QString stayInFrozenList(int readings, const QString& gauges);
    static QString notFrozen(int readings, const QString& gauges);

    // A check that doubts a gauge: which day is proposed, and why.
    static QString afterGoodCheck(Day good);
    static QString onDayOfGoodCheck(Day good);
    static QString fromFirstReading(Day first);
    static QString neverRead();
    static QString readingsSince(int readings, int airframes);
    // What saving it does.
    static QString effectTitle();
    static QString beforeGoodCheck(Day good);
    static QString effectNeedsDay();
    static QString marks(int readings, int airframes);
    static QString marksNothing();
    static QString ofFitting(const QString& coupling, Day begins);
    struct Change
    {
        QString registration;
        QString coupling;
        std::optional<Band> before;
        std::optional<Band> after;
        int left = 0; // readings that make the band then
    };
    static QString band(const Change& change);
    static QString judgedOtherwise(const QString& registration, const QString& coupling, int readings);
    static QString noBandChanges();
    static QString opens(const QStringList& questions);
    static QString question(const QString& registration, const QString& asked);
    static QString isOpenAlready();

    // A question about a coupling whose band stood on readings in doubt.
    static QString bandNow(const QString& coupling, const std::optional<Band>& without, const Left& left);
    static QString verdicts(int readings);
    static QString verdict(const QString& interval, Day day, Verdict before, Verdict after);
    static QString staysSo(const QString& gauge);
};

} // namespace rig
