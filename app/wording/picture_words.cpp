#include "app/wording/picture_words.h"

#include "app/wording/formats.h"
#include "app/wording/verdict_words.h"

namespace rig {

QString PictureWords::bandLegend(const Band& band)
{
    const QString edges = Formats{}.band(band.inner);
    return band.isThin() ? tr("this coupling’s thin band %1").arg(edges)
                         : tr("this coupling’s band %1").arg(edges);
}

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
                      ? tr("Part-seated was never shown.")
                      : tr("Part-seated was seen at %1.").arg(shown.join(tr(", ", "between values"))));
    return sentences.join(QLatin1Char(' '));
}

} // namespace rig
