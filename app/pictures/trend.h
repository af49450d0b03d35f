#pragma once

#include "app/pictures/drawing.h"
#include "app/theme/theme.h"
#include "core/baseline/band.h"
#include "core/clock.h"
#include "core/judgement/judgement.h"
#include "core/measure/gap_interval.h"
#include "core/rigging/reading.h"

#include <QRectF>
#include <QString>

#include <optional>
#include <string>
#include <vector>

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
    bool inDoubt = false;    // its gauge was in quarantine that day: drawn hollow; `note` says why
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

// One place on a fitted line or a forecast, on both axes.
struct TrendPoint
{
    Moment when;
    double rigging = 0;
    double lower = 0; // of its interval, mm; the same as middle where there is none
    double middle = 0;
    double upper = 0;
};

// Where something that the numbers tell begins, on both axes.
struct TrendPlace
{
    Moment when;
    double rigging = 0;
};

// One coupling's whole history, oldest first.
struct TrendSeries
{
    std::string name;
    std::vector<TrendReading> readings;
    std::vector<TrendFitting> fittings;
    std::vector<TrendEvent> events;
    std::vector<TrendPoint> drift;    // fitted line, oldest first
    std::vector<TrendPoint> forecast; // goes on from the line, with its interval
    std::optional<TrendPlace> onset;  // of the drift
    std::optional<TrendPlace> change; // the mean made a step here
    std::optional<Moment> annualDue;
    std::optional<double> annualRigging; // riggings expected by then; without it only dates show the annual
};

// Which part is looked at, in axis units: UTC seconds or rigging number. Equal ends: everything.
struct TrendWindow
{
    TrendAxis axis = TrendAxis::ByRigging;
    double from = 0;
    double to = 0;
    bool isWhole() const { return !(from < to); }
};

struct TrendPicture : Drawing
{
    QRectF plot;
    QRectF eventLane;   // null when there are none
    QRectF partLane;    // of part-seated readings, on a scale of their own; null when there are none
    TrendWindow window; // as drawn, never whole
    double mmAtBottom = 0;
    double mmAtTop = 1;
    double partMmAtBottom = 0;
    double partMmAtTop = 1;
    double barWidth = 3; // of a reading
};

TrendPicture layoutTrend(const TrendSeries& series, const TrendWindow& window, QSizeF size,
                         const FontSizes& fonts);

// The reading nearest to a point of the picture, when one is near enough to be meant.
std::optional<std::size_t> readingAt(const TrendSeries& series, const TrendPicture& picture, QPointF point);
// The event whose tick in the event lane is nearest to a point of that lane.
std::optional<std::size_t> eventAt(const TrendSeries& series, const TrendPicture& picture, QPointF point);
// Where that reading is drawn; nothing when it lies outside the window.
std::optional<QRectF> placeOf(const TrendSeries& series, const TrendPicture& picture, std::size_t reading);

// Zooms about a place (0 left, 1 right of the plot) and pans by a share of the width. Neither goes more than
// half a window beyond the readings, unless everything there is to show (an annual to come) reaches further;
// nor does a window get narrower than what separates two readings.
TrendWindow zoomed(const TrendSeries& series, const TrendWindow& drawn, double factor, double about);
TrendWindow panned(const TrendSeries& series, const TrendWindow& drawn, double share);

// The last readings of a coupling as a small trend on its own band. All small trends of an airframe use the
// same millimetres per pixel rule.
TrendPicture layoutSmallTrend(const TrendSeries& series, std::size_t lastReadings, QSizeF size);

} // namespace rig
