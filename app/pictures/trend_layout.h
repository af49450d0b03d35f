#pragma once

#include "app/pictures/scale.h"
#include "app/pictures/trend_index.h"

#include <QFontMetricsF>

#include <span>

// The steps of laying out a trend, shared by its source files only.
namespace rig::trend {

std::optional<double> annualAlong(const TrendSeries& series, TrendAxis axis);

// What all steps of one layout share.
struct Sheet
{
    const TrendSeries& series;
    const TrendIndex& index;
    const std::vector<Spot>& spots;
    const std::vector<Range>& fittings;
    QSizeF size;
    FontSizes fonts;
    QFontMetricsF small;
    QFontMetricsF strong;
    double line = 0; // height of a line of small text
    QRectF header{};
    int headerRows = 1;
    QRectF notes{}; // null when there are none
    QRectF axis{};  // tick words
    QRectF name{};  // of the axis; null when there is no room
    int eventRows = 1;
};

// Of readings between two places of the axis, from left to right.
std::span<const std::uint32_t> spotsBetween(const TrendIndex& index, double from, double to);

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

// No label, bar, mark, fan or dashed line of the picture lies under it.
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
void addNotes(const Sheet& sheet, TrendPicture& picture);
void addFirstBandName(const Sheet& sheet, TrendPicture& picture);
void addPartLane(const Sheet& sheet, TrendPicture& picture);

} // namespace rig::trend
