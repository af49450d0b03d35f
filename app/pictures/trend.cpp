#include "app/pictures/trend.h"

#include "app/pictures/trend_layout.h"
#include "app/wording/trend_words.h"

#include <algorithm>
#include <cmath>

namespace rig {

namespace trend {

namespace {

constexpr double kEdge = 4;

struct Rows
{
    int header = 1;
    int events = 0;
    bool name = false;
    int notes = 0;   // where a drift began, where the mean made a step
    double part = 0; // height of the lane of part-seated readings, without its caption
};

// Fewer rows on a low picture: what is left belongs to the plot.
Rows rowsFor(const TrendSeries& series, const TrendWindow& window, bool hasPart, double height, double line,
             double scale)
{
    Rows rows;
    const std::size_t named = (annualAlong(series, window.axis) ? 1 : 0) + (series.period ? 1 : 0) +
                              std::max<std::size_t>(series.fittings.size(), 1) - 1;
    rows.header = named > 1 && height >= 340 * scale ? 2 : 1;
    if (!series.events.empty())
        rows.events = height >= 400 * scale ? 2 : 1;
    rows.notes = (series.onset ? 1 : 0) + (series.change ? 1 : 0) + (series.either ? 1 : 0);
    rows.name = window.axis == TrendAxis::ByRigging && height >= 320 * scale;
    if (hasPart)
        rows.part = height >= 340 * scale ? 3.2 * line : 1.4 * line;
    return rows;
}

double leftMargin(const Sheet& sheet, const TrendPicture& picture)
{
    double widest = std::max(widthOf(TrendWords::unit(), sheet.small),
                             sheet.series.events.empty() ? 0 : widthOf(TrendWords::events(), sheet.small));
    for (const double mm : {picture.mmAtBottom, picture.mmAtTop, picture.partMmAtBottom, picture.partMmAtTop})
        widest = std::max(widest, widthOf(TrendWords::millimetreTick(mm), sheet.small));
    return kEdge + widest + 9;
}

// From top to bottom: header, lane of part-seated readings when they are wider than locked ones, plot, notes,
// that lane when they are narrower, tick words, name of the axis, events.
void divide(Sheet& sheet, TrendPicture& picture, const Rows& rows)
{
    const double left = leftMargin(sheet, picture);
    const double right = sheet.size.width() - 12 * sheet.fonts.scale;
    const auto across = [left, right](double top, double height) {
        return QRectF{left, top, right - left, height};
    };
    const double row = sheet.line + 2;
    sheet.headerRows = rows.header;
    sheet.eventRows = rows.events;
    sheet.header = across(kEdge, rows.header * row + 4);
    double bottom = sheet.size.height() - kEdge;
    const auto takeBottom = [&bottom, &across](double height) {
        bottom -= height;
        return across(bottom, height);
    };
    if (rows.events > 0)
        picture.eventLane = takeBottom(rows.events * row + 9);
    if (rows.name)
        sheet.name = takeBottom(row);
    sheet.axis = takeBottom(row + 7);
    double top = sheet.header.bottom();
    if (rows.part > 0) {
        const bool above = sheet.index.partAbove;
        const double whole = row + rows.part + 8;
        picture.partLane = across(above ? top + row : bottom - rows.part, rows.part);
        (above ? top : bottom) += above ? whole : -whole;
    }
    if (rows.notes > 0)
        sheet.notes = takeBottom(rows.notes * sheet.line + 2);
    picture.plot = across(top, std::max(10.0, bottom - top));
}

TrendPicture sentenceOnly(const QString& sentence, QSizeF size, const FontSizes& fonts)
{
    TrendPicture picture;
    picture.plot = QRectF{QPointF{}, size};
    picture.inWords = sentence;
    DrawnLabel label;
    label.where = picture.plot.adjusted(kEdge, kEdge, -kEdge, -kEdge);
    label.text = sentence;
    label.pixels = fonts.body();
    label.align = Qt::AlignCenter;
    label.wrapped = true;
    picture.labels.push_back(label);
    return picture;
}

} // namespace

std::span<const std::uint32_t> spotsBetween(const TrendIndex& index, double from, double to)
{
    const auto begin =
        std::partition_point(index.byPlace.begin(), index.byPlace.end(),
                             [&index, from](std::uint32_t i) { return index.spots[i].x < from; });
    const auto end = std::partition_point(begin, index.byPlace.end(),
                                          [&index, to](std::uint32_t i) { return index.spots[i].x <= to; });
    return {begin, end};
}

Scale acrossOf(const TrendPicture& picture)
{
    const ScaleKind kind = picture.window.axis == TrendAxis::ByDate ? ScaleKind::Dates : ScaleKind::Riggings;
    return {kind, picture.window.from, picture.window.to, picture.plot.left(), picture.plot.right()};
}

Scale upOf(const TrendPicture& picture)
{
    return {ScaleKind::Millimetres, picture.mmAtBottom, picture.mmAtTop, picture.plot.bottom(),
            picture.plot.top()};
}

Scale partUpOf(const TrendPicture& picture)
{
    return {ScaleKind::Millimetres, picture.partMmAtBottom, picture.partMmAtTop, picture.partLane.bottom(),
            picture.partLane.top()};
}

double widthOf(const QString& text, const QFontMetricsF& metrics)
{
    return std::ceil(metrics.horizontalAdvance(text)) + 1;
}

bool isFree(const QRectF& where, const TrendPicture& picture, double apart)
{
    const QRectF wide = where.adjusted(-apart, 0, apart, 0);
    const auto crosses = [&wide](const DrawnLine& line) {
        return line.dashed && line.from.x() == line.to.x() && line.from.x() > wide.left() &&
               line.from.x() < wide.right() && line.from.y() < wide.bottom() && line.to.y() > wide.top();
    };
    return std::none_of(picture.labels.begin(), picture.labels.end(),
                        [&wide](const DrawnLabel& label) { return label.where.intersects(wide); }) &&
           std::none_of(picture.lines.begin(), picture.lines.end(), crosses);
}

bool isClear(const QRectF& where, const TrendPicture& picture)
{
    const auto hits = [&where](const auto& shape) { return shape.where.intersects(where); };
    const auto underlines = [&where](const DrawnLine& line) {
        return line.dashed && line.from.y() == line.to.y() && line.from.y() > where.top() &&
               line.from.y() < where.bottom() && line.from.x() < where.right() && line.to.x() > where.left();
    };
    const auto covers = [&where](const DrawnArea& area) { return area.outline.intersects(QPolygonF{where}); };
    return isFree(where, picture, 2) && std::none_of(picture.areas.begin(), picture.areas.end(), covers) &&
           std::none_of(picture.bars.begin(), picture.bars.end(), hits) &&
           std::none_of(picture.marks.begin(), picture.marks.end(), hits) &&
           std::none_of(picture.lines.begin(), picture.lines.end(), underlines);
}

void addValue(const Sheet& sheet, TrendPicture& picture, const Spot& spot, const QRectF& lane)
{
    const auto index = static_cast<std::size_t>(&spot - sheet.spots.data());
    const QString text = TrendWords::gap(sheet.series.readings[index].interval);
    const QRectF bar = BarPlaces{picture}.of(spot);
    const double width = widthOf(text, sheet.small);
    const double y = std::clamp(bar.center().y() - sheet.line / 2, lane.top(),
                                std::max(lane.top(), lane.bottom() - sheet.line));
    for (const double left : {bar.right() + 4, bar.left() - 4 - width}) {
        const QRectF where{left, y, width, sheet.line};
        if (left < lane.left() || where.right() > lane.right() || !isClear(where, picture))
            continue;
        picture.labels.push_back(smallLabel(sheet, where, text, Qt::AlignLeft));
        return;
    }
}

DrawnLabel smallLabel(const Sheet& sheet, const QRectF& where, const QString& text, Qt::Alignment align)
{
    DrawnLabel label;
    label.where = where;
    label.text = text;
    label.pixels = sheet.fonts.small();
    label.align = align | Qt::AlignVCenter;
    return label;
}

} // namespace trend

TrendPicture layoutTrend(const TrendSeries& series, const TrendWindow& window, QSizeF size,
                         const FontSizes& fonts)
{
    return layoutTrend(series, indexOf(series, window.axis), window, size, fonts);
}

TrendPicture layoutTrend(const TrendSeries& series, const TrendIndex& index, const TrendWindow& window,
                         QSizeF size, const FontSizes& fonts)
{
    if (series.readings.empty())
        return trend::sentenceOnly(TrendWords::nothingYet(), size, fonts);
    TrendPicture picture;
    picture.inWords = index.inWords;
    picture.window = window.isWhole() ? index.reach.whole : window;
    picture.mmAtBottom = index.locked.from;
    picture.mmAtTop = index.locked.to;
    picture.partMmAtBottom = index.part.from;
    picture.partMmAtTop = index.part.to;
    trend::Sheet sheet{series,
                       index,
                       index.spots,
                       index.fittings,
                       size,
                       fonts,
                       QFontMetricsF{fontOf(fonts.small())},
                       QFontMetricsF{fontOf(fonts.small(), Weight::SemiBold)}};
    sheet.line = std::ceil(sheet.small.height());
    trend::divide(
        sheet, picture,
        trend::rowsFor(series, picture.window, index.hasPart, size.height(), sheet.line, fonts.scale));
    trend::addGround(sheet, picture);
    trend::addAxes(sheet, picture);
    trend::addNotes(sheet, picture);
    trend::addHeader(sheet, picture);
    trend::addForecast(sheet, picture);
    trend::addReadings(sheet, picture);
    trend::addFirstBandName(sheet, picture);
    trend::addPartLane(sheet, picture);
    trend::addEvents(sheet, picture);
    return picture;
}

namespace {

double distance(const QRectF& box, QPointF point)
{
    const double x = std::max({box.left() - point.x(), 0.0, point.x() - box.right()});
    const double y = std::max({box.top() - point.y(), 0.0, point.y() - box.bottom()});
    return std::hypot(x, y);
}

} // namespace

std::optional<std::size_t> readingAt(const TrendIndex& index, const TrendPicture& picture, QPointF point)
{
    constexpr double kNear = 12; // pixels: a cursor's own width
    const Scale across = trend::acrossOf(picture);
    const double reach = kNear + picture.barWidth;
    std::optional<std::size_t> nearest;
    double least = kNear;
    const trend::BarPlaces places{picture};
    const auto near =
        trend::spotsBetween(index, across.valueAt(point.x() - reach), across.valueAt(point.x() + reach));
    for (const std::uint32_t i : near) {
        const trend::Spot& spot = index.spots[i];
        if (!places.shows(spot))
            continue;
        // Of two under the cursor, the one whose middle is nearer.
        const QRectF bar = places.of(spot);
        const double far = distance(bar, point) + std::abs(bar.center().x() - point.x()) * 0.01;
        if (far < least) {
            least = far;
            nearest = i;
        }
    }
    return nearest;
}

std::optional<std::size_t> eventAt(const TrendSeries& series, const TrendPicture& picture, QPointF point)
{
    constexpr double kNear = 6;
    std::optional<std::size_t> nearest;
    if (!picture.eventLane.contains(point))
        return nearest;
    const Scale across = trend::acrossOf(picture);
    double least = kNear;
    for (std::size_t i = 0; i < series.events.size(); ++i) {
        const TrendEvent& event = series.events[i];
        const double x = across.at(along(picture.window.axis, event.when, event.rigging));
        if (const double far = std::abs(x - point.x()); far < least) {
            least = far;
            nearest = i;
        }
    }
    return nearest;
}

std::optional<QRectF> placeOf(const TrendIndex& index, const TrendPicture& picture, std::size_t reading)
{
    const trend::BarPlaces places{picture};
    if (reading >= index.spots.size() || !places.shows(index.spots[reading]))
        return std::nullopt;
    return places.of(index.spots[reading]);
}

} // namespace rig
