#pragma once

#include "app/theme/theme.h"
#include "core/baseline/band.h"
#include "core/clock.h"
#include "core/judgement/judgement.h"
#include "core/measure/gap_interval.h"
#include "core/rigging/reading.h"

#include <QPointF>
#include <QRectF>
#include <QString>

#include <optional>
#include <string>
#include <vector>

class QPainter;

namespace rig {

// One reading in a coupling's history, as facts and kinds; the layout words it.
struct TrendReading
{
    GapInterval interval;
    Moment when;
    double rigging = 0; // rigging number; readings between riggings stand at fractions
    Verdict verdict = Verdict::NoBandYet;
    SeatState state = SeatState::Locked;
    bool ofBaseline = false; // one of those the band is made of
    bool setAside = false;   // excluded or superseded: drawn hollow
    std::string person;
    std::string gauge;
    std::string note;
};

struct TrendFitting
{
    Moment begins;
    double rigging = 0;
    std::optional<Band> band; // also drawn beyond the fitting's end, faintly, when it is the first
    std::string reason;
};

struct TrendEvent
{
    Moment when;
    double rigging = 0;
    std::string what; // already worded by the presenter's caller
    bool isAnnual = false;
};

enum class TrendAxis { ByDate, ByRigging };

// One coupling's whole history, oldest first.
struct TrendSeries
{
    std::string name;
    std::vector<TrendReading> readings;
    std::vector<TrendFitting> fittings;
    std::vector<TrendEvent> events;
    std::optional<Moment> annualDue;
};

// Which part is looked at, in axis units: UTC seconds or rigging number. Equal ends: everything.
struct TrendWindow
{
    TrendAxis axis = TrendAxis::ByRigging;
    double from = 0;
    double to = 0;
    bool isWhole() const { return !(from < to); }
};

struct TrendBox
{
    QRectF where;
    Role role = Role::Band;
    bool hollow = false;
    double opacity = 1;
};

struct TrendLine
{
    QPointF from;
    QPointF to;
    Role role = Role::Grid;
    double width = 1;
    bool dashed = false;
};

struct TrendLabel
{
    QRectF where;
    QString text;
    Role role = Role::InkSoft;
    double pixels = 12;
    bool strong = false;
    Qt::Alignment align;
};

struct TrendPicture
{
    QRectF plot;
    TrendWindow window; // as drawn, never whole
    double mmAtBottom = 0;
    double mmAtTop = 1;
    std::vector<TrendBox> boxes;
    std::vector<TrendLine> lines;
    std::vector<TrendLabel> labels;
    QString inWords;
};

TrendPicture layoutTrend(const TrendSeries& series, const TrendWindow& window, QSizeF size,
                         const FontSizes& fonts);
void paint(QPainter& painter, const TrendPicture& picture, const Theme& theme);

// The reading nearest to a point of the picture, when one is near enough to be meant.
std::optional<std::size_t> readingAt(const TrendSeries& series, const TrendPicture& picture, QPointF point);

// Zooms about a place (0 left, 1 right of the plot) and pans by a share of the width; never beyond the
// readings by more than half a window, never narrower than what separates two readings.
TrendWindow zoomed(const TrendSeries& series, const TrendWindow& drawn, double factor, double about);
TrendWindow panned(const TrendSeries& series, const TrendWindow& drawn, double share);

// The last readings of a coupling as a small trend on its own band. All small trends of an airframe use the
// same millimetres per pixel rule.
TrendPicture layoutSmallTrend(const TrendSeries& series, std::size_t lastReadings, QSizeF size);

} // namespace rig
