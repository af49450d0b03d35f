#include "app/pictures/gap_strip.h"

#include "app/pictures/marks.h"
#include "app/wording/formats.h"
#include "app/wording/picture_words.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

constexpr double kSmallestSpan = 0.2; // mm; narrower scales make harmless steps look large
constexpr double kMargin = 0.05;      // mm at least around what is shown
constexpr double kFar = 0.25;         // of the width in mm: what stands further away stands behind a break
constexpr double kTallest = 96;       // pixels
constexpr double kBreak = 16;         // pixels between two scales
constexpr double kBandEdge = 1.5;     // pixels, a line on the edge of a band

struct Span
{
    double from = 0;
    double to = 1;

    double width() const { return to - from; }
    bool contains(const Span& other) const { return from <= other.from && other.to <= to; }
};

// One millimetre scale. Part-seated readings far away have one of their own, behind a drawn break.
struct ScalePart
{
    Span mm;
    QRectF where;
};

void stretch(std::optional<Span>& span, double from, double to)
{
    if (!span)
        span = Span{from, to};
    span->from = std::min(span->from, from);
    span->to = std::max(span->to, to);
}

Span spanOf(const GapInterval& interval)
{
    const double from = interval.enters.inMillimetres();
    return {from, interval.refuses ? interval.refuses->inMillimetres() : from + 2 * kMargin};
}

void stretch(std::optional<Span>& span, const Span& other)
{
    stretch(span, other.from, other.to);
}

Span withMargin(Span shown, double margin)
{
    shown.from = std::max(0.0, shown.from - margin);
    shown.to += margin;
    return shown;
}

struct Sides
{
    std::optional<Span> below;
    std::optional<Span> above;
};

// Where part-seated was seen, each side of the band for itself: between the two nothing was seen.
Sides partSeatedSides(const GapStripView& view)
{
    Sides sides;
    for (const GapInterval& one : view.partSeated) {
        const bool isBelow = view.band && one.enters.inMillimetres() < view.band->median;
        stretch(isBelow ? sides.below : sides.above, spanOf(one));
    }
    return sides;
}

// What is shown of the band and today's reading; a reading among the part-seated ones stands with those.
Span mainSpan(const GapStripView& view, const Sides& sides)
{
    const auto isAmongPartSeated = [&](const Span& one) {
        for (const auto& side : {sides.below, sides.above})
            if (view.band && side && withMargin(*side, kMargin).contains(one))
                return true;
        return false;
    };
    std::optional<Span> span;
    if (view.band)
        stretch(span, view.band->outer.lower, view.band->outer.upper);
    if (view.reading && !isAmongPartSeated(spanOf(*view.reading)))
        stretch(span, spanOf(*view.reading));
    for (const GapInterval& one : view.earlier)
        if (!isAmongPartSeated(spanOf(one)))
            stretch(span, spanOf(one));
    if (!span)
        for (const auto& side : {sides.below, sides.above})
            if (side)
                stretch(span, *side);
    const Span shown = span.value_or(Span{0, 1});
    const double around = view.band ? (view.band->outer.upper - view.band->outer.lower) / 2 : 0;
    Span wide = withMargin(shown, std::max(kMargin, around));
    if (wide.width() < kSmallestSpan) {
        wide.from = std::max(0.0, (wide.from + wide.to - kSmallestSpan) / 2);
        wide.to = wide.from + kSmallestSpan;
    }
    return wide;
}

// 0.05, 0.1, 0.2, 0.5, 1 mm: the finest that leaves room for its figures.
double majorStep(double span, double width, double labelWidth)
{
    for (const double step : {0.05, 0.1, 0.2, 0.5, 1.0, 2.0})
        if (width / (span / step) > labelWidth * 1.6)
            return step;
    return 5.0;
}

