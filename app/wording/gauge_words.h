#pragma once

#include "core/airframe/gauge.h"
#include "core/measure/gauge_set.h"
#include "core/measure/size_list.h"

#include <QCoreApplication>
#include <QString>

namespace rig {

// Sentences of Set up about leaf sets, pins, taper gauges and their checks.
class GaugeWords
{
    Q_DECLARE_TR_FUNCTIONS(GaugeWords)

public:
    // The list
    static QString title();
    static QString none();
    static QString add();
    static QString addUsual();
    static QString check();
    static QString takeOut();
    static QString putBack();
    static QString lineOutOfUse(const QString& name);
    static QString line(const QString& name, const QString& kind);
    static QString checkedOn(const QString& day);
    static QString neverChecked();
    static QString doubtedSince(const QString& day);
    static QString joined(const QString& one, const QString& two);

    // One gauge
    static QString newTitle();
    static QString changeTitle(const QString& name);
    static QString name();
    static QString nameHint();
    static QString kind();
    static QString kindName(GaugeKind kind);
    static QString sizes();
    static QString sizesHint();
    static QString readTo(const QString& resolution);
    static QString sizesRead(int count, const QString& first, const QString& last);
    static QString resolution();
    static QString resolutionHint();
    static QString tolerance();
    static QString toleranceHint();
    static QString note();
    static QString nameMissing();
    static QString nameTaken(const QString& name);
    static QString refused(const SizeListRefusal& refusal, const QString& size);
    static QString resolutionZero();
    static QString twoEnds();

    // Checks
    static QString checkTitle(const QString& name);
    static QString checkMeaning();
    static QString checkDay();
    static QString how();
    static QString howHint();
    static QString found();
    static QString foundHint();
    // A gap of known width
    static QString knownGap();
    static QString knownGapHint();
    static QString knownEnters();
    static QString knownRefuses();
    static QString knownGapZero();
    static QString knownGapReversed();
    static QString missesKnownGap(Gap by);
    static QString checkKnown(const QString& line, const KnownGapRead& known);
    static QString usable();
    static QString doubted();
    static QString doubtedFrom();
    static QString howMissing();
    static QString foundMissing();
    static QString afterCheck();
    static QString checks(const QString& name);
    static QString noChecks();
    static QString checkLine(const QString& day, const QString& how, const QString& found);
    static QString checkDoubts(const QString& line, const QString& day);
};

} // namespace rig
