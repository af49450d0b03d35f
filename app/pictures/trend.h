#pragma once

#include "app/pictures/drawing.h"
#include "app/pictures/trend_window.h"
#include "app/theme/theme.h"
#include "core/airframe/ids.h"
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
    std::optional<CouplingId> coupling; // the same again is the same coupling, read anew
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

struct TrendIndex; // app/pictures/trend_index.h

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

// The index is that of the series and the window's axis.
TrendPicture layoutTrend(const TrendSeries& series, const TrendIndex& index, const TrendWindow& window,
                         QSizeF size, const FontSizes& fonts);
// The same for a picture that nobody looks around in.
TrendPicture layoutTrend(const TrendSeries& series, const TrendWindow& window, QSizeF size,
                         const FontSizes& fonts);

// The reading nearest to a point of the picture, when one is near enough to be meant.
std::optional<std::size_t> readingAt(const TrendIndex& index, const TrendPicture& picture, QPointF point);
// The event whose tick in the event lane is nearest to a point of that lane.
std::optional<std::size_t> eventAt(const TrendSeries& series, const TrendPicture& picture, QPointF point);
// Where that reading is drawn; nothing when it lies outside the window.
std::optional<QRectF> placeOf(const TrendIndex& index, const TrendPicture& picture, std::size_t reading);

// The last readings of a coupling as a small trend on its own band. All small trends of an airframe use the
// same millimetres per pixel rule.
TrendPicture layoutSmallTrend(const TrendSeries& series, std::size_t lastReadings, QSizeF size);

} // namespace rig
