#include "app/pictures/aircraft_layout.h"
#include "app/pictures/mark_field.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace rig::aircraft {

namespace {

// Pixels between readings; closer ones are drawn as means, and a little further apart as a line without dots.
constexpr double kDensestChosen = 3;
constexpr double kDensest = 6;
constexpr double kDensestDots = 12;
constexpr double kMeanOver = 8; // pixels
constexpr double kBeyond = 4;   // scatters: what lies further out stands at the edge with an arrow

// The points in sight, and one more at either side so that the line goes on to the edge.
struct Sight
{
    std::size_t begin = 0;
    std::size_t end = 0;
    std::size_t lineBegin = 0;
    std::size_t lineEnd = 0;
};

Sight sightOf(const AircraftPicture& picture, const std::vector<AircraftPoint>& points)
{
    const TrendWindow& window = picture.window;
    const Stretch seen = between(points, window.axis, window.from, window.to);
    return {seen.begin, seen.end, seen.begin > 0 ? seen.begin - 1 : 0, std::min(seen.end + 1, points.size())};
}

// Where a line between two places crosses an upright.
QPointF crossing(QPointF a, QPointF b, double x)
{
    const double run = b.x() - a.x();
    return run == 0 ? QPointF{x, a.y()} : QPointF{x, a.y() + (b.y() - a.y()) * (x - a.x()) / run};
}

QPolygonF lineOf(const AircraftPicture& picture, const std::vector<AircraftPoint>& points, const Sight& sight)
{
    const Scale across = acrossOf(picture);
    const QRectF& plot = picture.plot;
    QPolygonF line;
    QPointF before;
    for (std::size_t i = sight.lineBegin; i < sight.lineEnd; ++i) {
        const QPointF place = placeOf(picture, across, points[i]);
        if (i > sight.lineBegin && before.x() < plot.left() && place.x() >= plot.left())
            line << crossing(before, place, plot.left());
        if (place.x() >= plot.left() && place.x() <= plot.right())
            line << place;
        if (i > sight.lineBegin && before.x() <= plot.right() && place.x() > plot.right())
            line << crossing(before, place, plot.right());
        before = place;
    }
    return line;
}

// Far zoomed out: the mean of the readings in each few pixels. In doubt counts for nothing.
QPolygonF meansOf(const AircraftPicture& picture, const std::vector<AircraftPoint>& points,
                  const Sight& sight)
{
    const Scale across = acrossOf(picture);
    QPolygonF line;
    double column = -1;
    QPointF sum;
    double count = 0;
    const auto flush = [&] {
        if (count > 0)
            line << sum / count;
        sum = {};
        count = 0;
    };
    for (std::size_t i = sight.begin; i < sight.end; ++i) {
        if (points[i].inDoubt)
            continue;
        const QPointF place = placeOf(picture, across, points[i]);
        if (const double here = std::floor(place.x() / kMeanOver); here != column) {
            flush();
            column = here;
        }
        sum += place;
        ++count;
    }
    flush();
    return line;
}

// From the highest to the lowest reading of each column of pixels.
void addExtent(AircraftPicture& picture, const std::vector<AircraftPoint>& points, const Sight& sight)
{
    const Scale across = acrossOf(picture);
    QRectF column;
    const auto flush = [&picture, &column] {
        if (column.isNull())
            return;
        DrawnBox box;
        box.where = column;
        box.role = Role::AccentFill;
        picture.boxes.push_back(box);
    };
    for (std::size_t i = sight.begin; i < sight.end; ++i) {
        if (points[i].inDoubt)
            continue;
        const QPointF place = placeOf(picture, across, points[i]);
        const QRectF dot{std::floor(place.x()), std::floor(place.y()), 1, 1};
        if (column.left() != dot.left()) {
            flush();
            column = dot;
        } else {
            column = column.united(dot);
        }
    }
    flush();
}

void addArrow(AircraftPicture& picture, const AircraftPoint& point, QPointF place)
{
    const Role role = point.inDoubt ? Role::InkSoft : shapeRoleOf(point.verdict);
    picture.arrows.push_back({place, point.score > 0, 8, role});
}

DrawnCurve curveLike(const Frame& frame, bool isChosen, double each)
{
    const double scale = frame.letters.scale();
    DrawnCurve curve;
    curve.role = isChosen ? Role::Accent : Role::InkSoft;
    curve.opacity = isChosen ? 1 : 0.55;
    curve.width = isChosen ? 2.2 * scale : 1;
    curve.dotRadius = std::min((isChosen ? 3.2 : 1.8) * scale, std::max(1.4, each * 0.4));
    return curve;
}

void addDots(AircraftPicture& picture, DrawnCurve& curve, const std::vector<AircraftPoint>& points,
             const Sight& sight, bool hasDots)
{
    const Scale across = acrossOf(picture);
    for (std::size_t i = sight.begin; i < sight.end; ++i) {
        const QPointF place = placeOf(picture, across, points[i]);
        if (points[i].inDoubt)
            curve.rings.push_back(place);
        else if (hasDots)
            curve.dots.push_back(place);
        if (std::abs(points[i].score) > kBeyond)
            addArrow(picture, points[i], place);
    }
}

void addCurve(Frame& frame, std::size_t coupling, bool isChosen)
{
    AircraftPicture& picture = frame.picture;
    const std::vector<AircraftPoint>& points = frame.series.couplings[coupling].points;
    const Sight sight = sightOf(picture, points);
    const auto seen = static_cast<double>(sight.end - sight.begin);
    const double each = picture.plot.width() / std::max(1.0, seen);
    const bool isDense = each < (isChosen ? kDensestChosen : kDensest);
    DrawnCurve curve = curveLike(frame, isChosen, each);
    QPolygonF line = isDense ? meansOf(picture, points, sight) : lineOf(picture, points, sight);
    if (isDense && isChosen)
        addExtent(picture, points, sight);
    if (!isDense)
        addDots(picture, curve, points, sight, isChosen || each >= kDensestDots);
    frame.showsMeans = frame.showsMeans || isDense;
    if (seen > 0) {
        const AircraftPoint& last = points[sight.end - 1];
        const bool endsInMean = isDense && !line.isEmpty();
        frame.ends.push_back(
            {coupling, endsInMean ? line.back() : placeOf(picture, acrossOf(picture), last), last.score});
    }
    curve.pieces.push_back(std::move(line));
    picture.curves.push_back(std::move(curve));
}

// The worst first: where marks would lie over one another, its mark is the one that stays.
void addMarks(Frame& frame)
{
    AircraftPicture& picture = frame.picture;
    const Scale across = acrossOf(picture);
    MarkField marks{picture, picture.plot, 10 * frame.letters.scale()};
    std::array<std::vector<QPointF>, 3> places;
    for (const AircraftCoupling& coupling : frame.series.couplings) {
        const Sight sight = sightOf(picture, coupling.points);
        for (std::size_t i = sight.begin; i < sight.end; ++i) {
            const AircraftPoint& point = coupling.points[i];
            if (point.inDoubt || point.verdict == Verdict::Inside || point.verdict == Verdict::NoBandYet)
                continue;
            const std::size_t rank = point.verdict == Verdict::Outside      ? 0
                                     : point.verdict == Verdict::CannotTell ? 1
                                                                            : 2;
            places[rank].push_back(placeOf(picture, across, point));
        }
    }
    constexpr std::array kRanks = {Verdict::Outside, Verdict::CannotTell, Verdict::NearEdge};
    for (std::size_t rank = 0; rank < kRanks.size(); ++rank)
        for (const QPointF& place : places[rank])
            marks.add(place, kRanks[rank]);
}

} // namespace

void addCurves(Frame& frame)
{
    for (std::size_t i = 0; i < frame.series.couplings.size(); ++i)
        if (frame.chosen != i)
            addCurve(frame, i, false);
    if (frame.chosen && *frame.chosen < frame.series.couplings.size())
        addCurve(frame, *frame.chosen, true);
    addMarks(frame);
}

} // namespace rig::aircraft
