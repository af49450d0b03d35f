#pragma once

#include "app/pictures/scale.h"
#include "app/pictures/trend.h"

#include <QFontMetricsF>

// The steps of laying out a trend, shared by its source files only.
namespace rig::trend {

// Where one reading stands on the chosen axis; millimetres. An open interval ends at `low`.
struct Spot
{
    double x = 0;
    double low = 0;
    double high = 0;
    Verdict verdict = Verdict::NoBandYet;
    bool isOpen = false;
    bool isPart = false;
    bool hollow = false;
    bool ofBaseline = false;
};

struct Range
{
    double from = 0;
    double to = 0;
    double width() const { return to - from; }
    bool contains(double value) const { return value >= from && value <= to; }
};

// In the order of the readings. Several at one rigging stand side by side.
std::vector<Spot> spotsOf(const TrendSeries& series, TrendAxis axis);
double along(TrendAxis axis, const Moment& when, double rigging);
std::optional<double> annualAlong(const TrendSeries& series, TrendAxis axis);
// What is shown when everything is.
TrendWindow wholeWindow(const TrendSeries& series, TrendAxis axis, const std::vector<Spot>& spots);
// The part of the axis each fitting holds, in their order.
std::vector<Range> fittingRanges(const TrendSeries& series, TrendAxis axis, const std::vector<Spot>& spots);
// From the lowest to the highest millimetre of the locked readings and bands; readings so far off that the
// rest would be squashed are left to an arrow at the edge.
Range lockedRange(const TrendSeries& series, const std::vector<Spot>& spots);
Range partRange(const std::vector<Spot>& spots);

// What all steps of one layout share.
struct Sheet
{
    const TrendSeries& series;
    const std::vector<Spot>& spots;
    std::vector<Range> fittings;
    QSizeF size;
    FontSizes fonts;
    QFontMetricsF small;
    QFontMetricsF strong;
    double line = 0; // height of a line of small text
    QRectF header{};
    int headerRows = 1;
    QRectF axis{}; // tick words
    QRectF name{}; // of the axis; null when there is no room
    int eventRows = 1;
};

Scale acrossOf(const TrendPicture& picture);
Scale upOf(const TrendPicture& picture);     // of the plot
Scale partUpOf(const TrendPicture& picture); // of the lane of part-seated readings

// The bar of a reading inside its lane, at least two pixels high even when it lies beyond the scale.
class BarPlaces
{
public:
    explicit BarPlaces(const TrendPicture& picture);
    QRectF of(const Spot& spot) const;
    bool shows(const Spot& spot) const { return m_across.contains(spot.x); }

private:
    Scale m_across;
    Scale m_up;
    Scale m_partUp;
    QRectF m_plot;
    QRectF m_partLane;
    double m_width;
};

double widthOf(const QString& text, const QFontMetricsF& metrics);
// No label of the picture is nearer than `apart` sideways, and no dashed upright runs through.
bool isFree(const QRectF& where, const TrendPicture& picture, double apart);
DrawnLabel smallLabel(const Sheet& sheet, const QRectF& where, const QString& text, Qt::Alignment align);

// No label, bar, mark or dashed line of the picture lies under it.
bool isClear(const QRectF& where, const TrendPicture& picture);
// The value beside a bar, on whichever side has room; no word when neither has.
void addValue(const Sheet& sheet, TrendPicture& picture, const Spot& spot, const QRectF& lane);

using Spots = std::vector<const Spot*>;
Spots visibleSpots(const Sheet& sheet, const TrendPicture& picture, bool part);
bool isDense(const Spots& spots, const QRectF& lane);
void addBars(TrendPicture& picture, const Spots& spots, const QRectF& lane);

void addGround(const Sheet& sheet, TrendPicture& picture);
void addAxes(const Sheet& sheet, TrendPicture& picture);
void addHeader(const Sheet& sheet, TrendPicture& picture);
void addEvents(const Sheet& sheet, TrendPicture& picture);
void addForecast(const Sheet& sheet, TrendPicture& picture);
void addReadings(const Sheet& sheet, TrendPicture& picture);
void addPartLane(const Sheet& sheet, TrendPicture& picture);

} // namespace rig::trend
