#include "app/pictures/marks.h"
#include "app/pictures/trend_layout.h"
#include "app/wording/trend_words.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace rig {

namespace {

// Millimetres either side of the middle: the same for every coupling, so that one look compares them. Only a
// wide band stretches it; a reading further off stands at the edge with its mark.
constexpr double kHalfRange = 0.15;

struct Chosen
{
    std::vector<const TrendReading*> readings; // locked and counting, oldest first
    std::vector<const TrendFitting*> fittings; // of each reading
};

const TrendFitting* fittingOf(const TrendSeries& series, const TrendReading& reading)
{
    const TrendFitting* found = nullptr;
    for (const TrendFitting& fitting : series.fittings)
        if (fitting.begins.localDay() <= reading.when.localDay())
            found = &fitting;
    return found;
}

Chosen choose(const TrendSeries& series, std::size_t most)
{
    Chosen chosen;
    for (auto reading = series.readings.rbegin();
         reading != series.readings.rend() && chosen.readings.size() < most; ++reading)
        if (reading->state == SeatState::Locked && !reading->setAside) {
            chosen.readings.push_back(&*reading);
            chosen.fittings.push_back(fittingOf(series, *reading));
        }
    std::reverse(chosen.readings.begin(), chosen.readings.end());
    std::reverse(chosen.fittings.begin(), chosen.fittings.end());
    return chosen;
}

double lowOf(const TrendReading& reading)
{
    return reading.interval.enters.inMillimetres();
}

double highOf(const TrendReading& reading)
{
    return reading.interval.refuses ? reading.interval.refuses->inMillimetres() : lowOf(reading) + 0.03;
}

// The newest band's median; without a band the median of the readings.
double middleShown(const Chosen& chosen)
{
    if (const TrendFitting* last = chosen.fittings.back(); last && last->band)
        return last->band->median;
    std::vector<double> middles;
    for (const TrendReading* reading : chosen.readings)
        middles.push_back((lowOf(*reading) + highOf(*reading)) / 2);
    const auto half = middles.begin() + static_cast<std::ptrdiff_t>(middles.size() / 2);
    std::nth_element(middles.begin(), half, middles.end());
    return *half;
}

double halfRangeOf(const Chosen& chosen, double middle)
{
    double half = kHalfRange;
    for (const TrendFitting* fitting : chosen.fittings)
        if (fitting && fitting->band)
            half = std::max({half, 1.15 * std::abs(fitting->band->inner.upper - middle),
                             1.15 * std::abs(fitting->band->inner.lower - middle)});
    return half;
}

void addGrounds(TrendPicture& picture, const Chosen& chosen, const Scale& up)
{
    const double slot = picture.plot.width() / static_cast<double>(chosen.readings.size());
    for (std::size_t i = 0; i < chosen.fittings.size();) {
        std::size_t end = i + 1;
        while (end < chosen.fittings.size() && chosen.fittings[end] == chosen.fittings[i])
            ++end;
        const double left = picture.plot.left() + slot * static_cast<double>(i);
        QRectF where{left, picture.plot.top(), slot * static_cast<double>(end - i), picture.plot.height()};
        const TrendFitting* fitting = chosen.fittings[i];
        if (fitting && fitting->band) {
            where.setTop(up.at(fitting->band->inner.upper));
            where.setBottom(up.at(fitting->band->inner.lower));
            picture.boxes.push_back({where.intersected(picture.plot), Role::Band});
            const double centre = up.at(fitting->band->median);
            picture.lines.push_back(
                {{where.left(), centre}, {where.right(), centre}, Role::Centre, 1, false});
        } else {
            picture.boxes.push_back({where, Role::StripGround});
        }
        i = end;
    }
}

bool isOrdinary(const TrendReading& reading)
{
    return reading.verdict == Verdict::Inside ||
           (reading.verdict == Verdict::NoBandYet && reading.ofBaseline);
}

void addReading(TrendPicture& picture, const TrendReading& reading, double x, const Scale& up, double middle,
                double side)
{
    const QRectF& plot = picture.plot;
    const double top = std::clamp(up.at(highOf(reading)), plot.top(), plot.bottom() - 2);
    const double bottom = std::clamp(up.at(lowOf(reading)), top + 2, plot.bottom());
    const Role role = reading.inDoubt       ? Role::InkSoft
                      : isOrdinary(reading) ? Role::Ink
                                            : shapeRoleOf(reading.verdict);
    const double width = reading.inDoubt ? std::max(3.0, picture.barWidth) : picture.barWidth;
    picture.bars.push_back({{x - width / 2, top, width, bottom - top}, role, reading.inDoubt});
    if (reading.interval.isOpen())
        picture.arrows.push_back({{x, top - 3}, true, 5, role});
    if (reading.inDoubt || isOrdinary(reading))
        return;
    const bool below = (lowOf(reading) + highOf(reading)) / 2 < middle;
    const double y = below ? bottom + 1 : top - 1 - side;
    const double left = std::clamp(x - side / 2, plot.left(), std::max(plot.left(), plot.right() - side));
    const QRectF where{left, std::clamp(y, plot.top(), plot.bottom() - side), side, side};
    const auto hits = [&where](const DrawnMark& mark) { return mark.where.intersects(where); };
    if (std::none_of(picture.marks.begin(), picture.marks.end(), hits))
        picture.marks.push_back({where, shapeOf(reading.verdict), role});
}

bool isOffScale(const TrendReading& reading, const TrendPicture& picture)
{
    return lowOf(reading) > picture.mmAtTop || highOf(reading) < picture.mmAtBottom;
}

// Beside the mark at the edge, where there is room; the others are told in words alone.
void addFigure(TrendPicture& picture, const TrendReading& reading, double x, double side)
{
    const bool isAbove = lowOf(reading) > picture.mmAtTop;
    DrawnLabel label;
    label.text = TrendWords::gap(reading.interval);
    label.role = shapeRoleOf(reading.verdict);
    label.pixels = std::clamp(picture.plot.height() * 0.32, 9.0, 14.0);
    label.align = Qt::AlignLeft | Qt::AlignVCenter;
    const QFontMetricsF metrics{fontOf(label.pixels)};
    const double width = trend::widthOf(label.text, metrics);
    const double height = std::min(std::ceil(metrics.height()), picture.plot.height());
    const double top = isAbove ? picture.plot.top() : picture.plot.bottom() - height;
    const double away = std::max(side / 2, picture.barWidth / 2) + 2;
    for (const double left : {x - away - width, x + away}) {
        label.where = {left, top, width, height};
        const auto hits = [&label](const auto& shape) { return shape.where.intersects(label.where); };
        if (left < picture.plot.left() || label.where.right() > picture.plot.right() ||
            std::ranges::any_of(picture.labels, hits) || std::ranges::any_of(picture.marks, hits))
            continue;
        picture.labels.push_back(label);
        return;
    }
}

void addFigures(TrendPicture& picture, const Chosen& chosen, double slot, double side)
{
    std::vector<GapInterval> far;
    for (std::size_t i = chosen.readings.size(); i-- > 0;) { // the newest first: it matters most
        const TrendReading& reading = *chosen.readings[i];
        if (reading.inDoubt || !isOffScale(reading, picture))
            continue;
        far.push_back(reading.interval);
        addFigure(picture, reading, picture.plot.left() + slot * (static_cast<double>(i) + 0.5), side);
    }
    if (!far.empty())
        picture.inWords += QLatin1Char(' ') + TrendWords::offTheSmallScale(far);
}

} // namespace

