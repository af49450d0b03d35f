#include "app/pictures/trend_layout.h"
#include "app/wording/trend_words.h"

#include <QLineF>

#include <algorithm>
#include <cmath>

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
        const bool isAnnual = a.event->kind == EventKind::Annual;
        if (isAnnual != (b.event->kind == EventKind::Annual))
            return isAnnual;
        return b.event->when < a.event->when;
    });
    return places;
}

// Places words one by one in the rows of the lane, and remembers what is taken.
class EventWords
{
public:
    EventWords(const Sheet& sheet, TrendPicture& picture, const std::vector<EventPlace>& places)
        : m_sheet{sheet}, m_picture{picture}, m_places{places}
    {
    }

    bool add(const EventPlace& place, const QString& text)
    {
        for (int row = 0; row < m_sheet.eventRows; ++row) {
            if (isTaken(place.x, row)) // before it is measured, which takes long
                continue;
            if (const auto where = bestPlace(place, widthOf(text, m_sheet.small), row)) {
                m_taken.push_back(*where);
                if (row > 0)
                    addStem(place.x, where->top());
                m_picture.labels.push_back(smallLabel(m_sheet, *where, text, Qt::AlignLeft));
                return true;
            }
        }
        return false;
    }

private:
    double topOf(int row) const { return m_picture.eventLane.top() + 7 + row * (m_sheet.line + 2); }

    // Any word of a tick stands at it, unless an end of the lane pushes it away.
    bool isTaken(double x, int row) const
    {
        const QRectF& lane = m_picture.eventLane;
        const double at = std::clamp(x, lane.left() + 4, lane.right() - 1);
        const QRectF where{at - 0.5, topOf(row), 1, m_sheet.line};
        return std::any_of(m_taken.begin(), m_taken.end(),
                           [&where](const QRectF& other) { return other.intersects(where); });
    }

    QRectF stemOf(double x, double bottom) const
    {
        return {QPointF{x - 3, m_picture.eventLane.top()}, QPointF{x + 3, bottom}};
    }

    void addStem(double x, double bottom)
    {
        m_taken.push_back(stemOf(x, bottom));
        m_picture.lines.push_back({{x, m_picture.eventLane.top()}, {x, bottom}, Role::Line, 1, false});
    }

    // Right of its tick, left of it or around it: where it covers the fewest ticks of others.
    std::optional<QRectF> bestPlace(const EventPlace& place, double width, int row) const
    {
        const QRectF& lane = m_picture.eventLane;
        const double top = topOf(row);
        std::optional<QRectF> best;
        std::ptrdiff_t fewest = 0;
        for (const double left : {place.x - 3, place.x + 3 - width, place.x - width / 2}) {
            const QRectF where{
                std::clamp(left, lane.left() + 4, std::max(lane.left() + 4, lane.right() - width)), top,
                width, m_sheet.line};
            if (where.right() > lane.right() || !isFreeInLane(where, stemOf(place.x, top), row))
                continue;
            const auto covered =
                std::count_if(m_places.begin(), m_places.end(), [&where](const EventPlace& other) {
                    return other.x > where.left() + 3 && other.x < where.right() - 3;
                });
            if (best && covered >= fewest)
                continue;
            best = where;
            fewest = covered;
        }
        return best;
    }

    bool isFreeInLane(const QRectF& where, const QRectF& stem, int row) const
    {
        return std::none_of(m_taken.begin(), m_taken.end(), [&where, &stem, row](const QRectF& other) {
            return other.intersects(where.adjusted(-7, 0, 7, 0)) || (row > 0 && other.intersects(stem));
        });
    }

    const Sheet& m_sheet;
    TrendPicture& m_picture;
    const std::vector<EventPlace>& m_places;
    std::vector<QRectF> m_taken;
};

void addEventTicks(TrendPicture& picture, const std::vector<EventPlace>& places)
{
    const double top = picture.eventLane.top();
    std::vector<double> ticks;
    for (const EventPlace& place : places)
        ticks.push_back(std::round(place.x * 2) / 2);
    std::sort(ticks.begin(), ticks.end());
    ticks.erase(std::unique(ticks.begin(), ticks.end()), ticks.end());
    for (const double x : ticks)
        picture.lines.push_back({{x, top}, {x, top + 6}, Role::InkSoft, 1.6, false});
}

QPolygonF inside(const QPolygonF& polygon, const QRectF& plot)
{
    return polygon.intersected(QPolygonF{plot});
}

} // namespace

void addEvents(const Sheet& sheet, TrendPicture& picture)
{
    if (picture.eventLane.isNull())
        return;
    const QRectF& lane = picture.eventLane;
    picture.lines.push_back({{lane.left(), lane.top()}, {lane.right(), lane.top()}, Role::Line, 1, false});
    const QRectF name{2, lane.top() + 7, lane.left() - 9, sheet.line};
    picture.labels.push_back(smallLabel(sheet, name, TrendWords::events(), Qt::AlignRight));
    const std::vector<EventPlace> places = placesOf(sheet, picture);
    addEventTicks(picture, places);
    // More words than this never fit, as none is shorter than two lines are high: spare the work.
    const double fitting = lane.width() / (2 * sheet.line) * sheet.eventRows;
    const std::size_t most = std::min(places.size(), static_cast<std::size_t>(fitting));
    EventWords words{sheet, picture, places};
    std::vector<const EventPlace*> wordless;
    for (std::size_t i = 0; i < most; ++i)
        if (!words.add(places[i], TrendWords::event(*places[i].event)))
            wordless.push_back(&places[i]);
    for (const EventPlace* place : wordless)
        words.add(*place, TrendWords::eventWithoutDate(*place->event));
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
    double length = 0;
    for (std::size_t i = 1; i < points.size(); ++i) {
        const auto line = within(picture.plot, pointOf(picture, points[i - 1], points[i - 1].middle),
                                 pointOf(picture, points[i], points[i].middle));
        if (!line)
            continue;
        picture.linesOver.push_back({line->p1(), line->p2(), Role::Accent, 2, dashed, length});
        length += line->length();
    }
}

// The riggings among which a change began.
void addChangeRange(const Sheet& sheet, TrendPicture& picture)
{
    if (!sheet.series.changeWithin)
        return;
    const auto& [first, last] = *sheet.series.changeWithin;
    const Scale across = acrossOf(picture);
    const TrendAxis axis = picture.window.axis;
    const QRectF range{QPointF{across.at(along(axis, first.when, first.rigging)), picture.plot.top()},
                       QPointF{across.at(along(axis, last.when, last.rigging)), picture.plot.bottom()}};
    const QRectF shown = range.intersected(picture.plot);
    if (shown.width() > 0)
        picture.areas.push_back({QPolygonF{shown}, Role::Accent, 0.1});
}

} // namespace

void addForecast(const Sheet& sheet, TrendPicture& picture)
{
    addChangeRange(sheet, picture);
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
    addPath(picture, sheet.series.path, false);
    addPath(picture, forecast, true);
}

} // namespace rig::trend
