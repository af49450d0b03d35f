#include "app/pictures/trend_layout.h"
#include "app/wording/trend_words.h"

#include <QLineF>

#include <algorithm>

namespace rig::trend {

namespace {

struct EventPlace
{
    const TrendEvent* event = nullptr;
    double x = 0;
};

// Annuals first, then the newest: what most wants a word gets it.
std::vector<EventPlace> placesOf(const Sheet& sheet, const TrendPicture& picture)
{
    const Scale across = acrossOf(picture);
    std::vector<EventPlace> places;
    for (const TrendEvent& event : sheet.series.events) {
        const double value = along(picture.window.axis, event.when, event.rigging);
        if (across.contains(value))
            places.push_back({&event, across.at(value)});
    }
    std::stable_sort(places.begin(), places.end(), [](const EventPlace& a, const EventPlace& b) {
        if (a.event->isAnnual != b.event->isAnnual)
            return a.event->isAnnual;
        return b.event->when < a.event->when;
    });
    return places;
}

bool placeWords(const Sheet& sheet, TrendPicture& picture, const EventPlace& place,
                std::vector<QRectF>& taken)
{
    const QString text = TrendWords::event(*place.event);
    const double width = widthOf(text, sheet.small);
    const double first = sheet.events.top() + 7;
    for (int row = 0; row < sheet.eventRows; ++row) {
        const double top = first + row * (sheet.line + 2);
        const QRectF stem{place.x - 2, sheet.events.top(), 4, top - sheet.events.top()};
        for (const double wanted : {place.x - width / 2, place.x - 4, place.x + 4 - width}) {
            const double left = std::clamp(wanted, sheet.events.left(),
                                           std::max(sheet.events.left(), sheet.events.right() - width));
            const QRectF where{left, top, width, sheet.line};
            const auto hits = [&where, &stem](const QRectF& other) {
                return other.intersects(where.adjusted(-7, 0, 7, 0)) || other.intersects(stem);
            };
            if (where.right() > sheet.size.width() - 4 || std::any_of(taken.begin(), taken.end(), hits))
                continue;
            taken.push_back(where);
            if (row > 0) {
                taken.push_back(stem);
                picture.lines.push_back(
                    {{place.x, sheet.events.top()}, {place.x, top}, Role::Line, 1, false});
            }
            picture.labels.push_back(smallLabel(sheet, where, text, Qt::AlignLeft));
            return true;
        }
    }
    return false;
}

QPolygonF inside(const QPolygonF& polygon, const QRectF& plot)
{
    return polygon.intersected(QPolygonF{plot});
}

} // namespace

void addEvents(const Sheet& sheet, TrendPicture& picture)
{
    if (sheet.events.isNull())
        return;
    const QRectF& lane = sheet.events;
    picture.lines.push_back({{lane.left(), lane.top()}, {lane.right(), lane.top()}, Role::Line, 1, false});
    const QRectF name{2, lane.top() + 7, lane.left() - 9, sheet.line};
    picture.labels.push_back(smallLabel(sheet, name, TrendWords::events(), Qt::AlignRight));
    std::vector<QRectF> taken{name};
    double lastTick = -1;
    for (const EventPlace& place : placesOf(sheet, picture)) {
        placeWords(sheet, picture, place, taken);
        if (std::abs(place.x - lastTick) < 0.5)
            continue;
        lastTick = place.x;
        picture.lines.push_back(
            {{place.x, lane.top()}, {place.x, lane.top() + 6}, Role::InkSoft, 1.6, false});
    }
}

namespace {

QPointF pointOf(const TrendPicture& picture, const TrendPoint& point, double mm)
{
    return {acrossOf(picture).at(along(picture.window.axis, point.when, point.rigging)),
            upOf(picture).at(mm)};
}

// The part of a line inside the plot; nothing when it runs past.
std::optional<QLineF> within(const QRectF& plot, QPointF from, QPointF to)
{
    double begin = 0;
    double end = 1;
    const QPointF by = to - from;
    const auto cut = [&begin, &end](double speed, double room) { // speed * t <= room
        if (speed == 0)
            return room >= 0;
        if (speed > 0)
            end = std::min(end, room / speed);
        else
            begin = std::max(begin, room / speed);
        return begin < end;
    };
    const bool shows = cut(-by.x(), from.x() - plot.left()) && cut(by.x(), plot.right() - from.x()) &&
                       cut(-by.y(), from.y() - plot.top()) && cut(by.y(), plot.bottom() - from.y());
    if (!shows)
        return std::nullopt;
    return QLineF{from + begin * by, from + end * by};
}

void addPath(TrendPicture& picture, const std::vector<TrendPoint>& points, bool dashed)
{
    for (std::size_t i = 1; i < points.size(); ++i) {
        const auto line = within(picture.plot, pointOf(picture, points[i - 1], points[i - 1].middle),
                                 pointOf(picture, points[i], points[i].middle));
        if (line)
            picture.linesOver.push_back({line->p1(), line->p2(), Role::Accent, 2, dashed});
    }
}

} // namespace

void addForecast(const Sheet& sheet, TrendPicture& picture)
{
    const std::vector<TrendPoint>& forecast = sheet.series.forecast;
    if (forecast.size() > 1) {
        QPolygonF fan;
        for (const TrendPoint& point : forecast)
            fan << pointOf(picture, point, point.upper);
        for (auto point = forecast.rbegin(); point != forecast.rend(); ++point)
            fan << pointOf(picture, *point, point->lower);
        const QPolygonF shown = inside(fan, picture.plot);
        if (!shown.isEmpty())
            picture.areas.push_back({shown, Role::Accent, 0.16});
    }
    addPath(picture, sheet.series.drift, false);
    addPath(picture, forecast, true);
}

} // namespace rig::trend