TrendPicture layoutSmallTrend(const TrendSeries& series, std::size_t lastReadings, QSizeF size)
{
    TrendPicture picture;
    picture.plot = QRectF{QPointF{}, size}.adjusted(1, 1, -1, -1);
    const Chosen chosen = choose(series, lastReadings);
    picture.inWords = TrendWords::smallSummary(series, chosen.readings.size());
    if (chosen.readings.empty()) {
        DrawnLabel label;
        label.where = picture.plot.adjusted(2, 0, -2, 0);
        label.text = series.hasGap ? TrendWords::nothingYetShort() : TrendWords::noGap();
        label.align = Qt::AlignLeft | Qt::AlignVCenter;
        picture.boxes.push_back({picture.plot, Role::StripGround});
        picture.labels.push_back(label);
        return picture;
    }
    const double middle = middleShown(chosen);
    const double half = halfRangeOf(chosen, middle);
    picture.mmAtBottom = middle - half;
    picture.mmAtTop = middle + half;
    picture.window = {TrendAxis::ByRigging, 0, static_cast<double>(chosen.readings.size())};
    const Scale up = trend::upOf(picture);
    addGrounds(picture, chosen, up);
    const double slot = picture.plot.width() / static_cast<double>(chosen.readings.size());
    picture.barWidth = std::clamp(slot * 0.4, 1.0, 3.0);
    const double side = std::clamp(size.height() * 0.22, 7.0, 11.0);
    // The worst first: where marks would lie over one another, its mark is the one that stays.
    for (const Verdict verdict :
         {Verdict::Outside, Verdict::CannotTell, Verdict::NearEdge, Verdict::NoBandYet, Verdict::Inside})
        for (std::size_t i = 0; i < chosen.readings.size(); ++i)
            if (chosen.readings[i]->verdict == verdict)
                addReading(picture, *chosen.readings[i],
                           picture.plot.left() + slot * (static_cast<double>(i) + 0.5), up, middle, side);
    addFigures(picture, chosen, slot, side);
    return picture;
}

} // namespace rig
