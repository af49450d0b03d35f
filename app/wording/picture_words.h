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
    static QString noBandLegend();
    static QString noGapLegend();
    static QString partSeatedLegend();
    static QString neverShownLegend();
    static QString gapStrip(const GapStripView& view); // the strip as sentences
    static QString bandBar(const BandBarView& view);

    static QString millimetre();
    static QString signedMillimetres(double mm, int decimals = 2); // +0.02, 0.00, −0.02
    static QString spread(double mm);                              // 0.014
    static QString spreadHead();
    static QString standsOut();
    static QString readsLow();
    static QString readsHigh();
    static QString readings(int count);
    static QString offsets(const std::vector<OffsetRow>& rows);

private:
    static QString offset(const OffsetRow& row);
};

} // namespace rig
