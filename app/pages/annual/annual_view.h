#pragma once

#include "app/pictures/aircraft.h"
#include "app/pictures/band_bar.h"
#include "app/pictures/marks.h"
#include "app/pictures/offsets.h"
#include "core/review/review_period.h"
#include "core/review/says.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

namespace rig {

// A figure of the table, or why there is none.
struct AnnualFigure
{
    QString figure; // empty: cannot be known
    QString beside; // its interval, or what it was before
    QString instead;
    std::optional<double> sortedBy;
    bool standsOut = false;
};

// One coupling of the ranked table.
struct AnnualRow
{
    CouplingId coupling;
    QString name;
    Says says = Says::NotRead;
    QString saysInWords; // with the reading
    BandBarView bar;
    QString noBand;         // in place of the bar
    AnnualFigure moved;     // what, how far and since when
    AnnualFigure excursion; // the farthest from the band's middle
    AnnualFigure scatter;
    AnnualFigure chance;
    int openQuestions = 0;
    QStringList signs;      // gravest first
    QStringList signsShown; // the same, with a mark for what is told once below the table
    bool isGrave = false;
};

// Something that stands out: one sentence, and its figures.
struct AnnualHeadline
{
    CouplingId coupling;
    MarkShape shape = MarkShape::Triangle;
    Role role = Role::NearEdge;
    QString sentence;
    QString figures;
};

// A small story under its title, or one line without.
struct AnnualStory
{
    QString title;
    QString text;
    std::optional<MarkShape> shape;
    Role role = Role::InkSoft;
    QString state;                           // "open", "in doubt": told beside the title
    std::optional<CouplingId> coupling = {}; // it leads there in Trends
    std::optional<ReadingId> reading = {};   // and to this reading of it
    std::optional<Day> day = {};             // of that reading
};

struct AnnualView
{
    QString title;
    QString counted;
    std::vector<PeriodOffer> offers; // never empty
    PeriodOffer chosen;

    std::vector<AnnualHeadline> headlines; // gravest first; the most there is room for
    int moreHeadlines = 0;
    QString nothingGrave; // when there are none
    std::vector<AnnualRow> rows;
    QString neverSeen; // what is told once of many rows; empty where each says it itself

    std::vector<ShiftDay> shifts;
    QStringList shiftSentences;
    std::vector<OffsetRow> persons;
    QStringList personSentences;
    std::vector<OffsetRow> gauges;
    QStringList gaugeSentences;

    std::vector<AnnualStory> outside; // open ones first, then what nothing explains, the farthest first
    std::vector<AnnualStory> questions;
    std::vector<AnnualStory> gaugeStories;
    std::vector<AnnualStory> changes;
    std::vector<AnnualStory> tooFew;
    QStringList riggings;

    const ReviewPeriod& period() const { return chosen.period; }
};

} // namespace rig
