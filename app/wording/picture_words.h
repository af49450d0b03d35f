#pragma once

#include "core/views/band_bar_view.h"
#include "core/views/gap_strip_view.h"
#include "core/views/offset_row.h"

#include <QCoreApplication>
#include <QString>

#include <vector>

namespace rig {

// Words in and about the pictures.
class PictureWords
{
    Q_DECLARE_TR_FUNCTIONS(PictureWords)

public:
    static QString bandLegend(const Band& band);
    static QString noBandLegend() { return tr("no band yet"); }
    static QString partSeatedLegend() { return tr("part-seated was seen here"); }
    static QString neverShownLegend() { return tr("part-seated never shown"); }
    static QString gapStrip(const GapStripView& view); // the strip as sentences
    static QString bandBar(const BandBarView& view);

    static QString millimetre() { return tr("mm"); }
    static QString signedMillimetres(double mm, int decimals = 2); // +0.02, 0.00, −0.02
    static QString spread(double mm);                              // 0.014
    static QString spreadHead() { return tr("spread, mm", "of one person’s repeated readings"); }
    static QString standsOut() { return tr("stands out"); }
    static QString readsLow() { return tr("← reads low"); }
    static QString readsHigh() { return tr("reads high →"); }
    static QString readings(int count) { return tr("%n reading(s)", nullptr, count); }
    static QString offsets(const std::vector<OffsetRow>& rows);

private:
    static QString offset(const OffsetRow& row);
};

} // namespace rig
