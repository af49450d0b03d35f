#include "app/wording/picture_words.h"

#include "app/wording/formats.h"
#include "app/wording/verdict_words.h"

#include <QStringList>

#include <cmath>

namespace rig {

QString PictureWords::bandLegend(const Band& band)
{
    const QString edges = Formats{}.band(band.inner);
    return band.isThin() ? tr("this coupling’s thin band %1").arg(edges)
                         : tr("this coupling’s band %1").arg(edges);
}

QString PictureWords::noBandLegend() { return tr("no band yet"); }
QString PictureWords::noGapLegend() { return tr("no gap to measure"); }
QString PictureWords::partSeatedLegend() { return tr("part-seated was seen here"); }
QString PictureWords::neverShownLegend() { return tr("none noted as part-seated"); }

QString PictureWords::gapStrip(const GapStripView& view)
{
    const Formats formats;
    QStringList sentences;
    sentences << (view.band ? tr("Band %1.").arg(formats.band(view.band->inner)) : tr("No band yet."));
    if (view.reading && view.verdict)
        sentences
            << tr("Reading %1: %2.").arg(formats.interval(*view.reading), VerdictWords::word(*view.verdict));
    else if (view.reading)
        sentences << tr("Reading %1.").arg(formats.interval(*view.reading));
    QStringList shown;
    for (const GapInterval& one : view.partSeated)
        shown << formats.interval(one);
    sentences << (shown.isEmpty()
                      ? tr("No reading was noted as part-seated.")
                      : tr("Part-seated was seen at %1.").arg(shown.join(tr(", ", "between values"))));
    return sentences.join(QLatin1Char(' '));
}

QString PictureWords::bandBar(const BandBarView& view)
{
    if (!view.hasGap)
        return tr("No gap to measure.");
    const Formats formats;
    QStringList sentences;
    sentences << (view.band ? tr("Band %1.").arg(formats.band(view.band->inner)) : tr("No band yet."));
    if (view.reading && view.verdict)
        sentences << tr("Latest reading %1: %2.")
                         .arg(formats.interval(*view.reading), VerdictWords::word(*view.verdict));
    else if (view.reading)
        sentences << tr("Latest reading %1.").arg(formats.interval(*view.reading));
    else
        sentences << tr("No reading yet.");
    return sentences.join(QLatin1Char(' '));
}

QString PictureWords::millimetre() { return tr("mm"); }

QString PictureWords::signedMillimetres(double mm, int decimals)
{
    const QString amount = Formats{}.number(std::abs(mm), decimals);
    if (std::abs(mm) < 0.5 * std::pow(10.0, -decimals)) // shown as zero, which has no sign
        return amount;
    return mm > 0 ? tr("+%1", "a gap that is larger").arg(amount)
                  : tr("−%1", "a gap that is smaller").arg(amount);
}

QString PictureWords::spread(double mm) { return Formats{}.number(mm, 3); }
QString PictureWords::spreadHead() { return tr("spread, mm", "of one person’s repeated readings"); }
QString PictureWords::standsOut() { return tr("stands out"); }
QString PictureWords::readsLow() { return tr("← reads low"); }
QString PictureWords::readsHigh() { return tr("reads high →"); }
QString PictureWords::readings(int count) { return tr("%n reading(s)", nullptr, count); }

QString PictureWords::offset(const OffsetRow& row)
{
    const QString name = QString::fromStdString(row.name);
    if (!row.offset)
        return tr("%1: %2.", "person or gauge, why there is no figure")
            .arg(name, QString::fromStdString(row.instead));
    QStringList parts;
    parts << tr("%1 mm", "signed").arg(signedMillimetres(*row.offset, 3));
    if (row.lower && row.upper)
        parts << tr("interval %1 to %2 mm")
                     .arg(signedMillimetres(*row.lower, 3), signedMillimetres(*row.upper, 3));
    if (row.spread)
        parts << tr("spread %1 mm").arg(spread(*row.spread));
    if (row.readings > 0)
        parts << readings(row.readings);
    if (row.standsOut)
        parts << standsOut();
    return tr("%1: %2.", "person or gauge, list of figures")
        .arg(name, parts.join(tr(", ", "between parts of a list")));
}

QString PictureWords::offsets(const std::vector<OffsetRow>& rows)
{
    if (rows.empty())
        return tr("Nothing to compare yet.");
    QStringList sentences;
    sentences << tr("Distance from the mean of all.");
    for (const OffsetRow& row : rows)
        sentences << offset(row);
    return sentences.join(QLatin1Char(' '));
}

} // namespace rig
