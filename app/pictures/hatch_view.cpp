#include "app/pictures/hatch_view.h"

#include "app/pictures/hatch_parts.h"
#include "app/pictures/lettering.h"
#include "app/wording/lesson_picture_words.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

constexpr double kMirrorShare = 0.62; // of the opening's radius
constexpr double kListBeside = 1.7;   // as wide as high: from there on the list stands beside

class HatchLayout
{
public:
    HatchLayout(const HatchPictureView& view, QSizeF size, const FontSizes& fonts)
        : m_view{view}, m_size{size}, m_fonts{fonts}, m_letters{fonts},
          m_cutaway{cutawayOf(view.joint, view.pose)}, m_parts{hatchParts(m_cutaway, view.sight)}
    {
    }

    HatchPicture make()
    {
        m_sentences = LessonPictureWords::hatchList(m_parts);
        const bool isBeside = m_view.withList && m_size.width() > kListBeside * m_size.height();
        const QRectF openings = isBeside ? placeBeside() : placeAbove();
        addOpenings(openings);
        m_made.inWords = LessonPictureWords::hatch(m_cutaway, m_parts, m_view.sight, m_view.namesState);
        m_made.over.inWords = m_made.inWords;
        return std::move(m_made);
    }

private:
    static constexpr double kMirrorAway = 14;

    double openingsWide(double radius) const
    {
        return m_view.sight.mirror ? 2 * radius * (1 + kMirrorShare) + kMirrorAway : 2 * radius;
    }

    double radiusIn(double width, double height) const
    {
        const double across =
            m_view.sight.mirror ? (width - kMirrorAway - 8) / (2 * (1 + kMirrorShare)) : (width - 8) / 2;
        return std::max(10.0, std::min(across, height / 2 - 3));
    }

    // How high the list is, wrapped to that width.
    double addList(const QRectF& room, bool isPlaced)
    {
        const QFontMetricsF metrics{fontOf(m_fonts.label())};
        double y = room.top();
        for (const QString& text : m_sentences) {
            const QRectF wide{0, 0, room.width(), 10000};
            const double height = std::ceil(metrics.boundingRect(wide, Qt::TextWordWrap, text).height()) + 1;
            if (isPlaced) {
                DrawnLabel label;
                label.where = {room.left(), y, room.width(), height};
                label.text = text;
                label.role = Role::Ink;
                label.pixels = m_fonts.label();
                label.wrapped = true;
                label.align = Qt::AlignLeft | Qt::AlignTop;
                m_made.over.labels.push_back(label);
            }
            y += height + 5;
        }
        return y - room.top();
    }

    double captionLine() const { return m_letters.line() + 4; }

    QRectF placeBeside()
    {
        const double high = m_size.height() - captionLine();
        const double least = 180 * m_fonts.scale; // of the list
        const double radius = radiusIn(m_size.width() - least - 24, high);
        const QRectF openings{0, 0, openingsWide(radius) + 10, high};
        const double left = openings.right() + 20;
        const QRectF room{left, 0, m_size.width() - left, m_size.height()};
        const double listed = addList(room, false);
        addList(room.translated(0, std::max(0.0, (m_size.height() - listed) / 2)), true);
        return openings;
    }

    QRectF placeAbove()
    {
        if (!m_view.withList)
            return {0, 0, m_size.width(), m_size.height() - captionLine()};
        const QRectF room{4, 0, m_size.width() - 8, 0};
        const double listed = addList(room, false);
        const double high = std::max(40.0, m_size.height() - listed - captionLine() - 4);
        addList(room.translated(0, high + captionLine() + 4), true);
        return {0, 0, m_size.width(), high};
    }

    void addOpenings(const QRectF& room)
    {
        const double radius = radiusIn(room.width(), room.height());
        const double left = room.left() + (room.width() - openingsWide(radius)) / 2;
        addOpening({left + radius, room.center().y()}, radius, m_view.sight.side, false);
        if (!m_view.sight.mirror)
            return;
        const double small = radius * kMirrorShare;
        addOpening({left + 2 * radius + 14 + small, room.center().y() + radius - small}, small,
                   *m_view.sight.mirror, true);
    }

    void addOpening(QPointF centre, double radius, AccessSide from, bool isMirror)
    {
        HatchOpening opening{centre, radius, isMirror, from, {}};
        if (!isMirror || m_view.sight.torch)
            opening.parts = partsSeen(m_cutaway, from, m_view.sight.torch, opening);
        m_made.openings.push_back(std::move(opening));
        const double width = 2 * radius + (isMirror ? 6 : 10);
        for (const QString& text : LessonPictureWords::seenFrom(from, isMirror)) {
            if (m_letters.widthOf(text) > width)
                continue;
            m_made.over.labels.push_back(
                m_letters.label({centre.x() - m_letters.widthOf(text) / 2, centre.y() + radius + 3,
                                 m_letters.widthOf(text), m_letters.line()},
                                text, Qt::AlignHCenter));
            break;
        }
    }

    const HatchPictureView& m_view;
    QSizeF m_size;
    FontSizes m_fonts;
    Lettering m_letters;
    Cutaway m_cutaway;
    HatchParts m_parts;
    QStringList m_sentences;
    HatchPicture m_made;
};

void paintOpening(QPainter& painter, const HatchOpening& opening, const Theme& theme)
{
    QPainterPath edge;
    edge.addEllipse(opening.centre, opening.radius, opening.radius);
    painter.save();
    painter.setClipPath(edge);
    painter.fillPath(edge, theme.color(Role::Bar));
    for (const CutawayPart& part : opening.parts)
        paint(painter, part, theme);
    painter.restore();
    painter.setBrush(Qt::NoBrush);
    painter.setPen(
        QPen{theme.color(opening.isMirror ? Role::Accent : Role::InkSoft), opening.isMirror ? 4.0 : 2.5});
    painter.drawPath(edge);
}

} // namespace

HatchPicture layoutHatch(const HatchPictureView& view, QSizeF size, const FontSizes& fonts)
{
    return HatchLayout{view, size, fonts}.make();
}

void paint(QPainter& painter, const HatchPicture& picture, const Theme& theme)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    for (const HatchOpening& opening : picture.openings)
        paintOpening(painter, opening, theme);
    painter.restore();
    paint(painter, picture.over, theme);
}

} // namespace rig
