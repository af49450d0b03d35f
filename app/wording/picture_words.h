#pragma once

#include "app/pictures/gap_strip.h"

#include <QCoreApplication>
#include <QString>

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
};

} // namespace rig
