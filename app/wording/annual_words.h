#pragma once

#include <QCoreApplication>
#include <QString>
#include <QStringList>

namespace rig {

// Columns of the ranked table, in their order.
enum class AnnualColumn { Coupling, Band, Moved, Excursion, Scatter, Chance, Questions, StandsOut, Last_ };
inline constexpr int kAnnualColumns = static_cast<int>(AnnualColumn::Last_);

// What stands around the figures on the page Before the annual. The figures' own sentences are ReviewWords.
class AnnualWords
{
    Q_DECLARE_TR_FUNCTIONS(AnnualWords)

public:
    // One letter each, as shown on the buttons.
    static QString keyReport();
    static QString keyMeaning();
    static QString keyHeadlines();
    static QString keyOutside();

    static QString report();
    static QString meaning();
    static QString noAirframe();
    static QString noCouplings();

    // What stands out
    static QString standsOutTitle();
    static QString headlinesHint(int more); // what they lead to; `more` stand in the list below
    static QString opensTrend();

    // The table
    static QString tableName();
    static QString tableKeys();
    static QString heading(AnnualColumn column);
    static QString meaningOf(AnnualColumn column);
    static QString meaningOfMarks();
    static QString spoken(AnnualColumn column, const QString& figure, const QString& beside);
    static QString signs(const QStringList& signs);
    static QString questionsOpen(int open);

    // The panels
    static QString shiftsTitle();
    static QString shiftsLegend();
    static QString measurersTitle();
    static QString measurersLegend();
    static QString outsideTitle();
    static QString outsideHint();
    static QString questionsTitle();
    static QString questionsHint();
    static QString gaugesTitle();
    static QString changesTitle();
    static QString tooFewTitle();
    static QString riggingsTitle();
    static QString noGauge();
    static QString stillOpen();
    static QString inDoubt();
    static QString titleOf(const QString& title, const QString& state);
};

} // namespace rig
