#pragma once

#include "core/review/review_period.h"

#include <QCoreApplication>
#include <QString>

namespace rig {

// The choice of the days that are looked back on, the same on every page.
class PeriodWords
{
    Q_DECLARE_TR_FUNCTIONS(PeriodWords)

public:
    static QString key();
    static QString label();
    static QString name(); // read aloud

    // `coupling` is the name of the one whose fitting it is.
    static QString choice(const PeriodOffer& offer, const QString& coupling);
    static QString otherDays();
    static QString otherCount();

    // Any days
    static QString from();
    static QString to();
    static QString show();
    static QString dayAhead();
    static QString reversed();

    // Any number of last riggings
    static QString count();
    static QString countHint();
    static QString showCount();
    static QString countUnread(const QString& typed);

private:
    static QString byAnnual(const ReviewPeriod& period);
};

} // namespace rig
