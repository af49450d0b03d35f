#include "app/pictures/aircraft.h"

#include "app/pictures/aircraft_layout.h"
#include "app/pictures/scale.h"
#include "app/pictures/shift_lane.h"
#include "app/wording/aircraft_words.h"
#include "app/wording/trend_words.h"

#include <algorithm>
#include <cmath>

namespace rig {

namespace aircraft {

namespace {

constexpr double kInner = 1.96; // scatters: where near-edge begins, and outside
constexpr double kOuter = 3.0;

void addZones(Frame& frame)
{
    AircraftPicture& picture = frame.picture;
    const auto zone = [&picture](double lower, double upper, Role role) {
        const QRectF& plot = picture.plot;
        const double top = yOf(picture, upper);
        DrawnBox box;
        box.where = {plot.left(), top, plot.width(), yOf(picture, lower) - top};
        box.role = role;
        box.opacity = 0.5;
        picture.boxes.push_back(box);
    };
    zone(-kOuter, -kInner, Role::NearZone);
    zone(-kInner, kInner, Role::Band);
    zone(kInner, kOuter, Role::NearZone);
}

void addScores(Frame& frame)
{
    AircraftPicture& picture = frame.picture;
    const double line = frame.letters.line();
    const int step = picture.plot.height() > 8 * line * 1.3 ? 1 : 2;
    for (int score = -4; score <= 4; score += step) {
        const double y = yOf(picture, score);
        picture.lines.push_back({{picture.plot.left(), y},
                                 {picture.plot.right(), y},
                                 score == 0 ? Role::Centre : Role::Grid,
                                 score == 0 ? 1.4 : 1.0});
        const QRectF where{2, y - line / 2, picture.plot.left() - 9, line};
        picture.labels.push_back(frame.letters.label(where, AircraftWords::scoreTick(score), Qt::AlignRight));
    }
    for (const double edge : {-kOuter, -kInner, kInner, kOuter}) { // not by tint alone
        const double y = yOf(picture, edge);
        const Role role = std::abs(edge) == kOuter ? Role::NearEdge : Role::Centre;
        picture.lines.push_back({{picture.plot.left(), y}, {picture.plot.right(), y}, role, 1});
    }
}

void addTicks(Frame& frame)
{
    AircraftPicture& picture = frame.picture;
    const double top = frame.axis.top();
    const Scale across = acrossOf(picture);
    const auto extent = [&frame](const QString& text) { return frame.letters.widthOf(text); };
    picture.lines.push_back({{frame.axis.left(), top}, {frame.axis.right(), top}, Role::Line, 1});
    for (const Tick& tick : across.ticks(extent, frame.letters.line() * 2)) {
        const double x = across.at(tick.value);
        picture.lines.push_back({{x, top}, {x, top + 5}, Role::InkSoft, 1});
        const double width = extent(tick.text);
        const QRectF where{x - width / 2, top + 6, width, frame.letters.line()};
        if (where.left() >= 2 && where.right() <= frame.size.width() - 2)
            picture.labels.push_back(frame.letters.label(where, tick.text, Qt::AlignHCenter));
    }
    if (!frame.name.isNull())
        picture.labels.push_back(
            frame.letters.label(frame.name, TrendWords::riggingAxis(), Qt::AlignHCenter));
}

// The longest of some wordings of one thing that fits.
void addCaption(Frame& frame, const QRectF& row, const QString& whole, const QString& brief)
{
    const QString text = frame.letters.widthOf(whole) <= row.width() ? whole : brief;
    const double width = std::min(frame.letters.widthOf(text), row.width());
    frame.picture.labels.push_back(frame.letters.label({row.left(), row.top(), width, row.height()},
                                                       frame.letters.fitted(text, width), Qt::AlignLeft));
}

void addShifts(Frame& frame)
{
    AircraftPicture& picture = frame.picture;
    if (picture.shiftLane.isNull())
        return;
    addCaption(frame, frame.shiftCaption, AircraftWords::shiftLane(), AircraftWords::shiftLaneShort());
    ShiftLane lane{picture, frame.letters, picture.shiftLane, frame.causes};
    lane.addScale(picture.shiftAtTop);
    const Scale across = acrossOf(picture);
    std::vector<ShiftBar> bars;
    for (const ShiftDay& shift : frame.series.shifts)
        if (const double place = along(picture.window.axis, shift.when, shift.rigging);
            across.contains(place))
            bars.push_back({across.at(place), &shift});
    const double each = picture.plot.width() / static_cast<double>(std::max<std::size_t>(1, bars.size()));
    lane.addBars(bars, std::clamp(each * 0.36, 1.0, 6.0));
}

// From top to bottom: caption, couplings, words about shifts, shifts, tick words, name of the axis.
void divide(Frame& frame)
{
    AircraftPicture& picture = frame.picture;
    const Lettering& letters = frame.letters;
    const double row = letters.line() + 2;
    const double left = 11 + letters.widthOf(AircraftWords::scoreTick(-4));
    frame.names = namesWidth(frame);
    const double right =
        frame.size.width() - frame.names - (frame.names > 0 ? kLeader * letters.scale() : 12);
    const auto across = [left, right](double top, double height) {
        return QRectF{left, top, std::max(20.0, right - left), height};
    };
    double bottom = frame.size.height() - 4;
    const bool isRoomy = frame.size.height() >= 300 * letters.scale();
    if (picture.window.axis == TrendAxis::ByRigging && isRoomy) {
        bottom -= row;
        frame.name = across(bottom, row);
    }
    bottom -= row + 7;
    frame.axis = across(bottom, row + 7);
    if (!frame.series.shifts.empty()) {
        const double height =
            std::clamp(frame.size.height() * 0.2, 2.6 * letters.line(), 110 * letters.scale());
        bottom -= height + 4;
        picture.shiftLane = across(bottom, height);
        bottom -= row;
        frame.causes = across(bottom, row);
        bottom -= row;
        frame.shiftCaption = across(bottom, row);
        bottom -= letters.line() * 0.6;
    }
    frame.caption = across(2, letters.line());
    frame.caption.setRight(frame.size.width() - 4);
    const double top = row + letters.line() * 0.6;
    picture.plot = across(top, std::max(10.0, bottom - top));
}

} // namespace

Scale acrossOf(const AircraftPicture& picture)
{
    const ScaleKind kind = picture.window.axis == TrendAxis::ByDate ? ScaleKind::Dates : ScaleKind::Riggings;
    return {kind, picture.window.from, picture.window.to, picture.plot.left(), picture.plot.right()};
}

double yOf(const AircraftPicture& picture, double score)
{
    const double share = (score - picture.scoreAtBottom) / (picture.scoreAtTop - picture.scoreAtBottom);
    return picture.plot.bottom() - share * picture.plot.height();
}

} // namespace aircraft

AircraftPicture layoutAircraft(const AircraftSeries& series, const TrendWindow& window,
                               std::optional<std::size_t> chosenCoupling, QSizeF size, const FontSizes& fonts)
{
    AircraftPicture picture;
    picture.inWords = AircraftWords::aircraft(series, chosenCoupling);
    const bool isEmpty = std::all_of(series.couplings.begin(), series.couplings.end(),
                                     [](const AircraftCoupling& one) { return one.points.empty(); });
    const Lettering letters{fonts};
    if (isEmpty) {
        picture.plot = QRectF{QPointF{}, size};
        picture.labels.push_back(letters.sentence(size, AircraftWords::nothingYet()));
        return picture;
    }
    picture.window = window.isWhole() ? reachOf(series, window.axis).whole : window;
    picture.shiftAtTop = ShiftLane::reachOf(series.shifts);
    picture.shiftAtBottom = -picture.shiftAtTop;
    aircraft::Frame frame{series, chosenCoupling, size, letters, picture};
    aircraft::divide(frame);
    aircraft::addZones(frame);
    aircraft::addScores(frame);
    aircraft::addTicks(frame);
    aircraft::addCurves(frame);
    aircraft::addCaption(frame, frame.caption, AircraftWords::scores(frame.showsMeans),
                         AircraftWords::scoresShort());
    aircraft::addNames(frame);
    aircraft::addShifts(frame);
    return picture;
}

} // namespace rig