class StripLayout
{
public:
    StripLayout(const GapStripView& view, QSizeF size, const FontSizes& fonts)
        : m_view{view}, m_fonts{fonts}, m_metrics{fontOf(fonts.small())},
          m_strongMetrics{fontOf(fonts.small(), Weight::SemiBold)}, m_sides{partSeatedSides(view)}
    {
        const double legend = view.withLegends ? m_metrics.height() + 4 : 2;
        const double scale = m_metrics.height() + 12;
        const double side = m_metrics.horizontalAdvance("0.00") / 2 + 2;
        const double room = std::max(12.0, size.height() - legend - scale);
        const double height = std::min(room, kTallest * fonts.scale);
        m_whole = {side, legend + (room - height) / 2, std::max(40.0, size.width() - 2 * side), height};
        share(mainSpan(view, m_sides));
        m_picture.strip = m_main.where;
        m_picture.mmAtLeft = m_main.mm.from;
        m_picture.mmAtRight = m_main.mm.to;
    }

    GapStripPicture make()
    {
        layGround(m_main);
        for (const ScalePart& part : m_beside)
            layGround(part);
        layBand();
        layPartSeated();
        layScale(m_main);
        for (const ScalePart& part : m_beside) {
            layScale(part);
            layBreak(part);
        }
        layEarlier();
        layReading();
        if (m_view.withLegends)
            layLegends();
        m_picture.inWords = PictureWords::gapStrip(m_view);
        return std::move(m_picture);
    }

private:
    // The width between the band's scale and those of part-seated readings that stand far from it.
    void share(Span mm)
    {
        m_main.where = m_whole;
        const double far = kFar * mm.width();
        const bool isBelowFar = m_sides.below && m_sides.below->to < mm.from - far;
        const bool isAboveFar = m_sides.above && m_sides.above->from > mm.to + far;
        if (m_sides.below && !isBelowFar)
            mm.from = std::min(mm.from, withMargin(*m_sides.below, kMargin).from);
        if (m_sides.above && !isAboveFar)
            mm.to = std::max(mm.to, withMargin(*m_sides.above, kMargin).to);
        m_main.mm = mm;
        const double most = (isBelowFar && isAboveFar ? 0.25 : 0.34) * m_whole.width();
        const double legend = m_strongMetrics.horizontalAdvance(PictureWords::partSeatedLegend()) + 8;
        const double width =
            std::min(most, std::max(0.18 * m_whole.width(), m_view.withLegends ? legend : 0));
        if (isBelowFar) {
            const double room = std::min(kMargin, (mm.from - m_sides.below->to) / 3);
            m_beside.push_back(
                {withMargin(*m_sides.below, room), {m_whole.left(), m_whole.top(), width, m_whole.height()}});
            m_main.where.setLeft(m_whole.left() + width + kBreak);
        }
        if (isAboveFar) {
            const double room = std::min(kMargin, (m_sides.above->from - mm.to) / 3);
            m_beside.push_back({withMargin(*m_sides.above, room),
                                {m_whole.right() - width, m_whole.top(), width, m_whole.height()}});
            m_main.where.setRight(m_whole.right() - width - kBreak);
        }
    }

    double xOf(double mm) const
    {
        const ScalePart* on = &m_main;
        for (const ScalePart& part : m_beside)
            if (mm >= part.mm.from && mm <= part.mm.to)
                on = &part;
        const double share = (mm - on->mm.from) / on->mm.width();
        return on->where.left() + std::clamp(share, 0.0, 1.0) * on->where.width();
    }

    void box(double from, double to, Role role, bool hatched = false)
    {
        const double left = xOf(from);
        m_picture.boxes.push_back({{left, m_whole.top(), xOf(to) - left, m_whole.height()}, role, hatched});
    }

    void layGround(const ScalePart& part)
    {
        m_picture.boxes.push_back({part.where, Role::StripGround, false});
    }

