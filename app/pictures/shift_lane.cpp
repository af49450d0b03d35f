#include "app/pictures/shift_lane.h"

#include "app/wording/aircraft_words.h"

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

constexpr double kLeastLaneReach = 2;
constexpr double kMostReach = 6; // a bar that goes on beyond it ends in an arrow

} // namespace

ShiftLane::ShiftLane(Drawing& drawing, const Lettering& letters, const QRectF& lane, const QRectF& words)
    : m_drawing{drawing}, m_letters{letters}, m_lane{lane}, m_words{words}
{
}

double ShiftLane::reachOf(const std::vector<ShiftDay>& shifts)
{
    double most = kLeastLaneReach;
    for (const ShiftDay& shift : shifts)
        most = std::max(most, std::abs(shift.median) * 1.08);
    return std::min(most, kMostReach);
}

double ShiftLane::at(double score) const
{
    return m_lane.center().y() - score / m_reach * m_lane.height() / 2;
}

void ShiftLane::addScale(double reach)
{
    m_reach = reach;
    const auto farthest = static_cast<long long>(reach);
    long long step = 1; // the least whose figures stand clear of one another
    while (step < farthest && static_cast<double>(step) * m_lane.height() / 2 / reach < m_letters.line())
        ++step;
    const auto most = static_cast<long long>(reach) / step * step;
    for (long long score = -most; score <= most; score += step) {
        const double y = at(static_cast<double>(score));
        m_drawing.lines.push_back(
            {{m_lane.left(), y}, {m_lane.right(), y}, score == 0 ? Role::InkSoft : Role::Grid, 1});
        const QRectF where{2, y - m_letters.line() / 2, m_lane.left() - 9, m_letters.line()};
        m_drawing.labels.push_back(m_letters.label(where, AircraftWords::scoreTick(score), Qt::AlignRight));
    }
}

void ShiftLane::addBars(const std::vector<ShiftBar>& bars, double width)
{
    const bool isDense = static_cast<double>(bars.size()) > m_lane.width() / 2;
    if (isDense)
        addColumns(bars);
    for (const bool called : {false, true}) // what was called lies on top
        for (const ShiftBar& bar : bars)
            if (bar.shift->isCalled == called && (called || !isDense))
                addBar(bar, called ? std::max(width, 2.0) : width);
    addCauses(bars);
}

void ShiftLane::addBar(const ShiftBar& bar, double width)
{
    const double median = bar.shift->median;
    const Role role = bar.shift->isCalled ? Role::NearEdge : Role::Ink;
    const double end = std::clamp(at(median), m_lane.top(), m_lane.bottom());
    const double zero = at(0);
    const double top = std::min(end, zero - 0.75);
    const double bottom = std::max(end, zero + 0.75);
    m_drawing.bars.push_back({{bar.x - width / 2, top, width, bottom - top}, role});
    if (std::abs(median) > m_reach)
        m_drawing.arrows.push_back({{bar.x, end}, median > 0, std::max(7.0, width + 3), role});
}

// Far zoomed out: each column of pixels from its lowest to its highest day that was not called.
void ShiftLane::addColumns(const std::vector<ShiftBar>& bars)
{
    for (std::size_t i = 0; i < bars.size();) {
        const double column = std::floor(bars[i].x);
        double lowest = 0;
        double highest = 0;
        for (; i < bars.size() && std::floor(bars[i].x) == column; ++i) {
            if (bars[i].shift->isCalled)
                continue;
            lowest = std::min(lowest, bars[i].shift->median);
            highest = std::max(highest, bars[i].shift->median);
        }
        const double top = std::max(at(highest), m_lane.top());
        m_drawing.bars.push_back({{column, top, 1, std::min(at(lowest), m_lane.bottom()) - top}, Role::Ink});
    }
}

