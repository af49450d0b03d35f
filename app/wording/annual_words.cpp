#include "app/wording/annual_words.h"

namespace rig {

QString AnnualWords::keyReport() { return tr("R", "key for write the report"); }
QString AnnualWords::keyMeaning() { return tr("M", "key for what the columns mean"); }
QString AnnualWords::keyHeadlines() { return tr("S", "key for the next of what stands out"); }
QString AnnualWords::keyOutside() { return tr("O", "key for the next reading outside its band"); }

QString AnnualWords::report() { return tr("Write the report (%1)").arg(keyReport()); }
QString AnnualWords::meaning() { return tr("What the columns mean (%1)").arg(keyMeaning()); }
QString AnnualWords::noAirframe() { return tr("This file knows no airframe yet. Begin in Set up (Ctrl+5)."); }

QString AnnualWords::noCouplings()
{
    return tr("This airframe has no coupling yet. Add them in Set up (Ctrl+5); then every rigging adds to "
              "this page.");
}

QString AnnualWords::standsOutTitle() { return tr("What stands out"); }

QString AnnualWords::headlinesHint(int more)
{
    const QString keys =
        tr("Enter or a click: its readings in Trends. %1: the next one.").arg(keyHeadlines());
    return more > 0 ? tr("And %n more in the list below.", nullptr, more) + QLatin1Char(' ') + keys : keys;
}

QString AnnualWords::opensTrend() { return tr("Enter: its readings in Trends."); }

QString AnnualWords::tableName() { return tr("Couplings, what stands out first"); }

QString AnnualWords::tableKeys()
{
    return tr("Enter on a row: its readings and what to look at. 1 to 8: sort by that column. 0: what stands "
              "out first. Esc or Alt+Left there comes back here.");
}

QString AnnualWords::heading(AnnualColumn column)
{
    switch (column) {
    case AnnualColumn::Coupling:
        return tr("Coupling,\nlatest reading");
    case AnnualColumn::Band:
        return tr("Gap on\nits own band");
    case AnnualColumn::Moved:
        return tr("What moved,\nsince when");
    case AnnualColumn::Excursion:
        return tr("Farthest\naway, mm");
    case AnnualColumn::Scatter:
        return tr("Scatter,\nmm");
    case AnnualColumn::Chance:
        return tr("Chance outside\nat the annual");
    case AnnualColumn::Questions:
        return tr("Open\nquestions");
    case AnnualColumn::StandsOut:
    case AnnualColumn::Last_:
        break;
    }
    return tr("What stands out,\ngravest first");
}

QString AnnualWords::meaningOf(AnnualColumn column)
{
    switch (column) {
    case AnnualColumn::Coupling:
        return tr("Coupling, latest reading: the last locked reading in this period and how it lies to the "
                  "coupling’s own band.");
    case AnnualColumn::Band:
        return tr(
            "Gap on its own band: green is where 95 % of this coupling’s locked readings fall, ochre is "
            "near its edge, grey is outside; the bar across is the latest reading. Every band is drawn "
            "equally wide, so that rows compare.");
    case AnnualColumn::Moved:
        return tr(
            "What moved: a step in mm, or a drift in mm per 100 riggings, plus when the gap grows, with its "
            "95 % interval and the rigging it began at. None told: the readings show none, which is not to "
            "say that nothing moved.");
    case AnnualColumn::Excursion:
        return tr(
            "Farthest away: how far the gap, apart from the scatter between riggings, came from the middle "
            "of the band in this period. Single readings may lie farther off.");
    case AnnualColumn::Scatter:
        return tr(
            "Scatter: how much the last ten readings differ among themselves, with that of all before them "
            "below. Springs, grease, wear and several measurers all show here.");
    case AnnualColumn::Chance:
        return tr(
            "Chance outside at the annual: if the gap goes on as the readings say, how likely a reading then "
            "lies outside the band. 20 in 100 means 20 of 100 such readings.");
    case AnnualColumn::Questions:
        return tr("Open questions: what nobody has found out and signed for yet.");
    case AnnualColumn::StandsOut:
    case AnnualColumn::Last_:
        break;
    }
    return tr("What stands out: signs, gravest first. None of them is a diagnosis, and an empty line says no "
              "more than that.");
}

QString AnnualWords::meaningOfMarks()
{
    return tr(
        "Marks: disc with a tick, inside; triangle, near the edge, or inside with something told beside it; "
        "diamond, outside; half disc, cannot "
        "tell; dashed ring, no band yet; small ring, not read. A band is the coupling’s own past, never "
        "a limit.");
}

QString AnnualWords::signs(const QStringList& signs)
{
    return signs.isEmpty() ? tr("nothing that these readings show") : signs.join(tr("; ", "between signs"));
}

QString AnnualWords::questionsOpen(int open) { return tr("%n open", "questions", open); }

QString AnnualWords::shiftsTitle() { return tr("Is it the coupling, the leaf set or the person?"); }

QString AnnualWords::shiftsLegend()
{
    return tr("What all couplings share on each rigging day, in their own scatters");
}

QString AnnualWords::measurersTitle() { return tr("Who measures like whom"); }

QString AnnualWords::measurersLegend()
{
    return tr("Distance from the mean of all, mm, with its 95 % interval; spread at the right");
}

QString AnnualWords::outsideTitle() { return tr("Outside its band"); }
QString AnnualWords::outsideHint()
{
    return tr("Enter or a click: that reading in Trends. %1: the next one.").arg(keyOutside());
}

QString AnnualWords::questionsTitle() { return tr("Open questions"); }
QString AnnualWords::questionsHint() { return tr("Ctrl+6 shows and closes them."); }
QString AnnualWords::gaugesTitle() { return tr("Leaf sets and other gauges"); }
QString AnnualWords::changesTitle() { return tr("Fittings and what changed"); }
QString AnnualWords::tooFewTitle() { return tr("Too few readings"); }
QString AnnualWords::riggingsTitle() { return tr("Riggings"); }
QString AnnualWords::noGauge() { return tr("No gauge in use."); }
QString AnnualWords::stillOpen() { return tr("open"); }
QString AnnualWords::inDoubt() { return tr("in doubt"); }

QString AnnualWords::titleOf(const QString& title, const QString& state)
{
    return state.isEmpty() ? title : tr("%1 (%2)", "a story's title, its state").arg(title, state);
}

QString AnnualWords::spoken(AnnualColumn column, const QString& figure, const QString& beside)
{
    const QString name = heading(column).replace(QLatin1Char('\n'), QLatin1Char(' '));
    return beside.isEmpty() ? tr("%1: %2", "column, figure").arg(name, figure)
                            : tr("%1: %2, %3", "column, figure, interval").arg(name, figure, beside);
}

} // namespace rig