    // Two strokes between the scales: from here on another one counts.
    void layBreak(const ScalePart& part)
    {
        const bool isLeft = part.where.left() < m_main.where.left();
        const double middle = isLeft ? part.where.right() + kBreak / 2 : part.where.left() - kBreak / 2;
        for (const double x : {middle - 2.5, middle + 2.5})
            line({x - 3, m_whole.bottom() + 3}, {x + 3, m_whole.top() - 3}, Role::InkSoft, 1.5);
    }

    void line(QPointF from, QPointF to, Role role, double width)
    {
        m_picture.lines.push_back({from, to, role, width});
    }

    void layPartSeated()
    {
        for (const auto& side : {m_sides.below, m_sides.above})
            if (side)
                box(side->from, side->to, Role::Hatch, true);
    }

    void layBand()
    {
        if (!m_view.band)
            return;
        const Band& band = *m_view.band;
        box(band.outer.lower, band.inner.lower, Role::NearZone);
        box(band.inner.lower, band.inner.upper, Role::Band);
        box(band.inner.upper, band.outer.upper, Role::NearZone);
        const auto edge = [this](double mm, Role role) { // not by tint alone
            if (mm >= m_main.mm.from && mm <= m_main.mm.to)
                line({xOf(mm), m_whole.top()}, {xOf(mm), m_whole.bottom()}, role, kBandEdge);
        };
        edge(band.outer.lower, Role::NearEdge);
        edge(band.outer.upper, Role::NearEdge);
        edge(band.inner.lower, Role::Centre);
        edge(band.inner.upper, Role::Centre);
        const double centre = xOf(band.median);
        line({centre, m_whole.top() - 4}, {centre, m_whole.bottom() + 4}, Role::Centre, 2);
    }

    void layScale(const ScalePart& part)
    {
        const double step =
            majorStep(part.mm.width(), part.where.width(), m_metrics.horizontalAdvance("0.00"));
        const double bottom = m_whole.bottom();
        const Formats formats;
        const int minor = step < 0.1 ? 1 : 5;
        const auto first = static_cast<int>(std::ceil(part.mm.from / step * minor - 1e-9));
        const auto last = static_cast<int>(std::floor(part.mm.to / step * minor + 1e-9));
        for (int i = first; i <= last; ++i) {
            const double mm = i * step / minor;
            const double x = xOf(mm);
            const bool isMajor = i % minor == 0;
            line({x, bottom + 2}, {x, bottom + (isMajor ? 8 : 5)}, Role::InkSoft, 1);
            if (!isMajor)
                continue;
            const QString text = formats.number(mm, step < 0.1 ? 2 : 1);
            const double width = m_metrics.horizontalAdvance(text);
            const QRectF where{x - width / 2, bottom + 9, width, m_metrics.height()};
            const bool isFree = std::ranges::none_of(m_picture.labels, [&where](const StripLabel& one) {
                return one.where.intersects(where.adjusted(-4, 0, 4, 0));
            });
            if (isFree) // at a break two scales meet
                label(where, text, Role::InkSoft, false);
        }
    }

    void layEarlier()
    {
        for (const GapInterval& one : m_view.earlier) {
            const double from = one.enters.inMillimetres();
            const double x = xOf(one.refuses ? (from + one.refuses->inMillimetres()) / 2 : from);
            const double middle = m_whole.center().y();
            line({x, middle}, {x, m_whole.bottom()}, Role::InkSoft, 1.5);
        }
    }

    void layReading()
    {
        if (!m_view.reading)
            return;
        const Role role =
            m_view.verdict && *m_view.verdict != Verdict::Inside ? shapeRoleOf(*m_view.verdict) : Role::Ink;
        const double from = xOf(m_view.reading->enters.inMillimetres());
        const double middle = m_whole.center().y();
        const double half = m_whole.height() * 0.24;
        const bool open = m_view.reading->isOpen();
        const double to =
            open ? std::min(m_whole.right(), from + 26) : xOf(m_view.reading->refuses->inMillimetres());
        line({from, middle}, {to, middle}, role, 4);
        line({from, middle - half}, {from, middle + half}, role, 3);
        if (!open)
            return line({to, middle - half}, {to, middle + half}, role, 3);
        line({to, middle}, {to - half, middle - half}, role, 3);
        line({to, middle}, {to - half, middle + half}, role, 3);
    }