// Called days with the same cause share one label as long as two would not fit beside one another.
void ShiftLane::addCauses(const std::vector<ShiftBar>& bars)
{
    struct Group
    {
        double left = 0;
        double right = 0;
        const ShiftDay* shift = nullptr;
    };
    std::vector<Group> groups;
    for (std::size_t i = bars.size(); i-- > 0;) { // the newest first: it matters most
        const ShiftDay& shift = *bars[i].shift;
        if (!shift.isCalled)
            continue;
        const bool goesOn =
            !groups.empty() && !shift.cause.empty() && groups.back().shift->cause == shift.cause;
        const double width = goesOn ? m_letters.widthOf(AircraftWords::cause(shift), true) : 0;
        if (goesOn && groups.back().left - bars[i].x < width + 8)
            groups.back().left = bars[i].x;
        else
            groups.push_back({bars[i].x, bars[i].x, &shift});
    }
    for (const Group& group : groups)
        addCause(group.left, group.right, *group.shift);
}

void ShiftLane::addCause(double left, double right, const ShiftDay& shift)
{
    const QString text = m_letters.fitted(AircraftWords::cause(shift),
                                          std::min(m_words.width(), 220 * m_letters.scale()), true);
    const double width = m_letters.widthOf(text, true);
    const double most = std::max(m_words.left(), m_words.right() - width);
    const double from = std::clamp((left + right) / 2 - width / 2, m_words.left(), most);
    for (double top = m_words.bottom() - m_letters.line(); top >= m_words.top() - 0.5;
         top -= m_letters.line()) {
        const QRectF where{from, top, width, m_letters.line()};
        const auto hits = [&where](const DrawnLabel& label) {
            return label.where.intersects(where.adjusted(-8, 0, 8, 0));
        };
        if (std::any_of(m_drawing.labels.begin(), m_drawing.labels.end(), hits))
            continue;
        m_drawing.labels.push_back(m_letters.label(where, text, Qt::AlignHCenter, Role::NearEdgeText, true));
        return;
    }
}

namespace {

// The first day at the left and the last at the right; only the last where there is no room for both.
void addDays(ShiftsPicture& picture, const Lettering& letters, const std::vector<ShiftDay>& shifts)
{
    const QRectF& plot = picture.plot;
    const QRectF row{plot.left(), plot.bottom() + 4, plot.width(), letters.line()};
    const QString first = AircraftWords::day(shifts.front());
    const QString last = AircraftWords::day(shifts.back());
    const double lastWidth = letters.widthOf(last);
    const double firstWidth = letters.widthOf(first);
    picture.labels.push_back(
        letters.label({row.right() - lastWidth, row.top(), lastWidth, row.height()}, last, Qt::AlignRight));
    if (shifts.size() > 1 && firstWidth + lastWidth + 12 <= row.width())
        picture.labels.push_back(
            letters.label({row.left(), row.top(), firstWidth, row.height()}, first, Qt::AlignLeft));
}

} // namespace

ShiftsPicture layoutShifts(const std::vector<ShiftDay>& shifts, QSizeF size, const FontSizes& fonts)
{
    const Lettering letters{fonts};
    ShiftsPicture picture;
    picture.inWords = AircraftWords::shifts(shifts);
    if (shifts.empty()) {
        picture.plot = QRectF{QPointF{}, size};
        picture.labels.push_back(letters.sentence(size, AircraftWords::noShiftsYet()));
        return picture;
    }
    const double reach = ShiftLane::reachOf(shifts);
    const double left = 11 + letters.widthOf(AircraftWords::scoreTick(-9));
    const double words = 2 * letters.line();
    const double foot = letters.line() + 6;
    picture.plot = {left, words + 4, size.width() - left - 4,
                    std::max(10.0, size.height() - words - 4 - foot)};
    picture.scoreAtTop = reach;
    picture.scoreAtBottom = -reach;
    ShiftLane lane{picture, letters, picture.plot, {left, 0, picture.plot.width(), words}};
    lane.addScale(reach);
    const double each = picture.plot.width() / static_cast<double>(shifts.size());
    std::vector<ShiftBar> bars;
    for (std::size_t i = 0; i < shifts.size(); ++i)
        bars.push_back({picture.plot.left() + (static_cast<double>(i) + 0.5) * each, &shifts[i]});
    lane.addBars(bars, std::clamp(each * 0.5, 1.0, 7.0));
    addDays(picture, letters, shifts);
    return picture;
}

} // namespace rig
