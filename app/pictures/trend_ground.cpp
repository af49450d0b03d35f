#include "app/pictures/trend_layout.h"
#include "app/wording/trend_words.h"

#include <algorithm>
#include <cmath>

namespace rig::trend {

namespace {

// The part of a millimetre range between two places, inside the plot; empty when nothing of it shows.
QRectF zone(const TrendPicture& picture, const Range& places, double lower, double upper)
{
    const Scale across = acrossOf(picture);
    const Scale up = upOf(picture);
    const QRectF box{QPointF{across.at(places.from), up.at(upper)},
                     QPointF{across.at(places.to), up.at(lower)}};
    return places.width() > 0 ? box.intersected(picture.plot) : QRectF{};
}

void addZone(TrendPicture& picture, const Range& places, double lower, double upper, Role role)
{
    const QRectF where = zone(picture, places, lower, upper);
    if (!where.isEmpty())
        picture.boxes.push_back({where, role});
}

void addLevel(TrendPicture& picture, const Range& places, double mm, const DrawnLine& like)
{
    const double y = upOf(picture).at(mm);
    const QRectF where = zone(picture, places, picture.mmAtBottom, picture.mmAtTop);
    if (where.isEmpty() || y < picture.plot.top() || y > picture.plot.bottom())
        return;
    DrawnLine line = like;
    line.from = {where.left(), y};
    line.to = {where.right(), y};
    picture.lines.push_back(line);
}

// Band and near zone are told apart by a line, not by tint alone.
void addEdges(TrendPicture& picture, const Range& places, const BandEdges& edges, Role role)
{
    DrawnLine line;
    line.role = role;
    addLevel(picture, places, edges.lower, line);
    addLevel(picture, places, edges.upper, line);
}

void addBand(TrendPicture& picture, const Range& places, const Band& band)
{
    addZone(picture, places, band.outer.lower, band.inner.lower, Role::NearZone);
    addZone(picture, places, band.inner.upper, band.outer.upper, Role::NearZone);
    addZone(picture, places, band.inner.lower, band.inner.upper, Role::Band);
    addEdges(picture, places, band.outer, Role::NearEdge);
    addEdges(picture, places, band.inner, Role::Centre);
    DrawnLine centre;
    centre.role = Role::Centre;
    centre.width = 1.4;
    addLevel(picture, places, band.median, centre);
}

DrawnLine firstBandLine()
{
    DrawnLine line;
    line.role = Role::Centre;
    line.dashed = true;
    return line;
}

void addUpright(TrendPicture& picture, double x, double top, Role role, double width)
{
    DrawnLine line;
    line.from = {x, top};
    line.to = {x, picture.plot.bottom()};
    line.role = role;
    line.width = width;
    line.dashed = true;
    picture.lines.push_back(line);
}

void addFittings(const Sheet& sheet, TrendPicture& picture)
{
    for (std::size_t i = 0; i < sheet.fittings.size(); ++i)
        if (const auto& band = sheet.series.fittings[i].band)
            addBand(picture, sheet.fittings[i], *band);
    if (sheet.fittings.size() < 2 || !sheet.series.fittings.front().band)
        return;
    const Range beyond{sheet.fittings.front().to, std::max(picture.window.to, sheet.fittings.front().to)};
    const BandEdges& inner = sheet.series.fittings.front().band->inner;
    for (const double mm : {inner.lower, inner.upper})
        addLevel(picture, beyond, mm, firstBandLine());
}

void addGrid(const Sheet& sheet, TrendPicture& picture, const Scale& up, const QRectF& lane)
{
    const auto extent = [&sheet](const QString&) { return sheet.line; };
    for (const Tick& tick : up.ticks(extent, sheet.line * 0.7)) {
        const double y = up.at(tick.value);
        const DrawnLine grid{{lane.left(), y}, {lane.right(), y}, Role::Grid, 1, false};
        picture.lines.insert(picture.lines.begin(), grid); // below the edges of the band
        const QRectF where{2, y - sheet.line / 2, lane.left() - 9, sheet.line};
        if (where.top() < lane.top() - 1 || where.bottom() > lane.bottom() + 1)
            continue;
        picture.lines.push_back({{lane.left() - 5, y}, {lane.left(), y}, Role::InkSoft, 1, false});
        picture.labels.push_back(smallLabel(sheet, where, tick.text, Qt::AlignRight));
    }
}

void addTicks(const Sheet& sheet, TrendPicture& picture)
{
    const Scale across = acrossOf(picture);
    const auto extent = [&sheet](const QString& text) { return widthOf(text, sheet.small); };
    const double top = sheet.axis.top();
    picture.lines.push_back({{sheet.axis.left(), top}, {sheet.axis.right(), top}, Role::Line, 1, false});
    for (const Tick& tick : across.ticks(extent, sheet.line * 2)) {
        const double x = across.at(tick.value);
        picture.lines.push_back({{x, top}, {x, top + 5}, Role::InkSoft, 1, false});
        const double width = extent(tick.text);
        const QRectF where{x - width / 2, top + 6, width, sheet.line};
        if (where.left() >= 2 && where.right() <= sheet.size.width() - 2)
            picture.labels.push_back(smallLabel(sheet, where, tick.text, Qt::AlignHCenter));
    }
}

constexpr double kShade = 0.1; // of what lies outside the period

// Beside the period, as far as readings lie there.
void addShade(const Sheet& sheet, TrendPicture& picture)
{
    if (!sheet.series.period)
        return;
    const TrendPlace& begins = sheet.series.period->begins;
    const TrendPlace& ends = sheet.series.period->ends;
    const double from = along(picture.window.axis, begins.when, begins.rigging);
    const double to = along(picture.window.axis, ends.when, ends.rigging);
    const auto shade = [&](const Range& places) {
        QRectF where = zone(picture, places, picture.mmAtBottom, picture.mmAtTop);
        if (!where.isEmpty())
            picture.boxes.push_back({where, Role::InkSoft, false, false, kShade});
    };
    if (sheet.index.reach.first < from)
        shade({picture.window.from, from});
    if (sheet.index.reach.last > to)
        shade({to, picture.window.to});
}

} // namespace

void addGround(const Sheet& sheet, TrendPicture& picture)
{
    addFittings(sheet, picture);
    addShade(sheet, picture);
    const Scale across = acrossOf(picture);
    for (const TrendEvent& event : sheet.series.events) {
        const double x = across.at(along(picture.window.axis, event.when, event.rigging));
        if (event.kind == EventKind::Annual && x >= picture.plot.left() && x <= picture.plot.right())
            addUpright(picture, x, picture.plot.top(), Role::InkSoft, 1);
    }
}

void addAxes(const Sheet& sheet, TrendPicture& picture)
{
    addGrid(sheet, picture, upOf(picture), picture.plot);
    addTicks(sheet, picture);
    const QRectF unit{2, sheet.header.bottom() - sheet.line - 2, sheet.header.left() - 9, sheet.line};
    picture.labels.push_back(smallLabel(sheet, unit, TrendWords::unit(), Qt::AlignRight));
    if (!sheet.name.isNull())
        picture.labels.push_back(smallLabel(sheet, sheet.name, TrendWords::riggingAxis(), Qt::AlignHCenter));
}

namespace {

// A line from the top of its word down to the plot's foot, with the word right of it, else left of it, in the
// first row with room for both. Returns false when there is none.
bool placeBeside(const Sheet& sheet, TrendPicture& picture, double x, DrawnLabel label)
{
    const double width = widthOf(label.text, sheet.strong);
    for (int row = sheet.headerRows - 1; row >= 0; --row)
        for (const double left : {x + 5, x - 5 - width}) {
            label.where = {left, sheet.header.top() + row * (sheet.line + 2), width, sheet.line};
            const QRectF below{QPointF{x - 1, label.where.top()}, QPointF{x + 1, sheet.header.bottom()}};
            if (left >= sheet.header.left() && label.where.right() <= sheet.size.width() - 4 &&
                isFree(label.where, picture, 8) && isFree(below, picture, 3)) {
                picture.labels.push_back(label);
                return true;
            }
        }
    return false;
}

DrawnLabel headerLabel(const Sheet& sheet, const QString& text, Role role)
{
    DrawnLabel label = smallLabel(sheet, {}, text, Qt::AlignLeft);
    label.role = role;
    label.strong = true;
    return label;
}

void addNamedLine(const Sheet& sheet, TrendPicture& picture, double x, const QString& name, Role role)
{
    double top = picture.plot.top();
    for (const double share : {1.0, 0.75, 0.5, 0.35}) {
        const double width = widthOf(name, sheet.strong) * share;
        if (share < 1 && width < 80 * sheet.fonts.scale)
            break;
        const QString text = share < 1 ? sheet.strong.elidedText(name, Qt::ElideRight, width) : name;
        if (!placeBeside(sheet, picture, x, headerLabel(sheet, text, role)))
            continue;
        top = picture.labels.back().where.top();
        break;
    }
    addUpright(picture, x, top, role, 1.4);
}

void addAnnual(const Sheet& sheet, TrendPicture& picture)
{
    const auto annual = annualAlong(sheet.series, picture.window.axis);
    if (!annual || !sheet.series.annualDue || *annual < picture.window.from)
        return;
    const Moment& due = *sheet.series.annualDue;
    if (*annual > picture.window.to)
        placeBeside(sheet, picture, sheet.header.right() + 5,
                    headerLabel(sheet, TrendWords::annualLater(due), Role::Outside));
    else
        addNamedLine(sheet, picture, acrossOf(picture).at(*annual), TrendWords::annual(due), Role::Outside);
}

void addPeriodEdge(const Sheet& sheet, TrendPicture& picture, double at, const QString& words)
{
    if (at > picture.window.from && at < picture.window.to)
        addNamedLine(sheet, picture, acrossOf(picture).at(at), words, Role::InkSoft);
}

// Only where readings lie beyond it.
void addPeriod(const Sheet& sheet, TrendPicture& picture)
{
    if (!sheet.series.period)
        return;
    const auto& [begins, ends] = *sheet.series.period;
    const double from = along(picture.window.axis, begins.when, begins.rigging);
    const double to = along(picture.window.axis, ends.when, ends.rigging);
    if (sheet.index.reach.first < from)
        addPeriodEdge(sheet, picture, from, TrendWords::periodBegins(begins.when));
    if (sheet.index.reach.last > to)
        addPeriodEdge(sheet, picture, to, TrendWords::periodEnds(ends.when));
}

} // namespace

void addHeader(const Sheet& sheet, TrendPicture& picture)
{
    addAnnual(sheet, picture);
    const Scale across = acrossOf(picture);
    for (std::size_t i = sheet.fittings.size(); i-- > 1;) { // the newest first: it matters most
        const double place = sheet.fittings[i].from;
        if (place < picture.window.from || place > picture.window.to)
            continue;
        addNamedLine(sheet, picture, across.at(place),
                     TrendWords::fitting(sheet.series.fittings[i].kind, sheet.series.fittings[i].reason),
                     Role::Accent);
    }
    addPeriod(sheet, picture);
}

} // namespace rig::trend
