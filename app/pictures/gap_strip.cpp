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

constexpr double kSmallestSpan = 0.6; // mm; narrower scales make harmless steps look large
constexpr double kMargin = 0.1;       // mm around what is shown

struct Span
{
    double from = 0;
    double to = 1;
};

void stretch(std::optional<Span>& span, double from, double to)
{
    if (!span)
        span = Span{from, to};
    span->from = std::min(span->from, from);
    span->to = std::max(span->to, to);
}

void stretch(std::optional<Span>& span, const GapInterval& interval)
{
    const double from = interval.enters.inMillimetres();
    stretch(span, from, interval.refuses ? interval.refuses->inMillimetres() : from + kMargin);
}

Span spanOf(const GapStripView& view)
{
    std::optional<Span> span;
    if (view.band)
        stretch(span, view.band->outer.lower, view.band->outer.upper);
    if (view.reading)
        stretch(span, *view.reading);
    for (const GapInterval& one : view.partSeated)
        stretch(span, one);
    for (const GapInterval& one : view.earlier)
        stretch(span, one);
    Span shown = span.value_or(Span{0, 1});
    shown.from = std::max(0.0, shown.from - kMargin);
    shown.to += kMargin;
    if (shown.to - shown.from < kSmallestSpan) {
        const double middle = (shown.from + shown.to) / 2;
        shown.from = std::max(0.0, middle - kSmallestSpan / 2);
        shown.to = shown.from + kSmallestSpan;
    }
    return shown;
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
          m_strongMetrics{fontOf(fonts.small(), Weight::SemiBold)}
    {
        const Span span = spanOf(view);
        m_picture.mmAtLeft = span.from;
        m_picture.mmAtRight = span.to;
        const double legend = view.withLegends ? m_metrics.height() + 4 : 2;
        const double scale = m_metrics.height() + 12;
        const double side = m_metrics.horizontalAdvance("0.00") / 2 + 2;
        m_picture.strip = {side, legend, std::max(40.0, size.width() - 2 * side),
                           std::max(12.0, size.height() - legend - scale)};
    }

    GapStripPicture make()
    {
        box(m_picture.mmAtLeft, m_picture.mmAtRight, Role::StripGround);
        layBand();
        layPartSeated();
        layScale();
        layEarlier();
        layReading();
        if (m_view.withLegends)
            layLegends();
        m_picture.inWords = PictureWords::gapStrip(m_view);
        return std::move(m_picture);
    }

private:
    double xOf(double mm) const
    {
        const double share = (mm - m_picture.mmAtLeft) / (m_picture.mmAtRight - m_picture.mmAtLeft);
        return m_picture.strip.left() + std::clamp(share, 0.0, 1.0) * m_picture.strip.width();
    }

    void box(double from, double to, Role role, bool hatched = false)
    {
        const double left = xOf(from);
        m_picture.boxes.push_back(
            {{left, m_picture.strip.top(), xOf(to) - left, m_picture.strip.height()}, role, hatched});
    }

    void line(QPointF from, QPointF to, Role role, double width)
    {
        m_picture.lines.push_back({from, to, role, width});
    }

    // Where part-seated was seen, each side of the band for itself: between the two nothing was seen.
    std::vector<Span> partSeatedSpans() const
    {
        std::optional<Span> below;
        std::optional<Span> above;
        for (const GapInterval& one : m_view.partSeated) {
            const bool isBelow = m_view.band && one.enters.inMillimetres() < m_view.band->median;
            stretch(isBelow ? below : above, one);
        }
        std::vector<Span> spans;
        for (const auto& side : {below, above})
            if (side)
                spans.push_back(*side);
        return spans;
    }

    void layPartSeated()
    {
        for (const Span& span : partSeatedSpans())
            box(span.from, span.to, Role::Hatch, true);
    }

    void layBand()
    {
        if (!m_view.band)
            return;
        const Band& band = *m_view.band;
        box(band.outer.lower, band.inner.lower, Role::NearZone);
        box(band.inner.lower, band.inner.upper, Role::Band);
        box(band.inner.upper, band.outer.upper, Role::NearZone);
        const double centre = xOf(band.median);
        line({centre, m_picture.strip.top() - 4}, {centre, m_picture.strip.bottom() + 4}, Role::Centre, 2);
    }

    void layScale()
    {
        const double span = m_picture.mmAtRight - m_picture.mmAtLeft;
        const double step = majorStep(span, m_picture.strip.width(), m_metrics.horizontalAdvance("0.00"));
        const double bottom = m_picture.strip.bottom();
        const Formats formats;
        const int minor = step < 0.1 ? 1 : 5;
        const auto first = static_cast<int>(std::ceil(m_picture.mmAtLeft / step * minor - 1e-9));
        const auto last = static_cast<int>(std::floor(m_picture.mmAtRight / step * minor + 1e-9));
        for (int i = first; i <= last; ++i) {
            const double mm = i * step / minor;
            const double x = xOf(mm);
            const bool isMajor = i % minor == 0;
            line({x, bottom + 2}, {x, bottom + (isMajor ? 8 : 5)}, Role::InkSoft, 1);
            if (!isMajor)
                continue;
            const QString text = formats.number(mm, step < 0.1 ? 2 : 1);
            const double width = m_metrics.horizontalAdvance(text);
            label({x - width / 2, bottom + 9, width, m_metrics.height()}, text, Role::InkSoft, false);
        }
    }

    void layEarlier()
    {
        for (const GapInterval& one : m_view.earlier) {
            const double from = one.enters.inMillimetres();
            const double x = xOf(one.refuses ? (from + one.refuses->inMillimetres()) / 2 : from);
            const double middle = m_picture.strip.center().y();
            line({x, middle}, {x, m_picture.strip.bottom()}, Role::InkSoft, 1.5);
        }
    }

    void layReading()
    {
        if (!m_view.reading)
            return;
        const Role role =
            m_view.verdict && *m_view.verdict != Verdict::Inside ? shapeRoleOf(*m_view.verdict) : Role::Ink;
        const double from = xOf(m_view.reading->enters.inMillimetres());
        const double middle = m_picture.strip.center().y();
        const double half = m_picture.strip.height() * 0.24;
        const bool open = m_view.reading->isOpen();
        const double to = open ? std::min(m_picture.strip.right(), from + 26)
                               : xOf(m_view.reading->refuses->inMillimetres());
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
        double left = std::clamp(xOf(mm) - width / 2, m_picture.strip.left(),
                                 std::max(m_picture.strip.left(), m_picture.strip.right() - width));
        QRectF where{left, m_picture.strip.top() - height - 4, width, height};
        if (taken && where.intersects(taken->adjusted(-10, 0, 10, 0))) {
            const bool toRight = where.center().x() >= taken->center().x();
            left = toRight ? taken->right() + 12 : taken->left() - width - 12;
            where.moveLeft(left);
        }
        if (where.left() < m_picture.strip.left() - 1 || where.right() > m_picture.strip.right() + 1)
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
        const std::vector<Span> spans = partSeatedSpans();
        if (spans.empty())
            layLegend(m_picture.mmAtRight, PictureWords::neverShownLegend(), Role::InkSoft, taken);
        for (const Span& span : spans)
            layLegend((span.from + span.to) / 2, PictureWords::partSeatedLegend(), Role::NearEdgeText, taken);
    }

    const GapStripView& m_view;
    FontSizes m_fonts;
    QFontMetricsF m_metrics;
    QFontMetricsF m_strongMetrics;
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