    void label(QRectF where, const QString& text, Role role, bool strong)
    {
        m_picture.labels.push_back({where, text, role, m_fonts.small(), strong, Qt::AlignCenter});
    }

    // A legend over `mm`, moved inwards where it would run over an edge. Nothing when it cannot fit beside
    // `taken`.
    std::optional<QRectF> layLegend(double mm, const QString& text, Role role,
                                    const std::optional<QRectF>& taken)
    {
        const double width = m_strongMetrics.horizontalAdvance(text) + 2;
        const double height = m_strongMetrics.height();
        double left = std::clamp(xOf(mm) - width / 2, m_whole.left(),
                                 std::max(m_whole.left(), m_whole.right() - width));
        QRectF where{left, m_whole.top() - height - 4, width, height};
        if (taken && where.intersects(taken->adjusted(-10, 0, 10, 0))) {
            const bool toRight = where.center().x() >= taken->center().x();
            left = toRight ? taken->right() + 12 : taken->left() - width - 12;
            where.moveLeft(left);
        }
        if (where.left() < m_whole.left() - 1 || where.right() > m_whole.right() + 1)
            return std::nullopt;
        label(where, text, role, true);
        return where;
    }

    void layLegends()
    {
        std::optional<QRectF> taken;
        if (m_view.band)
            taken = layLegend(m_view.band->median, PictureWords::bandLegend(*m_view.band), Role::Inside, {});
        else
            taken = layLegend(m_picture.mmAtLeft, PictureWords::noBandLegend(), Role::InkSoft, {});
        if (!m_sides.below && !m_sides.above)
            layLegend(m_picture.mmAtRight, PictureWords::neverShownLegend(), Role::InkSoft, taken);
        for (const auto& side : {m_sides.below, m_sides.above})
            if (side)
                layLegend((side->from + side->to) / 2, PictureWords::partSeatedLegend(), Role::NearEdgeText,
                          taken);
    }

    const GapStripView& m_view;
    FontSizes m_fonts;
    QFontMetricsF m_metrics;
    QFontMetricsF m_strongMetrics;
    Sides m_sides;
    QRectF m_whole; // everything between legends and figures
    ScalePart m_main;
    std::vector<ScalePart> m_beside;
    GapStripPicture m_picture;
};

void paintStripHatch(QPainter& painter, const QRectF& where, const QColor& color)
{
    painter.save();
    painter.setClipRect(where);
    painter.setPen(QPen{color, 1.2});
    for (double x = where.left() - where.height(); x < where.right(); x += 9)
        painter.drawLine(QPointF{x, where.bottom()}, QPointF{x + where.height(), where.top()});
    painter.restore();
}

} // namespace

GapStripPicture layoutGapStrip(const GapStripView& view, QSizeF size, const FontSizes& fonts)
{
    return StripLayout{view, size, fonts}.make();
}

void paint(QPainter& painter, const GapStripPicture& picture, const Theme& theme)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    for (const StripBox& box : picture.boxes) {
        if (box.hatched)
            paintStripHatch(painter, box.where, theme.color(box.role));
        else
            painter.fillRect(box.where, theme.color(box.role));
    }
    for (const StripLine& line : picture.lines) {
        painter.setPen(QPen{theme.color(line.role), line.width, Qt::SolidLine, Qt::FlatCap});
        painter.drawLine(line.from, line.to);
    }
    for (const StripLabel& label : picture.labels) {
        painter.setFont(fontOn(painter, label.pixels, label.strong ? Weight::SemiBold : Weight::Regular));
        painter.setPen(theme.color(label.role));
        painter.drawText(label.where.adjusted(-2, -2, 2, 2), static_cast<int>(label.align) | Qt::TextDontClip,
                         label.text);
    }
    painter.restore();
}

} // namespace rig
