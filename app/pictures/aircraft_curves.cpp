#include "app/pictures/aircraft_layout.h"
#include "app/pictures/mark_field.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace rig::aircraft {

namespace {

constexpr double kBeyond = 4; // scatters: what lies further out stands at the edge with an arrow

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

// One line of at most four places a column of pixels: first, lowest, highest and last. It looks as the line
// through all of them would.
class ThinnedLine
{
public:
    void add(QPointF place)
    {
        const double column = std::floor(place.x());
        if (column != m_column) {
            flush();
            m_column = column;
            m_first = m_lowest = m_highest = place;
        }
        if (place.y() > m_lowest.y())
            m_lowest = place;
        if (place.y() < m_highest.y())
            m_highest = place;
        m_last = place;
        m_isEmpty = false;
    }

    QPolygonF take()
    {
        flush();
        return std::move(m_line);
    }

private:
    void flush()
    {
        if (m_isEmpty)
            return;
        const bool lowFirst = m_lowest.x() <= m_highest.x();
        for (const QPointF& place :
             {m_first, lowFirst ? m_lowest : m_highest, lowFirst ? m_highest : m_lowest, m_last})
            if (m_line.isEmpty() || m_line.back() != place)
                m_line << place;
        m_isEmpty = true;
    }

    QPolygonF m_line;
    double m_column = -1e300;
    QPointF m_first;
    QPointF m_lowest;
    QPointF m_highest;
    QPointF m_last;
    bool m_isEmpty = true;
};

QPolygonF lineOf(const AircraftPicture& picture, const std::vector<AircraftPoint>& points, const Sight& sight)
{
    const Scale across = acrossOf(picture);
    const QRectF& plot = picture.plot;
    ThinnedLine line;
    QPointF before;
    for (std::size_t i = sight.lineBegin; i < sight.lineEnd; ++i) {
        const QPointF place = placeOf(picture, across, points[i]);
        if (i > sight.lineBegin && before.x() < plot.left() && place.x() >= plot.left())
            line.add(crossing(before, place, plot.left()));
        if (place.x() >= plot.left() && place.x() <= plot.right())
            line.add(place);
        if (i > sight.lineBegin && before.x() <= plot.right() && place.x() > plot.right())
            line.add(crossing(before, place, plot.right()));
        before = place;
    }
    return line.take();
}

void addArrow(AircraftPicture& picture, const AircraftPoint& point, QPointF place)
{
    const Role role = point.inDoubt ? Role::InkSoft : shapeRoleOf(point.verdict);
    picture.arrows.push_back({place, point.score > 0, 8, role});
}

void addCurve(Frame& frame, std::size_t coupling, bool isChosen)
{
    AircraftPicture& picture = frame.picture;
    const std::vector<AircraftPoint>& points = frame.series.couplings[coupling].points;
    const Sight sight = sightOf(picture, points);
    const double scale = frame.letters.scale();
    DrawnCurve curve;
    curve.role = isChosen ? Role::Accent : Role::InkSoft;
    curve.opacity = isChosen ? 1 : 0.55;
    curve.width = isChosen ? 2.2 * scale : 1;
    curve.dotRadius = (isChosen ? 3.2 : 1.8) * scale;
    curve.pieces.push_back(lineOf(picture, points, sight));
    const Scale across = acrossOf(picture);
    const bool isDense = static_cast<double>(sight.end - sight.begin) > picture.plot.width() / 4;
    for (std::size_t i = sight.begin; i < sight.end; ++i) {
        const QPointF place = placeOf(picture, across, points[i]);
        if (!isDense)
            (points[i].inDoubt ? curve.rings : curve.dots).push_back(place);
        if (!isDense && std::abs(points[i].score) > kBeyond)
            addArrow(picture, points[i], place);
    }
    picture.curves.push_back(std::move(curve));
    if (sight.end > sight.begin)
        frame.ends.push_back(
            {coupling, placeOf(picture, across, points[sight.end - 1]), points[sight.end - 1].score});
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
